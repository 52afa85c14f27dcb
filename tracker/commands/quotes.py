"""quotes: the offers current on a day, on one footing and judged."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator, Sequence
from datetime import date
from decimal import Decimal
from pathlib import Path

import numpy as np

from tracker.commands import values
from tracker.commands.opened import desk_for_reading
from tracker.commands.outcome import Status
from tracker.commands.printing import counted, print_json
from tracker.commands.quote_list import print_list
from tracker.desk.comparison import ChosenFooting, Comparison
from tracker.desk.export import write_csv, write_xlsx
from tracker.desk.offer_rows import offer_rows
from tracker.desk.offers_json import offer_objects
from tracker.desk.quotes import boards_without_a_bracket, compare, currencies_without_a_rate, load_snapshot
from tracker.desk.sensitivity import Sensitivity
from tracker.desk.vendors import vendor_meant
from tracker.trade.grades import grades
from tracker.trade.quantities import CaliperUnit, micrometres


def describe(parser: argparse.ArgumentParser) -> None:
    """Which offers, on which footing, in which form."""
    parser.add_argument("--grade", metavar="CODE", type=values.grade, help=f"one of {', '.join(grades())}")
    parser.add_argument(
        "--caliper-pt", metavar="MIN:MAX", type=_range, help="calipers in points, ends included: 16:20, :20 or 18:"
    )
    parser.add_argument("--vendor", metavar="NAME", help="one vendor's offers")
    parser.add_argument("--as-of", metavar="DATE", type=values.day, help="the day to judge by; else today")
    parser.add_argument(
        "--order-kg", metavar="N", type=values.positive, help="the order size: only its bracket of each board"
    )
    parser.add_argument(
        "--currency", metavar="CODE", type=values.currency, default="USD", help="bring all prices to it (USD)"
    )
    parser.add_argument(
        "--delivered", action="store_true", help="compare with charges to your dock, where they are known"
    )
    parser.add_argument(
        "--measured-weight", action="store_true", help="at the basis weight samples measured, where that is known"
    )
    parser.add_argument(
        "--equal-caliper-pt",
        metavar="N",
        type=values.positive,
        help="add the price per MSF as if every board were of this caliper, so that a thick board does not look dear",
    )
    parser.add_argument(
        "--sensitivity",
        metavar="WORD",
        type=str.casefold,
        choices=[each.value for each in Sensitivity],
        help="what to call out of line, this once: "
        + "; ".join(f"{each} ({each.words})" for each in Sensitivity)
        + "; else as the database is set",
    )
    parser.add_argument("--all", action="store_true", help="superseded and lapsed offers too")
    forms = parser.add_mutually_exclusive_group()
    forms.add_argument("--json", action="store_true", help="print one JSON document")
    forms.add_argument("--csv", metavar="FILE", type=Path, help="write a CSV file")
    forms.add_argument("--xlsx", metavar="FILE", type=Path, help="write a spreadsheet")


def run(options: argparse.Namespace) -> Status:
    """Prints or writes the offers asked for."""
    with desk_for_reading(options) as desk:
        footing = _footing(options, options.as_of or desk.today)
        comparison = compare(desk, load_snapshot(desk), footing)
    if options.vendor:
        options.vendor = vendor_meant(options.vendor, comparison.snapshot.vendors).name
    wanted = _wanted(comparison, options)
    for remark in _remarks(comparison, wanted, options):
        print(remark, file=sys.stderr)
    _hand_over(comparison, wanted, options)
    return Status.DONE


def _footing(options: argparse.Namespace, as_of: date) -> ChosenFooting:
    return ChosenFooting(
        as_of,
        options.currency,
        delivered=options.delivered,
        order_kg=None if options.order_kg is None else float(options.order_kg),
        current_only=not options.all,
        measured_weight=options.measured_weight,
        equal_caliper_um=None
        if options.equal_caliper_pt is None
        else float(micrometres(options.equal_caliper_pt, CaliperUnit.POINT)),
        sensitivity=None if options.sensitivity is None else Sensitivity(options.sensitivity),
    )


def _hand_over(comparison: Comparison, wanted: Sequence[int], options: argparse.Namespace) -> None:
    """The offers in the form asked for; a file that was written is named."""
    footing = comparison.footing
    if options.json:
        offers = offer_objects(comparison, wanted)
        print_json({"as_of": footing.as_of.isoformat(), "currency": footing.currency, "offers": offers}, 2)
    elif options.csv or options.xlsx:
        rows = offer_rows(comparison, wanted)
        if options.csv:
            write_csv(rows, options.csv)
        else:
            write_xlsx(rows, options.xlsx, "Quotes")
        print(f"{counted(len(rows), 'offer')} in {options.csv or options.xlsx}.")
    elif wanted:
        print_list(comparison, wanted, offer_objects(comparison, wanted))


def _remarks(comparison: Comparison, wanted: Sequence[int], options: argparse.Namespace) -> Iterator[str]:
    """What a reader of the list might else take for the market: what is missing from it and why."""
    footing, vendors = comparison.footing, comparison.snapshot.vendors
    left_out = 0 if footing.order_kg is None else boards_without_a_bracket(comparison)
    if left_out:
        yield (
            f"{left_out} of the current boards are not offered for an order of {footing.order_kg:,.0f} kg: no order "
            "size quoted for them holds it."
        )
    if options.vendor and options.vendor.casefold() not in map(str.casefold, vendors):
        known = ", ".join(sorted(vendors, key=str.casefold))
        yield f"No vendor is called {options.vendor} here; those known are: {known or 'none'}."
    elif not wanted:
        yield _why_none(comparison, options)
    unknown = currencies_without_a_rate(comparison, wanted)
    if unknown:
        yield (
            f"No rate from {' and '.join(unknown)} to {footing.currency} is known on {footing.as_of.isoformat()}, so "
            "those prices are left empty: set one with the command “rate”."
        )


def _why_none(comparison: Comparison, options: argparse.Namespace) -> str:
    """Why the list is empty: nothing is kept, nothing holds on the day, or nothing is of the kind asked for."""
    day = f"{comparison.footing.as_of:%Y-%m-%d}"
    if not len(comparison.snapshot):
        return "No offer is kept here yet: take in a vendor's sheet with the command “import”."
    first = date.fromordinal(int(comparison.snapshot.received.min()))
    if first > comparison.footing.as_of:
        return f"No offer had come by {day}; the first is of {first:%Y-%m-%d}."
    if not comparison.shown.any():
        order = "" if options.order_kg is None else f" for an order of {options.order_kg:,.0f} kg"
        return f"No offer holds on {day}{order}: --all shows those that lapsed or were superseded too."
    kinds = (
        ("grade", options.grade),
        ("caliper", options.caliper_pt),
        ("vendor", options.vendor),
    )
    asked = " and ".join(name for name, value in kinds if value)
    number = counted(int(comparison.shown.sum()), "offer")
    return f"None of the {number} that hold on {day} is of the {asked} asked for."


def _wanted(comparison: Comparison, options: argparse.Namespace) -> Sequence[int]:
    snapshot, wanted = comparison.snapshot, comparison.shown.copy()
    if options.grade:
        wanted &= snapshot.grade == _code(snapshot.grades, options.grade)
    if options.vendor:
        wanted &= snapshot.vendor == _code([name.casefold() for name in snapshot.vendors], options.vendor.casefold())
    if options.caliper_pt:
        low, high = options.caliper_pt
        # Half a micrometre either side: 18 points are 457.2 µm, and a sheet may say 457.
        wanted &= (snapshot.caliper_um >= low - 0.5) & (snapshot.caliper_um <= high + 0.5)
    return [int(index) for index in np.flatnonzero(wanted)]


def _code(names: Sequence[str], name: str) -> int:
    return names.index(name) if name in names else -2


def _range(text: str) -> tuple[float, float]:
    low, colon, high = text.partition(":")
    low_pt = values.number(low) if low else Decimal(0)
    high_pt = values.number(high) if high else (Decimal(10_000) if colon else low_pt)
    if high_pt < low_pt:
        raise argparse.ArgumentTypeError(f"'{text}' ends before it begins: write the smaller caliper first")
    return float(micrometres(low_pt, CaliperUnit.POINT)), float(micrometres(high_pt, CaliperUnit.POINT))
