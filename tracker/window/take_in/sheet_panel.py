"""A workbook: its sheets as words to choose from, the chosen one as a grid."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFrame, QWidget

from tracker.window.look.theme import Theme
from tracker.window.pieces import column, row, words
from tracker.window.take_in.cells import Use, place_of
from tracker.window.take_in.sheet_view import SheetView


class SheetPanel(QFrame):
    """Shows a workbook. `pointed` carries sheet name, row, column where the user goes."""

    pointed = Signal(str, int, int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._workbook: Any = None
        self._uses: Mapping[str, Mapping[tuple[int, int], Use]] = {}
        self._title = words("", "heading")
        self._sheets = QComboBox()
        self._sheets.setAccessibleName("Sheet of the file")
        self._sheets.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self._sheets.currentIndexChanged.connect(self._show_sheet)
        self.view = SheetView(theme)
        self.view.pointed.connect(self._pointed)
        self._why = words("", "quiet", wrap=True)
        self._why.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._why.setContentsMargins(16, 8, 16, 8)
        self._why.hide()
        heading = row(self._title, None, self._sheets, margins=(16, 8, 10, 8))
        self.setLayout(column(heading, self._why, self.view, margins=(1, 1, 1, 1), grow=2))

    def show_workbook(self, workbook: Any, uses: Mapping[str, Mapping[tuple[int, int], Use]]) -> None:
        """Shows a workbook, at its first sheet that was used."""
        self._workbook = workbook
        self._uses = uses
        self._title.setText(workbook.file)
        self._why.hide()
        self.view.show()
        self._sheets.blockSignals(True)
        self._sheets.clear()
        for grid in workbook.grids:
            self._sheets.addItem((grid.sheet or "the file's one table") + (" (hidden)" if grid.hidden else ""))
        self._sheets.setVisible(len(workbook.grids) > 1)
        self._sheets.blockSignals(False)
        used = [place for place, grid in enumerate(workbook.grids) if uses.get(grid.sheet)]
        self._sheets.setCurrentIndex(used[0] if used else 0)
        self._show_sheet()

    def show_nothing(self, file: str, why: str) -> None:
        """There is no sheet to show, and why."""
        self._workbook = None
        self._title.setText(file)
        self._sheets.hide()
        self.view.hide()
        self._why.setText(why)
        self._why.show()

    def mark(self, uses: Mapping[str, Mapping[tuple[int, int], Use]]) -> None:
        """Marks other cells of the same workbook."""
        self._uses = uses
        grid = self._grid()
        if grid is not None:
            self.view.mark(uses.get(grid.sheet, {}))

    def go_to(self, sheet: str, address: str) -> None:
        """Brings a cell of a sheet into view."""
        place = place_of(address)
        if self._workbook is None or place is None:
            return
        for number, grid in enumerate(self._workbook.grids):
            if grid.sheet == sheet and number != self._sheets.currentIndex():
                self._sheets.setCurrentIndex(number)
        self.view.go_to(place)

    def _grid(self) -> Any:
        number = self._sheets.currentIndex()
        if self._workbook is None or not 0 <= number < len(self._workbook.grids):
            return None
        return self._workbook.grids[number]

    def _show_sheet(self) -> None:
        grid = self._grid()
        if grid is not None:
            self.view.show_grid(grid, self._uses.get(grid.sheet, {}))

    def _pointed(self, at_row: int, at_column: int) -> None:
        grid = self._grid()
        if grid is not None:
            self.pointed.emit(grid.sheet, at_row, at_column)
