"""Whom to write to at a vendor: a name, an address, a language; beside a sample, or asked for by a chase."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QDialog, QWidget
from shiboken6 import isValid

from tracker.window.errors import sentence_for
from tracker.window.pieces import button, column, row, words
from tracker.window.samples.fields import Wrong, field, labelled
from tracker.window.session import Session
from tracker.window.undo import push
from tracker.window.work import while_there

if TYPE_CHECKING:
    from tracker.desk.contacts import Contact
    from tracker.desk.edits import Edit

LANGUAGES = (("English", "en"), ("German", "de"), ("French", "fr"), ("Spanish", "es"))


class ContactFields:
    """The three fields; Enter in one of them does what the form does."""

    def __init__(self, entered: Callable[[], None]) -> None:
        self.name = field("Contact", "name", entered)
        self.mail = field("Mail", "name@vendor.example", entered)
        self.language = languages()

    def show_contact(self, contact: Contact) -> None:
        """Shows what is kept."""
        self.name.setText(contact.name)
        self.mail.setText(contact.mail)
        self.language.setCurrentIndex(max(0, self.language.findData(contact.language)))

    def typed(self) -> tuple[str, str, str]:
        """Name, mail and language as they stand there."""
        return self.name.text(), self.mail.text(), str(self.language.currentData())


class ContactDialog(QDialog):
    """The contact of one of these vendors, asked for where a message needs it. `kept`: one was written down."""

    kept = Signal()

    def __init__(self, session: Session, vendors: Sequence[str], parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("window")
        self.setWindowTitle("Whom to write to")
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._session = session
        self.vendor = QComboBox()
        self.vendor.setAccessibleName("Vendor")
        self.vendor.addItems(list(vendors))
        self.vendor.setEnabled(len(vendors) > 1)
        self.fields = ContactFields(self.keep)
        self._wrong = Wrong()
        keep, leave = button("Keep the contact", "main"), button("Cancel")
        keep.clicked.connect(self.keep)
        leave.clicked.connect(self.reject)
        self.setLayout(
            column(
                words("Whom to write to", "heading"), self.vendor, labelled(self.fields.name),
                labelled(self.fields.mail), row(words("Messages in"), self.fields.language, None, gap=8),
                self._wrong.label, row(None, leave, keep, gap=8), margins=18, gap=10,
            )
        )  # fmt: skip
        self.resize(420, self.sizeHint().height())
        self.vendor.currentTextChanged.connect(lambda _: self._ask())
        self._ask()
        self.fields.mail.setFocus()

    def keep(self) -> None:
        """Writes the contact down; a refusal is said here, and what was typed stays."""
        session, vendor = self._session, self.vendor.currentText()
        name, mail, language = self.fields.typed()
        session.work.ask(
            lambda: session.door.set_contact(vendor, name, mail, language),
            self._was_kept,
            while_there(self, lambda error: self._wrong.say(sentence_for(error), self.fields.mail)),
        )

    def _was_kept(self, edit: Edit) -> None:
        push(self._session, edit, self._session.reload_samples)
        if isValid(self):
            self.accept()
            self.kept.emit()

    def _ask(self) -> None:
        vendor = self.vendor.currentText()
        door = self._session.door
        self._session.work.ask(lambda: door.contact(vendor), while_there(self, self.fields.show_contact))


def languages() -> QComboBox:
    """The languages that messages are written in."""
    made = QComboBox()
    made.setAccessibleName("Language of messages")
    for title, code in LANGUAGES:
        made.addItem(title, code)
    return made
