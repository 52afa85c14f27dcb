"""samples: every request with its state and age, what is owed first."""

import argparse
import sys
from datetime import date
from pathlib import Path

from tracker.commands import values
from tracker.commands.opened import desk_for_reading
from tracker.commands.outcome import Status
from tracker.commands.printing import counted, print_json
from tracker.desk.export import write_csv
from tracker.desk.sample_json import sample_object
from tracker.desk.samples import Sample, samples


def describe(parser: argparse.ArgumentParser) -> None:
    """Which requests, by which day, in which form."""
    parser.add_argument("--outstanding", action="store_true", help="only those still to come")
    parser.add_argument("--overdue", action="store_true", help="only those past their promise or usual time")
    parser.add_argument("--as-of", metavar="DATE", type=values.day, help="the day to look from; else today")
    forms = parser.add_mutually_exclusive_group()
    forms.add_argument("--json", action="store_true", help="print one JSON document")
    forms.add_argument("--csv", metavar="FILE", type=Path, help="write a CSV file")


def run(options: argparse.Namespace) -> Status:
    """Lists the requests asked for."""
    with desk_for_reading(options) as desk:
        as_of = options.as_of or desk.today
        every = samples(desk, as_of)
    found = [sample for sample in every if _wanted(sample, options)]
    if not found:
        print(_why_none(len(every), as_of, options), file=sys.stderr)
    objects = [sample_object(sample) for sample in found]
    if options.json:
        print_json({"as_of": as_of.isoformat(), "samples": objects}, 2)
    elif options.csv:
        write_csv(objects, options.csv)
        print(f"{counted(len(objects), 'sample')} in {options.csv}.")
    elif found:
        _print(found)
    return Status.DONE


def _why_none(count: int, as_of: date, options: argparse.Namespace) -> str:
    if not count:
        return f"No sample was asked for by {as_of.isoformat()}: log one with the command “sample log”."
    asked = "overdue" if options.overdue else "outstanding"
    return f"Of {counted(count, 'sample')} none is {asked} on {as_of.isoformat()}."


def _wanted(sample: Sample, options: argparse.Namespace) -> bool:
    if options.outstanding and not sample.state.outstanding:
        return False
    return sample.overdue or not options.overdue


def _print(found: list[Sample]) -> None:
    print(f"{'no.':>4} {'vendor':28} {'grade':5} {'pt':>5} {'state':10} {'asked for':10} {'due':10}  days")
    for sample in found:
        caliper = "" if sample.caliper_um is None else f"{float(sample.caliper_um) / 25.4:.1f}"
        due = sample.due.isoformat() if sample.due and sample.state.outstanding else ""
        late = f", {sample.overdue_days} overdue" if sample.overdue else ""
        print(
            f"{sample.number:>4} {sample.vendor[:28]:28} {sample.grade:5} {caliper:>5} {sample.state.value:10} "
            f"{sample.requested.isoformat()} {due:10}  {sample.waiting_days}{late}"
        )
