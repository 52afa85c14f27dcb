"""All commands: everything that can be done, found by its words, with its keys beside it."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QEvent, QModelIndex, QObject, QPersistentModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QAction, QColor, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QFrame,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from tracker.window.actions import ACTIONS, Action
from tracker.window.look.palette import Palette
from tracker.window.pieces import column, words

_KEY = int(Qt.ItemDataRole.UserRole)


def matching(typed: str) -> list[Action]:
    """Actions whose words hold every word typed, in their usual order."""
    wanted = typed.casefold().split()
    return [
        action
        for action in ACTIONS
        if action.key != "do" and all(word in f"{action.title} {action.about}".casefold() for word in wanted)
    ]


class _ActionDelegate(QStyledItemDelegate):
    """The action's words at the left, its keys at the right."""

    def __init__(self, palette: Palette, parent: QWidget) -> None:
        super().__init__(parent)
        self._palette = palette

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        action: Action = index.data(_KEY)
        box = QRectF(option.rect)
        painter.save()
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(box, QColor(self._palette.selected))
        room = box.adjusted(10, 0, -10, 0)
        painter.setPen(QColor(self._palette.ink))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, action.title)
        painter.setPen(QColor(self._palette.quiet))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight, action.keys)
        painter.restore()


class DoList(QFrame):
    """A field and the actions that fit it; Enter does the first or the chosen one, Escape leaves."""

    def __init__(self, parent: QWidget, actions: Mapping[str, QAction], palette: Palette) -> None:
        super().__init__(parent, Qt.WindowType.Popup)
        self.setProperty("kind", "popup")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._actions = actions
        self.field = QLineEdit()
        self.field.setPlaceholderText("what do you want to do?")
        self.field.setAccessibleName("What do you want to do?")
        self.list = QListWidget()
        self.list.setAccessibleName("Things that can be done")
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setItemDelegate(_ActionDelegate(palette, self.list))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.nothing = words("", "quiet", wrap=True)
        self.nothing.hide()
        self.setLayout(column(self.field, self.nothing, self.list, margins=10, gap=6, grow=2))
        self.field.textChanged.connect(self._narrow)
        self.field.returnPressed.connect(self._do)
        self.list.itemClicked.connect(lambda _: self._do())
        self.field.installEventFilter(self)
        self._narrow("")

    def open_over(self, window: QWidget) -> None:
        """Shows the list near the top middle of a window."""
        self.resize(520, 460)
        corner = window.mapToGlobal(window.rect().topLeft())
        self.move(corner.x() + (window.width() - self.width()) // 2, corner.y() + 64)
        self.show()
        self.field.setFocus()

    def _narrow(self, typed: str) -> None:
        self.list.clear()
        for action in matching(typed):
            item = QListWidgetItem(action.title, self.list)
            item.setData(_KEY, action)
            item.setToolTip(action.about)
            item.setSizeHint(QSize(200, 30))
        self.list.setCurrentRow(0)
        self.nothing.setText(f"Nothing here is called “{typed.strip()}”. Try another word, or fewer letters.")
        self.nothing.setVisible(self.list.count() == 0)

    def _do(self) -> None:
        item = self.list.currentItem()
        if item is not None:
            action = self._actions[item.data(_KEY).key]
            self.close()
            action.trigger()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
            if step is not None and self.list.count():
                self.list.setCurrentRow((self.list.currentRow() + step) % self.list.count())
                return True
        return super().eventFilter(watched, event)
