"""Which of several files being taken in is shown: chosen from the list, or by the keys that turn to the next one."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QComboBox, QWidget

from tracker.window.take_in.file_at_hand import FileAtHand

_IN_VIEW = 20
"""Files listed at once; more are scrolled to."""


class FileChooser(QComboBox):
    """Out of sight where there is no choice. `turned`: the keys turned to another file of the list."""

    turned = Signal()

    def __init__(self, place: QWidget) -> None:
        super().__init__()
        self.setAccessibleName("File being taken in")
        self.setToolTip("Ctrl+PgDown, Ctrl+PgUp")
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.setMaxVisibleItems(_IN_VIEW)
        for keys, by in (("Ctrl+PgDown", 1), ("Ctrl+PgUp", -1)):
            QShortcut(QKeySequence(keys), place, partial(self._turn, by))

    def show_files(self, files: Sequence[FileAtHand]) -> None:
        """Lists these files, the first one chosen, without saying so."""
        with QSignalBlocker(self):
            self.clear()
            self.addItems([file.short for file in files])
        self.setVisible(len(files) > 1)

    def _turn(self, by: int) -> None:
        at = self.currentIndex() + by
        if 0 <= at < self.count():
            self.setCurrentIndex(at)
            self.turned.emit()
