"""Marks for a table that was understood without any: marking by hand starts from them, so that one column can be named
and all else stays."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from operator import itemgetter
from typing import Any

from tracker.trade.layout import MarkedColumn
from tracker.trade.offer import Line
from tracker.window.take_in.cells import place_of
from tracker.window.take_in.evidence import located
from tracker.window.take_in.marking import Marking

_ROLES = {
    "product": "product", "grade": "grade", "coated_sides": "coating", "caliper_um": "caliper",
    "grammage_gsm": "weight", "sheet_mm": "sheet_size", "lead_days": "lead_time", "valid_until": "validity",
    "minimum_kg": "minimum", "currency": "currency", "basis": "basis", "from_kg": "bracket",
}  # fmt: skip
"""What a field's column is called, the role that tells more of a cell first."""
_TELLS_MORE = {field: place for place, field in enumerate(_ROLES)}
_MUST_STAND_IN_ROW = frozenset({"product", "grade", "caliper_um", "grammage_gsm"})
"""Where one of these stands above its prices, the table runs across and no columns' names can say so."""
_LEAST_HEADS = 2


def marks_understood(grids: Iterable[Any], lines: Iterable[Line]) -> dict[str, Marking]:
    """Sheet name to the marks that come to its lines; without those whose table is not one of plain rows below a
    header. Walks all lines: not for the interface's thread."""
    of_sheet: dict[str, list[Line]] = {}
    for line in lines:
        of_sheet.setdefault(line.offer.source.sheet, []).append(line)
    found = {grid.sheet: _marks_of(grid, of_sheet.get(grid.sheet, ())) for grid in grids}
    return {sheet: marking for sheet, marking in found.items() if marking is not None}


def _marks_of(grid: Any, own: Sequence[Line]) -> Marking | None:
    columns: dict[int, str] = {}
    rows: set[int] = set()
    for line in own:
        named = _columns_of(line)
        if named is None or any(columns.get(at, role) != role for at, role in named.items()):
            return None
        columns.update(named)
        rows.update(place[0] for place in (place_of(line.offer.source.cell),) if place is not None)
    header = _header_above(grid, min(rows), columns) if rows else None
    if header is None:
        return None
    marked = {at: MarkedColumn(at, role) for at, role in columns.items()}
    return Marking(grid.sheet, marked, header, min(rows), max(rows))


def _columns_of(line: Line) -> dict[int, str] | None:
    """Column to role for one line; None where what makes the board does not stand in the price's row."""
    price = place_of(line.offer.source.cell)
    if price is None:
        return None
    placed = []
    for piece in line.evidence:
        if piece.field in _ROLES:
            sheet, address = located(piece.said_by, line.offer.source.sheet)
            place = place_of(address)
            if place is not None:
                placed.append((_TELLS_MORE[piece.field], piece.field, sheet, place))
    found = {price[1]: "price"}
    in_row, elsewhere = set(), set()
    for _, field, sheet, place in sorted(placed, key=itemgetter(0)):
        if sheet == line.offer.source.sheet and place[0] == price[0]:
            found.setdefault(place[1], _ROLES[field])
            in_row.add(field)
        else:
            elsewhere.add(field)
    # A head that gives a figure in the row its unit is no board above its prices.
    return None if (elsewhere - in_row) & _MUST_STAND_IN_ROW else found


def _header_above(grid: Any, first: int, columns: dict[int, str]) -> int | None:
    """The nearest row above the offers in which most of their columns have words."""
    for row in range(first - 1, -1, -1):
        cells = [grid.cells.get((row, column)) for column in columns]
        heads = sum(cell is not None and bool(cell.text.strip()) for cell in cells)
        if heads >= max(_LEAST_HEADS, (len(columns) + 1) // 2):
            return row
    return None
