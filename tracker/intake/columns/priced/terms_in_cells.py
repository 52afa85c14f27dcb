"""Terms that a price cell says behind its price, in columns of their own: '$1,140/ST (min 10 ST)', '1.140 €/t ab 5 t'.

So they are read as those that a row says beside its price. A list too long to be kept in memory is left as it is, and
so are the cells of several prices, whose terms are not those of the whole row: they are asked about.
"""

from collections.abc import Mapping
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
    price = offers[0]
    body = {row.index for row in table.rows}
    rows = dict(table.view.rows)
    size, remark = (max(max(cells, default=0) for cells in rows.values()) + step for step in (1, 2))
    remarks = [column.index for column in columns.of(Role.REMARKS)]
    for number in body:
        terms = _terms_of(rows[number].get(price.index), columns)
        if terms is not None and not (terms.remark and any(index in rows[number] for index in remarks)):
            rows[number] = _laid_out(rows[number], price.index, terms, {size: terms.size, remark: terms.remark})
    used = {index for number in body for index in (size, remark) if index in rows[number]}
    if not used:
        return table, columns
    by_role = dict(columns.by_role)
    for index, role in ((size, Role.BRACKET), (remark, Role.REMARKS)):
        by_role[role] = (*by_role.get(role, ()), *([Column(index, role)] if index in used else []))
    return replace(table, view=replace(table.view, rows=rows)), replace(columns, by_role=by_role, _found={})


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


def _laid_out(cells: dict[int, Cell], price: int, terms: PriceTerms, said: Mapping[int, str]) -> dict[int, Cell]:
    """A row with the terms in cells that keep the address which they have in the sheet."""
    cell = cells[price]
    apart = {index: cell._replace(value=words, text=words) for index, words in said.items() if words}
    return {**cells, price: cell._replace(value=terms.price, text=terms.price), **apart}
