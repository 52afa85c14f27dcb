"""'Price' beside 'Price without surcharge': what is paid has the surcharge in it, whichever of the two comes first."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.steps import figures_by_row, without_steps
from tracker.intake.columns.roles.headed_figures import tells_offers_apart
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.prices_without import Without, head_without, is_of_all_board
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.small_orders import signs_of_small, size_of_small
from tracker.intake.words.lists import phrases

_PAID = (Role.PRICE, Role.NET_PRICE, Role.ALL_IN)
_NAMED = (*_PAID, Role.LIST_PRICE)
_SURCHARGES = (Role.ENERGY, Role.CHARGE, Role.CHANGE)


def without_parts(columns: list[Column], table: Table, texts: Iterable[Words]) -> list[Column]:
    """The columns without prices that only lead to the one to pay, by their heads and by their figures."""
    return without_steps(_without_bare_prices(columns, table, texts), table)


def _without_bare_prices(columns: list[Column], table: Table, texts: Iterable[Words]) -> list[Column]:
    """Makes the price without the surcharge a step to the one beside it, and the surcharge between them a change.

    Where a text says that the surcharge is not charged, or by some orders only, which of the two is paid is left to
    what else is said.
    """
    bare = [
        column for column in columns if column.role in _NAMED and _leaves_out(column) and not tells_offers_apart(column)
    ]
    whole = [
        column for column in columns if column.role in _PAID and not (column in bare or tells_offers_apart(column))
    ]
    if len(bare) != 1 or len(whole) != 1 or _not_borne_by_all(columns, (*texts, *table.titles, *table.notes)):
        return columns
    part, paid = (figures_by_row(table, column) for column in (bare[0], whole[0]))
    differences = {row: paid[row] - part[row] for row in paid.keys() & part.keys()}
    if not _bears_a_part(differences, paid):
        return columns
    roles = {bare[0].index: Role.LIST_PRICE}
    if whole[0].role is Role.ALL_IN:
        roles[whole[0].index] = Role.PRICE
    made = [
        column for column in columns if _is_surcharge(column) and _makes(figures_by_row(table, column), differences)
    ]
    if not made and not any(head_without(head.text) is Without.NAMED for head in bare[0].said):
        # 'Price | Price without surcharge': of which surcharge, and who bears it, is not said.
        return columns
    roles |= dict.fromkeys((column.index for column in made), Role.CHANGE)
    return [replace(column, role=roles.get(column.index, column.role)) for column in columns]


def beside_one_without(offers: Iterable[Column]) -> bool:
    """'Price | Price without surcharge': one offer, and of which surcharge, and who bears it, is not said."""
    offers = [*offers]
    bare = [column for column in offers if _leaves_out(column)]
    return len(offers) == _PAIR and len(bare) == 1 and not any(map(tells_offers_apart, offers))


_PAIR = 2
WITHOUT_SURCHARGE = "a price and one without a surcharge stand beside each other, and it is not said who pays that one"
"""The doubt that such a pair leaves."""


def _is_surcharge(column: Column) -> bool:
    return column.role in _SURCHARGES and any(is_of_all_board(head.text) for head in column.said)


def _leaves_out(column: Column) -> bool:
    return any(head_without(head.text) is not None for head in column.said)


def _not_borne_by_all(columns: Iterable[Column], texts: Iterable[Words]) -> bool:
    """'The energy surcharge is suspended until further notice', 'Surcharge for orders below 5 t': the price without it
    may be what is paid."""
    said = (*(head.text for column in columns for head in column.said), *(words.text for words in texts))
    return any(_not_charged(text) for text in said if charges_named(text))


def _not_charged(text: str) -> bool:
    relieved = any(match.value in _RELIEVED for match in phrases("relieved").find(text))
    return relieved or bool(signs_of_small(text)) or size_of_small(text) is not None


_RELIEVED = ("waived", "ended", "exempt")


def _bears_a_part(differences: Mapping[int, Decimal], paid: Mapping[int, Decimal]) -> bool:
    """In no row less than nothing, nor half of the price: then they are prices of different things."""
    return any(differences.values()) and all(0 <= more < paid[row] / 2 for row, more in differences.items())


def _makes(surcharge: Mapping[int, Decimal], differences: Mapping[int, Decimal]) -> bool:
    return any(row in surcharge for row in differences) and all(
        abs(surcharge.get(row, Decimal(0)) - more) <= _ROUNDED for row, more in differences.items()
    )


_ROUNDED = Decimal("0.006")
