"""Many marks of one shape in an SVG file: the shape once, and where it stands again.

Qt writes each shape out, which for tens of thousands holds the window up. Of these it is given one, after a sign that
tells which; the others are put into the text, away from the interface.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import count

from PySide6.QtGui import QPainterPath

from tracker.window.quotes.drawing import Floats

_AWAY, _NUMBERS = -7000, 9000
"""Where signs stand: far outside any picture, and in figures that Qt writes whole."""
_next = count()


@dataclass(frozen=True, slots=True, eq=False)
class Copies:
    """How far across and down from the first the others stand, in pixels."""

    across: Floats
    down: Floats
    number: int = field(default_factory=lambda: next(_next) % _NUMBERS)


def signed(copies: Copies) -> QPainterPath:
    """What is drawn before the shape that is to be copied."""
    sign = QPainterPath()
    sign.moveTo(_AWAY, -copies.number)
    sign.lineTo(_AWAY - 1, -copies.number)
    return sign


def with_copies(svg: str, all_copies: Iterable[Copies]) -> str:
    """The text of an SVG file with every sign replaced by the copies of the shape after it."""
    for copies in all_copies:
        number = copies.number
        sign = rf'<path[^>]*d="M{_AWAY},-?{number} L{_AWAY - 1},-?{number} ?"[^>]*/>\s*<path( [^>]*)/>'
        found = re.search(sign, svg)
        if found is not None:
            svg = f"{svg[: found.start()]}{_repeated(found[1], copies)}{svg[found.end() :]}"
    return svg


def _repeated(shape: str, copies: Copies) -> str:
    name = f"mark-{copies.number}"
    places = zip(copies.across.tolist(), copies.down.tolist(), strict=True)
    uses = (f'<use xlink:href="#{name}" x="{x:.2f}" y="{y:.2f}"/>' for x, y in places)
    return "\n".join((f'<path id="{name}"{shape}/>', *uses))
