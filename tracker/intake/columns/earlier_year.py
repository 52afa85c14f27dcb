"""'Price 2025' beside 'Price' in a list of 2026: what was paid last year, beside the price offered."""

from dataclasses import replace

from tracker.intake.columns.column import Columns, Kind, PriceColumn
from tracker.intake.tables.periods import YEAR
from tracker.intake.values.dates import find_dates
from tracker.intake.values.money import price_unit


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


def _same_but_for_unit(dated: PriceColumn, plain: PriceColumn) -> bool:
    short, full = " ".join(YEAR.sub(" ", dated.column.text).split()), " ".join(plain.column.text.split())
    if not short or not full.startswith(short):
        return False
    return full == short or price_unit(full.removeprefix(short)) is not None
