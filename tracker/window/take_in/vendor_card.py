"""Whose sheet it is, asked like any other question where the sheet names nobody."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QWidget

from tracker.window.pieces import button, column, row, words
from tracker.window.vendor_naming import VendorNaming

_ASKED = (
    "Whose sheet is this? It names no vendor. Without one its prices can't be told from other vendors', and the "
    "vendor's next sheet will not replace them."
)


class VendorCard(QFrame):
    """`named` carries the vendor's name, `left_nameless` that the sheet is to be taken in without one."""

    named = Signal(str)
    left_nameless = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self.setAccessibleName("The vendor of this sheet")
        self.naming = VendorNaming()
        self._first_line = ""
        self.suggested = button("", "word")
        self.suggested.setAccessibleName("The first line of the sheet is its vendor")
        self.suggested.setToolTip("Words that stand by themselves in the sheet: its vendor, if you know it to be")
        self.suggested.clicked.connect(lambda: self.named.emit(self._first_line))
        self.nameless = button("Take it in without a name", "word")
        self.nameless.clicked.connect(self.left_nameless)
        self.naming.named.connect(self.named)
        ways = row(self.suggested, self.nameless, None, gap=4)
        self.setLayout(column(words(_ASKED, wrap=True), self.naming, ways, margins=(14, 10, 14, 8), gap=8))
        self.hide()

    def ask(self, asked: bool, *, has_offers: bool, first_line: str = "") -> None:
        """Shows or hides the question; a sheet without offers has nothing to be taken in. `first_line` of the sheet may
        be the vendor's name, which only the user can tell."""
        self._first_line = first_line
        self.suggested.setText(f"It is “{first_line}”".replace("&", "&&"))
        self.suggested.setVisible(bool(first_line))
        if asked and self.isHidden():
            self.naming.begin()
        self.setVisible(asked)
        self.nameless.setVisible(has_offers)
