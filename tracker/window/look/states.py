"""Signs for how far a line of a vendor's sheet is known: a tick, a question mark, a cross. Never by colour alone."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen

from tracker.trade.offer import State
from tracker.window.look.palette import Palette


def draw_state(painter: QPainter, state: State, box: QRectF, palette: Palette) -> None:
    """Draws the sign centred in a box, about 12 px large."""
    centre = box.center()
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if state is State.QUESTION:
        font = QFont(painter.font())
        font.setPixelSize(14)
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(QColor(palette.slip))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, "?")
    else:
        pen = QPen(QColor(palette.accent if state is State.ACCEPTED else palette.above), 1.8)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        strokes = (
            (QPointF(-4.5, 0), QPointF(-1.5, 3.2), QPointF(4.5, -3.6))
            if state is State.ACCEPTED
            else (QPointF(-3.6, -3.6), QPointF(3.6, 3.6), QPointF(0, 0), QPointF(-3.6, 3.6), QPointF(3.6, -3.6))
        )
        painter.drawPolyline([centre + stroke for stroke in strokes])
    painter.restore()
