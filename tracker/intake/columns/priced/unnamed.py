"""Prices in a table where no column is called one: an amount with a unit of its own, else figures under other words."""

import statistics
from collections.abc import Mapping, Sequence
from datetime import date
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.columns.priced.in_force import SEVERAL_TIMES
from tracker.intake.columns.priced.item_numbers import are_item_numbers
from tracker.intake.columns.roles.headed_figures import heads_delivered, mostly_priced, names_a_charge
from tracker.intake.columns.sizes.forms import form_alone
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of, is_figure
from tracker.intake.tables.headers.heads import looks_priced
from tracker.intake.tables.headers.periods import is_period, span_of, without_periods
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.prices.money import price_text, unit_of_text
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.dates import find_dates, without_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

_LENT_TO_PRICES = (None, Role.STOCK, Role.FORM, Role.SHEET_SIZE, Role.ITEM, Role.PRODUCT, Role.DESTINATION)
"""What a head over prices may seem to say: 'Marlpit Board' names a firm as well as a board."""

UNNAMED = "no column is called a price"
"""The doubt that a stated currency and unit and usual prices lay to rest."""
_UNLIKE = "no column is called a price, and the columns of figures are not of a size"
_OF_A_SIZE = 5
"""How many times the least of several prices to places or sizes the dearest may be. Common practice, no source."""


_FEWEST_ROWS, _NEAR, _MOVES_WITH = 2, Decimal("1.5"), Decimal("1.2")
"""How far another making's price lies from the usual one, and how little that varies; common practice, no source."""


def amount_per_unit(
    columns: Columns, samples: Mapping[int, Sequence[Cell]], others: Sequence[Column], titles: Sequence[Words]
) -> tuple[Column, ...]:
    """'Betrag | Währg | Preiseinheit | ME', 'Valor kg', 'Importe' over '1.418,00 €/t': where no column is a price, the
    amount with a unit is one, and what stands beside 'EUR/t' in each row; so it is below 'EUR/t' where no column of the
    table, `others` with the rest, counts what is bought."""
    totals = [one for one in columns.of(Role.TOTAL) if not phrases("volumes_sold").find(one.text)]
    per_unit = [one for one in totals if one.bases or one.mass_units or _mostly_per_unit(samples[one.index])]
    if len(per_unit) == 1:
        return tuple(per_unit)
    beside = columns.of(Role.BASIS, Role.CURRENCY)
    in_money = any(_all_in_money_per_unit(samples[one.index]) for one in beside)
    if len(totals) == 1 and in_money and not _any_counted(others, samples, _COUNTED):
        return tuple(totals)
    amounts = [one for one in totals if any(map(_is_amount, one.said))]
    units = columns.of(Role.BASIS, Role.PER_QUANTITY)
    return tuple(amounts) if len(amounts) == 1 and (units or _by_titles(amounts[0], samples, others, titles)) else ()


def _by_titles(
    amount: Column, samples: Mapping[int, Sequence[Cell]], others: Sequence[Column], titles: Sequence[Words]
) -> bool:
    """Nothing that could be multiplied stands beside it, and what is said above names money and a unit."""
    said = [one for words in titles for one in statements(words.text)]
    named = any(isinstance(one, SaysCurrency) for one in said) and any(isinstance(one, SaysBasis) for one in said)
    return named and mostly_priced(samples[amount.index]) and not _any_counted(others, samples, _MULTIPLIED)


_COUNTED = frozenset({Role.STOCK, Role.PACKING, Role.SHEETS_WEIGHT, *ORDER_SIZES})
_MULTIPLIED = _COUNTED | {None, Role.MINIMUM}


def _any_counted(
    others: Sequence[Column], samples: Mapping[int, Sequence[Cell]], roles: frozenset[Role | None]
) -> bool:
    """'Quantity (t)' over 3 and 2: the value beside it is what so much comes to."""
    return any(column.role in roles and any(map(is_figure, samples[column.index])) for column in others)


def _mostly_per_unit(cells: Sequence[Cell]) -> bool:
    """What a line comes to is money; '0,858 €/kg' is a price."""
    prices = [price for cell in cells if isinstance(cell.value, str) and (price := price_text(cell.text)) is not None]
    return 2 * sum(bool(price.amounts) and price.basis is not None for price in prices) > len(cells)


def _all_in_money_per_unit(cells: Sequence[Cell]) -> bool:
    """'US$/t' and '$/kg' under 'Moneda/unidad'."""
    units = [unit_of_text(cell.text) for cell in cells]
    return bool(units) and all(unit is not None and unit.currency and unit.basis for unit in units)


