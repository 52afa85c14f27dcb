"""The Samples place: the line to ask for samples, who owes what, one request beside it, and the edits they lead to."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSplitter, QWidget

from tracker.desk.trouble import Trouble
from tracker.window.errors import sentence_for
from tracker.window.look.figures import counted
from tracker.window.pieces import column
from tracker.window.samples.chasing import Chasing
from tracker.window.samples.kept_page import Decision
from tracker.window.samples.life_page import KEYS, Happening
from tracker.window.samples.listing import SampleListing
from tracker.window.samples.log_form import LogForm
from tracker.window.samples.measured_page import ClaimTyped, ReadingsTyped
from tracker.window.samples.record_panel import RecordPanel
from tracker.window.session import Session
from tracker.window.undo import push
from tracker.window.where_to import where_to

if TYPE_CHECKING:
    from tracker.desk.edits import Edit
    from tracker.desk.sample_requests import Enquiry, LoggedAll
    from tracker.desk.samples import Sample

Refuse = Callable[[str], None]


class SamplesPlace(QWidget):
    """Every request, the most overdue on top.

    `written` says what was written and where; `open_wanted` carries a file for the desktop's own program.
    """

    written = Signal(str)
    open_wanted = Signal(object)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._chosen = -1
        self.form = LogForm()
        self.listing = SampleListing(session)
        self.model, self.table = self.listing.model, self.listing.table
        self.record = RecordPanel(session)
        self.chasing = Chasing(session, self)
        both = QSplitter(Qt.Orientation.Horizontal)
        both.addWidget(self.listing)
        both.addWidget(self.record)
        both.setHandleWidth(16)
        both.setChildrenCollapsible(False)
        both.setStretchFactor(0, 1)
        both.setStretchFactor(1, 0)
        both.setSizes([10_000, 372])
        self.record.setMinimumWidth(340)
        self.setLayout(column(self.form, both, margins=(20, 14, 20, 14), gap=12, grow=1))
        self._connect()
        self._show()

    def start_logging(self) -> None:
        self._tell_form()
        self.form.start()

    def start_from_template(self) -> None:
        self._tell_form()
        self.form.open_templates()

    def find_number(self) -> None:
        self.listing.start_finding()

    def go_to(self, number: object) -> None:
        """Shows one request by its number."""
        sample = next((each for each in self._session.samples if each.number == number), None)
        if sample is None:
            self._session.troubled.emit(f"There is no sample {number}: look at the number on the label again.")
            return
        if not self.listing.choose(sample):
            self.listing.show_all()
            self._show()
            self.listing.choose(sample)
        self._pick(sample)
        self.table.setFocus()

    def _connect(self) -> None:
        session, life, measured, kept = self._session, self.record.life, self.record.measured, self.record.kept
        self.chasing.written.connect(self.written)
        self.chasing.open_wanted.connect(self.open_wanted)
        self.form.wanted.connect(self._log)
        self.form.template_wanted.connect(self._keep_template)
        life.wanted.connect(self._record)
        measured.readings_wanted.connect(self._add_readings)
        measured.claim_wanted.connect(self._claim)
        measured.reading_off.connect(self._remove_reading)
        measured.board_named.connect(self._name_board)
        measured.left.connect(self.table.setFocus)
        kept.decided.connect(self._decide)
        kept.board_named.connect(self._name_board)
        kept.files_wanted.connect(self._attach)
        kept.file_off.connect(self._take_off)
        kept.file_saved.connect(self._save_file)
        kept.contact_set.connect(self._set_contact)
        self.listing.picked.connect(self._pick)
        self.listing.entered.connect(lambda: self.record.start(life.kinds.checkedId()))
        self.listing.key_pressed.connect(self._key)
        self.listing.number_wanted.connect(self.go_to)
        self.listing.misread.connect(session.troubled)
        self.listing.chases_wanted.connect(self.chasing.draft_due)
        self.listing.labels_wanted.connect(self.print_labels)
        session.samples_changed.connect(self._show)
        session.today_changed.connect(self._show_due)
        session.units_changed.connect(lambda: session.turns.do(self, SamplesPlace._show))

    def _tell_form(self) -> None:
        self.form.know(self._session.vendors, self._session.units, self._session.footing.as_of)
        self._session.work.ask(self._session.door.templates, self.form.know_templates)

    def _show(self) -> None:
        samples = self._session.samples
        self.form.know(self._session.vendors, self._session.units, self._session.footing.as_of)
        self.listing.show_samples(samples, self._chosen)
        kept = next((sample for sample in samples if sample.number == self._chosen), None)
        if kept is not None and self.listing.choose(kept):
            self.record.show_sample(kept)
            return
        shown = self.listing.shown()
        if shown and kept is None:
            self.listing.choose(shown[0])
            self._pick(shown[0])
        else:
            self.record.show_sample(kept)

    def _show_due(self) -> None:
        todays = self._session.todays
        self.listing.show_due(len(todays.chases) if todays is not None else 0)

    def _pick(self, sample: Sample) -> None:
        self._chosen = sample.number
        self.listing.choose(sample)
        self.record.show_sample(sample)

    def _key(self, letter: str) -> None:
        if letter in KEYS:
            self.record.start(KEYS[letter])
        elif letter == "m":
            self.record.start_measuring()
        elif letter == "v":
            self.record.start_deciding()
        else:
            self.draft_chase()

    # What is asked of the desk, and what follows

    def _ask(
        self,
        edit: Callable[[], Edit],
        refuse: Refuse,
        then: Callable[[], None] | None = None,
        refresh: Callable[[], None] | None = None,
    ) -> None:
        """Carries an edit out; a refusal is said where the user typed, and what was typed stays."""

        def done(made: Edit) -> None:
            push(self._session, made, refresh or self._session.reload_samples)
            if then is not None:
                then()

        self._session.work.ask(edit, done, lambda error: refuse(sentence_for(error)))

    def _reload_weighed(self) -> None:
        """What was measured on a sample is in every price, while prices are compared at measured weights."""
        session = self._session
        (session.reload if session.footing.measured_weight else session.reload_samples)()

    def _log(self, enquiry: Enquiry) -> None:
        door = self._session.door
        self._session.work.ask(
            lambda: door.log_samples(enquiry), self._was_logged, lambda error: self.form.refuse(sentence_for(error))
        )

    def _was_logged(self, logged: LoggedAll) -> None:
        self._chosen = logged.numbers[0]
        self.form.begin_next()
        push(self._session, logged.edit, self._session.reload_samples)

    def _keep_template(self, name: str, enquiry: Enquiry) -> None:
        door = self._session.door
        self._ask(lambda: door.save_template(name, enquiry), self.form.refuse, self._tell_form)

    def _record(self, happening: Happening) -> None:
        from tracker.desk.samples import EventKind

        door, kind = self._session.door, EventKind(happening.kind)
        self._ask(
            lambda: door.record(
                happening.number, kind, happening.on, happening.until, happening.note, happening.carrier,
                happening.tracking,
            ),
            self.record.life.refuse,
            self.table.setFocus,
        )  # fmt: skip

    def _add_readings(self, typed: ReadingsTyped) -> None:
        door, page = self._session.door, self.record.measured
        self._ask(
            lambda: door.add_readings(typed.number, typed.property, typed.text, typed.unit, typed.conditioned),
            page.refuse,
            page.recorded,
            self._reload_weighed,
        )

    def _remove_reading(self, number: int, reading: int) -> None:
        door = self._session.door
        self._ask(
            lambda: door.remove_reading(number, reading), self.record.measured.refuse, refresh=self._reload_weighed
        )

    def _claim(self, typed: ClaimTyped) -> None:
        door, page = self._session.door, self.record.measured
        self._ask(
            lambda: door.claim(typed.number, typed.property, typed.value, typed.unit, ""), page.refuse, page.claim.clear
        )

    def _decide(self, decision: Decision) -> None:
        door, kept = self._session.door, self.record.kept
        self._ask(
            lambda: door.decide(decision.number, decision.approved, decision.words), kept.refuse, kept.clear_verdict,
            self._session.reload,
        )  # fmt: skip

    def _name_board(self, number: int, name: str) -> None:
        door = self._session.door
        self._ask(lambda: door.name_board(number, name), self.record.kept.refuse, refresh=self._reload_weighed)

    def _attach(self, number: int, paths: list[Path]) -> None:
        door = self._session.door
        for path in paths:
            self._ask(lambda path=path: door.attach(number, path), self._session.troubled.emit)  # type: ignore[misc]

    def _take_off(self, number: int, name: str) -> None:
        door = self._session.door
        self._ask(lambda: door.take_off(number, name), self._session.troubled.emit)

    def _save_file(self, attachment: int, name: str) -> None:
        try:
            path, _ = where_to(self, "Save a copy", name)
        except Trouble as trouble:
            self._session.tell_trouble(trouble)
            return
        if path is not None:
            door = self._session.door
            self._session.work.ask(
                lambda: door.save_attachment(attachment, path), lambda _: self.written.emit(f"It is in {path}.")
            )

    def _set_contact(self, vendor: str, name: str, mail: str, language: str) -> None:
        door = self._session.door
        self._ask(lambda: door.set_contact(vendor, name, mail, language), self._session.troubled.emit)

    # What is written out

    def draft_chase(self) -> None:
        """Drafts a message to the vendor of the chosen sample and hands it to the user's mail program."""
        sample = next((each for each in self._session.samples if each.number == self._chosen), None)
        if sample is not None:
            self.chasing.draft_to(sample.vendor)

    def print_labels(self) -> None:
        """Asks which labels on which sheet, and writes them."""
        from tracker.window.samples.label_dialog import LabelDialog

        dialog = LabelDialog(self._chosen, [each.number for each in self.listing.shown()], self)
        dialog.wanted.connect(self._write_labels)
        dialog.open()

    def _write_labels(self, numbers: list[int], sheet: str, path: Path) -> None:
        door = self._session.door
        self._session.work.ask(
            lambda: door.write_labels(numbers, sheet, path), lambda _: self._labels_written(len(numbers), path)
        )

    def _labels_written(self, count: int, path: Path) -> None:
        self.written.emit(f"{counted(count, 'label')} in {path}: print at true size.")
        self.open_wanted.emit(path)
