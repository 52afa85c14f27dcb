"""What the columns beside a column tell of it: its role among prices, weights and the columns of its group."""

from collections.abc import Mapping, Sequence, Set
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.columns.roles.candidates import MEASURED
from tracker.intake.columns.roles.guess import role_by_cells
from tracker.intake.columns.roles.headed_figures import (
    by_words,
    in_a_measures_unit,
    letters_alone,
    mostly_priced,
    names_a_charge,
    spreads_values,
)
from tracker.intake.columns.sizes.order_sizes import order_size
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figures_by_row
from tracker.intake.tables.headers.heads import PRICE_ROLES, is_bare_number
from tracker.intake.values.heads.header import Header, without_unit
from tracker.intake.values.heads.roles import MEASURES, ON_TOP, Role
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.orders.small_orders import adds_for_some_orders, of_small_orders
from tracker.intake.words.lists import phrases
from tracker.trade.basis import Basis

_SAYS_SO = 0.8


def weighed(column: Column, columns: list[Column]) -> Column:
    """A column under 'lb' and no more is what the board weighs, where another column is plainly the price."""
    if (
        column.role is not Role.PRICE
        or column.currencies
        or not any(head.strength(Role.WEIGHT) for head in column.said)
    ):
        return column
    lowest = column.said[-1]
    if spreads_values(column) or (by_words(lowest) and not lowest.strength(Role.WEIGHT)):
        # 'Price' below '10,000 lb and up' is one: the pounds are those of the order.
        return column
    others = [other for other in columns if other is not column and other.role in PRICE_ROLES]
    plain = any(other.currencies or any(by_words(head) for head in other.said) for other in others)
    return replace(column, role=Role.WEIGHT) if plain else column


def beside_prices(column: Column, columns: list[Column]) -> Column:
    """Beside a column that is plainly the price, 'Amount' is what the line comes to and 'Rolls' counts them; beside a
    'C2S premium' they are prices."""
    if column.role is not Role.PRICE or len(column.said) != 1 or column.currencies:
        return column
    text = column.said[0].text
    role = Role.TOTAL if phrases("line_amounts").whole(text) else Role.PACKING if phrases("forms").whole(text) else None
    others = [other for other in columns if other is not column and other.role in PRICE_ROLES]
    plain = any(any(_calls_a_price(head) for head in other.said) for other in others)
    return replace(column, role=role) if role is not None and plain else column


def _calls_a_price(head: Header) -> bool:
    return head.currency is not None or (by_words(head) and head.role not in ON_TOP)


def beside_charges(column: Column, columns: list[Column], cells: Sequence[Cell]) -> Column:
    """Broken figures under an unknown name ('Pallet pool') right beside a charge may be charged as well: a cost without
    them would look whole."""
    if column.role is not None or not column.text or not cells:
        return column
    neighbours = {other.role for other in columns if abs(other.index - column.index) == 1}
    figures = [cell.value for cell in cells]
    positive = all(isinstance(value, Decimal) and value > 0 for value in figures)
    broken = positive and any(value % 1 for value in figures if isinstance(value, Decimal))
    return replace(column, role=Role.CHARGE, sure=False) if broken and neighbours.intersection(ON_TOP) else column


