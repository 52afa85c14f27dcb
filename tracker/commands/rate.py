"""rate: the user's own exchange rate for a day, which comes before the published history."""

import argparse
import sys

from tracker.commands import values
from tracker.commands.opened import desk_for_writing
from tracker.commands.outcome import Status
from tracker.desk.rates import doubt_rate, set_rate


def describe(parser: argparse.ArgumentParser) -> None:
    """A currency, its worth in euro and the day."""
    parser.add_argument("code", metavar="CODE", type=values.currency, help="the currency, for example USD")
    parser.add_argument("euros", metavar="N", type=values.positive, help="what one unit of it is in euro")
    parser.add_argument("--on", metavar="DATE", type=values.day, required=True, help="the day the rate is of")
    parser.add_argument("--yes", action="store_true", help="set it even where it is far from the last known rate")


def run(options: argparse.Namespace) -> Status:
    """Sets the rate."""
    with desk_for_writing(options) as desk:
        doubt = None if options.yes else doubt_rate(desk, options.code, options.euros, options.on)
        if doubt is not None:
            print(f"{doubt} Nothing was set; add --yes if it is meant.", file=sys.stderr)
            return Status.ASKED
        edit = set_rate(desk, options.code, options.euros, options.on)
    print(edit.text[0].upper() + edit.text[1:] + ".")
    return Status.DONE
