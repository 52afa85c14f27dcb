"""The picture with its title, the choice of which one, and its caption in words."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from functools import partial
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QWidget

from tracker.desk.footing_words import footing_sentence
from tracker.desk.standing import Standing
from tracker.window.look.figures import date_text
from tracker.window.pieces import button, column, holder, one_of, row, words
from tracker.window.quotes.caption import Caption
from tracker.window.quotes.card import card
from tracker.window.quotes.lead_picture import OF_GOING, lead_against_price
from tracker.window.quotes.legend import Legend
from tracker.window.quotes.offer_columns import Offers, per_words
from tracker.window.quotes.picture_data import rows_behind
from tracker.window.quotes.plot import Plot
from tracker.window.quotes.spread_picture import Picture, against_caliper, by_strip, like_with_like
from tracker.window.quotes.time_picture import over_time
from tracker.window.session import Session

_CALIPER, _STRIP, _LEAD, _TIME = range(4)
_BETWEEN = 16
_LOW_PX, _LINES_WHERE_LOW, _LINES_ELSE = 330, 2, 4
_ALL = "All grades"
_TITLES = ("By caliper", "By grade", "Lead time", "Over time")


class PicturePane(QWidget):
    """Draws the rows the table shows. `picked` carries the offer pointed at, `level_wanted` the grade whose level the
    user wants to see or set."""

    picked = Signal(int)
    level_wanted = Signal(str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: tuple[Offers, NDArray[np.intp], NDArray[np.intp], str] | None = None
        self._units: tuple[str, ...] = ()
        self.plot = Plot(session.theme, self._say)
        self.plot.setAccessibleName("Picture of the offers: arrow keys go from one to the next, Home shows all")
        self.plot.picked.connect(self.picked)
        self.kinds, switch = one_of(_TITLES, self)
        self.kinds.idClicked.connect(lambda _: self._draw())
        self._title = words("", "heading")
        self._unit = words("", "quiet")
        self._legend = Legend(session.theme)
        self._caption = Caption()
        self._set_level = button("Set the level", "word")
        self._set_level.setToolTip("Where the expected band comes from: the market level and the grade's ratio to SBS")
        self._set_level.clicked.connect(lambda: self.level_wanted.emit("" if self._shown is None else self._shown[3]))
        self._switch = holder(switch)
        self._named = holder(row(self._title, 8, self._unit, None))
        self._head = QGridLayout()
        self._head.setContentsMargins(0, 0, 0, 0)
        self._head.setVerticalSpacing(2)
        self._head.setColumnStretch(0, 1)
        self._foot = row(self._caption, gap=8)
        self._foot.setStretch(0, 1)
        self._lay_out_head(narrow=False)
        self.setLayout(
            column(
                self._head,
                self.plot,
                self._foot,
                gap=4,
                grow=1,
            )
        )
        self.setMinimumSize(QSize(380, 220))

    def show_offers(self, offers: Offers, rows: NDArray[np.intp], ever: NDArray[np.intp], grade: str) -> None:
        """Draws these offers; `ever` are the same with those that no longer count, for what is drawn over time."""
        self._shown = (offers, rows, ever, grade)
        self._units = (per_words(offers.comparison), per_words(like_with_like(offers.comparison)), OF_GOING)
        self._draw()

    def data(self) -> list[dict[str, Any]]:
        """What is drawn, one row a point: for whoever wants to draw it elsewhere or to check it."""
        return self.behind()()

    def behind(self) -> Callable[[], list[dict[str, Any]]]:
        """The data of what is drawn now, to be gathered away from the interface: of many points that takes a second."""
        drawing = self.plot.drawing
        if self._shown is None or drawing is None:
            return list
        return partial(rows_behind, self._shown[0], drawing)

    def meaning(self) -> str:
        """What every price of the picture means, as a sentence."""
        if self._shown is None:
            return ""
        return footing_sentence(self._shown[0].comparison.footing).replace("Every price below", "Every price", 1)

    @contextmanager
    def bare(self) -> Iterator[None]:
        """Meanwhile it stands without what can be pressed in it, and with no offer ringed."""
        pressed = [part for part in (self._switch, self._set_level) if not part.isHidden()]
        selected = self.plot.selected
        for part in pressed:
            # Their room is kept, so that nothing in the picture moves.
            policy = part.sizePolicy()
            policy.setRetainSizeWhenHidden(True)
            part.setSizePolicy(policy)
            part.hide()
        self.plot.select(-1)
        self.plot.draw_as_shapes(True)
        try:
            yield
        finally:
            self.plot.draw_as_shapes(False)
            self.plot.select(selected)
            for part in pressed:
                part.show()

    def select(self, offer: int) -> None:
        self.plot.select(offer)

    def choose(self, kind: int) -> None:
        """Changes to another picture: 0 by caliper, 1 by grade or vendor, 2 lead time, 3 over time."""
        self.kinds.button(kind).setChecked(True)
        self._draw()

    def _lay_out_head(self, narrow: bool) -> None:
        """Title and choice side by side, the legend below; where that would cut words, one below the other."""
        for part in (self._named, self._switch, self._legend, self._set_level):
            self._head.removeWidget(part)
        self._foot.removeWidget(self._set_level)
        if narrow:
            self._head.addWidget(self._named, 0, 0)
            self._head.addWidget(self._set_level, 0, 1)
            self._head.addWidget(self._switch, 1, 0, 1, 2, Qt.AlignmentFlag.AlignLeft)
        else:
            self._head.addWidget(self._named, 0, 0)
            self._head.addWidget(self._switch, 0, 1, Qt.AlignmentFlag.AlignRight)
            self._foot.addWidget(self._set_level)
        self._head.addWidget(self._legend, 1 + narrow, 0, 1, 2)

    def _fit_head(self) -> None:
        """As the widest title asks for, so that the choice stays where it is while the pictures are gone through."""
        titles = {_ALL, self._title.text()}
        title = max(self._title.fontMetrics().horizontalAdvance(text) for text in titles)
        unit = max(self._unit.fontMetrics().horizontalAdvance(text) for text in (*self._units, self._unit.text()))
        needed = title + _BETWEEN // 2 + unit + self._switch.sizeHint().width() + _BETWEEN
        self._lay_out_head(narrow=needed > self.width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_head()
        self._caption.tell(self._caption.whole, self._caption_lines())

    def _caption_lines(self) -> int:
        """A low picture needs its height itself."""
        return _LINES_WHERE_LOW if self.height() < _LOW_PX else _LINES_ELSE

    def _draw(self) -> None:
        if self._shown is None:
            return
        offers, rows, ever, grade = self._shown
        self.kinds.button(_STRIP).setText("By vendor" if grade else "By grade")
        picture = self._picture(offers, ever if self.kinds.checkedId() == _TIME else rows, grade)
        self.plot.show_drawing(picture.drawing)
        self.plot.select(self._session.selected)
        self._title.setText(grade or _ALL)
        self.plot.setAccessibleDescription(picture.title)
        self._unit.setText(picture.unit or per_words(offers.comparison))
        self._fit_head()
        self._legend.show_marks(Standing(int(mark)) for mark in np.unique(picture.drawing.marks))
        self.plot.nothing = self._nothing(offers)
        self._caption.tell(picture.caption if len(picture.drawing.rows) else "", self._caption_lines())
        self._set_level.setVisible(len(offers.comparison.snapshot) > 0)

    def _nothing(self, offers: Offers) -> str:
        comparison = offers.comparison
        if not len(comparison.snapshot):
            return "No offers yet: drop a vendor's price sheet on the window, or press Ctrl+O."
        if comparison.shown.any():
            return "No offer here has what this picture needs: loosen the filters."
        day, first = comparison.footing.as_of, date.fromordinal(int(comparison.snapshot.received.min()))
        if first > day:
            return f"No offer had come by {date_text(day)}; the first is of {date_text(first)}."
        return f"No offer holds on {date_text(day)}: show lapsed and superseded ones too."

    def _picture(self, offers: Offers, rows: NDArray[np.intp], grade: str) -> Picture:
        kind = self.kinds.checkedId()
        if kind == _LEAD:
            return lead_against_price(offers, rows, grade)
        if kind == _TIME:
            return over_time(offers, rows, grade)
        if kind == _STRIP:
            return by_strip(offers, rows, grade)
        return against_caliper(offers, rows, grade)

    def _say(self, offer: int) -> str:
        return "" if self._shown is None else card(self._shown[0], offer)
