"""The panel beside the picture: why the selected price is judged as it is, then how it came about."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QSizePolicy, QVBoxLayout, QWidget

from tracker.desk.comparison import Comparison
from tracker.desk.standing import Standing
from tracker.window.look import figures
from tracker.window.look.marks import draw_mark
from tracker.window.look.theme import Theme
from tracker.window.note_words import note_text
from tracker.window.pieces import button, clear, column, hairline, row, words
from tracker.window.quotes.ladder import Ladder
from tracker.window.quotes.offer_columns import offers
from tracker.window.quotes.whole_lines import WholeLines
from tracker.window.session import Session
from tracker.window.tables.task_list import TaskList
from tracker.window.take_in.evidence import Said, said_by
from tracker.window.today.tasks_of import out_of_line

if TYPE_CHECKING:
    from tracker.desk.explanation import Explanation
    from tracker.desk.snapshot import Snapshot

_TITLES = {
    Standing.ABOVE: "Why this price stands out",
    Standing.BELOW: "Why this price stands out",
    Standing.SLIP: "Why this looks like another basis",
    Standing.FEW: "Too few to judge this price",
    Standing.ESTIMATED: "How this price came about",
    Standing.IN_LINE: "How this price came about",
}


class MarkSign(QWidget):
    """A verdict mark on its own, beside a heading."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.mark = Standing.IN_LINE
        self.setFixedSize(QSize(16, 20))

    def paintEvent(self, event: QPaintEvent) -> None:
        draw_mark(QPainter(self), self.mark, QRectF(1, 4, 13, 13), self._theme.palette)


class ReasonsPanel(QFrame):
    """Explains the session's selected offer. `sheet_wanted` asks to see it in the vendor's sheet,
    `offer_wanted` to choose one of those that stand out."""

    offer_wanted = Signal(object)
    sheet_wanted = Signal(int)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self.setAccessibleName("Why this price is judged as it is")
        self._session = session
        self._ticket = 0
        self._sign = MarkSign(session.theme)
        self._title = words("", "heading")
        self._whose = words("", "quiet", wrap=True)
        self._ladder = Ladder(session.theme)
        self._reasons = QVBoxLayout()
        self._reasons.setSpacing(5)
        self._small_print = QVBoxLayout()
        self._small_print.setSpacing(5)
        self._show = button("Show in the sheet", "word")
        self._show.setToolTip("Ctrl+E: the vendor's file with this cell marked")
        self._show.clicked.connect(lambda: self.sheet_wanted.emit(self._session.selected))
        inside = QWidget()
        parts_inside = (self._reasons, hairline(), self._ladder, self._small_print, None)
        inside.setLayout(column(*parts_inside, margins=(0, 2, 8, 0), gap=10))
        self._body = WholeLines(inside)
        heading = row(self._sign, self._title, None, gap=6)
        self._nothing = words("", "quiet", wrap=True)
        self._nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        parts = column(heading, self._whose, self._body, row(self._show, None), margins=(16, 10, 8, 6), gap=4, grow=2)
        self._standing_out = TaskList("Prices that stand out", session.theme)
        self._standing_out.wanted.connect(self.offer_wanted)
        parts.addWidget(self._nothing)
        parts.addWidget(self._standing_out, 1)
        self.setLayout(parts)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        session.offer_selected.connect(self._show_offer)
        session.today_changed.connect(self._show_standing_out)
        session.units_changed.connect(lambda: self._show_offer(session.selected))
        session.theme.changed.connect(self.update)
        self._show_offer(session.selected)
        self._show_standing_out()

    def _show_offer(self, offer: int) -> None:
        comparison = self._session.comparison
        self._session.work.drop(self._ticket)
        chosen = comparison is not None and offer >= 0
        for part in (self._sign, self._show, self._whose, self._body):
            part.setVisible(chosen)
        self._nothing.setVisible(not chosen)
        self._standing_out.setVisible(not chosen)
        if comparison is None or offer < 0:
            self._title.setText("How a price came about")
            self._nothing.setText(
                "Choose an offer in the table or the picture: its way from the vendor's cell to the figure stands "
                "here, and why it is judged as it is."
            )
            return
        mark = Standing(int(self._session.marks[offer]))
        self._sign.mark = mark
        self._sign.update()
        self._title.setText(_TITLES[mark])
        self._whose.setText(self._whose_offer(comparison, offer))
        self._clear()
        door, metric = self._session.door, self._session.units is figures.Units.METRIC
        self._ticket = self._session.work.ask(
            lambda: door.explain(comparison, offer, metric),
            lambda explanation: self._show_explanation(comparison, offer, explanation),
        )

    def _show_standing_out(self) -> None:
        session = self._session
        if session.todays is not None and session.comparison is not None:
            table = offers(session.comparison, session.marks, session.units)
            self._standing_out.show_tasks(out_of_line(session.todays, table))

    def _whose_offer(self, comparison: Comparison, offer: int) -> str:
        snapshot = comparison.snapshot
        vendor, grade = int(snapshot.vendor[offer]), int(snapshot.grade[offer])
        parts = [
            snapshot.vendors[vendor] if vendor >= 0 else "",
            snapshot.product[offer],
            snapshot.grades[grade] if grade >= 0 else "",
            figures.caliper(float(snapshot.caliper_um[offer]), self._session.units),
        ]
        return " · ".join(part for part in parts if part)

    def _clear(self) -> None:
        self._ladder.show_steps(())
        clear(self._reasons)
        clear(self._small_print)

    def _show_explanation(self, comparison: Comparison, offer: int, explanation: Explanation) -> None:
        self._clear()
        first, *others = explanation.steps
        # Where the price stands is told here and nowhere else in the panel.
        self._ladder.show_steps((replace(first, cell=_where(comparison.snapshot, offer)), *others))
        for decided in verdict_lines(explanation):
            self._reasons.addWidget(words(decided, "strong", wrap=True, selectable=True))
        for reason in explanation.reasons:
            self._reasons.addWidget(words(reason, wrap=True, selectable=True))
        for note in explanation.notes:
            text = note_text(note, explanation.offer, self._session.units)
            text = f"{note.cell}: {text}" if note.cell else text
            self._small_print.addWidget(words(text, "small", wrap=True))
        told = [_evidence_line(said) for said in said_by(explanation.evidence)]
        if told:
            text = "\n".join(["What the sheet says:", *told])
            self._small_print.addWidget(words(text, "small", wrap=True, selectable=True))
        self._body.show_from_the_top()


def _where(snapshot: Snapshot, offer: int) -> str:
    """'Kestrelby stock offer.xlsx, Stock, D15'; a long name may break after its signs."""
    file = int(snapshot.file[offer])
    name = snapshot.files[file] if file >= 0 else ""
    parts = (re.sub(r"([_.-])", "\\1\u200b", name), snapshot.sheet[offer], snapshot.cell[offer])
    return ", ".join(part for part in parts if part)


def _evidence_line(said: Said) -> str:
    """'Currency: E1 “USD/t”'."""
    against = f" (against it: {said.against})" if said.against else ""
    return f"{said.field}: {said.where}{f' “{said.words}”' if said.words else ''}{against}"


def verdict_lines(explanation: Explanation) -> list[str]:
    """What people decided about the board, the latest first."""
    from tracker.desk.verdicts import said

    return [f"This board was {said(verdict)}." for verdict in explanation.board_verdicts]
