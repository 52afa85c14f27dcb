"""What was settled about vendors' sheets and is used again: each answer and layout, by whom and when; forgettable."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QFrame, QLayout, QMenu, QPushButton, QVBoxLayout, QWidget

from tracker.trade.answer_words import answer_words, other_answers, sentence
from tracker.window.currency_dialog import CurrencyDialog
from tracker.window.look.figures import counted, date_text
from tracker.window.pieces import button, clear, column, holder, row, scrolled, words

if TYPE_CHECKING:
    from tracker.desk.layouts import KeptLayout
    from tracker.desk.questions import Remembered

_NOTHING = (
    "Nothing is remembered yet. What you answer about a vendor's sheet, and a table you mark by hand, is used for "
    "that vendor's next sheets and stands here."
)


class RememberedPanel(QFrame):
    """Answers and layouts by vendor. `forget_answer` and `forget_layout` carry the id of what is no longer wanted,
    `change_answer` that of an answer and what it is to be."""

    forget_answer = Signal(int)
    change_answer = Signal(int, str)
    forget_layout = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self.setAccessibleName("What is remembered of vendors' sheets")
        self._answers: tuple[Remembered, ...] = ()
        self._layouts: tuple[KeptLayout, ...] = ()
        self._vendor = ""
        self._ways: list[QPushButton] = []
        self._owed = -1
        self._title = words("Remembered", "heading", wrap=True)
        self.everyone = button("All vendors", "word")
        self.everyone.clicked.connect(lambda: self.show_vendor(""))
        self._list = QVBoxLayout()
        self._list.setSpacing(4)
        scroll = scrolled(holder(column(self._list, None, margins=(16, 0, 10, 10))))
        heading = row(self._title, self.everyone, margins=(16, 8, 10, 4), gap=8, grow=0)
        self.setLayout(column(heading, scroll, margins=(1, 1, 1, 1), grow=1))
        self._show()

    def show_remembered(self, answers: Sequence[Remembered], layouts: Sequence[KeptLayout]) -> None:
        """Shows all that is remembered now."""
        self._answers, self._layouts = tuple(answers), tuple(layouts)
        self._show()

    def show_vendor(self, vendor: str) -> None:
        """Shows what is remembered of one vendor; '' of all."""
        self._vendor = vendor
        self._show()

    def _show(self) -> None:
        focused = self.window().focusWidget()
        self._owed = next((place for place, way in enumerate(self._ways) if way is focused), self._owed)
        self._ways.clear()
        clear(self._list)
        self._title.setText(f"Remembered for {self._vendor.rstrip('.')}" if self._vendor else "Remembered")
        self.everyone.setVisible(bool(self._vendor))
        vendors = {answer.vendor for answer in self._answers} | {kept.vendor for kept in self._layouts}
        shown = [name for name in sorted(vendors, key=str.casefold) if self._vendor in ("", name)]
        if not shown:
            nothing = "Nothing is remembered for this vendor." if self._vendor and vendors else _NOTHING
            self._list.addWidget(words(nothing, "quiet", wrap=True))
        for name in shown:
            if not self._vendor:
                self._list.addWidget(words(name, "strong"))
            for answer in self._answers:
                if answer.vendor == name:
                    self._list.addLayout(self._answer(answer))
            for kept in self._layouts:
                if kept.vendor == name:
                    self._list.addLayout(self._layout(kept))
        if not self._ways:
            self._owed = -1
        elif self._owed >= 0:
            again = self._ways[min(self._owed, len(self._ways) - 1)]
            QTimer.singleShot(0, again, partial(self._give_keys_to, again))

    def _give_keys_to(self, way: QPushButton) -> None:
        """Once it is there to be seen; else the keys would be anywhere after the list was written anew."""
        self._owed = -1
        way.setFocus()

    def _answer(self, answer: Remembered) -> QLayout:
        said = sentence(answer_words(answer.key, answer.value, answer.words))
        # The sheet's words that the sentence has already are not told twice.
        stood = f"“{answer.words}” stood in the sheet. " if answer.words and "“" not in said else ""
        when = date_text(answer.said_at.astimezone().date())
        told = f"{stood}Answered by {answer.said_by} on {when}."
        return self._entry(said, told, partial(self._forget, answer.id), self._other(answer, said))

    def _other(self, answer: Remembered, said: str) -> QPushButton | None:
        """Opens what else could be answered; None where that is not for a list."""
        others = other_answers(answer.key, answer.value)
        if not others:
            return None
        change = button("Change…", "word")
        change.setToolTip("Says it anew; the offers that were stored by it follow")
        change.setAccessibleName(f"Change: {said}")
        choices = QMenu(change)
        for other in others:
            choices.addAction(other.label, partial(self.change_answer.emit, answer.id, other.value))
        if answer.key.partition(":")[0] == "currency":
            choices.addSeparator()
            choices.addAction("Another…", partial(self._ask_currency, answer.id))
        change.clicked.connect(lambda: choices.popup(change.mapToGlobal(change.rect().bottomLeft())))
        return change

    def _ask_currency(self, answer: int) -> None:
        dialog = CurrencyDialog(self)
        dialog.chosen.connect(partial(self.change_answer.emit, answer))
        dialog.open()

    def _layout(self, kept: KeptLayout) -> QLayout:
        layout = kept.layout
        columns = counted(len(layout.columns), "column")
        said = f"The table under “{kept.name}” is read as it was marked by hand: {columns}."
        if not layout.serves_others:
            said = f"The marks of a sheet without a header row are offered for the next one: {columns}."
        told = f"Marked by {kept.made_by} on {date_text(layout.marked_on or kept.made_at.astimezone().date())}."
        return self._entry(said, told, partial(self._forget_layout, kept.id))

    def _entry(self, said: str, told: str, forget: object, change: QPushButton | None = None) -> QLayout:
        gone = button("Forget", "word")
        gone.setToolTip("Its next sheets are asked about again; what is stored stays as it is")
        gone.setAccessibleName(f"Forget: {said}")
        gone.clicked.connect(forget)
        both = column(words(said, wrap=True, selectable=True), words(told, "small", wrap=True))
        own = [each for each in (change, gone) if each is not None]
        self._ways += own
        ways = column(row(*own, gap=4), None)
        return row(both, ways, gap=8, grow=0)

    def _forget(self, answer: int, _checked: bool = False) -> None:
        self.forget_answer.emit(answer)

    def _forget_layout(self, layout: int, _checked: bool = False) -> None:
        self.forget_layout.emit(layout)
