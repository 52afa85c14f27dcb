"""The grades down the left: glyph, letters, how many offers, how many of them stand out."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from tracker.desk.standing import Standing
from tracker.trade.grades import grades
from tracker.window.look.figures import counted
from tracker.window.look.marks import colour_of, draw_mark
from tracker.window.look.plies import draw_plies
from tracker.window.look.theme import Theme

_HEIGHT = 38
_COUNT_RIGHT, _MARKS_LEFT = 136, 146
_NOWHERE = QModelIndex()
ENTRY = int(Qt.ItemDataRole.UserRole) + 1


@dataclass(frozen=True, slots=True)
class GradeCount:
    """One line of the rail; `grade` '' is all grades together."""

    grade: str
    offers: int
    above: int
    below: int
    looking_slipped: int

    @property
    def said(self) -> str:
        """The line in words, for who does not see it."""
        name = grades()[self.grade].name.says if self.grade in grades() else self.grade or "all grades"
        return (
            f"{self.grade or ''} {name}: {counted(self.offers, 'offer')}, {self.above} out of line above and "
            f"{self.below} below the going price, {self.looking_slipped} that look like another basis"
        ).strip()


class GradeCounts(QAbstractListModel):
    """The lines of the rail."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.entries: Sequence[GradeCount] = ()

    def show(self, entries: Sequence[GradeCount]) -> None:
        self.beginResetModel()
        self.entries = tuple(entries)
        self.endResetModel()

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.entries)

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        entry = self.entries[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return entry.grade or "All grades"
        if role in (Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.ToolTipRole):
            return entry.said
        if role == ENTRY:
            return entry
        return None


class _GradeDelegate(QStyledItemDelegate):
    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        return QSize(160, _HEIGHT)

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        entry: GradeCount = index.data(ENTRY)
        box = QRectF(option.rect).adjusted(1, 2, -1, -2)
        state = option.state
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if state & QStyle.StateFlag.State_Selected:
            painter.setBrush(QColor(palette.selected))
            painter.setPen(QPen(QColor(palette.accent), 1.2))
            painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5)
        elif state & QStyle.StateFlag.State_MouseOver:
            painter.setBrush(QColor(palette.hover))
            painter.setPen(Qt.PenStyle.NoPen)
            painter.drawRoundedRect(box, 5, 5)
        middle = Qt.AlignmentFlag.AlignVCenter
        letters = box.adjusted(10, 0, 0, 0)
        if entry.grade:
            draw_plies(painter, entry.grade, QRectF(box.left() + 10, box.center().y() - 9, 32, 18))
            letters = box.adjusted(52, 0, 0, 0)
        font = QFont(option.font)
        font.setWeight(QFont.Weight.DemiBold)
        painter.setFont(font)
        painter.setPen(QColor(palette.ink))
        painter.drawText(letters, middle, entry.grade or "All grades")
        font.setWeight(QFont.Weight.Normal)
        painter.setFont(font)
        painter.setPen(QColor(palette.quiet))
        painter.drawText(
            QRectF(box.left() + 88, box.top(), _COUNT_RIGHT - 88, box.height()),
            middle | Qt.AlignmentFlag.AlignRight,
            f"{entry.offers:,}",
        )
        self._paint_marks(painter, box, entry)
        painter.restore()

    def _paint_marks(self, painter: QPainter, box: QRectF, entry: GradeCount) -> None:
        """Each mark with its number or, where these would not fit, all marks with their sum."""
        counts = [(Standing.ABOVE, entry.above), (Standing.BELOW, entry.below), (Standing.SLIP, entry.looking_slipped)]
        there = [(mark, number) for mark, number in counts if number]
        metrics = painter.fontMetrics()
        left = box.left() + _MARKS_LEFT
        needed = sum(16 + metrics.horizontalAdvance(f"{number:,}") for _, number in there)
        together = left + needed > box.right()
        for mark, number in there:
            draw_mark(painter, mark, QRectF(left, box.center().y() - 5, 10, 10), self._theme.palette)
            left += 12
            if not together:
                left += self._paint_number(painter, box, left, number, colour_of(mark, self._theme.palette)) + 4
        if together:
            self._paint_number(painter, box, left + 1, sum(number for _, number in there), self._theme.palette.ink)

    def _paint_number(self, painter: QPainter, box: QRectF, left: float, number: int, colour: str) -> int:
        painter.setPen(QColor(colour))
        text = f"{number:,}"
        painter.drawText(QRectF(left, box.top(), 60, box.height()), Qt.AlignmentFlag.AlignVCenter, text)
        return painter.fontMetrics().horizontalAdvance(text)


class GradeRail(QListView):
    """Chooses one grade, or all. `grade_chosen` carries its code, '' for all."""

    grade_chosen = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._counts = GradeCounts(self)
        self.setProperty("kind", "rail")
        self.setAccessibleName("Grade")
        self.setModel(self._counts)
        self.setItemDelegate(_GradeDelegate(theme, self))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setMouseTracking(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.selectionModel().currentChanged.connect(self._moved)

    def show_counts(self, entries: Sequence[GradeCount], chosen: str) -> None:
        """Shows new numbers; the chosen grade stays chosen."""
        self.selectionModel().blockSignals(True)
        self._counts.show(entries)
        for place, entry in enumerate(entries):
            if entry.grade == chosen:
                self.setCurrentIndex(self._counts.index(place))
        self.selectionModel().blockSignals(False)
        self.setFixedHeight(_HEIGHT * max(1, len(entries)) + 4)
        self.viewport().update()

    def choose(self, grade: str) -> None:
        """Goes to a grade as if the user had."""
        for place, entry in enumerate(self._counts.entries):
            if entry.grade == grade:
                self.setCurrentIndex(self._counts.index(place))

    def _moved(self, index: QModelIndex, _before: QModelIndex) -> None:
        if index.isValid():
            self.grade_chosen.emit(self._counts.entries[index.row()].grade)
