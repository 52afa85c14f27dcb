"""level: what a grade costs per tonne from a day on, its ratio to SBS, and where those figures come from."""

import argparse
import sys
from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path

from tracker.commands import values
from tracker.commands.opened import desk_for_reading, desk_for_writing
from tracker.commands.outcome import Status
from tracker.commands.printing import print_json
from tracker.desk.edits import Edit
from tracker.desk.level_doubt import doubt_level
from tracker.desk.levels import level_object, levels, set_level
from tracker.desk.opening import Desk
from tracker.desk.price_index import carry_forward, read_index
from tracker.desk.ratios import ratio_object, ratios, set_ratio
from tracker.desk.sensitivity import Sensitivity, sensitivity, set_sensitivity
from tracker.desk.yardsticks import ratios_standing
from tracker.trade.bands import REFERENCE_GRADE
from tracker.trade.basis import Basis
from tracker.trade.grades import grades
from tracker.trade.level import LevelFigure

_OPTIONS = {"since": "--from"}


def describe(parser: argparse.ArgumentParser) -> None:
    """A grade and its level or ratio, or nothing but --json to list them."""
    parser.add_argument("grade", nargs="?", metavar="GRADE", type=values.grade, help=f"one of {', '.join(grades())}")
    per = parser.add_mutually_exclusive_group()
    per.add_argument("--per-tonne", metavar="N", type=values.positive, help="the price of 1,000 kg")
    per.add_argument(
        "--per-short-ton", metavar="N", type=values.positive, help="instead: the price of 2,000 lb, as US levels are"
    )
    parser.add_argument("--currency", metavar="CODE", type=values.currency, help="its currency")
    parser.add_argument("--from", dest="since", metavar="DATE", type=values.day, help="the day from which it holds")
    parser.add_argument("--source", metavar="TEXT", help="where the figure comes from")
    parser.add_argument(
        "--spread",
        metavar="PERCENT",
        type=values.positive,
        help="how far either side of it still is the band; for grades other than SBS 15 if not said",
    )
    parser.add_argument(
        "--index",
        metavar="FILE",
        type=Path,
        help="a published price index (CSV: date, value) that carries the level forward to later days",
    )
    parser.add_argument("--index-name", metavar="TEXT", help="what the index is called; else the file's name")
    parser.add_argument(
        "--ratio",
        metavar="LOW:HIGH",
        type=_ratio,
        help="instead of a level: what the grade costs over SBS, 0.65:0.80; needs --from and --source too",
    )
    parser.add_argument(
        "--sensitivity",
        metavar="WORD",
        type=str.casefold,
        choices=[each.value for each in Sensitivity],
        help="what is called out of line: " + "; ".join(f"{each} ({each.words})" for each in Sensitivity),
    )
    parser.add_argument("--yes", action="store_true", help="set a level even where it is far from what is known")
    parser.add_argument("--json", action="store_true", help="list levels, ratios and sensitivity as JSON")


def run(options: argparse.Namespace) -> Status:
    """Sets a level, a ratio or the sensitivity, or lists them all when no grade is named."""
    sets = options.grade is not None or options.sensitivity is not None
    with (desk_for_writing if sets else desk_for_reading)(options) as desk:
        if options.sensitivity is not None:
            _tell(set_sensitivity(desk, Sensitivity(options.sensitivity)))
        if options.grade is not None:
            return _set(desk, options)
        return _list(desk, options) if options.json or not sets else Status.DONE


def _set(desk: Desk, options: argparse.Namespace) -> Status:
    if options.ratio is not None:
        if _lacks(options, "A ratio", ("since", "source")):
            return Status.WRONG_USE
        low, high = options.ratio
        _tell(set_ratio(desk, options.grade, low, high, options.since, options.source))
        return Status.DONE
    index = None if options.index is None else read_index(options.index)
    if index is None or _amount_said(options) is not None:
        status = _set_level(desk, options)
        if status is not Status.DONE:
            return status
    if index is not None:
        _tell(carry_forward(desk, options.grade, index, options.index_name or options.index.stem))
    return Status.DONE


def _set_level(desk: Desk, options: argparse.Namespace) -> Status:
    amount = _amount_said(options)
    if _lacks(options, "A level", (*(["per_tonne"] if amount is None else []), "currency", "since", "source")):
        return Status.WRONG_USE
    assert amount is not None
    basis = Basis.TONNE if options.per_short_ton is None else Basis.SHORT_TON
    figure = LevelFigure(amount, options.currency, basis)
    doubt = doubt_level(desk, options.grade, figure, options.since)
    if doubt is not None and not options.yes:
        print(f"{doubt} Nothing was set; add --yes if it is meant.", file=sys.stderr)
        return Status.ASKED
    _tell(set_level(desk, options.grade, figure, options.since, options.source, options.spread))
    return Status.DONE


def _amount_said(options: argparse.Namespace) -> Decimal | None:
    said: Decimal | None = options.per_tonne if options.per_short_ton is None else options.per_short_ton
    return said


def _lacks(options: argparse.Namespace, what: str, needed: Sequence[str]) -> bool:
    missing = [name for name in needed if getattr(options, name) is None]
    if missing:
        named = ", ".join(_OPTIONS.get(name, "--" + name.replace("_", "-")) for name in missing)
        print(f"{what} needs {named} too.", file=sys.stderr)
    return bool(missing)


def _ratio(text: str) -> tuple[Decimal, Decimal]:
    low, colon, high = text.partition(":")
    if not colon:
        raise argparse.ArgumentTypeError(
            f"'{text}' is not a ratio: write the lower and the higher end, as in 0.65:0.80"
        )
    lowest, highest = values.positive(low), values.positive(high)
    if lowest > highest:
        raise argparse.ArgumentTypeError(f"'{text}' names the higher end first: write {high}:{low}")
    return lowest, highest


def _tell(edit: Edit) -> None:
    print(edit.text[0].upper() + edit.text[1:] + ".")


def _list(desk: Desk, options: argparse.Namespace) -> Status:
    kept = levels(desk)
    chosen = sensitivity(desk)
    if options.json:
        own = [ratio_object(ratio) for ratio in ratios(desk)]
        print_json({"levels": [level_object(level) for level in kept], "ratios": own, "sensitivity": chosen.value}, 2)
        return Status.DONE
    for level in kept:
        spread = f" ± {level.spread.normalize():f} %" if level.spread else ""
        carried = f", carried forward by {level.index_name}" if level.index_name else ""
        print(f"{level.grade}  {level.on.isoformat()}  {level.said}{spread}  {level.source}{carried}")
    _print_ratios(desk)
    print(f"Called out of line: {chosen.words} ({chosen.value}).")
    return Status.DONE


def _print_ratios(desk: Desk) -> None:
    """The user's own of every day, then those built in that stand where there is no own one."""
    own = ratios(desk)
    for ratio in map(ratio_object, own):
        between = f"{ratio['low']} to {ratio['high']} of {REFERENCE_GRADE}"
        print(f"{ratio['grade']}  {ratio['from']}  {between}  {ratio['source']}")
    replaced = {ratio.grade for ratio in own if ratio.on <= desk.today}
    for code, standing in ratios_standing((), desk.today).items():
        if code not in replaced:
            between = f"{standing.low:.2f} to {standing.high:.2f} of {REFERENCE_GRADE}"
            print(f"{code}  built in    {between}  {standing.source}")
