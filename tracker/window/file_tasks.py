"""What a user takes out of the tracker as a file: pictures, offers, the report, a calendar, a copy of all."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, QUrl, Signal, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QWidget

from tracker.desk.collecting import no_collecting
from tracker.desk.trouble import Trouble
from tracker.window.look.figures import counted
from tracker.window.session import Session
from tracker.window.where_to import where_to

if TYPE_CHECKING:
    from tracker.window.quotes.place import QuotesPlace

_ALL = "everything that is known"
Written = TypeVar("Written")


class FileTasks(QObject):
    """Asks where to, writes on the desk's thread, and says where it is. `written` carries that sentence."""

    written = Signal(str)

    def __init__(self, session: Session, window: QWidget, quotes: Callable[[], QuotesPlace]) -> None:
        super().__init__(window)
        self._session = session
        self._window = window
        self._quotes = quotes

    @Slot()
    def save_picture(self) -> None:
        from tracker.window.quotes.save_picture import to_save

        path = self._ask_where("Save the picture", "prices.png", "PNG (*.png);;SVG (*.svg);;The data behind it (*.csv)")
        if path is not None:
            self._session.work.ask(partial(_uncollected, to_save(self._quotes().picture, path)), self.written.emit)

    @Slot()
    def save_offers(self) -> None:
        """The table as it stands or, where that was chosen, everything known of its offers."""
        kinds = (
            f"Spreadsheet, as shown (*.xlsx);;CSV, as shown (*.csv);;Spreadsheet, {_ALL} (*.xlsx);;CSV, {_ALL} (*.csv)"
        )
        path, kind = self._ask_where_and_what("Save the offers shown", "offers.xlsx", kinds)
        comparison, shown = self._session.comparison, self._quotes().model.contents
        if path is None or comparison is None or shown is None:
            return
        rows = [int(row) for row in self._quotes().model.order]
        door, done = self._session.door, f"{counted(len(rows), 'offer')} saved in {path}."
        if _ALL in kind:
            self._write(lambda: door.save_offers(comparison, rows, path), done)
            return
        from tracker.window.quotes.offers_as_shown import rows_as_shown

        self._write(lambda: door.save_rows(rows_as_shown(shown, rows), comparison.footing, path), done)

    @Slot()
    def write_report(self) -> None:
        path = self._ask_where("Write the buyer's report", "report.pdf", "PDF (*.pdf);;Spreadsheet (*.xlsx)")
        if path is not None:
            door, footing = self._session.door, self._session.footing
            self._write(lambda: door.write_report(path, footing), f"The report is in {path}.")

    @Slot()
    def back_up(self) -> None:
        path = self._ask_where("Back up everything", "paperboard-backup.sqlite", "Backup (*.sqlite)")
        if path is not None:
            self._write(lambda: self._session.door.back_up(path), f"A copy of everything is in {path}.")

    @Slot()
    def write_calendar(self) -> None:
        path = self._ask_where("Write what is owed as a calendar file", "samples.ics", "Calendar (*.ics)")
        if path is not None:
            self._session.work.ask(
                lambda: self._session.door.write_calendar(path),
                lambda count: self.written.emit(f"{counted(count, 'to-do')} in {path}: open it with your calendar."),
            )

    @Slot(object)
    def open_elsewhere(self, path: Path) -> None:
        """Hands a file to the desktop's own program for it; where there is none, its place was said already."""
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

    def _ask_where(self, title: str, name: str, kinds: str) -> Path | None:
        return self._ask_where_and_what(title, name, kinds)[0]

    def _ask_where_and_what(self, title: str, name: str, kinds: str) -> tuple[Path | None, str]:
        """The path, None for none, and which of the kinds."""
        try:
            return where_to(self._window, title, name, kinds)
        except Trouble as trouble:
            self._session.tell_trouble(trouble)
            return None, ""

    def _write(self, writing: Callable[[], None], done: str) -> None:
        self._session.work.ask(partial(_uncollected, writing), lambda _: self.written.emit(done))


def _uncollected(writing: Callable[[], Written]) -> Written:
    """Writes with no search for garbage, for which the interface would wait where rows are many."""
    with no_collecting():
        return writing()
