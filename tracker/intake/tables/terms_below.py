"""Rows right below a comparison that tell of each of its columns alone when board comes, and at whose freight.

GC2      | 250    | 1205                | 1188
Incoterm |        | franco destination  | DAP Lyon
Délai    |        | 3 semaines          | 5 semaines
"""

from collections.abc import Iterator
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.table import HeadedColumn, Table
from tracker.intake.tables.view import View
from tracker.intake.values.role_words import header_roles
from tracker.intake.values.roles import Role

_FEWEST = 2
_PLAINLY = 0.8
_TERMS = frozenset({Role.DELIVERY_TERMS, Role.VALIDITY, Role.LEAD_TIME})


def with_terms_below(table: Table, view: View) -> Table:
    """The table with what the rows right below it say of its columns, as lines of these."""
    said: dict[int, list[Cell]] = {}
    for label, values in _rows(table, view):
        for column, cell in values.items():
            text = f"{label.text.strip().rstrip(' :')}: {cell.text.strip()}"
            said.setdefault(column, []).append(cell._replace(text=text))
    if said:
        table.columns = tuple(_with_lines(column, said) for column in table.columns)
    return table


def _with_lines(column: HeadedColumn, said: dict[int, list[Cell]]) -> HeadedColumn:
    return replace(column, lines=(*column.lines, *said.get(column.index, ())))


def _rows(table: Table, view: View) -> Iterator[tuple[Cell, dict[int, Cell]]]:
    """Labels of terms, and the words beside them, each under figures of the table's last rows; other rows are passed,
    and the first empty one ends them."""
    priced = {at for row in table.rows for at, cell in view.rows.get(row.index, {}).items() if is_figure(cell)}
    row = table.last_row + 1
    while row in view.rows:
        first, *rest = sorted(view.rows[row])
        label = view.rows[row][first]
        values = {at: view.rows[row][at] for at in rest}
        in_words = all(isinstance(cell.value, str) and any(map(str.isalpha, cell.text)) for cell in values.values())
        if in_words and len(values) >= _FEWEST and values.keys() <= priced and first not in priced and _is_term(label):
            yield label, values
        row += 1


def _is_term(label: Cell) -> bool:
    return isinstance(label.value, str) and any(
        reading.role in _TERMS and reading.strength >= _PLAINLY for reading in header_roles(label.text)
    )
