"""The ladder: how a figure came about, from the cell as written to the compared price, one step a line."""

from collections.abc import Sequence

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from tracker.desk.comparison import Step
from tracker.window.look.theme import Theme
from tracker.window.pieces import clear, words

_RAIL_X = 6.0
_LABEL_WIDTH = 110


class Ladder(QWidget):
    """Draws steps as rungs: a dot each, joined by a line; estimates as rings; the last step strong."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._steps: tuple[Step, ...] = ()
        self._labels: list[QLabel] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(22, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(1, 1)

    def show_steps(self, steps: Sequence[Step]) -> None:
        """Puts new steps in place of the old."""
        clear(self._grid)
        self._steps = tuple(steps)
        self._labels = []
        for place, step in enumerate(self._steps):
            label = words(step.label, "quiet", wrap=True)
            label.setFixedWidth(_LABEL_WIDTH)
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
            cell = f"  ({step.cell})" if step.cell else ""
            sum_, equals, result = step.text.rpartition(" = ") if step.last else ("", "", step.text)
            if equals:
                self._grid.addWidget(words(sum_, wrap=True, selectable=True), 2 * place, 1, Qt.AlignmentFlag.AlignTop)
            value = words(f"{equals.lstrip()}{result}{cell}", wrap=True, selectable=True)
            value.setProperty("kind", "strong" if step.last else "")
            # A long word has no place to break: else it would widen the panel, and every sentence in it would be cut.
            value.setMinimumWidth(1)
            self._grid.addWidget(label, 2 * place, 0, 1 + bool(equals), 1, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(value, 2 * place + bool(equals), 1, Qt.AlignmentFlag.AlignTop)
            self._labels.append(label)
        self.updateGeometry()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._labels:
            return
        palette = self._theme.palette
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        dots = [
            QPointF(_RAIL_X, label.geometry().top() + label.fontMetrics().height() / 2 + 0.5) for label in self._labels
        ]
        painter.setPen(QPen(QColor(palette.line), 1.5))
        painter.drawLine(dots[0], dots[-1])
        for dot, step in zip(dots, self._steps, strict=True):
            colour = QColor(palette.accent if step.last else palette.point)
            painter.setPen(QPen(colour, 1.6))
            painter.setBrush(QColor(palette.raised) if step.estimate else colour)
            painter.drawEllipse(dot, 3.4, 3.4)
