"""An axis of a picture: figures with their unit, a word for zero, the other unit below."""

from collections.abc import Iterable, Sequence
from math import ceil
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF, QPainter

_WHOLE_FROM = 100
"""From here on a tenth of the other unit says nothing more."""
_BETWEEN_WORDS_PX, _BETWEEN_STEPS_PX = 6.0, 12
_MOST_LINES = 3
_BELOW_THE_END_PX = 16

Words = tuple[QRectF, Any, str]
"""Where words stand, how they are aligned in there, and the words, as pyqtgraph hands them on."""


class Axis(pg.AxisItem):
    """Figures with their unit, no line of its own."""

    unit = ""
    zero = ""
    signed = False
    also: tuple[float, str] | None = None

    def tickStrings(self, values: list[float], scale: float, spacing: float) -> list[str]:
        places = max(0, int(np.ceil(-np.log10(spacing)))) if spacing < 1 else 0
        sign = "+" if self.signed else ""
        said = [self.zero if self.zero and not value else f"{value:{sign},.{places}f}{self.unit}" for value in values]
        if self.also is None:
            return said
        return [f"{text}\n{self.also_text(value)}" for text, value in zip(said, values, strict=True)]

    def boundingRect(self) -> QRectF:
        """With room for the lowest figures of the axis at the left; pyqtgraph has none where it draws a grid."""
        rect: QRectF = super().boundingRect()
        return rect.adjusted(0, 0, 0, _BELOW_THE_END_PX) if self.orientation == "left" else rect

    def generateDrawSpecs(self, painter: QPainter) -> Any:
        """As pyqtgraph lays it out, but no word of the lower axis stands over another or is cut at the edge."""
        specs = super().generateDrawSpecs(painter)
        if specs is None or self.orientation != "bottom":
            return specs
        line, ticks, words = specs
        return line, ticks, side_by_side(words, self.mapRectFromParent(self.geometry()).right())

    def also_text(self, value: float) -> str:
        """The same place on the axis in the other unit."""
        factor, unit = self.also or (1.0, "")
        there = value * factor
        return f"{there:,.{0 if there >= _WHOLE_FROM or not there else 1}f}{unit}"


def side_by_side(words: Iterable[Words], right_edge: float) -> list[Words]:
    """The words that can be read beside each other, from the left: what would meet the one before it is left out.

    One that would be cut at the right edge is moved in. Words that begin with empty lines stand on a line of their
    own and meet only those on the same line.
    """
    kept: list[Words] = []
    ends: dict[int, float] = {}
    for place, alignment, text in sorted(words, key=lambda each: each[0].left()):
        moved = place.translated(min(0.0, right_edge - place.right()), 0.0)
        line = len(text) - len(text.lstrip("\n"))
        if moved.left() >= ends.get(line, -np.inf) + _BETWEEN_WORDS_PX:
            kept.append((moved, alignment, text))
            ends[line] = moved.right()
    return kept


def in_steps(
    ticks: Sequence[tuple[float, str]], metrics: QFontMetricsF, width: float
) -> tuple[list[tuple[float, str]], int]:
    """Words below a picture so that they stand whole: where too wide for one line, in steps on two or three.

    The ticks, their words moved down by empty lines, and how many lines they take.
    """
    if not ticks:
        return [], 1
    widest = max(metrics.horizontalAdvance(text) for _, text in ticks) + _BETWEEN_STEPS_PX
    lines = min(_MOST_LINES, ceil(widest * len(ticks) / max(1.0, width)))
    return [(at, "\n" * (place % lines) + text) for place, (at, text) in enumerate(ticks)], lines
