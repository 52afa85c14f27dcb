"""Prices of years, quarters and months that were over when a list was made, beside those it offers."""

from dataclasses import replace
from datetime import date

from tracker.intake.columns.column import Columns, Kind
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES
from tracker.intake.columns.priced.unnamed import UNNAMED
from tracker.intake.columns.priced.years_in_heads import is_over, words_but_year, year_in_head
from tracker.intake.tables.headers.periods import is_period, span_of


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


def keep_this_years(columns: Columns, year: int) -> None:
    """'Price 2026 | Price 2027' in a list of 2026: the first is not over yet, and which one holds is asked.

    Not where it is called old or shown once more: 'Price 2026 (ref.)'.
    """
    heads = [price.column for price in columns.prices if price.kind is Kind.OFFER]
    later = {words_but_year(column) for column in heads if year_in_head(column) > year}
    this = [
        price for price in columns.prices
        if price.kind is Kind.PREVIOUS and year_in_head(price.column) == year
        and words_but_year(price.column) in later and not is_over(price.column)
    ]  # fmt: skip
    if this:
        columns.prices = tuple(replace(one, kind=Kind.OFFER) if one in this else one for one in columns.prices)
