"""A question left by an import, answered where it is listed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QWidget

from tracker.window.pieces import button, column, row, words
from tracker.window.take_in.questions_pane import QuestionCard

if TYPE_CHECKING:
    from tracker.desk.questions import OpenQuestion


class AnswerDialog(QDialog):
    """Shows the question with its choices. `answered` carries the value; Escape leaves it open."""

    answered = Signal(str)

    def __init__(self, asked: OpenQuestion, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("A question left by a price sheet")
        self.setMinimumWidth(480)
        self.card = QuestionCard(asked.question)
        self.card.answered.connect(self._answer)
        self.card.asked_where.connect(lambda *_: None)
        whose = f"{asked.file}{f', from {asked.vendor}' if asked.vendor else ''}"
        leave = button("Leave it open")
        leave.clicked.connect(self.reject)
        told = words(
            f"The answer is remembered for {asked.vendor or 'the vendor'} and serves the whole file.",
            "small",
            wrap=True,
        )
        self.setLayout(column(words(whose, "quiet"), self.card, told, row(None, leave), margins=18, gap=10))

    def _answer(self, _key: str, value: str) -> None:
        self.answered.emit(value)
        self.accept()
