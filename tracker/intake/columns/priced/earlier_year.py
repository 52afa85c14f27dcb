"""'Price 2025' beside 'Price' in a list of 2026, 'Price at 1 May' beside one of 1 November: what was paid before."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from tracker.intake.columns.column import Columns, Kind, PriceColumn
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES, told_apart_by_time
from tracker.intake.columns.priced.years_in_heads import of_several_years
from tracker.intake.tables.headers.periods import YEAR
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.times.dates import DateOrder, find_dates, ordered, without_dates


def set_earlier_year_aside(columns: Columns, year: int) -> None:
    """Makes the one price whose head names a year before `year`, the list's own, a previous price.

    Only beside a single price whose head says the same but for year and unit: of anything else it is asked which holds.
    """
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    dated = [price for price in offers if YEAR.search(price.column.text) and not find_dates(price.column.text)]
    plain = [price for price in offers if not YEAR.search(price.column.text)]
    if len(dated) != 1 or len(plain) != 1 or not _same_but_for_unit(dated[0], plain[0]):
        return
    if max(int(found) for found in YEAR.findall(dated[0].column.text)) < year:
        earlier = replace(dated[0], kind=Kind.PREVIOUS)
        columns.prices = tuple(earlier if price is dated[0] else price for price in columns.prices)


def set_earlier_days_aside(columns: Columns, made: date, order: DateOrder | None) -> None:
    """Makes previous prices of those whose heads differ in a day alone, but for the last day that is not after `made`,
    the list's own.

    A day still to come is left beside it, and it is asked which holds.
    """
    alike: dict[str, list[PriceColumn]] = {}
    for price in columns.prices:
        if price.kind is Kind.OFFER and price.until is None and len(find_dates(price.column.text)) == 1:
            alike.setdefault(without_dates(price.column.text), []).append(price)
    earlier = {price.index for group in alike.values() for price in _before_the_last(group, made, order)}
    columns.prices = tuple(
        replace(price, kind=Kind.PREVIOUS) if price.index in earlier else price for price in columns.prices
    )
    left = [price.column for price in columns.prices if price.kind is Kind.OFFER]
    apart = told_apart_by_time([column.text for column in left]) or of_several_years(left)
    if columns.doubt == SEVERAL_TIMES and not apart:
        columns.doubt = ""


def _before_the_last(group: Sequence[PriceColumn], made: date, order: DateOrder | None) -> list[PriceColumn]:
    """The columns of earlier days; none where the order of day and month, still open, would change which they are."""
    found = []
    for assumed in (order,) if order is not None else tuple(DateOrder):
        days = {price.index: ordered(find_dates(price.column.text)[0], assumed)[0] for price in group}
        last = max((day for day in days.values() if day <= made), default=None)
        found.append({index for index, day in days.items() if last is not None and day < last})
    return [price for price in group if price.index in found[0]] if found[1:] in ([], found[:1]) else []


def _same_but_for_unit(dated: PriceColumn, plain: PriceColumn) -> bool:
    short, full = " ".join(YEAR.sub(" ", dated.column.text).split()), " ".join(plain.column.text.split())
    if not short or not full.startswith(short):
        return False
    return full == short or price_unit(full.removeprefix(short)) is not None
