"""What makes prices dearer, or moves them either way: 'add 3 %', 'All prices increase by 4 %', 'adjustment +2.5 %'."""

import re
from collections.abc import Sequence

from tracker.intake.values.figures.rates import EITHER_WAY, is_added, masses_of_orders, rate_follows, states_amount
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside

_PERIOD = re.compile(r"(?<!\d)20\d\d(?!\d)|\b[QqHhTt][1-4]\b")
_SIGNED = re.compile(r"\s*[:=]?\s*[-+−]")


def names_a_charge(clause: str) -> bool:
    """Freight, energy or sheeting, and not only a surcharge."""
    return any(match.value != ChargeKind.OTHER for match in charges_named(clause))


def is_dearer(clause: str) -> bool:
    """An amount comes on top of what some boards cost. A charge of its own, a tax, a later day, an order size and the
    width of a roll are told elsewhere."""
    return not names_a_charge(clause) and _comes_on_top(clause)


def all_dearer(clause: str) -> bool:
    """So for every board, where a surcharge is none of the prices: 'Add $40/ST to all prices'."""
    return not phrases("charges").find(clause) and _comes_on_top(clause)


def _comes_on_top(clause: str) -> bool:
    sections = ("not_charge", "small_orders", "compared_with", "roll_measures")
    elsewhere = any(phrases(section).find(clause) for section in sections)
    return not (elsewhere or find_dates(clause) or masses_of_orders(clause)) and is_added(clause)


def rises(clause: str) -> bool:
    """Whether a part sentence about prices says that they go up or down; not on some day, nor so that they have done so
    already or may some time."""
    named = [match for section in ("price_rises", "price_moves") for match in phrases(section).find(clause)]
    return bool(named) and states_amount(clause) and not _told_elsewhere(clause, named)


def left_out(clause: str) -> bool:
    """'They do not yet include the $50/ton increase announced March 2': what is to be paid is not what stands there.

    From a day on it says what prices will be, and those that stand there hold until then.
    """
    if not phrases("price_rises").find(clause) or not states_amount(clause) or names_a_charge(clause):
        return False
    within = [match for match in phrases("relieved").find(clause) if match.value in ("within", "holds")]
    begins = (match.end for match in phrases("since").find(clause))
    dated = any(not clause[end : day.start].strip() for end in begins for day in find_dates(clause) if end <= day.start)
    return any(denied(clause, match) for match in within) and not dated


def adjusts(clause: str) -> bool:
    """'Index adjustment +2.5 %': a sign with the rate says which way the prices go."""
    named = phrases("adjustments").find(clause)
    signed = (_SIGNED.match(clause[match.end :]) for match in named)
    found = any(match is not None and rate_follows(match.string[match.end() :]) for match in signed)
    return found and not _told_elsewhere(clause, named)


def _told_elsewhere(clause: str, named: Sequence[Found[str]]) -> bool:
    if find_dates(clause) or _PERIOD.search(clause) or masses_of_orders(clause) or EITHER_WAY.search(clause):
        return True
    own = (*named, *phrases("these_prices").find(clause))
    sections = ("not_rising_now", "compared_with", "only_if", "months", "small_orders")
    return any(outside(phrases(section).find(clause), own) for section in sections)
