"""Which of the prices of several periods holds, where a note says so by their months: 'April and May columns are
superseded', 'The July column is the price in force'."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from tracker.intake.columns.column import Columns, Kind, PriceColumn
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES
from tracker.intake.columns.priced.unnamed import UNNAMED
from tracker.intake.tables.headers.periods import is_period, months_in
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.times.dates import without_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without


def set_periods_aside_as_told(columns: Columns, notes: Iterable[str]) -> None:
    """Makes previous prices of those that a note calls over, and of all before the one that it says to hold.

    Where more than one is left, or the note calls one price both, it is asked which holds.
    """
    if columns.doubt != SEVERAL_TIMES:
        return
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    over, holding = _told(notes)
    left = [price for price in offers if not _is_of(price, over)]
    named = [price for price in left if _is_of(price, holding)]
    if holding and len(named) == 1:
        left = named + left[left.index(named[0]) + 1 :]
    if len(left) != 1 or len(left) == len(offers) or (holding and not named):
        return
    columns.prices = tuple(
        replace(price, unexplained=False) if price is left[0]
        else replace(price, kind=Kind.PREVIOUS, unexplained=False) if price in offers
        else price
        for price in columns.prices
    )  # fmt: skip
    columns.doubt = UNNAMED if is_period(left[0].column.text) else ""


def _told(notes: Iterable[str]) -> tuple[frozenset[int], frozenset[int]]:
    """The months whose prices are over, and those whose prices hold."""
    over: set[int] = set()
    holding: set[int] = set()
    for age, months in _said(notes):
        (over if age == _OVER else holding).update(months)
    return frozenset(over), frozenset(holding)


_OVER = "over"


def _said(notes: Iterable[str]) -> Iterator[tuple[str, frozenset[int]]]:
    for note in notes:
        for clause in clauses(note):
            ages = {match.value for match in phrases("periods_told").find(clause) if not denied(clause, match)}
            shown = any(not denied(clause, match) for match in phrases("shown_only").find(clause))
            ages |= {_OVER} if shown else set()
            told = _without_ends(clause)
            months = months_in(told) if ages and _speaks_of_prices(told) else frozenset()
            if months:
                yield _OVER if _OVER in ages else "holds", months


def _speaks_of_prices(clause: str) -> bool:
    """'April and May columns', 'June prices'; 'July fuel surcharge expired' and 'other charges may apply' do not."""
    of_prices = any(phrases(section).find(clause) for section in ("price_words", "column_words"))
    return of_prices and not any(phrases(section).find(clause) for section in ("charges", "lead_topic"))


def _without_ends(clause: str) -> str:
    """A clause without days, and up to where it says from when or until when: 'prices apply until June' names no price
    of June."""
    # 'Prices may no longer apply' is of no month.
    text = without_dates(clause)
    text = without(text, phrases("no_months").find(text))
    for section in ("until", "since"):
        text = next((before for one in phrases(section).find(text) if not _joins(before := text[: one.start])), text)
    return text


def _joins(before: str) -> bool:
    """The 'to' of 'April to June' ends no time that prices hold for."""
    return bool(months_in(" ".join(before.split()[-1:])))


def _is_of(price: PriceColumn, months: frozenset[int]) -> bool:
    named = months_in(price.column.text)
    return bool(named) and named <= months