def _is_amount(head: Header) -> bool:
    return phrases("line_amounts").whole(head.text) is not None


def from_a_day(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'bisher | ab 01.01.2027', 'Q3 (abgelaufen) | Angebot Q4', 'Was | Now': beside prices that held until now, figures
    from a day on, offered or of today are the ones that will."""
    return [
        column
        for column in columns
        if column.role is None and column.said
        and any(names(_above_periods(column)) for names in (_names_a_start, _names_an_offer, _names_now))
        and mostly_priced(samples[column.index])
    ]  # fmt: skip


def _names_a_start(text: str) -> bool:
    dates = find_dates(text)
    return len(dates) == 1 and phrases("since").whole(text[: dates[0].start] + text[dates[0].end :]) is not None


def _names_an_offer(text: str) -> bool:
    return phrases("price_words").whole(without_periods(text).strip(" /-,")) is not None


def _names_now(text: str) -> bool:
    """'Now', 'Current', 'In force from 1 July 2026': the price to pay, and nothing else."""
    if phrases("today").whole(text) is not None:
        return True
    rest = without_dates(text)
    said = [*phrases("price_ages").find(rest), *phrases("since").find(rest)]
    others = blanked(rest, (match.span for match in said))
    ages = {match.value for match in phrases("price_ages").find(text)}
    return ages == {"in_force"} and not any(map(str.isalpha, without_periods(others)))


def _above_periods(column: Column) -> str:
    """The lowest head that is more than a time: 'In force' over 'Jul 2026'; '' without a head."""
    lowest = column.said[-1].text if column.said else ""
    return next((head.text for head in reversed(column.said) if not is_period(head.text)), lowest)


def unnamed_figures(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Columns of figures under words that are no known role (places, say), where no column is called a price.

    'Zone 1 | Zone 2' over figures are prices to places in a table that describes boards, else freight rates.
    """
    boards = any(column.role in (Role.GRADE, Role.WEIGHT, Role.CALIPER) for column in columns)
    boards = boards or any(
        column.role is Role.PRODUCT and _describe_boards(samples[column.index]) for column in columns
    )
    roles = (None, Role.DESTINATION) if boards else (None,)
    found = [
        column
        for column in columns
        if column.role in roles and column.heads and samples[column.index]
        and not is_period(column.text)
        and 2 * sum(looks_priced(cell) for cell in samples[column.index]) >= len(samples[column.index])
    ]  # fmt: skip
    if not boards:
        return found
    found += _of_later_times(columns, found, samples)
    found = _beside_their_unit(found, columns) or found
    return [*found, *priced_alike(columns, found, samples)] or _moving_together(columns, samples)


def _describe_boards(cells: Sequence[Cell]) -> bool:
    """'16 pt SBS C1S, 68 lb/MSF': names that say grade and measures, and not 'Truck' and 'Rail'."""
    named = sum(find_grade(cell.text) is not None and names_measure(cell.text) for cell in cells)
    return bool(cells) and 2 * named > len(cells)


def _of_later_times(
    columns: Sequence[Column], figures: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> list[Column]:
    """'Oct 2026' beside 'valid from 1 July 2026': what follows the price in force is no history of it."""
    starts = [
        day for one in figures if _names_a_start(_above_periods(one))
        for found in find_dates(one.text) for day in found.readings
    ]  # fmt: skip
    if not starts:
        return []
    return [
        column
        for column in columns
        if column.role is None and is_period(column.text) and mostly_priced(samples[column.index])
        and any(first > min(starts) for first in _first_days(column.text, max(starts).year))
    ]  # fmt: skip


def _first_days(text: str, year: int) -> list[date]:
    days = [day for found in find_dates(text) for day in found.readings]
    span = None if days else span_of(text, year)
    return days or ([] if span is None else [span[0]])


def _beside_their_unit(figures: Sequence[Column], columns: Sequence[Column]) -> list[Column]:
    """Of a customer's number, a price and a day the one right beside its currency or unit, as exports write them."""
    for role in (Role.CURRENCY, Role.BASIS):
        units = {column.index for column in columns if column.role is role}
        beside = [column for column in figures if units & {column.index - 1, column.index + 1}]
        if len(beside) == 1:
            return beside
    return []


def _moving_together(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """'Ex stock | Making (min. 5 t)': what is in stock and another quantity, whose figures go together as prices do."""
    figures = [one for one in columns if _names_a_way(one) and one.heads and mostly_priced(samples[one.index])]
    if not any(one.role is Role.STOCK for one in figures):
        return []
    return [
        one
        for one in figures
        if any(other is not one and close_by_row(samples[one.index], samples[other.index]) for other in figures)
    ]


def _names_a_way(column: Column) -> bool:
    """'Ex stock' and 'Making (min. 5 t)'; 'Stock (ST)' over '40in' and '42in' counts what is there of both."""
    return column.role is Role.MINIMUM or (column.role is Role.STOCK and not column.mass_units)


def priced_alike(
    columns: Sequence[Column], prices: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> list[Column]:
    """'Ex stock' and 'Rush' beside prices: figures under other words that stay close to a price row by row.

    They may be prices of another making of a board, and must not be left out in silence; nor must those right of one
    that nothing stands over, such as places whose names were not seen to head them.
    """
    bare = _run_on(columns, prices, samples)
    return [
        column
        for column in columns
        if column not in prices and _may_be_priced(column) and (column.heads or column.index in bare)
        and not is_period(column.text) and not are_item_numbers(column, columns, samples[column.index])
        and any(
            close_by_row(samples[column.index], samples[price.index], _fewest_rows(column, samples[price.index]))
            for price in prices
        )
    ]  # fmt: skip


def _run_on(
    columns: Sequence[Column], prices: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> frozenset[int]:
    """The columns without a head right behind a price, or behind others of these, each with as many figures."""
    priced = {price.index: len(samples[price.index]) for price in prices if price.heads}
    for column in columns:
        before = priced.get(column.index - 1, 0)
        if column.role is None and not column.heads and before and _mostly_filled(samples[column.index], before):
            priced[column.index] = before
    return frozenset(priced)


def _mostly_filled(cells: Sequence[Cell], rows: int) -> bool:
    return 2 * len(cells) > rows and mostly_priced(cells)


def _fewest_rows(column: Column, prices: Sequence[Cell]) -> int:
    """One figure near its price may be anything, but under 'inkl. Fracht' or 'Premium' no charge is as high as the
    board, and where a table has one board only, a head that says nothing known may be a price's."""
    lone = len(prices) == 1 and column.role is None
    return 1 if lone or heads_delivered(column) or names_a_charge(column) else _FEWEST_ROWS


def _may_be_priced(column: Column) -> bool:
    """Under 'Sheets' alone may stand how many are packed, or what board in sheets costs; under 'Wagon (20-40 t)' and
    'à la palette' what such an order costs."""
    if column.role in ORDER_SIZES and any(map(str.isdecimal, column.text)):
        return True
    packed = column.said[-1:] if column.role is Role.PACKING else ()
    by_load = any(head.basis is not None and head.basis.foreign in LOADS for head in packed)
    return by_load or any(form_alone(head.text) for head in packed) or column.role in _LENT_TO_PRICES


def close_by_row(cells: Sequence[Cell], prices: Sequence[Cell], fewest: int = _FEWEST_ROWS) -> bool:
    """Figures in at least `fewest` rows, each near the price of its row, that move with it as other numbers do not."""
    priced = {cell.row: figure for cell in prices if (figure := figure_of(cell)) is not None and figure > 0}
    beside = {cell.row: figure for cell in cells if (figure := figure_of(cell)) is not None and cell.row in priced}
    parts = [figure / priced[row] for row, figure in beside.items()]
    if len(parts) < fewest or max(parts) > _NEAR or min(parts) * _NEAR < 1:
        return False
    return max(parts) <= _MOVES_WITH * min(parts)


def doubt_of(unnamed: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> str:
    """What to ask about such columns: whether they are prices, which usual prices in a stated unit lay to rest where
    the columns are of a size; where one begins on a day, and others do not say when they end, which of them holds."""
    begun = [column for column in unnamed if _names_a_start(_above_periods(column))]
    if 0 < len(begun) < len(unnamed):
        return SEVERAL_TIMES
    if not all(column.heads for column in unnamed):
        return "no column is called a price, and no head stands over figures that may be prices"
    return UNNAMED if _of_a_size(unnamed, samples) else _UNLIKE


def _of_a_size(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> bool:
    """'Zone 1 | Zone 2' are prices alike; a plant's number, a price unit and a number of days are not."""
    middles = [statistics.median(figures) for column in columns if (figures := _figures(samples[column.index]))]
    return not middles or max(middles) <= _OF_A_SIZE * min(middles)


def _figures(cells: Sequence[Cell]) -> list[Decimal]:
    return [figure for figure in map(figure_of, cells) if figure is not None and figure > 0]
