"""From a line to its cells in the sheet, and from a cell to its line."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from tracker.trade.offer import Line
from tracker.window.take_in.evidence import cells_of
from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.sheet_panel import SheetPanel
from tracker.window.take_in.understood import Understood


class Pointing(QObject):
    """Has the sheet and the lines understood of it point at each other. `at_hand` gives the file that is shown."""

    def __init__(self, sheet: SheetPanel, understood: Understood, at_hand: Callable[[], FileAtHand | None]) -> None:
        super().__init__(sheet)
        self._sheet, self._understood, self._at_hand = sheet, understood, at_hand
        understood.line_chosen.connect(self._show_line)
        understood.line.cell_wanted.connect(sheet.go_to)
        sheet.pointed.connect(self._show_line_at)

    def _show_line(self, line: Line | None) -> None:
        if line is None:
            self._sheet.point_out({})
            return
        source = line.offer.source
        self._sheet.go_to(source.sheet, source.cell)
        self._sheet.point_out(cells_of(source, line.evidence))

    def _show_line_at(self, sheet: str, at_row: int, at_column: int) -> None:
        file = self._at_hand()
        if file is None or file.taken is None:
            return
        number = file.found.line_at.get((sheet, (at_row, at_column)))
        if number is not None:
            line = file.taken.reading.lines[number]
            self._understood.go_to(number)
            self._sheet.point_out(cells_of(line.offer.source, line.evidence))
