"""Below the lines understood: what one of them needs a person to know, and what said each of its fields."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QScrollArea, QVBoxLayout, QWidget

from tracker.trade.offer import Line
from tracker.window.look.figures import Units
from tracker.window.note_words import note_text
from tracker.window.pieces import button, clear, column, follow_by_tab, words
from tracker.window.take_in.cells import place_of
from tracker.window.take_in.evidence import Said, located, what_said

_TALLEST = 230
_CELL_PADDING = 3
"""As the style sheet has it for the cells beside: an answer begins where they do."""
_MOST_OF_ROOM = 0.42


class LinePanel(QScrollArea):
    """Shows one line. `cell_wanted` carries sheet and address of a cell that said something."""

    cell_wanted = Signal(str, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName("What said each field of the line")
        self._told: list[str] = []
        self._cells: list[QWidget] = []
        self._notes = QVBoxLayout()
        self._notes.setSpacing(4)
        self._said = QGridLayout()
        self._said.setHorizontalSpacing(12)
        self._said.setVerticalSpacing(1)
        self._said.setColumnStretch(2, 1)
        self._inside = QWidget()
        self._inside.setLayout(column(self._notes, self._said, None, margins=(14, 6, 14, 8), gap=6))
        self.setWidget(self._inside)
        self.viewport().setAutoFillBackground(False)
        self._inside.setAutoFillBackground(False)
        self.hide()

    def show_line(self, line: Line | None, units: Units = Units.US) -> None:
        """Shows a line, its measures in these units; nothing for None."""
        clear(self._notes)
        clear(self._said)
        self.setVisible(line is not None)
        if line is None:
            return
        told = ((note.cell, note_text(note, line.offer, units)) for note in line.notes)
        self._told = [f"{cell}: {text}" if cell else text for cell, text in told]
        for text in self._told:
            self._notes.addWidget(words(text, "quiet", wrap=True, selectable=True))
        self._cells = []
        for place, said in enumerate(what_said(line, units)):
            self._add(place, said, line.offer.source.sheet)
        follow_by_tab(self, *self._cells)
        # Only once the new rows have been laid out do they know how tall they are.
        QTimer.singleShot(0, self._take_height)

    def notes_text(self) -> str:
        """All notes that are shown, one a line."""
        return "\n".join(self._told)

    def _take_height(self) -> None:
        """As tall as what it says, but never so tall that the lines above it can't be told apart any more."""
        around = self.parentWidget()
        room = int(_MOST_OF_ROOM * around.height()) if around is not None else _TALLEST
        self.setFixedHeight(min(_TALLEST, room, self._inside.sizeHint().height() + 2))
        self.verticalScrollBar().setValue(0)

    def _add(self, place: int, said: Said, sheet: str) -> None:
        self._said.addWidget(words(said.field, "small"), place, 0, Qt.AlignmentFlag.AlignTop)
        at_sheet, address = located(said.where, sheet)
        if place_of(address) is not None:
            show = button(said.where, "cell")
            show.setToolTip("Show this cell")
            show.setAccessibleName(f"{said.field} is said by {said.where}: show it")
            show.clicked.connect(partial(self._want, at_sheet, address))
            self._cells.append(show)
            self._said.addWidget(show, place, 1, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        else:
            where = words(said.where, "small")
            where.setContentsMargins(_CELL_PADDING, 0, 0, 0)
            self._said.addWidget(where, place, 1, Qt.AlignmentFlag.AlignTop)
        against = f"   against it: {said.against}" if said.against else ""
        meant = f"  → {said.meant}" if said.meant and said.meant != said.words else ""
        stands = f"“{said.words}”" if said.words else ""
        told = words(f"{stands}{meant}{against}", "small", wrap=True, selectable=True)
        self._said.addWidget(told, place, 2)

    def _want(self, sheet: str, address: str, _checked: bool = False) -> None:
        self.cell_wanted.emit(sheet, address)
