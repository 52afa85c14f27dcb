"""Whose sheet it is, said by the sheet or by the user; what the user said can be changed."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from tracker.window.pieces import button, row, words


class VendorLine(QWidget):
    """Says the vendor. `change_wanted`: the user said it and wants to say it anew."""

    change_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.label = words("", "quiet")
        self.change = button("Change", "word")
        self.change.setAccessibleName("Change the vendor")
        self.change.clicked.connect(self.change_wanted)
        self.setLayout(row(self.label, self.change, None, gap=8))

    def show_vendor(self, text: str, *, can_change: bool, can_name: bool = False) -> None:
        """Shows whose it is; nothing for ''. `can_name`: nobody is named, and nobody need be."""
        self.label.setText(text)
        self.change.setText("Name the vendor" if can_name else "Change")
        self.change.setAccessibleName("Name the vendor" if can_name else "Change the vendor")
        self.change.setToolTip("What you marked in an earlier sheet of theirs may serve this one" if can_name else "")
        self.change.setVisible(can_change or can_name)
        self.setVisible(bool(text))
