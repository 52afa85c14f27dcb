"""A picture of one property: its readings as points, what is claimed with its tolerance, the mean with its interval."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from tracker.trade.claims import Verdict
from tracker.window.look.theme import Theme

if TYPE_CHECKING:
    from tracker.desk.sample_checks import PropertyChecked

_HEIGHT, _AXIS, _MARGIN = 46, 34, 26
_ROWS, _SMALL = 3, 11


class ReadingStrip(QWidget):
    """Band: claim and tolerance. Rings: readings, those outside the standard air hollow, those apart crossed."""

    def __init__(self, theme: Theme, checked: PropertyChecked, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._checked = checked
        self.setFixedHeight(_HEIGHT + _AXIS)
        self.setAccessibleName(f"{checked.property.name}: readings against the claim")
        self.setToolTip(
            "Line: what is claimed. Band: the usual tolerance round it, which nobody need have claimed. "
            "Rings: readings, hollow where not known to be conditioned, crossed where they stand apart. Bar: where "
            "the mean lies, 95 % sure."
        )

    def bounds(self) -> tuple[float, float]:
        """The values at the left and the right edge."""
        values = [float(reading.value) for reading in self._checked.readings]
        tolerated = self._tolerated()
        values += tolerated or []
        spread = self._checked.spread
        if spread is not None and spread.low is not None and spread.high is not None:
            values += [spread.low, spread.high]
        low, high = min(values), max(values)
        room = (high - low) * 0.06 or abs(high) * 0.05 or 1.0
        return low - room, high + room

    def _tolerated(self) -> list[float] | None:
        from fractions import Fraction

        claim = self._checked.claim
        if claim is None:
            return None
        return [float(edge) for edge in self._checked.property.tolerance.around(Fraction(claim.value))]

    def _x(self, value: float) -> float:
        low, high = self.bounds()
        return _MARGIN + (value - low) / (high - low) * (self.width() - 2 * _MARGIN)

    def _draw_claim(self, painter: QPainter) -> None:
        tolerated, claim, palette = self._tolerated(), self._checked.claim, self._theme.palette
        if tolerated is None or claim is None:
            return
        left, right = (self._x(edge) for edge in tolerated)
        painter.fillRect(QRectF(left, 4, right - left, _HEIGHT - 8), QColor(palette.band))
        painter.setPen(QPen(QColor(palette.band_ink), 1.4))
        at = self._x(float(claim.value))
        painter.drawLine(QPointF(at, 4), QPointF(at, _HEIGHT - 4))

    def _draw_readings(self, painter: QPainter) -> None:
        palette = self._theme.palette
        for place, reading in enumerate(self._checked.readings):
            at = QPointF(self._x(float(reading.value)), 11 + 7 * (place % _ROWS))
            apart = place in self._checked.outlying
            colour = QColor(palette.slip if apart else palette.point)
            painter.setPen(QPen(colour, 1.3))
            painter.setBrush(colour if reading.conditioned else QColor(palette.raised))
            painter.drawEllipse(at, 3, 3)
            if apart:
                painter.drawLine(at + QPointF(-6, -6), at + QPointF(6, 6))
                painter.drawLine(at + QPointF(-6, 6), at + QPointF(6, -6))

    def _draw_mean(self, painter: QPainter) -> None:
        spread, palette = self._checked.spread, self._theme.palette
        if spread is None or spread.low is None or spread.high is None:
            return
        check = self._checked.check
        colour = QColor(palette.above if check is not None and check.verdict is Verdict.OFF else palette.accent)
        y = _HEIGHT - 11.0
        painter.setPen(QPen(colour, 3))
        painter.drawLine(QPointF(self._x(spread.low), y), QPointF(self._x(spread.high), y))
        painter.setBrush(colour)
        painter.drawEllipse(QPointF(self._x(spread.mean), y), 4.2, 4.2)

    def _draw_axis(self, painter: QPainter) -> None:
        """Figures with their unit below; the claim and the edges of its tolerance where one is made."""
        palette, claim = self._theme.palette, self._checked.claim
        painter.setPen(QPen(QColor(palette.line), 1))
        painter.drawLine(QPointF(_MARGIN, _HEIGHT), QPointF(self.width() - _MARGIN, _HEIGHT))
        font = painter.font()
        font.setPixelSize(_SMALL)
        painter.setFont(font)
        painter.setPen(QColor(palette.quiet))
        for value, said in self.marks():
            at = self._x(value)
            painter.drawLine(QPointF(at, _HEIGHT), QPointF(at, _HEIGHT + 4))
            self._write(painter, at, _HEIGHT + 4, said)
        tolerance = self._checked.property.tolerance
        below = f"claimed; band: {tolerance}, the usual" if tolerance.percent is not None else "claimed"
        if claim is not None:
            self._write(painter, self._x(float(claim.value)), _HEIGHT + 18, below)

    def marks(self) -> list[tuple[float, str]]:
        """What the axis is marked at, in the property's own unit, and the figure written there in the unit shown."""
        tolerated, claim = self._tolerated(), self._checked.claim
        if tolerated is None or claim is None:
            low, high = self.bounds()
            middle = (low + high) / 2
            return [(low, self._figure(low)), (middle, self._with_unit(middle)), (high, self._figure(high))]
        middle = float(claim.value)
        return [
            (tolerated[0], self._figure(tolerated[0])),
            (middle, self._with_unit(middle)),
            (tolerated[1], self._figure(tolerated[1])),
        ]

    def _figure(self, value: float) -> str:
        return f"{value / float(self._checked.property.factor(self._checked.unit) or 1):.4g}"

    def _with_unit(self, value: float) -> str:
        return f"{self._figure(value)} {self._checked.unit}"

    def _write(self, painter: QPainter, at: float, top: float, said: str) -> None:
        wide = painter.fontMetrics().horizontalAdvance(said) + 4
        left = min(max(at - wide / 2, 0.0), self.width() - wide)
        painter.drawText(QRectF(left, top, wide, 15), Qt.AlignmentFlag.AlignCenter, said)

    # Qt's own names from here on

    def sizeHint(self) -> QSize:
        return QSize(260, _HEIGHT + _AXIS)

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._checked.readings:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_claim(painter)
        self._draw_readings(painter)
        self._draw_mean(painter)
        self._draw_axis(painter)
