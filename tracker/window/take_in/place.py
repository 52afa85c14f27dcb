"""Taking in a sheet: the file on the left, what was understood on the right, the decision at the foot."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QComboBox, QProgressBar, QSplitter, QWidget

from tracker.window.look.figures import counted
from tracker.window.pieces import button, column, holder, panel, row, words
from tracker.window.session import Session
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView
from tracker.window.take_in.answers import AnswerGiven
from tracker.window.take_in.cells import place_of, uses_of
from tracker.window.take_in.file_at_hand import FileAtHand, read_again, read_with_sheet
from tracker.window.take_in.line_columns import LINE_COLUMNS, Lines
from tracker.window.take_in.questions_pane import QuestionsPane
from tracker.window.take_in.sheet_panel import SheetPanel
from tracker.window.undo import push_taken_in

if TYPE_CHECKING:
    from tracker.desk.take_in import Stored, TakenIn


class TakeInPlace(QWidget):
    """`left` says that the user is done here, with how many offers were stored."""

    left = Signal(int)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._files: list[FileAtHand] = []
        self._tickets: list[int] = []
        self._stored = 0
        self._shown_workbook: Any = None
        self.sheet = SheetPanel(session.theme)
        self.model = ColumnTable(LINE_COLUMNS, self)
        self.table = RowsView(self.model, session.theme)
        self.table.setAccessibleName("Offers understood")
        self.questions = QuestionsPane()
        self._choose = QComboBox()
        self._choose.setAccessibleName("File being taken in")
        self._choose.currentIndexChanged.connect(lambda _: self._show_file())
        self._summary = words("", "heading", wrap=True)
        self._vendor = words("", "quiet")
        self._notes = words("", "quiet", wrap=True, selectable=True)
        self._notes.setContentsMargins(14, 6, 14, 8)
        self._notes.hide()
        self._progress = QProgressBar()
        self._progress.setTextVisible(False)
        self._progress.setAccessibleName("Files read")
        self.agree = button("Take in", "main")
        self.agree_all = button("Take in all files")
        self.leave = button("Leave it")
        self._told = words("Nothing is stored until you agree.", "quiet")
        self._lay_out()
        self._connect()

    def read(self, paths: Sequence[Path]) -> None:
        """Reads these files one after another; each can be looked at once it is read."""
        self._drop_tickets()
        self._stored = 0
        self._files = [FileAtHand(path) for path in paths]
        self._choose.blockSignals(True)
        self._choose.clear()
        self._choose.addItems([file.short for file in self._files])
        self._choose.setVisible(len(self._files) > 1)
        self._choose.blockSignals(False)
        self._progress.setRange(0, len(self._files) if len(self._files) > 1 else 0)
        self._progress.setValue(0)
        self._progress.show()
        for file in self._files:
            self._ask_to_read(file)
        self._show_file()

    @property
    def at_hand(self) -> FileAtHand | None:
        """The file that is shown."""
        place = self._choose.currentIndex()
        return self._files[place] if 0 <= place < len(self._files) else None

    def _lay_out(self) -> None:
        lines = panel(column(self.table, self._notes, margins=(1, 1, 1, 1)))
        right = QSplitter(Qt.Orientation.Vertical)
        right.addWidget(self.questions)
        right.addWidget(lines)
        right.setHandleWidth(12)
        right.setChildrenCollapsible(False)
        right.setSizes([220, 400])
        self._right = right
        heading = column(self._summary, self._vendor, gap=2)
        understood = holder(column(heading, right, gap=8, grow=1))
        both = QSplitter(Qt.Orientation.Horizontal)
        both.addWidget(self.sheet)
        both.addWidget(understood)
        both.setHandleWidth(20)
        both.setChildrenCollapsible(False)
        both.setSizes([540, 660])
        foot = row(self._told, None, self.leave, self.agree_all, self.agree, gap=10)
        self.setLayout(
            column(row(self._choose, None), self._progress, both, foot, margins=(20, 12, 20, 14), gap=10, grow=2)
        )

    def _connect(self) -> None:
        self.questions.answered.connect(self._answer)
        self.questions.taken_back.connect(lambda key: self._answer(key, None))
        self.questions.asked_where.connect(self.sheet.go_to)
        self.table.picked.connect(self._show_cell_of)
        self.sheet.pointed.connect(self._show_line_at)
        self.agree.clicked.connect(self._store_shown)
        self.agree_all.clicked.connect(self._store_all)
        self.leave.clicked.connect(self._leave)
        self._session.units_changed.connect(self._show_lines)

    def _ask_to_read(self, file: FileAtHand) -> None:
        work, taken = self._session.work, file.taken
        if taken is None:
            ticket = work.ask(lambda: read_with_sheet(self._session.door, file.path), lambda r: self._was_read(file, r))
        else:
            ticket = work.ask(lambda: read_again(self._session.door, file, taken), lambda r: self._was_read(file, r))
        self._tickets.append(ticket)

    def _was_read(self, file: FileAtHand, result: tuple[TakenIn, Any, str]) -> None:
        if file.taken is None:
            file.before = result[0].answers
        file.taken, file.workbook, file.why_no_sheet = result
        if file not in self._files:
            return
        self._choose.setItemText(self._files.index(file), file.short)
        read = sum(each.taken is not None for each in self._files)
        self._progress.setValue(read)
        self._progress.setVisible(read < len(self._files))
        if file is self.at_hand:
            self._show_file()
        self._say_what_agreeing_does()

    def _show_file(self) -> None:
        file = self.at_hand
        if file is None:
            return
        self._summary.setText(file.summary())
        self._say_what_agreeing_does()
        if file.taken is None:
            self.sheet.show_nothing(file.path.name, "The sheet is being read. You can leave it at any time.")
            self._vendor.setText("")
            self.questions.show_questions((), {}, vendor="")
            self.model.show(Lines((), self._session.units), np.arange(0))
            return
        reading = file.taken.reading
        self._vendor.setText(file.whose())
        self.questions.show_questions(reading.questions, file.given, vendor=reading.vendor or "")
        self.questions.setVisible(bool(reading.questions or file.given))
        # Only once the new cards have been laid out do they know how tall they are.
        QTimer.singleShot(0, self._share_height)
        self._show_lines()
        uses = uses_of(reading.lines, reading.questions)
        if file.workbook is None:
            self.sheet.show_nothing(file.path.name, file.why_no_sheet or reading.unreadable or "")
        elif file.workbook is self._shown_workbook:
            self.sheet.mark(uses)
        else:
            self.sheet.show_workbook(file.workbook, uses)
        self._shown_workbook = file.workbook

    def _share_height(self) -> None:
        """Questions take what they need, up to a good half; the lines have the rest."""
        whole = sum(self._right.sizes())
        wanted = min(self.questions.wanted_height, int(0.55 * whole))
        self._right.setSizes([wanted, whole - wanted])

    def _show_lines(self) -> None:
        file = self.at_hand
        if file is not None and file.taken is not None:
            lines = file.taken.reading.lines
            self._notes.hide()
            several = len({line.offer.source.sheet for line in lines}) > 1
            self.table.show_column("notes", any(line.notes for line in lines))
            self.model.show(Lines(lines, self._session.units, several), np.arange(len(lines)))

    def _say_what_agreeing_does(self) -> None:
        file = self.at_hand
        number = 0 if file is None else file.accepted
        self.agree.setText(f"Take in {counted(number, 'offer')}" if number else "Nothing to take in")
        self.agree.setEnabled(number > 0)
        ready = [each for each in self._files if each.accepted]
        self.agree_all.setVisible(len(ready) > 1)
        self.agree_all.setText(f"Take in all {len(ready)} files ({counted(sum(f.accepted for f in ready), 'offer')})")
        held = 0 if file is None or file.taken is None else len(file.taken.reading.questions)
        later = " Questions left open wait on the Today page." if held and number else ""
        self._told.setText(f"Nothing is stored until you agree.{later}")

    def _answer(self, key: str, value: str | None) -> None:
        file = self.at_hand
        if file is None:
            return
        said = f"answered {key.replace(':', ': ')} with {value}" if value is not None else f"asked again: {key}"
        self._session.undo_stack.push(AnswerGiven(file.given, key, value, lambda: self._ask_to_read(file), said))

    def _show_cell_of(self, line: int) -> None:
        file = self.at_hand
        if file is not None and file.taken is not None:
            chosen = file.taken.reading.lines[line]
            self.sheet.go_to(chosen.offer.source.sheet, chosen.offer.source.cell)
            self._notes.setText("\n".join(f"{note.cell}: {note.text}" for note in chosen.notes))
            self._notes.setVisible(bool(chosen.notes))

    def _show_line_at(self, sheet: str, at_row: int, at_column: int) -> None:
        file = self.at_hand
        if file is None or file.taken is None:
            return
        for number, line in enumerate(file.taken.reading.lines):
            source = line.offer.source
            if source.sheet == sheet and (at_row, at_column) in map(place_of, (source.cell, *source.also)):
                self.table.go_to(number)

    def _store_shown(self) -> None:
        file = self.at_hand
        if file is not None:
            self._store([file])

    def _store_all(self) -> None:
        self._store([file for file in self._files if file.accepted])

    def _store(self, files: Sequence[FileAtHand]) -> None:
        self.agree.setEnabled(False)
        door = self._session.door
        for file in files:
            taken, given = file.taken, dict(file.given)
            if taken is not None:
                self._session.work.ask(partial(door.store, taken, given), partial(self._was_stored, file))

    def _was_stored(self, file: FileAtHand, stored: Stored) -> None:
        file.stored = True
        self._stored += stored.offers
        push_taken_in(self._session, stored.file_id, f"took in {counted(stored.offers, 'offer')} from {file.path.name}")
        self._choose.setItemText(self._files.index(file), file.short)
        waiting = [place for place, each in enumerate(self._files) if each.accepted or each.taken is None]
        if not waiting:
            self.left.emit(self._stored)
            return
        self._choose.setCurrentIndex(waiting[0])
        self._show_file()

    def _leave(self) -> None:
        self._drop_tickets()
        self._files = []
        self.left.emit(self._stored)

    def _drop_tickets(self) -> None:
        for ticket in self._tickets:
            self._session.work.drop(ticket)
        self._tickets.clear()
