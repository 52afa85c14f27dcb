"""A quiet plot: points by verdict mark, a ribbon behind them, labels that never overlap, hover and click.

What must keep its size in pixels (labels, rings, the card at the pointer) is painted by overlay.py.
"""

from __future__ import annotations

from collections.abc import Callable
from math import ceil
from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QKeyEvent, QMouseEvent, QPen
from PySide6.QtWidgets import QWidget

from tracker.desk.standing import Standing
from tracker.window.look.marks import arrow, pen_and_fill, shape_of
from tracker.window.look.theme import Theme
from tracker.window.quotes.alike import AlikePoints, size_among
from tracker.window.quotes.axis import Axis, in_steps
from tracker.window.quotes.copies import Copies
from tracker.window.quotes.drawing import Drawing, Floats
from tracker.window.quotes.frame import frame_of
from tracker.window.quotes.overlay import Overlay

_REACH_PX = 12.0
_TALL_ENOUGH_PX = 200
_LEFT_WITH_BOTH_PX = 84
_LEFT_PX, _BOTTOM_PX = 64, 28

_SIZES = {
    Standing.SLIP: 14,
    Standing.ABOVE: 14,
    Standing.BELOW: 14,
    Standing.FEW: 11,
    Standing.ESTIMATED: 10,
    Standing.IN_LINE: 9,
}
_ARROW_PX = 36
_FAINT, _JOIN, _CLEAR = 80, 130, 255
_MANY_SPANS = 200


