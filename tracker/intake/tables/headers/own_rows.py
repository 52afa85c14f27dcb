"""Rows that look like a header and belong to the table above: a sub-heading with a unit, a board without a price."""

from collections.abc import Collection
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headerless.headless import describes_board_whole
from tracker.intake.tables.headers.header_rows import names_board_and_unit
from tracker.intake.tables.headers.heads import head_of, looks_priced
from tracker.intake.tables.headers.zones import Zone
from tracker.intake.tables.parts.terms_told import matters_told
from tracker.intake.tables.rows.terms_below import leads_to_prices, tells_terms_of_prices
from tracker.intake.tables.view import View
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.values.orders.masses import mass_text


def belongs_to(band: View, row: int, zone: Zone) -> bool:
    """Whether a row is one of the table under this header, though its words could head another."""
    if _parts_its_rows(band, row, zone) or _is_one_of_its_rows(band, row, zone) or _tells_leasts(band, row, zone):
        return True
    if _tells_under_a_measure(band, row, zone):
        return True
    return tells_terms_of_prices(band.rows[row], _headed(zone)) and _stands_among_boards(band, row, _headed(zone))


def _tells_under_a_measure(band: View, row: int, zone: Zone) -> bool:
    """'Delivered' alone below a board's '18' under 'Caliper (pt)' heads no column of prices there."""
    if len(band.rows[row]) > 1 or row - 1 not in band.rows:
        return False
    ((at, cell),) = band.rows[row].items()
    above = band.rows[row - 1].get(at)
    heads = [head_of(column.heads[-1]) for column in zone.columns if column.heads and column.index == at]
    measured = any(head is not None and head.named and head.role in MEASURES for head in heads)
    return measured and above is not None and _measures(above) and bool(matters_told(cell.text))


def _tells_leasts(band: View, row: int, zone: Zone) -> bool:
    """'Minimum order | 5,000 lb | 5,000 lb | 10,000 lb' right below 'pt | 16 | 18 | 20' or '16 pt | 18 pt | 20 pt': how
    little of each is sold, and no order sizes that head the prices below."""
    if row != zone.bottom + 1 or not (zone.across or _spreads_measures(zone)):
        return False
    (at, label), *values = sorted(band.rows[row].items())
    columns = {index for index in _headed(zone) if index > at}
    head = head_of(label)
    named = head is not None and head.named and head.role is Role.MINIMUM
    return named and len(values) > 1 and all(index in columns and mass_text(cell.text) for index, cell in values)


def _spreads_measures(zone: Zone) -> bool:
    """Whether the columns behind the first are headed by calipers or weights."""
    heads = [head_of(column.heads[-1]) for column in zone.columns if column.heads][1:]
    return bool(heads) and all(head is not None and head.across in ("caliper", "weight") for head in heads)


def _headed(zone: Zone) -> set[int]:
    return {column.index for column in zone.columns if column.heads}


def _stands_among_boards(band: View, row: int, headed: Collection[int]) -> bool:
    """Below all prices, or right below a row of prices with one right below that leaves its measure to the heads above,
    or none: the terms of one of several boards. The rows below order sizes say which board they are whole."""
    before, behind = (_beyond_terms(band, row, step, headed) for step in (-1, 1))
    if not before and not leads_to_prices(band, row, headed):
        # The terms of each bidder, set apart from the boards by an empty row.
        return True
    if not any(looks_priced(cell) for cell in before.values()):
        return False
    return not any(isinstance(cell.value, str) and names_measure(cell.text) for cell in behind.values())


def _beyond_terms(band: View, row: int, step: int, headed: Collection[int]) -> dict[int, Cell]:
    """The row before or behind one of terms, and behind others like it."""
    while row in band.rows and tells_terms_of_prices(band.rows[row], headed):
        row += step
    return band.rows.get(row, {})


def _is_one_of_its_rows(band: View, row: int, zone: Zone) -> bool:
    """'GC1 | 300 g/m² | 495 µm | on request | EUR': a weight and a caliper, each under the head that names it; or
    'GC2 270 g/m² | from 1,240 to 1,275 €/t', a whole board under the head that names boards."""
    named = {column.index: head_of(column.heads[-1]) for column in zone.columns if column.heads}
    boards = [
        cell
        for index, cell in band.rows[row].items()
        if (head := named.get(index)) is not None and head.named and head.role in _BOARDS
    ]
    if describes_board_whole(boards):
        return True
    under = [
        head.role
        for index, cell in band.rows[row].items()
        if (head := named.get(index)) is not None and head.named and head.role in MEASURES and _measures(cell)
    ]
    return len(set(under)) == len(MEASURES)


_BOARDS = frozenset({Role.PRODUCT, Role.GRADE})


def _measures(cell: Cell) -> bool:
    head = head_of(cell)
    return isinstance(cell.value, Decimal) or (head is not None and head.across in ("caliper", "weight"))


def _parts_its_rows(band: View, row: int, zone: Zone) -> bool:
    """A board and a price unit, each under a head of the zone above, are a sub-heading of its table."""
    return names_board_and_unit(band, row) and band.rows[row].keys() <= {column.index for column in zone.columns}
