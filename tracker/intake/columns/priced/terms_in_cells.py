"""Terms that a price cell says behind its price, in columns of their own: '$1,140/ST (min 10 ST)', '1.140 €/t ab 5 t'.

So they are read as those that a row says beside its price. A list too long to be kept in memory is left as it is, and
so are the cells of several prices, whose terms are not those of the whole row: they are asked about.
"""

from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, Kind
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.price_terms import PriceTerms, price_and_terms


def with_terms_apart(table: Table, columns: Columns) -> tuple[Table, Columns]:
    """The table and its columns with such terms beside the price, where no column of the table is for what they say."""
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    if len(offers) != 1 or offers[0].pair is not None or table.view.passing:
        return table, columns
    price, view = offers[0].index, table.view
    remarks = [column.index for column in columns.of(Role.REMARKS)]
    found = {
        row.index: terms
        for row in table.rows
        if (terms := _terms_of(view.rows[row.index].get(price), columns)) is not None
        and not (terms.remark and any(index in view.rows[row.index] for index in remarks))
    }
    if not found:
        return table, columns
    behind = 1 + max(max(cells, default=0) for cells in view.rows.values())
    rows = {
        number: _laid_out(cells, price, found[number], behind) if number in found else cells
        for number, cells in view.rows.items()
    }
    by_role = dict(columns.by_role)
    for index, role in enumerate(_ROLES, behind):
        if any(index in rows[number] for number in found):
            by_role[role] = (*by_role.get(role, ()), Column(index, role))
    return replace(table, view=replace(view, rows=rows)), replace(columns, by_role=by_role, _found={})


_ROLES = (Role.BRACKET, Role.REMARKS)
"""What the columns behind all others hold: the sizes of orders, and the other terms."""


def _terms_of(cell: Cell | None, columns: Columns) -> PriceTerms | None:
    """What stands behind a price that is not plain by itself, and is for no column to say."""
    if cell is None or not isinstance(cell.value, str) or cell.struck:
        return None
    said = price_text(cell.text)
    if said is None or not said.amounts or not (said.rest or said.is_range):
        return None
    terms = price_and_terms(cell.text)
    told = columns.of(*ORDER_SIZES) if terms is not None and terms.size else ()
    told += columns.of(Role.MINIMUM, Role.LEAD_TIME) if terms is not None and terms.remark else ()
    return None if told else terms


def _laid_out(cells: dict[int, Cell], price: int, terms: PriceTerms, behind: int) -> dict[int, Cell]:
    """A row with the terms in cells that keep the address which they have in the sheet."""
    cell = cells[price]
    said = enumerate((terms.size, terms.remark), behind)
    apart = {index: cell._replace(value=words, text=words) for index, words in said if words}
    return {**cells, price: cell._replace(value=terms.price, text=terms.price), **apart}
