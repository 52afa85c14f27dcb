"""waits: sample turn-round and quoted lead times, by vendor and in all."""

import argparse

from tracker.commands import values
from tracker.commands.opened import desk_for_reading
from tracker.commands.outcome import Status
from tracker.commands.printing import print_json
from tracker.desk.waiting import usual_words
from tracker.desk.waits import WaitRow, lead_times, turn_round, wait_objects


def describe(parser: argparse.ArgumentParser) -> None:
    """By which day, in which form."""
    parser.add_argument("--as-of", metavar="DATE", type=values.day, help="the day to look from; else today")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(options: argparse.Namespace) -> Status:
    """Tells both kinds of waiting."""
    with desk_for_reading(options) as desk:
        as_of = options.as_of or desk.today
        arrivals, quoted = turn_round(desk, as_of), lead_times(desk, as_of)
    if options.json:
        document = {"as_of": as_of.isoformat(), **wait_objects(arrivals), "lead_times": wait_objects(quoted)}
        print_json(document, 3)
        return Status.DONE
    print("Samples: days from request to arrival, half come within the usual time")
    for row in arrivals:
        print(f"  {_vendor(row)}  {_arrivals(row)}")
    print("Lead times as quoted: days, the middle one and from the shortest to the longest")
    for row in quoted:
        print(f"  {_vendor(row)}  {_quoted(row)}")
    return Status.DONE


def _vendor(row: WaitRow) -> str:
    return f"{row.vendor or 'all vendors':32}"


def _arrivals(row: WaitRow) -> str:
    asked = f"asked {row.n}" + (f", {row.outstanding} still out" if row.outstanding else "")
    usual = "too few came to tell"
    if row.usual_days is not None:
        usual = usual_words(row.usual_days, row.low_days, row.high_days)
    return f"{asked:26}  {usual}"


def _quoted(row: WaitRow) -> str:
    quoted = f"quoted {row.n}"
    if row.median_days is None:
        return quoted
    return f"{quoted:26}  {row.median_days:.0f} ({_days(row.low_days)} to {_days(row.high_days)})"


def _days(value: float | None) -> str:
    return "?" if value is None else f"{value:.0f}"
