"""Letters that tell prices apart right before a dollar sign: the A of 'Price A $/t' beside 'Price B $/t' is not
Australia's, and the C of 'Price C $/ST' beside 'Price US $/ST' is Canada's."""

import re
from collections import defaultdict
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.table import SheetTables, Table
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.fold import fold

_LETTERED = re.compile(r"\s*(?P<named>(?:.*\s)?)(?P<letter>[A-Z])\s+(?P<unit>\$[^$]*?)\s*$")


def with_letters_of_prices(found: SheetTables) -> SheetTables:
    """The tables with such heads as '$/t Price A', where another of the row has another letter in the same place."""
    return replace(found, tables=tuple(map(_with_letters, found.tables)))


def _with_letters(table: Table) -> Table:
    alike: dict[tuple[int, str, str], set[Cell]] = defaultdict(set)
    for column in table.columns:
        for cell in column.heads:
            said = _LETTERED.match(cell.text)
            if said is not None:
                alike[cell.row, fold(said["named"]).strip(), fold(said["unit"])].add(cell)
    apart = {cell: _with_unit_apart(cell) for cells in alike.values() if _have_letters(cells) for cell in cells}
    if _names_the_states(table):
        lone = (cell for cells in alike.values() if not _have_letters(cells) for cell in cells)
        apart |= {cell: joined for cell in lone if (joined := _with_sign(cell)) is not None}
    columns = (replace(one, heads=tuple(apart.get(cell, cell) for cell in one.heads)) for one in table.columns)
    return replace(table, columns=tuple(columns)) if apart else table


def _have_letters(cells: set[Cell]) -> bool:
    return len({_LETTERED.sub(r"\g<letter>", cell.text) for cell in cells}) > 1


def _with_unit_apart(cell: Cell) -> Cell:
    text = _LETTERED.sub(r"\g<unit> \g<named>\g<letter>", cell.text)
    return cell._replace(value=text, text=text)


def _names_the_states(table: Table) -> bool:
    """Whether a head says 'US $' or 'USD' outright, which sets any other dollar apart from it."""
    said = (reading for column in table.columns for cell in column.heads for reading in find_currencies(cell.text))
    return any(reading.code == "USD" for reading in said)


def _with_sign(cell: Cell) -> Cell | None:
    """'Price C$/ST', where that is Canada's dollar; None for other letters."""
    text = _LETTERED.sub(r"\g<named>\g<letter>\g<unit>", cell.text)
    canadas = any(reading.code == "CAD" for reading in find_currencies(text))
    return cell._replace(value=text, text=text) if canadas else None
