"""The way back to a sheet that was left before it was settled, and what can only be done while one is at hand."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QStackedWidget

from tracker.window.message_bar import MessageBar
from tracker.window.places_bar import PlacesBar
from tracker.window.session import Session
from tracker.window.take_in.begun_files import BegunSheet
from tracker.window.take_in.place import TakeInPlace
from tracker.window.today.place import TodayPlace


class SheetAtHand(QObject):
    """Watches which sheet waits and offers it in the bar wherever else the user is. `said` is a sentence to show.

    Sheets that were left half answered, in this window or an earlier one, stand on Today (lead_back_from).
    """

    said = Signal(str)

    def __init__(
        self, take_in: TakeInPlace, stack: QStackedWidget, bar: PlacesBar, show: Callable[[], None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self._take_in, self._stack, self._bar, self._show = take_in, stack, bar, show
        self._waits = ""
        self._here = self._before = stack.currentIndex()
        take_in.waits.connect(self._note)
        take_in.taken_up.connect(self.back_to_sheet)
        stack.currentChanged.connect(self._follow)
        bar.back.clicked.connect(self.back_to_sheet)

    @property
    def came_from(self) -> int:
        """The place from which one came to the sheets being taken in; the first one where one is elsewhere by now."""
        return self._before if self._stack.currentWidget() is self._take_in else 0

    def _follow(self, place: int) -> None:
        if self._stack.currentWidget() is self._take_in and self._here < place:
            self._before = self._here
        self._here = place
        self._offer_way_back()

    def lead_back_from(self, today: TodayPlace, session: Session, message: MessageBar) -> None:
        """Lists what was begun on Today, and goes on with it from there."""
        begun = self._take_in.begun
        session.begun_changed.connect(lambda: today.show_begun(begun.listing()))
        today.begun_wanted.connect(lambda sheet: self._go_on_with(sheet, session, message))
        today.show_begun(begun.listing())

    @Slot(str, str)
    def answer_anew(self, name: str, sha256: str) -> None:
        """Shows a stored file with its answers, to be changed."""
        self._show()
        self._take_in.setFocus()
        self._take_in.answer_anew(name, sha256)

    def _go_on_with(self, sheet: BegunSheet, session: Session, message: MessageBar) -> None:
        if not sheet.kept and not sheet.path.is_file():
            message.warn(
                f"{sheet.path} is not there any more. Open the file where it lies now, whatever it is called: what you "
                f"said about it is kept.",
                "Forget what I said",
                lambda: self._forget(sheet, session),
            )
            return
        self._show()
        self._take_in.setFocus()
        self._take_in.go_on_with(sheet)

    def _forget(self, sheet: BegunSheet, session: Session) -> None:
        """What was said about a file that waits is no longer wanted."""
        self._take_in.begun.forget(sheet.sha256)
        session.begun_changed.emit()

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
