"""Questions left by a price sheet, answered where they are listed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QVBoxLayout, QWidget

from tracker.window.look.figures import Units
from tracker.window.pieces import button, column, holder, row, scrolled, words
from tracker.window.take_in.question_card import QuestionCard
from tracker.window.take_in.vendor_words_dialog import VendorWordsDialog
from tracker.window.vendor_naming import VendorNaming

if TYPE_CHECKING:
    from tracker.desk.questions import OpenQuestion

_WIDTH, _TALLEST = 640, 560


class AnswerDialog(QDialog):
    """Shows a file's questions with their choices; Escape leaves open what is not answered.

    `answered` carries a question's id and the value, `set_aside` its id, `cell_wanted` the file's id, sheet
    and cell, `vendor_named` the file's id and the name that a sheet lacks.
    """

    answered = Signal(int, str)
    set_aside = Signal(int)
    cell_wanted = Signal(object, str, str)
    vendor_named = Signal(int, str)

    def __init__(
        self, questions: Sequence[OpenQuestion], vendors: Sequence[str], parent: QWidget, units: Units = Units.US
    ) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Questions left by a price sheet")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._units = units
        self._first = first = questions[0]
        self._whose, self._told = words("", "heading", wrap=True), words("", "small", wrap=True)
        self.naming = VendorNaming()
        self.naming.know(vendors)
        self.naming.named.connect(self._name)
        self.naming.setVisible(first.vendor is None)
        self._show_whose(first.vendor)
        self.cards = {asked.id: self._card(asked) for asked in questions}
        inside = holder(column(*self.cards.values(), None, margins=(0, 0, 8, 0), gap=8))
        scroll = scrolled(inside, sideways=True)
        leave = button("Answer the rest later")
        leave.clicked.connect(self.reject)
        foot = row(self._told, leave, gap=12, grow=0)
        self.setLayout(column(self._whose, self.naming, scroll, foot, margins=18, gap=10, grow=2))
        self.resize(_WIDTH, min(_TALLEST, inside.sizeHint().height() + (112 if first.vendor else 152)))
        next(iter(self.cards.values())).begin()

    def _show_whose(self, vendor: str | None) -> None:
        self._whose.setText(f"{self._first.file}{f', from {vendor}' if vendor else ': whose sheet is this?'}")
        until = "" if vendor else " once it is named"
        self._told.setText(
            f"An answer serves the whole file and is remembered for {(vendor or 'the vendor').rstrip('.')}{until}."
        )

    def _name(self, vendor: str) -> None:
        """Its questions go on being asked: with a name, what is answered is remembered."""
        self.naming.hide()
        self._show_whose(vendor)
        self.vendor_named.emit(self._first.file_id, vendor)

    def _card(self, asked: OpenQuestion) -> QuestionCard:
        card = QuestionCard(asked.question, leaving=False, units=self._units)
        card.answered.connect(lambda _key, value: self._answer(asked.id, value))
        card.asked_where.connect(lambda sheet, cell: self._show(asked.file_id, sheet, cell))
        card.vendor_asked.connect(lambda _key: VendorWordsDialog(asked.file, [asked.question], self).open())
        aside = button("Stop asking this", "word")
        aside.setToolTip("It is asked no more; its lines stay unused")
        aside.clicked.connect(lambda: self._set_aside(asked.id))
        layout = card.layout()
        if isinstance(layout, QVBoxLayout):
            layout.addLayout(row(aside, None))
        return card

    def _set_aside(self, question: int) -> None:
        self.set_aside.emit(question)
        self._done_with(question)

    def _answer(self, question: int, value: str) -> None:
        self.answered.emit(question, value)
        self._done_with(question)

    def _done_with(self, question: int) -> None:
        self.cards[question].hide()
        if all(card.isHidden() for card in self.cards.values()):
            self.accept()

    def _show(self, file: int, sheet: str, cell: str) -> None:
        self.reject()
        self.cell_wanted.emit(file, sheet, cell)
