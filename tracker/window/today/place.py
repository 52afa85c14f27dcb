"""The Today place: four lists of what waits, or a welcome where there is nothing yet."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QShowEvent
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QStackedLayout, QWidget

from tracker.window.look.figures import counted, date_text
from tracker.window.pieces import column, panel, row, words
from tracker.window.quotes.offer_columns import offers
from tracker.window.session import Session
from tracker.window.tables.task_list import Task, TaskList
from tracker.window.take_in.begun_files import BegunSheet
from tracker.window.today import tasks_of
from tracker.window.today.answer_dialog import AnswerDialog
from tracker.window.today.welcome import Welcome
from tracker.window.undo import push, push_answered

if TYPE_CHECKING:
    from tracker.desk.questions import OpenQuestion


_MOST_COUNTED = 8


class _Section(QFrame):
    """A heading, how many, and the list; where nothing waits, one quiet sentence."""

    def __init__(self, title: str, nothing: str, session: Session) -> None:
        super().__init__()
        self._title = words(title, "heading")
        self._count = words("", "quiet")
        self._nothing = words(nothing, "quiet", wrap=True)
        self._nothing.setContentsMargins(15, 6, 15, 14)
        self.list = TaskList(title, session.theme)
        inside = panel(column(self.list, self._nothing, margins=(1, 1, 1, 1)))
        inside.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Maximum)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Maximum)
        self.setLayout(column(row(self._title, 8, self._count, None), inside, gap=8, grow=1))

    def show_tasks(self, tasks: list[Task], waiting: int) -> None:
        """Shows tasks; where not all that wait are listed, the count says so."""
        self.list.show_tasks(tasks)
        listed = f"{waiting:,}, the first {len(tasks):,} listed" if waiting > len(tasks) else f"{len(tasks):,}"
        self._count.setText(listed if tasks else "")
        self.list.setVisible(bool(tasks))
        self._nothing.setVisible(not tasks)


class TodayPlace(QWidget):
    """What needs the user. The signals carry where to go to settle it."""

    offer_wanted = Signal(object)
    sample_wanted = Signal(object)
    cell_wanted = Signal(object, str, str)
    sheets_wanted = Signal()
    demo_wanted = Signal()
    begun_wanted = Signal(object)
    files_dropped = Signal(list)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._stale = self._ever_shown = False
        self._begun: tuple[BegunSheet, ...] = ()
        self._heading: QLabel = words("", "title")
        self._told: QLabel = words("", "quiet")
        self.overdue = _Section("Overdue samples", "No sample is overdue.", session)
        self.questions = _Section("Questions left by price sheets", "Every sheet was understood.", session)
        self.out_of_line = _Section("Prices out of line", "No current price stands out.", session)
        self.lapsing = _Section("About to lapse", "No offer lapses within two weeks.", session)
        self.welcome = Welcome(session.theme)
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self._lists())
        self._stack.addWidget(self.welcome)
        self._connect()
        self._show()

    def _lists(self) -> QWidget:
        page = QWidget()
        # Each column shares its height by need, so that a short list leaves its room to the one below.
        left = column(self.out_of_line, self.questions, gap=20)
        right = column(self.overdue, self.lapsing, gap=20)
        self._columns = {self.out_of_line: left, self.questions: left, self.overdue: right, self.lapsing: right}
        self._sides = (left, right)
        for section in self._columns:
            section.hide()
        for side in (left, right):
            side.addStretch(0)
        grid = row(left, right, gap=28)
        grid.setStretch(0, 1)
        grid.setStretch(1, 1)
        page.setLayout(column(row(self._heading, 14, self._told, None), grid, margins=(24, 18, 24, 18), gap=16, grow=1))
        return page

    def _connect(self) -> None:
        self.overdue.list.wanted.connect(self.sample_wanted)
        self.out_of_line.list.wanted.connect(self.offer_wanted)
        self.lapsing.list.wanted.connect(self.offer_wanted)
        self.questions.list.wanted.connect(self._answer)
        self.welcome.sheets_wanted.connect(self.sheets_wanted)
        self.welcome.demo_wanted.connect(self.demo_wanted)
        self.welcome.dropped.connect(lambda paths: self.files_dropped.emit([Path(path) for path in paths]))
        self._session.troubled.connect(self._say_trouble)
        self._session.today_changed.connect(self._show)
        self._session.units_changed.connect(self._show)
        self._session.samples_changed.connect(self._show)

    def show_begun(self, sheets: tuple[BegunSheet, ...]) -> None:
        """Lists sheets that were left half answered; nothing of them is stored yet."""
        if sheets != self._begun:
            self._begun = sheets
            self._show()

    def _show(self) -> None:
        """Writes everything anew; while another place is looked at that waits until this one is again."""
        self._stale = not self.isVisible() and self._ever_shown
        if not self._stale:
            self._write()

    def _write(self) -> None:
        session = self._session
        todays, comparison = session.todays, session.comparison
        self._heading.setText(date_text(session.footing.as_of))
        if todays is None or comparison is None:
            self._told.setText("Opening…")
            return
        if not (len(comparison.snapshot) or session.samples or todays.questions or self._begun):
            self._stack.setCurrentWidget(self.welcome)
            return
        self._stack.setCurrentIndex(0)
        table = offers(comparison, session.marks, session.units)
        # Before anything was looked at no list could say that nothing waits in it.
        for section in self._columns:
            section.show()
        lists = {
            self.overdue: tasks_of.overdue_samples(todays, session.units),
            self.questions: tasks_of.begun_sheets(self._begun) + tasks_of.questions(todays),
            self.out_of_line: tasks_of.out_of_line(todays, table),
            self.lapsing: tasks_of.lapsing(todays, table),
        }
        self._balance(lists)
        more = max(0, len(todays.out_of_line) - len(lists[self.out_of_line]))
        for section, tasks in lists.items():
            section.show_tasks(tasks, len(tasks) + (more if section is self.out_of_line else 0))
            self._columns[section].setStretchFactor(section, 1 + min(len(tasks), _MOST_COUNTED))
        waiting = sum(map(len, lists.values())) + more
        self._told.setText(f"{counted(waiting, 'thing')} to settle" if waiting else "Nothing needs you today")

    def _balance(self, lists: Mapping[_Section, Sequence[Task]]) -> None:
        """Puts what is about to lapse below the shorter column, so that neither stands half empty."""
        left, right = self._sides
        longer_left = len(lists[self.out_of_line]) + len(lists[self.questions]) > len(lists[self.overdue])
        side = right if longer_left else left
        if self._columns[self.lapsing] is not side:
            self._columns[self.lapsing].removeWidget(self.lapsing)
            side.insertWidget(side.count() - 1, self.lapsing)
            self._columns[self.lapsing] = side

    def _say_trouble(self, sentence: str) -> None:
        """Before anything was loaded, a trouble is why nothing will be: it stands where the lists would."""
        if self._session.comparison is None:
            self._told.setText(sentence)

    def _answer(self, target: tuple[OpenQuestion, ...] | BegunSheet) -> None:
        """Goes on with a sheet that is not stored yet, or asks what one that is left open."""
        if isinstance(target, BegunSheet):
            self.begun_wanted.emit(target)
        else:
            self._ask(target)

    def _ask(self, questions: tuple[OpenQuestion, ...]) -> None:
        dialog = AnswerDialog(questions, self._session.vendors, self, self._session.units)
        dialog.vendor_named.connect(self._name_vendor)
        dialog.answered.connect(self._store_answer)
        dialog.set_aside.connect(self._set_aside)
        dialog.cell_wanted.connect(self.cell_wanted)
        dialog.open()

    def _name_vendor(self, file: int, vendor: str) -> None:
        session = self._session
        session.work.ask(
            lambda: session.door.name_vendor(file, vendor), lambda edit: push(session, edit, session.reload)
        )

    def _set_aside(self, question: int) -> None:
        session = self._session
        session.work.ask(
            lambda: session.door.set_aside(question), lambda edit: push(session, edit, session.reload_samples)
        )

    def _store_answer(self, question: int, value: str) -> None:
        session = self._session
        session.work.ask(
            lambda: session.door.answer(question, value, remember=True), lambda stored: push_answered(session, stored)
        )

    # Qt's own names from here on

    def showEvent(self, event: QShowEvent) -> None:
        self._ever_shown = True
        if self._stale:
            self._stale = False
            self._write()
        super().showEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        for section in (self.out_of_line, self.overdue, self.questions, self.lapsing):
            if section.list.tasks:
                section.list.setFocus(Qt.FocusReason.OtherFocusReason)
                return
