"""The sheet as the vendor sent it: a grid of its own texts, with the cells marked that were read."""

from __future__ import annotations

from collections.abc import Mapping, Set
from typing import Any

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QPoint, Signal
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView, QWidget

from tracker.window.look.theme import Theme
from tracker.window.take_in.board_column import BoardColumn
from tracker.window.take_in.cells import Use
from tracker.window.take_in.marking import Marking
from tracker.window.take_in.sheet_delegate import SheetDelegate
from tracker.window.take_in.sheet_model import LEAST_COLUMNS, SheetModel, name_in_lines

MARKING_KEYS = ("N", "H", "F", "L")
_WIDEST, _NARROWEST = 260, 56
_ROW_HEIGHT = 24
_LONGEST_HEADING = 20
_NAME_LINE, _NAME_LINES = 16, 2
_NARROWEST_WORDS = 84
_BESIDE_A_SIGN = 14
_LETTER = 2
"""Columns at the most of a sheet that is read as lines of text."""


class SheetView(QTableView):
    """A vendor's sheet on screen. `pointed` carries the cell the user goes to, `stands` the one that is outlined,
    whoever went there, `key_pressed` one of the keys that mark a table by hand, `menu_wanted` where on the screen a
    menu is asked for."""

    pointed = Signal(int, int)
    stands = Signal(int, int)
    key_pressed = Signal(str)
    menu_wanted = Signal(QPoint)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._marking = False
        self._longest_text = 0
        self._scrolled_by_hand = False
        self._narrowed: dict[int, int] = {}
        self._sheet = SheetModel(self)
        self.setModel(self._sheet)
        self.setItemDelegate(SheetDelegate(theme, self))
        self.setProperty("kind", "sheet")
        self.setAccessibleName("The sheet as the vendor sent it")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        down = self.verticalHeader()
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(_ROW_HEIGHT)
        self.horizontalHeader().setFixedHeight(_ROW_HEIGHT)
        self.horizontalHeader().setHighlightSections(False)
        self.selectionModel().currentChanged.connect(self._moved)
        self.horizontalScrollBar().actionTriggered.connect(self._scroll_by_hand)
        theme.changed.connect(self.viewport().update)
        self.boards = BoardColumn(self)
        self.boards.setItemDelegate(SheetDelegate(theme, self.boards))
        theme.changed.connect(self.boards.viewport().update)

    def show_grid(self, grid: Any, uses: Mapping[tuple[int, int], Use]) -> None:
        """Shows one sheet from its top left corner."""
        self.clearSpans()
        self._narrowed = {}
        self._sheet.show(grid, uses)
        widths = self._widths(grid)
        for signed in {place[1] for place, _ in self._sheet.first_cells if uses.get(place) in (Use.ASKED, Use.REFUSED)}:
            widths[signed] += _BESIDE_A_SIGN
        for column, width in enumerate(widths):
            self.setColumnWidth(column, width)
        self._merge(grid, widths)
        self.scrollToTop()
        self.horizontalScrollBar().setValue(0)
        self._scrolled_by_hand = False
        # Nobody has gone anywhere in it yet: what is done at a cell is not done at one of the sheet before.
        self.stands.emit(0, 0)

    def show_prices(self) -> None:
        """Has the first column of prices in view, and its unit: what stands before it gives up width first, since a
        price says little without its board; then the sheet moves sideways. Where the user has scrolled it stays."""
        first = self._sheet.first_price_column
        if first is None or self._scrolled_by_hand:
            return
        self._widen()
        if not self._marking:
            self._narrow_before(first)
        self.boards.show_column(-1 if self._marking else self._sheet.board_column)
        across = self.horizontalScrollBar()
        right = across.value() + self.columnViewportPosition(first) + self.columnWidth(first)
        across.setValue(max(0, right - self.viewport().width()))

    def _narrow_before(self, first: int) -> None:
        """Takes from the widest columns left of the prices what is lacking for these."""
        ends = min(first + 1, self._sheet.used_columns - 1)
        lacking = sum(map(self.columnWidth, range(ends + 1))) - self.viewport().width()
        for column in sorted(range(first), key=self.columnWidth, reverse=True):
            spare = min(lacking, self.columnWidth(column) - _NARROWEST_WORDS)
            if spare <= 0:
                break
            self._narrowed[column] = self.columnWidth(column)
            self.setColumnWidth(column, self.columnWidth(column) - spare)
            lacking -= spare
        if self._narrowed:
            self._merge_anew()

    def _widen(self) -> None:
        """Every column as wide as it was made for what is in it."""
        if self._narrowed:
            for column, width in self._narrowed.items():
                self.setColumnWidth(column, width)
            self._narrowed = {}
            self._merge_anew()

    def _merge_anew(self) -> None:
        grid = self._sheet.grid
        self.clearSpans()
        self._merge(grid, [self.columnWidth(column) for column in range(max(LEAST_COLUMNS, grid.width))])

    def _merge(self, grid: Any, widths: list[int]) -> None:
        """Cells that the vendor merged, and those that a long text runs over."""
        for merged in grid.merged:
            rows, columns = merged.bottom - merged.top + 1, merged.right - merged.left + 1
            if rows * columns > 1:
                self.setSpan(merged.top, merged.left, rows, columns)
        self._let_texts_run_on(grid, widths)

    @property
    def wanted_width(self) -> int:
        """In pixels, with every column that holds something in view, and the longest line of a letter."""
        used = range(self._sheet.used_columns)
        columns = sum(self._narrowed.get(column, self.columnWidth(column)) for column in used)
        shown = max(columns, self._longest_text)
        return self.verticalHeader().sizeHint().width() + shown + self.verticalScrollBar().sizeHint().width()

    def mark(self, uses: Mapping[tuple[int, int], Use]) -> None:
        self._sheet.mark(uses)

    def point_out(self, places: Set[tuple[int, int]]) -> None:
        self._sheet.point_out(places)

    def show_marking(self, marking: Marking | None) -> None:
        """Shows marks made by hand; None where nothing is being marked."""
        self._marking = marking is not None
        self._sheet.show_marking(marking)
        names = {} if marking is None else {at: name_in_lines(named) for at, named in marking.columns.items()}
        if marking is not None:
            self.boards.show_column(-1)
            self._widen()
            if not self.currentIndex().isValid():
                self._stand_at(self._sheet.index(0, 0))
        # Room for a name and its unit from the start: the rows are not to move away under the pointer.
        self.horizontalHeader().setFixedHeight(_ROW_HEIGHT + (_NAME_LINES * _NAME_LINE if self._marking else 0))
        metrics = self.horizontalHeader().fontMetrics()
        for column, name in names.items():
            needed = max(map(metrics.horizontalAdvance, name)) + 14
            self.setColumnWidth(column, max(needed, self.columnWidth(column)))

    def go_to(self, place: tuple[int, int]) -> None:
        """Brings a cell into view and selects it, without saying so back."""
        index = self._sheet.index(*place)
        if not index.isValid():
            return
        self._stand_at(index)
        # A price's unit most often stands at its right: without it a question about both can't be answered. An empty
        # column is not worth what would go out of view at the left.
        beside = place[1] + 1
        for seen in (index.siblingAtColumn(beside if beside < self._sheet.used_columns else place[1]), index):
            self.scrollTo(seen, QAbstractItemView.ScrollHint.EnsureVisible)
        self._uncover(index)
        self.viewport().update()

    def _uncover(self, index: QModelIndex) -> None:
        """Moves a cell out from under the column of boards."""
        self.boards.lie()
        hidden = self.boards.covered - self.visualRect(index).left()
        if hidden > 0 and index.column() != self.boards.column:
            self.horizontalScrollBar().setValue(self.horizontalScrollBar().value() - hidden)

    def _stand_at(self, index: QModelIndex) -> None:
        """Outlines a cell; that the user went there is not said."""
        self.selectionModel().blockSignals(True)
        self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        self.selectionModel().blockSignals(False)
        self.stands.emit(index.row(), index.column())

    def _let_texts_run_on(self, grid: Any, widths: list[int]) -> None:
        """Long texts run over the empty cells at their right, as the vendor saw them."""
        self._longest_text = 0
        merged = {
            (row, column)
            for block in grid.merged
            for row in range(block.top, block.bottom + 1)
            for column in range(block.left, block.right + 1)
        }
        for (row, column), cell in self._sheet.first_cells:
            if not isinstance(cell.value, str) or (row, column) in merged:
                continue
            needed = self.fontMetrics().horizontalAdvance(cell.text) + 14
            if grid.width <= _LETTER:
                self._longest_text = max(self._longest_text, sum(widths[:column]) + needed)
            last = column
            while needed > sum(widths[column : last + 1]) and last + 1 < len(widths):
                if (row, last + 1) in grid.cells or (row, last + 1) in merged:
                    break
                last += 1
            if last > column:
                self.setSpan(row, column, 1, last - column + 1)

    def _widths(self, grid: Any) -> list[int]:
        """Wide enough for the ordinary text of each column; a long title in one cell does not widen it."""
        metrics = self.fontMetrics()
        longest: dict[int, list[int]] = {}
        for (_, column), cell in self._sheet.first_cells:
            longest.setdefault(column, []).append(len(cell.text))
        one = metrics.averageCharWidth()
        widths = []
        for column in range(max(LEAST_COLUMNS, grid.width)):
            lengths = sorted(longest.get(column, [0]))
            ordinary = lengths[int(0.85 * (len(lengths) - 1))]
            heading = max((length for length in lengths if length <= _LONGEST_HEADING), default=0)
            ordinary = max(ordinary, heading)
            widths.append(max(_NARROWEST, min(_WIDEST, int(ordinary * one * 1.15) + 22)))
        return widths

    def _scroll_by_hand(self) -> None:
        self._scrolled_by_hand = True

    def _moved(self, index: QModelIndex, _before: QModelIndex) -> None:
        if index.isValid():
            self._uncover(index)
            self.stands.emit(index.row(), index.column())
            self.pointed.emit(index.row(), index.column())

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.boards.lie()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._marking and event.text().upper() in MARKING_KEYS and not event.modifiers():
            self.key_pressed.emit(event.text().upper())
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() is QContextMenuEvent.Reason.Keyboard:
            inside = self.visualRect(self.currentIndex()).bottomLeft()
        else:
            inside = event.pos()
            self.setCurrentIndex(self.indexAt(inside))
        self.menu_wanted.emit(self.viewport().mapToGlobal(inside))
