"""What lies over a plot and keeps its size in pixels: labels that never overlap, rings, the card at the pointer."""

from collections.abc import Callable
from math import ceil
from typing import Protocol

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPaintEngine, QPainter, QPainterPath, QPaintEvent, QPen, QPixmap
from PySide6.QtWidgets import QWidget

from tracker.desk.standing import Standing
from tracker.window.look.marks import colour_of
from tracker.window.look.theme import Theme
from tracker.window.quotes.drawing import Drawing, Floats
from tracker.window.quotes.geometry import Box, place_labels

_MOST_KEPT_OFF = 600
_RIM, _MOST_DRAWN = 3.0, 200
_AROUND = 12
_NOTE_PX, _NOTE_DROPS = 18.0, (4.0, 22.0, 40.0, 58.0)
_MARK_PX = 5.0
_RINGS_DRAWN_AT_ONCE = 200
_CARD = QRectF(0, 0, 320, 200)


class Ground(Protocol):
    """What it lies over. selected: the offer to ring. nothing: what an empty picture tells. say: an offer's card."""

    theme: Theme
    drawing: Drawing | None
    selected: int
    nothing: str
    say: Callable[[int], str]

    def pixels(self, x: Floats, y: Floats) -> tuple[Floats, Floats]: ...

    def plot_area(self) -> QRectF: ...


