"""How the words of a task are laid out in the width there is: on as few lines as show them whole."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QFont, QFontMetricsF

from tracker.window.tables.set_texts import in_lines

_MOST_LINES = 2
"""What a text may go on over; the rest of a longer one is in the hint."""
_GAP = 12.0


@dataclass(frozen=True, slots=True)
class TaskLines:
    """The lines of the text, then those of the detail; `figure_at`: the line at whose end the figure stands."""

    text: tuple[str, ...]
    detail: tuple[str, ...]
    figure_at: int

    @property
    def count(self) -> int:
        return max(len(self.text) + len(self.detail), self.figure_at + 1)


def lay_out(text: str, detail: str, figure_width: float, width: float, font: QFont) -> TaskLines:
    """Breaks a text and its detail for a width in pixels. The figure stands beside the lowest line that leaves it room,
    else below them all: it never costs a word."""
    of_text, of_detail = _broken(text, width, font), _broken(detail, width, font)
    metrics = QFontMetricsF(font)
    lines = (*of_text, *of_detail)
    with_room = (
        at for at in reversed(range(len(lines))) if metrics.horizontalAdvance(lines[at]) + _GAP + figure_width <= width
    )
    return TaskLines(of_text, of_detail, next(with_room, len(lines)))


def _broken(text: str, width: float, font: QFont) -> tuple[str, ...]:
    if QFontMetricsF(font).horizontalAdvance(text) <= width:
        return (text,)
    return tuple(in_lines(text, font, width, _MOST_LINES).split("\n"))
