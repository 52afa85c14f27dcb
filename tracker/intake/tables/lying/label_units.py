"""Units in cells beside labels: 'Basis weight | 250 | g/m²', 'Price | 1168 | per cwt', 'Price | EUR/t | 1288 | 866'."""

from collections import Counter
from collections.abc import Iterator, Sequence
from decimal import Decimal
from functools import lru_cache

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of, looks_priced
from tracker.intake.tables.view import View, part_of
from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.orders.masses import mass_units
from tracker.intake.values.prices.money import find_price_unit, price_unit
from tracker.intake.values.times.lead import lead_unit

_FEWEST = 2
_LONGEST = 16
_LONGEST_OF_PRICE = 40
"""'US dollars per short ton (2,000 lb)'."""

Place = tuple[int, int]
"""Row and column."""


def units_beside(view: View, column: int, rows: Sequence[int], last: int) -> frozenset[Place]:
    """The cells to the right of labels, up to the column `last`, that say what their values are in.

    They fill a column of their own, or stand beside the one figure of a label among cells that say other things.
    """
    places: set[Place] = set()
    for beside in range(column + 1, last + 1):
        cells = {row: cell for row in rows if (cell := view.rows[row].get(beside)) is not None}
        several = len({cell.text for cell in cells.values()}) >= _FEWEST
        of_price = any(_is_of_price(view.rows[row][column], cell) for row, cell in cells.items())
        if (several or of_price) and all(is_unit(view.rows[row][column], cell) for row, cell in cells.items()):
            places.update((row, beside) for row in cells)
    return frozenset(places).union(*(_beside_one_figure(view, column, row, last) for row in rows))


def _beside_one_figure(view: View, column: int, row: int, last: int) -> Iterator[Place]:
    """The cells of a row that say what its value is in, where there is one figure and nothing else."""
    label = view.rows[row][column]
    cells = {at: cell for at, cell in view.rows[row].items() if column < at <= last}
    units = {at for at, cell in cells.items() if is_unit(label, cell)}
    values = [cell for at, cell in cells.items() if at not in units]
    if units and len(values) == 1 and (_is_number(values[0]) or (_names_price(label) and looks_priced(values[0]))):
        yield from ((row, at) for at in units)


def with_label_units(view: View, column: int, units: frozenset[Place]) -> View:
    """The view with each unit written behind its label, which then heads its values as 'Price (EUR/t)' would.

    Units that a price cannot all be in, or that its label denies, are written behind the values that they follow.
    """
    joined = part_of(view, view.order)
    joined.rows = {
        row: _joined(cells, column, {at for at in cells if (row, at) in units}) for row, cells in view.rows.items()
    }
    first = _first_value_column(joined, column)
    joined.rows = {row: _moved_left(cells, column, first) for row, cells in joined.rows.items()}
    return joined


def _joined(cells: dict[int, Cell], column: int, units: set[int]) -> dict[int, Cell]:
    label = cells.get(column)
    if label is None or not units:
        return cells
    name = label.text.strip().rstrip(":").rstrip()
    said = list(dict.fromkeys(cells[at].text.strip().strip("()[]") for at in sorted(units)))
    if _disagree(name, said):
        return _behind_values(cells, units)
    rest = {at: cell for at, cell in cells.items() if at not in units}
    return rest | {column: _written(label, f"{name} ({' '.join(said)})")}


def _disagree(label: str, said: list[str]) -> bool:
    """Whether units, or a label and its unit, say that a price is per different things."""
    told = [find_price_unit(label), *map(price_unit, said)]
    bases = {unit.basis.bases for unit in told if unit is not None and unit.basis is not None}
    return len(bases) > 1 and not frozenset.intersection(*bases)


def _behind_values(cells: dict[int, Cell], units: set[int]) -> dict[int, Cell]:
    rest: dict[int, Cell] = {}
    last: int | None = None
    for at, cell in sorted(cells.items()):
        if at not in units:
            rest[at], last = cell, at
        elif last is not None:
            rest[last] = _written(rest[last], f"{rest[last].text.strip()} {cell.text.strip()}")
    return rest


def _written(cell: Cell, text: str) -> Cell:
    return cell._replace(value=text, text=text)


def _first_value_column(view: View, column: int) -> int | None:
    """The column right of the labels in which most values stand."""
    counts = Counter(at for cells in view.rows.values() for at in cells if at > column)
    return counts.most_common(1)[0][0] if counts else None


def _moved_left(cells: dict[int, Cell], column: int, first: int | None) -> dict[int, Cell]:
    """The row with its one value below those of the others: its unit stands before it, theirs do not."""
    values = [at for at in cells if at > column]
    if first is None or len(values) != 1 or values[0] <= first:
        return cells
    return {(first if at == values[0] else at): cell for at, cell in cells.items()}


def is_unit(label: Cell, cell: Cell) -> bool:
    """Whether a cell beside a label says what its values are in."""
    if _is_of_price(label, cell):
        return True
    return isinstance(cell.value, str) and len(cell.text) <= _LONGEST and _names_unit(cell.text.strip().strip("()[]"))


def _is_of_price(label: Cell, cell: Cell) -> bool:
    """'EUR/t', with its money; 'kg' alone may be what an order is in, unless it stands beside a price."""
    unit = price_unit(cell.text) if isinstance(cell.value, str) and len(cell.text) <= _LONGEST_OF_PRICE else None
    if unit is None:
        return False
    return (unit.currency is not None and unit.basis is not None) or _names_price(label)


def _names_price(label: Cell) -> bool:
    head = head_of(label)
    return head is not None and head.price


def _is_number(cell: Cell) -> bool:
    return isinstance(cell.value, Decimal) or bool(number_readings(cell.text))


@lru_cache(maxsize=2048)
def _names_unit(text: str) -> bool:
    if lead_unit(text) is not None or mass_units(text) or price_unit(text) is not None:
        return True
    return len(weight_units(text)) == 1 or caliper_unit(text) is not None
