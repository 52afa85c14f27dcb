"""What the marks in the picture mean, only those that are in it."""

from collections.abc import Iterable

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from tracker.window.look.marks import Mark, draw_mark
from tracker.window.look.theme import Theme

_SHORT = {
    Mark.SLIP: "another basis?",
    Mark.ABOVE: "above",
    Mark.BELOW: "below",
    Mark.FEW: "too few to judge",
    Mark.ESTIMATED: "estimated weight",
    Mark.IN_LINE: "in line",
}
_SIGN, _GAP = 18.0, 14.0


class Legend(QWidget):
    """Marks with their words, side by side."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._marks: tuple[Mark, ...] = ()
        theme.changed.connect(self.update)

    def show_marks(self, marks: Iterable[Mark]) -> None:
        """Explains these marks."""
        self._marks = tuple(sorted(set(marks)))
        self.setAccessibleName("Marks: " + ", ".join(_SHORT[mark] for mark in self._marks))
        self.setFixedWidth(int(self._width()))
        self.update()

    def _width(self) -> float:
        metrics = QFontMetricsF(self.font())
        return sum(_SIGN + metrics.horizontalAdvance(_SHORT[mark]) + _GAP for mark in self._marks) + 2

    # Qt's own names from here on

    def sizeHint(self) -> QSize:
        return QSize(int(self._width()), 18)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        metrics = QFontMetricsF(self.font())
        left, height = 0.0, float(self.height())
        for mark in self._marks:
            draw_mark(painter, mark, QRectF(left + 2, height / 2 - 5.5, 11, 11), self._theme.palette)
            painter.setPen(QColor(self._theme.palette.quiet))
            width = metrics.horizontalAdvance(_SHORT[mark])
            painter.drawText(QRectF(left + _SIGN, 0, width + 2, height), Qt.AlignmentFlag.AlignVCenter, _SHORT[mark])
            left += _SIGN + width + _GAP
