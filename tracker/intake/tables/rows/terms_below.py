"""Rows right below a comparison that tell of each of its columns alone when board comes, and at whose freight.

GC2      | 250    | 1205                | 1188
Incoterm |        | franco destination  | DAP Lyon
Délai    |        | 3 semaines          | 5 semaines
"""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date
from functools import cache

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.heads import looks_priced
from tracker.intake.tables.table import BodyRow, HeadedColumn, Table
from tracker.intake.tables.view import View
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.times.dates import find_dates

_FEWEST = 2
_PLAINLY = 0.8
_TERMS = frozenset({Role.DELIVERY_TERMS, Role.VALIDITY, Role.LEAD_TIME})
_OF_COLUMNS = _TERMS | {Role.MINIMUM}


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
    """Labels of terms, and what stands beside them, each under figures of the table's last rows; other rows are passed,
    and the first empty one ends them. Those that went on as rows of the table are taken out of it."""
    rows = tuple(table.rows)

    @cache
    def figured() -> set[int]:
        # Of a long list it takes long to tell, and hardly one ends with what may be terms.
        return {at for row in rows for at, cell in view.rows.get(row.index, {}).items() if is_figure(cell)}

    def told_by(row: BodyRow) -> tuple[Cell, dict[int, Cell]] | None:
        return _terms_in(view.rows.get(row.index, {}), figured)

    last: list[tuple[Cell, dict[int, Cell]]] = []
    while len(rows) > len(last) + 1 and (told := told_by(rows[-1 - len(last)])) is not None:
        last.append(told)
    # Rows of terms among the boards as well: each may be of those that it stands below.
    if last and not any(map(told_by, rows[: -len(last)])):
        del table.rows[-len(last) :]
        yield from last
    row = table.last_row + 1
    table.last_row = table.rows[-1].index
    while row in view.rows:
        told = _terms_in(view.rows[row], figured)
        if told is not None:
            yield told
        row += 1


def _terms_in(cells: Mapping[int, Cell], figured: Callable[[], set[int]]) -> tuple[Cell, dict[int, Cell]] | None:
    """A label and what several columns of prices say of it. `figured`: the columns in which figures stand above."""
    if not cells:
        return None
    first, *rest = sorted(cells)
    values = {at: cells[at] for at in rest}
    told = len(values) >= _FEWEST and all(map(_tells, values.values())) and _is_term(cells[first])
    # 'Lieferzeit' may stand below the basis weights, at the left of all figures.
    below_prices = told and values.keys() <= figured() and (first not in figured() or first == min(figured()))
    return (cells[first], values) if below_prices else None


def tells_terms_of_prices(cells: Mapping[int, Cell], valued: Collection[int]) -> bool:
    """'Minimum order | 5 t | | 5 t', with a label of terms and words in several columns of prices alone: a row of the
    table, and no heading of the next."""
    if len(cells) < _FEWEST:
        return False
    first, *rest = sorted(cells)
    if len(rest) == 1 and not _is_of_one_column(rest[0], first, [at for at in valued if at > first]):
        return False
    if not all(index in valued and _tells_or_leaves_out(cells[index]) for index in rest):
        return False
    return any(_tells(cells[index]) for index in rest) and _names(cells[first], _OF_COLUMNS)


def leads_to_prices(view: View, row: int, valued: Collection[int]) -> bool:
    """Whether prices stand below a row without a gap: below an empty row, 'Delivery | FOB mill | delivered' may head
    them. Other terms, and what is charged for one, 'Freight | 45 | 50', go on with the table above."""
    while (row := row + 1) in view.rows:
        cells = view.rows[row]
        label, *rest = (cell for _, cell in sorted(cells.items()))
        figures = any(index in valued and looks_priced(cell) for index, cell in cells.items() if cell in rest)
        if figures and not (tells_terms_of_prices(cells, valued) or charges_named(label.text)):
            return True
    return False


def _is_of_one_column(at: int, label: int, valued: Sequence[int]) -> bool:
    """'Minimum order | | 5 t' below one of several prices alone; right beside its label it may be told of all."""
    return len(valued) > 1 and at != label + 1


def _tells_or_leaves_out(cell: Cell) -> bool:
    return _tells(cell) or not any(map(str.isalnum, cell.text))


def _tells(cell: Cell) -> bool:
    """Words, or a day; a figure may be a price."""
    words = isinstance(cell.value, str) and any(map(str.isalpha, cell.text))
    return words or isinstance(cell.value, date) or bool(find_dates(cell.text))


def _is_term(label: Cell) -> bool:
    return _names(label, _TERMS)


def _names(label: Cell, roles: Collection[Role]) -> bool:
    return isinstance(label.value, str) and any(
        reading.role in roles and reading.strength >= _PLAINLY for reading in header_roles(label.text)
    )
