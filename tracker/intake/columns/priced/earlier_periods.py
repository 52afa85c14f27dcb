"""Prices of years, quarters and months that were over when a list was made, beside those it offers."""

from collections.abc import Sequence, Set
from dataclasses import replace
from datetime import date

from tracker.intake.columns.column import Column, Columns, Kind, PriceColumn
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES, ages_in
from tracker.intake.columns.priced.unnamed import UNNAMED
from tracker.intake.columns.priced.years_in_heads import is_over, words_but_year, year_in_head
from tracker.intake.tables.headers.periods import is_period, span_of
from tracker.intake.values.heads.roles import Role


def set_earlier_periods_aside(columns: Columns, made: date) -> None:
    """Makes prices of times that were over on the day the list was made previous prices; of others it is asked."""
    if columns.doubt == SEVERAL_TIMES:
        _take_the_last(columns, made)


def _take_the_last(columns: Columns, made: date) -> None:
    """'Jan | Feb | Mar' in a list of 3 March: the last is in force, the others are how it came to that.

    Where a later time stands beside the list's own, which of the two is offered is left to be asked.
    """
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    spans = [span_of(price.column.text, made.year) for price in offers]
    starts = [span[0] for span in spans if span is not None]
    if len(starts) != len(offers) or len(set(starts)) != len(starts):
        return
    last = offers[starts.index(max(starts))]
    span = span_of(last.column.text, made.year)
    if span is None or not span[0] <= made <= span[1]:
        return
    columns.prices = tuple(
        replace(price, unexplained=False) if price is last
        else replace(price, kind=Kind.PREVIOUS, unexplained=False) if price.kind is Kind.OFFER
        else price
        for price in columns.prices
    )  # fmt: skip
    columns.doubt = UNNAMED if is_period(last.column.text) else ""


def keep_this_years(columns: Columns, year: int | None, over: Set[int] = frozenset()) -> None:
    """'Price 2026 | Price 2027' in a list of 2026: the first is not over yet, and which one holds is asked.

    So it is in a list that does not say of which year it is: None; there of all years that follow each other. Not where
    the first is called old or shown once more, 'Price 2026 (ref.)', also by a note (`over`), nor where the change to
    the second stands beside them or it alone is called new, 'Price 2026 | Current price 2027'.
    """
    heads = [price.column for price in columns.prices if price.kind is Kind.OFFER]
    if year is None and columns.of(Role.CHANGE):
        return
    later = {(words_but_year(column), year_in_head(column)) for column in heads if _may_follow(column, year)}
    past = [
        price for price in columns.prices
        if price.kind is Kind.PREVIOUS and year in (None, year_in_head(price.column))
        and not is_over(price.column) and year_in_head(price.column) not in over
    ]  # fmt: skip
    if year is None:
        if _alone_in_force([column for column in heads if year_in_head(column)], past):
            return
        this = _right_before(later, past)
    else:
        this = [price for price in past if any(words_but_year(price.column) == other for other, _ in later)]
    if this:
        # Each is asked about by its own year, also where they hardly differ.
        columns.prices = tuple(
            replace(one, kind=Kind.OFFER, label=one.label or one.column.text)
            if one in this or (one.kind is Kind.OFFER and year_in_head(one.column)) else one
            for one in columns.prices
        )  # fmt: skip
        columns.doubt = SEVERAL_TIMES


def _may_follow(column: Column, year: int | None) -> bool:
    return bool(year_in_head(column)) if year is None else year_in_head(column) > year


def _alone_in_force(heads: Sequence[Column], past: Sequence[PriceColumn]) -> bool:
    """'Price 2025 | New price 2026', and not 'Current price 2025 | New price 2026'."""
    in_force = bool(heads) and all(ages_in(column.text) == {"in_force"} for column in heads)
    return in_force and not any(ages_in(price.column.text) for price in past)


def _right_before(later: Set[tuple[str, int]], past: Sequence[PriceColumn]) -> list[PriceColumn]:
    """The prices of the years right before the last, one after the other, which may not have begun when the list was
    made; the heads tell nothing else."""
    found: list[PriceColumn] = []
    known = set(later)
    for price in sorted(past, key=lambda one: -year_in_head(one.column)):
        words, year = words_but_year(price.column), year_in_head(price.column)
        if (words, year + 1) in known:
            known.add((words, year))
            found.append(price)
    return found
