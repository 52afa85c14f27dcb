"""The sheet as the vendor sent it: a grid of its own texts, with the cells marked that were read."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRectF,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from tracker.trade.offer import State
from tracker.window.look.states import draw_state
from tracker.window.look.theme import Theme
from tracker.window.take_in.cells import Use, column_letters

USE = int(Qt.ItemDataRole.UserRole) + 1
_NOWHERE = QModelIndex()
_LEAST_ROWS, _LEAST_COLUMNS = 20, 8
_WIDEST, _NARROWEST = 260, 56
_ROW_HEIGHT = 24
_MEASURED_ROWS = 400
_LONGEST_HEADING = 20
_USE_WORDS = {
    Use.SAID: "read as part of an offer",
    Use.PRICE: "a price that was understood",
    Use.REFUSED: "a price that can't be used",
    Use.ASKED: "a question is about this cell",
}


class SheetModel(QAbstractTableModel):
    """One grid of a workbook: anything with `cells` keyed (row, column), `height`, `width`, `merged`."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._grid: Any = None
        self._uses: Mapping[tuple[int, int], Use] = {}

    def show(self, grid: Any, uses: Mapping[tuple[int, int], Use]) -> None:
        """Shows a grid with the uses of its cells."""
        self.beginResetModel()
        self._grid = grid
        self._uses = uses
        self.endResetModel()

    def mark(self, uses: Mapping[tuple[int, int], Use]) -> None:
        """Marks other cells of the same grid."""
        self._uses = uses
        if self._grid is not None:
            last = self.index(self.rowCount() - 1, self.columnCount() - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        if parent.isValid() or self._grid is None:
            return 0
        return max(_LEAST_ROWS, self._grid.height + 1)

    def columnCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        if parent.isValid() or self._grid is None:
            return 0
        return max(_LEAST_COLUMNS, self._grid.width)

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        place = (index.row(), index.column())
        if role == USE:
            return self._uses.get(place)
        cell = self._grid.cells.get(place)
        if role == Qt.ItemDataRole.DisplayRole:
            return None if cell is None else " ".join(cell.text.split())
        if role == Qt.ItemDataRole.TextAlignmentRole:
            is_number = cell is not None and not isinstance(cell.value, str)
            side = Qt.AlignmentFlag.AlignRight if is_number else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
            return _USE_WORDS.get(self._uses[place]) if place in self._uses else None
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        return column_letters(section) if orientation is Qt.Orientation.Horizontal else str(section + 1)


class _SheetDelegate(QStyledItemDelegate):
    """Marks by ground and by sign: a bar for a price read, a question mark for one asked, a stroke for one refused."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        box = QRectF(option.rect)
        use = index.data(USE)
        ground = {None: palette.raised, Use.ASKED: palette.asked, Use.REFUSED: palette.strip}.get(use, palette.used)
        painter.save()
        painter.fillRect(box, QColor(ground))
        if use is Use.PRICE:
            painter.fillRect(QRectF(box.left(), box.top(), 3, box.height()), QColor(palette.accent))
        text = index.data(Qt.ItemDataRole.DisplayRole)
        room = box.adjusted(6, 0, -6, 0)
        if use is Use.ASKED:
            draw_state(painter, State.QUESTION, QRectF(box.right() - 15, box.top(), 13, box.height()), palette)
            room.adjust(0, 0, -10, 0)
        if text:
            painter.setPen(QColor(palette.ink))
            shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, int(room.width()))
            painter.drawText(room, int(index.data(Qt.ItemDataRole.TextAlignmentRole)), shown)
        if use is Use.REFUSED:
            painter.setPen(QPen(QColor(palette.above), 1.4))
            painter.drawLine(QPointF(room.left(), box.center().y()), QPointF(room.right(), box.center().y()))
        if option.state & QStyle.StateFlag.State_Selected:
            painter.setPen(QPen(QColor(palette.accent), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(1, 1, -2, -2))
        painter.restore()


class SheetView(QTableView):
    """A vendor's sheet on screen. `pointed` carries the cell the user goes to."""

    pointed = Signal(int, int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._sheet = SheetModel(self)
        self.setModel(self._sheet)
        self.setItemDelegate(_SheetDelegate(theme, self))
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
        theme.changed.connect(self.viewport().update)

    def show_grid(self, grid: Any, uses: Mapping[tuple[int, int], Use]) -> None:
        """Shows one sheet from its top left corner."""
        self.clearSpans()
        self._sheet.show(grid, uses)
        for merged in grid.merged:
            rows, columns = merged.bottom - merged.top + 1, merged.right - merged.left + 1
            if rows * columns > 1:
                self.setSpan(merged.top, merged.left, rows, columns)
        widths = self._widths(grid)
        for column, width in enumerate(widths):
            self.setColumnWidth(column, width)
        self._let_texts_run_on(grid, widths)
        self.scrollToTop()

    def mark(self, uses: Mapping[tuple[int, int], Use]) -> None:
        self._sheet.mark(uses)

    def go_to(self, place: tuple[int, int]) -> None:
        """Brings a cell into view and selects it, without saying so back."""
        index = self._sheet.index(*place)
        if not index.isValid():
            return
        self.selectionModel().blockSignals(True)
        self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)
        self.selectionModel().blockSignals(False)
        self.scrollTo(index, QAbstractItemView.ScrollHint.EnsureVisible)
        self.viewport().update()

    def _let_texts_run_on(self, grid: Any, widths: list[int]) -> None:
        """Long texts run over the empty cells at their right, as the vendor saw them."""
        merged = {
            (row, column)
            for block in grid.merged
            for row in range(block.top, block.bottom + 1)
            for column in range(block.left, block.right + 1)
        }
        for (row, column), cell in grid.cells.items():
            if row >= _MEASURED_ROWS or not isinstance(cell.value, str) or (row, column) in merged:
                continue
            needed = self.fontMetrics().horizontalAdvance(cell.text) + 14
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
        for (row, column), cell in grid.cells.items():
            if row < _MEASURED_ROWS:
                longest.setdefault(column, []).append(len(cell.text))
        one = metrics.averageCharWidth()
        widths = []
        for column in range(max(_LEAST_COLUMNS, grid.width)):
            lengths = sorted(longest.get(column, [0]))
            ordinary = lengths[int(0.85 * (len(lengths) - 1))]
            heading = max((length for length in lengths if length <= _LONGEST_HEADING), default=0)
            ordinary = max(ordinary, heading)
            widths.append(max(_NARROWEST, min(_WIDEST, int(ordinary * one * 1.15) + 22)))
        return widths

    def _moved(self, index: QModelIndex, _before: QModelIndex) -> None:
        if index.isValid():
            self.pointed.emit(index.row(), index.column())
