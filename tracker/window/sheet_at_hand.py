"""The way back to a sheet that was left before it was settled, and what can only be done while one is at hand."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QStackedWidget

from tracker.window.places_bar import PlacesBar
from tracker.window.take_in.place import TakeInPlace


class SheetAtHand(QObject):
    """Watches which sheet waits and offers it in the bar wherever else the user is. `said` is a sentence to show."""

    said = Signal(str)

    def __init__(
        self, take_in: TakeInPlace, stack: QStackedWidget, bar: PlacesBar, show: Callable[[], None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self._take_in, self._stack, self._bar, self._show = take_in, stack, bar, show
        self._waits = ""
        take_in.waits.connect(self._note)
        stack.currentChanged.connect(self._offer_way_back)
        bar.back.clicked.connect(self.back_to_sheet)

    @Slot()
    def back_to_sheet(self) -> None:
        """Goes on with the sheet where it was left."""
        if not self._waits:
            self.said.emit("No sheet waits to be settled: take one in first.")
            return
        self._show()
        self._take_in.setFocus()

    @Slot()
    def mark_by_hand(self) -> None:
        """Opens the strip that names a table's columns."""
        if self._stack.currentWidget() is self._take_in:
            self._take_in.marking.begin()
        else:
            self.said.emit("Take in a price sheet first: its table can then be marked by hand.")

    def _note(self, file: str) -> None:
        self._waits = file
        self._offer_way_back()

    def _offer_way_back(self) -> None:
        here = self._stack.currentWidget() is self._take_in
        self._bar.lead_back_to("" if here else self._waits)
