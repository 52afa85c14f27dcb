"""Logging a request: one line of fields, Tab from one to the next, Enter in any of them logs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from PySide6.QtCore import QStringListModel, Qt, Signal
from PySide6.QtWidgets import QCompleter, QFrame, QLineEdit, QVBoxLayout, QWidget

from tracker.trade.grades import grades
from tracker.window.look.figures import Units, caliper_unit
from tracker.window.pieces import button, column, restyle, row, words
from tracker.window.samples.typed import Unclear, caliper_typed, day_typed, grade_typed, vendor_typed


@dataclass(frozen=True, slots=True)
class Request:
    """What was asked for."""

    vendor: str
    grade: str
    caliper_um: Decimal | None
    quantity: str
    needed: date | None
    for_what: str


class LogForm(QFrame):
    """`wanted` carries a Request that is complete; what is not says so under the fields, and nothing is lost."""

    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._units = Units.US
        self._vendors: Sequence[str] = ()
        self._today = date.today()
        self._names = QStringListModel(self)
        self.vendor = self._field("Vendor", "who was asked")
        self.grade = self._field("Grade", "SBS")
        self.caliper = self._field("Caliper", "18 pt")
        self.for_what = self._field("For", "carton or project")
        self.quantity = self._field("How much", "10 sheets")
        self.needed = self._field("Needed by", "12 Dec")
        self._complete(self.vendor, self._names)
        self._complete(self.grade, QStringListModel(list(grades()), self))
        self._log = button("Log the request", "main")
        self._log.clicked.connect(self.log)
        self._wrong = words("", wrap=True)
        self._wrong.hide()
        fields = row(gap=10)
        for field, share in (
            (self.vendor, 5), (self.grade, 2), (self.caliper, 2), (self.for_what, 5), (self.quantity, 3),
            (self.needed, 3),
        ):  # fmt: skip
            fields.addLayout(self._labelled(field), share)
        fields.addWidget(self._log, 0, Qt.AlignmentFlag.AlignBottom)
        self.setLayout(column(fields, self._wrong, margins=(14, 10, 14, 12), gap=6))

    def know(self, vendors: Sequence[str], units: Units, today: date) -> None:
        """The vendors to complete from, what a bare caliper is in, and the day that '2 weeks' counts from."""
        self._today = today
        if tuple(vendors) != tuple(self._vendors):
            self._vendors = tuple(vendors)
            self._names.setStringList(list(vendors))
        self._units = units
        self.caliper.setPlaceholderText("18 pt" if units is Units.US else "450 µm")
        self.caliper.setToolTip(f"A bare number is in {caliper_unit(units)}")

    def start(self) -> None:
        """Puts the cursor where a request begins."""
        self.vendor.setFocus()
        self.vendor.selectAll()

    def log(self) -> None:
        """Hands the request on if every field can be understood; else goes to the first that can't."""
        self._clear_wrong()
        try:
            field: QLineEdit = self.vendor
            vendor = vendor_typed(field.text(), self._vendors)
            field = self.grade
            grade = grade_typed(field.text())
            field = self.caliper
            caliper = caliper_typed(field.text(), self._units)
            field = self.needed
            needed = day_typed(field.text(), self._today)
        except Unclear as unclear:
            self._say_wrong(field, str(unclear))
            return
        self.wanted.emit(
            Request(vendor, grade, caliper, self.quantity.text().strip(), needed, self.for_what.text().strip())
        )

    def begin_next(self) -> None:
        """Empties the fields for the next request; the purpose stays, since several are often asked for one carton."""
        for field in (self.vendor, self.grade, self.caliper, self.quantity, self.needed):
            field.clear()
        self.start()

    def _field(self, name: str, example: str) -> QLineEdit:
        field = QLineEdit()
        field.setAccessibleName(name)
        field.setPlaceholderText(example)
        field.returnPressed.connect(self.log)
        return field

    def _labelled(self, field: QLineEdit) -> QVBoxLayout:
        label = words(field.accessibleName(), "rail")
        label.setBuddy(field)
        return column(label, field, gap=3)

    def _complete(self, field: QLineEdit, names: QStringListModel) -> None:
        completer = QCompleter(names, field)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
        field.setCompleter(completer)

    def _say_wrong(self, field: QLineEdit, why: str) -> None:
        field.setProperty("wrong", "true")
        restyle(field)
        field.setFocus()
        field.selectAll()
        self._wrong.setText(why)
        self._wrong.show()

    def _clear_wrong(self) -> None:
        self._wrong.hide()
        for field in (self.vendor, self.grade, self.caliper, self.needed):
            if field.property("wrong") == "true":
                field.setProperty("wrong", "false")
                restyle(field)
