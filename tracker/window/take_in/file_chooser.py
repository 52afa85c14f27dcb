"""Which of several files being taken in is shown: chosen from the list, or by the keys that turn to the next one."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QComboBox, QWidget

from tracker.window.look.figures import counted
from tracker.window.pieces import button, row, words
from tracker.window.take_in.file_at_hand import FileAtHand

_IN_VIEW = 20
"""Files listed at once; more are scrolled to."""


class FileChooser(QComboBox):
    """`turned`: the keys turned to another file of the list. `by_hand`: the user chose which one is shown."""

    turned = Signal()

    def __init__(self, place: QWidget) -> None:
        super().__init__()
        self.by_hand = False
        self.setAccessibleName("File being taken in")
        self.setToolTip("Ctrl+PgDown, Ctrl+PgUp")
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.setMaxVisibleItems(_IN_VIEW)
        self.activated.connect(self._chosen_by_hand)
        for keys, by in (("Ctrl+PgDown", 1), ("Ctrl+PgUp", -1)):
            QShortcut(QKeySequence(keys), place, partial(self._turn, by))

    def show_files(self, files: Sequence[FileAtHand], at: int = 0) -> None:
        """Lists these files, one of them chosen, without saying so."""
        self.by_hand = False
        with QSignalBlocker(self):
            self.clear()
            self.addItems([file.short for file in files])
            self.setCurrentIndex(at if files else -1)

    def name(self, files: Sequence[FileAtHand]) -> None:
        """Says anew what became of each of the files listed."""
        for place, file in enumerate(files):
            self.setItemText(place, file.short)

    def may_turn_from(self, file: FileAtHand | None) -> bool:
        """Whether a sheet may be shown in this one's place unasked: it can't be read, and nobody chose it."""
        return file is not None and file.is_unreadable and not self.by_hand

    def _chosen_by_hand(self, _place: int) -> None:
        self.by_hand = True

    def _turn(self, by: int) -> None:
        at = self.currentIndex() + by
        if 0 <= at < self.count():
            self.by_hand = True
            self.setCurrentIndex(at)
            self.turned.emit()


class FilesBar(QWidget):
    """How many files are being taken in, which of them is shown, and a way to leave that one alone; out of sight where
    there is one only. `left`: the file that is shown is to be left."""

    left = Signal()

    def __init__(self, place: QWidget) -> None:
        super().__init__()
        self.choose = FileChooser(place)
        self._told = words("", "quiet")
        self.leave_one = button("Leave this file", "word")
        self.leave_one.setToolTip("Takes it off this list and stores nothing of it; the others stay")
        self.leave_one.clicked.connect(self.left)
        self.setLayout(row(self._told, self.choose, self.leave_one, None, gap=10))

    def show_files(self, files: Sequence[FileAtHand], at: int = 0) -> None:
        """Lists these files, the one at `at` chosen."""
        self.choose.show_files(files, at)
        self._told.setText(f"{counted(len(files), 'file')}:")
        self.setVisible(len(files) > 1)