class Plot(pg.PlotWidget):
    """Draws a Drawing. `picked` carries the offer clicked or gone to by key, `entered` the one clicked twice; `say`
    gives the words of its card."""

    picked = Signal(int)
    entered = Signal(int)

    def __init__(self, theme: Theme, say: Callable[[int], str], parent: QWidget | None = None) -> None:
        self._axes = {"left": Axis("left"), "bottom": Axis("bottom")}
        super().__init__(parent, viewBox=pg.ViewBox(enableMenu=False), axisItems=self._axes)
        self.theme = theme
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
        self._overlay = Overlay(self, self)
        self._pressed_at = QPoint()
        self._shows_all = True
        self.getViewBox().sigRangeChangedManually.connect(self._moved_by_hand)
        self.getViewBox().sigRangeChanged.connect(self._overlay.lay_out)
        self.getViewBox().sigResized.connect(self._keep_all_in_view)
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
        frame = None if self.drawing is None else frame_of(self.drawing, self.plot_area().height())
        if frame is not None:
            left, right, bottom, top = frame
            self.setRange(xRange=(left, right), yRange=(bottom, top), padding=0)
        self._shows_all = True

    def _moved_by_hand(self) -> None:
        self._shows_all = False

    def _keep_all_in_view(self) -> None:
        """After the inside of the axes became another size, which it does last."""
        if self._shows_all:
            self.fit()
        self._overlay.lay_out()

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
        across, down = self.pixels(drawing.x, drawing.y_shown)
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
        self._axes["left"].zero = drawing.y_zero
        self._axes["left"].signed = bool(drawing.y_zero)
        for axis in self._axes.values():
            axis.setVisible(bool(len(drawing.rows)))
        self._set_ticks(drawing)
        self._draw_bands(drawing)
        self._draw_spans(drawing)
        self._draw_joins(drawing)
        faint = np.zeros(len(drawing.rows), dtype=bool) if drawing.faint is None else drawing.faint
        for mark in (Standing.IN_LINE, Standing.ESTIMATED, Standing.FEW, Standing.BELOW, Standing.ABOVE, Standing.SLIP):
            self._draw_points(drawing, mark, (drawing.marks == mark) & faint, _FAINT)
            self._draw_points(drawing, mark, (drawing.marks == mark) & ~faint, _CLEAR)
        self._draw_arrows(drawing)
        self._overlay.lay_out()

    def _dress(self) -> None:
        palette = self.theme.palette
        self.setBackground(palette.ground)
        font = QFont(self.font())
        for axis in self._axes.values():
            axis.setPen(QPen(Qt.PenStyle.NoPen))
            axis.setTextPen(QColor(palette.quiet))
            axis.setTickFont(font)
            axis.setStyle(tickLength=0, tickTextOffset=8, maxTickLevel=0)
        # Words may begin below the axis at the left; pyqtgraph would else leave them out.
        self._axes["bottom"].setStyle(hideOverlappingLabels=_LEFT_PX)
        self._axes["left"].setTickPen(QPen(QColor(palette.line), 1))
        self._axes["left"].setGrid(255)
        self._axes["left"].setZValue(-1)
        # pyqtgraph gives the ticks an alpha of its own, so that only the ground's colour hides them.
        self._axes["bottom"].setTickPen(QPen(QColor(palette.ground)))
        self._overlay.update()

    def _set_ticks(self, drawing: Drawing) -> None:
        """Words below the picture stand whole: where they are too wide for one line, in steps on two or three."""
        axis, metrics = self._axes["bottom"], QFontMetricsF(self.font())
        ticks, lines = in_steps(drawing.x_ticks, metrics, self.width() - _LEFT_PX)
        tall_enough = self.height() >= _TALL_ENOUGH_PX
        beside = self._axes["left"]
        beside.also = drawing.y_also if tall_enough else None
        beside.setWidth(_LEFT_PX if beside.also is None else _LEFT_WITH_BOTH_PX)
        axis.also = drawing.x_also if tall_enough else None
        if axis.also is not None:
            lines = 2
            ticks = [(at, f"{text}\n{axis.also_text(at)}") for at, text in drawing.x_ticks]
        axis.setTicks([ticks] if ticks else None)
        axis.setHeight(_BOTTOM_PX + (lines - 1) * ceil(metrics.lineSpacing()))

    def _draw_bands(self, drawing: Drawing) -> None:
        colour = QColor(self.theme.palette.band)
        for ribbon in drawing.ribbons:
            low = pg.PlotCurveItem(ribbon.x, ribbon.low, pen=QPen(Qt.PenStyle.NoPen))
            high = pg.PlotCurveItem(ribbon.x, ribbon.high, pen=QPen(Qt.PenStyle.NoPen))
            self._add(pg.FillBetweenItem(low, high, brush=colour), low, high)
        if drawing.boxes:
            left, right, bottom, top = (np.array(edge) for edge in zip(*drawing.boxes, strict=True))
            self._add(pg.BarGraphItem(x0=left, x1=right, y0=bottom, y1=top, brush=colour, pen=QPen(Qt.PenStyle.NoPen)))
        if drawing.level is not None:
            pen = QPen(QColor(self.theme.palette.band_ink), 1, Qt.PenStyle.DashLine)
            pen.setCosmetic(True)
            self._add(pg.InfiniteLine(drawing.level, angle=0, pen=pen))

    def _draw_spans(self, drawing: Drawing) -> None:
        if not drawing.spans:
            return
        places, low, high = (np.array(part) for part in zip(*drawing.spans, strict=True))
        # Hundreds of bars would else make one block.
        pen = QPen(QColor(self.theme.palette.line), 2 if len(drawing.spans) < _MANY_SPANS else 1)
        pen.setCosmetic(True)
        ends = np.column_stack([low, high]).ravel()
        self._add(pg.PlotCurveItem(ends, np.repeat(drawing.y_shown[places], 2), connect="pairs", pen=pen))

    def _draw_joins(self, drawing: Drawing) -> None:
        if not len(drawing.joins):
            return
        colour = QColor(self.theme.palette.point)
        colour.setAlpha(_JOIN)
        # Qt draws lines one pixel wide many times as quickly as wider ones.
        pen = QPen(colour, 1.2 if len(drawing.joins) < 2 * _MANY_SPANS else 1)
        pen.setCosmetic(True)
        self._add(pg.PlotCurveItem(drawing.x[drawing.joins], drawing.y_shown[drawing.joins], connect="pairs", pen=pen))

    def _draw_points(self, drawing: Drawing, mark: Standing, chosen: NDArray[np.bool_], alpha: int) -> None:
        if not chosen.any():
            return
        pen, fill = pen_and_fill(mark, self.theme.palette)
        if alpha != _CLEAR:
            line = pen.color()
            line.setAlpha(alpha)
            pen.setColor(line)
        fill.setAlpha(min(alpha, 190 if mark is Standing.IN_LINE else 255))
        x, y, size = drawing.x[chosen], drawing.y_shown[chosen], _SIZES[mark] * size_among(len(drawing.rows))
        self._add(AlikePoints(x, y, symbol=shape_of(mark), size=size, pen=pen, fill=QBrush(fill)))

    def _draw_arrows(self, drawing: Drawing) -> None:
        """From the points at the edge to where they would be."""
        pen = QPen(QColor(self.theme.palette.quiet), 1.6)
        pen.setCosmetic(True)
        for way in (1, -1):
            chosen = drawing.beyond == way
            if chosen.any():
                x, y, symbol = drawing.x[chosen], drawing.y_shown[chosen], arrow(up=way > 0)
                self._add(AlikePoints(x, y, symbol=symbol, size=_ARROW_PX, pen=pen, fill=QBrush()))

    def _add(self, *items: Any) -> None:
        for item in items:
            self.addItem(item)
            self._items.append(item)

    def draw_as_shapes(self, wanted: bool) -> None:
        """For a file: words sharp at any size; on screen, pictures of them are quicker."""
        self._overlay.as_shapes = wanted

    def copies(self) -> list[Copies]:
        """What was left out of the shapes drawn last, for the file to have."""
        return [item.copies for item in self._items if isinstance(item, AlikePoints) and item.copies is not None]

    # Qt's own names from here on

    def resizeEvent(self, event: Any) -> None:
        super().resizeEvent(event)
        if hasattr(self, "_overlay"):
            if self.drawing is not None:
                self._set_ticks(self.drawing)
            self._overlay.setGeometry(self.rect())

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
        place = self.nearest(event.position())
        if place < 0 or self.drawing is None:
            self.fit()
        else:
            self.entered.emit(int(self.drawing.rows[place]))

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
