"""Rows of plain values written as CSV or as a spreadsheet, so that no program runs what a vendor wrote in a cell."""

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any, TextIO

from tracker.desk.collecting import no_collecting
from tracker.desk.trouble import Trouble
from tracker.reports.safe_text import spreadsheet_text

Rows = Sequence[Mapping[str, Any]]

_WIDEST_COLUMN = 42
_LONGEST_CELL = 32_767
_AT_A_TIME = 1_000
"""Rows of a CSV file: while pandas handles some it lets no other thread, a window's neither, do anything."""
_NOT_IN_XML = dict.fromkeys((*range(9), 11, 12, *range(14, 32)))


def flat(nested: Mapping[str, Any], before: str = "") -> dict[str, Any]:
    """A JSON object as one row: nested keys joined by '_', lists as one text."""
    row: dict[str, Any] = {}
    for key, value in nested.items():
        if isinstance(value, Mapping):
            row.update(flat(value, f"{before}{key}_"))
        else:
            row[f"{before}{key}"] = " ".join(map(str, value)) if isinstance(value, list) else value
    return row


def write_csv(rows: Rows, path: Path) -> None:
    """UTF-8 with a byte-order mark, so that a spreadsheet program reads its letters rightly. Trouble if it can't."""
    headings = _headings(rows)
    # Loading pandas makes so many objects that a window, on its other thread, would wait while they are searched.
    with no_collecting():
        try:
            with path.open("w", encoding="utf-8-sig", newline="") as file:
                for start in range(0, max(1, len(rows)), _AT_A_TIME):
                    _write_some(rows[start : start + _AT_A_TIME], headings, file, first=start == 0)
        except OSError as problem:
            raise _not_written(path, problem) from problem


def _write_some(rows: Rows, headings: Sequence[str], file: TextIO, *, first: bool) -> None:
    from pandas import DataFrame

    values = [[_csv_value(row.get(heading)) for heading in headings] for row in rows]
    # As objects: a column of whole numbers with a gap would else become one of decimals.
    frame = DataFrame(values, columns=headings, dtype=object)
    frame.to_csv(file, index=False, header=first, lineterminator="\r\n")


def write_xlsx(rows: Rows, path: Path, title: str, meaning: str = "") -> None:
    """A sheet with a heading row that stays in sight; what its figures mean, if said, on a second one. Trouble if it
    can't be written."""
    from openpyxl import Workbook
    from openpyxl.utils import get_column_letter

    book = Workbook()
    sheet = book.active
    sheet.title = title
    sheet.freeze_panes = "A2"
    headings = _headings(rows)
    lines: list[list[Any]] = [list(headings), *([row.get(heading) for heading in headings] for row in rows)]
    for number, values in enumerate(lines, start=1):
        for column, value in enumerate(values, start=1):
            if value is not None:
                _fill(sheet.cell(number, column), value)
    for column, letters in enumerate(_widths(lines), start=1):
        sheet.column_dimensions[get_column_letter(column)].width = letters
    if meaning:
        _fill(book.create_sheet("What the prices mean").cell(1, 1), meaning)
    try:
        book.save(path)
    except OSError as problem:
        raise _not_written(path, problem) from problem


def _widths(lines: Sequence[Sequence[Any]]) -> list[int]:
    """In letters, wide enough for what stands in each column up to a bound."""
    longest = (max(len(str(value)) for value in values if value is not None) for values in zip(*lines, strict=True))
    return [min(_WIDEST_COLUMN, each + 2) for each in longest]


def _fill(cell: Any, value: Any) -> None:
    if not isinstance(value, str):
        cell.value = value
        return
    cell.value = value.translate(_NOT_IN_XML)[:_LONGEST_CELL]
    # Text that begins with = would else be taken for a formula.
    cell.data_type = "s"


def _headings(rows: Rows) -> list[str]:
    return list(dict.fromkeys(heading for row in rows for heading in row))


def _csv_value(value: Any) -> Any:
    return spreadsheet_text(value) if isinstance(value, str) else value


def _not_written(path: Path, problem: OSError) -> Trouble:
    return Trouble(
        f"{path} can't be written ({problem.strerror}): close it if it is open elsewhere, or choose another place."
    )
