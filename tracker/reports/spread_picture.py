"""Price against caliper with the expected band, as vector shapes for the report."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from tracker.reports.content import GradeSection, Mark, OfferRow
from tracker.reports.ink import BOLD, COLOUR_OF, INK, QUIET, REGULAR, RIBBON

_LEFT, _BOTTOM, _TOP, _RIGHT = 46.0, 30.0, 12.0, 10.0
_NAMED = (Mark.ABOVE, Mark.BELOW, Mark.SLIP)
Scale = Callable[[float], float]


@dataclass(frozen=True, slots=True)
class _Window:
    """The part of the plane that is drawn, in data units."""

    left: float
    right: float
    bottom: float
    top: float


def spread_picture(section: GradeSection, unit: str, width: float, height: float) -> Any:
    """A reportlab Drawing of one grade's offers, or None where none has both a price and a caliper. Sizes in points."""
    from reportlab.graphics.shapes import Drawing

    window = _window(section)
    if window is None:
        return None
    drawing = Drawing(width, height)
    x = _scale(window.left, window.right, _LEFT, width - _RIGHT)
    y = _scale(window.bottom, window.top, _BOTTOM, height - _TOP)
    _draw_axes(drawing, window, x, y, unit)
    _draw_band(drawing, section, x, y)
    for row in section.rows:
        if row.price is not None and row.caliper_pt is not None:
            _draw_mark(drawing, row.mark, x(row.caliper_pt), y(row.price))
            if row.mark in _NAMED:
                drawing.add(_name(row, x(row.caliper_pt), y(row.price), width))
    return drawing


def _window(section: GradeSection) -> _Window | None:
    placed = [(row.caliper_pt, row.price) for row in section.rows if row.caliper_pt and row.price]
    if not placed:
        return None
    calipers = [caliper for caliper, _ in placed] + [point.caliper_pt for point in section.band_points]
    prices = [price for _, price in placed]
    prices += [edge for point in section.band_points for edge in (point.low, point.high)]
    margin = 0.08 * (max(prices) - min(prices)) or 0.1 * max(prices)
    return _Window(min(calipers) - 1, max(calipers) + 1, max(0.0, min(prices) - margin), max(prices) + margin)


def _scale(low: float, high: float, start: float, end: float) -> Scale:
    return lambda value: start + (value - low) * (end - start) / (high - low)


def _draw_axes(drawing: Any, window: _Window, x: Scale, y: Scale, unit: str) -> None:
    from reportlab.graphics.shapes import Line, String

    for price in _round_steps(window.bottom, window.top, 5):
        drawing.add(Line(_LEFT, y(price), drawing.width - _RIGHT, y(price), strokeColor=RIBBON, strokeWidth=0.4))
        drawing.add(_label(f"{price:,g}", _LEFT - 5, y(price) - 2.5, "end"))
    for caliper in _round_steps(window.left, window.right, 7):
        drawing.add(_label(f"{caliper:g} pt", x(caliper), _BOTTOM - 13, "middle"))
    drawing.add(String(0, drawing.height - 7, unit, fontName=REGULAR, fontSize=6.5, fillColor=QUIET))


def _name(row: OfferRow, x: float, y: float, width: float) -> Any:
    """Who stands out, on the side of the mark where there is room."""
    from reportlab.graphics.shapes import String

    place, anchor = (x + 7, "start") if x < width * 0.7 else (x - 7, "end")
    colour = COLOUR_OF[row.mark]
    return String(place, y - 2.3, row.vendor, fontName=BOLD, fontSize=6.5, fillColor=colour, textAnchor=anchor)


def _label(text: str, x: float, y: float, anchor: str) -> Any:
    from reportlab.graphics.shapes import String

    return String(x, y, text, fontName=REGULAR, fontSize=6.5, fillColor=QUIET, textAnchor=anchor)


def _round_steps(low: float, high: float, about: int) -> list[float]:
    """Round values within the range, roughly as many as asked for: 1, 2, 2.5 or 5 times a power of ten apart."""
    rough = (high - low) / about
    power = 10.0 ** (len(f"{int(rough)}") - 1) if rough >= 1 else 1.0
    step = next(power * factor for factor in (1, 2, 2.5, 5, 10) if power * factor >= rough)
    first = int(low // step + 1)
    return [step * number for number in range(first, int(high // step) + 1)]


def _draw_band(drawing: Any, section: GradeSection, x: Scale, y: Scale) -> None:
    from reportlab.graphics.shapes import Polygon

    if len(section.band_points) < 2:
        return
    edge = [(point.caliper_pt, point.high) for point in section.band_points]
    edge += [(point.caliper_pt, point.low) for point in reversed(section.band_points)]
    flat = [place for caliper, price in edge for place in (x(caliper), y(price))]
    drawing.add(Polygon(flat, fillColor=RIBBON, strokeColor=None))


def _draw_mark(drawing: Any, mark: Mark, x: float, y: float) -> None:
    for shape in mark_shapes(mark, x, y, 3.0):
        drawing.add(shape)


def mark_shapes(mark: Mark, x: float, y: float, r: float) -> list[Any]:
    """The mark's shape around a point: triangle up or down, open diamond, disc, ring, dotted ring."""
    from reportlab.graphics.shapes import Circle, Polygon

    colour = COLOUR_OF[mark]
    if mark is Mark.ABOVE:
        return [Polygon([x - r, y - r * 0.8, x + r, y - r * 0.8, x, y + r], fillColor=colour, strokeColor=None)]
    if mark is Mark.BELOW:
        return [Polygon([x - r, y + r * 0.8, x + r, y + r * 0.8, x, y - r], fillColor=colour, strokeColor=None)]
    if mark is Mark.SLIP:
        corners = [x - r * 1.2, y, x, y + r * 1.2, x + r * 1.2, y, x, y - r * 1.2]
        return [Polygon(corners, fillColor=None, strokeColor=colour, strokeWidth=1)]
    if mark is Mark.IN_LINE:
        return [Circle(x, y, r * 0.6, fillColor=QUIET, strokeColor=None)]
    ring = Circle(x, y, r * 0.6, fillColor=None, strokeColor=INK, strokeWidth=0.7)
    if mark is Mark.TOO_FEW:
        ring.strokeDashArray = [1, 1]
    return [ring]
