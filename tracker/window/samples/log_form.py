"""Asking for samples: one line of fields, Tab from one to the next, Enter in any of them logs.

Several vendors and several calipers ask every vendor for every caliper; templates fill the line in one choice.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QStringListModel, Qt, Signal
from PySide6.QtWidgets import QCompleter, QFrame, QLineEdit, QMenu, QToolButton, QWidget

from tracker.desk.sample_requests import Enquiry
from tracker.trade.grades import grades
from tracker.window.field_steps import empty
from tracker.window.look.figures import Units, caliper_unit, counted
from tracker.window.pieces import button, column, holder, row, words
from tracker.window.samples.fields import Wrong, field, labelled, named
from tracker.window.samples.several_names import NamesField, SeveralNames
from tracker.window.samples.typed import (
    NewVendor,
    Unclear,
    caliper_exact,
    calipers_typed,
    day_typed,
    grade_typed,
    vendors_typed,
)

if TYPE_CHECKING:
    from tracker.desk.sample_templates import SampleTemplate

_HOW = "Enter logs. Several at once: vendors apart by ; and calipers by spaces."


class LogForm(QFrame):
    """`wanted` carries an Enquiry that is complete; what is not says so under the fields, and nothing is lost.

    `template_wanted` carries a name and the Enquiry to keep under it.
    """

    wanted = Signal(object)
    template_wanted = Signal(str, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._units = Units.US
        self._vendors: Sequence[str] = ()
        self._templates: Sequence[SampleTemplate] = ()
        self._today = date.today()
        self._names = QStringListModel(self)
        self.vendor = named(NamesField(), "Vendor", "who was asked", self.log)
        self.grade = field("Grade", "SBS", self.log)
        self.caliper = field("Caliper", "18 pt", self.log)
        self.for_what = field("For", "carton or project", self.log)
        self.quantity = field("Form, size, how many", "10 sheets 28 x 40 in", self.log)
        self.needed = field("Needed by", "12 Dec", self.log)
        self.board = field("Vendor's name for the board", "if you want a certain one", self.log)
        self.contact = field("Contact", "who was asked there", self.log)
        self.asked_on = field("Asked on", "today", self.log)
        self.template_name = field("Keep this as a template called", "", self._keep_template)
        self.vendor.setCompleter(SeveralNames(self._names, self.vendor))
        self._complete(self.grade, QStringListModel(list(grades()), self))
        self._log = button("Log the request", "main")
        self._log.clicked.connect(self.log)
        self.templates = self._word("Templates", "Ctrl+Shift+N: a request that was kept under a name")
        self.templates.setMenu(QMenu(self.templates))
        self.templates.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._more = button("More fields", "word")
        self._more.clicked.connect(lambda: self.show_more(self._second.isHidden()))
        self._wrong = Wrong()
        self._sure: set[str] = set()  # names that were doubted once, so that a second Enter takes them
        for each in (self.vendor, self.caliper):
            each.textChanged.connect(self._count)
        self._lay_out()
        self.show_more(False)
        self.know_templates(())

    def know(self, vendors: Sequence[str], units: Units, today: date) -> None:
        """The vendors to complete from, what a bare caliper is in, and the day that '2 weeks' counts from."""
        self._today = today
        if tuple(vendors) != tuple(self._vendors):
            self._vendors = tuple(vendors)
            self._names.setStringList(list(vendors))
        self._units = units
        self.caliper.setPlaceholderText("18 pt" if units is Units.US else "450 µm")
        self.caliper.setToolTip(f"A bare number is in {caliper_unit(units)}; several: 16 18 20")

    def know_templates(self, templates: Sequence[SampleTemplate]) -> None:
        """The templates to choose from."""
        self._templates = tuple(templates)
        menu = self.templates.menu()
        menu.clear()
        for template in templates:
            menu.addAction(template.name).triggered.connect(lambda _=False, chosen=template: self.use(chosen))
        if not templates:
            menu.addAction("None yet: fill in a request, then name it under More fields").setEnabled(False)

    def start(self) -> None:
        """Puts the cursor where a request begins."""
        self.vendor.setFocus()
        self.vendor.selectAll()

    def open_templates(self) -> None:
        """Shows the templates, the first one chosen, so that Enter fills it in."""
        menu = self.templates.menu()
        menu.popup(self.templates.mapToGlobal(self.templates.rect().bottomLeft()))
        if self._templates:
            menu.setActiveAction(menu.actions()[0])

    def use(self, template: SampleTemplate) -> None:
        """Fills the fields from a template."""
        enquiry = template.used_on(self._today)
        self.vendor.setText("; ".join(enquiry.vendors))
        self.grade.setText(enquiry.grade)
        self.caliper.setText(" ".join(caliper_exact(caliper) for caliper in enquiry.calipers_um))
        self.for_what.setText(enquiry.for_what)
        self.quantity.setText(enquiry.quantity)
        self.needed.setText("" if enquiry.needed is None else enquiry.needed.isoformat())
        self.board.setText(enquiry.board)
        self.start()
        self.vendor.setCursorPosition(len(self.vendor.text()))

    def show_more(self, shown: bool) -> None:
        """Shows or hides the fields that few requests need."""
        self._second.setVisible(shown)
        self._more.setText("Fewer fields" if shown else "More fields")

    def log(self) -> None:
        """Hands the enquiry on if every field can be understood; else goes to the first that can't."""
        enquiry = self._typed()
        if enquiry is not None:
            self.wanted.emit(enquiry)

    def begin_next(self) -> None:
        """Empties the fields for the next request; the purpose stays, since several are often asked for one carton."""
        empty(self.vendor, self.grade, self.caliper, self.quantity, self.needed, self.board, self.contact)
        self.start()

    def refuse(self, why: str) -> None:
        """Says why the desk did not log it; what was typed stays."""
        self._wrong.say(why)

    def _typed(self) -> Enquiry | None:
        self._wrong.clear()
        at: QLineEdit = self.vendor
        try:
            vendors = vendors_typed(at.text(), self._vendors, self._sure)
            at = self.grade
            grade = grade_typed(at.text())
            at = self.caliper
            calipers = calipers_typed(at.text(), self._units)
            at = self.needed
            needed = day_typed(at.text(), self._today)
            at = self.asked_on
            on = day_typed(at.text(), self._today)
        except Unclear as unclear:
            if isinstance(unclear, NewVendor):
                self._sure.add(unclear.name)
            self._wrong.say(str(unclear), at)
            return None
        return Enquiry(
            vendors, grade, calipers, self.board.text().strip(), self.quantity.text().strip(),
            self.for_what.text().strip(), needed, on, self.contact.text().strip(),
        )  # fmt: skip

    def _keep_template(self) -> None:
        enquiry, name = self._typed(), self.template_name.text().strip()
        if enquiry is None:
            return
        if not name:
            self._wrong.say("What shall the template be called? Write a name, then Enter.", self.template_name)
            return
        self.template_wanted.emit(name, enquiry)
        empty(self.template_name)

    def _count(self) -> None:
        """Says on the button how many requests Enter would log."""
        vendors = len([name for name in self.vendor.text().split(";") if name.strip()])
        try:
            calipers = len(calipers_typed(self.caliper.text(), self._units))
        except Unclear:
            calipers = 1
        number = vendors * max(1, calipers)
        self._log.setText(f"Log {counted(number, 'request')}" if number > 1 else "Log the request")

    def _lay_out(self) -> None:
        first = row(gap=10)
        for each, share in (
            (self.vendor, 5), (self.grade, 2), (self.caliper, 2), (self.for_what, 4), (self.quantity, 4),
            (self.needed, 3),
        ):  # fmt: skip
            first.addLayout(labelled(each), share)
        first.addWidget(self._log, 0, Qt.AlignmentFlag.AlignBottom)
        second = row(gap=10)
        for each, share in ((self.board, 4), (self.contact, 3), (self.asked_on, 2), (self.template_name, 4)):
            second.addLayout(labelled(each), share)
        self._second = holder(second)
        foot = row(words(_HOW, "small"), None, self.templates, self._more, gap=6)
        self.setLayout(column(first, self._second, self._wrong.label, foot, margins=(14, 10, 14, 6), gap=6))

    def _word(self, title: str, tip: str) -> QToolButton:
        made = QToolButton()
        made.setText(title)
        made.setToolTip(tip)
        made.setProperty("kind", "word")
        made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        return made

    def _complete(self, each: QLineEdit, names: QStringListModel) -> None:
        completer = QCompleter(names, each)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
        each.setCompleter(completer)
