"""A vendor's sheet as a table model: its own texts, what each cell was used for, what was marked by hand."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence, Set
from itertools import takewhile
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtWidgets import QWidget

from tracker.trade.layout import MarkedColumn
from tracker.window.take_in.cells import Use, column_letters
from tracker.window.take_in.marking import Marking
from tracker.window.take_in.sheet_delegate import EDGE, POINTED, USE, Edge

_NOWHERE = QModelIndex()
_LEAST_ROWS = 20
LEAST_COLUMNS = 8
_MEASURED_ROWS = 400
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
        self.grid: Any = None
        self.first_cells: Sequence[tuple[tuple[int, int], Any]] = ()
        self._uses: Mapping[tuple[int, int], Use] = {}
        self._pointed: Set[tuple[int, int]] = frozenset()
        self._marking: Marking | None = None

    def show(self, grid: Any, uses: Mapping[tuple[int, int], Use]) -> None:
        """Shows a grid with the uses of its cells."""
        self.beginResetModel()
        self.grid = grid
        self.first_cells = tuple(_first_cells(grid))
        self._uses = uses
        self.endResetModel()

    def mark(self, uses: Mapping[tuple[int, int], Use]) -> None:
        """Marks other cells of the same grid."""
        self._uses = uses
        if self.grid is not None:
            last = self.index(self.rowCount() - 1, self.columnCount() - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def point_out(self, places: Set[tuple[int, int]]) -> None:
        """Rings the cells that one offer was read from."""
        self._pointed = places
        self.mark(self._uses)

    def show_marking(self, marking: Marking | None) -> None:
        """Shows which columns were named by hand and where the offers were said to stand."""
        self._marking = marking
        self.mark(self._uses)
        self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, max(0, self.columnCount() - 1))

    def _edge(self, row: int) -> Edge | None:
        """What a row was marked as."""
        marking = self._marking
        if marking is None:
            return None
        for marked, edge in (
            (marking.header_row, Edge.HEADER),
            (marking.first_row, Edge.FIRST),
            (marking.last_row, Edge.LAST),
        ):
            if row == marked:
                return edge
        return None

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        if parent.isValid() or self.grid is None:
            return 0
        height: int = self.grid.height
        return max(_LEAST_ROWS, height + 1)

    def columnCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        if parent.isValid() or self.grid is None:
            return 0
        width: int = self.grid.width
        return max(LEAST_COLUMNS, width)

    @property
    def used_columns(self) -> int:
        """The columns the sheet itself has; more are shown beside a narrow one."""
        return 0 if self.grid is None else int(self.grid.width)

    @property
    def first_price_column(self) -> int | None:
        """The leftmost column with a price that was read; None while none is known."""
        read = (place[1] for place, _ in self.first_cells if self._uses.get(place, Use.SAID) is not Use.SAID)
        return min(read, default=None)

    @property
    def board_column(self) -> int:
        """The leftmost column of words beside the prices that were read; -1 for none."""
        first = self.first_price_column
        if first is None:
            return -1
        rows = {place[0] for place, _ in self.first_cells if self._uses.get(place, Use.SAID) is not Use.SAID}
        beside = (
            place[1]
            for place, cell in self.first_cells
            if place[0] in rows and place[1] < first and any(map(str.isalpha, cell.text))
        )
        return min(beside, default=-1)

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        place = (index.row(), index.column())
        if role == USE:
            return self._uses.get(place)
        if role == POINTED:
            return place in self._pointed
        if role == EDGE:
            return self._edge(place[0])
        cell = self.grid.cells.get(place)
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
        if orientation is not Qt.Orientation.Horizontal:
            return str(section + 1)
        named = None if self._marking is None else self._marking.columns.get(section)
        return "\n".join((column_letters(section), *(name_in_lines(named) if named is not None else ())))


def name_in_lines(named: MarkedColumn) -> list[str]:
    """What a column holds, and below it the unit: side by side they would widen the column beyond what is in it."""
    what, comma, unit = named.words.partition(", ")
    return [what + comma.rstrip(), unit] if comma else [what]


def _first_cells(grid: Any) -> Iterator[tuple[tuple[int, int], Any]]:
    """The cells of the first rows. Grids iterate row by row, so that a long sheet need not be walked to its end; they
    make every cell anew, so that what is wanted more than once is kept."""
    return takewhile(lambda item: item[0][0] < _MEASURED_ROWS, grid.cells.items())
