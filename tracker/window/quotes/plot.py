"""A quiet plot: points by verdict mark, a ribbon behind them, labels that never overlap, hover and click.

Labels, the selected ring and the hover card are painted by an overlay in pixels, so that they keep clear of each
other however far one zooms.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFont, QKeyEvent, QMouseEvent, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from tracker.window.look.marks import Mark, colour_of, pen_and_fill, shape_of
from tracker.window.look.theme import Theme
from tracker.window.quotes.geometry import Box, Ribbon, place_labels

Floats = NDArray[np.float64]
_REACH_PX = 12.0
_MOST_KEPT_OFF = 600
_SIZES = {Mark.SLIP: 14, Mark.ABOVE: 14, Mark.BELOW: 14, Mark.FEW: 11, Mark.ESTIMATED: 10, Mark.IN_LINE: 9}
_MANY, _VERY_MANY = 1_200, 12_000


@dataclass(frozen=True)
class Drawing:
    """What a plot shows. `rows` are the offers drawn, with their x, y and marks; all four arrays are of one length.

    labels: (place in rows, words), in order of importance. notes: (x, y, words) about the ground behind the points. x_ticks: (value, words), or empty for numbers with
    `x_unit`. bars: (x, low, high) drawn as ranges behind the points. boxes: (left, right, low, high).
    """

    rows: NDArray[np.intp]
    x: Floats
    y: Floats
    marks: NDArray[np.int8]
    labels: Sequence[tuple[int, str]] = ()
    ribbons: Sequence[Ribbon] = ()
    boxes: Sequence[tuple[float, float, float, float]] = ()
    spans: Sequence[tuple[float, float, float]] = ()
    notes: Sequence[tuple[float, float, str]] = ()
    level: float | None = None
    front: NDArray[np.intp] = field(default_factory=lambda: np.empty(0, dtype=np.intp))
    x_ticks: Sequence[tuple[float, str]] = ()
    least_width: float = 0.0
    x_unit: str = ""
    x_zero: str = ""
    y_unit: str = ""


class _Axis(pg.AxisItem):  # type: ignore[misc]
    """Figures with their unit, no line of its own."""

    unit = ""
    zero = ""

    def tickStrings(self, values: list[float], scale: float, spacing: float) -> list[str]:
        places = max(0, int(np.ceil(-np.log10(spacing)))) if spacing < 1 else 0
        return [self.zero if self.zero and not value else f"{value:,.{places}f}{self.unit}" for value in values]


class Plot(pg.PlotWidget):  # type: ignore[misc]
    """Draws a Drawing. `picked` carries the offer clicked or gone to by key; `say` gives the words of its card."""

    picked = Signal(int)

    def __init__(self, theme: Theme, say: Callable[[int], str], parent: QWidget | None = None) -> None:
        self._axes = {"left": _Axis("left"), "bottom": _Axis("bottom")}
        super().__init__(parent, axisItems=self._axes)
        self._theme = theme
        self.say = say
        self.nothing = ""
        self.drawing: Drawing | None = None
        self.selected = -1
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMenuEnabled(False)
        self.hideButtons()
        self.setMouseTracking(True)
        self.setFrameShape(self.Shape.NoFrame)
        self._items: list[Any] = []
        self._overlay = _Overlay(self)
        self._pressed_at = QPoint()
        self.getViewBox().sigRangeChanged.connect(self._overlay.lay_out)
        theme.changed.connect(self._redraw)
        self._dress()

    def show_drawing(self, drawing: Drawing) -> None:
        """Draws anew and fits all of it."""
        self.drawing = drawing
        self._redraw()
        self.fit()

    def select(self, offer: int) -> None:
        """Rings the offer, where it is drawn."""
        self.selected = offer
        self._overlay.update()

    def fit(self) -> None:
        """Shows everything, with a little air."""
        drawing = self.drawing
        if drawing is None:
            return
        ys = [drawing.y, *(edge for ribbon in drawing.ribbons for edge in (ribbon.low, ribbon.high))]
        xs = [drawing.x, *(ribbon.x for ribbon in drawing.ribbons)]
        y = np.concatenate([*ys, np.array([v for box in drawing.boxes for v in box[2:]])])
        x = np.concatenate([*xs, np.array([v for box in drawing.boxes for v in box[:2]])])
        y, x = y[np.isfinite(y)], x[np.isfinite(x)]
        if not len(y) or not len(x):
            return
        air_y = (y.max() - y.min()) * 0.09 or abs(y.max()) * 0.2 or 1.0
        middle = (x.max() + x.min()) / 2
        half = max((x.max() - x.min()) * 0.55, drawing.least_width / 2) or 1.0
        self.setRange(
            xRange=(float(middle - half), float(middle + half)),
            yRange=(float(y.min() - air_y), float(y.max() + air_y)),
            padding=0,
        )

    def pixels(self, x: Floats, y: Floats) -> tuple[Floats, Floats]:
        """Data coordinates as pixels of this widget."""
        (x0, x1), (y0, y1) = self.getViewBox().viewRange()
        area = self.plot_area()
        across = area.left() + (x - x0) / (x1 - x0) * area.width()
        down = area.bottom() - (y - y0) / (y1 - y0) * area.height()
        return across, down

    def plot_area(self) -> QRectF:
        """The inside of the axes, in pixels of this widget."""
        view = self.getViewBox()
        return QRectF(self.mapFromScene(view.sceneBoundingRect()).boundingRect())

    def nearest(self, at: QPointF) -> int:
        """The place (in the drawing) of the point nearest to a pixel, -1 where none is near."""
        drawing = self.drawing
        if drawing is None or not len(drawing.rows):
            return -1
        across, down = self.pixels(drawing.x, drawing.y)
        far = np.hypot(across - at.x(), down - at.y())
        far[~np.isfinite(far)] = np.inf
        place = int(np.argmin(far))
        return place if far[place] <= _REACH_PX else -1

    def _redraw(self) -> None:
        self._dress()
        for item in self._items:
            self.removeItem(item)
        self._items.clear()
        drawing = self.drawing
        if drawing is None:
            return
        self._axes["bottom"].unit = drawing.x_unit
        self._axes["bottom"].zero = drawing.x_zero
        self._axes["left"].unit = drawing.y_unit
        for axis in self._axes.values():
            axis.setVisible(bool(len(drawing.rows)))
        self._axes["bottom"].setTicks([list(drawing.x_ticks)] if drawing.x_ticks else None)
        self._draw_bands(drawing)
        self._draw_spans(drawing)
        for mark in (Mark.IN_LINE, Mark.ESTIMATED, Mark.FEW, Mark.BELOW, Mark.ABOVE, Mark.SLIP):
            self._draw_points(drawing, mark)
        self._overlay.lay_out()

    def _dress(self) -> None:
        palette = self._theme.palette
        self.setBackground(palette.ground)
        font = QFont(self.font())
        for axis in self._axes.values():
            axis.setPen(QPen(Qt.PenStyle.NoPen))
            axis.setTextPen(QColor(palette.quiet))
            axis.setTickFont(font)
            axis.setStyle(tickLength=0, tickTextOffset=8, maxTickLevel=0)
        self._axes["left"].setTickPen(QPen(QColor(palette.line), 1))
        self._axes["left"].setGrid(255)
        self._axes["left"].setZValue(-1)
        self._axes["left"].setWidth(64)
        # pyqtgraph gives the ticks an alpha of its own, so that only the ground's colour hides them.
        self._axes["bottom"].setTickPen(QPen(QColor(palette.ground)))
        self._axes["bottom"].setHeight(28)
        self._overlay.update()

    def _draw_bands(self, drawing: Drawing) -> None:
        colour = QColor(self._theme.palette.band)
        for ribbon in drawing.ribbons:
            low = pg.PlotCurveItem(ribbon.x, ribbon.low, pen=QPen(Qt.PenStyle.NoPen))
            high = pg.PlotCurveItem(ribbon.x, ribbon.high, pen=QPen(Qt.PenStyle.NoPen))
            self._add(pg.FillBetweenItem(low, high, brush=colour), low, high)
        if drawing.boxes:
            left, right, bottom, top = (np.array(edge) for edge in zip(*drawing.boxes, strict=True))
            self._add(pg.BarGraphItem(x0=left, x1=right, y0=bottom, y1=top, brush=colour, pen=QPen(Qt.PenStyle.NoPen)))
        if drawing.level is not None:
            pen = QPen(QColor(self._theme.palette.band_ink), 1, Qt.PenStyle.DashLine)
            pen.setCosmetic(True)
            self._add(pg.InfiniteLine(drawing.level, angle=0, pen=pen))

    def _draw_spans(self, drawing: Drawing) -> None:
        if not drawing.spans:
            return
        y, low, high = (np.array(part) for part in zip(*drawing.spans, strict=True))
        pen = QPen(QColor(self._theme.palette.line), 2)
        pen.setCosmetic(True)
        ends = np.column_stack([low, high]).ravel()
        self._add(pg.PlotCurveItem(ends, np.repeat(y, 2), connect="pairs", pen=pen))

    def _draw_points(self, drawing: Drawing, mark: Mark) -> None:
        chosen = drawing.marks == mark
        if not chosen.any():
            return
        pen, fill = pen_and_fill(mark, self._theme.palette)
        if mark is Mark.IN_LINE:
            fill.setAlpha(190)
        scatter = pg.ScatterPlotItem(
            drawing.x[chosen], drawing.y[chosen], symbol=shape_of(mark), size=_SIZES[mark] * _smaller(len(drawing.rows)), pen=pen, brush=fill
        )
        self._add(scatter)

    def _add(self, *items: Any) -> None:
        for item in items:
            self.addItem(item)
            self._items.append(item)

    # Qt's own names from here on

    def resizeEvent(self, event: Any) -> None:
        super().resizeEvent(event)
        if hasattr(self, "_overlay"):
            self._overlay.setGeometry(self.rect())
            self._overlay.lay_out()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._pressed_at = event.position().toPoint()
        super().mousePressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        super().mouseReleaseEvent(event)
        moved = (event.position().toPoint() - self._pressed_at).manhattanLength()
        if event.button() is Qt.MouseButton.LeftButton and moved < 4 and self.drawing is not None:
            place = self.nearest(event.position())
            if place >= 0:
                self.picked.emit(int(self.drawing.rows[place]))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if self.nearest(event.position()) < 0:
            self.fit()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        super().mouseMoveEvent(event)
        self._overlay.hover(self.nearest(event.position()) if not event.buttons() else -1)

    def leaveEvent(self, event: QEvent) -> None:
        self._overlay.hover(-1)
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Right: 1, Qt.Key.Key_Left: -1}
        if event.key() == Qt.Key.Key_Home:
            self.fit()
        elif event.key() in steps and self.drawing is not None and len(self.drawing.rows):
            along = np.lexsort((self.drawing.y, self.drawing.x))
            here = np.flatnonzero(self.drawing.rows[along] == self.selected)
            place = (int(here[0]) + steps[Qt.Key(event.key())]) % len(along) if here.size else 0
            self.picked.emit(int(self.drawing.rows[along[place]]))
        else:
            super().keyPressEvent(event)


def _smaller(points: int) -> float:
    """Many points are drawn smaller, so that they don't hide each other."""
    return 1.0 if points < _MANY else 0.75 if points < _VERY_MANY else 0.55


