"""What helps a user find their way: all commands by their words, the keys, the log."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from tracker.window.errors import log_file
from tracker.window.session import Session


class Guides(QObject):
    """Shows them over the window. `actions` gives its QActions by key; `said` carries a sentence."""

    said = Signal(str)

    def __init__(self, session: Session, window: QWidget, actions: Callable[[], Mapping[str, QAction]]) -> None:
        super().__init__(window)
        self._session = session
        self._window = window
        self._actions = actions

    @Slot()
    def open_do(self) -> None:
        from tracker.window.do_list import DoList

        listing = DoList(self._window, self._actions(), self._session.theme.palette)
        self._session.theme.dress(listing)
        listing.open_over(self._window)

    @Slot()
    def show_keys(self) -> None:
        from tracker.window.keys_dialog import KeysDialog

        keys = KeysDialog(self._window)
        self._session.theme.dress(keys)
        keys.open()

    @Slot()
    def show_log(self) -> None:
        self.said.emit(f"The log is {log_file()}.")
