"""A picture of samples: one line a request from the day it was asked through its events, today marked."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QToolTip, QWidget

from tracker.window.look import figures
from tracker.window.look.theme import Theme
from tracker.window.samples.sample_columns import is_outstanding, overdue_words

if TYPE_CHECKING:
    from tracker.desk.samples import Sample, SampleEvent

_ROW, _HEAD, _NAMES, _RIGHT = 24, 26, 208, 16
_SIZE = 4.2
_SPARE_DAYS = 7


class LifeLines(QWidget):
    """Draws what it is shown, in that order. `picked` carries the place of the line that was clicked."""

    picked = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._samples: tuple[Sample, ...] = ()
        self._today = date.today()
        self._chosen = -1
        self.setAccessibleName("The requests as lines through time")
        self.setMouseTracking(True)
        theme.changed.connect(self.update)

    def show_samples(self, samples: Sequence[Sample], today: date) -> None:
        """Puts new lines in place of the old."""
        self._samples, self._today = tuple(samples), today
        self.setMinimumHeight(self.sizeHint().height())
        self.updateGeometry()
        self.update()

    def choose(self, number: int) -> None:
        """Marks the line of one request."""
        self._chosen = number
        self.update()

    def span(self) -> tuple[date, date]:
        """The days from the first request to a little after today, promises included."""
        days = [self._today]
        for sample in self._samples:
            days += [sample.requested, *(event.on for event in sample.events)]
            days += [sample.due] if sample.due is not None and is_outstanding(sample) else []
        return min(days), max(days) + timedelta(days=_SPARE_DAYS)

    def x_of(self, day: date) -> float:
        """Where a day stands across the picture."""
        first, last = self.span()
        share = (day - first).days / max(1, (last - first).days)
        return _NAMES + share * (self.width() - _NAMES - _RIGHT)

    def row_at(self, y: float) -> int:
        """The place of the line at a height, -1 for none."""
        row = int((y - _HEAD) // _ROW)
        return row if y >= _HEAD and row < len(self._samples) else -1

    def _draw_months(self, painter: QPainter) -> None:
        palette = self._theme.palette
        first, last = self.span()
        day = (first.replace(day=1) + timedelta(days=32)).replace(day=1)
        painter.setFont(self._small())
        today = self._today_label(painter)
        while day <= last:
            x = self.x_of(day)
            painter.setPen(QPen(QColor(palette.line), 1))
            painter.drawLine(QPointF(x, _HEAD - 4), QPointF(x, self.height()))
            said = figures.date_text(day)
            # A day that "today" would cut in the middle is left out: its line stays.
            if not today.intersects(QRectF(x, _HEAD - 21, painter.fontMetrics().horizontalAdvance(said) + 6, 16)):
                painter.setPen(QColor(palette.quiet))
                painter.drawText(QPointF(x + 3, _HEAD - 9), said)
            day = (day + timedelta(days=32)).replace(day=1)
        x = self.x_of(self._today)
        painter.setPen(QPen(QColor(palette.accent), 1.5))
        painter.drawLine(QPointF(x, _HEAD - 8), QPointF(x, self.height()))
        painter.drawText(today, Qt.AlignmentFlag.AlignCenter, "today")

    def _today_label(self, painter: QPainter) -> QRectF:
        """Left of its line, so that it never runs out of the picture."""
        width = painter.fontMetrics().horizontalAdvance("today") + 8
        return QRectF(self.x_of(self._today) - width, _HEAD - 21, width, 16)

    def _draw_line(self, painter: QPainter, row: int, sample: Sample) -> None:
        palette = self._theme.palette
        y = _HEAD + row * _ROW + _ROW / 2
        painter.setPen(QColor(palette.ink))
        name = f"{sample.number}  {sample.vendor}"
        cut = painter.fontMetrics().elidedText(name, Qt.TextElideMode.ElideRight, _NAMES - 22)
        painter.drawText(QRectF(10, y - 10, _NAMES - 20, 20), Qt.AlignmentFlag.AlignVCenter, cut)
        start, end = self.x_of(sample.requested), self.x_of(sample.requested + timedelta(days=sample.waiting_days))
        painter.setPen(QPen(QColor(palette.point), 2))
        painter.drawLine(QPointF(start, y), QPointF(end, y))
        if sample.due is not None and is_outstanding(sample):
            self._draw_due(painter, sample.due, y, sample.overdue)
        self._dot(painter, QPointF(start, y), palette.point, hollow=True)
        for event in sample.events:
            self._draw_event(painter, event, y)

    def _draw_due(self, painter: QPainter, due: date, y: float, overdue: bool) -> None:
        """A dashed line between the day it is due and today: strong where that is past."""
        palette = self._theme.palette
        colour = QColor(palette.above if overdue else palette.edge)
        painter.setPen(QPen(colour, 3 if overdue else 1.2, Qt.PenStyle.SolidLine if overdue else Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(self.x_of(due), y), QPointF(self.x_of(self._today), y))
        painter.setPen(QPen(colour, 1.8))
        painter.drawLine(QPointF(self.x_of(due), y - 7), QPointF(self.x_of(due), y + 7))

    def _draw_event(self, painter: QPainter, event: SampleEvent, y: float) -> None:
        palette = self._theme.palette
        at = QPointF(self.x_of(event.on), y)
        kind = str(event.kind)
        if kind == "arrived":
            self._dot(painter, at, palette.accent)
        elif kind in ("refused", "cancelled", "lost"):
            painter.setPen(QPen(QColor(palette.above), 2))
            for sign in (1, -1):
                painter.drawLine(at + QPointF(-_SIZE, -_SIZE * sign), at + QPointF(_SIZE, _SIZE * sign))
        elif kind == "sent":
            painter.setPen(QPen(QColor(palette.ink), 1.4))
            painter.setBrush(QColor(palette.raised))
            painter.drawPolygon(QPolygonF([at + QPointF(-4, -5), at + QPointF(5, 0), at + QPointF(-4, 5)]))
        elif kind == "chased":
            painter.setPen(QPen(QColor(palette.slip), 2))
            painter.drawLine(at + QPointF(0, -6), at + QPointF(0, 6))
        else:
            self._dot(painter, at, palette.ink, hollow=True)

    def _dot(self, painter: QPainter, at: QPointF, colour: str, *, hollow: bool = False) -> None:
        painter.setPen(QPen(QColor(colour), 1.6))
        painter.setBrush(QColor(self._theme.palette.raised) if hollow else QColor(colour))
        painter.drawEllipse(at, _SIZE, _SIZE)

    def _small(self) -> QFont:
        font = self.font()
        font.setPixelSize(max(10, font.pixelSize() - 2))
        return font

    def _told(self, sample: Sample) -> str:
        lines = [f"{sample.label} · {sample.vendor}", f"asked for {figures.date_text(sample.requested)}"]
        for event in sample.events:
            until = f" for {figures.date_text(event.until)}" if event.until else ""
            lines.append(f"{event.kind} {figures.date_text(event.on)}{until}")
        owed = overdue_words(sample)
        return "\n".join(lines + ([owed] if owed != figures.NONE else []))

    # Qt's own names from here on

    def sizeHint(self) -> QSize:
        return QSize(640, _HEAD + _ROW * len(self._samples) + 8)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if not self._samples:
            return
        for row, sample in enumerate(self._samples):
            if sample.number == self._chosen:
                painter.fillRect(
                    QRectF(0, _HEAD + row * _ROW, self.width(), _ROW), QColor(self._theme.palette.selected)
                )
        self._draw_months(painter)
        painter.setFont(self.font())
        for row, sample in enumerate(self._samples):
            self._draw_line(painter, row, sample)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        row = self.row_at(event.position().y())
        if row >= 0:
            self.picked.emit(row)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        row = self.row_at(event.position().y())
        if row < 0:
            QToolTip.hideText()
        else:
            QToolTip.showText(event.globalPosition().toPoint(), self._told(self._samples[row]), self)
