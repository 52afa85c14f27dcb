"""What a sample measured: a column of readings is pasted, and each claim of the board is held against them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QMenu, QPlainTextEdit, QToolButton, QVBoxLayout, QWidget

from tracker.trade.claims import FEWEST, Verdict
from tracker.trade.exact import as_decimal, plain_text
from tracker.trade.methods import Property, properties
from tracker.trade.sampling import CAUTION, SOURCE, units_to_take
from tracker.window.field_steps import empty
from tracker.window.look.figures import Units
from tracker.window.pieces import button, clear, column, follow_by_tab, hairline, holder, row, scrolled, words
from tracker.window.samples.fields import Wrong, field, labelled
from tracker.window.samples.reading_strip import ReadingStrip
from tracker.window.samples.year_line import YearLine
from tracker.window.session import Session

if TYPE_CHECKING:
    from tracker.desk.sample_checks import PropertyChecked, SampleChecked
    from tracker.desk.samples import Sample

_AIR = (("conditioned?", None), ("conditioned (23 °C, 50 %)", True), ("not conditioned", False))
_A_LOT = 100
_EXAMPLES = {
    ("caliper", "pt"): "18.1 18.0 17.9",
    ("caliper", "µm"): "460 457 455",
    ("caliper", "mm"): "0.460 0.457 0.455",
    ("caliper", "in"): "0.0181 0.0180 0.0179",
    ("grammage", "g/m²"): "351 348 350",
    ("grammage", "lb/MSF"): "71.9 71.3 71.7",
}
_VERDICTS = {Verdict.AGREES: "agrees", Verdict.OFF: "is off", Verdict.OPEN: "too few readings to tell"}


@dataclass(frozen=True, slots=True)
class ReadingsTyped:
    """Readings as pasted, with how they were taken."""

    number: int
    property: str
    text: str
    unit: str
    conditioned: bool | None


@dataclass(frozen=True, slots=True)
class ClaimTyped:
    """What a data sheet claims, as typed."""

    number: int
    property: str
    value: str
    unit: str


class _PasteBox(QPlainTextEdit):
    """A column of figures: Enter on an empty last line, or Ctrl+Enter, records it; Escape leaves it as it stands."""

    done = Signal()
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName("Readings")
        self.setFixedHeight(84)
        self.setTabChangesFocus(True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        text = self.toPlainText()
        finished = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier) or text.endswith("\n")
        if enter and finished and text.strip():
            self.done.emit()
            return
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)


class MeasuredPage(QWidget):
    """`readings_wanted` carries ReadingsTyped, `claim_wanted` ClaimTyped, `reading_off` a sample's number and the id of
    one of its readings, `board_named` a sample's number and the vendor's name for its board. `left`: the keys are to go
    back to the samples."""

    readings_wanted = Signal(object)
    claim_wanted = Signal(object)
    reading_off = Signal(object, object)
    board_named = Signal(object, str)
    left = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._sample: Sample | None = None
        self._ticket = 0
        self._menus: list[QToolButton] = []
        self.which, self.unit, self.air = _choice("Property"), _choice("Unit"), _choice("Conditioned")
        # The longest name of all would make the whole panel wide.
        self.which.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.which.setMinimumContentsLength(12)
        for found in properties().values():
            self.which.addItem(found.name, found.key)
        self.air.addItems([title for title, _ in _AIR])
        self.figures = _PasteBox()
        self.claim = field("The data sheet claims", "a figure; Enter keeps it", self._claim)
        self.year = YearLine(session)
        self._wrong = Wrong()
        self._how = words("", "small", wrap=True)
        self._found = QVBoxLayout()
        self._found.setSpacing(4)
        self._scroll = scrolled(holder(column(self._found, self.year, None, margins=(0, 4, 8, 4), gap=10)))
        self._lay_out()
        self._connect()
        self._follow_property()

    def _lay_out(self) -> None:
        record = button("Record the readings  Ctrl+Enter", "main")
        record.setToolTip("Ctrl+Enter, or Enter on an empty line, records them")
        record.clicked.connect(self.record)
        # What is wrong is told above the fields: it takes its room from the page, and they stay under the mouse.
        form = column(
            hairline(), self._wrong.label, row(self.which, self.unit, gap=8, grow=0),
            row(self.figures, self._side(), gap=10, grow=0), row(record, None), self._how, gap=7,
        )  # fmt: skip
        self.setLayout(column(self._scroll, form, gap=6, grow=0))

    def _connect(self) -> None:
        self.figures.done.connect(self.record)
        self.figures.left.connect(self.left)
        self.figures.textChanged.connect(self._wrong.clear)
        self.which.currentIndexChanged.connect(lambda _: self._follow_property())
        self.unit.currentTextChanged.connect(lambda _: self._show_example())

    def show_sample(self, sample: Sample) -> None:
        """Shows what one sample measured. What was pasted stays while it is the same sample."""
        if self._sample is None or sample.number != self._sample.number:
            self.figures.clear()
            empty(self.claim)
            self._wrong.clear()
        self._sample = sample
        self._session.work.drop(self._ticket)
        door, number, us = self._session.door, sample.number, self._session.units is Units.US
        self._ticket = self._session.work.ask(lambda: door.check_sample(number, us), self._show_checked)

    def start(self) -> None:
        """Puts the cursor where readings go."""
        self.figures.setFocus()

    def record(self) -> None:
        """Hands the readings on as they stand; the desk says what is wrong with them."""
        if self._sample is None:
            return
        self._wrong.clear()
        if not self.figures.toPlainText().strip():
            self._wrong.say("Type the readings, with spaces between, or paste a column of them.")
            self.figures.setFocus()
            return
        self.readings_wanted.emit(
            ReadingsTyped(
                self._sample.number, self._property().key, self.figures.toPlainText(), self.unit.currentText(),
                _AIR[self.air.currentIndex()][1],
            )
        )  # fmt: skip

    def recorded(self) -> None:
        """The readings were stored, so the box is empty for the next."""
        self.figures.clear()
        self.figures.setFocus()

    def refuse(self, why: str) -> None:
        """Says why nothing was stored; what was pasted stays to be mended."""
        self._wrong.say(why)
        self.figures.setFocus()

    def _side(self) -> QWidget:
        return holder(column(self.air, labelled(self.claim), None, gap=8))

    def _property(self) -> Property:
        return properties()[self.which.currentData()]

    def _follow_property(self) -> None:
        found = self._property()
        self.unit.clear()
        self.unit.addItems(list(dict.fromkeys((found.unit, *found.units))))
        if found.us_unit and self._session.units is Units.US:
            self.unit.setCurrentText(found.us_unit)
        self._how.setText(_readings_wanted(found))
        lot = f"For a lot of {_A_LOT} pallets or reels, take samples from {units_to_take(_A_LOT)} of them ({SOURCE})."
        self._how.setToolTip(f"{found.note} {lot} {CAUTION}".strip())
        self.which.setToolTip(found.note)

    def _show_example(self) -> None:
        """Figures such as one reads in the unit that is chosen."""
        example = _EXAMPLES.get((self._property().key, self.unit.currentText()), "")
        self.figures.setPlaceholderText(f"{example}\nor paste a column" if example else "type or paste a column")

    def _claim(self) -> None:
        if self._sample is not None and self.claim.text().strip():
            self.claim_wanted.emit(
                ClaimTyped(self._sample.number, self._property().key, self.claim.text(), self.unit.currentText())
            )

    def _show_checked(self, checked: SampleChecked) -> None:
        if any(menu.hasFocus() for menu in self._menus):
            # The word that was chosen from goes: where the cursor falls by itself, the page would scroll after it.
            self.figures.setFocus()
        clear(self._found)
        self._menus = []
        # Why nothing is claimed, and what to do about it, is told where it is missed.
        unclaimed = next((each for each in checked.properties if each.readings and each.claim is None), None)
        for each in checked.properties:
            self._add(each, checked if each is unclaimed else None)
        if unclaimed is None:
            self._add_why_unclaimed(checked)
        if not checked.properties and not checked.why_not:
            self._found.addWidget(words("Nothing was measured or claimed yet.", "quiet", wrap=True))
        follow_by_tab(self._scroll, *self._menus)
        weighed = next((each for each in checked.properties if each.property.key == "grammage"), None)
        self.year.show_for(self._sample, weighed)

    def _add_why_unclaimed(self, checked: SampleChecked) -> None:
        if checked.why_not:
            self._found.addWidget(words(checked.why_not, wrap=True))
        if checked.choices and self._sample is not None:
            named, number = self._menu("Which board is it?"), self._sample.number
            for name in checked.choices:
                action = named.menu().addAction(name.replace("&", "&&"))
                action.triggered.connect(lambda _=False, name=name: self.board_named.emit(number, name))
            self._found.addLayout(row(named, None))

    def _add(self, checked: PropertyChecked, unclaimed: SampleChecked | None) -> None:
        title = checked.property.name
        if checked.check is not None:
            title = _headline(checked, checked.check.verdict)
        self._found.addWidget(words(title, "strong"))
        if checked.readings:
            self._found.addWidget(ReadingStrip(self._session.theme, checked))
        for place, sentence in enumerate(checked.sentences):
            self._found.addWidget(words(sentence, "" if place == 0 else "small", wrap=True, selectable=True))
            if place == 0 and unclaimed is not None:
                self._add_why_unclaimed(unclaimed)
            if place == 0 and checked.also:
                self._found.addWidget(words(checked.also, "small", wrap=True))
        if checked.readings:
            self._found.addLayout(row(self._take_off(checked), None))
        if checked.claim is not None:
            self._found.addWidget(words(f"Claimed by {checked.claim.source}.", "small", wrap=True))
        self._found.addSpacing(8)

    def _take_off(self, checked: PropertyChecked) -> QToolButton:
        """A choice among the readings, for one that was mistyped; undo brings it back."""
        offered = self._menu("Take off a mistyped reading")
        factor = checked.property.factor(checked.unit) or Fraction(1)
        for place, reading in enumerate(checked.readings, start=1):
            shown = plain_text(as_decimal(Fraction(reading.value) / factor))
            action = offered.menu().addAction(f"no. {place}: {shown} {checked.unit}")
            action.triggered.connect(lambda _=False, gone=reading: self.reading_off.emit(gone.sample, gone.id))
        return offered

    def _menu(self, title: str) -> QToolButton:
        """A word that opens a choice, which is put into its menu."""
        made = QToolButton()
        made.setText(title)
        made.setProperty("kind", "word")
        made.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        made.setMenu(QMenu(made))
        self._menus.append(made)
        return made


def _choice(name: str) -> QComboBox:
    made = QComboBox()
    made.setAccessibleName(name)
    return made


def _headline(checked: PropertyChecked, verdict: Verdict) -> str:
    joint = ": " if verdict is Verdict.OPEN else " "
    return f"{checked.property.name}{joint}{_VERDICTS[verdict]}"


def _readings_wanted(property_: Property) -> str:
    """How many readings to take, in one sentence."""
    methods = " or ".join(property_.methods)
    if property_.least <= FEWEST:
        return f"Take at least {FEWEST} readings ({methods})."
    return f"{FEWEST} readings give a first answer; for a firm one take {property_.least} ({methods})."
