"""One line at the foot of the window that says what was done or what went wrong, in a sentence; never in the way."""

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import QFrame, QWidget

from tracker.window.pieces import button, restyle, row, words

_SECONDS_FOR_GOOD_NEWS = 6


class MessageBar(QFrame):
    """Shows one message. What went wrong stays until it is closed; what was done leaves by itself."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("message")
        self.setAccessibleName("Message")
        self._text = words("", wrap=True, selectable=True)
        self._action = button("", "word")
        self._action.setAccessibleName("What can be done about it")
        self._close = button("Close", "word")
        self._close.setToolTip("Close this message")
        self._close.clicked.connect(self.hide)
        self._action.clicked.connect(self._act)
        self._do: Callable[[], None] | None = None
        self.setLayout(row(self._text, self._action, self._close, margins=(16, 4, 12, 4), gap=8, grow=0))
        self._leave = QTimer(self)
        self._leave.setSingleShot(True)
        self._leave.timeout.connect(self.hide)
        # Its room is kept while it is gone: a button one is about to press must not move.
        policy = self.sizePolicy()
        policy.setRetainSizeWhenHidden(True)
        self.setSizePolicy(policy)
        self.hide()

    @property
    def text(self) -> str:
        return "" if self.isHidden() else self._text.text()

    def say(self, text: str, action: str = "", do: Callable[[], None] | None = None) -> None:
        """Good news, with at most one thing to do about it ('Undo')."""
        self._show(text, grave=False, action=action, do=do)
        self._leave.start(_SECONDS_FOR_GOOD_NEWS * 1000)

    def warn(self, text: str, action: str = "", do: Callable[[], None] | None = None) -> None:
        """What did not happen and what to do."""
        self._leave.stop()
        self._show(text, grave=True, action=action, do=do)

    def _show(self, text: str, *, grave: bool, action: str, do: Callable[[], None] | None) -> None:
        self._text.setText(text)
        self._action.setText(action)
        self._action.setVisible(bool(action))
        self._do = do
        self.setProperty("grave", "true" if grave else "false")
        restyle(self)
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.show()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        # Else the room of a long message would be kept after it.
        self._text.clear()

    @Slot()
    def _act(self) -> None:
        self.hide()
        if self._do is not None:
            self._do()
