"""The panel beside the samples: one request, on three pages: its life, what it measured, what is kept with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFrame, QStackedWidget, QWidget

from tracker.window.look import figures
from tracker.window.pieces import column, holder, one_of, row, words
from tracker.window.samples.kept_page import KeptPage
from tracker.window.samples.life_page import LifePage
from tracker.window.samples.measured_page import MeasuredPage
from tracker.window.samples.sample_columns import chance_said, overdue_words, too_late
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.samples import Sample

PAGES = ("Life", "Measured", "Verdict and files")
LIFE, MEASURED, KEPT = range(3)
_HOW = (
    "Choose a request: its life, what it measured and the verdict on it stand here. In the table P, S, A, C, R, X and "
    "L record promised, sent, arrived, chased, refused, cancelled and lost; M goes to readings, V to the verdict, "
    "D drafts a message to the vendor."
)


class RecordPanel(QFrame):
    """Shows one request; its pages say what is wanted."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._session = session
        self._sample: Sample | None = None
        self._title = words("", "heading", wrap=True)
        self._about = words("", "quiet", wrap=True)
        self.life = LifePage(session)
        self.measured = MeasuredPage(session)
        self.kept = KeptPage(session)
        self.pages, switch = one_of(PAGES, self)
        self._stack = QStackedWidget()
        for page in (self.life, self.measured, self.kept):
            self._stack.addWidget(page)
        self.pages.idClicked.connect(self.turn_to)
        self.life.readings_wanted.connect(self.start_measuring)
        self._switch = holder(row(switch, None))
        self._empty = QWidget()
        self._stack.addWidget(self._empty)
        self.setLayout(
            column(self._title, self._about, self._switch, self._stack, margins=(16, 12, 16, 14), gap=6, grow=3)
        )
        self.show_sample(None)

    def show_sample(self, sample: Sample | None) -> None:
        """Shows one request, or how to choose one."""
        self._sample = sample
        self._switch.setVisible(sample is not None)
        if sample is None:
            self._title.setText("One request")
            self._about.setText(_HOW)
            self._stack.setCurrentWidget(self._empty)
            return
        self._title.setText(f"No. {sample.number} · {sample.vendor}")
        self._about.setText(self._told(sample))
        self.turn_to(self.pages.checkedId())

    def turn_to(self, page: int) -> None:
        """Shows a page of the request."""
        self.pages.button(page).setChecked(True)
        if self._sample is not None:
            self._stack.setCurrentIndex(page)
            (self.life, self.measured, self.kept)[page].show_sample(self._sample)

    def start(self, kind: int) -> None:
        """Goes to the fields for recording one kind of event."""
        if self._sample is not None:
            self.turn_to(LIFE)
            self.life.start(kind)

    def start_measuring(self) -> None:
        """Goes to where readings are pasted."""
        if self._sample is not None:
            self.turn_to(MEASURED)
            self.measured.start()

    def start_deciding(self) -> None:
        """Goes to the verdict."""
        if self._sample is not None:
            self.turn_to(KEPT)
            self.kept.start()

    def _told(self, sample: Sample) -> str:
        about = [
            sample.board,
            f"{sample.grade} {figures.caliper(sample.caliper_um, self._session.units)}",
            sample.quantity,
            f"for {sample.for_what}" if sample.for_what else "",
            f"asked of {sample.contact}" if sample.contact else "",
            f"needed by {figures.date_text(sample.needed)}" if sample.needed else "",
            too_late(sample),
        ]
        owed = overdue_words(sample)
        about += [owed, _due_by(sample), chance_said(sample)] if owed != figures.NONE else []
        return " · ".join(part for part in about if part)


def _due_by(sample: Sample) -> str:
    """What the due day rests on, in words."""
    if sample.due_from == "promise":
        return "by its promise"
    if sample.due_from == "needed by":
        # That day stands there already.
        return ""
    return "" if sample.usual is None else str(sample.usual)
