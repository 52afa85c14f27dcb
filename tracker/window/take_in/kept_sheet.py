"""A stored file shown again, with the cell that an offer came from in view."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from tracker.desk.comparison import Comparison
from tracker.window.errors import sentence_for
from tracker.window.pieces import button, column, row, words
from tracker.window.session import Session
from tracker.window.take_in.cells import Use, place_of
from tracker.window.take_in.sheet_panel import SheetPanel

_BARS = "Cells with a bar are prices read from this file"
Uses = dict[str, dict[tuple[int, int], Use]]


class KeptSheet(QWidget):
    """The vendor's file behind an offer. `left` goes back to where one came from."""

    left = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._title = words("", "heading")
        self._told = words("", "quiet")
        back = button("Back")
        back.clicked.connect(self.left)
        self.sheet = SheetPanel(session.theme)
        self.setLayout(
            column(row(self._title, None, back), self._told, self.sheet, margins=(20, 12, 20, 14), gap=8, grow=2)
        )

    def show_offer(self, offer: int) -> None:
        """Fetches the file an offer came from and goes to its cell."""
        comparison = self._session.comparison
        if comparison is None:
            return
        snapshot = comparison.snapshot
        vendor = int(snapshot.vendor[offer])
        title = (
            f"{snapshot.as_quoted[offer]} · {snapshot.vendors[vendor] if vendor >= 0 else 'vendor not known'} · "
            f"{snapshot.product[offer]}"
        )
        place = int(snapshot.file[offer])
        self._fetch(snapshot.sha256s[place], snapshot.sheet[offer], snapshot.cell[offer], title, snapshot.files[place])

    def show_cell(self, file: int, sheet: str, cell: str) -> None:
        """Fetches a kept file by its number and goes to one of its cells."""
        self._fetch(file, sheet, cell, "", "")

    def _fetch(self, file: int | str, sheet: str, cell: str, title: str, name: str) -> None:
        """Two files may have one name: what tells them apart is the number, or the sha256 of what is in them."""
        self._title.setText(title)
        self._told.setText(f"{_BARS}; the outlined one is what you asked for." if cell else f"{_BARS}.")
        self.sheet.show_nothing(name, "Fetching the file…")
        door, comparison = self._session.door, self._session.comparison

        def fetch() -> tuple[Any, Uses]:
            workbook = door.kept_workbook(file)
            return workbook, _uses_of_file(comparison, workbook.sha256)

        def show(fetched: tuple[Any, Uses]) -> None:
            workbook, uses = fetched
            # Over the sheet itself stands the file's name.
            self._title.setText(title)
            self.sheet.show_workbook(workbook, uses)
            self.sheet.go_to(sheet, cell)
            self.sheet.view.setFocus()

        def say_why(error: Exception) -> None:
            self.sheet.show_nothing(name, sentence_for(error))

        self._session.work.ask(fetch, show, say_why)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)


def _uses_of_file(comparison: Comparison | None, sha256: str) -> Uses:
    """Which cells of a file an offer's price stands in. A long one has so many that the interface must not wait."""
    uses: Uses = {}
    if comparison is None or sha256 not in comparison.snapshot.sha256s:
        return uses
    snapshot = comparison.snapshot
    for row_number in (snapshot.file == snapshot.sha256s.index(sha256)).nonzero()[0]:
        place = place_of(snapshot.cell[row_number])
        if place is not None:
            uses.setdefault(snapshot.sheet[row_number], {})[place] = Use.PRICE
    return uses
