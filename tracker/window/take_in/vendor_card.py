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
        self.nameless = button("Take it in without a name", "word")
        self.nameless.clicked.connect(self.left_nameless)
        self.naming.named.connect(self.named)
        self.setLayout(
            column(
                words(_ASKED, wrap=True), self.naming, row(self.nameless, None), margins=(14, 10, 14, 8), gap=8
            )
        )  # fmt: skip
        self.hide()

    def ask(self, asked: bool, *, has_offers: bool) -> None:
        """Shows or hides the question; a sheet without offers has nothing to be taken in."""
        if asked and self.isHidden():
            self.naming.begin()
        self.setVisible(asked)
        self.nameless.setVisible(has_offers)
