"""What stands in the place of a sheet that can't be read: why, and what can be done about it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from tracker.window.pieces import button, column, row, words

_WIDTH = 560


class UnreadablePage(QWidget):
    """`again_wanted`: the file is to be read once more, as it is on disk by now; `another_wanted`: another instead."""

    again_wanted = Signal()
    another_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("A file that can't be read")
        self.name, self.why = words("", "quiet"), words("", "heading", wrap=True)
        self.why.setFixedWidth(_WIDTH)
        for label in (self.name, self.why):
            label.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.again = button("Read it again")
        self.again.setToolTip("After you have saved it anew")
        self.again.clicked.connect(self.again_wanted)
        self.another = button("Choose another file…")
        self.another.clicked.connect(self.another_wanted)
        ways = row(None, self.again, self.another, None, gap=10)
        self.setLayout(column(None, self.name, 8, row(None, self.why, None), 18, ways, None, None))
        self.hide()

    def show_file(self, name: str, why: str) -> None:
        """Says why this file can't be read; '' for one that can."""
        self.name.setText(name)
        self.name.setVisible(name not in why)
        self.why.setText(why)
        self.setVisible(bool(why))
