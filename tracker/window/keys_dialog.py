"""F1: every key, of the window and of its places, in one list to be read."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QGridLayout, QWidget

from tracker.window.actions import ACTIONS
from tracker.window.pieces import button, column, holder, row, scrolled, words

_OF_PLACES: tuple[tuple[str, tuple[tuple[str, str], ...]], ...] = (
    (
        "Taking in a sheet",
        (
            ("1 … 9", "answers the question that has the keys by the choice of that number"),
            ("Tab, Enter", "from choice to choice; Enter takes one"),
            ("Ctrl+Enter", "takes the offers in; Ctrl+Shift+Enter those of all files"),
            ("Ctrl+PgDown", "the next of several files; Ctrl+PgUp the one before"),
            ("Esc", "stops reading a file, or leaves it for later; what was said about it is kept"),
            ("N  H  F  L", "while marking by hand: name a column, header, first row, last row"),
        ),
    ),
    (
        "Samples",
        (
            ("P  S  A", "the sample chosen was promised, sent, has arrived"),
            ("C  R  X  L", "the vendor was chased, refused; it was cancelled, lost"),
            ("M  V", "its measurements, the verdict on it"),
            ("D", "a draft that asks the vendor where it is"),
            ("0 … 9", "the sample of that number"),
        ),
    ),
    (
        "Sheets",
        (
            ("Enter", "shows the file as the vendor sent it"),
            ("A", "its answers again, to be given anew"),
            ("Delete", "withdraws it, or brings it back"),
            ("N", "names its vendor, where the sheet names nobody"),
        ),
    ),
)


class KeysDialog(QDialog):
    """Shows the keys; Escape leaves."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("The keys")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        everywhere = [(action.keys, action.title) for action in ACTIONS if action.keys]
        parts = [_listed("Everywhere", everywhere), *(_listed(title, keys) for title, keys in _OF_PLACES)]
        scroll = scrolled(holder(column(*parts, None, margins=(0, 0, 12, 0), gap=16)), sideways=True)
        scroll.setAccessibleName("The keys")
        leave = button("Close")
        leave.clicked.connect(self.reject)
        self.setLayout(column(scroll, row(None, leave), margins=18, gap=10, grow=0))
        self.resize(520, 560)
        scroll.setFocus()


def _listed(title: str, keys: Sequence[tuple[str, str]]) -> QWidget:
    """A heading, and under it a line a key."""
    grid = QGridLayout()
    grid.setHorizontalSpacing(16)
    grid.setVerticalSpacing(3)
    grid.setColumnMinimumWidth(0, 110)
    grid.setColumnStretch(1, 1)
    for place, (key, does) in enumerate(keys):
        grid.addWidget(words(key, "strong"), place, 0)
        grid.addWidget(words(does, wrap=True), place, 1)
    return holder(column(words(title, "heading"), grid, gap=6))
