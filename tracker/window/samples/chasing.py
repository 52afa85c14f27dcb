"""From "who owes me samples" to a draft in the user's mail program, and to the record that it was sent."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.window.look.figures import counted
from tracker.window.samples.chase_dialogs import ChaseText, with_signature
from tracker.window.samples.chase_words import ChaseWords
from tracker.window.samples.contact_fields import ContactDialog
from tracker.window.session import Session
from tracker.window.undo import push

if TYPE_CHECKING:
    from tracker.desk.chasing import ChaseMessage, Drafted


_NOBODY = "Nobody is due for a chase today."


class Chasing(QObject):
    """`written` says what was drafted and where; `open_wanted` carries a draft for the user's mail program.

    A draft records nothing: a sample counts as chased once the person says that its message was sent.
    """

    written = Signal(str)
    open_wanted = Signal(object)

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self._session = session
        self._parent = parent

    def draft_to(self, vendor: str) -> None:
        """One message to one vendor, drafted at once."""
        with_signature(self._session, self._parent, lambda: self._draft_to(vendor))

    def draft_due(self) -> None:
        """One message to each vendor that is due; what they say is shown before a folder is asked for."""
        self._session.work.ask(self._session.door.due_for_chase, self._draft_to_all)

    def _draft_to(self, vendor: str) -> None:
        door = self._session.door
        self._session.work.ask(lambda: door.draft_chase(vendor, drafts_folder()), self._was_drafted)

    def _was_drafted(self, drafted: Drafted) -> None:
        listed = counted(len(drafted.message.numbers), "sample")
        self.written.emit(f"A draft that lists {listed} is in {drafted.path}. Nothing was sent.")
        self.open_wanted.emit(drafted.path)
        self._ask_whether_sent((drafted,))

    def _draft_to_all(self, vendors: tuple[str, ...]) -> None:
        if vendors:
            with_signature(self._session, self._parent, self._preview)
        else:
            self.written.emit(_NOBODY)

    def _preview(self) -> None:
        self._session.work.ask(self._session.door.preview_chases, self._show_before)

    def _show_before(self, messages: tuple[ChaseMessage, ...]) -> None:
        about = (
            f"{counted(len(messages), 'message')}, one a vendor. Nothing is sent: your mail program opens the drafts."
        )
        dialog = ChaseText(
            "Draft chases", about, messages, "Write the drafts to a folder…", "Cancel", self._parent
        )  # fmt: skip
        self._connect(dialog, [message.vendor for message in _unaddressed_first(messages)], self._preview)
        dialog.accepted.connect(self._write_all)
        dialog.open()

    def _write_all(self) -> None:
        folder = QFileDialog.getExistingDirectory(self._parent, "Folder for the drafts")
        if folder:
            self._session.work.ask(lambda: self._session.door.draft_chases(Path(folder)), self._were_drafted)

    def _were_drafted(self, drafts: tuple[Drafted, ...]) -> None:
        if not drafts:
            # What was due when the messages were shown has been settled since, by a colleague say.
            self.written.emit(_NOBODY)
            return
        folder = drafts[0].path.parent
        self.written.emit(
            f"{counted(len(drafts), 'draft')} in {folder}: open them with your mail program. Nothing was sent."
        )
        self._ask_whether_sent(drafts)

    def _ask_whether_sent(self, drafts: Sequence[Drafted]) -> None:
        messages = [draft.message for draft in drafts]
        numbers = tuple(number for message in messages for number in message.numbers)
        about = (
            f"{counted(len(drafts), 'draft')} made, nothing was sent. Say so here once it is sent, or press C on a "
            "sample later."
        )
        dialog = ChaseText(
            "Draft made" if len(drafts) == 1 else "Drafts made", about, messages,
            f"Sent: mark {counted(len(numbers), 'sample')} as chased", "Not sent yet", self._parent,
        )  # fmt: skip
        if len(drafts) == 1:
            vendor = messages[0].vendor
            self._connect(dialog, [vendor], lambda: self._draft_to(vendor))
        else:
            dialog.contact.hide()
            dialog.words.hide()
        dialog.accepted.connect(lambda: self._mark(numbers))
        dialog.open()

    def _mark(self, numbers: Sequence[int]) -> None:
        session = self._session
        session.work.ask(
            lambda: session.door.mark_chased(numbers), lambda edit: push(session, edit, session.reload_samples)
        )

    def _connect(self, dialog: ChaseText, vendors: Sequence[str], again: Callable[[], None]) -> None:
        """Address and words are changed from where they are read; the messages are then made anew."""

        def made_anew() -> None:
            dialog.close()
            again()

        def change_contact() -> None:
            asked = ContactDialog(self._session, vendors, dialog)
            asked.kept.connect(made_anew)
            asked.open()

        def change_words() -> None:
            asked = ChaseWords(self._session, dialog)
            asked.kept.connect(made_anew)
            asked.open()

        dialog.contact_wanted.connect(change_contact)
        dialog.words_wanted.connect(change_words)


def _unaddressed_first(messages: Sequence[ChaseMessage]) -> list[ChaseMessage]:
    return sorted(messages, key=lambda message: bool(message.to))


def drafts_folder() -> Path:
    """Where drafts go when one key makes them: a folder of its own among the user's documents."""
    from platformdirs import user_documents_path

    return user_documents_path() / "Paperboard chases"
