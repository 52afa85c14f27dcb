"""The picture with its title, the choice of which one, and its caption in words."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import QWidget

from tracker.window.look.marks import Mark
from tracker.window.pieces import column, one_of, row, words
from tracker.window.quotes.lead_picture import lead_against_price
from tracker.window.quotes.legend import Legend
from tracker.window.quotes.offer_columns import Offers, per_words
from tracker.window.quotes.plot import Plot
from tracker.window.quotes.spread_picture import Picture, against_caliper, by_strip, card
from tracker.window.session import Session

_CALIPER, _STRIP, _LEAD = range(3)
_TITLES = ("Price by caliper", "Price by grade", "Lead time")


class PicturePane(QWidget):
    """Draws the rows the table shows. `picked` carries the offer pointed at."""

    picked = Signal(int)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: tuple[Offers, NDArray[np.intp], str] | None = None
        self.plot = Plot(session.theme, self._say)
        self.plot.setAccessibleName("Picture of the offers: arrow keys go from one to the next, Home shows all")
        self.plot.picked.connect(self.picked)
        self.kinds, switch = one_of(_TITLES, self)
        self.kinds.idClicked.connect(lambda _: self._draw())
        self._title = words("", "heading")
        self._unit = words("", "quiet")
        self._legend = Legend(session.theme)
        self._caption = words("", "small", wrap=True)
        self.setLayout(
            column(
                row(self._title, None, switch),
                row(self._unit, None, self._legend),
                self.plot,
                self._caption,
                gap=4,
                grow=2,
            )
        )
        self.setMinimumSize(QSize(380, 220))

    def show_offers(self, offers: Offers, rows: NDArray[np.intp], grade: str) -> None:
        """Draws these offers."""
        self._shown = (offers, rows, grade)
        self._draw()

    def select(self, offer: int) -> None:
        self.plot.select(offer)

    def choose(self, kind: int) -> None:
        """Changes to another picture: 0 by caliper, 1 by grade or vendor, 2 lead time."""
        self.kinds.button(kind).setChecked(True)
        self._draw()

    def _draw(self) -> None:
        if self._shown is None:
            return
        offers, rows, grade = self._shown
        self.kinds.button(_STRIP).setText("Price by vendor" if grade else "Price by grade")
        picture = self._picture(offers, rows, grade)
        self.plot.show_drawing(picture.drawing)
        self.plot.select(self._session.selected)
        self._title.setText(picture.title)
        is_lead = self.kinds.checkedId() == _LEAD
        self._unit.setText("per cent of the expected price" if is_lead else per_words(offers.comparison))
        self._legend.show_marks(Mark(int(mark)) for mark in np.unique(picture.drawing.marks))
        self.plot.nothing = self._nothing(offers)
        self._caption.setText(picture.caption if len(picture.drawing.rows) else "")

    def _nothing(self, offers: Offers) -> str:
        if not len(offers.comparison.snapshot):
            return "No offers yet: drop a vendor's price sheet on the window, or press Ctrl+O."
        return "No offer here has what this picture needs: loosen the filters."

    def _picture(self, offers: Offers, rows: NDArray[np.intp], grade: str) -> Picture:
        kind = self.kinds.checkedId()
        if kind == _LEAD:
            return lead_against_price(offers, rows, grade)
        if kind == _STRIP:
            return by_strip(offers, rows, grade)
        return against_caliper(offers, rows, grade)

    def _say(self, offer: int) -> str:
        return "" if self._shown is None else card(self._shown[0], offer)
