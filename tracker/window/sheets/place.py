"""The Sheets place: every file taken in, withdrawn or brought back, and what is remembered of the vendors."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QSplitter, QWidget

from tracker.window.look.figures import counted
from tracker.window.pieces import button, column, holder, panel, row, words
from tracker.window.session import Session
from tracker.window.sheets.file_columns import FILE_COLUMNS, is_withdrawn
from tracker.window.sheets.name_vendor_dialog import NameVendorDialog
from tracker.window.sheets.remembered_panel import RememberedPanel
from tracker.window.tables.model import ColumnTable
from tracker.window.tables.view import RowsView
from tracker.window.undo import push, push_changed

if TYPE_CHECKING:
    from tracker.desk.edits import Edit
    from tracker.desk.files import StoredFile
    from tracker.desk.layouts import KeptLayout
    from tracker.desk.questions import Remembered

_WIDE = 1200
_WITHDRAW = "Delete: its offers no longer count; the file is kept and can be brought back"
_BRING_BACK = "Delete: its offers count again"


class SheetsPlace(QWidget):
    """`sheet_wanted` carries the number of a file to be shown as it was sent, with a cell to go to; `anew_wanted` the
    name and sha256 of one whose questions are to be answered anew."""

    sheet_wanted = Signal(object, str, str)
    anew_wanted = Signal(str, str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._files: tuple[StoredFile, ...] = ()
        self._told = words("", "quiet")
        self.model = ColumnTable(FILE_COLUMNS, self, faint=is_withdrawn)
        self.table = RowsView(self.model, session.theme)
        self.table.setAccessibleName("Files taken in")
        self.show_sheet = button("Show the sheet")
        self.show_sheet.setToolTip("Enter: the file as the vendor sent it")
        self.anew = button("Answer anew…")
        self.anew.setToolTip("A: what was answered about it, to be changed; it then replaces what was stored of it")
        self.withdraw = button("Withdraw")
        self.name_vendor = button("Name the vendor…")
        self.name_vendor.setToolTip("N: the sheet names nobody, so its offers are no vendor's yet")
        self.remembered = RememberedPanel()
        self._lay_out()
        self._connect()
        self._choose(-1)

    def _lay_out(self) -> None:
        files = panel(column(self.table, margins=(1, 1, 1, 1)))
        foot = row(self.show_sheet, self.anew, self.withdraw, self.name_vendor, None, gap=10)
        both = QSplitter(Qt.Orientation.Horizontal)
        both.addWidget(holder(column(files, foot, gap=10, grow=0)))
        both.addWidget(self.remembered)
        both.setHandleWidth(20)
        both.setChildrenCollapsible(False)
        both.setStretchFactor(0, 3)
        both.setStretchFactor(1, 2)
        both.setSizes([780, 520])
        heading = row(words("Price sheets taken in", "title"), 14, self._told, None)
        self.setLayout(column(heading, both, margins=(24, 18, 24, 18), gap=14, grow=1))

    def _connect(self) -> None:
        self.table.picked.connect(self._choose)
        self.table.entered_row.connect(lambda _: self._show_sheet())
        self.show_sheet.clicked.connect(self._show_sheet)
        self.anew.clicked.connect(self._answer_anew)
        self.withdraw.clicked.connect(self._withdraw_or_back)
        self.name_vendor.clicked.connect(self._ask_vendor)
        for letter, do in (("N", self._ask_vendor), ("A", self._answer_anew)):
            by_letter = QShortcut(QKeySequence(letter), self.table, do)
            by_letter.setContext(Qt.ShortcutContext.WidgetShortcut)
        self.remembered.forget_answer.connect(self._forget_answer)
        self.remembered.change_answer.connect(self._change_answer)
        self.remembered.forget_layout.connect(self._forget_layout)
        self._session.compared.connect(self._ask_if_shown)

    def ask(self) -> None:
        """Fetches the files and what is remembered."""
        work, door = self._session.work, self._session.door
        work.ask(door.files, self._show_files)
        work.ask(lambda: (door.remembered(), door.layouts()), self._show_remembered)

    def _ask_if_shown(self) -> None:
        """Something was stored, withdrawn or taken back."""
        if self.isVisible():
            self.ask()

    @property
    def chosen(self) -> StoredFile | None:
        index = self.table.currentIndex()
        return self._files[int(self.model.order[index.row()])] if index.isValid() else None

    def _show_files(self, files: tuple[StoredFile, ...]) -> None:
        kept = self.chosen
        self._files = files
        withdrawn = sum(file.withdrawn for file in files)
        gone = f", {withdrawn:,} of them withdrawn" if withdrawn else ""
        self._told.setText(f"{counted(len(files), 'file')}{gone}" if files else "None yet: drop one on the window.")
        self.table.show_column("state", withdrawn > 0)
        self.model.show(files, np.arange(len(files)))
        # Where none was chosen the latest is, so that what can be done with it can be done at once.
        first = 0 if files else -1
        again = next((place for place, file in enumerate(files) if kept is not None and file.id == kept.id), first)
        if again >= 0:
            self.table.go_to(again)
        self._choose(again)

    def _show_remembered(self, both: tuple[tuple[Remembered, ...], tuple[KeptLayout, ...]]) -> None:
        self.remembered.show_remembered(*both)

    def _choose(self, place: int) -> None:
        file = self._files[place] if 0 <= place < len(self._files) else None
        for press in (self.show_sheet, self.anew, self.withdraw):
            press.setEnabled(file is not None)
        self.name_vendor.setVisible(file is not None and file.vendor is None)
        withdrawn = file is not None and file.withdrawn
        self.withdraw.setText("Bring back" if withdrawn else "Withdraw")
        self.withdraw.setToolTip(_BRING_BACK if withdrawn else _WITHDRAW)
        self.remembered.show_vendor(file.vendor or "" if file is not None else "")

    def _show_sheet(self) -> None:
        file = self.chosen
        if file is not None:
            self.sheet_wanted.emit(file.id, "", "")

    def _answer_anew(self) -> None:
        file = self.chosen
        if file is not None:
            self.anew_wanted.emit(file.name, file.sha256)

    def _withdraw_or_back(self) -> None:
        file, door = self.chosen, self._session.door
        if file is not None:
            do = door.bring_back_file if file.withdrawn else door.withdraw_files
            self._session.work.ask(lambda: do(file.id), self._was_changed)

    def _ask_vendor(self) -> None:
        file = self.chosen
        if file is not None and file.vendor is None:
            dialog = NameVendorDialog(file.name, self._session.vendors, self)
            dialog.named.connect(lambda name: self._name(file.id, name))
            dialog.open()

    def _name(self, file_id: int, vendor: str) -> None:
        door = self._session.door
        self._session.work.ask(lambda: door.name_vendor(file_id, vendor), self._was_changed)

    def _was_changed(self, edit: Edit) -> None:
        push(self._session, edit, self._session.reload)

    def _forget_answer(self, answer: int) -> None:
        door = self._session.door
        self._session.work.ask(lambda: door.forget_answer(answer), lambda edit: push(self._session, edit, self.ask))

    def _change_answer(self, answer: int, value: str) -> None:
        door = self._session.door
        self._session.work.ask(lambda: door.change_answer(answer, value), partial(push_changed, self._session))

    def _forget_layout(self, layout: int) -> None:
        door = self._session.door
        self._session.work.ask(lambda: door.forget_layout(layout), lambda edit: push(self._session, edit, self.ask))

    # Qt's own names from here on

    def resizeEvent(self, event: QResizeEvent) -> None:
        """In a narrow window names go on in a second line, and the day of taking in is told by the day received."""
        super().resizeEvent(event)
        wide = event.size().width() >= _WIDE
        self.table.show_texts_in(1 if wide else 2)
        self.table.show_column("imported", wide)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Delete and self.withdraw.isEnabled():
            self._withdraw_or_back()
        else:
            super().keyPressEvent(event)
