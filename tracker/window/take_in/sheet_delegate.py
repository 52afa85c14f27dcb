"""How a cell of the vendor's sheet is drawn: what it was used for, whether it is pointed out, where a table was marked.

By ground and by sign: a bar for a price read, a question mark for one asked, a cross for one refused, as in
the list beside it; a stroke would look like the vendor's own.
"""

from __future__ import annotations

from enum import IntEnum

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from tracker.trade.offer import State
from tracker.window.look.palette import Palette, colour
from tracker.window.look.states import draw_state
from tracker.window.look.theme import Theme
from tracker.window.tables.set_texts import SetTexts
from tracker.window.take_in.cells import Use

USE = int(Qt.ItemDataRole.UserRole) + 1
POINTED = USE + 1
EDGE = USE + 2
_SIGNS = {Use.ASKED: State.QUESTION, Use.REFUSED: State.REFUSED}


class Edge(IntEnum):
    """What a row was marked as by hand."""

    HEADER = 1
    FIRST = 2
    LAST = 3


class SheetDelegate(QStyledItemDelegate):
    """Draws cells of a SheetModel."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._texts = SetTexts()

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        box = QRectF(option.rect)
        use, edge = index.data(USE), index.data(EDGE)
        painter.save()
        painter.fillRect(box, colour(_ground(use, edge, palette)))
        if use is Use.PRICE:
            painter.fillRect(QRectF(box.left(), box.top(), 3, box.height()), colour(palette.accent))
        room = box.adjusted(6, 0, -6, 0)
        if use in _SIGNS:
            draw_state(painter, _SIGNS[use], QRectF(box.right() - 15, box.top(), 13, box.height()), palette)
            room.adjust(0, 0, -12, 0)
        self._write(painter, option, index, room, strong=edge is Edge.HEADER)
        _draw_edge(painter, box, edge, palette)
        _draw_rings(
            painter, box, bool(index.data(POINTED)), bool(option.state & QStyle.StateFlag.State_Selected), palette
        )
        painter.restore()

    def _write(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
        room: QRectF,
        *,
        strong: bool,
    ) -> None:
        text = index.data(Qt.ItemDataRole.DisplayRole)
        if not text:
            return
        painter.setPen(colour(self._theme.palette.ink))
        align = index.data(Qt.ItemDataRole.TextAlignmentRole)
        self._texts.draw(painter, text, option.font, room, align, strong=strong)


def _ground(use: Use | None, edge: Edge | None, palette: Palette) -> str:
    if edge is Edge.HEADER:
        return palette.selected
    return {None: palette.raised, Use.ASKED: palette.asked, Use.REFUSED: palette.strip}.get(use, palette.used)


def _draw_edge(painter: QPainter, box: QRectF, edge: Edge | None, palette: Palette) -> None:
    """A line above the first row of offers and below the last."""
    if edge is Edge.FIRST:
        painter.fillRect(QRectF(box.left(), box.top(), box.width() + 1, 2), QColor(palette.accent))
    elif edge is Edge.LAST:
        painter.fillRect(QRectF(box.left(), box.bottom() - 1, box.width() + 1, 2), QColor(palette.accent))


def _draw_rings(painter: QPainter, box: QRectF, pointed: bool, selected: bool, palette: Palette) -> None:
    """A dashed ring for a cell that said something of the offer in hand, a full one for where one stands."""
    if not pointed and not selected:
        return
    pen = QPen(QColor(palette.accent), 2 if selected else 1.4)
    if not selected:
        pen.setStyle(Qt.PenStyle.DashLine)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(box.adjusted(1, 1, -2, -2))
