"""A list of things to settle: a mark, what it is, a quiet detail, a figure at the right."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFocusEvent, QFont, QFontMetricsF, QKeyEvent, QPainter, QPen, QResizeEvent, QShowEvent
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
from tracker.window.tables.task_lines import TaskLines, lay_out

ROW_HEIGHT = 46
"""Of a task whose text and detail take a line each, as most do."""
_LINE = 18
_ABOVE = 5
_MARGIN = 14
_SIGN = 20
_LEAST_WIDTH = 200
_AT_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
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
        self._laid_for: tuple[float, QFont] | None = None
        self._laid: dict[tuple[object, ...], TaskLines] = {}

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        view = self.parent()
        if not isinstance(view, QListView):
            return QSize(_LEAST_WIDTH, ROW_HEIGHT)
        return QSize(_LEAST_WIDTH, self.height(index.data(TASK), view.viewport().width(), option.font))

    def height(self, task: Task, width: float, font: QFont) -> int:
        """How tall a task is, in pixels, in a list of this width."""
        return ROW_HEIGHT + (self._lines(task, width, font).count - 2) * _LINE

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        palette = self._theme.palette
        task: Task = index.data(TASK)
        box = QRectF(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._ground(painter, option, index.row() == 0)
        if task.grade:
            draw_plies(painter, task.grade, QRectF(box.left() + _MARGIN, box.center().y() - 9, 32, 18))
        lines = self._lines(task, box.width(), option.font)
        line = QRectF(box.left() + _left(task), box.top() + _ABOVE, _room(task, box.width()), _LINE)
        painter.setFont(option.font)
        for at, words in enumerate((*lines.text, *lines.detail)):
            painter.setPen(QColor(palette.ink if at < len(lines.text) else palette.quiet))
            painter.drawText(line.translated(0, at * _LINE), _AT_LEFT, words)
        self._figure(painter, option, task, line.translated(0, lines.figure_at * _LINE))
        painter.restore()

    def _lines(self, task: Task, width: float, font: QFont) -> TaskLines:
        """Its lines in a width, kept: Qt asks for every row's height a dozen times a change of size."""
        if self._laid_for != (width, font):
            self._laid_for = width, QFont(font)
            self._laid = {}
        words = task.text, task.detail, task.figure, task.mark is None, bool(task.grade)
        if words not in self._laid:
            self._laid[words] = _laid_out(task, width, font)
        return self._laid[words]

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

    def _figure(self, painter: QPainter, option: QStyleOptionViewItem, task: Task, line: QRectF) -> None:
        """The figure at the end of its line, its mark before it."""
        palette = self._theme.palette
        painter.setFont(_strong(option.font))
        painter.setPen(QColor(palette.ink))
        painter.drawText(line, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, task.figure)
        if task.mark is not None:
            left = line.right() - QFontMetricsF(painter.font()).horizontalAdvance(task.figure) - _SIGN
            draw_mark(painter, task.mark, QRectF(left, line.center().y() - 6, 12, 12), palette)


def _laid_out(task: Task, width: float, font: QFont) -> TaskLines:
    figure = QFontMetricsF(_strong(font)).horizontalAdvance(task.figure) + (_SIGN if task.mark is not None else 0)
    return lay_out(task.text, task.detail, figure, _room(task, width), font)


def _strong(font: QFont) -> QFont:
    strong = QFont(font)
    strong.setWeight(QFont.Weight.DemiBold)
    return strong


def _left(task: Task) -> float:
    """Where the words of a task begin: a grade's plies stand before them."""
    return _MARGIN + (44 if task.grade else 0)


def _room(task: Task, width: float) -> float:
    return width - _left(task) - _MARGIN


class TaskList(QListView):
    """Tasks on screen. `wanted` carries the target of the one clicked or entered."""

    wanted = Signal(object)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tasks = Tasks(self)
        self.setModel(self._tasks)
        self._delegate = _TaskDelegate(theme, self)
        self.setItemDelegate(self._delegate)
        self.setAccessibleName(name)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setMouseTracking(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
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
        return QSize(400, self._tall() + 2)

    def minimumSizeHint(self) -> QSize:
        return QSize(_LEAST_WIDTH, ROW_HEIGHT)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_rows()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._fit_rows()

    def _tall(self) -> int:
        """All tasks one below the other, in pixels."""
        width, font = self.viewport().width(), self.font()
        return sum(self._delegate.height(task, width, font) for task in self._tasks.tasks)

    def _fit_rows(self) -> None:
        """Rows that were laid out for another width, perhaps while nobody saw them, are laid out anew at once."""
        if not self._tasks.tasks:
            return
        first, last = (self.visualRect(self._tasks.index(row)) for row in (0, len(self._tasks.tasks) - 1))
        # Qt asks for a row's height anew each time, but keeps where it put the rows. In a narrower list no row is lower
        # than before, so that the height of all tells whether any changed.
        if last.bottom() + 1 - first.top() != self._tall():
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