def small_beside_a_price(column: Column, columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> Column:
    """'Skid wrap $/cwt' over 0.85 beside 'Board $/cwt' over 65: money per the same, and too little for board."""
    bare = not column.currencies and not column.bases and not _has_its_unit_behind(column, columns)
    adds = adds_for_some_orders(column.text) or (bare and of_small_orders(column.text))
    called = any(by_words(head) and head.role not in MEASURED for head in column.said)
    if column.role is not Role.PRICE or not column.currencies or called:
        return _added_for_some(column, columns, samples) if adds else column
    words = " ".join(map(without_unit, column.said))
    if not any(map(str.isalpha, words)) or spreads_values(column) or _tells_prices_apart(words):
        return column
    role = _small_figure(words)
    own, units = figures_by_row(samples[column.index]), {basis.bases for basis in column.bases}
    for other in columns:
        prices = figures_by_row(samples[other.index]) if other is not column and other.role in PRICE_ROLES else {}
        rows = own.keys() & prices.keys()
        alike = {one.words for one in column.currencies} == {one.words for one in other.currencies}
        if rows and alike and units == {basis.bases for basis in other.bases} and _small(own, prices, rows):
            return replace(column, role=role, sure=False)
    return column


def _has_its_unit_behind(column: Column, columns: list[Column]) -> bool:
    """'< 5 ST | U/M | > 5 ST | U/M': a price with a unit in each row."""
    return any(other.index == column.index + 1 and other.role is Role.BASIS for other in columns)


def _added_for_some(column: Column, columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> Column:
    """'Under 10,000 lb add' over 60 beside 'USD/ST' over 1200, and 'Under 10,000 lb' alone, with no unit of its own."""
    own = figures_by_row(samples[column.index])
    for other in columns if column.role in (None, Role.PRICE) else ():
        prices = figures_by_row(samples[other.index]) if other is not column and other.role in PRICE_ROLES else {}
        rows = own.keys() & prices.keys()
        if rows and _small(own, prices, rows):
            return replace(column, role=Role.CHARGE, sure=True)
    return column


def _small_figure(words: str) -> Role:
    """'Announced for January $/ST' is by how much the price will rise, and 'You save €/t' is in the price already;
    'Loyalty €/t' and 'Early pay $/cwt' may as well be taken off."""
    if phrases("rises_to_come").find(words) or phrases("saved").whole(words.strip(" ()/")) is not None:
        return Role.CHANGE
    return Role.DISCOUNT if phrases("discount_conditions").find(words) else Role.CHARGE


def _tells_prices_apart(words: str) -> bool:
    """'Truckload $/cwt' and 'Rolls $/cwt' hold prices, whatever stands beside them."""
    named = words.strip(" ()/")
    return {phrases("bracket").whole(named), phrases("forms").whole(named)} & _KINDS != set()


_KINDS = {*LOADS, "roll", "sheet"}


def _small(own: Mapping[int, Decimal], prices: Mapping[int, Decimal], rows: Set[int]) -> bool:
    return all(0 < own[row] <= _MOST_OF_A_PRICE * prices[row] for row in rows)


_MOST_OF_A_PRICE = Decimal("0.2")
"""What a charge may be of the board's price, and no other board's price is; common practice, no source."""


def starts_a_discount(column: Column, columns: list[Column]) -> Column:
    """'Basis | Abschlag | Nettopreis' is what the price starts from, where another column says with its unit what the
    board weighs."""
    if column.role is not Role.WEIGHT or column.weight_units:
        return column
    weighed_by_unit = any(other.role is Role.WEIGHT and other.weight_units for other in columns)
    roles = {other.role for other in columns if other.index > column.index}
    leads = Role.DISCOUNT in roles and bool(roles & {Role.NET_PRICE, Role.PRICE})
    return replace(column, role=Role.LIST_PRICE) if weighed_by_unit and leads else column


def no_charge_as_high(column: Column, columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> Column:
    """'Port Hanley' beside 'Eastburn' is a place and no freight, and 'Premium' beside 'Standard' another making, where
    the figures are as high as the prices there."""
    if column.role not in ON_TOP:
        return column
    others = [other for other in columns if other is not column]
    if not names_a_charge(column):
        alike = [other for other in others if not _per_something_else(column, other)]
        prices = [other for other in alike if other.role in (Role.PRICE, None)]
        high = any(
            _as_high(figures_by_row(samples[column.index]), figures_by_row(samples[other.index])) for other in prices
        )
    else:
        called = [other for other in others if other.role in PRICE_ROLES]
        prices = [other for other in called or others if other.role in (*PRICE_ROLES, None)]
        high = any(_of_its_height(column, other, samples) for other in prices)
    return replace(column, role=None, sure=False) if high else column


def no_making(column: Column, columns: list[Column]) -> Column:
    """'Charge' beside 'Sorte' and 'Preis' heads the numbers of makings, and beside 'Grade' or 'Qualité' money."""
    if column.role is not Role.CHARGE or phrases("makings").whole(column.text) != "number":
        return column
    german = any(match.value == "heads" for other in columns for match in phrases("makings").find(other.text))
    return replace(column, role=Role.CHANGE) if german else column


def _per_something_else(column: Column, other: Column) -> bool:
    """Freight of 46 a short ton is not as high as a price of 45 per MSF."""
    units, others = ({basis.bases for basis in each.bases} for each in (column, other))
    return bool(units) and bool(others) and units != others


def _of_its_height(column: Column, price: Column, samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Though the head names a charge outright: its figures follow the prices from row to row and are as high as they,
    each per the same. Freight of 62 beside a price of 48.20 per MSF is per ton."""
    units, others = ({basis.bases for basis in each.bases} for each in (column, price))
    if column.percent or (units and units != others):
        return False
    if column.role is Role.FREIGHT and others and not any(bases & _TONS for bases in others):
        return False
    own, prices = figures_by_row(samples[column.index]), figures_by_row(samples[price.index])
    high = all(own[row] >= _LEAST_SHARE * prices[row] for row in own.keys() & prices.keys())
    return high and close_by_row(samples[column.index], samples[price.index], 1)


_TONS = frozenset({Basis.SHORT_TON, Basis.TONNE})
_LEAST_SHARE = Decimal("0.8")
"""Of a board's price; no freight to an island is as dear. Common practice, no source."""


def _as_high(charges: Mapping[int, Decimal], prices: Mapping[int, Decimal]) -> bool:
    """In every row, and in two at least, the one is of the other's height: no freight costs as much as the board."""
    rows = charges.keys() & prices.keys()
    near = all(0 < prices[row] < 2 * charges[row] and charges[row] < 2 * prices[row] for row in rows)
    return len(rows) >= _FEWEST_ROWS and near


_FEWEST_ROWS = 2


def like_its_group(column: Column, columns: list[Column], cells: Sequence[Cell]) -> Column:
    """Figures under the heading that spreads prices beside them are prices too, whatever their own head says.

    'Order size' over '5 - 20 t | 20 - 40 t | by the wagon': a head that can't be read is asked about, not left out.
    """
    groups = set(column.heads[:-1])
    if not groups or column.role in PRICE_ROLES or _named_by_lowest(column) or not mostly_priced(cells):
        return column
    alike = [other for other in columns if groups & set(other.heads[:-1]) and other is not column]
    spread = bool(alike) and all(other.role is Role.PRICE and spreads_values(other) for other in alike)
    return replace(column, role=Role.PRICE) if spread else column


def _named_by_lowest(column: Column) -> bool:
    """'Freight' among order sizes says itself what it holds, and so does 'µm', which is the unit of no price."""
    if column.role in MEASURES and in_a_measures_unit(column.said[-1]):
        return True
    return any(reading.role is column.role and reading.strength >= _SAYS_SO for reading in column.said[-1].roles)


def lots_beside_sizes(column: Column, columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> Column:
    """'Pallet lots' behind 'TL' and 'LTL', over figures close to theirs, is one more order size and no packing."""
    size = column.said[-1].bracket if column.said else None
    if column.role is not Role.PACKING or size is None or not size.not_weight:
        return column
    sizes = [other for other in columns if other.role is Role.PRICE and order_size(other)[1] is not None]
    close = any(close_by_row(samples[column.index], samples[other.index], 1) for other in sizes)
    return replace(column, role=Role.PRICE) if close else column


def without_axis_words(column: Column, columns: list[Column], cells: Sequence[Cell]) -> Column:
    """The corner's words name the bare numbers across and not the cells below: those speak for themselves."""
    rows = {
        cell.row for other in columns for cell in other.heads if other.index > column.index and is_bare_number(cell)
    }
    if column.role is None or not {cell.row for cell in column.heads} <= rows or not rows:
        return column
    return replace(column, role=role_by_cells(column, cells) or column.role, sure=False)


def unheaded_remarks(columns: list[Column], samples: Mapping[int, Sequence[Cell]]) -> list[Column]:
    """Words under no head to the right of all prices, where a head names the boards: remarks on the rows. So are the
    marks below 'Mark', single letters and dashes, which name no board beside such a column."""
    prices = [column for column in columns if column.role in PRICE_ROLES]
    marks = [column for column in columns if _holds_marks(column, samples[column.index])]
    named = any(column.role in (Role.PRODUCT, Role.GRADE) and column.heads for column in columns if column not in marks)
    if not prices or not named:
        return columns
    last = max(column.index for column in prices)
    return [
        replace(column, role=Role.REMARKS)
        if column in marks or (_behind(column, last) and not _like_prices(column, prices, samples))
        else column
        for column in columns
    ]  # fmt: skip


def _holds_marks(column: Column, cells: Sequence[Cell]) -> bool:
    """A head that nobody knows over letters, and dashes where there is none."""
    lettered = [cell for cell in cells if any(map(str.isalnum, cell.text))]
    named = any(head.strength(Role.PRODUCT) >= _NAMED for head in column.said)
    return column.role is Role.PRODUCT and bool(column.heads) and not named and letters_alone(lettered)


_NAMED = 0.8
"""'Mark' is a letter off the 'Marke' of a board, and no word for it."""


def _behind(column: Column, last_price: int) -> bool:
    return not column.heads and column.role in (None, Role.PRODUCT) and column.index > last_price


def _like_prices(column: Column, prices: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Figures that go up and down with a price are no remarks on it."""
    return any(close_by_row(samples[column.index], samples[price.index]) for price in prices)
