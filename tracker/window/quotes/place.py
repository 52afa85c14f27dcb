"""The Quotes place: rail, picture and panel over filters and table, all showing the same offers."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QWidget

from tracker.desk.comparison import Comparison
from tracker.desk.standing import Standing
from tracker.trade.grades import grades
from tracker.window.pieces import column, holder, panel, row, words
from tracker.window.quotes.filters import Filters
from tracker.window.quotes.grade_rail import GradeCount, GradeRail
from tracker.window.quotes.narrowing import Narrowing, rows_of
from tracker.window.quotes.offer_columns import OFFER_COLUMNS, Offers, offers
from tracker.window.quotes.picture_pane import PicturePane
from tracker.window.quotes.reasons import ReasonsPanel
from tracker.window.session import Session
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView

_RAIL_WIDTH = 226
_PANEL_WIDTH = 380
_SIDE, _SCROLL_BAR = 20, 16
_MANY = 5_000
"""Of more offers than these neither table nor picture is drawn in a moment."""
_TOLD_ELSEWHERE = {"weight": "basis weight", "quoted": "price as quoted"}


class QuotesPlace(QWidget):
    """Every offer on one footing. `counted` carries how many of all offers are shown; `sheet_wanted` an offer."""

    counted = Signal(int, int)
    sheet_wanted = Signal(int)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._grade = ""
        self._offers: Offers | None = None
        self._decided = False
        self._let_go = -1
        self._owed: frozenset[str] = frozenset()
        self.rail = GradeRail(session.theme)
        self.picture = PicturePane(session)
        self.reasons = ReasonsPanel(session)
        self.filters = Filters()
        self.model = ColumnTable(OFFER_COLUMNS, self, faint=lambda table, row: not table.comparison.current[row])
        self.table = RowsView(self.model, session.theme)
        self.table.setAccessibleName("Offers")
        # What stands out comes first, until the user sorts otherwise.
        self.table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        self._note = words("", "small")
        self._narrow_note = words("", "small")
        self._lay_out()
        self.rail.grade_chosen.connect(self._choose_grade)
        self.filters.changed.connect(self._narrow)
        self.picture.picked.connect(session.select_offer)
        self.picture.plot.entered.connect(self.sheet_wanted)
        self.table.picked.connect(session.select_offer)
        self.table.entered_row.connect(self.sheet_wanted)
        self.reasons.sheet_wanted.connect(self.sheet_wanted)
        self.reasons.offer_wanted.connect(self._choose_offer)
        session.compared.connect(self.show_comparison)
        session.units_changed.connect(self._change_units)
        self.filters.show_units(session.units)
        session.offer_selected.connect(self._select)
        if session.comparison is not None:
            self.show_comparison()

    def show_comparison(self) -> None:
        """Draws the session's comparison."""
        comparison = self._session.comparison
        if comparison is None:
            return
        self._offers = offers(comparison, self._session.marks, self._session.units)
        self._let_go = -1
        self.filters.offer_vendors(_vendors_quoting(comparison))
        self._show_rows(fresh=True)
        if self._owed:
            self._choose_taken_in(comparison)

    def show_taken_in(self, files: frozenset[str]) -> None:
        """Once they are compared, goes to the first offer of these files, given by their sha256, and lets go of the one
        that was chosen before them."""
        self._owed = files

    def _choose_taken_in(self, comparison: Comparison) -> None:
        snapshot = comparison.snapshot
        files = [place for place, sha256 in enumerate(snapshot.sha256s) if sha256 in self._owed]
        self._owed = frozenset()
        new = np.flatnonzero(np.isin(snapshot.file, files) & comparison.shown)
        listed = np.isin(self.model.order, new)
        if new.size and not listed.any():
            self._let_all_in()
            listed = np.isin(self.model.order, new)
        first = int(self.model.order[listed.argmax()]) if listed.any() else -1
        self._session.select_offer(first)
        self._select(first)

    def _let_all_in(self) -> None:
        """Lets go of all that narrows the list."""
        self.filters.clear()
        self.rail.choose("")
        self._narrow()

    def go_to(self, offer: int) -> None:
        """Brings one offer into view, letting go of filters that hide it."""
        comparison = self._session.comparison
        if comparison is None or not 0 <= offer < len(comparison.snapshot):
            return
        code = int(comparison.snapshot.grade[offer])
        if self.model.row_of(offer) is None:
            self.filters.field.clear()
            self.filters.standing_out.setChecked(False)
            self.filters.choose_vendors(frozenset())
        if code >= 0:
            self.rail.choose(comparison.snapshot.grades[code])
        self._session.select_offer(offer)
        self._select(offer)
        self.table.setFocus()

    def _choose_offer(self, offer: int) -> None:
        """Chooses an offer where it stands in view, else brings it there."""
        if self.model.row_of(offer) is None:
            self.go_to(offer)
        else:
            self._session.select_offer(offer)

    def _lay_out(self) -> None:
        left = holder(column(words("Grade", "rail"), self.rail, None, gap=6))
        left.setFixedWidth(_RAIL_WIDTH)
        above = QSplitter(Qt.Orientation.Horizontal)
        above.addWidget(self.picture)
        above.addWidget(self.reasons)
        above.setSizes([10_000, _PANEL_WIDTH])
        above.setStretchFactor(0, 1)
        above.setStretchFactor(1, 0)
        self.reasons.setMinimumWidth(300)
        upper = holder(row(left, above, gap=20, grow=1))
        table = panel(column(self.table, margins=(1, 1, 1, 1)))
        lower = holder(column(self.filters, table, row(self._note, None, self._narrow_note, gap=12), gap=6, grow=1))
        both = QSplitter(Qt.Orientation.Vertical)
        both.addWidget(upper)
        both.addWidget(lower)
        both.setStretchFactor(0, 1)
        both.setStretchFactor(1, 1)
        both.setSizes([390, 320])
        for splitter in (above, both):
            splitter.setHandleWidth(12)
            splitter.setChildrenCollapsible(False)
        self.setLayout(column(both, margins=(_SIDE, 12, _SIDE, 8)))

    def _fit_columns(self) -> None:
        """What the panel tells anyway gives way first, so that lead time and last day stay in view."""
        absent = {"grade"} if self._grade else set()
        if not self._decided:
            absent.add("decided")
        given_way = []
        present = {each.key for each in OFFER_COLUMNS} - absent
        room = self.width() - 2 * _SIDE - _SCROLL_BAR
        for key, told in _TOLD_ELSEWHERE.items():
            fits = self.table.least_width_for(present) <= room
            self.table.show_column(key, fits)
            if not fits:
                present.remove(key)
                given_way.append(told)
        self._narrow_note.setText(f"Too narrow for all: the panel tells {' and '.join(given_way)}" if given_way else "")

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_columns()

    def _narrowing(self) -> Narrowing:
        low, high = self.filters.calipers_um()
        return Narrowing(
            self._grade,
            self.filters.vendors,
            low,
            high,
            self.filters.field.text(),
            self.filters.standing_out.isChecked(),
        )

    def _choose_grade(self, grade: str) -> None:
        if grade != self._grade:
            self._grade = grade
            self._narrow()

    def _narrow(self) -> None:
        self._show_rows(fresh=False)

    def _show_rows(self, *, fresh: bool) -> None:
        if self._offers is None:
            return
        narrowing = self._narrowing()
        rows = rows_of(self._offers.comparison, narrowing)
        self.table.show_column("grade", not self._grade)
        decided = np.fromiter(self._offers.comparison.board_verdicts, dtype=np.intp)
        self._decided = _any_of(rows, decided)
        self.table.show_column("decided", self._decided)
        if fresh:
            self.model.show(self._offers, rows)
        else:
            self.model.choose_rows(rows)
        self._fit_columns()
        everywhere = rows_of(self._offers.comparison, narrowing, any_grade=True)
        self.rail.show_counts(self._counts(everywhere), self._grade)
        if fresh or len(everywhere) > _MANY:
            # Table and picture together would hold the window up.
            self._session.turns.put_off(self, QuotesPlace._show_picture)
        else:
            self._session.turns.do(self, QuotesPlace._show_picture)
        self.table.go_to(self._session.selected)
        self.counted.emit(len(rows), len(self._offers.comparison.snapshot))
        estimated = bool(self._offers.comparison.snapshot.estimated[rows].any())
        self._note.setText(
            "* basis weight estimated from grade and caliper, and all that rests on it" if estimated else ""
        )

    def _show_picture(self) -> None:
        """Draws what the table shows."""
        if self._offers is None:
            return
        narrowing = self._narrowing()
        rows = rows_of(self._offers.comparison, narrowing)
        ever = rows_of(self._offers.comparison, narrowing, ever=True)
        self.picture.show_offers(self._offers, rows, ever, self._grade)
        self._let_go_of_the_unseen(rows)

    def _let_go_of_the_unseen(self, rows: NDArray[np.intp]) -> None:
        """The panel tells of no offer that is neither listed nor drawn; one that comes back is taken up again."""
        selected, drawing = self._session.selected, self.picture.plot.drawing
        seen = rows if drawing is None else np.concatenate([rows, drawing.rows])
        if selected >= 0 and selected not in seen:
            self._session.select_offer(-1)
            self._let_go = selected
        elif selected < 0 <= self._let_go and self._let_go in seen:
            self._session.select_offer(self._let_go)

    def _counts(self, rows: NDArray[np.intp]) -> list[GradeCount]:
        assert self._offers is not None
        snapshot = self._offers.comparison.snapshot
        codes, marks = snapshot.grade[rows], self._offers.marks[rows]
        known = [grade for grade in grades() if grade in snapshot.grades]
        others = sorted(set(snapshot.grades) - set(known))
        counts = [_count("", marks)]
        for grade in (*known, *others):
            counts.append(_count(grade, marks[codes == snapshot.grades.index(grade)]))
        return counts

    def _change_units(self) -> None:
        self.filters.show_units(self._session.units)
        self.show_comparison()

    def _select(self, offer: int) -> None:
        self._let_go = -1
        self.table.go_to(offer)
        self.picture.select(offer)


def _any_of(rows: NDArray[np.intp], wanted: NDArray[np.intp]) -> bool:
    """Whether any of the wanted is among the rows, which stand in order."""
    if not len(rows):
        return False
    places = np.searchsorted(rows, wanted).clip(max=len(rows) - 1)
    return bool((rows[places] == wanted).any())


def _vendors_quoting(comparison: Comparison) -> list[str]:
    """Those with an offer here: a vendor whose only sheet was taken back has none to choose."""
    snapshot = comparison.snapshot
    return sorted((snapshot.vendors[code] for code in np.unique(snapshot.vendor) if code >= 0), key=str.casefold)


def _count(grade: str, marks: NDArray[np.int8]) -> GradeCount:
    of_mark = np.bincount(marks, minlength=len(Standing))
    return GradeCount(
        grade, len(marks), int(of_mark[Standing.ABOVE]), int(of_mark[Standing.BELOW]), int(of_mark[Standing.SLIP])
    )
