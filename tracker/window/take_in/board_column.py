"""The column that names the boards, kept at the left of a sheet moved sideways: a price says little without it."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView

_NARROWEST, _LEAST_BESIDE = 56, 120
"""Of itself, and of the sheet beside it, in pixels."""
_MOST = 0.4
"""Of the sheet's width; a wide column of names is cut, since the prices are what the sheet was moved for."""


class BoardColumn(QTableView):
    """Lies over a sheet's view and shows one of its columns, once that has gone out of sight at the left."""

    def __init__(self, view: QTableView) -> None:
        super().__init__(view)
        self._view = view
        self.column = -1
        self.setModel(view.model())
        self.setSelectionModel(view.selectionModel())
        self.setProperty("kind", "sheet")
        self.setAccessibleName("The column of boards, kept in view")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWordWrap(False)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAutoScroll(False)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setDefaultSectionSize(view.verticalHeader().defaultSectionSize())
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        view.verticalScrollBar().valueChanged.connect(self.verticalScrollBar().setValue)
        view.horizontalScrollBar().valueChanged.connect(lambda _: self.lie())
        self.hide()

    def show_column(self, column: int) -> None:
        """Keeps this column of the sheet in view; -1: none."""
        self.column = column
        for each in range(self.model().columnCount()):
            self.setColumnHidden(each, each != column)
        self.lie()

    def lie(self) -> None:
        """Takes its place over the sheet, or none where the column itself is in sight."""
        view = self._view
        gone = self.column >= 0 and view.columnViewportPosition(self.column) < 0
        self.setVisible(gone)
        if not gone:
            return
        room = view.viewport().geometry()
        wide = self._to_the_next_column(min(view.columnWidth(self.column), int(_MOST * room.width()), self._left_over))
        head = view.horizontalHeader().height()
        self.horizontalHeader().setFixedHeight(head)
        self.setColumnWidth(self.column, wide)
        self.setGeometry(QRect(room.left(), room.top() - head, wide, room.height() + head))
        self.verticalScrollBar().setValue(view.verticalScrollBar().value())
        self.raise_()

    @property
    def _left_over(self) -> int:
        """What the column of the cell one stands in leaves: that is what one looks at."""
        at = self._view.currentIndex().column()
        wide = self._view.viewport().width()
        return wide if at in (-1, self.column) else max(_NARROWEST, wide - self._view.columnWidth(at))

    def _to_the_next_column(self, wide: int) -> int:
        """So wide that it cuts no other column in two: the '8' left of a '28' would be read as a figure."""
        cut = self._view.columnAt(wide)
        if cut < 0 or self._view.columnViewportPosition(cut) == wide:
            return wide
        ends = self._view.columnViewportPosition(cut) + self._view.columnWidth(cut)
        room = min(self._view.viewport().width() - _LEAST_BESIDE, self._left_over)
        return ends if ends <= room else wide

    @property
    def covered(self) -> int:
        """How many pixels of the sheet it lies over."""
        return 0 if self.isHidden() else self.width()
