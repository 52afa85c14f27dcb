"""Rates beside the boards of a sheet, in columns of their own: 'Zone | Freight €/t' over '1 | 41' and '2 | 52'.

They are no board's, though they stand in the rows of boards.
"""

from collections.abc import Sequence

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import Head, head_of, looks_priced
from tracker.intake.tables.view import View
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.prices.money import price_unit

_LEAST_RATES = 2
_LOOKED_AT = 60


def lists_rates(part: View) -> bool:
    """Whether a stretch of columns holds nothing but rates: to places, or under a name of theirs, each said once."""
    return any(_heads_places(part, row) or _heads_rates(part, row) for row in part.order[:_LOOKED_AT])


def lists_zones(part: View, view: View) -> bool:
    """'Zone | States | US$/cwt' over a zone in each row with its rate, in line with the heads of priced boards: to
    zones go freights, under a price's unit alone too."""
    return any(_heads_zones(part, view, row) for row in part.order[:_LOOKED_AT])


def _heads_zones(part: View, view: View, row: int) -> bool:
    cells = part.rows[row]
    heads = {column: head_of(cell) for column, cell in cells.items()}
    if any(head is None or head.board for head in heads.values()):
        return False
    zones = [column for column, head in heads.items() if head is not None and head.role is Role.DESTINATION]
    rated = [column for column, cell in cells.items() if (unit := price_unit(cell.text)) is not None and unit.currency]
    rest = [head_of(cell) for column, cell in view.rows[row].items() if column not in cells]
    if not zones or len(rated) != 1 or not any(head is not None and head.price for head in rest):
        return False
    return any(head is not None and head.board for head in rest) and _lists_each_once(part, row, min(zones), rated)


def _heads_places(part: View, row: int) -> bool:
    """'Destination | Freight €/t': a place in every row below, with what is paid to it. Freight to one and the same
    place in every row is each board's own."""
    heads = {column: head_of(cell) for column, cell in part.rows[row].items()}
    if any(head is None or head.board for head in heads.values()):
        return False
    rated = [column for column, cell in part.rows[row].items() if _names_freight(cell)]
    places = [column for column, head in heads.items() if column not in rated and _names_place(head)]
    return bool(places and rated) and _lists_each_once(part, row, places[0], rated)


def _names_place(head: Head | None) -> bool:
    """'Zone', 'Ship to', or a word that names nothing else ('Wohin')."""
    return head is not None and head.number is None and not head.across and head.role in (None, Role.DESTINATION)


def _names_freight(cell: Cell) -> bool:
    named, head = charge_header(cell.text), head_of(cell)
    by_head = head is not None and head.named and head.role is Role.FREIGHT
    return by_head or (named is not None and named.kind is ChargeKind.FREIGHT)


def _heads_rates(part: View, row: int) -> bool:
    """'Freight only | USD/ST' over 'Zone 1 | 62'."""
    if len(part.rows[row]) != 2:
        return False
    (first, label), (last, unit) = sorted(part.rows[row].items())
    head, priced = head_of(label), head_of(unit)
    if head is None or head.board or priced is None or not priced.price:
        return False
    if not (head.named and head.role in ON_TOP) and not _below_a_charge(part, row):
        return False
    return _lists_each_once(part, row, first, [last])


def _below_a_charge(part: View, row: int) -> bool:
    """'Freight rates' right above 'Zone | USD/ST'."""
    above = [other for other in part.order if other < row][-1:]
    return any(charge_header(cell.text) is not None for other in above for cell in part.rows[other].values())


def _lists_each_once(part: View, row: int, label: int, rated: Sequence[int]) -> bool:
    """Two rows at least below the heads, no two for one label, and figures throughout."""
    below = [part.rows[other] for other in part.order if other > row]
    rows = [cells for cells in below if label in cells and any(column in cells for column in rated)]
    labels = {cells[label].text for cells in rows}
    figures = [cells[column] for cells in rows for column in rated if column in cells]
    return len(labels) == len(rows) >= _LEAST_RATES and _rates(figures)


def _rates(cells: Sequence[Cell]) -> bool:
    """Figures, and words without any ('on request') where there is no rate."""
    worded = [cell for cell in cells if not _is_rate(cell)]
    return len(worded) < len(cells) and not any(any(map(str.isdigit, cell.text)) for cell in worded)


def _is_rate(cell: Cell) -> bool:
    return looks_priced(cell) or bool(number_readings(cell.text))
