"""The Reference place: a grade's make-up, strengths, cautions, calipers and price beside SBS, each with its source."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QFileDialog,
    QGridLayout,
    QLabel,
    QStackedWidget,
    QWidget,
)

from tracker.trade.bands import REFERENCE_GRADE, ratio
from tracker.trade.grades import Grade, grades
from tracker.trade.quantities import CaliperUnit, micrometres
from tracker.trade.sourced import Fact, Provenance
from tracker.window.look import figures
from tracker.window.look.figures import Units
from tracker.window.pieces import button, clear, column, hairline, holder, panel, row, scrolled, words
from tracker.window.reference.grade_names import GradeNames, Section
from tracker.window.reference.level_form import LevelForm, LevelTyped
from tracker.window.reference.ratio_form import RatioForm, RatioTyped
from tracker.window.reference.whence import LEGEND, whence
from tracker.window.reference.yardsticks_page import RateTyped, YardsticksPage
from tracker.window.session import Session
from tracker.window.undo import push

if TYPE_CHECKING:
    from tracker.desk.edits import Edit
    from tracker.desk.yardsticks import Yardsticks

_LABEL_WIDTH, _SOURCE_WIDTH, _NAME_HEIGHT = 130, 250, 50
_ABOVE_THE_LEVEL = 12
OWN_LEVEL = "by its own market level, below; without one, {}"


class ReferencePlace(QWidget):
    """Chooses a grade at the left, reads it at the right."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._grade = next(iter(grades()))
        self._held: Yardsticks | None = None
        self._doubted: object = None
        self.list = GradeNames(session.theme)
        self.list.setFixedHeight(_NAME_HEIGHT * self.list.count() + 8)
        self.level, self.ratio, self.yardsticks = LevelForm(), RatioForm(), YardsticksPage()
        self._code = words("", "title")
        self._section = Section(session.theme)
        self._facts = QGridLayout()
        self._level_heading = words("Market level", "heading")
        self._scroll = scrolled(self._grade_page(), sideways=True)
        # The page grows as it is laid out and as what was set so far arrives: the level stays wanted until the user
        # scrolls or reads another grade.
        self._wants_level = False
        self._level_to_the_top = QTimer(self)
        self._level_to_the_top.setSingleShot(True)
        self._pages = QStackedWidget()
        self._pages.addWidget(self._scroll)
        self._pages.addWidget(scrolled(self.yardsticks, sideways=True))
        self._lay_out()
        self._connect()
        self.level.show_units(session.units)
        self.list.setCurrentRow(0)

    def _grade_page(self) -> QWidget:
        self._facts.setHorizontalSpacing(20)
        self._facts.setVerticalSpacing(9)
        self._facts.setColumnStretch(1, 1)
        return holder(
            column(
                self._code, self._section, hairline(), words(LEGEND, "small"), self._facts, 8, hairline(), 4,
                self._level_heading, self.level, 4, hairline(), 4, self.ratio, None,
                margins=(24, 18, 24, 24), gap=8,
            )
        )  # fmt: skip

    def _lay_out(self) -> None:
        against = button("Bands, verdicts and rates", "word")
        against.setToolTip("What prices are held against: every grade's band, the sensitivity, the exchange rates")
        against.clicked.connect(self.show_yardsticks)
        left = holder(column(words("Grade", "rail"), self.list, 6, row(against, None), None, gap=6))
        left.setFixedWidth(250)
        self.setLayout(row(left, panel(column(self._pages, margins=(1, 1, 1, 1))), margins=(20, 14, 20, 14), gap=20))

    def _connect(self) -> None:
        session, bar = self._session, self._scroll.verticalScrollBar()
        self.list.currentRowChanged.connect(self._choose)
        self.list.clicked.connect(lambda _: self._pages.setCurrentIndex(0))
        self.level.wanted.connect(self._set_level)
        self.level.index_wanted.connect(self._choose_index)
        self.level.removal_wanted.connect(lambda level: self._edit(lambda: session.door.remove_level(level)))
        self.ratio.wanted.connect(self._set_ratio)
        self.yardsticks.sensitivity_wanted.connect(lambda word: self._edit(lambda: session.door.set_sensitivity(word)))
        self.yardsticks.rate_wanted.connect(self._set_rate)
        self._level_to_the_top.timeout.connect(self._bring_level_into_view)
        bar.rangeChanged.connect(lambda *_: self._level_to_the_top.start(0))
        bar.actionTriggered.connect(lambda _: self._want_no_level())
        session.compared.connect(lambda: session.turns.do(self, ReferencePlace._show_compared))
        session.changed_elsewhere.connect(self.ask_for_levels)
        session.units_changed.connect(lambda: session.turns.do(self, ReferencePlace._change_units))
        session.theme.changed.connect(self._section.update)

    def show_yardsticks(self) -> None:
        """The page that says what prices are held against."""
        self._pages.setCurrentIndex(1)

    def ask_for_levels(self) -> None:
        """Fetches what was set so far; it is shown once it is here."""
        self._session.work.ask(self._session.door.yardsticks, self._show_held)

    def show_level(self, grade: str) -> None:
        """Brings a grade's market level into view; for no grade that of the one all others hang on."""
        self._pages.setCurrentIndex(0)
        self.list.setCurrentRow(list(grades()).index(grade if grade in grades() else REFERENCE_GRADE))
        self.level.amount.setFocus()
        self._wants_level = True
        self._level_to_the_top.start(0)

    def _bring_level_into_view(self) -> None:
        if self._wants_level:
            self._scroll.verticalScrollBar().setValue(self._level_heading.y() - _ABOVE_THE_LEVEL)

    def _want_no_level(self) -> None:
        self._wants_level = False

    def _show_held(self, held: Yardsticks) -> None:
        self._held = held
        self._show_set()
        self.yardsticks.show_sensitivity(held.sensitivity)

    def _show_set(self) -> None:
        today = self._session.footing.as_of
        levels, ratios = ((), ()) if self._held is None else (self._held.levels, self._held.ratios)
        self.level.show_levels(self._grade, levels, today)
        by_own_level = self._grade != REFERENCE_GRADE and self.level.stands_on(today)
        said, _ = _ratio_words(self._grade)
        self._expected.setText(OWN_LEVEL.format(said) if by_own_level else said)
        self.ratio.show_ratios(self._grade, ratios, today, set_aside=by_own_level)

    def _show_compared(self) -> None:
        if self._session.comparison is not None:
            self.yardsticks.show_comparison(self._session.comparison)

    def _set_level(self, typed: LevelTyped) -> None:
        door = self._session.door
        level = (typed.grade, typed.figure, typed.on)
        self._unless_odd(
            typed,
            lambda: door.doubt_level(*level),
            self.level.ask_again,
            lambda: self._edit(lambda: door.set_level(*level, typed.source, typed.spread), self.level.begin_next),
        )

    def _set_ratio(self, typed: RatioTyped) -> None:
        door = self._session.door
        self._edit(
            lambda: door.set_ratio(typed.grade, typed.low, typed.high, typed.on, typed.source), self.ratio.begin_next
        )

    def _set_rate(self, typed: RateTyped) -> None:
        door = self._session.door
        rate = (typed.code, typed.euros, typed.on)
        self._unless_odd(
            typed,
            lambda: door.doubt_rate(*rate),
            self.yardsticks.ask_again,
            lambda: self._edit(lambda: door.set_rate(*rate), self.yardsticks.begin_next),
        )

    def _unless_odd(
        self, typed: object, doubt: Callable[[], str | None], ask: Callable[[str], None], do: Callable[[], None]
    ) -> None:
        """What is odd is asked about once: typed the same again, it is meant."""
        if typed == self._doubted:
            self._doubted = None
            do()
            return

        def judged(odd: str | None) -> None:
            self._doubted = None if odd is None else typed
            if odd is None:
                do()
            else:
                ask(odd)

        self._session.work.ask(doubt, judged)

    def _choose_index(self, grade: str) -> None:
        name, _ = QFileDialog.getOpenFileName(self, "Choose a price index", "", "Date and value (*.csv);;All files (*)")
        if name:
            self._edit(lambda: self._session.door.carry_forward(grade, Path(name)))

    def _edit(self, job: Callable[[], Edit], done: Callable[[], None] = lambda: None) -> None:
        """Lets the desk do it; it can be undone, and everything that rests on it is compared anew."""

        def was_done(edit: Edit) -> None:
            done()
            push(self._session, edit, self._refresh)

        self._session.work.ask(job, was_done)

    def _refresh(self) -> None:
        self.ask_for_levels()
        self._session.reload()

    def _change_units(self) -> None:
        self.level.show_units(self._session.units)
        self._show()

    def _choose(self, place: int) -> None:
        self._want_no_level()
        self._grade = list(grades())[place]
        self._show()

    def _show(self) -> None:
        grade = grades()[self._grade]
        self._code.setText(f"{grade.code} · {grade.name.says}")
        self._section.show_grade(grade.code)
        clear(self._facts)
        for label, facts in (
            ("Also called", grade.other_names), ("Pulp", (grade.pulp,)), ("Plies", (grade.plies,)),
            ("Coating", (grade.coating,)), ("Print side", (grade.colour_front,)), ("Back", (grade.colour_back,)),
            ("Recycled content", (grade.recycled_content,)), ("Strengths", grade.strengths),
            ("Weaknesses", grade.weaknesses), ("Uses", grade.uses), ("Cautions", grade.cautions),
        ):  # fmt: skip
            self._add_facts(label, facts)
        self._add("Usual calipers", _calipers(grade, self._session.units), grade.calipers_source)
        self._add("Usual density", _densities(grade, self._session.units), grade.density_source)
        self._expected = self._add("Price beside SBS", *_ratio_words(grade.code))
        self._show_set()

    def _add_facts(self, label: str, facts: Sequence[Fact]) -> None:
        """Facts of one kind and one source read as one sentence; the source stands once."""
        by_source: dict[str, list[Fact]] = {}
        for fact in facts:
            by_source.setdefault(str(fact.source), []).append(fact)
        for number, group in enumerate(by_source.values()):
            joined = "; ".join(fact.says for fact in group)
            self._add(label if number == 0 else "", joined, group[0].source)

    def _add(self, label: str, text: str, source: Provenance | str) -> QLabel:
        place = self._facts.rowCount()
        name = words(label, "quiet")
        name.setFixedWidth(_LABEL_WIDTH)
        said = words(text, wrap=True, selectable=True)
        origin = whence(source)
        origin.setFixedWidth(_SOURCE_WIDTH)
        if label == "Cautions":
            font = QFont(said.font())
            font.setWeight(QFont.Weight.DemiBold)
            said.setFont(font)
        for at, widget in enumerate((name, said, origin)):
            self._facts.addWidget(widget, place, at, Qt.AlignmentFlag.AlignTop)
        return said


def _calipers(grade: Grade, units: Units) -> str:
    each = [float(micrometres(points, CaliperUnit.POINT)) for points in grade.calipers_pt]
    shown = [figures.caliper(um, units).rpartition(" ")[0] for um in each]
    return f"{', '.join(shown)} {figures.caliper_unit(units)}"


def _densities(grade: Grade, units: Units) -> str:
    parts = []
    for point in grade.densities:
        caliper = figures.caliper(float(point.caliper_um), units)
        parts.append(f"{caliper}: {float(point.low):.2f}–{float(point.high):.2f}")
    return f"{'; '.join(parts)} g/cm³"


def _ratio_words(code: str) -> tuple[str, str]:
    band = ratio(code)
    if code == REFERENCE_GRADE:
        return "the level that the other grades are measured by, per weight", band.source
    low, high = (f"{float(end):.0%}".replace("%", " %") for end in (band.low, band.high))
    return f"{low} to {high} of the level of {REFERENCE_GRADE}, per weight", band.source
