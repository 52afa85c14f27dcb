"""Units in a column beside labels: 'Basis weight | 250 | g/m²', 'Price | EUR/t | 1288 | 866' in a table on its side."""

from collections.abc import Sequence
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View, part_of
from tracker.intake.values.caliper import caliper_unit
from tracker.intake.values.lead import lead_unit
from tracker.intake.values.masses import mass_units
from tracker.intake.values.money import price_unit
from tracker.intake.values.weight import weight_units

_FEWEST = 2
_FARTHEST = 8
"""Columns to the right of the labels; a table on its side with more boards than that names its units beside them."""
_LONGEST = 16


def unit_column(view: View, column: int, rows: Sequence[int]) -> int | None:
    """The first column to the right of labels that holds units and nothing else: several, or what a price is per."""
    for beside in range(column + 1, column + 1 + _FARTHEST):
        cells = [cell for row in rows if (cell := view.rows[row].get(beside)) is not None]
        several = len({cell.text for cell in cells}) >= _FEWEST or any(map(_is_of_price, cells))
        if several and all(map(_is_unit, cells)):
            return beside
    return None


def with_label_units(view: View, column: int, units: int) -> View:
    """The view with each unit written behind its label, which then heads its values as 'Price (EUR/t)' would."""
    joined = part_of(view, view.order)
    joined.rows = {row: _joined(cells, column, units) for row, cells in view.rows.items()}
    return joined


def _joined(cells: dict[int, Cell], column: int, units: int) -> dict[int, Cell]:
    rest = {index: cell for index, cell in cells.items() if index != units}
    unit, label = cells.get(units), cells.get(column)
    if unit is not None and label is not None and _is_unit(unit):
        text = f"{label.text.strip()} ({unit.text.strip()})"
        rest[column] = label._replace(value=text, text=text)
    return rest


def _is_unit(cell: Cell) -> bool:
    return isinstance(cell.value, str) and len(cell.text) <= _LONGEST and _names_unit(cell.text.strip().strip("()[]"))


def _is_of_price(cell: Cell) -> bool:
    """'EUR/t', with its money; 'kg' alone may be what an order is in."""
    unit = price_unit(cell.text) if isinstance(cell.value, str) and len(cell.text) <= _LONGEST else None
    return unit is not None and unit.currency is not None and unit.basis is not None


@lru_cache(maxsize=2048)
def _names_unit(text: str) -> bool:
    if lead_unit(text) is not None or mass_units(text) or price_unit(text) is not None:
        return True
    return len(weight_units(text)) == 1 or caliper_unit(text) is not None
