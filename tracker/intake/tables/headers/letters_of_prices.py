"""Letters that tell prices apart right before a dollar sign: the A of 'Price A $/t' beside 'Price B $/t' is not
Australia's."""

import re
from collections import defaultdict
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.table import SheetTables, Table
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
    columns = (replace(one, heads=tuple(apart.get(cell, cell) for cell in one.heads)) for one in table.columns)
    return replace(table, columns=tuple(columns)) if apart else table


def _have_letters(cells: set[Cell]) -> bool:
    return len({_LETTERED.sub(r"\g<letter>", cell.text) for cell in cells}) > 1


def _with_unit_apart(cell: Cell) -> Cell:
    text = _LETTERED.sub(r"\g<unit> \g<named>\g<letter>", cell.text)
    return cell._replace(value=text, text=text)
