"""The samples themselves: as a table, as lines through time, or by how long each vendor takes; found by number."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QLineEdit, QStackedWidget, QWidget

from tracker.desk.sample_numbers import number_said
from tracker.desk.trouble import Trouble
from tracker.window.field_steps import empty
from tracker.window.look.figures import counted
from tracker.window.pieces import button, column, holder, one_of, panel, row, scrolled, words
from tracker.window.samples.life_lines import LifeLines
from tracker.window.samples.life_page import KEYS
from tracker.window.samples.sample_columns import SAMPLE_COLUMNS, Samples, is_outstanding
from tracker.window.samples.turn_round import TurnRound
from tracker.window.session import Session
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView

if TYPE_CHECKING:
    from tracker.desk.samples import Sample
    from tracker.desk.waits import WaitRow

OUTSTANDING, OVERDUE, ALL = range(3)
TABLE, LINES, TURN_ROUND = range(3)
_EMPTY = (
    "Nothing is outstanding: no vendor owes you a sample.",
    "Nothing is overdue.",
    "No sample was asked for yet. Write the vendor above, Tab to the grade, Enter logs the request.",
)
_KEYS = (
    "P promised, S sent, A arrived, C chased, R refused, X cancelled, L lost; M readings, V verdict, D draft a chase."
)
_LEGEND = (
    "Ring: asked, or promised. Triangle: sent. Dot: arrived. Purple tick: chased. Cross: refused, cancelled or lost. "
    "Bar: the day it is due; orange since then where it is overdue."
)


class _SampleTable(RowsView):
    """The table, with a letter for each thing that can be done; digits go to the number's field."""

    key_pressed = Signal(str)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        letter = event.text().casefold()
        plain = not event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if plain and letter.isdigit():
            self.key_pressed.emit(letter)
            return
        # A sample that was just recorded as arrived has left the table, and is still the one that is shown.
        if plain and (letter in KEYS or letter in ("m", "v", "d")):
            self.key_pressed.emit(letter)
            return
        super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The chosen row stays in view when the message bar takes some of the height."""
        at = self.visualRect(self.currentIndex())
        in_view = at.isValid() and 0 <= at.top() < event.oldSize().height()
        super().resizeEvent(event)
        if in_view:
            self.scrollTo(self.currentIndex())


class SampleListing(QWidget):
    """`picked` carries a sample, `key_pressed` the letter pressed on the one picked, `entered` that it is wanted.

    `number_wanted` carries a number that was typed or scanned, `misread` why it is none.
    """

    picked = Signal(object)
    key_pressed = Signal(str)
    entered = Signal()
    number_wanted = Signal(object)
    misread = Signal(str)
    chases_wanted = Signal()
    labels_wanted = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: tuple[Sample, ...] = ()
        self.model = ColumnTable(SAMPLE_COLUMNS, self)
        self.table = _SampleTable(self.model, session.theme)
        self.table.setAccessibleName("Sample requests")
        self.lines = LifeLines(session.theme)
        self.turn_round = TurnRound(session.theme)
        self.which, which = one_of(("Outstanding", "Overdue", "All"), self)
        self.form, form = one_of(("Table", "Lines", "Turn-round"), self)
        self.number = QLineEdit()
        self.number.setAccessibleName("Number, typed or scanned")
        self.number.setPlaceholderText("No., or scan")
        self.number.setToolTip("Ctrl+G: the number on a label opens its record")
        self.number.setFixedWidth(104)
        self.labels = button("Labels…", "word")
        self.labels.setToolTip("Ctrl+Shift+P: labels with the number as text and as a code")
        self.chase = button("Draft chases…", "word")
        self.chase.setToolTip("Ctrl+Shift+C: one message a vendor that owes you, for your own mail program")
        self._nothing = words("", "quiet", wrap=True)
        self._nothing.setContentsMargins(16, 4, 16, 16)
        self._stack = QStackedWidget()
        lines = column(scrolled(self.lines), self._small(_LEGEND), grow=0)
        for page in (
            panel(column(self.table, self._nothing, self._small(_KEYS), margins=(1, 1, 1, 1), grow=0)), panel(lines),
            panel(column(scrolled(self.turn_round), margins=1)),
        ):  # fmt: skip
            self._stack.addWidget(page)
        self._left = holder(row(which, 18, form, None, gap=4))
        self._right = holder(row(None, self.number, self.labels, self.chase, gap=4))
        self._head = row(self._left, self._right, gap=4)
        self.setLayout(column(self._head, self._stack, gap=8, grow=1))
        # Without it the head in one line would set how narrow the window can be, and be cut there.
        self.setMinimumWidth(400)
        self._connect()

    def show_samples(self, samples: tuple[Sample, ...], at_hand: int | None = None) -> None:
        """Shows those that are asked for; what is owed comes first, the most overdue on top.

        at_hand: the number of the one being worked on; it stays although it has arrived by now, so that its readings
        and its verdict can follow.
        """
        outstanding = np.array([is_outstanding(sample) for sample in samples], dtype=bool)
        overdue = np.array([sample.overdue for sample in samples], dtype=bool)
        for place, (title, count) in enumerate(
            (("Outstanding", int(outstanding.sum())), ("Overdue", int(overdue.sum())), ("All", len(samples)))
        ):
            self.which.button(place).setText(f"{title}  {count:,}")
        self._fit_head()
        self.chase.setEnabled(bool(overdue.any()))
        self.labels.setEnabled(bool(samples))
        which = self.which.checkedId()
        masks = {OUTSTANDING: outstanding, OVERDUE: overdue, ALL: np.ones(len(samples), dtype=bool)}
        kept = np.array([sample.number == at_hand for sample in samples], dtype=bool)
        rows = np.flatnonzero(masks[which] | kept)
        self._shown = tuple(samples[place] for place in rows)
        self.model.show(Samples(samples, self._session.units), rows)
        self._fit_columns()
        self.lines.show_samples(self._shown, self._session.footing.as_of)
        self._nothing.setText(_EMPTY[ALL if not samples else which])
        self._nothing.setVisible(len(rows) == 0)
        if self.form.checkedId() == TURN_ROUND:
            self._ask_turn_round()

    def show_due(self, vendors: int) -> None:
        """Says on the button how many vendors are due for a chase today."""
        self.chase.setText(f"Chase {counted(vendors, 'vendor')}…" if vendors else "Draft chases…")
        self._fit_head()

    def choose(self, sample: Sample) -> bool:
        """Marks one of the samples; False where the choice above leaves it out."""
        self.lines.choose(sample.number)
        samples = self._session.samples
        place = next((place for place, each in enumerate(samples) if each.number == sample.number), -1)
        return place >= 0 and self.table.go_to(place)

    def show_all(self) -> None:
        self.which.button(ALL).setChecked(True)

    def turn_to(self, form: int) -> None:
        """Table, lines or turn-round."""
        self.form.button(form).setChecked(True)
        self._stack.setCurrentIndex(form)
        if form == TURN_ROUND:
            self._ask_turn_round()

    def shown(self) -> tuple[Sample, ...]:
        """Those that the choice above lets through, in the order of the table."""
        samples = self._session.samples
        return tuple(samples[int(place)] for place in self.model.order)

    def start_finding(self, begun: str = "") -> None:
        """Goes to the field for a number, with what was typed of it already."""
        self.number.setText(begun)
        self.number.setFocus()

    def _fit_head(self) -> None:
        """The head takes two lines where one would cut its words."""
        one_line = self._left.sizeHint().width() + self._right.sizeHint().width() + 8 <= self.width()
        direction = QBoxLayout.Direction.LeftToRight if one_line else QBoxLayout.Direction.TopToBottom
        self._head.setDirection(direction)

    def _fit_columns(self) -> None:
        """What stands beside the table anyway gives way first, so that state and day stay in view."""
        room, present = self.table.room, {column.key for column in SAMPLE_COLUMNS}
        with_chance = self.table.whole_width_for(present) <= room
        self.table.show_column("chance", with_chance)
        # No words are cut for a likelihood, while a purpose is worth having cut.
        self.table.show_column("for", with_chance or self.table.least_width_for(present - {"chance"}) <= room)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_head()
        self._fit_columns()

    def _connect(self) -> None:
        self.table.picked.connect(lambda place: self.picked.emit(self._session.samples[place]))
        self.table.entered_row.connect(lambda _: self.entered.emit())
        self.table.key_pressed.connect(self._key)
        self.lines.picked.connect(lambda place: self.picked.emit(self._shown[place]))
        self.which.idClicked.connect(lambda _: self.show_samples(self._session.samples))
        self.form.idClicked.connect(self.turn_to)
        self.number.returnPressed.connect(self._open_number)
        self.chase.clicked.connect(self.chases_wanted)
        self.labels.clicked.connect(self.labels_wanted)

    def _key(self, letter: str) -> None:
        if letter.isdigit():
            self.start_finding(letter)
        else:
            self.key_pressed.emit(letter)

    def _open_number(self) -> None:
        try:
            number = number_said(self.number.text())
        except Trouble as trouble:
            self.misread.emit(str(trouble))
            self.number.selectAll()
            return
        empty(self.number)
        self.number_wanted.emit(number)

    def _ask_turn_round(self) -> None:
        self._session.work.ask(self._session.door.turn_round, self._show_turn_round)

    def _show_turn_round(self, rows: list[WaitRow]) -> None:
        self.turn_round.show_waits(rows, self._session.samples)

    def _small(self, text: str) -> QWidget:
        label = words(text, "small", wrap=True)
        label.setContentsMargins(12, 4, 12, 8)
        return label
