"""Questions answered in place: a card each, its choices as buttons, one answer for the whole file."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QLineEdit, QPushButton, QScrollArea, QVBoxLayout, QWidget

from tracker.trade.answers import objection
from tracker.trade.offer import LEAVE_OUT, Choice, Question
from tracker.window.pieces import button, clear, column, row, words
from tracker.window.take_in.answer_words import answer_words, sentence

_FIT_SIDE_BY_SIDE = 76
_TYPED = ("vendor", "currency", "bracket")
_EXAMPLES = {
    "vendor": "the vendor's name",
    "currency": "three letters, such as USD",
    "bracket": "kilograms from:below, such as 5000:18000, or 18000: for more",
}
_ONLY_THE_VENDOR = "The sheet itself can't settle this: leave its lines out, or ask the vendor."


def can_be_typed(key: str) -> bool:
    """Whether any text can answer a question of this key; other questions without choices have no answer here."""
    return key.partition(":")[0] in _TYPED


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
    """One question. `answered` carries its key and the value chosen; `asked_where` a cell it is about; `vendor_asked`
    the key of one that the vendor shall be asked. `leaving`: its lines can be left out here."""

    answered = Signal(str, str)
    asked_where = Signal(str, str)
    vendor_asked = Signal(str)

    def __init__(self, question: Question, parent: QWidget | None = None, *, leaving: bool = True) -> None:
        super().__init__(parent)
        self.question = question
        self.setProperty("kind", "panel")
        layout = column(words(question.text, wrap=True), margins=(14, 10, 14, 8), gap=8)
        if question.choices:
            for line in _side_by_side(question):
                layout.addLayout(row(*(self._choice(choice) for choice in line), None, gap=8))
        elif can_be_typed(question.key):
            layout.addLayout(self._typing())
        else:
            layout.addWidget(words(_ONLY_THE_VENDOR, "quiet", wrap=True))
        layout.addLayout(row(*self._ways(leaving), None, gap=4))
        self.setLayout(layout)

    @property
    def _kind(self) -> str:
        return self.question.key.partition(":")[0]

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
        pick = button(choice.label)
        pick.clicked.connect(partial(self._answer, choice.value))
        return pick

    def _typing(self) -> QVBoxLayout:
        self._field = QLineEdit()
        self._field.setAccessibleName(self.question.text)
        self._field.setPlaceholderText(_EXAMPLES.get(self._kind, "type the answer"))
        take = button("Answer")
        take.clicked.connect(self._answer_typed)
        self._field.returnPressed.connect(self._answer_typed)
        self._wrong = words("", wrap=True)
        self._wrong.hide()
        self._field.textEdited.connect(self._wrong.hide)
        return column(row(self._field, take, gap=6), self._wrong, gap=4)

    def _answer(self, value: str, _checked: bool = False) -> None:
        self.answered.emit(self.question.key, value)

    def _answer_typed(self) -> None:
        """What is not of the question's kind stays in the field, with what is wrong below it."""
        typed = " ".join(self._field.text().split())
        value = typed.upper() if self._kind == "currency" else typed
        wrong = objection(self.question.key, value) if value else None
        self._wrong.setText(wrong or "")
        self._wrong.setVisible(wrong is not None)
        if value and wrong is None:
            self._answer(value)


class QuestionsPane(QScrollArea):
    """All open questions of a file, then what was answered and can be changed."""

    answered = Signal(str, str)
    taken_back = Signal(str)
    asked_where = Signal(str, str)
    vendor_asked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("Questions")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        inside = QWidget()
        self._inside = inside
        self._cards = QVBoxLayout(inside)
        self._cards.setContentsMargins(0, 0, 8, 0)
        self._cards.setSpacing(8)
        self.setWidget(inside)
        self.viewport().setAutoFillBackground(False)
        inside.setAutoFillBackground(False)

    def show_questions(self, questions: Sequence[Question], given: Mapping[str, str], *, vendor: str) -> None:
        """Puts these questions in place of the old ones; `given` are answers of this session by key."""
        clear(self._cards)
        if questions:
            told = f"One answer serves the whole file and is remembered for {(vendor or 'the vendor').rstrip('.')}."
            self._cards.addWidget(words(told, "small", wrap=True))
        for question in questions:
            card = QuestionCard(question)
            card.answered.connect(self.answered)
            card.asked_where.connect(self.asked_where)
            card.vendor_asked.connect(self.vendor_asked)
            self._cards.addWidget(card)
        for key, value in given.items():
            change = button("Ask again", "word")
            change.clicked.connect(partial(self._take_back, key))
            said = words(sentence(answer_words(key, value)), "quiet", wrap=True)
            line = row(said, change, gap=8)
            line.setStretch(0, 1)
            self._cards.addLayout(line)
        self._cards.addStretch(1)

    @property
    def wanted_height(self) -> int:
        """What it takes to show every card."""
        return self._inside.sizeHint().height() + 4

    def _take_back(self, key: str, _checked: bool = False) -> None:
        self.taken_back.emit(key)
