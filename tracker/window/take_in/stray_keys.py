"""A key pressed once too often must not answer the question that comes up under it, unread."""

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractButton

_TOO_SOON_MS = 300
_PRESSING = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)


class StrayKeys(QObject):
    """Holds off the keys that press a button while it has only just come up, and those of a key held down since
    before; every other key goes through, and a click always."""

    def __init__(self, just_come_up: QAbstractButton) -> None:
        super().__init__(just_come_up)
        self.too_soon = True
        just_come_up.installEventFilter(self)
        QTimer.singleShot(_TOO_SOON_MS, self, self._let_through)

    def _let_through(self) -> None:
        self.too_soon = False

    # Qt's own names from here on

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        if not isinstance(event, QKeyEvent) or event.type() != QEvent.Type.KeyPress:
            return False
        return event.key() in _PRESSING and (self.too_soon or event.isAutoRepeat())
