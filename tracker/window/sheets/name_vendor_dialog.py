"""Naming the vendor of a sheet that was taken in without one."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QWidget

from tracker.window.pieces import button, column, row, words
from tracker.window.vendor_naming import VendorNaming


class NameVendorDialog(QDialog):
    """`named` carries the vendor's name; Escape names nobody."""

    named = Signal(str)

    def __init__(self, file: str, vendors: Sequence[str], parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Name the vendor")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.naming = VendorNaming()
        self.naming.know(vendors)
        self.naming.named.connect(self._take)
        leave = button("Cancel")
        leave.clicked.connect(self.reject)
        self.setLayout(
            column(
                words(f"Who sent {file}?", "heading", wrap=True),
                words("Its offers then count as that vendor's, and its newest sheet replaces the older ones.", "quiet",
                      wrap=True),
                self.naming, row(None, leave), margins=18, gap=10,
            )
        )  # fmt: skip
        self.resize(460, self.sizeHint().height())
        self.naming.setFocus()

    def _take(self, name: str) -> None:
        self.named.emit(name)
        self.accept()
