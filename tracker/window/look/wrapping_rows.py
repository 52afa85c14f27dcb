"""Controls side by side that go on in a second row where one row would cut their words."""

from collections.abc import Sequence

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget

from tracker.window.pieces import column, row


class WrappingRows(QWidget):
    """`parts` from the left, `ends` at the right of the last row; `lead` is left out where that saves a row."""

    def __init__(
        self, lead: QWidget, parts: Sequence[QWidget], ends: Sequence[QWidget], row_height: int, side: int, gap: int
    ) -> None:
        super().__init__()
        self._lead, self._parts, self._ends = lead, list(parts), list(ends)
        self._row_height, self._side, self._gap = row_height, side, gap
        self._rows: list[QHBoxLayout] = [row(gap=gap), row(gap=gap)]
        self.setLayout(column(*self._rows, margins=(side, 0, side, 0)))
        # Without it the controls in one row would set how narrow the window can be, and be cut there.
        self.setMinimumWidth(400)
        self._laid_out: list[list[QWidget]] = []
        self.fit()

    def fit(self) -> None:
        """Lays the parts out anew where their words or the room for them have changed."""
        rows = self._rows_for(self.width() - 2 * self._side)
        if rows == self._laid_out:
            return
        self._laid_out = rows
        for layout in self._rows:
            while layout.takeAt(0) is not None:
                pass
        for layout, parts in zip(self._rows, rows, strict=False):
            ends = [part for part in parts if part in self._ends]
            for part in parts:
                if ends and part is ends[0]:
                    layout.addStretch(1)
                layout.addWidget(part)
            if not ends:
                layout.addStretch(1)
        self._lead.setVisible(any(self._lead in parts for parts in rows))
        self.setFixedHeight(self._row_height * len(rows))

    def _rows_for(self, room: int) -> list[list[QWidget]]:
        for begin in ([self._lead, *self._parts], self._parts):
            if self._width([*begin, *self._ends]) <= room:
                return [[*begin, *self._ends]]
        first, rest = [self._lead, *self._parts], list[QWidget]()
        while len(first) > 1 and self._width(first) > room:
            rest.insert(0, first.pop())
        return [first, [*rest, *self._ends]]

    def _width(self, parts: Sequence[QWidget]) -> int:
        return sum(part.sizeHint().width() for part in parts) + self._gap * (len(parts) - 1)

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()
