"""waits: sample turn-round and quoted lead times, by vendor and in all."""

import argparse
from collections.abc import Sequence

from tracker.commands import values
from tracker.commands.opened import desk_for_reading
from tracker.commands.outcome import Status
from tracker.commands.printing import print_json
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
    _print("Samples, days from request to arrival (median, 95 % interval)", arrivals)
    _print("Lead times as quoted, days (median, shortest to longest)", quoted)
    return Status.DONE


def _print(title: str, rows: Sequence[WaitRow]) -> None:
    print(title)
    for row in rows:
        owed = f", {row.outstanding} outstanding" if row.outstanding else ""
        between = f"{_days(row.low_days)} to {_days(row.high_days)}"
        print(f"  {row.vendor or 'all vendors':32} n {row.n:>4}{owed:18}  {_days(row.median_days):>6}  ({between})")


def _days(value: float | None) -> str:
    return "–" if value is None else f"{value:g}"
