"""What the marks in the picture mean, only those that are in it."""

from collections.abc import Iterable
from math import ceil

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from tracker.desk.standing import Standing
from tracker.window.look.marks import draw_mark
from tracker.window.look.theme import Theme

_SHORT = {
    Standing.SLIP: "another basis?",
    Standing.ABOVE: "above",
    Standing.BELOW: "below",
    Standing.FEW: "too few to judge",
    Standing.ESTIMATED: "estimated weight",
    Standing.IN_LINE: "in line",
}
_SIGN, _GAP, _LINE = 18.0, 14.0, 18


class Legend(QWidget):
    """Marks with their words side by side, on as many lines as the width asks for."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._marks: tuple[Standing, ...] = ()
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        theme.changed.connect(self.update)

    def show_marks(self, marks: Iterable[Standing]) -> None:
        """Explains these marks."""
        self._marks = tuple(sorted(set(marks)))
        self.setAccessibleName("Marks: " + ", ".join(_SHORT[mark] for mark in self._marks))
        self.updateGeometry()
        self.update()

    def lines(self, width: float) -> list[list[Standing]]:
        """The marks that stand beside each other on each line of this width."""
        lines: list[list[Standing]] = [[]]
        for mark in self._marks:
            if lines[-1] and self._taken([*lines[-1], mark]) > width:
                lines.append([])
            lines[-1].append(mark)
        return lines

    def _taken(self, marks: Iterable[Standing]) -> float:
        metrics = QFontMetricsF(self.font())
        return sum(_SIGN + metrics.horizontalAdvance(_SHORT[mark]) + _GAP for mark in marks) - _GAP + 2

    # Qt's own names from here on

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return _LINE * len(self.lines(width))

    def sizeHint(self) -> QSize:
        return QSize(ceil(self._taken(self._marks)), _LINE)

    def minimumSizeHint(self) -> QSize:
        return QSize(ceil(max((self._taken([mark]) for mark in self._marks), default=0.0)), _LINE)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        metrics = QFontMetricsF(self.font())
        for number, marks in enumerate(self.lines(self.width())):
            left, top = self.width() - self._taken(marks), float(number * _LINE)
            for mark in marks:
                draw_mark(painter, mark, QRectF(left + 2, top + _LINE / 2 - 5.5, 11, 11), self._theme.palette)
                painter.setPen(QColor(self._theme.palette.quiet))
                width = metrics.horizontalAdvance(_SHORT[mark])
                place = QRectF(left + _SIGN, top, width + 2, _LINE)
                painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, _SHORT[mark])
                left += _SIGN + width + _GAP
