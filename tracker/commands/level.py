"""level: what a grade costs per tonne from a day on, and where that figure comes from."""

import argparse
import sys

from tracker.commands import values
from tracker.commands.outcome import Status
from tracker.commands.printing import print_json
from tracker.desk.levels import level_object, levels, set_level
from tracker.desk.opening import Desk, desk_on
from tracker.trade.grades import grades


def describe(parser: argparse.ArgumentParser) -> None:
    """A grade and its level, or nothing but --json to list them."""
    parser.add_argument("grade", nargs="?", metavar="GRADE", type=str.upper, help=f"one of {', '.join(grades())}")
    parser.add_argument("--per-tonne", metavar="N", type=values.positive, help="the price of 1,000 kg")
    parser.add_argument("--currency", metavar="CODE", type=values.currency, help="its currency")
    parser.add_argument("--from", dest="since", metavar="DATE", type=values.day, help="the day from which it holds")
    parser.add_argument("--source", metavar="TEXT", help="where the figure comes from")
    parser.add_argument(
        "--spread",
        metavar="PERCENT",
        type=values.positive,
        help="how far either side of it still is the band; for grades other than SBS 15 if not said",
    )
    parser.add_argument("--json", action="store_true", help="list the levels as JSON")


def run(options: argparse.Namespace) -> Status:
    """Sets a level, or lists them all when no grade is named."""
    desk = desk_on(options.database)
    try:
        return _list(desk, options) if options.grade is None else _set(desk, options)
    finally:
        desk.close()


def _set(desk: Desk, options: argparse.Namespace) -> Status:
    missing = [name for name in ("per_tonne", "currency", "since", "source") if getattr(options, name) is None]
    if missing:
        named = {"since": "--from"}
        print(
            "A level needs " + ", ".join(named.get(name, "--" + name.replace("_", "-")) for name in missing) + " too.",
            file=sys.stderr,
        )
        return Status.WRONG_USE
    edit = set_level(
        desk, options.grade, options.per_tonne, options.currency, options.since, options.source, options.spread
    )
    print(edit.text[0].upper() + edit.text[1:] + ".")
    return Status.DONE


def _list(desk: Desk, options: argparse.Namespace) -> Status:
    found = [level_object(level) for level in levels(desk)]
    if options.json:
        print_json({"levels": found}, 2)
        return Status.DONE
    for level in found:
        spread = f" ± {level['spread']} %" if level["spread"] else ""
        print(
            f"{level['grade']}  {level['from']}  {level['per_tonne']} {level['currency']}/t{spread}  {level['source']}"
        )
    return Status.DONE
