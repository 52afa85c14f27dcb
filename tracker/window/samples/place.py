"""The Samples place: the line to log a request, the table of who owes what, one request's life beside it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QSplitter, QWidget

from tracker.window.pieces import button, column, holder, one_of, panel, row, words
from tracker.window.samples.log_form import LogForm, Request
from tracker.window.samples.record_panel import KEYS, Happening, RecordPanel
from tracker.window.samples.sample_columns import SAMPLE_COLUMNS, Samples, is_outstanding
from tracker.window.session import Session
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView
from tracker.window.undo import push

if TYPE_CHECKING:
    from tracker.desk.edits import Edit
    from tracker.desk.samples import Logged

_OUTSTANDING, _OVERDUE, _ALL = range(3)
_EMPTY = (
    "Nothing is outstanding: no vendor owes you a sample.",
    "Nothing is overdue.",
    "No sample was asked for yet. Write the vendor above, Tab to the grade, Enter logs the request.",
)


class _SampleTable(RowsView):
    """The table, with a letter for each thing that can be recorded."""

    panel: RecordPanel

    def keyPressEvent(self, event: QKeyEvent) -> None:
        kind = KEYS.get(event.text().casefold())
        if kind is not None and not event.modifiers() and self.currentIndex().isValid():
            self.panel.start(kind)
            return
        super().keyPressEvent(event)


class SamplesPlace(QWidget):
    """Every request, the most overdue on top. `chases_wanted`: messages are to be drafted to who owes."""

    chases_wanted = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._chosen = -1
        self.form = LogForm()
        self.model = ColumnTable(SAMPLE_COLUMNS, self)
        self.table = _SampleTable(self.model, session.theme)
        self.table.setAccessibleName("Sample requests")
        self.record = RecordPanel(session)
        self.table.panel = self.record
        self.which, switch = one_of(("Outstanding", "Overdue", "All"), self)
        self._nothing = words("", "quiet", wrap=True)
        self._nothing.setContentsMargins(16, 12, 16, 16)
        self._nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        listing = panel(column(self.table, self._nothing, margins=(1, 1, 1, 1)))
        self.chase = button("Draft chases…", "word")
        self.chase.setToolTip("Ctrl+Shift+C: one message a vendor that owes you, for your own mail program")
        self.chase.clicked.connect(self.chases_wanted)
        left = holder(column(row(switch, None, self.chase), listing, gap=8, grow=1))
        both = QSplitter(Qt.Orientation.Horizontal)
        both.addWidget(left)
        both.addWidget(self.record)
        both.setHandleWidth(16)
        both.setChildrenCollapsible(False)
        both.setStretchFactor(0, 1)
        both.setStretchFactor(1, 0)
        both.setSizes([10_000, 336])
        self.record.setMinimumWidth(300)
        self.setLayout(column(self.form, both, margins=(20, 14, 20, 14), gap=14, grow=1))
        self.form.wanted.connect(self._log)
        self.record.wanted.connect(self._record)
        self.which.idClicked.connect(lambda _: self._show())
        self.table.picked.connect(self._pick)
        self.table.entered_row.connect(lambda _: self.record.start(self.record.kinds.checkedId()))
        session.samples_changed.connect(self._show)
        session.units_changed.connect(self._show)
        self._show()

    def start_logging(self) -> None:
        self.form.know(self._session.vendors, self._session.units, self._session.footing.as_of)
        self.form.start()

    def go_to(self, number: object) -> None:
        """Shows one request by its number."""
        for place, sample in enumerate(self._session.samples):
            if sample.number == number:
                if self.model.row_of(place) is None:
                    self.which.button(_ALL).setChecked(True)
                    self._show()
                self.table.go_to(place)
                self._pick(place)
        self.table.setFocus()

    def _show(self) -> None:
        samples = self._session.samples
        self.form.know(self._session.vendors, self._session.units, self._session.footing.as_of)
        outstanding = np.array([is_outstanding(sample) for sample in samples], dtype=bool)
        overdue = np.array([sample.overdue for sample in samples], dtype=bool)
        for place, (title, number) in enumerate(
            (("Outstanding", int(outstanding.sum())), ("Overdue", int(overdue.sum())), ("All", len(samples)))
        ):
            self.which.button(place).setText(f"{title}  {number:,}")
        self.chase.setEnabled(bool(overdue.any()))
        which = self.which.checkedId()
        masks = {_OUTSTANDING: outstanding, _OVERDUE: overdue, _ALL: np.ones(len(samples), dtype=bool)}
        rows = np.flatnonzero(masks[which])
        self.model.show(Samples(samples, self._session.units), rows)
        self._nothing.setText(_EMPTY[_ALL if not samples else which])
        self._nothing.setVisible(len(rows) == 0)
        self.table.setVisible(len(rows) > 0)
        kept = next((place for place, sample in enumerate(samples) if sample.number == self._chosen), None)
        if kept is not None and self.table.go_to(kept):
            self.record.show_sample(samples[kept])
        elif len(rows) and kept is None:
            self.table.go_to(int(rows[0]))
            self._pick(int(rows[0]))
        else:
            self.record.show_sample(None)

    def _pick(self, place: int) -> None:
        sample = self._session.samples[place]
        self._chosen = sample.number
        self.record.show_sample(sample)

    def _log(self, request: Request) -> None:
        door = self._session.door
        self._session.work.ask(
            lambda: door.log_sample(
                request.vendor, request.grade, request.caliper_um, request.quantity, request.needed, request.for_what
            ),
            self._was_logged,
        )

    def _was_logged(self, logged: Logged) -> None:
        self._chosen = logged.number
        self.form.begin_next()
        push(self._session, logged.edit, self._session.reload_samples)

    def _record(self, happening: Happening) -> None:
        from tracker.desk.samples import EventKind

        door = self._session.door
        kind = EventKind(happening.kind)
        self._session.work.ask(
            lambda: door.record(happening.number, kind, happening.on, happening.until, happening.note),
            self._was_recorded,
        )

    def _was_recorded(self, edit: Edit) -> None:
        push(self._session, edit, self._session.reload_samples)
        self.table.setFocus()
