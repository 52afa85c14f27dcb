"""What a chase says, shown before it is written or while it waits to be sent; and who signs it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QInputDialog, QPlainTextEdit, QWidget

from tracker.window.pieces import button, column, row, words
from tracker.window.session import Session
from tracker.window.undo import push

if TYPE_CHECKING:
    from tracker.desk.chasing import ChaseMessage
    from tracker.desk.edits import Edit

_BETWEEN = f"\n\n{'—' * 24}\n\n"


class ChaseText(QDialog):
    """Messages as they stand in the drafts, and one thing to do about them; Enter and Escape leave them be.

    `contact_wanted`: the address is to be written down; `words_wanted`: the words are to be changed.
    """

    contact_wanted = Signal()
    words_wanted = Signal()

    def __init__(
        self, title: str, about: str, messages: Sequence[ChaseMessage], yes: str, no: str, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.text = QPlainTextEdit(_BETWEEN.join(message.text for message in messages))
        self.text.setReadOnly(True)
        self.text.setAccessibleName("What the message says")
        self.text.setTabChangesFocus(True)
        self.yes, self.no = button(yes, "main"), button(no)
        self.yes.clicked.connect(self.accept)
        self.no.clicked.connect(self.reject)
        self.contact, self.words = button("Whom to write to…", "word"), button("Change the words…", "word")
        self.contact.clicked.connect(self.contact_wanted)
        self.words.clicked.connect(self.words_wanted)
        self.hint = words(_hint(messages), "small", wrap=True)
        self.hint.setVisible(bool(self.hint.text()))
        self.setLayout(
            column(
                words(title, "heading"), words(about, wrap=True), self.text, self.hint,
                row(self.contact, self.words, None, self.no, self.yes, gap=8), margins=18, gap=10, grow=2,
            )
        )  # fmt: skip
        # Enter on opening must not record what did not happen.
        self.no.setDefault(True)
        self.no.setFocus()
        self.resize(680, 480)


def _hint(messages: Sequence[ChaseMessage]) -> str:
    unknown = [message.vendor for message in messages if not message.to]
    if not unknown:
        return ""
    return (
        f"No address is known of {', '.join(unknown)}, so To stays empty: write it down once with “Whom to write to…”, "
        "or each time in your mail program."
    )


def with_signature(session: Session, parent: QWidget, then: Callable[[], None]) -> None:
    """Goes on once there is a name to sign with; it is asked for the first time and kept."""

    def kept(edit: Edit) -> None:
        push(session, edit, lambda: None)
        then()

    def known(name: str) -> None:
        if name:
            then()
            return
        dialog = QInputDialog(parent)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle("Who signs?")
        dialog.setLabelText("Messages to vendors are signed with this name (asked once):")
        dialog.textValueSelected.connect(lambda typed: session.work.ask(lambda: session.door.sign_as(typed), kept))
        dialog.open()

    session.work.ask(session.door.signature, known)
