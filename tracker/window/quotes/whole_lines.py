"""A scrolled column of words whose lower edge never cuts a line in two."""

from PySide6.QtCore import QPoint, QRect, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QWidget


class WholeLines(QScrollArea):
    """Scrolls `inside` up and down. Unscrolled, it ends below the last line of words that is there in full."""

    def __init__(self, inside: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        # However long a word: what is inside is never wider than the view, or the scroll bar would cut every line.
        inside.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.setWidget(inside)
        self._inside = inside
        self.viewport().setAutoFillBackground(False)
        inside.setAutoFillBackground(False)
        # Labels know their height only once the layout has run, which is after this turn of the loop.
        self._settled = QTimer(self)
        self._settled.setSingleShot(True)
        self._settled.timeout.connect(self._end_below_a_line)
        self.verticalScrollBar().rangeChanged.connect(lambda *_: self._settled.start(0))

    def show_from_the_top(self) -> None:
        """After new words were put inside."""
        self.verticalScrollBar().setValue(0)
        self._settled.start(0)

    def line_ends(self) -> list[int]:
        """Where each line of words ends, in pixels from the top of what is scrolled."""
        ends: list[int] = []
        for label in self._inside.findChildren(QLabel):
            if label.isHidden() or not label.text():
                continue
            top, line = label.mapTo(self._inside, QPoint(0, 0)).y(), _line_height(label)
            lines = max(1, round(label.height() / line))
            ends.extend(top + line * (number + 1) for number in range(lines))
        return ends

    def _end_below_a_line(self) -> None:
        room = self.viewport().height() + self.viewportMargins().bottom()
        cut = 0
        if self._inside.height() > room:
            cut = room - max((end for end in self.line_ends() if end <= room), default=room)
        if cut != self.viewportMargins().bottom():
            self.setViewportMargins(0, 0, 0, cut)

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._settled.start(0)


def _line_height(label: QLabel) -> int:
    """From one line of wrapped words to the next, which is more than the font's own spacing where it is rounded up."""
    metrics, wide = label.fontMetrics(), QRect(0, 0, 1000, 1000)
    one, two = (metrics.boundingRect(wide, Qt.TextFlag.TextWordWrap, text).height() for text in ("x", "x\nx"))
    return two - one
