"""Another database in the place of the one that is open: the demo, or a copy that was backed up."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QApplication, QFileDialog, QMessageBox, QWidget
from shiboken6 import isValid

from tracker.window.session import Session

_ASKED = "Put {name} in the place of everything that is in the tracker now?"
_KEPT = "What is in the tracker now is first copied beside its database, so nothing is lost."


class OtherDatabase(QObject):
    """Opens the demo and restores backups. `said` carries what was done, in a sentence."""

    said = Signal(str)

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session = session
        self._window = window

    @Slot()
    def open_demo(self) -> None:
        """A fresh demo in a folder of its own; what the user has is not touched."""
        from tempfile import mkdtemp

        folder = Path(mkdtemp(prefix="paperboard-demo-"))
        self.said.emit("Making the demo: invented vendors, offers and samples…")
        told = "This is the demo. Nothing here is real, and nothing of yours was touched."
        self._open(lambda: self._session.door.open_demo(folder), lambda _: told)

    @Slot()
    def restore(self) -> None:
        """Puts a backup in the database's place, once the user has agreed to that."""
        name, _ = QFileDialog.getOpenFileName(self._window, "Restore a backup", "", "Backup (*.sqlite);;All files (*)")
        if name and self._agreed(Path(name)):
            self._open(lambda: self._session.door.restore(Path(name)), _restored)

    def _agreed(self, path: Path) -> bool:
        box = QMessageBox(self._window)
        self._session.theme.dress(box)
        box.setWindowTitle("Restore a backup")
        box.setText(_ASKED.format(name=path.name))
        box.setInformativeText(_KEPT)
        restore = box.addButton("Restore", QMessageBox.ButtonRole.AcceptRole)
        box.setDefaultButton(box.addButton("Cancel", QMessageBox.ButtonRole.RejectRole))
        box.exec()
        return box.clickedButton() is restore

    def _open(self, opening: Callable[[], Any], told: Callable[[Any], str]) -> None:
        """Opens it, then says what `told` makes of that. Meanwhile the window takes no step: it would be asked of the
        database that is on show, and done to the one that is on its way."""
        focused = QApplication.focusWidget()
        self._window.setEnabled(False)

        def opened(result: Any) -> None:
            self._window.setEnabled(True)
            self._begin_anew(told(result))

        def failed(error: Exception) -> None:
            self._window.setEnabled(True)
            if focused is not None and isValid(focused):
                focused.setFocus()
            self._session.tell_trouble(error)

        self._session.work.ask(opening, opened, failed)

    def _begin_anew(self, told: str) -> None:
        # What can be undone was done to the other database.
        self._session.undo_stack.clear()
        self._session.other_opened.emit()
        self._session.start()
        self.said.emit(told)


def _restored(kept: Path | None) -> str:
    return "The backup is restored." + (f" What was there before is in {kept}." if kept is not None else "")
