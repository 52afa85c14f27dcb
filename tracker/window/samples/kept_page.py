"""What is kept with a sample: which board it is, the verdict, photographs and data sheets, whom to write to."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QFileDialog, QWidget

from tracker.window.field_steps import empty
from tracker.window.pieces import button, column, hairline, holder, row, scrolled, words
from tracker.window.samples.contact_fields import ContactFields
from tracker.window.samples.fields import Wrong, field, labelled
from tracker.window.samples.kept_files import KeptFiles
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.sample_checks import SampleChecked
    from tracker.desk.samples import Sample

_FILES = "Photographs and data sheets (*.jpg *.jpeg *.png *.heic *.pdf *.xlsx *.txt);;All files (*)"


@dataclass(frozen=True, slots=True)
class Decision:
    """A verdict as typed: approved for, or rejected because of, these words."""

    number: int
    approved: bool
    words: str


class KeptPage(QWidget):
    """`decided` carries a Decision, `board_named` number and name, `files_wanted` number and paths, `file_off` number
    and name, `contact_set` vendor, name, mail and language."""

    decided = Signal(object)
    board_named = Signal(object, str)
    files_wanted = Signal(object, object)
    file_off = Signal(object, str)
    file_saved = Signal(object, str)
    contact_set = Signal(str, str, str, str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._sample: Sample | None = None
        self._tickets: list[int] = []
        self.setAcceptDrops(True)
        self.board = field("Vendor's name for the board", "as its price sheet writes it", self._name_board)
        self.approved_for = field("Approved for", "", self._enter_approval)
        self.rejected_because = field("Rejected because", "cracks on folding, say", self.reject)
        self._verdict = words("", wrap=True)
        self._wrong = Wrong()
        approve, reject = button("Approve"), button("Reject")
        self._approve_button = approve
        approve.clicked.connect(self.approve)
        reject.clicked.connect(self.reject)
        self.files = KeptFiles(session)
        self.files.taken_off.connect(self.file_off)
        self.files.saved.connect(self.file_saved)
        add = button("Add photographs or data sheets…", "word")
        add.setToolTip("or drop them here")
        add.clicked.connect(self._choose_files)
        self.contact = ContactFields(self._set_contact)
        keep = button("Keep the contact")
        keep.clicked.connect(self._set_contact)
        inside = holder(
            column(
                words("Verdict", "strong"), self._verdict, labelled(self.board),
                labelled(self.approved_for, approve), labelled(self.rejected_because, reject), self._wrong.label,
                6, hairline(), words("Files", "strong"), self.files, row(add, None),
                6, hairline(), words("Whom to write to at this vendor", "strong"), labelled(self.contact.name),
                labelled(self.contact.mail), row(self.contact.language, keep, None, gap=8), None,
                margins=(0, 4, 8, 4), gap=7,
            )
        )  # fmt: skip
        self.setLayout(column(scrolled(inside), grow=0))

    def show_sample(self, sample: Sample) -> None:
        """Shows what is kept with one sample."""
        if self._sample is None or sample.number != self._sample.number:
            self.clear_verdict()
            self._wrong.clear()
        self._sample = sample
        self.board.setText(sample.board)
        self.approved_for.setPlaceholderText(sample.for_what or "which carton")
        verdict = sample.verdict
        self._verdict.setText(f"{verdict[:1].upper()}{verdict[1:]} ({sample.verdict_by})." if verdict else "None yet.")
        for ticket in self._tickets:
            self._session.work.drop(ticket)
        door, number, vendor = self._session.door, sample.number, sample.vendor
        ask = self._session.work.ask
        self._tickets = [
            ask(lambda: door.attachments(number), self.files.show_files),
            ask(lambda: door.contact(vendor), self.contact.show_contact),
            ask(lambda: door.check_sample(number), self._show_board),
        ]

    def start(self) -> None:
        """Puts the cursor where the verdict's words go."""
        self.approved_for.setFocus()

    def approve(self) -> None:
        self._decide(True, self.approved_for.text())

    def reject(self) -> None:
        self._decide(False, self.rejected_because.text())

    def clear_verdict(self) -> None:
        """The verdict was kept, or is another sample's, so its words go."""
        empty(self.approved_for, self.rejected_because)

    def refuse(self, why: str) -> None:
        """Says why nothing was decided or kept."""
        self._wrong.say(why)

    def _enter_approval(self) -> None:
        """Enter on the empty field goes to the button: V and a stray Enter must approve nothing."""
        if self.approved_for.text().strip():
            self.approve()
        else:
            self._approve_button.setFocus()

    def _decide(self, approved: bool, typed: str) -> None:
        if self._sample is not None:
            self._wrong.clear()
            self.decided.emit(Decision(self._sample.number, approved, typed.strip()))

    def _name_board(self) -> None:
        if self._sample is not None:
            self.board_named.emit(self._sample.number, self.board.text().strip())

    def _files_on(self, event: QDragEnterEvent | QDropEvent) -> list[Path]:
        return [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]

    def _choose_files(self) -> None:
        names, _ = QFileDialog.getOpenFileNames(self, "Keep with the sample", "", _FILES)
        if names and self._sample is not None:
            self.files_wanted.emit(self._sample.number, [Path(name) for name in names])

    def _set_contact(self) -> None:
        if self._sample is not None:
            self.contact_set.emit(self._sample.vendor, *self.contact.typed())

    def _show_board(self, checked: SampleChecked) -> None:
        """The board that the price sheets leave no doubt about, as an example of what may be written."""
        self.board.setPlaceholderText(checked.board or "as its price sheet writes it")
        self.board.setToolTip(checked.why_not or "Enter keeps it")

    # Qt's own names from here on

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if self._files_on(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """What is dropped here is kept with the sample; dropped elsewhere it is read as a price sheet."""
        event.acceptProposedAction()
        if self._sample is not None:
            self.files_wanted.emit(self._sample.number, self._files_on(event))
