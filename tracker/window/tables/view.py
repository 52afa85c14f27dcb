"""The table on screen: rows of one height but for a few with long texts, columns as wide as their words may be."""

from collections.abc import Collection, Mapping

import numpy as np
from PySide6.QtCore import QEvent, QItemSelectionModel, QModelIndex, Qt, Signal
from PySide6.QtGui import QFocusEvent, QFont, QFontMetrics, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView, QWidget

from tracker.window.look.theme import Theme
from tracker.window.tables.columns import Column
from tracker.window.tables.delegate import RowDelegate
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.set_texts import in_lines
from tracker.window.tables.widths import Wanted, shared, title_width, widest

ROW_HEIGHT = 28
_HEADING_HEIGHT = 32
_BESIDE_TEXT = 16
_MOST_FOR_WORDS = 2
_ROWS_MEASURED = 200
"""Spread over a longer table: its widest words may be in any of its rows, and each one looked at takes time."""


class RowsView(QTableView):
    """A ColumnTable on screen. `picked` says which row of the data the user went to, `entered` that they want it."""

    picked = Signal(int)
    entered_row = Signal(int)

    def __init__(self, model: ColumnTable, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._table = model
        self._lines = 1
        self._taller: Mapping[int, int] = {}
        self._made_taller: list[int] = []
        self._asked_for: dict[str, int] = {}
        self._widest: dict[str, int] = {}
        self._measured: object = None
        self.setModel(model)
        self.setItemDelegate(RowDelegate(theme, self))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self._fix_headers()
        self.setSortingEnabled(True)
        self.selectionModel().currentRowChanged.connect(self._current_changed)
        self.activated.connect(self._activated)
        model.modelReset.connect(self._measure)
        model.modelReset.connect(self._make_taller)
        model.layoutChanged.connect(self._make_taller)
        theme.changed.connect(self.viewport().update)

    def go_to(self, number: int) -> bool:
        """Selects a row of the data without saying so back; False where it is filtered out."""
        place = self._table.row_of(number)
        if place is None:
            self.clearSelection()
            return False
        index = self._table.index(place, 0)
        flags = QItemSelectionModel.SelectionFlag
        self.selectionModel().blockSignals(True)
        self.selectionModel().setCurrentIndex(index, flags.ClearAndSelect | flags.Rows)
        self.selectionModel().blockSignals(False)
        # Rows that have just come are not in the scroll bar's range yet: the last one would stay a line below.
        self.updateGeometries()
        self.scrollTo(index, QAbstractItemView.ScrollHint.EnsureVisible)
        self.viewport().update()
        return True

    def show_column(self, key: str, shown: bool) -> None:
        """Hides a column that would say the same in every row, or shows it again."""
        place = [column.key for column in self._table.columns].index(key)
        if self.isColumnHidden(place) is shown:
            self.setColumnHidden(place, not shown)
            self._share_width()

    def make_room(self, key: str, text: str) -> None:
        """Widens a column, where it must be, so that `text` stands in it uncut."""
        column = next(each for each in self._table.columns if each.key == key)
        font = QFont(self.font())
        if column.strong:
            font.setWeight(QFont.Weight.DemiBold)
        self._asked_for[key] = QFontMetrics(font).horizontalAdvance(text) + _BESIDE_TEXT
        self._share_width()

    def whole_width_for(self, keys: Collection[str]) -> int:
        """What the words of these columns take together, in pixels; of the longest no more than there is use for."""
        wanted = (self._wanted(column) for column in self._table.columns if column.key in keys)
        return sum(min(each.needed, _MOST_FOR_WORDS * each.asked) for each in wanted)

    def least_width_for(self, keys: Collection[str]) -> int:
        """The least that these columns can do with, in pixels."""
        return sum(self._wanted(column).least for column in self._table.columns if column.key in keys)

    def _wanted(self, column: Column) -> Wanted:
        asked_for = self._asked_for.get(column.key, 0)
        asked = max(column.width, asked_for)
        return Wanted(asked, max(asked_for, self._widest.get(column.key, asked)), column.share)

    def _measure(self) -> None:
        """Looks at what the columns hold. For one set of data they only widen: rows that come and go move nothing."""
        table = self._table
        if table.contents is not self._measured:
            self._widest.clear()
            self._measured = table.contents
        if len(table.order):
            places = np.unique(np.linspace(0, len(table.order) - 1, _ROWS_MEASURED).astype(np.intp))
            rows = [int(row) for row in table.order[places]]
            for column in table.columns:
                of_title = title_width(column, table.contents, self.horizontalHeader().font())
                of_texts = widest(column, table.contents, rows, self.font(), self._lines)
                self._widest[column.key] = max(of_title, of_texts, self._widest.get(column.key, 0))
        self._share_width()

    @property
    def room(self) -> int:
        """The width for columns, less that of a scroll bar that may come, in pixels."""
        return self.width() - self.verticalScrollBar().sizeHint().width() - 2 * self.frameWidth()

    def show_texts_in(self, lines: int, taller: Mapping[int, int] | None = None) -> None:
        """Rows tall enough for texts that go on over so many lines; `taller`: rows of the data that need more, with how
        many lines each."""
        taller = taller or {}
        same = lines == self._lines and self._measured is self._table.contents
        if same and taller == self._taller:
            return
        self._lines, self._taller = lines, taller
        self._set_row_height()
        if not same:
            self._measured = None
            self._measure()

    def shows_whole(self, key: str, text: str, lines: int) -> bool:
        """Whether so many lines hold a text in the width that its column has now."""
        place = [column.key for column in self._table.columns].index(key)
        return "…" not in in_lines(text, self.font(), self.columnWidth(place) - _BESIDE_TEXT, lines)

    def _set_row_height(self) -> None:
        height = self._height(self._lines)
        if self.verticalHeader().defaultSectionSize() != height:
            self.verticalHeader().setDefaultSectionSize(height)
        self._make_taller()

    def _height(self, lines: int) -> int:
        text = self.fontMetrics()
        return max(ROW_HEIGHT, text.height() + 12) + (lines - 1) * text.lineSpacing()

    def _make_taller(self) -> None:
        """Gives the rows with long texts their height, wherever they stand by now."""
        down = self.verticalHeader()
        for place in self._made_taller:
            if place < down.count():
                down.resizeSection(place, down.defaultSectionSize())
        places = ((self._table.row_of(number), lines) for number, lines in self._taller.items())
        tall = {place: lines for place, lines in places if place is not None}
        for place, lines in tall.items():
            down.resizeSection(place, self._height(lines))
        self._made_taller = list(tall)

    def _fix_headers(self) -> None:
        across = self.horizontalHeader()
        across.setHighlightSections(False)
        across.setFixedHeight(_HEADING_HEIGHT)
        across.setMinimumSectionSize(24)
        across.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        across.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        down = self.verticalHeader()
        down.setVisible(False)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(ROW_HEIGHT)

    def _share_width(self) -> None:
        """Gives each column in view its part of the width."""
        columns = self._table.columns
        shown = [place for place in range(len(columns)) if not self.isColumnHidden(place)]
        wanted = [self._wanted(columns[place]) for place in shown]
        for place, width in zip(shown, shared(wanted, self.viewport().width()), strict=True):
            self.setColumnWidth(place, width)

    def _current_changed(self, index: QModelIndex, _before: QModelIndex) -> None:
        if index.isValid():
            self.picked.emit(int(self._table.order[index.row()]))

    def _activated(self, index: QModelIndex) -> None:
        self.entered_row.emit(int(self._table.order[index.row()]))

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share_width()
        chosen = self.visualRect(self.currentIndex())
        if 0 <= chosen.top() < event.oldSize().height() and chosen.bottom() >= event.size().height():
            # What is told of a row takes room below the table, and must not hide the row it tells of.
            self.scrollTo(self.currentIndex())

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._set_row_height()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        # Qt then goes to the first row without choosing it: what is told of a row is to be seen whose it is.
        if self.currentIndex().isValid() and not self.selectionModel().hasSelection():
            self.selectRow(self.currentIndex().row())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self._activated(self.currentIndex())
            return
        # Whole rows are chosen, so Home and End mean the first and last row; Qt takes them for the first and last cell.
        rows = self.model().rowCount()
        if rows and event.key() in (Qt.Key.Key_Home, Qt.Key.Key_End) and not event.modifiers():
            self.setCurrentIndex(self.model().index(0 if event.key() == Qt.Key.Key_Home else rows - 1, 0))
            return
        super().keyPressEvent(event)
