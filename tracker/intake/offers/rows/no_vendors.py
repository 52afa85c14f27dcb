"""Rows of a comparison that stand below the firms and are none's offer: their mean, their least, last year's price."""

from collections.abc import Mapping

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.rows.neighbours import Neighbours
from tracker.intake.tables.table import Headings, Table
from tracker.intake.values.firms.no_firms import NoFirm, doubted, no_firm
from tracker.intake.values.heads.roles import Role

_MEASURED = (Role.CALIPER, Role.WEIGHT)


def no_vendors(table: Table, columns: Columns, neighbours: Neighbours, *, once: bool) -> dict[int, tuple[str, str]]:
    """Why rows offer nothing, and why they may be no offers, by row; `once`: a firm's name holds for the rows below it.

    Nothing where no other firm quotes in the table: 'Total' over all of a list is who quotes.
    """
    vendors = columns.of(Role.VENDOR)
    if len(vendors) != 1:
        return {}
    named = {
        row.index: cell
        for row in table.rows
        if (cell := table.view.rows[row.index].get(vendors[0].index)) is not None and isinstance(cell.value, str)
    }
    told = {row: said for row, cell in named.items() if (said := no_firm(cell.text)) is not None}
    if not told or len(told) == len(named):
        return {}
    firms = {row: cell.text.strip() for row, cell in named.items() if row not in told}
    boards: dict[tuple[str, ...], dict[int, str]] = {}
    for at, firm in firms.items():
        boards.setdefault(_board(table.view.rows[at], columns), {})[at] = firm
    found: dict[int, tuple[str, str]] = {}
    last: tuple[str, str] | None = None
    below: Headings | None = None
    for row in table.rows:
        cells = table.view.rows[row.index]
        last = last if once and row.index not in named and row.headings is below else None
        below = row.headings
        if row.index in told:
            alike = boards.get(_board(cells, columns), {})
            made = neighbours.made_of(cells, alike) or _sums_up(row.index, cells, columns, neighbours)
            summed = made or neighbours.far_below_rows(cells, firms)
            said = _by_its_place(told[row.index], row.index, named[row.index].text, alike or firms)
            last = _why(said, named[row.index], summed=summed)
        if last is not None:
            found[row.index] = last
    return found


def _board(cells: Mapping[int, Cell], columns: Columns) -> tuple[str, ...]:
    """What a row says of its board: it is the same one where another row says the same."""
    return tuple(cells[one.index].text.strip() if one.index in cells else "" for one in columns.of(*_OF_BOARDS))


_OF_BOARDS = (Role.PRODUCT, Role.GRADE, *_MEASURED)


def _by_its_place(said: NoFirm, row: int, text: str, firms: dict[int, str]) -> NoFirm:
    """Above all firms that quote its board, 'Delta' or 'Budget' may be one of them; 'Target' is none below all that are
    compared."""
    if row < min(firms):
        return doubted(said, text)
    compared = row > max(firms) and len(set(firms.values())) > 1
    return NoFirm.NOT_OFFERED if said is NoFirm.MAY_BE_MEANT and compared else said


def _sums_up(row: int, cells: dict[int, Cell], columns: Columns, neighbours: Neighbours) -> bool:
    """Whether a row's figures are made of those above it, or are far from what any board costs."""
    measured = frozenset(column.index for column in columns.of(*_MEASURED))
    return neighbours.sum_up(row, cells) or neighbours.far_below(cells, measured)


def _why(said: NoFirm, cell: Cell, *, summed: bool) -> tuple[str, str]:
    doubtful = said in (NoFirm.MAY_BE_OTHERS, NoFirm.MAY_BE_MEANT) or (said is NoFirm.MAY_BE_SUMMED and not summed)
    if doubtful:
        return "", f"“{cell.text.strip()}” may be no firm, and the price {said.value}"
    return (NoFirm.SUMMED if said is NoFirm.MAY_BE_SUMMED else said).value, ""
