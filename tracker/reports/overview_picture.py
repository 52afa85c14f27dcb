"""All grades at a glance: each offer's price beside its going price, a line a grade, as vector shapes."""

import math
from typing import Any

from tracker.reports.content import GradeSection, Mark, OfferRow, signed_percent
from tracker.reports.ink import BOLD, COLOUR_OF, INK, QUIET, REGULAR, RIBBON
from tracker.reports.spread_picture import mark_shapes

_LEFT, _RIGHT, _LINE, _FOOT = 120.0, 60.0, 20.0, 18.0
_LOWEST, _HIGHEST = 0.5, 2.0
"""What lies beyond stands at the edge with its figure: one slip of factor 20 would else squeeze all others together."""
_TICKS = (0.5, 0.7, 0.85, 1.0, 1.2, 1.5, 2.0)
_NAMED = (Mark.ABOVE, Mark.BELOW, Mark.SLIP)


def overview_picture(grades: tuple[GradeSection, ...], width: float) -> Any:
    """A reportlab Drawing, `width` points wide and a line high for each grade; None where no going price is known."""
    from reportlab.graphics.shapes import Drawing, Line, String

    judged = [grade for grade in grades if any(row.of_expected for row in grade.rows)]
    if not judged:
        return None
    height = _FOOT + _LINE * len(judged)
    drawing = Drawing(width, height)
    for tick in _TICKS:
        x = _place(tick, width)
        stroke = QUIET if tick == 1.0 else RIBBON
        drawing.add(Line(x, _FOOT, x, height, strokeColor=stroke, strokeWidth=0.5))
        drawing.add(_words("going price" if tick == 1.0 else signed_percent(tick), x, 6, QUIET, anchor="middle"))
    for number, grade in enumerate(judged):
        y = height - _LINE * (number + 0.5)
        drawing.add(String(0, y - 2.5, grade.code, fontName=BOLD, fontSize=7.5, fillColor=INK))
        drawing.add(_words(_counted(len(grade.rows)), 34, y - 2.5, QUIET))
        # What stands out is drawn last, so that no offer in line covers it.
        for row in sorted(grade.rows, key=lambda row: row.mark in _NAMED):
            if row.of_expected:
                _draw(drawing, row, row.of_expected, y, width)
    return drawing


def _draw(drawing: Any, row: OfferRow, of_expected: float, y: float, width: float) -> None:
    x = _place(of_expected, width)
    for shape in mark_shapes(row.mark, x, y, 3.0):
        drawing.add(shape)
    if row.mark in _NAMED:
        rightmost = x > width * 0.7
        words = f"{row.vendor}, {row.beside_going}"
        place, anchor = (x - 7, "end") if rightmost else (x + 7, "start")
        drawing.add(_words(words, place, y + 4, COLOUR_OF[row.mark], BOLD, anchor))


def _place(of_expected: float, width: float) -> float:
    """Ratios are set out by their logarithm, so that half and twice lie equally far from the going price."""
    within = min(max(of_expected, _LOWEST), _HIGHEST)
    share = math.log(within / _LOWEST) / math.log(_HIGHEST / _LOWEST)
    return _LEFT + share * (width - _LEFT - _RIGHT)


def _words(text: str, x: float, y: float, colour: str, font: str = REGULAR, anchor: str = "start") -> Any:
    from reportlab.graphics.shapes import String

    return String(x, y, text, fontName=font, fontSize=6.5, fillColor=colour, textAnchor=anchor)


def _counted(offers: int) -> str:
    return "1 offer" if offers == 1 else f"{offers} offers"
