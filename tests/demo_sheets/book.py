"""An .xlsx file with a pen of its own: the few looks that price lists have, and the same bytes every time."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import Any

import xlsxwriter
from xlsxwriter.format import Format
from xlsxwriter.worksheet import Worksheet

LOOKS: dict[str, dict[str, Any]] = {
    "title": {"bold": True, "font_size": 15},
    "quiet": {"italic": True, "font_color": "#555555"},
    "head": {"bold": True, "bottom": 1, "text_wrap": True, "valign": "top", "bg_color": "#E8ECEF"},
    "group": {"bold": True, "bg_color": "#F3F0E6"},
    "date": {"num_format": "d mmm yyyy", "align": "left"},
    "plain": {},
}


class Pen:
    """One open workbook. Numbers are written under the number format named by the caller."""

    def __init__(self, path: Path) -> None:
        self.book = xlsxwriter.Workbook(path, {"in_memory": True})
        self.book.set_properties({"created": datetime(2026, 11, 1)})
        self._formats: dict[str, Format] = {}

    def sheet(self, name: str, widths: Sequence[float] = ()) -> Worksheet:
        sheet = self.book.add_worksheet(name)
        for column, width in enumerate(widths):
            sheet.set_column(column, column, width)
        return sheet

    def look(self, name: str) -> Format:
        """A look by its name, or a number format by its code."""
        if name not in self._formats:
            self._formats[name] = self.book.add_format(LOOKS.get(name, {"num_format": name}))
        return self._formats[name]

    def row(self, sheet: Worksheet, row: int, values: Sequence[Any], looks: Sequence[str] | str = "plain") -> None:
        """Values from the first column on (None leaves a cell empty); one look for all or one each."""
        each = [looks] * len(values) if isinstance(looks, str) else looks
        for column, (value, look) in enumerate(zip(values, each, strict=True)):
            if value is not None:
                sheet.write(row, column, value, self.look(look))


@contextmanager
def new_book(path: Path) -> Iterator[Pen]:
    pen = Pen(path)
    yield pen
    pen.book.close()