class Overlay(QWidget):
    """Paints over the plot: gridlines' words aside, all that must keep its size in pixels."""

    NOTHING_FLAGS = int(Qt.AlignmentFlag.AlignCenter.value | Qt.TextFlag.TextWordWrap.value)

    def __init__(self, plot: Ground, parent: QWidget) -> None:
        super().__init__(parent)
        self._plot = plot
        self._under = parent
        self._hovered = -1
        self.as_shapes = False
        self._boxes: list[tuple[Box, str, QColor]] = []
        self._drawn: dict[tuple[object, ...], QPixmap] = {}
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)

    def hover(self, place: int) -> None:
        if place != self._hovered:
            self._hovered = place
            pointing = place >= 0
            self._under.setCursor(Qt.CursorShape.PointingHandCursor if pointing else Qt.CursorShape.ArrowCursor)
            self.update()

    def lay_out(self, *_: object) -> None:
        """Finds places for the labels at the present zoom."""
        self._boxes.clear()
        self._hovered = -1
        drawing = self._plot.drawing
        if drawing is not None and drawing.labels:
            palette = self._plot.theme.palette
            places = np.array([place for place, _ in drawing.labels])
            across, down = self._plot.pixels(drawing.x[places], drawing.y_shown[places])
            metrics = self._metrics()
            sizes = [(metrics.horizontalAdvance(text) + 4.0, metrics.height() + 0.0) for _, text in drawing.labels]
            inside = self._plot.plot_area()
            area = Box(inside.left(), inside.top(), inside.width(), inside.height())
            points = list(zip(across.tolist(), down.tolist(), strict=True))
            crowd = self._crowd(drawing)
            for box, (place, text) in zip(
                place_labels(points, sizes, area, crowd, self._note_boxes(drawing)), drawing.labels, strict=True
            ):
                if box is not None:
                    self._boxes.append((box, text, QColor(colour_of(Standing(int(drawing.marks[place])), palette))))
        self.update()

    def _crowd(self, drawing: Drawing) -> tuple[Floats, Floats]:
        """The points that labels should keep off, in pixels: all, or where they are many those that stand out."""
        kept = slice(None) if len(drawing.rows) <= _MOST_KEPT_OFF else np.flatnonzero(drawing.marks <= Standing.BELOW)
        return self._plot.pixels(drawing.x[kept], drawing.y_shown[kept])

    def _note_boxes(self, drawing: Drawing) -> list[Box]:
        """Below what each note is of and off the points, in the first free place there."""
        across, down = self._crowd(drawing)
        lowest = self._plot.plot_area().bottom()
        boxes = []
        for x, y, text in drawing.notes:
            at, under = (float(each[0]) for each in self._plot.pixels(np.array([x]), np.array([y])))
            width = self._metrics().horizontalAdvance(text)
            places = [Box(at - width, under + drop, width + 4, _NOTE_PX) for drop in _NOTE_DROPS]
            free = (box for box in places if box.y + box.height <= lowest and not _holds(box, across, down))
            boxes.append(next(free, places[0]))
        return boxes

    def _paint_words(self, painter: QPainter, box: QRectF, text: str, colour: QColor) -> None:
        """Words with a rim of the ground's colour, so that they read over points and lines.

        The rim takes milliseconds to draw, too long for each frame while the picture is moved: on a screen the words
        are drawn once and kept as a picture. In a file of shapes they stay shapes.
        """
        if self.as_shapes or painter.paintEngine().type() is not QPaintEngine.Type.Raster:
            self._draw_words(painter, box, text, colour)
            return
        ratio = painter.device().devicePixelRatioF()
        key = (text, colour.name(), painter.font().key(), ratio, self._plot.theme.name)
        if key not in self._drawn:
            room = box.adjusted(-_RIM, -_RIM, _RIM, _RIM).size() * ratio
            kept = QPixmap(ceil(room.width()), ceil(room.height()))
            kept.setDevicePixelRatio(ratio)
            kept.fill(Qt.GlobalColor.transparent)
            own = QPainter(kept)
            own.setRenderHint(QPainter.RenderHint.Antialiasing)
            own.setFont(painter.font())
            self._draw_words(own, QRectF(_RIM, _RIM, box.width(), box.height()), text, colour)
            own.end()
            if len(self._drawn) >= _MOST_DRAWN:
                self._drawn.clear()
            self._drawn[key] = kept
        painter.drawPixmap(QPointF(box.left() - _RIM, box.top() - _RIM), self._drawn[key])

    def _draw_words(self, painter: QPainter, box: QRectF, text: str, colour: QColor) -> None:
        path = QPainterPath()
        baseline = box.center().y() + painter.fontMetrics().ascent() / 2 - 1.5
        path.addText(QPointF(box.left() + 2, baseline), painter.font(), text)
        around = QColor(self._plot.theme.palette.ground)
        around.setAlpha(225)
        painter.strokePath(
            path, QPen(around, 3.2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
        )
        painter.fillPath(path, colour)

    def _label_font(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(max(11, font.pixelSize() - 1))
        font.setWeight(QFont.Weight.DemiBold)
        return font

    def _metrics(self) -> QFontMetricsF:
        return QFontMetricsF(self._label_font())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._plot.drawing is not None:
            self._paint_notes(painter, self._plot.drawing)
            if not len(self._plot.drawing.rows):
                painter.setFont(self.font())
                painter.setPen(QColor(self._plot.theme.palette.quiet))
                painter.drawText(*self.nothing_told())
        painter.setFont(self._label_font())
        for box, text, colour in self._boxes:
            self._paint_words(painter, QRectF(box.x, box.y, box.width, box.height), text, colour)
        drawing = self._plot.drawing
        if drawing is None:
            return
        self._paint_rings(painter, drawing)
        if 0 <= self._hovered < len(drawing.rows):
            self._paint_card(painter, drawing)

    def nothing_told(self) -> tuple[QRectF, int, str]:
        """Where and how the words of an empty picture stand, and the words."""
        return QRectF(self.rect().adjusted(_AROUND, 0, -_AROUND, 0)), self.NOTHING_FLAGS, self._plot.nothing

    def _paint_notes(self, painter: QPainter, drawing: Drawing) -> None:
        font = QFont(self._label_font())
        font.setWeight(QFont.Weight.Normal)
        painter.setFont(font)
        for box, (_, _, text) in zip(self._note_boxes(drawing), drawing.notes, strict=True):
            where = QRectF(box.x, box.y, box.width, box.height)
            self._paint_words(painter, where, text, QColor(self._plot.theme.palette.band_ink))

    def _paint_rings(self, painter: QPainter, drawing: Drawing) -> None:
        palette = self._plot.theme.palette
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if len(drawing.front):
            across, down = apart(*self._plot.pixels(drawing.x[drawing.front], drawing.y_shown[drawing.front]))
            painter.setPen(QPen(QColor(palette.ink), 1.2))
            for x, y in zip(across, down, strict=True):
                painter.drawEllipse(QPointF(x, y), 7.5, 7.5)
        here = np.flatnonzero(drawing.rows == self._plot.selected)
        if here.size:
            across, down = self._plot.pixels(drawing.x[here[:1]], drawing.y_shown[here[:1]])
            if np.isfinite(across[0]) and np.isfinite(down[0]):
                painter.setPen(QPen(QColor(palette.accent), 2.2))
                painter.drawEllipse(QPointF(across[0], down[0]), 11, 11)

    def card_box(self, drawing: Drawing) -> QRectF:
        """Where the card of the point at the pointer stands, whole, beside its point if there is room."""
        needed = QFontMetricsF(self.font()).boundingRect(_CARD, Qt.TextFlag.TextWordWrap, self._card_text(drawing))
        card = needed.adjusted(0, 0, 20, 14)
        across, down = self._plot.pixels(drawing.x[[self._hovered]], drawing.y_shown[[self._hovered]])
        card.moveTopLeft(QPointF(across[0] + 14, down[0] - card.height() - 8))
        if card.right() > self.width() - 4:
            card.moveRight(across[0] - 14)
        if card.top() < 4:
            card.moveTop(down[0] + 12)
        # Where no side has the room it stands over its point.
        card.moveLeft(max(4.0, card.left()))
        card.moveTop(max(4.0, min(card.top(), self.height() - 4 - card.height())))
        return card

    def _card_text(self, drawing: Drawing) -> str:
        return self._plot.say(int(drawing.rows[self._hovered]))

    def _paint_card(self, painter: QPainter, drawing: Drawing) -> None:
        palette = self._plot.theme.palette
        card = self.card_box(drawing)
        painter.setFont(self.font())
        painter.setPen(QPen(QColor(palette.line), 1))
        painter.setBrush(QColor(palette.raised))
        painter.drawRoundedRect(card, 5, 5)
        painter.setPen(QColor(palette.ink))
        painter.drawText(card.adjusted(10, 7, -10, -7), Qt.TextFlag.TextWordWrap, self._card_text(drawing))


def apart(across: Floats, down: Floats) -> tuple[Floats, Floats]:
    """Where many rings are, one of those at the same pixel: the others can't be seen, and take as long to draw."""
    if len(across) <= _RINGS_DRAWN_AT_ONCE:
        return across, down
    _, first = np.unique(np.round(np.column_stack([across, down])), axis=0, return_index=True)
    return across[first], down[first]


def _holds(box: Box, across: Floats, down: Floats) -> bool:
    """Whether the mark of any point reaches into a box."""
    grown = Box(box.x - _MARK_PX, box.y - _MARK_PX, box.width + 2 * _MARK_PX, box.height + 2 * _MARK_PX)
    return grown.covered(across, down) > 0
