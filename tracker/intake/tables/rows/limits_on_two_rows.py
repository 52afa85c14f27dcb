"""Order sizes across whose limits stand in two rows: 'from | 0 | 2,500 | 10,000' over 'to | 2,499 | 9,999'."""

from dataclasses import dataclass
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.rows.rows_joined import Cells, with_rows_joined
from tracker.intake.tables.view import View
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.orders.brackets import is_no_limit
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.words.lists import phrases

_FEWEST = 2
_LONGEST_LABEL = 25
_STARTS = frozenset({"from", "above"})
_ENDS = frozenset({"up_to", "below", "to"})


def with_limits_on_one_row(view: View) -> View:
    """The view with each such order size in one row as '2,500 – 9,999', and the words for its limits gone."""
    return with_rows_joined(view, _joined)


def _joined(upper: Cells, lower: Cells) -> tuple[Cells, Cells] | None:
    """Both rows with the sizes in one of them: among other heads in the row of these, which need not run over them."""
    sizes = _sizes(upper, lower)
    if len(sizes) < _FEWEST:
        return None
    above, below = (
        {column: cell for column, cell in cells.items() if column < min(sizes) and not _limit(cell)}
        for cells in (upper, lower)
    )
    return ({**above, **sizes}, below) if above else ({}, {**below, **sizes})


@dataclass(frozen=True, slots=True)
class _Limit:
    """What a label says of the figures behind it: where orders begin or end, and the unit, '' where it gives none."""

    kind: str
    unit: str


def _limit(cell: Cell) -> _Limit | None:
    """'from', 'bis', 'To (lb)'."""
    if not isinstance(cell.value, str) or len(cell.text) > _LONGEST_LABEL or any(map(str.isdigit, cell.text)):
        return None
    found = phrases("bracket").find(cell.text)
    kinds = {match.value for match in found} & (_STARTS | _ENDS)
    rest = cell.text
    for match in reversed(found):
        rest = f"{rest[: match.start]} {rest[match.end :]}"
    unit = rest.strip(" ,.:;()[]")
    if len(kinds) != 1 or (unit and not find_mass_units(unit)):
        return None
    return _Limit(kinds.pop(), unit)


def _sizes(upper: Cells, lower: Cells) -> Cells:
    """The order sizes behind two labels in one column, each from the limits above each other; none where one is no
    size."""
    for label in sorted(upper.keys() & lower.keys()):
        starts, ends = _limit(upper[label]), _limit(lower[label])
        if starts is not None and ends is not None and starts.kind in _STARTS and ends.kind in _ENDS:
            return _sizes_behind(label, upper, lower, starts, ends)
    return {}


def _sizes_behind(label: int, upper: Cells, lower: Cells, starts: _Limit, ends: _Limit) -> Cells:
    sizes: Cells = {}
    for column in sorted(column for column in {*upper, *lower} if column > label):
        low, high = upper.get(column), lower.get(column)
        text, cell = _size(low, high, starts, ends), high or low
        if text is None or cell is None:
            return {}
        sizes[column] = cell._replace(value=text, text=text, number_format="General")
    return sizes


def _size(low: Cell | None, high: Cell | None, starts: _Limit, ends: _Limit) -> str | None:
    """'2,500 – 9,999'; with one of the limits open '≤ 2,499' or '≥ 10,000'."""
    bounds = _figure(low), _figure(high)
    if None in bounds or bounds == ("", ""):
        return None
    first, last = bounds
    unit = starts.unit or ends.unit
    if not last:
        return f"{'>' if starts.kind == 'above' else '≥'} {first} {unit}".strip()
    if not first:
        return f"{'<' if ends.kind == 'below' else '≤'} {last} {unit}".strip()
    return f"{first} – {last} {unit}".strip()


def _figure(cell: Cell | None) -> str | None:
    """The figure as written, '' where the limit is open (nothing, a dash, a nought); None for anything else."""
    if cell is None or is_no_limit(cell.text.strip()):
        return ""
    if isinstance(cell.value, Decimal):
        return f"{cell.value:f}" if cell.value else ""
    if not isinstance(cell.value, str) or not (number_readings(cell.text) or find_mass_units(cell.text)):
        return None
    return cell.text.strip() if any(map(str.isdigit, cell.text)) and cell.text.strip() != "0" else ""
