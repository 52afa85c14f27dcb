"""Old binary workbooks (.xls, BIFF 2 to 8) through xlrd, with their formats."""

import io
from typing import Any

from tracker.intake.files.cell_values import clean, raised
from tracker.intake.files.cells import (
    GENERAL,
    RowBuilder,
    SheetCells,
    Stored,
    Style,
    error_cell,
    formula_without_value,
    joined_runs,
)
from tracker.intake.files.number_formats import built_in
from tracker.intake.files.sniff import Wrong
from tracker.intake.files.xls_formulas import never_calculated
from tracker.intake.grid import Grid, MergedRange


def read_xls(content: bytes) -> tuple[Grid, ...]:
    """Every worksheet in order. Raises Wrong for one under a password."""
    import xlrd

    try:
        book = xlrd.open_workbook(file_contents=content, formatting_info=True, logfile=io.StringIO(), ragged_rows=True)
    except xlrd.XLRDError as error:
        if "encrypt" in str(error).lower():
            raise Wrong("is protected by a password", "save a copy without the password and import that") from error
        raise
    styles = _styles(book)
    return tuple(_grid(book, content, number, styles) for number in range(book.nsheets))


def _styles(book: Any) -> list[Style]:
    styles: list[Style] = []
    for form in book.xf_list:
        known = book.format_map.get(form.format_key)
        code = known.format_str if known is not None else built_in(form.format_key)
        struck = form.font_index < len(book.font_list) and bool(book.font_list[form.font_index].struck_out)
        styles.append(Style(code or "General", struck))
    return styles


def _grid(book: Any, content: bytes, number: int, styles: list[Style]) -> Grid:
    sheet = book.sheet_by_index(number)
    builder = RowBuilder()
    strikes = _StruckRuns(book, sheet)
    uncalculated = never_calculated(book, content, number)
    for row in range(sheet.nrows):
        forms, kinds, values = sheet._cell_xf_indexes[row], sheet.row_types(row), sheet.row_values(row)
        builder.add(
            row,
            [
                (column, styles[form] if form < len(styles) else GENERAL, strikes.applied(row, column, stored))
                for column, (form, kind, value) in enumerate(zip(forms, kinds, values, strict=True))
                if (stored := _stored(kind, value, (row, column) in uncalculated)) is not None
            ],
        )
    comments = {place: clean(note.text) for place, note in sheet.cell_note_map.items() if note.text}
    cells = SheetCells(builder.rows, epoch_1904=book.datemode == 1, comments=comments)
    width = cells.extent()[1]
    return Grid(
        sheet.name,
        cells,
        tuple(MergedRange(top, left, bottom - 1, right - 1) for top, bottom, left, right in sheet.merged_cells),
        frozenset(row for row, facts in sheet.rowinfo_map.items() if facts.hidden or facts.height == 0),
        frozenset(
            column
            for column, facts in sheet.colinfo_map.items()
            if (facts.hidden or facts.width == 0) and column < width
        ),
        sheet.visibility != 0,
    )


def _stored(kind: int, value: Any, is_uncalculated: bool) -> Stored | None:
    import xlrd

    if is_uncalculated:
        return formula_without_value("")
    if kind in (xlrd.XL_CELL_NUMBER, xlrd.XL_CELL_DATE):
        return float(value)
    if kind == xlrd.XL_CELL_TEXT:
        return clean(value) or None
    if kind == xlrd.XL_CELL_BOOLEAN:
        return bool(value)
    if kind == xlrd.XL_CELL_ERROR:
        return error_cell(xlrd.error_text_from_code.get(value, "#VALUE!"))
    return None


class _StruckRuns:
    """Texts of which only a part is struck through or raised: a void run is left out and told in the comment."""

    def __init__(self, book: Any, sheet: Any) -> None:
        self._fonts = book.font_list
        self._runs = sheet.rich_text_runlist_map

    def applied(self, row: int, column: int, stored: Stored) -> Stored:
        runs = self._runs.get((row, column))
        if not runs or not isinstance(stored, str):
            return stored
        starts = [0, *(start for start, _ in runs), len(stored)]
        fonts = [None, *(font for _, font in runs)]
        pieces = [
            (stored[start:stop], font)
            for start, stop, font in zip(starts, starts[1:], fonts, strict=False)
            if start < stop
        ]
        return joined_runs([(self._shown(text, font), self._is_struck(font)) for text, font in pieces])

    def _shown(self, text: str, font: int | None) -> str:
        is_raised = font is not None and font < len(self._fonts) and self._fonts[font].escapement == 1
        return raised(text) if is_raised else text

    def _is_struck(self, font: int | None) -> bool:
        return font is not None and font < len(self._fonts) and bool(self._fonts[font].struck_out)
