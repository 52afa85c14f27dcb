"""Tables that a person marked by hand: found again in a sheet by the words of its header row, and cut out as marked."""

from collections.abc import Sequence

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES, looks_priced
from tracker.intake.tables.rows.body import body_of
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of
from tracker.intake.words.fold import fold
from tracker.trade.layout import Layout

_PRICED = frozenset(role.value for role in PRICE_ROLES)


def fitting(view: View, sha256: str, layouts: Sequence[Layout]) -> Layout | None:
    """The first layout that this sheet can be read by: the one marked in it, else one whose header row it repeats."""
    for layout in layouts:
        if marked_here(view, sha256, layout) or _span(view, layout) is not None:
            return layout
    return None


def marked_table(view: View, sha256: str, layout: Layout) -> SheetTables:
    """The sheet's one table as the layout has it, and everything else that the sheet says."""
    header, first, last = _rows_marked(view, sha256, layout)
    inside = [row for row in view.order if row >= first and (last is None or row <= last)]
    body = body_of(view, inside, frozenset(one.index for one in layout.columns if one.role in _PRICED))
    columns = tuple(HeadedColumn(one.index, _heads(view, one.index, header, first)) for one in layout.columns)
    top = first if header is None else header
    end = body.rows[-1].index if body.rows else first
    around = [row for row in view.order if row < top or (last is not None and row > last)]
    table = Table(view, columns, body.rows, top, end, tuple(_stated(view, layout, top)))
    return SheetTables(view, (table,), tuple(words_of(view, [*around, *body.after])))


def priced_outside(view: View, sha256: str, layout: Layout) -> tuple[int, ...]:
    """The rows that the marks leave out although something stands in their column of prices that may be one."""
    header, first, last = _rows_marked(view, sha256, layout)
    priced = frozenset(one.index for one in layout.columns if one.role in _PRICED)
    left_out = (row for row in view.order if row != header and (row < first or (last is not None and row > last)))
    return tuple(row for row in left_out if _has_price(view, row, priced))


def _has_price(view: View, row: int, priced: frozenset[int]) -> bool:
    """A figure below the marked heads, with something beside it: a page number stands alone."""
    cells = view.rows[row]
    return len(cells) > 1 and any(looks_priced(cells[column]) for column in priced if column in cells)


def _rows_marked(view: View, sha256: str, layout: Layout) -> tuple[int | None, int, int | None]:
    """Header row, first and last row of the table in this sheet, which the layout is known to fit."""
    if marked_here(view, sha256, layout):
        return layout.header_row, layout.first_row, layout.last_row
    span = _span(view, layout)
    assert span is not None
    return span


def marked_words(layout: Layout) -> str:
    """The grade that the user says the whole table is, as a text that says it was marked."""
    return f"{layout.grade}, as you marked it" if layout.grade else ""


def _stated(view: View, layout: Layout, row: int) -> list[Words]:
    text = marked_words(layout)
    return [Words(view.sheet, row, Cell(row, 0, text, text), text)] if text else []


def marked_here(view: View, sha256: str, layout: Layout) -> bool:
    """Whether the user marked this very sheet, and not an earlier one that it looks like."""
    return layout.of_file == sha256 and layout.sheet == view.sheet


def _heads(view: View, column: int, header: int | None, first: int) -> tuple[Cell, ...]:
    """The header cell of a column, the merged one that groups it, and what stands before the first offer (units)."""
    if header is None or header not in view.rows:
        return ()
    cells = (view.spread_cell(row, column) for row in range(header, first))
    return (*_group_above(view, column, header), *(cell for cell in cells if cell is not None))


def _group_above(view: View, column: int, header: int) -> tuple[Cell, ...]:
    """'Order size (lbs)' merged over several columns of the header row; a title over one or all groups nothing."""
    cell = view.spread_cell(header - 1, column)
    if cell is None:
        return ()
    left, right = view.span(cell)
    heads = view.rows[header]
    return (cell,) if right > left and (left > min(heads) or right < max(heads)) else ()


def _span(view: View, layout: Layout) -> tuple[int, int, int | None] | None:
    """Header row, first and last row of the layout's table in another file; None where it does not fit for certain."""
    if not layout.serves_others or layout.header_row is None:
        return None
    wanted = {column: _plain(text) for column, text in layout.heads}
    header = next((row for row in view.order if _says(view, row) == wanted), None)
    if header is None:
        return None
    first = header + layout.first_row - layout.header_row
    if layout.last_row is None or not layout.end_words:
        return header, first, None
    ended = next((row for row in view.order if row >= first and _begins(view, row) == _plain(layout.end_words)), None)
    return None if ended is None else (header, first, ended - 1)


def _says(view: View, row: int) -> dict[int, str]:
    return {column: _plain(cell.text) for column, cell in view.rows[row].items()}


def _begins(view: View, row: int) -> str:
    """The first text of a row."""
    cells = view.rows[row]
    return _plain(cells[min(cells)].text)


def _plain(text: str) -> str:
    return " ".join(fold(text).split())
