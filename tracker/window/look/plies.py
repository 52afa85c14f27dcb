"""The ply glyph: a grade as a small cross-section of the board, drawn from the layers in resources/grades.toml.

Every material has a pattern of its own, so that the glyph reads without colour: coat and bleached plain, kraft dots,
grey crosses, mechanical pulp slanted lines.
"""

from functools import cache, lru_cache
from math import ceil

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPainterPath, QPen

from tracker.trade.grades import Stuff, grades
from tracker.window.look.palette import ply_colours

_PATTERN_STEP = 4.0
# A coat is a twentieth of a board's thickness: drawn to scale it would not be seen.
_LEAST_SHARE = 0.18
_RIM = 1.0
_FORMAT = QImage.Format.Format_ARGB32_Premultiplied


@cache
def plies_of(grade: str) -> tuple[tuple[Stuff, float], ...]:
    """Material and share of the glyph's height, print side first, like plies as one; nothing for an unknown grade."""
    if grade not in grades():
        return ()
    parts: list[tuple[Stuff, float]] = []
    for layer in grades()[grade].layers:
        same = parts.pop()[1] if parts and parts[-1][0] is layer.stuff else 0.0
        parts.append((layer.stuff, same + float(layer.part)))
    shares = [max(_LEAST_SHARE, part) for _, part in parts]
    return tuple((stuff, share / sum(shares)) for (stuff, _), share in zip(parts, shares, strict=True))


def draw_plies(painter: QPainter, grade: str, box: QRectF) -> None:
    """Draws the grade's cross-section into the box; an unknown grade is an empty dashed outline.

    The pattern takes half a millisecond to draw, too long for each row of a table at each repaint: it is drawn once.
    """
    drawn = _drawn(grade, box.width(), box.height(), painter.device().devicePixelRatioF())
    painter.drawImage(QPointF(round(box.left() - _RIM), round(box.top() - _RIM)), drawn)


@lru_cache(maxsize=200)
def _drawn(grade: str, width: float, height: float, ratio: float) -> QImage:
    drawn = QImage(ceil((width + 2 * _RIM) * ratio), ceil((height + 2 * _RIM) * ratio), _FORMAT)
    drawn.setDevicePixelRatio(ratio)
    drawn.fill(Qt.GlobalColor.transparent)
    painter = QPainter(drawn)
    _draw(painter, grade, QRectF(_RIM, _RIM, width, height))
    painter.end()
    return drawn


def _draw(painter: QPainter, grade: str, box: QRectF) -> None:
    colours = ply_colours()
    plies = plies_of(grade)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    outline = QPainterPath()
    outline.addRoundedRect(box, 2.5, 2.5)
    if plies:
        painter.save()
        painter.setClipPath(outline)
        top = box.top()
        for stuff, share in plies:
            layer = QRectF(box.left(), top, box.width(), box.height() * share)
            painter.fillRect(layer, QColor(colours[stuff.value]))
            _draw_pattern(painter, stuff, layer, QColor(colours["mark"]))
            top = layer.bottom()
        painter.restore()
    pen = QPen(QColor(colours["outline"]), 1.2)
    if not plies:
        pen.setStyle(Qt.PenStyle.DashLine)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(outline)
    painter.restore()


def _draw_pattern(painter: QPainter, stuff: Stuff, layer: QRectF, colour: QColor) -> None:
    colour.setAlpha(150)
    painter.save()
    painter.setClipRect(layer, Qt.ClipOperation.IntersectClip)
    if stuff is Stuff.KRAFT:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        for point in _lattice(layer):
            painter.drawEllipse(point, 0.8, 0.8)
    elif stuff is Stuff.GREY:
        painter.setPen(QPen(colour, 0.9))
        for point in _lattice(layer):
            painter.drawLine(QLineF(point.x() - 1.1, point.y(), point.x() + 1.1, point.y()))
            painter.drawLine(QLineF(point.x(), point.y() - 1.1, point.x(), point.y() + 1.1))
    elif stuff is Stuff.MECHANICAL:
        painter.setPen(QPen(colour, 0.9))
        left = layer.left() - layer.height()
        while left < layer.right():
            painter.drawLine(QLineF(left, layer.bottom(), left + layer.height(), layer.top()))
            left += _PATTERN_STEP
    painter.restore()


def _lattice(layer: QRectF) -> list[QPointF]:
    """Points of a brick lattice, so that dots of neighbouring rows don't line up into stripes."""
    points = []
    row = 0
    y = layer.top() + _PATTERN_STEP * 0.7
    while y < layer.bottom():
        x = layer.left() + _PATTERN_STEP * (0.6 if row % 2 else 1.1)
        while x < layer.right():
            points.append(QPointF(x, y))
            x += _PATTERN_STEP
        y += _PATTERN_STEP * 0.9
        row += 1
    return points
