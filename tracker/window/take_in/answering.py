"""What the user says about the file at hand: answers, whose it is, which layout not to use; each can be undone."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from tracker.trade.answer_words import answer_words
from tracker.window.session import Session
from tracker.window.take_in.answers import AnswerGiven, NamelessChosen, StartedOver
from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.understood import Understood
from tracker.window.take_in.vendor_words_dialog import VendorWordsDialog


class Answering(QObject):
    """Carries what is said on the right side to its file, and has it read with that.

    `at_hand` gives the file that is shown, `read_again` has one read with all that was said. `said`: something was, so
    that the keys are to go on to what is asked next; `whose_said`: it was only whose sheet it is.
    """

    said = Signal()
    whose_said = Signal()

    def __init__(
        self,
        session: Session,
        understood: Understood,
        at_hand: Callable[[], FileAtHand | None],
        read_again: Callable[[FileAtHand], None],
    ) -> None:
        super().__init__(understood)
        self._session, self._understood = session, understood
        self._at_hand, self._read_again = at_hand, read_again
        understood.questions.answered.connect(self.answer)
        understood.questions.taken_back.connect(lambda key: self.answer(key, None))
        understood.questions.vendor_asked.connect(self._ask_vendor)
        understood.vendor.named.connect(lambda name: self.answer("vendor", name))
        understood.vendor.left_nameless.connect(lambda: self._choose_nameless(True))
        understood.whose.change_wanted.connect(self._ask_whose)
        understood.layout_refused.connect(self._refuse_layout)

    def answer(self, key: str, value: str | None) -> None:
        """Gives an answer; None has the question asked anew, whatever is remembered."""
        file = self._at_hand()
        if file is None or file.taken is None or (value is not None and file.given.get(key) == value):
            return
        asked = next((each for each in file.found.asked if each.key == key), None)
        served = next((each for each in file.taken.recalled if each.key == key), None)
        if asked is not None or served is not None:
            file.words[key] = asked.words if asked is not None else served.words if served is not None else ""
        before = file.given.get(key) or (served.value if served is not None else "")
        what = answer_words(key, value or before, file.words.get(key, ""))
        said = f"answered that {what}" if value is not None else f"took back that {what}"
        self._session.undo_stack.push(AnswerGiven(file, key, value, lambda: self._go_on(file), said))

    def start_over(self) -> None:
        """Drops all that was said about the file at hand."""
        file = self._at_hand()
        if file is not None and file.begun:
            self._session.undo_stack.push(StartedOver(file, lambda: self._go_on(file)))

    def _go_on(self, file: FileAtHand) -> None:
        """Said, taken back or said again: the keys go on to what is asked then."""
        self.said.emit()
        self._read_again(file)

    def _ask_vendor(self, key: str) -> None:
        file = self._at_hand()
        if file is not None and file.taken is not None:
            asked = [each for each in file.found.asked if each.key == key]
            VendorWordsDialog(file.taken.reading.file, asked, self._understood).open()

    def _ask_whose(self) -> None:
        """Asks for the vendor anew, whatever was said."""
        file = self._at_hand()
        if file is not None and file.may_name_vendor:
            file.vendor_wanted = True
            self._show_whose()
        elif file is not None and file.nameless:
            self._choose_nameless(False)
        else:
            self.answer("vendor", None)

    def _choose_nameless(self, nameless: bool) -> None:
        file = self._at_hand()
        if file is not None:
            self._session.undo_stack.push(NamelessChosen(file, nameless, self._show_whose))

    def _show_whose(self) -> None:
        file = self._at_hand()
        if file is not None:
            self._understood.show_whose(file, self._session.vendors)
        self.whose_said.emit()

    def _refuse_layout(self) -> None:
        file = self._at_hand()
        if file is not None:
            file.unlaid = True
            self._read_again(file)
