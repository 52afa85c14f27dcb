"""The panel beside the samples: one request's life so far, and what to record next."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QLineEdit, QScrollArea, QWidget

from tracker.desk.comparison import Step
from tracker.window.look import figures
from tracker.window.pieces import button, column, hairline, holder, one_of, restyle, row, words
from tracker.window.quotes.ladder import Ladder
from tracker.window.samples.sample_columns import overdue_words
from tracker.window.samples.typed import Unclear, day_typed
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.samples import Sample, SampleEvent

KINDS = ("promised", "sent", "arrived", "chased", "refused", "cancelled")
KEYS = {"p": 0, "s": 1, "a": 2, "c": 3, "r": 4, "x": 5}


@dataclass(frozen=True, slots=True)
class Happening:
    """What is to be recorded about a request."""

    number: int
    kind: str
    on: date | None
    until: date | None
    note: str


class RecordPanel(QFrame):
    """`wanted` carries a Happening."""

    wanted = Signal(object)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._session = session
        self._sample: Sample | None = None
        self._ticket = 0
        self._title = words("", "heading", wrap=True)
        self._about = words("", "quiet", wrap=True)
        self._life = Ladder(session.theme)
        self.kinds, switch = one_of([kind.capitalize() for kind in KINDS[:3]], self)
        self._second = row()
        for place in range(3, len(KINDS)):
            self._add_kind(place)
        self.on = self._field("On", "today")
        self.until = self._field("Promised for", "12 Dec, or 2 weeks")
        self.note = self._field("Note", "")
        self._wrong = words("", wrap=True)
        self._wrong.hide()
        self._record = button("Record", "main")
        self._record.clicked.connect(self.record)
        self.kinds.idClicked.connect(lambda _: self._follow_kind())
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        life = holder(column(self._life, None, margins=(0, 4, 8, 4)))
        scroll.setWidget(life)
        scroll.viewport().setAutoFillBackground(False)
        life.setAutoFillBackground(False)
        on = column(words("On", "rail"), self.on, gap=3)
        until = column(words("Promised for", "rail"), self.until, gap=3)
        self._until_part = holder(until)
        self._form = holder(
            column(
                hairline(), words("Record that it was", "quiet"), column(row(switch, None), self._second, gap=2),
                row(holder(on), self._until_part, gap=10), column(words("Note", "rail"), self.note, gap=3),
                self._wrong, row(self._record, None),
                gap=8,
            )
        )  # fmt: skip
        self.setLayout(column(self._title, self._about, scroll, self._form, margins=(16, 12, 16, 14), gap=6, grow=2))
        self.show_sample(None)

    def show_sample(self, sample: Sample | None) -> None:
        """Shows one request, or how to choose one."""
        self._sample = sample
        self._form.setVisible(sample is not None)
        self._session.work.drop(self._ticket)
        self._wrong.hide()
        self.on.clear()
        self.until.clear()
        self.note.clear()
        if sample is None:
            self._title.setText("One request")
            self._about.setText(
                "Choose a request: its life so far stands here, and what happened next is recorded here. "
                "In the table P, S, A, C, R and X record promised, sent, arrived, chased, refused and cancelled."
            )
            self._life.show_steps(())
            return
        self._title.setText(f"No. {sample.number} · {sample.vendor}")
        about = [
            f"{sample.grade} {figures.caliper(sample.caliper_um, self._session.units)}",
            sample.quantity,
            f"for {sample.for_what}" if sample.for_what else "",
        ]
        owed = overdue_words(sample)
        if owed != figures.NONE:
            about.append(f"{owed}, by the {sample.due_from}" if sample.due_from == "promise" else owed)
        if sample.verdict:
            about.append(sample.verdict)
        self._about.setText(" · ".join(part for part in about if part))
        self.choose(self._likely_next(sample))
        door, number = self._session.door, sample.number
        self._ticket = self._session.work.ask(lambda: door.events(number), self._show_events)

    def choose(self, kind: int) -> None:
        """Makes one kind the one to be recorded."""
        self.kinds.button(kind).setChecked(True)
        self._follow_kind()

    def start(self, kind: int) -> None:
        """Goes to the fields for recording one kind."""
        if self._sample is not None:
            self.choose(kind)
            first = self.until if KINDS[kind] == "promised" else self.on
            first.setFocus()

    def record(self) -> None:
        """Hands on what is to be recorded, if its days can be understood."""
        if self._sample is None:
            return
        today = self._session.footing.as_of
        kind = KINDS[self.kinds.checkedId()]
        field = self.on
        try:
            on = day_typed(field.text(), today)
            field = self.until
            until = day_typed(field.text(), today) if kind == "promised" else None
            if kind == "promised" and until is None:
                raise Unclear("Promised for when? Write 12 Dec or 2 weeks.")
        except Unclear as unclear:
            self._wrong.setText(str(unclear))
            self._wrong.show()
            field.setProperty("wrong", "true")
            restyle(field)
            field.setFocus()
            return
        for done in (self.on, self.until):
            done.setProperty("wrong", "false")
            restyle(done)
        self._wrong.hide()
        self.wanted.emit(Happening(self._sample.number, kind, on, until, self.note.text().strip()))

    def _add_kind(self, place: int) -> None:
        from PySide6.QtWidgets import QToolButton

        choice = QToolButton()
        choice.setText(KINDS[place].capitalize())
        choice.setCheckable(True)
        choice.setProperty("kind", "one-of")
        choice.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.kinds.addButton(choice, place)
        self._second.addWidget(choice)
        if place == len(KINDS) - 1:
            self._second.addStretch(1)

    def _field(self, name: str, example: str) -> QLineEdit:
        field = QLineEdit()
        field.setAccessibleName(name)
        field.setPlaceholderText(example)
        field.returnPressed.connect(self.record)
        return field

    def _follow_kind(self) -> None:
        kind = KINDS[max(0, self.kinds.checkedId())]
        self._until_part.setVisible(kind == "promised")
        self._record.setText(f"Record as {kind}")

    def _likely_next(self, sample: Sample) -> int:
        return {"requested": 0, "promised": 1, "sent": 2}.get(str(sample.state), 2)

    def _show_events(self, events: tuple[SampleEvent, ...]) -> None:
        steps = []
        for place, event in enumerate(events):
            until = getattr(event, "until", None)
            text = str(event.kind) + (f" for {figures.date_text(until)}" if until else "")
            note = f": {event.note}" if event.note else ""
            steps.append(Step(figures.date_text(event.on), f"{text}{note}", last=place == len(events) - 1))
        if self._sample is not None and not any("requested" in step.text for step in steps):
            steps.insert(0, Step(figures.date_text(self._sample.requested), "requested", last=not steps))
        self._life.show_steps(steps)
