"""How wide the columns of a table are: each as wide as its words, as far as there is room."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import islice
from typing import Any

from PySide6.QtGui import QFont, QFontMetrics

from tracker.window.tables.columns import Column

_BESIDE_TEXT = 16
_BESIDE_TITLE = 24
_MEASURED = 3
"""So many of a column's longest texts: as letters are of unequal width, the longest need not be the widest."""
_BROKEN_FROM = 180
"""A text that wraps stands on one line where that is no wider than this, in pixels: names are read at a glance."""
_BROKEN_UNEVENLY = 1.2
"""What a text takes on several lines, over its even share of them: lines end between words."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """What one column asks for, and what its words take, in pixels; `share` is its part of the room that is left."""

    asked: int
    needed: int
    share: int = 0

    @property
    def least(self) -> int:
        """Neither more than it asks for nor more than its words take."""
        return min(self.asked, self.needed)


def shared(columns: Sequence[Wanted], room: int) -> list[int]:
    """The widths of columns that stand in `room` pixels.

    Nobody gets less than `least`. Whoever's words take more gets that from the room and from those who need less than
    they ask for, the nearest to being whole first; what is left of the room goes to those who take a share of it.
    """
    widths = [column.least for column in columns]
    left = max(0, room - sum(widths))
    for at in sorted(range(len(columns)), key=lambda at: columns[at].needed - widths[at]):
        given = min(columns[at].needed - widths[at], left)
        widths[at] += given
        left -= given
    for at, column in enumerate(columns):
        given = min(max(0, column.asked - widths[at]), left)
        widths[at] += given
        left -= given
    shares = sum(column.share for column in columns) or 1
    return [width + left * column.share // shares for width, column in zip(widths, columns, strict=True)]


def widest(column: Column, contents: Any, rows: Iterable[int], font: QFont, lines: int) -> int:
    """What the words of a column take in these rows, in pixels; of long ones that wrap, on so many lines."""
    if column.paint:
        return column.width
    strong = QFont(font)
    strong.setWeight(QFont.Weight.DemiBold)
    metrics = QFontMetrics(strong if column.strong else font)
    longest = islice(sorted({column.text(contents, row) for row in rows}, key=len, reverse=True), _MEASURED)
    of_texts = max((metrics.horizontalAdvance(text) for text in longest), default=0)
    if column.wraps and lines > 1:
        of_texts = max(min(of_texts, _BROKEN_FROM), int(of_texts * _BROKEN_UNEVENLY / lines))
    return of_texts + _BESIDE_TEXT


def title_width(column: Column, contents: Any, font: QFont) -> int:
    """What the title of a column takes, in pixels, with the arrow that tells how a table is sorted."""
    return QFontMetrics(font).horizontalAdvance(column.title(contents)) + _BESIDE_TITLE
