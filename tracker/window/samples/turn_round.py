"""A picture of vendors: how long each usually takes from request to arrival, and between which bounds that lies."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from tracker.desk.waiting import usual_words
from tracker.window.look.figures import counted
from tracker.window.look.theme import Theme

if TYPE_CHECKING:
    from tracker.desk.samples import Sample
    from tracker.desk.waits import WaitRow

_ROW, _HEAD, _NAMES, _WORDS = 38, 44, 196, 276
_WEEKS = (1, 2, 4, 8, 13, 26, 52)
_FIGURE = 34
_METHOD = (
    "Half of the samples came within the time of the dot; the bar says how surely, dashed where its end is not known "
    "yet. Those still waiting count as waiting. Small rings: arrivals; arrows: still waiting."
)
_HOW_ESTIMATED = "The usual time is the Kaplan–Meier median, the bar its 95 % interval."


class TurnRound(QWidget):
    """One row a vendor, all vendors first. A median that is not reached is said, not drawn."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows: tuple[WaitRow, ...] = ()
        self._samples: tuple[Sample, ...] = ()
        self.setAccessibleName("How long vendors take to send samples")
        self.setToolTip(_HOW_ESTIMATED)
        theme.changed.connect(self.update)

    def show_waits(self, rows: Sequence[WaitRow], samples: Sequence[Sample]) -> None:
        """Puts new rows in place of the old."""
        self._rows, self._samples = tuple(rows), tuple(samples)
        self.setMinimumHeight(self.sizeHint().height())
        self.update()

    def longest(self) -> float:
        """Days at the right edge: the longest wait or bound there is, rounded up to a week."""
        known = [float(sample.waiting_days) for sample in self._samples]
        known += [days for row in self._rows for days in (row.usual_days, row.high_days) if days is not None]
        return max(7.0, 7 * -(-max(known, default=7.0) // 7))

    def x_of(self, days: float) -> float:
        return _NAMES + days / self.longest() * max(40, self.width() - _NAMES - _WORDS)

    def step(self) -> int:
        """Days between two lines of the scale: as few weeks as leave each figure its room."""
        a_week = self.x_of(7) - self.x_of(0)
        return 7 * next((weeks for weeks in _WEEKS if weeks * a_week >= _FIGURE), _WEEKS[-1])

    def words_of(self, row: WaitRow) -> str:
        """'usually 11 days; 9 to 14, 5 asked, 2 owed'."""
        if row.usual_days is None:
            usual = "too few came to tell"
        else:
            usual = usual_words(row.usual_days, row.low_days, row.high_days)
        owed = f", {row.outstanding} owed" if row.outstanding else ""
        return f"{usual}, {row.n} asked{owed}"

    def _draw_weeks(self, painter: QPainter) -> None:
        palette = self._theme.palette
        for days in range(0, int(self.longest()) + 1, self.step()):
            x = self.x_of(days)
            painter.setPen(QPen(QColor(palette.line), 1))
            painter.drawLine(QPointF(x, _HEAD - 4), QPointF(x, _HEAD + _ROW * len(self._rows)))
            painter.setPen(QColor(palette.quiet))
            said = counted(days, "day") if days == 0 else str(days)
            painter.drawText(QRectF(x - 30, _HEAD - 22, 60, 16), Qt.AlignmentFlag.AlignCenter, said)

    def _draw_row(self, painter: QPainter, place: int, row: WaitRow) -> None:
        palette = self._theme.palette
        y = _HEAD + place * _ROW + _ROW / 2
        painter.setPen(QColor(palette.ink))
        name = row.vendor or "All vendors together"
        cut = painter.fontMetrics().elidedText(name, Qt.TextElideMode.ElideRight, _NAMES - 22)
        painter.drawText(QRectF(10, y - 10, _NAMES - 20, 20), Qt.AlignmentFlag.AlignVCenter, cut)
        self._draw_waits(painter, row.vendor, y)
        if row.usual_days is not None:
            low = row.low_days if row.low_days is not None else 0.0
            high = row.high_days if row.high_days is not None else row.usual_days
            painter.setPen(QPen(QColor(palette.accent), 4, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
            painter.drawLine(QPointF(self.x_of(low), y), QPointF(self.x_of(high), y))
            if row.high_days is None:
                painter.setPen(QPen(QColor(palette.accent), 1.4, Qt.PenStyle.DashLine))
                painter.drawLine(QPointF(self.x_of(high), y), QPointF(self.x_of(self.longest()), y))
                painter.setPen(QPen(QColor(palette.accent), 1))
            painter.setBrush(QColor(palette.accent))
            painter.drawEllipse(QPointF(self.x_of(row.usual_days), y), 5.5, 5.5)
        painter.setPen(QColor(palette.quiet))
        rest = QRectF(self.width() - _WORDS + 14, y - _ROW / 2, _WORDS - 18, _ROW)
        flags = Qt.AlignmentFlag.AlignVCenter.value | Qt.TextFlag.TextWordWrap.value
        painter.drawText(rest, flags, self.words_of(row))

    def _draw_waits(self, painter: QPainter, vendor: str | None, y: float) -> None:
        if vendor is None:
            return
        palette = self._theme.palette
        painter.setPen(QPen(QColor(palette.point), 1.3))
        for sample in self._samples:
            if sample.vendor != vendor:
                continue
            at = QPointF(self.x_of(sample.waiting_days), y + 9)
            if sample.arrived is not None:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawEllipse(at, 2.6, 2.6)
            elif sample.state.outstanding:
                painter.drawLine(at - QPointF(4, 0), at + QPointF(5, 0))
                painter.drawLine(at + QPointF(5, 0), at + QPointF(2, -3))
                painter.drawLine(at + QPointF(5, 0), at + QPointF(2, 3))

    # Qt's own names from here on

    def sizeHint(self) -> QSize:
        return QSize(640, _HEAD + _ROW * len(self._rows) + 52)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if not self._samples:
            painter.setPen(QColor(self._theme.palette.quiet))
            painter.drawText(QRectF(self.rect()).adjusted(16, 16, -16, 0), "No sample was asked for yet.")
            return
        self._draw_weeks(painter)
        for place, row in enumerate(self._rows):
            self._draw_row(painter, place, row)
        painter.setPen(QColor(self._theme.palette.quiet))
        foot = QRectF(10, _HEAD + _ROW * len(self._rows) + 6, self.width() - 20, 40)
        painter.drawText(foot, int(Qt.TextFlag.TextWordWrap), _METHOD)
