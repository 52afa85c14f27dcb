"""One question about a sheet: its choices as buttons, or a field; a word that can't be the answer is refused there.

The card itself has the keys first and none of its answers: what Enter does at once, it does unread.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QLayout, QLineEdit, QPushButton, QWidget

from tracker.trade.answer_words import USUAL_CURRENCIES, size_words
from tracker.trade.answers import objection
from tracker.trade.offer import LEAVE_OUT, Choice, Question
from tracker.window.look.figures import Units
from tracker.window.pieces import button, column, row, words
from tracker.window.samples.fields import Wrong
from tracker.window.take_in.typed_size import EXAMPLES, size_typed

_FIT_SIDE_BY_SIDE = 76
_TYPED = ("currency", "bracket")
_ANOTHER_CURRENCY = "another: three letters, such as JPY"
_ONLY_THE_VENDOR = "The sheet itself can't settle this: {without}, or ask the vendor."

_NUMBERS = "①②③④⑤⑥⑦⑧⑨⓪"
"""The keys 1 to 9, and 0 for the tenth."""
_TOO_SOON_MS = 300
"""A number pressed sooner after the card has come up was meant for the one before it."""

_BY_HAND = "Mark its columns beside the sheet, or leave its lines out."


def _only_the_vendor(leaving: bool) -> str:
    """Which way is open here to go on without these lines."""
    return _ONLY_THE_VENDOR.format(
        without="leave its lines out" if leaving else "stop asking, and its lines stay unused"
    )


def can_be_typed(key: str) -> bool:
    """Whether any text can answer a question of this key; other questions without choices have no answer here."""
    return _kind(key) in _TYPED


def _number(text: str) -> int:
    """Which choice a key is for, counted from 1; 0 for no digit."""
    return (int(text) or len(_NUMBERS)) if text.isdecimal() and len(text) == 1 else 0


def _kind(key: str) -> str:
    return key.partition(":")[0]


def _choices(question: Question) -> tuple[Choice, ...]:
    """What the question offers; of currencies, where it leaves all open, those that board is usually sold in."""
    if question.choices or _kind(question.key) != "currency":
        return question.choices
    return tuple(Choice(code, code) for code in USUAL_CURRENCIES)


def _side_by_side(choices: Sequence[Choice]) -> list[list[Choice]]:
    """Choices in lines that fit the card."""
    lines: list[list[Choice]] = [[]]
    room = _FIT_SIDE_BY_SIDE
    for choice in choices:
        if lines[-1] and room < len(choice.label) + 8:
            lines.append([])
            room = _FIT_SIDE_BY_SIDE
        lines[-1].append(choice)
        room -= len(choice.label) + 8
    return lines


class QuestionCard(QFrame):
    """One question; the keys 1 to 9 and 0 choose among its answers. `answered` carries its key and the value chosen,
    `asked_where` a cell it is about, `vendor_asked` the key of one that the vendor shall be asked. `leaving`: its lines
    can be left out here. `units`: those that the user chose to see."""

    answered = Signal(str, str)
    asked_where = Signal(str, str)
    vendor_asked = Signal(str)

    def __init__(
        self, question: Question, parent: QWidget | None = None, *, leaving: bool = True, units: Units = Units.US
    ) -> None:
        super().__init__(parent)
        self.question = question
        self._choices = _choices(question)
        self._units = units
        self.setProperty("kind", "question")
        self._field: QLineEdit | None = None
        self._too_soon = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(question.text)
        layout = column(words(question.text, wrap=True), margins=(14, 10, 14, 8), gap=8)
        if self._choices:
            self.setAccessibleDescription("The keys 1 to 9 and 0 choose an answer, Tab goes to the answers.")
            for line in _side_by_side(self._choices):
                layout.addLayout(row(*(self._choice(choice) for choice in line), None, gap=8))
        if not question.choices and can_be_typed(question.key):
            layout.addLayout(self._typing())
        elif not self._choices:
            layout.addWidget(
                words(_BY_HAND if _kind(question.key) == "table" else _only_the_vendor(leaving), "quiet", wrap=True)
            )
        layout.addLayout(row(*self._ways(leaving), None, gap=4))
        self.setLayout(layout)

    def begin(self) -> None:
        """Gives it the keys: its field where it has nothing else, or the card itself, so that no answer is given before
        it is read."""
        self._too_soon = True
        QTimer.singleShot(_TOO_SOON_MS, self, self._let_through)
        (self if self._choices or self._field is None else self._field).setFocus(Qt.FocusReason.TabFocusReason)

    def _let_through(self) -> None:
        self._too_soon = False

    def _ways(self, leaving: bool) -> list[QPushButton]:
        """Where it stands, and what to do where no answer serves."""
        ways = []
        if self.question.cells:
            sheet, cell = self.question.cells[0]
            more = f" and {len(self.question.cells) - 1:,} more" if len(self.question.cells) > 1 else ""
            show = button(f"Show cell {cell}{more}", "word")
            show.clicked.connect(partial(self.asked_where.emit, sheet, cell))
            ways.append(show)
        if leaving:
            out = button("Leave these lines out", "word")
            out.clicked.connect(partial(self._answer, LEAVE_OUT))
            ways.append(out)
        ask = button("Ask the vendor…", "word")
        ask.setToolTip("A draft for your own mail")
        ask.clicked.connect(lambda: self.vendor_asked.emit(self.question.key))
        return [*ways, ask]

    def _choice(self, choice: Choice) -> QPushButton:
        place = self._choices.index(choice)
        pick = button(f"{_NUMBERS[place]}  {choice.label}" if place < len(_NUMBERS) else choice.label)
        pick.setAccessibleName(choice.label)
        pick.clicked.connect(partial(self._answer, choice.value))
        return pick

    def _typing(self) -> QLayout:
        self._field = typed = QLineEdit()
        of_size = _kind(self.question.key) == "bracket"
        typed.setAccessibleName(self.question.text)
        typed.setPlaceholderText(EXAMPLES[self._units] if of_size else _ANOTHER_CURRENCY)
        self._wrong = Wrong()
        self._meant = words("", "small")
        self._meant.setVisible(of_size)
        take = button("Answer")
        take.clicked.connect(lambda: self._answer_typed(typed))
        typed.returnPressed.connect(lambda: self._answer_typed(typed))
        if of_size:
            typed.textChanged.connect(self._say_what_is_meant)
        return column(row(typed, take, gap=6), self._meant, self._wrong.label, gap=4)

    def _say_what_is_meant(self, text: str) -> None:
        """A ton is said back in pounds and kilograms before it is taken."""
        value = size_typed(text, self._units)
        self._meant.setText(f"An order {size_words(value)}" if value else "")

    def _answer(self, value: str, _checked: bool = False) -> None:
        self.answered.emit(self.question.key, value)

    def _answer_typed(self, field: QLineEdit) -> None:
        typed = " ".join(field.text().split())
        if not typed:
            return
        if _kind(self.question.key) == "bracket":
            value = size_typed(typed, self._units)
            wrong = (
                None
                if value
                else f"“{typed}” is no order size: write {EXAMPLES[self._units].removeprefix('such as ')}."
            )
        else:
            value = typed.upper()
            wrong = objection(self.question.key, value)
        if wrong or value is None:
            self._wrong.say((wrong or "").replace(f"“{value}”", f"“{typed}”"), field)
        else:
            self._answer(value)

    # Qt's own names from here on

    def keyPressEvent(self, event: QKeyEvent) -> None:
        number = _number(event.text())
        if not event.isAutoRepeat() and 1 <= number <= min(len(self._choices), len(_NUMBERS)):
            if not self._too_soon:
                self._answer(self._choices[number - 1].value)
        elif self._field is not None and event.text().isalpha():
            # Whoever types a code need not look for the field first.
            self._field.setFocus()
            self._field.insert(event.text())
        else:
            super().keyPressEvent(event)
