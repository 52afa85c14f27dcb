"""The verdict marks, by shape first: the same in table, picture and panel."""

from functools import cache
from math import cos, pi, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from tracker.desk.standing import Standing
from tracker.window.look.palette import Palette

OPEN_MARKS = frozenset({Standing.SLIP, Standing.ESTIMATED})
_DOTS_IN_RING = 8


def colour_of(mark: Standing, palette: Palette) -> str:
    """The mark's colour: verdicts speak, all else stays quiet."""
    return {Standing.SLIP: palette.slip, Standing.ABOVE: palette.above, Standing.BELOW: palette.below}.get(
        mark, palette.point
    )


@cache
def shape_of(mark: Standing) -> QPainterPath:
    """The mark's outline in a square of side 1 around the origin, y downwards."""
    path = QPainterPath()
    if mark is Standing.ABOVE:
        path.addPolygon(QPolygonF([QPointF(0, -0.46), QPointF(0.5, 0.42), QPointF(-0.5, 0.42)]))
        path.closeSubpath()
    elif mark is Standing.BELOW:
        path.addPolygon(QPolygonF([QPointF(0, 0.46), QPointF(0.5, -0.42), QPointF(-0.5, -0.42)]))
        path.closeSubpath()
    elif mark is Standing.SLIP:
        path.addPolygon(QPolygonF([QPointF(0, -0.5), QPointF(0.5, 0), QPointF(0, 0.5), QPointF(-0.5, 0)]))
        path.closeSubpath()
    elif mark is Standing.FEW:
        for dot in range(_DOTS_IN_RING):
            angle = 2 * pi * dot / _DOTS_IN_RING
            path.addEllipse(QPointF(0.38 * cos(angle), 0.38 * sin(angle)), 0.085, 0.085)
    else:
        path.addEllipse(QPointF(0, 0), 0.36, 0.36)
    return path


@cache
def arrow(*, up: bool) -> QPainterPath:
    """A head that points on from a mark in the middle of a square of side 1, well clear of it."""
    tip, foot = (-0.48, -0.34) if up else (0.48, 0.34)
    path = QPainterPath(QPointF(-0.16, foot))
    path.lineTo(0, tip)
    path.lineTo(0.16, foot)
    return path


def pen_and_fill(mark: Standing, palette: Palette) -> tuple[QPen, QColor]:
    """How the shape is drawn: open marks as an outline over the ground, the others filled without one."""
    colour = QColor(colour_of(mark, palette))
    if mark in OPEN_MARKS:
        pen = QPen(colour, 1.8 if mark is Standing.SLIP else 1.4)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        pen.setCosmetic(True)
        return pen, QColor(palette.raised)
    return QPen(Qt.PenStyle.NoPen), colour


def draw_mark(painter: QPainter, mark: Standing, box: QRectF, palette: Palette) -> None:
    """Draws the mark centred in a box, as large as the smaller side allows."""
    size = min(box.width(), box.height())
    pen, fill = pen_and_fill(mark, palette)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(box.center())
    painter.scale(size, size)
    painter.setPen(pen)
    painter.setBrush(fill)
    painter.drawPath(shape_of(mark))
    painter.restore()
