"""A list of things to settle: a mark, what it is, a quiet detail, a figure at the right."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFocusEvent, QFont, QKeyEvent, QPainter, QPen, QResizeEvent, QShowEvent
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
from tracker.window.look.marks import draw_mark
from tracker.window.look.plies import draw_plies
from tracker.window.look.theme import Theme

ROW_HEIGHT = 46
_LINE = 18
_NARROW, _TIGHT = 620, 420
"""Below these widths the figure stands beside the detail, and below both lines."""
TASK = int(Qt.ItemDataRole.UserRole) + 1
_NOWHERE = QModelIndex()


@dataclass(frozen=True, slots=True)
class Task:
    """One thing to settle. `target` is handed back when the user wants it."""

    text: str
    detail: str
    figure: str
    target: object
    grade: str = ""
    mark: Standing | None = None


class Tasks(QAbstractListModel):
    """The tasks of one list."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.tasks: tuple[Task, ...] = ()

    def show(self, tasks: Sequence[Task]) -> None:
        self.beginResetModel()
        self.tasks = tuple(tasks)
        self.endResetModel()

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.tasks)

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        task = self.tasks[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return task.text
        if role == Qt.ItemDataRole.ToolTipRole:
            return f"{task.text}\n{task.detail}"
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{task.text}, {task.detail}, {task.figure}"
        if role == TASK:
            return task
        return None


class _TaskDelegate(QStyledItemDelegate):
    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        view = self.parent()
        tight = isinstance(view, QListView) and view.viewport().width() < _TIGHT
        return QSize(200, ROW_HEIGHT + (_LINE if tight else 0))

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        task: Task = index.data(TASK)
        box = QRectF(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._ground(painter, option, index.row() == 0)
        left = box.left() + 14
        if task.grade:
            draw_plies(painter, task.grade, QRectF(left, box.center().y() - 9, 32, 18))
            left += 44
        figure = self._figure(painter, option, task)
        room = figure.left() - left - 12
        whole = box.right() - 14 - left
        painter.setFont(option.font)
        narrow, tight = box.width() < _NARROW, box.width() < _TIGHT
        self._line(painter, QRectF(left, box.top() + 5, whole if narrow else room, _LINE), task.text, palette.ink)
        detail = QRectF(left, box.top() + 5 + _LINE, whole if tight else room, _LINE)
        self._line(painter, detail, task.detail, palette.quiet)
        painter.restore()

    def _ground(self, painter: QPainter, option: QStyleOptionViewItem, first: bool) -> None:
        """Selected, under the mouse or neither, with a line to the row above."""
        palette, box = self._theme.palette, QRectF(option.rect)
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(box, QColor(palette.selected))
        elif option.state & QStyle.StateFlag.State_MouseOver:
            painter.fillRect(box, QColor(palette.hover))
        painter.setPen(QPen(QColor(palette.line), 1))
        if not first:
            painter.drawLine(box.topLeft(), box.topRight())

    def _figure(self, painter: QPainter, option: QStyleOptionViewItem, task: Task) -> QRectF:
        """Draws the figure with its mark: beside the text, in a narrow list beside the detail, in a tight one below
        both, so that neither is cut for it. Gives the room it takes."""
        palette, box = self._theme.palette, QRectF(option.rect)
        strong = QFont(option.font)
        strong.setWeight(QFont.Weight.DemiBold)
        painter.setFont(strong)
        width = painter.fontMetrics().horizontalAdvance(task.figure) + 8
        figure = QRectF(box.right() - 14 - width, box.top(), width, box.height())
        if box.width() < _NARROW:
            lines_above = 2 if box.width() < _TIGHT else 1
            figure = QRectF(figure.left(), box.top() + 5 + lines_above * _LINE, width, _LINE)
        painter.setPen(QColor(palette.ink))
        painter.drawText(figure, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, task.figure)
        if task.mark is not None:
            draw_mark(painter, task.mark, QRectF(figure.left() - 12, figure.center().y() - 6, 12, 12), palette)
            figure.setLeft(figure.left() - 18)
        return figure

    def _line(self, painter: QPainter, box: QRectF, text: str, colour: str) -> None:
        painter.setPen(QColor(colour))
        shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, int(box.width()))
        painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, shown)


class TaskList(QListView):
    """Tasks on screen. `wanted` carries the target of the one clicked or entered."""

    wanted = Signal(object)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tasks = Tasks(self)
        self.setModel(self._tasks)
        self.setItemDelegate(_TaskDelegate(theme, self))
        self.setAccessibleName(name)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setMouseTracking(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setUniformItemSizes(True)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.clicked.connect(self._take)
        theme.changed.connect(self.viewport().update)

    def show_tasks(self, tasks: Sequence[Task]) -> None:
        self._tasks.show(tasks)
        self.updateGeometry()

    @property
    def tasks(self) -> tuple[Task, ...]:
        return self._tasks.tasks

    def _take(self, index: QModelIndex) -> None:
        if index.isValid():
            self.wanted.emit(self._tasks.tasks[index.row()].target)

    # Qt's own names from here on

    def sizeHint(self) -> QSize:
        """As tall as all tasks, so that a short list leaves the room to others."""
        return QSize(400, max(self.sizeHintForRow(0), ROW_HEIGHT) * len(self._tasks.tasks) + 2)

    def minimumSizeHint(self) -> QSize:
        return QSize(200, ROW_HEIGHT)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_rows()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._fit_rows()

    def _fit_rows(self) -> None:
        """Rows that were laid out for another width, perhaps while nobody saw them, are laid out anew at once."""
        if self._tasks.tasks and self.visualRect(self._tasks.index(0)).height() != self.sizeHintForRow(0):
            self.doItemsLayout()
            self.updateGeometry()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._take(self.currentIndex())
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if not self.currentIndex().isValid() and self._tasks.tasks:
            self.setCurrentIndex(self._tasks.index(0))

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.setCurrentIndex(QModelIndex())
