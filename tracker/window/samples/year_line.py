"""What the measured weight of a board means in money over a year, beside its readings."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFrame, QWidget

from tracker.trade.claims import FEWEST
from tracker.window.pieces import column, row, words
from tracker.window.samples.fields import Wrong, field, labelled
from tracker.window.samples.typed import Unclear, msf_typed
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.sample_checks import PropertyChecked
    from tracker.desk.samples import Sample
    from tracker.desk.weight_differences import WeightDifference


class YearLine(QFrame):
    """Shown once a sample was weighed often enough; the volume typed stays from sample to sample."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._number = 0
        self._ticket = 0
        self.volume = field("A year's volume in MSF", "30,000", self._ask)
        self._said = words("", wrap=True, selectable=True)
        self._wrong = Wrong()
        self.setLayout(
            column(row(labelled(self.volume), None, grow=0), self._wrong.label, self._said, margins=(0, 2, 0, 4), gap=5)
        )
        session.compared.connect(self._ask_again)
        self.hide()

    def show_for(self, sample: Sample | None, weighed: PropertyChecked | None) -> None:
        """Offers the sum for this sample, or nothing where too few readings of its weight were taken."""
        enough = weighed is not None and len(weighed.readings) >= FEWEST
        self.setVisible(enough and sample is not None)
        self._number = sample.number if sample is not None and enough else 0
        self._said.setText("What does the measured weight come to in money? Type a year's volume, then Enter.")
        self._ask_again()

    def _ask_again(self) -> None:
        if self._number and self.volume.text().strip():
            self._ask()

    def _ask(self) -> None:
        self._wrong.clear()
        try:
            year = msf_typed(self.volume.text())
        except Unclear as unclear:
            self._wrong.say(str(unclear), self.volume)
            return
        self._session.work.drop(self._ticket)
        door, footing = self._session.door, self._session.footing
        self._ticket = self._session.work.ask(lambda: door.weight_differences(footing, year), self._show)

    def _show(self, differences: tuple[WeightDifference, ...]) -> None:
        found = next((each for each in differences if self._number in each.weight.samples), None)
        if found is None:
            self._said.setText("No current offer of this board is known at this order size, so there is no price.")
        else:
            self._said.setText(found.sentence)
