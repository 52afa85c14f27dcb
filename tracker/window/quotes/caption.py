"""A picture's caption: as many whole sentences as there is room for, all of them where the pointer rests on it."""

import re

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QLabel, QWidget

_MORE = "\u00a0…"
_SENTENCE_ENDS = re.compile(r"(?<=\.) (?=[A-Z0-9])")


class Caption(QLabel):
    """Small words below a picture, which needs the height more than they do."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setProperty("kind", "small")
        self.whole = ""
        self._lines = 1

    def tell(self, caption: str, lines: int) -> None:
        """Says the caption on at most so many lines."""
        self.whole, self._lines = caption, lines
        self._fit()

    def _fit(self) -> None:
        shown = first_sentences(self.whole, self.fontMetrics(), self.width(), self._lines)
        if shown != self.text():
            self.setText(shown)
        # A sentence a line: a tip in plain words is never wrapped.
        self.setToolTip("\n".join(_SENTENCE_ENDS.split(self.whole)) if shown != self.whole else "")
        self.setAccessibleName(self.whole)

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()


def first_sentences(text: str, metrics: QFontMetrics, width: int, lines: int) -> str:
    """The whole of a text where it fits, else as many of its sentences as do, at least one, and a sign of more."""
    sentences = _SENTENCE_ENDS.split(text)
    for count in range(len(sentences), 1, -1):
        shown = " ".join(sentences[:count]) + ("" if count == len(sentences) else _MORE)
        if lines_of(shown, metrics, width) <= lines:
            return shown
    return text if len(sentences) == 1 else sentences[0] + _MORE


def lines_of(text: str, metrics: QFontMetrics, width: int) -> int:
    """How many lines a text takes where it is wrapped at a width."""
    room = QRect(0, 0, max(width, 1), 10_000)
    one, two, all_of_it = (
        metrics.boundingRect(room, Qt.TextFlag.TextWordWrap, each).height() for each in ("x", "x\nx", text)
    )
    return 1 + round((all_of_it - one) / (two - one))
