"""The right side of taking in: what was understood of a file, what is asked about it, and what said each line."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QWidget

from tracker.trade.offer import Line
from tracker.window.look.figures import Units
from tracker.window.look.theme import Theme
from tracker.window.pieces import button, column, panel, row, words
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView
from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.findings import Findings
from tracker.window.take_in.line_columns import LINE_COLUMNS, Lines
from tracker.window.take_in.line_panel import LinePanel
from tracker.window.take_in.passed_over import passed_in_full
from tracker.window.take_in.questions_pane import QuestionsPane
from tracker.window.take_in.refused_lines import RefusedLines
from tracker.window.take_in.vendor_card import VendorCard
from tracker.window.take_in.vendor_line import VendorLine

_MOST_FOR_QUESTIONS = 0.64
_LINES_FOR_BOARDS, _LINES_FOR_NOTES = 2, 2
_MOST_TALLER = 400
"""Rows whose notes are looked at one by one: more would keep the interface waiting."""
_MOST_FOR_ANSWERS = 0.22
_FOR_NOTES = 110
_GIVES_WAY = ("weight", "board", "cell")


class Understood(QWidget):
    """Shows one file. `line_chosen` carries the line (None: none) that the user looks at, `layout_refused` that the
    remembered layout shall not be used for this file, `marks_wanted` that the marks of an earlier one shall be."""

    line_chosen = Signal(object)
    layout_refused = Signal()
    marks_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lines: tuple[Line, ...] = ()
        self._units = Units.US
        self._found = Findings()
        self._asked: frozenset[str] = frozenset()
        self.model = ColumnTable(LINE_COLUMNS, self)
        self.table = RowsView(self.model, theme)
        self.table.setAccessibleName("Offers understood")
        self.questions = QuestionsPane()
        self.line = LinePanel()
        self.whose = VendorLine()
        self.vendor = VendorCard()
        self.summary = words("", "heading", wrap=True)
        self.far_off = button("Show the prices to doubt", "word")
        self.far_off.setToolTip("Goes to the next of them")
        self.far_off.clicked.connect(self._show_next_far_off)
        self.terms = words("", "quiet", wrap=True, selectable=True)
        self.terms.setAccessibleName("What was understood of its terms")
        self.refused = RefusedLines()
        self.refused.wanted.connect(self._show_line)
        self.told_once = words("", "quiet", wrap=True, selectable=True)
        self.passed = words("", "quiet", wrap=True, selectable=True)
        self.layout_said = words("", "quiet")
        self._refuse = button("Read without it", "word")
        self._refuse.clicked.connect(self.layout_refused)
        self.use_marks = button("Use those marks")
        self.use_marks.setToolTip("Marks this sheet as that one was; you see it before anything is stored")
        self.use_marks.clicked.connect(self.marks_wanted)
        self.earlier_said = words("", wrap=True)
        self._earlier = panel(row(self.earlier_said, self.use_marks, margins=(14, 8, 10, 8), gap=8, grow=0))
        self._by_layout = QWidget()
        self._by_layout.setLayout(row(self.layout_said, self._refuse, None, gap=8))
        self._split = QSplitter(Qt.Orientation.Vertical)
        self._split.addWidget(self.questions)
        self._split.addWidget(panel(column(self.table, self.line, margins=(1, 1, 1, 1), grow=0)))
        self._split.setHandleWidth(12)
        self._split.setChildrenCollapsible(False)
        heading = column(
            self.summary,
            self.refused,
            row(self.far_off, None),
            self.whose,
            self.terms,
            self._by_layout,
            self._earlier,
            self.told_once,
            self.passed,
            4,
            self.vendor,
            gap=2,
        )
        both = column(heading, self._split, gap=8, grow=1)
        # Where nothing was read there is no list: what is said then stays at the top.
        both.addStretch(0)
        self.setLayout(both)
        self.table.picked.connect(self._choose)

    def show_file(self, file: FileAtHand, units: Units, vendors: Sequence[str]) -> None:
        """Shows what was read of a file, or that it is being read."""
        self.summary.setText(file.summary())
        reading = None if file.taken is None else file.taken.reading
        # What was taken in before is answered anew on demand only: an answer here would lead nowhere.
        open_here = file.taken is not None and file.imported_on is None
        questions = file.found.asked if open_here else ()
        vendor = "" if reading is None else reading.vendor or ""
        given = {key: value for key, value in file.given.items() if key != "vendor"}
        self.show_whose(file, vendors)
        self.terms.setText(file.found.terms)
        self.terms.setVisible(bool(file.found.terms))
        self.layout_said.setText(file.found.layout_words)
        self._by_layout.setVisible(bool(file.found.layout_words) and file.marking is None)
        earlier = file.found.earlier if open_here and file.marking is None else None
        self.earlier_said.setText("" if earlier is None else earlier.words)
        self._earlier.setVisible(earlier is not None)
        recalled = file.taken.recalled if file.taken is not None and open_here else ()
        self.questions.show_questions(questions, given, recalled, vendor=vendor, said=file.words, units=units)
        self.questions.setVisible(bool(questions or given or recalled))
        # Only once the new cards have been laid out do they know how tall they are.
        QTimer.singleShot(0, self._share_height)
        self._lines = () if reading is None else reading.lines
        self._found = file.found
        self._asked = frozenset(question.text for question in questions)
        self.refused.show_lines(file.found.refused_words, file.found.refused)
        self._say_far_off(file.found.far_off)
        # What is asked stands in its own card.
        self._tell_once(file.found.told_once - self._asked)
        self.table.make_room("price", file.found.longest_price)
        self._fit_columns()
        self._set_lines()
        self.passed.setText(file.found.passed)
        self.passed.setToolTip("" if reading is None else passed_in_full(reading.passed_over))
        self.passed.setVisible(bool(file.found.passed))
        self._split.setVisible(reading is None or reading.unreadable is None)
        self.show_lines(units)

    def show_whose(self, file: FileAtHand, vendors: Sequence[str]) -> None:
        """Says whose the sheet is, or asks."""
        said_here = "vendor" in file.given or (file.lacks_vendor and file.nameless)
        self.whose.show_vendor(file.whose(), can_change=said_here, can_name=file.may_name_vendor)
        self.vendor.naming.know(vendors)
        asked = file.lacks_vendor and not file.nameless and not file.may_name_vendor
        self.vendor.ask(asked, has_offers=file.accepted > 0, first_line=file.first_line if asked else "")

    def go_to_open(self) -> bool:
        """Puts the focus on what is asked, the vendor first; False where nothing is."""
        if not self.vendor.isHidden():
            self.vendor.naming.setFocus()
            return True
        return self.questions.go_to_open()

    def show_lines(self, units: Units) -> None:
        """Shows the lines in other units."""
        self._units = units
        shown = Lines(self._lines, units, len(self._found.sheets) > 1, self._found.told_once, self._asked)
        self.model.show(shown, self._in_order())
        self.line.show_line(None)
        self.line_chosen.emit(None)

    def _in_order(self) -> NDArray[np.intp]:
        """As the sheet has them, but what is held and what can't be used first: far down a long list nobody would look
        for it."""
        first = np.array((*self._found.held, *self._found.refused), dtype=np.intp)
        rest = np.ones(len(self._lines), dtype=np.bool_)
        rest[first] = False
        return np.concatenate((first, np.flatnonzero(rest)))

    def _say_far_off(self, lines: Sequence[int]) -> None:
        """How many prices to doubt, where they may be out of sight in a long list."""
        lie = "price lies" if len(lines) == 1 else "prices lie"
        self.far_off.setText(f"⚠ {len(lines):,} {lie} far outside what board usually costs: show")
        self.far_off.setVisible(bool(lines))

    def _show_next_far_off(self) -> None:
        here = self.table.currentIndex().row()
        rows = sorted(row for row in map(self.model.row_of, self._found.far_off) if row is not None)
        self._show_line(int(self.model.order[next((row for row in rows if row > here), rows[0])]))

    def _show_line(self, number: int) -> None:
        """Goes to a line that is out of sight in a long list, and to its cell."""
        self.table.setFocus()
        self.go_to(number)
        self.line_chosen.emit(self._lines[number])

    def _tell_once(self, notes: frozenset[str]) -> None:
        """What holds of every line stands above them all."""
        self.told_once.setText("On every line: " + " ".join(sorted(notes)))
        self.told_once.setVisible(bool(notes))

    def go_to(self, number: int) -> None:
        """Chooses a line without saying so back."""
        self.table.go_to(number)
        self.line.show_line(self._lines[number], self._units)

    def _choose(self, number: int) -> None:
        self.line.show_line(self._lines[number], self._units)
        self.line_chosen.emit(self._lines[number])

    def _set_lines(self) -> None:
        """Two lines to a row where boards' names need them, else one, and up to three where a row's own notes do: one
        long note is not to make every row tall. What that does not show stands whole below the list once its line is
        chosen."""
        found, table = self._found, self.table
        lines = 1 if table.shows_whole("board", found.longest_board, 1) else _LINES_FOR_BOARDS
        if len(found.notes) > _MOST_TALLER:
            table.show_texts_in(max(lines, _LINES_FOR_NOTES))
            return
        needed = {text: self._lines_for(text) for text in set(found.notes.values())}
        table.show_texts_in(lines, {at: needed[text] for at, text in found.notes.items() if needed[text] > lines})

    def _lines_for(self, note: str) -> int:
        """Three lines only where they show it whole."""
        if self.table.shows_whole("notes", note, 1):
            return 1
        two_do = self.table.shows_whole("notes", note, _LINES_FOR_NOTES)
        return _LINES_FOR_NOTES + (not two_do and self.table.shows_whole("notes", note, _LINES_FOR_NOTES + 1))

    def _fit_columns(self) -> None:
        """What is the same in every line gives way, and in a narrow list what identifies a board least: never the
        price."""
        shown = self._columns_with_something()
        for key in _GIVES_WAY:
            if self.table.least_width_for(shown) <= self.table.room:
                break
            shown.remove(key)
        for each in LINE_COLUMNS:
            self.table.show_column(each.key, each.key in shown)

    def _columns_with_something(self) -> set[str]:
        empty = {key for key, shown in (("notes", self._found.noted), ("order", self._found.sized)) if not shown}
        return {column.key for column in LINE_COLUMNS} - empty

    @property
    def wanted_width(self) -> int:
        """In pixels, with every column in view and room to read the notes in."""
        notes = _FOR_NOTES + self.table.least_width_for({"notes"}) if self._found.noted else 0
        words = self._columns_with_something() - {"notes"}
        return self.table.whole_width_for(words) + notes + self.width() - self.table.room

    def _share_height(self) -> None:
        """Questions take what they need, up to a good half; once all are answered the lines have nearly all of it."""
        whole = sum(self._split.sizes())
        most = _MOST_FOR_QUESTIONS if self._asked else _MOST_FOR_ANSWERS
        wanted = min(self.questions.wanted_height, int(most * whole))
        self._split.setSizes([wanted, whole - wanted])

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_columns()
        self._set_lines()
