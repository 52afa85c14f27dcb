"""The strip above the sheet in which a table is marked by hand, for the cell that one stands in."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from typing import Any

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtWidgets import QFrame, QMenu, QToolButton, QWidget

from tracker.trade.answer_words import USUAL_CURRENCIES
from tracker.trade.grades import grades
from tracker.trade.layout import MARKED_ROLES, MarkedColumn, MarkedRole
from tracker.window.currency_dialog import CurrencyDialog
from tracker.window.pieces import button, column, row, words
from tracker.window.take_in.cells import column_letters
from tracker.window.take_in.marking import Marking


class MarkingStrip(QFrame):
    """Changes a Marking. `marked` carries the new one and what was done, in words; `ended` leaves marking."""

    marked = Signal(object, str)
    ended = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("Marking the table by hand")
        self._marking = Marking()
        self._grid: Any = None
        self._place = (0, 0)
        self._told = words("", "small", wrap=True)
        # Two lines from the start: what is pressed below is not to move away under the pointer.
        self._told.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._told.setMinimumHeight(2 * self._told.fontMetrics().lineSpacing() + 2)
        self._row, self._column = words("", "small"), words("", "small")
        self.name = _opening("Name…", "N: what the column holds")
        self._name_menu = QMenu(self)
        self._name_menu.aboutToShow.connect(lambda: self._fill_names(self._name_menu))
        self.name.setMenu(self._name_menu)
        self.header = button("Header")
        self.header.setToolTip("H: the columns' names stand in this row")
        self.first = button("First")
        self.first.setToolTip("F: the offers begin in this row")
        self.last = button("Last")
        self.last.setToolTip("L: the offers end in this row")
        self.all_rows = _opening("All rows…", "What the sheet says nowhere: currency, grade")
        all_rows = QMenu(self)
        all_rows.aboutToShow.connect(lambda: self._fill_all_rows(all_rows))
        self.all_rows.setMenu(all_rows)
        self.again = button("Start over", "word")
        self.end = button("Stop marking", "word")
        for press, do in (
            (self.header, self.mark_header), (self.first, self.mark_first), (self.last, self.mark_last),
            (self.again, self.start_over), (self.end, self.ended.emit),
        ):  # fmt: skip
            press.clicked.connect(lambda _checked=False, do=do: do())
        # Rows that are short: a long one would take the room from the offers that one watches while marking.
        rows = row(self._row, self.header, self.first, self.last, None, gap=6)
        columns = row(self._column, self.name, self.all_rows, None, gap=6)
        ends = row(self.again, self.end, None, gap=4)
        self.setLayout(column(self._told, rows, columns, ends, margins=(16, 2, 10, 4), gap=4))

    def show_marking(self, marking: Marking, grid: Any) -> None:
        """Shows what is marked in a grid so far."""
        self._marking, self._grid = marking, grid
        self._told.setText(marking.told(grid) if grid is not None else "")
        self.stand_at(*self._place)

    def stand_at(self, at_row: int, at_column: int) -> None:
        """The cell that the marks will be about."""
        self._place = (at_row, at_column)
        self._row.setText(f"Row {at_row + 1}")
        self._column.setText(f"Column {column_letters(at_column)}")
        for press, what in ((self.header, "has the header"), (self.first, "is the first"), (self.last, "is the last")):
            press.setAccessibleName(f"Row {at_row + 1} {what}")

    def press(self, key: str) -> None:
        """One of N, H, F, L pressed in the sheet."""
        do = {"N": self.open_names, "H": self.mark_header, "F": self.mark_first, "L": self.mark_last}.get(key)
        if do is not None:
            do()

    def open_names(self) -> None:
        """The names a column may have, below their button; unlike Qt's own way this waits for nobody."""
        self._name_menu.popup(self.name.mapToGlobal(self.name.rect().bottomLeft()))

    def open_menu(self, where: QPoint) -> None:
        """Everything that can be marked at the cell, as a menu at a point of the screen."""
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._fill_names(menu.addMenu(f"Column {column_letters(self._place[1])} is"))
        number = self._place[0] + 1
        menu.addAction(f"Row {number} has the columns' names", self.mark_header)
        menu.addAction(f"Row {number} is the first of the offers", self.mark_first)
        menu.addAction(f"Row {number} is the last of the offers", self.mark_last)
        self._fill_all_rows(menu.addMenu(self.all_rows.text()))
        menu.popup(where)

    def mark_header(self) -> None:
        self._mark(self._marking.headed_by(self._place[0]), f"marked the header in row {self._place[0] + 1}")

    def mark_first(self) -> None:
        self._mark(self._marking.beginning_at(self._place[0]), f"marked row {self._place[0] + 1} as the first offer")

    def mark_last(self) -> None:
        self._mark(self._marking.ending_at(self._place[0]), f"marked row {self._place[0] + 1} as the last offer")

    def start_over(self) -> None:
        self._mark(Marking(), "took all marks off")

    def name_column(self, role: str, unit: str = "") -> None:
        """Names the column one stands in."""
        named = MarkedColumn(self._place[1], role, unit)
        self._mark(self._marking.named(named), f"named column {column_letters(named.index)} {named.words}")

    def _mark(self, marking: Marking, said: str) -> None:
        sheet = self._grid.sheet if self._grid is not None else ""
        if marking.sheet != sheet and marking != Marking():
            marking = replace(marking, sheet=sheet)
        self.marked.emit(marking, said)

    def _fill_names(self, menu: QMenu) -> None:
        menu.clear()
        for known in MARKED_ROLES:
            self._add_role(menu, known)
        if self._place[1] in self._marking.columns:
            menu.addSeparator()
            said = f"took the name off column {column_letters(self._place[1])}"
            menu.addAction("Take its name off", lambda: self._mark(self._marking.unnamed(self._place[1]), said))

    def _add_role(self, menu: QMenu, known: MarkedRole) -> None:
        now = self._marking.columns.get(self._place[1])
        if not known.units:
            self._add(menu, known.words, known.role, "", now)
            return
        units = menu.addMenu(known.words)
        units.menuAction().setCheckable(True)
        units.menuAction().setChecked(now is not None and now.role == known.role)
        self._add(units, "as the sheet says", known.role, "", now)
        units.addSeparator()
        for code, said in known.units:
            self._add(units, said, known.role, code, now)

    def _add(self, menu: QMenu, title: str, role: str, unit: str, now: MarkedColumn | None) -> None:
        action = menu.addAction(title, partial(self.name_column, role, unit))
        action.setCheckable(True)
        action.setChecked(now is not None and (now.role, now.unit) == (role, unit))

    def _fill_all_rows(self, menu: QMenu) -> None:
        menu.clear()
        money = menu.addMenu("The prices are in")
        for code in (None, *USUAL_CURRENCIES):
            self._add_whole(money, code or "as the sheet says", "currency", code)
        money.addSeparator()
        other = self._marking.currency if self._marking.currency not in (None, *USUAL_CURRENCIES) else None
        if other:
            self._add_whole(money, other, "currency", other)
        money.addAction("another…", self._ask_currency)
        boards = menu.addMenu("The boards are")
        self._add_whole(boards, "as the sheet says", "grade", None)
        for code, grade in grades().items():
            self._add_whole(boards, f"{code} · {grade.name.says}", "grade", code)

    def _ask_currency(self) -> None:
        dialog = CurrencyDialog(self)
        dialog.chosen.connect(lambda code: self._mark(replace(self._marking, currency=code), f"currency {code}"))
        dialog.open()

    def _add_whole(self, menu: QMenu, title: str, what: str, code: str | None) -> None:
        said = f"{what} {code}" if code else f"{what} as the sheet says"
        changed = replace(self._marking, **{what: code})  # type: ignore[arg-type]
        action = menu.addAction(title, lambda: self._mark(changed, said))
        action.setCheckable(True)
        action.setChecked(getattr(self._marking, what) == code)


def _opening(text: str, tip: str) -> QToolButton:
    """A button that opens its choices."""
    made = QToolButton()
    made.setText(text)
    made.setToolTip(tip)
    made.setProperty("kind", "pill")
    made.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
    made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    return made
