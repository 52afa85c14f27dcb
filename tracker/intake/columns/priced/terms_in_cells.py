"""Terms that a price cell says behind its price, in columns of their own: '$1,140/ST (min 10 ST)', '1.140 €/t ab 5 t'.

So they are read as those that a row says beside its price. A list too long to be kept in memory is left as it is, and
so are the cells of several prices, whose terms are not those of the whole row: they are asked about.
"""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, Kind
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.notes.statements import SaysMinimum, statements
from tracker.intake.values.orders.minimum import LeastUnread, find_minimum
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.price_terms import PriceTerms, Term, price_and_terms
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.values.times.lead_unread import LeadUnread


def with_terms_apart(table: Table, columns: Columns) -> tuple[Table, Columns]:
    """The table and its columns with such terms beside the price, where no column of the table is for what they say."""
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    if len(offers) != 1 or offers[0].pair is not None or table.view.passing:
        return table, columns
    price, view = offers[0].index, table.view
    remarks = [column.index for column in columns.of(Role.REMARKS)]
    told = (
        (row.index, view.rows[row.index], _terms_of(view.rows[row.index].get(price), columns)) for row in table.rows
    )
    found = {
        number: terms
        for number, cells, terms in told
        if terms is not None and terms.kinds.isdisjoint(_remarked(cells[at].text for at in remarks if at in cells))
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
    if terms is None or any(columns.of(*_FOR.get(kind, ())) for kind in terms.kinds):
        return None
    return terms


_FOR = {Term.SIZE: ORDER_SIZES, Term.LEAST: (Role.MINIMUM,), Term.LEAD: (Role.LEAD_TIME,)}
"""The columns that are for such a term: what a cell says beside them may be another."""


def _remarked(remarks: Iterable[str]) -> Iterator[Term]:
    """What a row's remarks say of the same kind, be it read or not; 'in sheets' says none of them."""
    for remark in remarks:
        said = statements(remark)
        if lead_remarked(remark) is not None or any(isinstance(one, LeadTime | LeadUnread) for one in said):
            yield Term.LEAD
        if find_minimum(remark) is not None or any(isinstance(one, SaysMinimum | LeastUnread) for one in said):
            yield Term.LEAST
        if charges_named(remark) or any(isinstance(one, ChargeWords) for one in said):
            yield Term.CHARGE


def _laid_out(cells: dict[int, Cell], price: int, terms: PriceTerms, behind: int) -> dict[int, Cell]:
    """A row with the terms in cells that keep the address which they have in the sheet."""
    cell = cells[price]
    said = enumerate((terms.size, terms.remark), behind)
    apart = {index: cell._replace(value=words, text=words) for index, words in said if words}
    return {**cells, price: cell._replace(value=terms.price, text=terms.price), **apart}
