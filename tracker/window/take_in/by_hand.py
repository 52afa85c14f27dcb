"""Marking the table of the file at hand: begun, shown on the sheet that is looked at, read again with each mark."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoStack

from tracker.window.take_in.answers import MarksChanged
from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.marking import Marking
from tracker.window.take_in.sheet_panel import SheetPanel


class MarkingByHand(QObject):
    """Carries marks from the sheet to its file and back; each can be undone.

    `at_hand` gives the file that is shown, `read_again` has one read with its marks. `shown` says that marking was
    begun or ended.
    """

    shown = Signal()

    def __init__(
        self,
        sheet: SheetPanel,
        undo_stack: QUndoStack,
        at_hand: Callable[[], FileAtHand | None],
        read_again: Callable[[FileAtHand], None],
    ) -> None:
        super().__init__(sheet)
        self._sheet = sheet
        self._undo_stack = undo_stack
        self._at_hand = at_hand
        self._read_again = read_again
        sheet.sheet_shown.connect(self.show_marks)
        sheet.marking_wanted.connect(self.begin)
        sheet.strip.marked.connect(self.mark)

    def begin(self, wanted: bool = True) -> None:
        """Begins marking the sheet that is shown, or ends it."""
        file = self._at_hand()
        if file is None or self._sheet.grid is None:
            return
        self._sheet.show_marking(file.marking or self._start(file) if wanted else None)
        self._sheet.view.setFocus()
        self.shown.emit()

    def use_earlier(self) -> None:
        """Marks the sheet at hand as the vendor's earlier one was."""
        file = self._at_hand()
        if file is not None and file.found.earlier is not None:
            said = "used the marks of the vendor's earlier sheet"
            self._undo_stack.push(MarksChanged(file, file.found.earlier.marking, lambda: self._changed(file), said))

    def show_marks(self) -> None:
        """Marks of the file at hand on the sheet that is looked at, while marking goes on."""
        file = self._at_hand()
        if file is None or file.workbook is None:
            return
        going_on = not self._sheet.strip.isHidden()
        self._sheet.show_marking(file.marking or self._start(file) if going_on or file.marking else None)
        self.shown.emit()

    def mark(self, marking: Marking, said: str) -> None:
        """Takes new marks for the file at hand; `said` is what undoing them is called."""
        file = self._at_hand()
        if file is not None:
            new: Marking | None = marking
            if marking == Marking():
                # Where marks are understood, having none at all is something to be said too.
                shown = file.marking or self._start(file)
                new = Marking(self._sheet.grid.sheet) if shown.columns else None
            self._undo_stack.push(MarksChanged(file, new, lambda: self._changed(file), said))

    def _start(self, file: FileAtHand) -> Marking:
        """What a sheet without marks is marked from: all that was understood of its table."""
        grid = self._sheet.grid
        if grid is None:
            return Marking()
        understood = None if file.marking is not None else file.found.marks.get(grid.sheet)
        return understood or Marking(grid.sheet)

    def _changed(self, file: FileAtHand) -> None:
        if file is self._at_hand():
            self.show_marks()
        self._read_again(file)
