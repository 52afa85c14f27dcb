"""What was answered of a file, then all open questions below each other, the next one in view and in focus."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QFrame, QHBoxLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from tracker.desk.open_dates import DATE_ORDER
from tracker.trade.answer_words import answer_words, sentence
from tracker.trade.offer import Question
from tracker.window.look.figures import Units
from tracker.window.pieces import button, clear, follow_by_tab, row, words
from tracker.window.take_in.question_card import QuestionCard

if TYPE_CHECKING:
    from tracker.desk.known_answers import Recalled

_ABOVE = 8


class QuestionsPane(QScrollArea):
    """What was answered and can be changed, then all open questions of a file; last what earlier answers settled."""

    answered = Signal(str, str)
    taken_back = Signal(str)
    asked_where = Signal(str, str)
    vendor_asked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("Questions")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        # Tab goes to what is in it.
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._asked: list[QuestionCard] = []
        self._changes: list[QPushButton] = []
        self._above: list[QPushButton] = []
        self._answered_at = 0
        self._units = Units.US
        inside = QWidget()
        self._inside = inside
        self._cards = QVBoxLayout(inside)
        self._cards.setContentsMargins(0, 0, 8, 0)
        self._cards.setSpacing(8)
        self.setWidget(inside)
        self.viewport().setAutoFillBackground(False)
        inside.setAutoFillBackground(False)

    def show_questions(
        self,
        questions: Sequence[Question],
        given: Mapping[str, str],
        recalled: Sequence[Recalled] = (),
        *,
        vendor: str,
        said: Mapping[str, str],
        units: Units = Units.US,
    ) -> None:
        """Puts these questions in place of the old ones; `given` are answers of this session by key, `said` the
        sheet's own words that each of them answered, `recalled` what was remembered and served."""
        at = self.verticalScrollBar().value()
        focused = QApplication.focusWidget()
        if focused is not None and self.isAncestorOf(focused):
            # Else Qt hands the focus of each card that goes to the next one, and scrolls after it to the very end.
            self.setFocus()
        clear(self._cards)
        self._units = units
        self._changes = []
        whose = (vendor or "the vendor").rstrip(".")
        self._asked = [self._card(question) for question in questions]
        if questions:
            told = f"One answer serves the whole file and is remembered for {whose}."
            self._cards.addWidget(words(told, "small", wrap=True))
        # Above the questions still open: below a dozen cards nobody would find what to change again.
        for key, value in given.items():
            self._cards.addLayout(self._answer_given(key, value, said.get(key, "")))
        self._above = list(self._changes)
        for card in self._asked:
            self._cards.addWidget(card)
        if recalled:
            self._cards.addWidget(words(f"Settled by what you answered about earlier sheets of {whose}:", "small"))
        for served in recalled:
            self._cards.addLayout(self._answer_given(served.key, served.value, served.words))
        self._cards.addStretch(1)
        follow_by_tab(self, *self._stops())
        self.verticalScrollBar().setValue(at)

    def go_to_open(self) -> bool:
        """The keys to the card of the question that follows the one answered last; False where none is open."""
        if not self._asked:
            return False
        card = self._asked[self._answered_at if self._answered_at < len(self._asked) else 0]
        card.begin()
        if card.question.cells:
            self.asked_where.emit(*card.question.cells[0])
        # Only once the new cards have been laid out is it known where they stand.
        QTimer.singleShot(0, card, partial(self._bring_in_view, card))
        return True

    @property
    def wanted_height(self) -> int:
        """What it takes to show every card."""
        return self._inside.sizeHint().height() + 4

    def _stops(self) -> list[QWidget]:
        """Where Tab stops, from top to bottom."""
        of_cards = [part for card in self._asked for part in (card, *card.findChildren(QWidget)) if _is_stop(part)]
        return [*self._above, *of_cards, *self._changes[len(self._above) :]]

    def _card(self, question: Question) -> QuestionCard:
        # No line waits for the order of day and month.
        card = QuestionCard(question, leaving=question.key != DATE_ORDER, units=self._units)
        card.answered.connect(self._answer)
        card.asked_where.connect(self.asked_where)
        card.vendor_asked.connect(self.vendor_asked)
        return card

    def _answer_given(self, key: str, value: str, said: str) -> QHBoxLayout:
        change = button("Change", "word")
        answer = sentence(answer_words(key, value, said))
        change.setAccessibleName(f"Change: {answer}")
        change.clicked.connect(partial(self._take_back, key))
        self._changes.append(change)
        line = row(words(answer, "quiet", wrap=True), change, gap=8)
        line.setStretch(0, 1)
        return line

    def _answer(self, key: str, value: str) -> None:
        self._answered_at = next((at for at, card in enumerate(self._asked) if card.question.key == key), 0)
        self.answered.emit(key, value)

    def _take_back(self, key: str, _checked: bool = False) -> None:
        self._answered_at = 0
        self.taken_back.emit(key)

    def _bring_in_view(self, card: QuestionCard) -> None:
        """The whole card where it fits, else its top: the question is read before its choices."""
        self._inside.adjustSize()
        bar = self.verticalScrollBar()
        top, bottom = card.y() - _ABOVE, card.y() + card.height() + _ABOVE
        if bottom > bar.value() + self.viewport().height():
            bar.setValue(min(top, bottom - self.viewport().height()))
        if top < bar.value() or card.height() > self.viewport().height():
            bar.setValue(top)


def _is_stop(part: QWidget) -> bool:
    return bool(part.focusPolicy() & Qt.FocusPolicy.TabFocus)
