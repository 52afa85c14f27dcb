"""A workbook: its sheets as words to choose from, the chosen one as a grid."""

from __future__ import annotations

from collections.abc import Mapping, Set
from typing import Any

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QComboBox, QFrame, QWidget

from tracker.window.look.theme import Theme
from tracker.window.pieces import button, column, row, words
from tracker.window.take_in.cells import Use, place_of
from tracker.window.take_in.marking import Marking
from tracker.window.take_in.marking_strip import MarkingStrip
from tracker.window.take_in.sheet_view import SheetView

_NARROWEST_TITLE, _WIDEST_TITLE, _AROUND_NAME = 80, 260, 40


class SheetPanel(QFrame):
    """Shows a workbook. `pointed` carries sheet name, row, column where the user goes; `sheet_shown` says that another
    sheet of it is looked at. With `marking` a table can be marked by hand in it."""

    pointed = Signal(str, int, int)
    sheet_shown = Signal()
    marking_wanted = Signal(bool)

    def __init__(self, theme: Theme, parent: QWidget | None = None, *, marking: bool = False) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._workbook: Any = None
        self._points: Mapping[str, Set[tuple[int, int]]] = {}
        self.strip = MarkingStrip()
        self.strip.hide()
        self.mark_by_hand = button("Mark by hand", "word")
        self.mark_by_hand.setToolTip("Say where the table is and what its columns hold")
        self._can_mark = marking
        self.mark_by_hand.hide()
        self.mark_by_hand.clicked.connect(lambda: self.marking_wanted.emit(True))
        self.strip.ended.connect(lambda: self.marking_wanted.emit(False))
        self._uses: Mapping[str, Mapping[tuple[int, int], Use]] = {}
        self._title = words("", "heading")
        self._title.setMinimumWidth(_NARROWEST_TITLE)
        self._name = ""
        self._sheets = QComboBox()
        self._sheets.setAccessibleName("Sheet of the file")
        self._sheets.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self._sheets.currentIndexChanged.connect(self._show_sheet)
        self.view = SheetView(theme)
        self.view.pointed.connect(self._pointed)
        self.view.stands.connect(self.strip.stand_at)
        if marking:
            self.view.key_pressed.connect(self.strip.press)
            self.view.menu_wanted.connect(self._open_menu)
        self._why = words("", "quiet", wrap=True)
        self._why.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._why.setContentsMargins(16, 8, 16, 8)
        self._why.hide()
        beside = row(None, self.mark_by_hand, self._sheets, gap=8)
        self._heading = row(self._title, beside, margins=(16, 8, 10, 8), gap=8, grow=1)
        layout = column(self._heading, self.strip, self._why, self.view, margins=(1, 1, 1, 1), grow=3)
        # Where there is no sheet to see, its name stays at the top all the same.
        layout.setStretchFactor(self._why, 1)
        self.setLayout(layout)

    def show_workbook(self, workbook: Any, uses: Mapping[str, Mapping[tuple[int, int], Use]]) -> None:
        """Shows a workbook, at its first sheet that was used."""
        self._workbook = workbook
        self._uses = uses
        self.mark_by_hand.setVisible(self._can_mark and self.strip.isHidden())
        self._why.hide()
        self.view.show()
        self._sheets.blockSignals(True)
        self._sheets.clear()
        for grid in workbook.grids:
            self._sheets.addItem((grid.sheet or "the file's one table") + (" (hidden)" if grid.hidden else ""))
        self._sheets.setVisible(len(workbook.grids) > 1)
        self._sheets.blockSignals(False)
        self._show_name(workbook.file)
        self._points = {}
        used = [place for place, grid in enumerate(workbook.grids) if uses.get(grid.sheet)]
        self._sheets.setCurrentIndex(used[0] if used else 0)
        self._show_sheet()

    def show_nothing(self, file: str, why: str) -> None:
        """There is no sheet to show, and why."""
        self._workbook = None
        self._show_name(file)
        for part in (self._sheets, self.view, self.strip, self.mark_by_hand):
            part.hide()
        self._why.setText(why)
        self._why.show()

    def mark(self, uses: Mapping[str, Mapping[tuple[int, int], Use]]) -> None:
        """Marks other cells of the same workbook."""
        self._uses = uses
        grid = self.grid
        if grid is not None:
            self.view.mark(uses.get(grid.sheet, {}))

    def point_out(self, places: Mapping[str, Set[tuple[int, int]]]) -> None:
        """Rings the cells that one offer was read from, by sheet."""
        self._points = places
        if self.grid is not None:
            self.view.point_out(places.get(self.grid.sheet, frozenset()))

    def show_marking(self, marking: Marking | None) -> None:
        """Opens the strip for marking by hand with what is marked so far; None closes it."""
        self.strip.setVisible(marking is not None)
        self.mark_by_hand.setVisible(self._can_mark and marking is None and self._workbook is not None)
        if marking is not None:
            grid = self.grid
            own = marking if grid is not None and marking.sheet == grid.sheet else Marking(grid.sheet if grid else "")
            self.strip.show_marking(own, grid)
            self.view.show_marking(own)
        else:
            self.view.show_marking(None)

    def go_to(self, sheet: str, address: str) -> None:
        """Brings a cell of a sheet into view."""
        place = place_of(address)
        if self._workbook is None or place is None:
            return
        for number, grid in enumerate(self._workbook.grids):
            if grid.sheet == sheet and number != self._sheets.currentIndex():
                self._sheets.setCurrentIndex(number)
        self.view.go_to(place)

    @property
    def grid(self) -> Any:
        """The sheet that is looked at; None for none."""
        number = self._sheets.currentIndex()
        if self._workbook is None or not 0 <= number < len(self._workbook.grids):
            return None
        return self._workbook.grids[number]

    @property
    def wanted_width(self) -> int:
        """In pixels, with every column of the sheet in view, and its name whole unless that is a long one."""
        name = min(_WIDEST_TITLE, self._title.fontMetrics().horizontalAdvance(self._name))
        return max(self.view.wanted_width, name + self._beside_name()) + 2 * self.frameWidth()

    def _show_sheet(self) -> None:
        grid = self.grid
        if grid is not None:
            self.view.show_grid(grid, self._uses.get(grid.sheet, {}))
            self.view.point_out(self._points.get(grid.sheet, frozenset()))
            self.sheet_shown.emit()

    def _show_name(self, name: str) -> None:
        """The file's name, on a line of its own where it has no room beside the rest, and of a very long one as much as
        there is room for: it must not keep the sheet wide."""
        self._name = name
        self._title.setToolTip(name)
        metrics, beside = self._title.fontMetrics(), self._beside_name()
        alone = beside > _AROUND_NAME and metrics.horizontalAdvance(name) > self.width() - beside
        self._heading.setDirection(QBoxLayout.Direction.TopToBottom if alone else QBoxLayout.Direction.LeftToRight)
        room = max(_NARROWEST_TITLE, self.width() - (_AROUND_NAME if alone else beside))
        self._title.setText(metrics.elidedText(name, Qt.TextElideMode.ElideMiddle, room))

    def _beside_name(self) -> int:
        """What else stands in its line, in pixels."""
        others = (self.mark_by_hand, self._sheets)
        return sum(part.sizeHint().width() + 8 for part in others if not part.isHidden()) + _AROUND_NAME

    def _pointed(self, at_row: int, at_column: int) -> None:
        grid = self.grid
        if grid is not None:
            self.pointed.emit(grid.sheet, at_row, at_column)

    def _open_menu(self, where: QPoint) -> None:
        """Marking begins by asking for it at a cell."""
        if self.grid is not None:
            if self.strip.isHidden():
                self.marking_wanted.emit(True)
            self.strip.open_menu(where)

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._show_name(self._name)
