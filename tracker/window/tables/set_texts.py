"""Texts set once for their place and font, and kept: a table draws the same few hundred at every repaint."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QStaticText, QTextLayout

_MOST_KEPT = 4_000
_NEXT_LINE = "\u2028"
"""What Qt breaks a line at where it lays out a text by itself."""


class SetTexts:
    """Draws texts in one font, plain or strong; another font begins anew."""

    def __init__(self) -> None:
        self._font = QFont()
        self._strong = QFont()
        self._kept: dict[tuple[str, float, int, bool], QStaticText] = {}
        self._take(QFont())

    def draw(
        self,
        painter: QPainter,
        text: str,
        font: QFont,
        room: QRectF,
        align: Qt.AlignmentFlag,
        *,
        strong: bool = False,
        lines: int = 1,
    ) -> None:
        """Draws a text, in the middle of the room's height; what `lines` lines of it can't hold ends in '…'."""
        if font != self._font:
            self._take(font)
        painter.setFont(self._strong if strong else self._font)
        key = (text, room.width(), lines, strong)
        text_set = self._kept.get(key)
        if text_set is None:
            text_set = self._set(text, self._strong if strong else self._font, room.width(), lines)
            self._kept[key] = text_set
        size = text_set.size()
        left = room.left()
        if align & Qt.AlignmentFlag.AlignRight:
            left = room.right() - size.width()
        elif align & Qt.AlignmentFlag.AlignHCenter:
            left += (room.width() - size.width()) / 2
        painter.drawStaticText(QPointF(left, round(room.top() + (room.height() - size.height()) / 2)), text_set)

    def _take(self, font: QFont) -> None:
        self._font, self._strong = QFont(font), QFont(font)
        self._strong.setWeight(QFont.Weight.DemiBold)
        self._kept.clear()

    def _set(self, text: str, font: QFont, width: float, lines: int) -> QStaticText:
        if len(self._kept) >= _MOST_KEPT:
            self._kept.clear()
        made = QStaticText(in_lines(text, font, width, lines).replace("\n", _NEXT_LINE))
        made.setTextFormat(Qt.TextFormat.PlainText)
        made.setPerformanceHint(QStaticText.PerformanceHint.ModerateCaching)
        made.prepare(font=font)
        return made


def in_lines(text: str, font: QFont, width: float, most: int) -> str:
    """A text broken between words where one line can't hold it; what `most` lines can't hold ends in '…'."""
    layout = QTextLayout(text, font)
    layout.beginLayout()
    lines: list[str] = []
    start = 0
    while start < len(text) and len(lines) < most - 1:
        line = layout.createLine()
        line.setLineWidth(width)
        end = start + line.textLength()
        lines.append(text[start:end].strip())
        start = end
    layout.endLayout()
    if start < len(text):
        lines.append(QFontMetricsF(font).elidedText(text[start:].strip(), Qt.TextElideMode.ElideRight, width))
    return "\n".join(lines)
