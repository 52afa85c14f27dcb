"""Amounts of money that a clause about prices names, which are none of its prices."""

import re

from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases

_THOUSANDS = ("1000", "1 000", "1,000", "1.000", "1'000", "100 ")
"""Numbers that belong to a unit: '$ 1,000 ft²'."""


def names_amount(clause: str) -> bool:
    """'Sheeting $4.50/cwt' and 'pallet deposit 15 EUR' are amounts of something else, and say nothing of the prices."""
    for currency in find_currencies(clause):
        before, _, after = clause.partition(currency.words)
        if before.rstrip()[-1:].isdecimal() and not (_names_a_year(before.rstrip()) or _ends_with_a_board(before)):
            return True
        if after.lstrip()[:1].isdecimal() and not after.lstrip().startswith(_THOUSANDS):
            return True
    return False


_LAST_YEAR = re.compile(r"\s20\d\d$")


def _names_a_year(before: str) -> bool:
    """'Preise 2027 EUR/t' are the prices of a year, where 'Preis 2027 EUR/t' may be one of 2,027."""
    year = _LAST_YEAR.search(before)
    lists = phrases("price_lists").find(before[: year.start()]) if year is not None else []
    return year is not None and bool(lists) and lists[-1].end == year.start()


def _ends_with_a_board(before: str) -> bool:
    """The figure of 'GC1 EUR/t' is the board's."""
    last = before.split()[-1]
    return last[0].isalpha() and names_grade(last)
