"""The decision at the foot of taking in: what agreeing does, what it waits for, and the way back."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from tracker.window.look.figures import counted
from tracker.window.pieces import button, row, words
from tracker.window.take_in.file_at_hand import FileAtHand, lapsed_words

_NOTHING_YET = "Nothing is stored until you agree."


class AgreeBar(QWidget):
    """Shows what can be agreed to. `agreed`: to the file at hand, `all_agreed`: to every file that is ready.
    `anew_wanted`: a file that was taken in before is to be answered anew."""

    agreed = Signal()
    all_agreed = Signal()
    left = Signal()
    anew_wanted = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.agree = button("Take in", "main")
        self.agree.setToolTip("Ctrl+Enter")
        self.agree_all = button("Take in all files")
        self.agree_all.setToolTip("Ctrl+Shift+Enter")
        self.leave = button("Cancel")
        self.start_over = button("Forget my answers", "word")
        self.start_over.setToolTip("The answers and marks of this file; can be undone")
        self.anew = button("Answer it anew")
        self.anew.setToolTip("Shows its answers again; what is taken in then replaces what was stored of it")
        self.told = words(_NOTHING_YET, "quiet", wrap=True)
        layout = row(self.told, self.start_over, self.leave, self.anew, self.agree_all, self.agree, gap=10, grow=0)
        self.setLayout(layout)
        self.ways = (self.start_over, self.leave, self.anew, self.agree_all, self.agree)
        self.agree.clicked.connect(self.agreed)
        self.agree_all.clicked.connect(self.all_agreed)
        self.leave.clicked.connect(self.left)
        self.anew.clicked.connect(self.anew_wanted)
        for enter in ("Return", "Enter"):
            QShortcut(QKeySequence(f"Ctrl+{enter}"), parent, self.agree.click)
            QShortcut(QKeySequence(f"Ctrl+Shift+{enter}"), parent, self.agree_all.click)

    def show_file(self, file: FileAtHand | None, files: Sequence[FileAtHand], today: date) -> None:
        """Says what agreeing brings for the file at hand, and for all of them; of a list that has run out, that too."""
        number = 0 if file is None else file.accepted
        unreadable = file is not None and file.is_unreadable
        self.agree.setText(f"Take in {counted(number, 'offer')}" if number else _why_not(file))
        self.agree.setEnabled(file is not None and file.ready > 0)
        self.agree.setVisible(not unreadable)
        ready = [each for each in files if each.ready]
        self.agree_all.setVisible(len(ready) > 1)
        self.agree_all.setEnabled(len(ready) > 1)
        self.agree_all.setText(f"Take in all {len(ready)} files ({counted(sum(f.ready for f in ready), 'offer')})")
        self.anew.setVisible(file is not None and file.imported_on is not None)
        self.start_over.setVisible(file is not None and file.begun and not file.kept)
        self.leave.setText(_way_back(file, unreadable, sum(each.unsettled for each in files)))
        self.told.setText("" if unreadable else " ".join((_NOTHING_YET, *_agreeing(file), *_lapsed(file, today))))


def _why_not(file: FileAtHand | None) -> str:
    held = file is not None and file.taken is not None and file.imported_on is None and bool(file.found.asked)
    return "Answer a question first" if held else "Nothing to take in"


def _way_back(file: FileAtHand | None, unreadable: bool, unsettled: int) -> str:
    if file is not None and file.taken is None:
        return "Stop reading"
    if unsettled > 1:
        return f"Cancel all {unsettled} files"
    if unreadable:
        return "Back"
    return "Finish later" if file is not None and file.begun else "Cancel"


def _lapsed(file: FileAtHand | None, today: date) -> list[str]:
    if file is None or not (gone := file.lapsed(today)):
        return []
    return [lapsed_words(gone, file.accepted)]


def _agreeing(file: FileAtHand | None) -> list[str]:
    """What storing the file at hand waits for, or brings besides its offers."""
    if file is None or file.taken is None:
        return []
    if file.kept:
        return ["What is taken in replaces what was stored of this file."]
    if not file.accepted:
        return ["Your answers are kept; Today leads back to it."] if file.begun else []
    if not file.ready:
        return ["First say whose sheet it is."]
    later = ["Questions left open wait on the Today page."] if file.taken.reading.questions else []
    if file.marking is None or not file.taken.answers.layouts:
        return later
    if file.taken.reading.vendor is None:
        return [*later, "Name the vendor, and the marks are remembered for the next sheet."]
    remembered = f"The marks are remembered for {file.taken.reading.vendor.rstrip('.')}"
    if not file.taken.answers.layouts[0].serves_others:
        remembered += ": without a header row they are offered for the next sheet, not used unasked"
    return [*later, f"{remembered}."]
