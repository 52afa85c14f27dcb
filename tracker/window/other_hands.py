"""Notices that the database was written to from elsewhere: a command in a shell, a colleague on the team's server."""

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget

from tracker.window.session import Session

_EVERY_MS = 60_000


class OtherHands(QObject):
    """Has the session look when the user comes back to the window, and once a minute while it is in front."""

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session = session
        self._window = window
        self._clock = QTimer(self)
        self._clock.setInterval(_EVERY_MS)
        self._clock.timeout.connect(self._look)

    def start(self) -> None:
        """From now on: not before the window has read everything once."""
        self._window.installEventFilter(self)
        self._clock.start()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.WindowActivate:
            self._look()
        return False

    def _look(self) -> None:
        if self._window.isActiveWindow():
            self._session.look_for_changes()
