"""Why lines can't be used, in full above the list: a list shows the first words only, and far down."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from tracker.trade.offer import Line, NoteCode, State
from tracker.window.look.figures import counted
from tracker.window.note_words import is_left_out
from tracker.window.pieces import button, row, words

_REFUSING = {NoteCode.FORMULA_WITHOUT_VALUE, NoteCode.ERROR_CELL, NoteCode.PRICE_NOT_POSITIVE}


def refused_lines(lines: Sequence[Line]) -> tuple[int, ...]:
    """The lines that can't be used, without those that the user decided to do without."""
    refused = (number for number, line in enumerate(lines) if line.state is State.REFUSED)
    return tuple(number for number in refused if not is_left_out(lines[number]))


def refused_words(lines: Sequence[Line], refused: Sequence[int]) -> str:
    """'✕ E14 can't be used: The formula … Open the file …'; of several the first, and how many more there are."""
    if not refused:
        return ""
    line = lines[refused[0]]
    why = [note.text for note in line.notes if note.code in _REFUSING] or [note.text for note in line.notes]
    more = f" And {counted(len(refused) - 1, 'more line')} can't be used." if len(refused) > 1 else ""
    return f"✕ {line.offer.source.cell} can't be used: {' '.join(why)}{more}"


class RefusedLines(QWidget):
    """Says so, and goes to the lines one after another. `wanted` carries the number of one."""

    wanted = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._refused: tuple[int, ...] = ()
        self._next = 0
        self.told = words("", wrap=True, selectable=True)
        self.show_next = button("Show", "word")
        self.show_next.setAccessibleName("Show the line that can't be used")
        self.show_next.setToolTip("Goes to the next of them")
        self.show_next.clicked.connect(self._go_on)
        self.setLayout(row(self.told, self.show_next, gap=8, grow=0))

    def show_lines(self, text: str, refused: tuple[int, ...]) -> None:
        """Shows the sentence about these lines; nothing for none."""
        self._refused, self._next = refused, 0
        self.told.setText(text)
        self.setVisible(bool(refused))

    def _go_on(self) -> None:
        self.wanted.emit(self._refused[self._next % len(self._refused)])
        self._next += 1
