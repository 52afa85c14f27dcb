"""Points that all look alike, drawn as one: pyqtgraph's own scatter keeps for each of many thousand what they share."""

from __future__ import annotations

from typing import Any

import numpy as np
import pyqtgraph as pg
from pyqtgraph.graphicsItems.ScatterPlotItem import renderSymbol
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QBrush, QPaintEngine, QPainter, QPainterPath, QPen, QPixmap, QTransform
from shiboken6 import wrapInstance

from tracker.window.quotes.copies import Copies, signed
from tracker.window.quotes.drawing import Floats

_MANY, _VERY_MANY = 1_200, 12_000
_MOST_SHAPES = 2_000
"""Of more points a file of shapes gets one each time the window is drawn, and the others as copies of it."""
_HALF_DIAGONAL = 0.7072
_PARTS_OF_A_FRAGMENT = 10
"""x, y, the rectangle of the picture, scale across and down, rotation, opacity: all of them C doubles."""


class AlikePoints(pg.GraphicsObject):
    """Points of one symbol, one size in pixels, one pen and one fill.

    On a screen and in a file of pixels each is a copy of one small picture of the mark, as fine as they are; in a file
    of shapes each is a shape or, where they are many, stands in `copies` for whoever writes the file.
    """

    def __init__(self, x: Floats, y: Floats, *, symbol: QPainterPath, size: float, pen: QPen, fill: QBrush) -> None:
        super().__init__()
        known = np.isfinite(x) & np.isfinite(y)
        self.x, self.y = x[known], y[known]
        self._symbol, self._size, self._pen, self._fill = symbol, size, pen, fill
        self.copies: Copies | None = None
        self._pictures: dict[float, QPixmap] = {}
        self._bounds = _bounds(self.x, self.y)

    def boundingRect(self) -> QRectF:
        """Of the points, and as much round them as a mark takes at the present zoom."""
        across, down = (0.0 if each is None else each.length() for each in self.pixelVectors())
        reach = _HALF_DIAGONAL * (self._size + max(self._pen.widthF(), 1.0))
        return self._bounds.adjusted(-reach * across, -reach * down, reach * across, reach * down)

    def viewTransformChanged(self) -> None:
        self.prepareGeometryChange()
        super().viewTransformChanged()

    def paint(self, painter: QPainter, *_: Any) -> None:
        across, down = self._in_view(painter.transform())
        painter.resetTransform()
        if painter.paintEngine().type() is QPaintEngine.Type.Raster:
            self._paint_pictures(painter, across, down)
        else:
            self._paint_shapes(painter, across, down)

    def _in_view(self, transform: QTransform) -> tuple[Floats, Floats]:
        """The pixels of the points whose marks reach into the view; it is neither turned nor slanted."""
        across = self.x * transform.m11() + transform.dx()
        down = self.y * transform.m22() + transform.dy()
        reach = self._size
        view = transform.mapRect(self.viewRect()).adjusted(-reach, -reach, reach, reach)
        seen = (across > view.left()) & (across < view.right()) & (down > view.top()) & (down < view.bottom())
        return across[seen], down[seen]

    def _paint_pictures(self, painter: QPainter, across: Floats, down: Floats) -> None:
        ratio = painter.deviceTransform().m11()
        picture = self._picture(ratio)
        fragments = np.empty((len(across), _PARTS_OF_A_FRAGMENT))
        fragments[:, 0], fragments[:, 1] = across, down
        fragments[:, 2:] = (0, 0, picture.width(), picture.height(), 1 / ratio, 1 / ratio, 0, 1)
        if len(across):
            first: Any = wrapInstance(fragments.ctypes.data, QPainter.PixmapFragment)
            painter.drawPixmapFragments(first, len(across), picture)

    def _picture(self, ratio: float) -> QPixmap:
        """The mark, in so many pixels for one of the view's."""
        if ratio not in self._pictures:
            self._pictures[ratio] = QPixmap.fromImage(
                renderSymbol(self._symbol, self._size, self._pen, self._fill, dpr=ratio)
            )
            self._pictures[ratio].setDevicePixelRatio(1)
        return self._pictures[ratio]

    def _paint_shapes(self, painter: QPainter, across: Floats, down: Floats) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(self._pen)
        painter.setBrush(self._fill)
        shape = QTransform.fromScale(self._size, self._size).map(self._symbol)
        self.copies = None
        if len(across) > _MOST_SHAPES:
            self.copies = Copies(across[1:] - across[0], down[1:] - down[0])
            painter.drawPath(signed(self.copies))
            across, down = across[:1], down[:1]
        for x, y in zip(across.tolist(), down.tolist(), strict=True):
            painter.drawPath(shape.translated(QPointF(x, y)))


def _bounds(x: Floats, y: Floats) -> QRectF:
    if not len(x):
        return QRectF()
    return QRectF(QPointF(x.min(), y.min()), QPointF(x.max(), y.max()))


def size_among(points: int) -> float:
    """How large a point is among so many, beside its full size: many are smaller, and so hide each other less."""
    return 1.0 if points < _MANY else 0.75 if points < _VERY_MANY else 0.55
