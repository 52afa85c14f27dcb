"""report: the buyer's report as a PDF or a workbook."""

import argparse
from pathlib import Path

from tracker.commands import values
from tracker.commands.opened import desk_for_reading
from tracker.commands.outcome import Status
from tracker.desk.reporting import write_report
from tracker.trade.grades import grades


def describe(parser: argparse.ArgumentParser) -> None:
    """Where it goes and what it covers."""
    parser.add_argument("file", metavar="FILE.pdf|FILE.xlsx", type=Path, help="where the report is written")
    parser.add_argument("--grade", metavar="CODE", type=values.grade, help=f"one of {', '.join(grades())}")


def run(options: argparse.Namespace) -> Status:
    """Writes the report."""
    with desk_for_reading(options) as desk:
        write_report(desk, options.file, grade=options.grade)
    print(f"The report is written to {options.file}.")
    return Status.DONE
