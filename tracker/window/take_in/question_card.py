"""One question about a sheet: its choices as buttons, or a field; a word that can't be the answer is refused there.

The card itself has the keys first and none of its answers: what Enter does at once, it does unread.
"""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QLayout, QLineEdit, QPushButton, QWidget

from tracker.trade.answers import objection
from tracker.trade.offer import LEAVE_OUT, Choice, Question
from tracker.window.pieces import button, column, row, words
from tracker.window.samples.fields import Wrong

_FIT_SIDE_BY_SIDE = 76
_TYPED = ("currency", "bracket")
_EXAMPLES = {
    "currency": "three letters, such as USD",
    "bracket": "kilograms from:below, such as 5000:18000, or 18000: for more",
}
_ONLY_THE_VENDOR = "The sheet itself can't settle this: {without}, or ask the vendor."

_NUMBERS = "①②③④⑤⑥⑦⑧⑨"
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
    return int(text) if text.isdecimal() else 0


def _kind(key: str) -> str:
    return key.partition(":")[0]


def _side_by_side(question: Question) -> list[list[Choice]]:
    """Choices in lines that fit the card."""
    lines: list[list[Choice]] = [[]]
    room = _FIT_SIDE_BY_SIDE
    for choice in question.choices:
        if lines[-1] and room < len(choice.label) + 8:
            lines.append([])
            room = _FIT_SIDE_BY_SIDE
        lines[-1].append(choice)
        room -= len(choice.label) + 8
    return lines


class QuestionCard(QFrame):
    """One question; the keys 1 to 9 choose among its answers. `answered` carries its key and the value chosen,
    `asked_where` a cell it is about, `vendor_asked` the key of one that the vendor shall be asked. `leaving`: its lines
    can be left out here."""

    answered = Signal(str, str)
    asked_where = Signal(str, str)
    vendor_asked = Signal(str)

    def __init__(self, question: Question, parent: QWidget | None = None, *, leaving: bool = True) -> None:
        super().__init__(parent)
        self.question = question
        self.setProperty("kind", "question")
        self._field: QLineEdit | None = None
        self._too_soon = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(question.text)
        layout = column(words(question.text, wrap=True), margins=(14, 10, 14, 8), gap=8)
        if question.choices:
            self.setAccessibleDescription("The keys 1 to 9 choose an answer, Tab goes to the answers.")
            for line in _side_by_side(question):
                layout.addLayout(row(*(self._choice(choice) for choice in line), None, gap=8))
        elif can_be_typed(question.key):
            layout.addLayout(self._typing())
        else:
            layout.addWidget(
                words(_BY_HAND if _kind(question.key) == "table" else _only_the_vendor(leaving), "quiet", wrap=True)
            )
        layout.addLayout(row(*self._ways(leaving), None, gap=4))
        self.setLayout(layout)

    def begin(self) -> None:
        """Gives it the keys: its field, or the card itself, so that no answer is given before it is read."""
        self._too_soon = True
        QTimer.singleShot(_TOO_SOON_MS, self, self._let_through)
        (self._field or self).setFocus(Qt.FocusReason.TabFocusReason)

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
        place = self.question.choices.index(choice)
        pick = button(f"{_NUMBERS[place]}  {choice.label}" if place < len(_NUMBERS) else choice.label)
        pick.setAccessibleName(choice.label)
        pick.clicked.connect(partial(self._answer, choice.value))
        return pick

    def _typing(self) -> QLayout:
        self._field = typed = QLineEdit()
        typed.setAccessibleName(self.question.text)
        typed.setPlaceholderText(_EXAMPLES.get(_kind(self.question.key), "type the answer"))
        self._wrong = Wrong()
        take = button("Answer")
        take.clicked.connect(lambda: self._answer_typed(typed))
        typed.returnPressed.connect(lambda: self._answer_typed(typed))
        return column(row(typed, take, gap=6), self._wrong.label, gap=4)

    def _answer(self, value: str, _checked: bool = False) -> None:
        self.answered.emit(self.question.key, value)

    def _answer_typed(self, field: QLineEdit) -> None:
        typed = " ".join(field.text().split())
        if not typed:
            return
        value = typed.upper() if _kind(self.question.key) == "currency" else typed
        wrong = objection(self.question.key, value)
        if wrong:
            self._wrong.say(wrong, field)
        else:
            self._answer(value)

    # Qt's own names from here on

    def keyPressEvent(self, event: QKeyEvent) -> None:
        number = _number(event.text())
        if not event.isAutoRepeat() and 1 <= number <= min(len(self.question.choices), len(_NUMBERS)):
            if not self._too_soon:
                self._answer(self.question.choices[number - 1].value)
        else:
            super().keyPressEvent(event)
