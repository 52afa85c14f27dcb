"""Taking in sheets: the file on the left, what was understood on the right, the decision at the foot."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QShowEvent
from PySide6.QtWidgets import QWidget

from tracker.window.pieces import column, follow_by_tab
from tracker.window.session import Session
from tracker.window.take_in.agree_bar import AgreeBar
from tracker.window.take_in.answering import Answering
from tracker.window.take_in.begun_files import BegunFiles, BegunSheet
from tracker.window.take_in.by_hand import MarkingByHand
from tracker.window.take_in.file_at_hand import FileAtHand, in_hand
from tracker.window.take_in.file_chooser import FilesBar
from tracker.window.take_in.files_left import leave_files
from tracker.window.take_in.kept_meanwhile import follow_database
from tracker.window.take_in.pointing import Pointing
from tracker.window.take_in.reading_bar import ReadingBar
from tracker.window.take_in.readings import Readings, Result
from tracker.window.take_in.sheet_panel import SheetPanel
from tracker.window.take_in.storing import Storing
from tracker.window.take_in.two_sides import TwoSides
from tracker.window.take_in.understood import Understood
from tracker.window.take_in.unreadable_page import UnreadablePage

if TYPE_CHECKING:
    from tracker.desk.files import StoredFile


class TakeInPlace(QWidget):
    """`left` says that the user is done here, with how many offers were stored (`stored_files`: of which files);
    `waits` names the file that the user can come back to, '' for none; `taken_up` that files which were left are being
    read again; `another_wanted` that a file is to be chosen in place of one that can't be read."""

    left = Signal(int)
    waits = Signal(str)
    taken_up = Signal()
    another_wanted = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._files: list[FileAtHand] = []
        self.begun = BegunFiles(session.settings, session.door.place)
        self._stored = 0
        self.stored_files: frozenset[str] = frozenset()
        self._shown_workbook: Any = None
        self._focus_owed = False
        self.sheet = SheetPanel(session.theme, marking=True)
        self.understood = Understood(session.theme)
        self.listed = FilesBar(self)
        self._choose = self.listed.choose
        self._choose.currentIndexChanged.connect(lambda _: self._show_file())
        self._progress = ReadingBar(lambda: self._files)
        self.foot = AgreeBar(self)
        self.agree, self.agree_all, self.leave = self.foot.agree, self.foot.agree_all, self.foot.leave
        self.readings = Readings(session, lambda: self.at_hand, self._was_read)
        self.marking = MarkingByHand(self.sheet, session.undo_stack, lambda: self.at_hand, self.readings.ask)
        self.pointing = Pointing(self.sheet, self.understood, lambda: self.at_hand)
        self.storing = Storing(session, self)
        self.answering = Answering(session, self.understood, lambda: self.at_hand, self.readings.ask)
        self._lay_out()
        self._connect()

    def read(self, paths: Sequence[Path]) -> None:
        """Reads these files one after another; each can be looked at once it is read. Those begun before stay."""
        self._read([FileAtHand(path) for path in paths])

    def answer_anew(self, name: str, sha256: str) -> None:
        """Reads a stored file from the database, to be stored in place of what it came to."""
        self._read([FileAtHand(Path(name), kept=sha256)])

    def go_on_with(self, sheet: BegunSheet) -> None:
        """Takes up a file that was left half answered, where it lies or, where it is stored, from the database."""
        self._read([FileAtHand(sheet.path, kept=sheet.sha256 if sheet.kept else "")])

    def _read(self, fresh: Sequence[FileAtHand]) -> None:
        self.stop()
        # While a file is being read there is nothing to stand on yet.
        self._focus_owed = True
        paths = {file.path for file in fresh}
        stay = [file for file in self._files if file.begun and file.path not in paths]
        self.begun.keep(file for file in self._files if file not in stay)
        self._files = in_hand([*fresh, *stay], self._files)
        self.listed.show_files(self._files)
        self._progress.begin()
        self.readings.begin(self._files)
        self._show_file()

    def stop(self) -> None:
        """Ends whatever is being read, at once; its result goes nowhere."""
        self.readings.stop(self._files)

    @property
    def at_hand(self) -> FileAtHand | None:
        """The file that is shown."""
        place = self._choose.currentIndex()
        return self._files[place] if 0 <= place < len(self._files) else None

    def _lay_out(self) -> None:
        self._both, self.unreadable = TwoSides(self.sheet, self.understood), UnreadablePage()
        parts = self.listed, self._progress, self._both, self.unreadable, self.foot
        layout = column(*parts, margins=(20, 12, 20, 14), gap=10, grow=2)
        layout.setStretchFactor(self.unreadable, 1)
        self.setLayout(layout)

    def _connect(self) -> None:
        understood = self.understood
        understood.questions.asked_where.connect(self.sheet.go_to)
        self.answering.said.connect(lambda: setattr(self, "_focus_owed", True))
        self.answering.whose_said.connect(self._pass_focus_on)
        self.answering.whose_said.connect(self._say_what_agreeing_does)
        understood.marks_wanted.connect(self.marking.use_earlier)
        self.foot.agreed.connect(lambda: self.storing.store([self.at_hand]))
        self.foot.all_agreed.connect(lambda: self.storing.store(self._files))
        self.marking.shown.connect(self._both.look_again)
        self.storing.stored.connect(self._were_stored)
        self.foot.left.connect(self._leave_all)
        self.listed.left.connect(self._leave_one)
        self._choose.turned.connect(self._pass_focus_on)
        self.foot.anew_wanted.connect(lambda: self._read_shown_anew(kept=True))
        self.unreadable.again_wanted.connect(self._read_shown_anew)
        self.unreadable.another_wanted.connect(self.another_wanted)
        self.foot.start_over.clicked.connect(self.answering.start_over)
        self._session.other_opened.connect(self.begin_anew)
        self._session.compared.connect(self._ask_what_counts)
        self._session.units_changed.connect(lambda: understood.show_lines(self._session.units))

    def _was_read(self, file: FileAtHand, result: Result) -> None:
        first = file.taken is None
        file.taken, file.found = result
        if file not in self._files:
            return
        begun = self.begun.take_up(file)
        if begun is None and first and file.kept:
            file.take_over(result[0])
            begun = file
        if begun is not None:
            self._files = in_hand([begun if each is file else each for each in self._files], self._files)
            self.readings.ask(begun)
            return
        self._keep_begun()
        self._choose.name(self._files)
        self._progress.look()
        if first and not file.is_unreadable and self._choose.may_turn_from(self.at_hand):
            self._choose.setCurrentIndex(self._files.index(file))
        self._say_what_agreeing_does()
        if file is self.at_hand:
            self._show_file()
            if self._focus_owed:
                self._focus_owed = False
                self._pass_focus_on()

    def _keep_begun(self) -> None:
        """At every change, since nobody can tell when the machine will stop."""
        self.begun.keep(self._files)
        self._session.begun_changed.emit()

    def _pass_focus_on(self) -> None:
        """To what is asked, then to the lines understood; without any, to the sheet, which may be marked by hand."""
        if self.understood.go_to_open():
            return
        if self.understood.model.rowCount():
            self.understood.table.setFocus()
        elif self.sheet.grid is not None:
            self.sheet.view.setFocus()
        elif self.at_hand is not None and self.at_hand.taken is not None:
            # Among several files the way back gives up the others too: no key pressed once too often may do that.
            (self.leave if len(self._files) == 1 else self._choose).setFocus()

    def _show_file(self) -> None:
        file = self.at_hand
        if file is None:
            return
        self.waits.emit(file.path.name)
        self.understood.show_file(file, self._session.units, self._session.vendors)
        self._say_what_agreeing_does()
        if file.workbook is None:
            why = "The sheet is being read. You can leave it at any time." if file.taken is None else ""
            self.sheet.show_nothing(file.path.name, why)
        elif file.workbook is self._shown_workbook:
            self.sheet.mark(file.found.uses)
        else:
            self.sheet.show_workbook(file.workbook, file.found.uses)
        # Where nothing could be read there is no sheet to look at, and why is said once.
        self._both.setVisible(not file.is_unreadable)
        self.unreadable.show_file(file.path.name, file.summary() if file.is_unreadable else "")
        self._shown_workbook = file.workbook
        self.marking.show_marks()

    def _say_what_agreeing_does(self) -> None:
        self.foot.show_file(self.at_hand, self._files, self._session.footing.as_of)

    def _read_shown_anew(self, *, kept: bool = False) -> None:
        """The file at hand as it is on disk by now; `kept`: as it was taken in, its answers to be changed."""
        file = self.at_hand
        if file is not None and file.taken is not None:
            file.kept, file.taken = file.taken.reading.sha256 if kept else file.kept, None
            self._focus_owed = True
            self.readings.ask(file)
            self._show_file()

    def _were_stored(self, offers: int) -> None:
        """Goes on with what still waits, or is done."""
        self._keep_begun()
        self._stored += offers
        self.stored_files = frozenset(each.taken.reading.sha256 for each in self._files if each.stored and each.taken)
        # Whoever looks at Quotes before the rest is settled sees what is stored already.
        self._session.reload()
        self._choose.name(self._files)
        waiting = [place for place, each in enumerate(self._files) if each.unsettled]
        if not waiting:
            self._leave()
            return
        self._choose.setCurrentIndex(waiting[0])
        self._show_file()

    def _ask_what_counts(self) -> None:
        """Something was stored, withdrawn or brought back, here or elsewhere: what is at hand may be among it."""
        if self._files:
            self._session.work.ask(self._session.door.files, self._follow_database)

    def _follow_database(self, listing: Sequence[StoredFile]) -> None:
        if follow_database(self._files, listing):
            self._choose.name(self._files)
            self._show_file()

    def put_away(self) -> None:
        """The window closes: ends what is being read, and what is not settled waits on Today for the next one."""
        self.stop()
        self.begun.keep(self._files, all_unsettled=True)

    def begin_anew(self) -> None:
        """Another database is open: what is at hand waits for the one that it was read for."""
        files = self._files
        self._leave()
        self.begun.keep(files, all_unsettled=True)
        self.begun.move_to(self._session.door.place)
        self._session.begun_changed.emit()

    def _leave_all(self) -> None:
        leave_files(self._session, self._files, self._leave, self._take_up)

    def _leave_one(self) -> None:
        """Takes the file that is shown off the list; what was said about it waits on Today."""
        file, at = self.at_hand, self._choose.currentIndex()
        if file is None:
            return
        self.readings.stop([file])
        self._keep_begun()
        self._files = in_hand([each for each in self._files if each is not file], self._files)
        self.listed.show_files(self._files, min(at, len(self._files) - 1))
        self._session.said.emit(f"left {file.path.name}" + ("; nothing of it was stored" if file.unsettled else ""))
        self._show_file()
        self._pass_focus_on()

    def _take_up(self, files: Sequence[FileAtHand]) -> None:
        self._read(files)
        self.taken_up.emit()

    def _leave(self) -> None:
        self.stop()
        self._keep_begun()
        self._files = in_hand([], self._files)
        stored, self._stored = self._stored, 0
        self.waits.emit("")
        self.left.emit(stored)

    def _step_back(self) -> None:
        """Ends marking, else the reading or the review of one file; several are not given up by one key."""
        if not self.sheet.strip.isHidden():
            self.marking.begin(False)
        elif sum(file.unsettled for file in self._files) < 2:
            self._leave_all()
        else:
            self._session.said.emit(f"“{self.leave.text()}” leaves them all; Esc leaves no more than one")

    # Qt's own names from here on

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._step_back()
        else:
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        # Tab goes on from the lines to the decision. Said earlier, Qt forgets it as the place joins the window.
        follow_by_tab(self.understood.line, *self.foot.ways)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if not self._focus_owed:
            self._pass_focus_on()
