"""The words of a chase in each language, changed by the user, with what a message then says beside them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QFormLayout, QLineEdit, QPlainTextEdit, QWidget

from tracker.window.errors import sentence_for
from tracker.window.pieces import button, column, row, words
from tracker.window.samples.contact_fields import languages
from tracker.window.session import Session
from tracker.window.work import while_there

if TYPE_CHECKING:
    from tracker.desk.chase_templates import ChaseTemplate

_LINES = {
    "subject": "Subject",
    "greeting": "Greeting",
    "greeting_named": "Greeting by name",
    "line": "A sample",
    "promised": "Where promised",
    "needed": "Where needed",
    "late": "Where overdue",
    "day": "A date",
    "sheets": "Sheet/sheets",
}
_FIELDS = (
    "What begins with $ is filled in: $count samples; $contact; $greeting, $list and $buyer in the message; $number, "
    "$board, $requested, $promised, $needed, $days. A date: %d day, %m month, %Y year."
)


class ChaseWords(QDialog):
    """`kept`: the words were changed. They are the user's own files, the shipped ones are never touched."""

    kept = Signal()

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Words of chases")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._session = session
        self.language = languages()
        self.lines = {name: QLineEdit() for name in _LINES}
        self.body, self.example = QPlainTextEdit(), QPlainTextEdit()
        self.body.setAccessibleName("Message")
        self.body.setTabChangesFocus(True)
        self.example.setAccessibleName("What a message then says")
        self.example.setTabChangesFocus(True)
        self.example.setReadOnly(True)
        self.keep_words, back, leave = (
            button("Keep these words", "main"),
            button("Back to the original", "word"),
            button("Cancel"),
        )
        self.keep_words.clicked.connect(self.keep)
        back.clicked.connect(self.put_back)
        leave.clicked.connect(self.reject)
        self.back = back
        self._lay_out(leave)
        for made in self.lines.values():
            made.textEdited.connect(lambda _: self._show_example())
        self.body.textChanged.connect(self._show_example)
        self.language.currentIndexChanged.connect(lambda _: self._ask())
        self._ask()

    def keep(self) -> None:
        """Keeps the words for this language; a refusal is said here, and what was typed stays."""
        session, language, typed = self._session, self._language(), self.typed()
        session.work.ask(
            lambda: session.door.keep_chase_words(language, typed),
            while_there(self, lambda _: self._was_kept()),
            while_there(self, lambda error: self.example.setPlainText(sentence_for(error))),
        )

    def put_back(self) -> None:
        """Shows the shipped words; they count once they are kept."""
        language = self._language()
        door = self._session.door
        self._session.work.ask(lambda: door.original_chase_words(language), while_there(self, self._show))

    def typed(self) -> ChaseTemplate:
        """The words as they stand there."""
        from tracker.desk.chase_templates import ChaseTemplate

        return ChaseTemplate(
            body=self.body.toPlainText(), **{name: made.text() for name, made in self.lines.items()}
        )  # fmt: skip

    def _language(self) -> str:
        return str(self.language.currentData())

    def _lay_out(self, leave: QWidget) -> None:
        form = QFormLayout()
        form.setVerticalSpacing(6)
        for name, title in _LINES.items():
            self.lines[name].setAccessibleName(title)
            form.addRow(words(title, "rail"), self.lines[name])
        left = column(row(self.language, None), form, words("Message", "rail"), self.body, gap=8, grow=3)
        right = column(words("What a message then says", "rail"), self.example, gap=8, grow=1)
        both = row(left, right, gap=18)
        both.setStretch(0, 1)
        both.setStretch(1, 1)
        self.setLayout(
            column(
                words("Words of chases", "heading"), both, words(_FIELDS, "small", wrap=True),
                row(self.back, None, leave, self.keep_words, gap=8), margins=18, gap=10, grow=1,
            )
        )  # fmt: skip
        self.resize(860, 620)

    def _ask(self) -> None:
        door, language = self._session.door, self._language()
        self._session.work.ask(
            lambda: door.chase_words(language),
            while_there(self, self._show),
            while_there(self, lambda error: self._broken(sentence_for(error))),
        )

    def _broken(self, why: str) -> None:
        """A file that was changed by hand and can't be read: the shipped words stand there instead."""
        self._session.troubled.emit(why)
        self.put_back()

    def _show(self, template: ChaseTemplate) -> None:
        for name, made in self.lines.items():
            made.setText(getattr(template, name))
            made.setCursorPosition(0)
        self.body.setPlainText(template.body)
        self._show_example()

    def _show_example(self) -> None:
        from tracker.desk.chase_templates import example
        from tracker.desk.trouble import Trouble

        try:
            self.example.setPlainText(example(self.typed()))
        except Trouble as trouble:
            self.example.setPlainText(str(trouble))

    def _was_kept(self) -> None:
        self.accept()
        self.kept.emit()