class _Overlay(QWidget):
    """Paints over the plot: gridlines' words aside, all that must keep its size in pixels."""

    def __init__(self, plot: Plot) -> None:
        super().__init__(plot)
        self._plot = plot
        self._hovered = -1
        self._boxes: list[tuple[Box, str, QColor]] = []
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)

    def hover(self, place: int) -> None:
        if place != self._hovered:
            self._hovered = place
            self._plot.setCursor(Qt.CursorShape.PointingHandCursor if place >= 0 else Qt.CursorShape.ArrowCursor)
            self.update()

    def lay_out(self, *_: object) -> None:
        """Finds places for the labels at the present zoom."""
        self._boxes.clear()
        self._hovered = -1
        drawing = self._plot.drawing
        if drawing is not None and drawing.labels:
            palette = self._plot._theme.palette
            places = np.array([place for place, _ in drawing.labels])
            across, down = self._plot.pixels(drawing.x[places], drawing.y[places])
            metrics = self._metrics()
            sizes = [(metrics.horizontalAdvance(text) + 4.0, metrics.height() + 0.0) for _, text in drawing.labels]
            inside = self._plot.plot_area()
            area = Box(inside.left(), inside.top(), inside.width(), inside.height())
            points = list(zip(across.tolist(), down.tolist(), strict=True))
            crowd = self._crowd(drawing, area)
            for box, (place, text) in zip(
                place_labels(points, sizes, area, crowd, self._note_boxes(drawing)), drawing.labels, strict=True
            ):
                if box is not None:
                    self._boxes.append((box, text, QColor(colour_of(Mark(int(drawing.marks[place])), palette))))
        self.update()

    def _crowd(self, drawing: Drawing, area: Box) -> list[tuple[float, float]]:
        """The points that labels should keep off, in pixels: all, or where they are many those that stand out."""
        kept = slice(None) if len(drawing.rows) <= _MOST_KEPT_OFF else np.flatnonzero(drawing.marks <= Mark.BELOW)
        across, down = self._plot.pixels(drawing.x[kept], drawing.y[kept])
        return list(zip(across.tolist(), down.tolist(), strict=True))

    def _note_boxes(self, drawing: Drawing) -> list[Box]:
        boxes = []
        for x, y, text in drawing.notes:
            across, down = self._plot.pixels(np.array([x]), np.array([y]))
            width = self._metrics().horizontalAdvance(text)
            boxes.append(Box(across[0] - 6 - width, down[0] - 20, width, 18))
        return boxes

    def _paint_words(self, painter: QPainter, box: QRectF, text: str, colour: QColor, rim: str = "ground") -> None:
        """Words with a rim of the ground's colour, so that they read over points and lines."""
        path = QPainterPath()
        font = painter.font()
        baseline = box.center().y() + painter.fontMetrics().ascent() / 2 - 1.5
        path.addText(QPointF(box.left() + 2, baseline), font, text)
        around = QColor(getattr(self._plot._theme.palette, rim))
        around.setAlpha(225)
        painter.strokePath(path, QPen(around, 3.2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin))
        painter.fillPath(path, colour)

    def _label_font(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(max(11, font.pixelSize() - 1))
        font.setWeight(QFont.Weight.DemiBold)
        return font

    def _metrics(self) -> Any:
        from PySide6.QtGui import QFontMetricsF

        return QFontMetricsF(self._label_font())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._plot.drawing is not None:
            self._paint_notes(painter, self._plot.drawing)
            if not len(self._plot.drawing.rows):
                painter.setFont(self.font())
                painter.setPen(QColor(self._plot._theme.palette.quiet))
                painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self._plot.nothing)
        painter.setFont(self._label_font())
        for box, text, colour in self._boxes:
            self._paint_words(painter, QRectF(box.x, box.y, box.width, box.height), text, colour)
        drawing = self._plot.drawing
        if drawing is None:
            return
        self._paint_rings(painter, drawing)
        if 0 <= self._hovered < len(drawing.rows):
            self._paint_card(painter, drawing)

    def _paint_notes(self, painter: QPainter, drawing: Drawing) -> None:
        font = QFont(self._label_font())
        font.setWeight(QFont.Weight.Normal)
        painter.setFont(font)
        for box, (_, _, text) in zip(self._note_boxes(drawing), drawing.notes, strict=True):
            where = QRectF(box.x, box.y, box.width, box.height)
            self._paint_words(painter, where, text, QColor(self._plot._theme.palette.band_ink), rim="band")

    def _paint_rings(self, painter: QPainter, drawing: Drawing) -> None:
        palette = self._plot._theme.palette
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if len(drawing.front):
            across, down = self._plot.pixels(drawing.x[drawing.front], drawing.y[drawing.front])
            painter.setPen(QPen(QColor(palette.ink), 1.2))
            for x, y in zip(across, down, strict=True):
                painter.drawEllipse(QPointF(x, y), 7.5, 7.5)
        here = np.flatnonzero(drawing.rows == self._plot.selected)
        if here.size:
            across, down = self._plot.pixels(drawing.x[here[:1]], drawing.y[here[:1]])
            if np.isfinite(across[0]) and np.isfinite(down[0]):
                painter.setPen(QPen(QColor(palette.accent), 2.2))
                painter.drawEllipse(QPointF(across[0], down[0]), 11, 11)

    def _paint_card(self, painter: QPainter, drawing: Drawing) -> None:
        palette = self._plot._theme.palette
        text = self._plot.say(int(drawing.rows[self._hovered]))
        painter.setFont(self.font())
        room = QRectF(0, 0, 320, 200)
        needed = painter.boundingRect(room, Qt.TextFlag.TextWordWrap, text)
        card = needed.adjusted(0, 0, 20, 14)
        across, down = self._plot.pixels(drawing.x[[self._hovered]], drawing.y[[self._hovered]])
        card.moveTopLeft(QPointF(across[0] + 14, down[0] - card.height() - 8))
        if card.right() > self.width() - 4:
            card.moveRight(across[0] - 14)
        if card.top() < 4:
            card.moveTop(down[0] + 12)
        painter.setPen(QPen(QColor(palette.line), 1))
        painter.setBrush(QColor(palette.raised))
        painter.drawRoundedRect(card, 5, 5)
        painter.setPen(QColor(palette.ink))
        painter.drawText(card.adjusted(10, 7, -10, -7), Qt.TextFlag.TextWordWrap, text)
