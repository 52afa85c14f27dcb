"""The table model: data in columns, and a list of row numbers that is rebuilt to sort and filter.

No proxy model: sorting 100,000 rows through one takes seconds, rebuilding the order takes milliseconds.
"""

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from tracker.window.tables.columns import Column, Stand, order_by

PAINTED = int(Qt.ItemDataRole.UserRole) + 1
STRONG = PAINTED + 1
FAINT = STRONG + 1
WRAPS = FAINT + 1

_ALIGN = {
    Stand.LEFT: Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter,
    Stand.RIGHT: Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter,
    Stand.MIDDLE: Qt.AlignmentFlag.AlignCenter,
}
_NOWHERE = QModelIndex()


class ColumnTable(QAbstractTableModel):
    """Shows `data` (anything its columns understand) in the order of `order`, an array of row numbers of the data.

    `faint` tells which rows step back: they are still there, but no longer count.
    """

    def __init__(
        self,
        columns: Sequence[Column],
        parent: QObject | None = None,
        faint: Callable[[Any, int], bool] | None = None,
    ) -> None:
        super().__init__(parent)
        self._faint = faint
        self.columns = tuple(columns)
        self.contents: Any = None
        self.order: NDArray[np.intp] = np.empty(0, dtype=np.intp)
        self._place: NDArray[np.intp] | None = None
        self._sorted_by: tuple[int, bool] | None = None
        self._keys: dict[int, NDArray[Any]] = {}

    def show(self, contents: Any, rows: NDArray[np.intp]) -> None:
        """Shows these rows of new data, sorted as before."""
        self.beginResetModel()
        self.contents = contents
        self._keys.clear()
        self._set_order(rows)
        self.endResetModel()

    def choose_rows(self, rows: NDArray[np.intp]) -> None:
        """Shows other rows of the same data, sorted as before."""
        self.beginResetModel()
        self._set_order(rows)
        self.endResetModel()

    def row_of(self, number: int) -> int | None:
        """Where a row of the data stands in the table, or None where it is filtered out."""
        if self._place is None:
            self._place = np.full(int(self.order.max(initial=-1)) + 1, -1, dtype=np.intp)
            self._place[self.order] = np.arange(len(self.order))
        place = int(self._place[number]) if 0 <= number < len(self._place) else -1
        return None if place < 0 else place

    def _set_order(self, rows: NDArray[np.intp]) -> None:
        self._place = None
        if self._sorted_by is None or self.contents is None:
            self.order = rows
            return
        column, descending = self._sorted_by
        self.order = order_by(self._column_keys(column), rows, descending=descending)

    def _column_keys(self, column: int) -> NDArray[Any]:
        if column not in self._keys:
            self._keys[column] = self.columns[column].keys(self.contents)
        return self._keys[column]

    # Qt's own names from here on

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.order)

    def columnCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        column = self.columns[index.column()]
        row = int(self.order[index.row()])
        if role == Qt.ItemDataRole.DisplayRole:
            return None if column.paint else column.text(self.contents, row)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _ALIGN[column.stand]
        if role == PAINTED:
            return (column.paint, column.paints(self.contents, row)) if column.paints else None
        if role == STRONG:
            return column.strong
        if role == WRAPS:
            return column.wraps
        if role == FAINT:
            return self._faint is not None and self._faint(self.contents, row)
        if role == Qt.ItemDataRole.ToolTipRole and column.tip is not None:
            return column.tip(self.contents, row) or None
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{column.title(self.contents)}: {column.text(self.contents, row)}"
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if orientation is not Qt.Orientation.Horizontal or not 0 <= section < len(self.columns):
            return None
        column = self.columns[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return column.title(self.contents)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _ALIGN[column.stand]
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.about or None
        return None

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        self._sorted_by = None if column < 0 else (column, order is Qt.SortOrder.DescendingOrder)
        if self.contents is None or column < 0:
            return
        self.layoutAboutToBeChanged.emit()
        before = self.persistentIndexList()
        numbers = [int(self.order[index.row()]) for index in before]
        self._set_order(np.sort(self.order))
        after = [
            self.index(self.row_of(number) or 0, index.column()) for number, index in zip(numbers, before, strict=True)
        ]
        self.changePersistentIndexList(before, after)
        self.layoutChanged.emit()
