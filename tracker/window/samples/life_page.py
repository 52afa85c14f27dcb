"""One request's life so far, and what to record next."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLineEdit, QToolButton, QWidget

from tracker.desk.comparison import Step
from tracker.window.field_steps import empty
from tracker.window.look import figures
from tracker.window.pieces import button, column, hairline, holder, one_of, row, scrolled, words
from tracker.window.quotes.ladder import Ladder
from tracker.window.samples.fields import Wrong, field, labelled
from tracker.window.samples.typed import Unclear, day_typed
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.samples import Sample, SampleEvent

KINDS = ("promised", "sent", "arrived", "chased", "refused", "cancelled", "lost")
KEYS = {"p": 0, "s": 1, "a": 2, "c": 3, "r": 4, "x": 5, "l": 6}
_ONE_EVENT = 26
_IN_FIRST_ROW = 3


@dataclass(frozen=True, slots=True)
class Happening:
    """What is to be recorded about a request."""

    number: int
    kind: str
    on: date | None
    until: date | None
    note: str
    carrier: str
    tracking: str


class LifePage(QWidget):
    """`wanted` carries a Happening; `readings_wanted`: the sample is here, and is to be measured."""

    wanted = Signal(object)
    readings_wanted = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._sample: Sample | None = None
        self._ticket = 0
        self._ladder = Ladder(session.theme)
        self.kinds, first = one_of([kind.capitalize() for kind in KINDS[:_IN_FIRST_ROW]], self)
        second = row()
        for place in range(_IN_FIRST_ROW, len(KINDS)):
            second.addWidget(self._kind(place))
        self.on = field("On", "today", self.record)
        self.until = field("Promised for", "12 Dec, or 2 weeks", self.record)
        self.carrier = field("Carrier", "", self.record)
        self.tracking = field("Tracking number", "", self.record)
        self.note = field("Note", "", self.record)
        self._wrong = Wrong()
        self._record = button("Record", "main")
        self._record.clicked.connect(self.record)
        self.kinds.idClicked.connect(lambda _: self._follow_kind())
        self._until_part = holder(labelled(self.until))
        self._sent_part = holder(row(labelled(self.carrier), labelled(self.tracking), gap=10))
        self._measure = button("Type its readings  M", "main")
        self._measure.clicked.connect(self.readings_wanted)
        self._form = holder(
            column(
                hairline(), words("Record that it was", "quiet"), column(row(first, None), row(second, None), gap=2),
                row(holder(labelled(self.on)), self._until_part, gap=10), self._sent_part, labelled(self.note),
                self._wrong.label, row(self._record, None),
                gap=8,
            )
        )  # fmt: skip
        past = scrolled(holder(column(self._ladder, None, margins=(0, 4, 8, 4))))
        # In a low window what has happened scrolls before the fields overlap.
        past.setMinimumHeight(_ONE_EVENT)
        self.setLayout(column(past, holder(row(self._measure, None)), self._form, gap=6, grow=0))

    def show_sample(self, sample: Sample) -> None:
        """Shows one request; what was typed about another is gone."""
        self._sample = sample
        self._session.work.drop(self._ticket)
        self._wrong.clear()
        empty(self.on, self.until, self.carrier, self.tracking, self.note)
        here = str(sample.state) in ("arrived", "tested")
        self._measure.setVisible(here)
        self._form.setVisible(not here)
        self.choose({"requested": 0, "promised": 1, "sent": 2}.get(str(sample.state), 2))
        door, number = self._session.door, sample.number
        self._ticket = self._session.work.ask(lambda: door.events(number), self._show_events)

    def choose(self, kind: int) -> None:
        """Makes one kind the one to be recorded."""
        self.kinds.button(kind).setChecked(True)
        self._follow_kind()

    def start(self, kind: int) -> None:
        """Goes to the fields for recording one kind."""
        self._form.show()
        self.choose(kind)
        first = self.until if KINDS[kind] == "promised" else self.on
        first.setFocus()

    def record(self) -> None:
        """Hands on what is to be recorded, if its days can be understood."""
        if self._sample is None:
            return
        self._wrong.clear()
        today = self._session.footing.as_of
        kind = KINDS[self.kinds.checkedId()]
        at: QLineEdit = self.on
        try:
            on = day_typed(at.text(), today)
            at = self.until
            until = day_typed(at.text(), today) if kind == "promised" else None
            if kind == "promised" and until is None:
                raise Unclear("Promised for when? Write 12 Dec or 2 weeks.")
        except Unclear as unclear:
            self._wrong.say(str(unclear), at)
            return
        sent = kind == "sent"
        self.wanted.emit(
            Happening(
                self._sample.number, kind, on, until, self.note.text().strip(),
                self.carrier.text().strip() if sent else "", self.tracking.text().strip() if sent else "",
            )
        )  # fmt: skip

    def refuse(self, why: str) -> None:
        """Says why what was to be recorded can't be; what was typed stays."""
        self._wrong.say(why, self.on)

    def _kind(self, place: int) -> QToolButton:
        choice = QToolButton()
        choice.setText(KINDS[place].capitalize())
        choice.setCheckable(True)
        choice.setProperty("kind", "one-of")
        choice.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.kinds.addButton(choice, place)
        return choice

    def _follow_kind(self) -> None:
        kind = KINDS[max(0, self.kinds.checkedId())]
        self._until_part.setVisible(kind == "promised")
        self._sent_part.setVisible(kind == "sent")
        self._record.setText(f"Record as {kind}")

    def _show_events(self, events: Sequence[SampleEvent]) -> None:
        steps = [
            Step(figures.date_text(event.on), _told(event), last=place == len(events) - 1)
            for place, event in enumerate(events)
        ]
        if self._sample is not None:
            steps.insert(0, Step(figures.date_text(self._sample.requested), "requested", last=not steps))
        self._ladder.show_steps(steps)


def _told(event: SampleEvent) -> str:
    """'sent by Ostrel Parcel 00123: in two boxes'."""
    until = f" for {figures.date_text(event.until)}" if event.until else ""
    how = " ".join(part for part in (event.carrier, event.tracking) if part)
    return f"{event.kind}{until}{f' by {how}' if how else ''}{f': {event.note}' if event.note else ''}"
