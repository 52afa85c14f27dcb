"""Whether a row costs what the boards around it do: what tells 'Premium SBS 18 pt' from a premium for SBS."""

from collections.abc import Iterable, Mapping, Sequence, Set
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.offers.rows.row_labels import kind_of_row
from tracker.intake.tables.table import Table
from tracker.intake.values.prices.money import price_text

_LOOKED_AT = 500
_NEAR = Decimal("1.5")
"""How far outside the prices of other boards one more may lie; common practice, no source."""
_OF_ONE_UNIT = 5
"""Prices further apart than so many times are not per one unit, and tell nothing of another; no source."""


class Neighbours:
    """The lowest and the highest figure of each price column of a table, beside what is no charge and no total."""

    def __init__(self, table: Table, priced: frozenset[int]) -> None:
        self._table, self._priced = table, priced
        self._spans: dict[int, tuple[Decimal, Decimal]] | None = None

    def cost_as_much(self, cells: Mapping[int, Cell]) -> bool | None:
        """Whether all figures of a row among the prices are like those above and below; None without any to compare."""
        if self._spans is None:
            self._spans = self._of_boards()
        own = self._figures(cells)
        spans = {index: span for index, span in self._spans.items() if span[1] <= _OF_ONE_UNIT * span[0]}
        compared = [(figure, spans[index]) for index, figure in own.items() if index in spans]
        if not compared or 2 * len(compared) < len(own):
            return None
        return all(low <= _NEAR * figure and figure <= _NEAR * high for figure, (low, high) in compared)

    def far_below(self, cells: Mapping[int, Cell], measures: Set[int]) -> bool:
        """Whether each price of a row is a small part of what boards measured in one of these columns cost there."""
        own = self._figures(cells)
        least: dict[int, Decimal] = {}
        for row in self._table.rows:
            others = self._table.view.rows[row.index]
            for index in own.keys() & others.keys() if measures & others.keys() else ():
                figure = _figure(others[index])
                if figure is not None:
                    least[index] = min(figure, least.get(index, figure))
        return bool(own) and all(index in least and _SMALL_PART * own[index] < least[index] for index in own)

    def far_below_rows(self, cells: Mapping[int, Cell], rows: Iterable[int]) -> bool:
        """Whether each price of a row is a small part of the least in those rows, as what firms differ by is."""
        own = self._figures(cells)
        compared = [self._figures(self._table.view.rows[row]) for row in rows]
        beside = {index: [one[index] for one in compared if index in one] for index in own}
        # Where no figure stands in those rows, nothing shows that a price is far below them.
        return bool(own) and all(
            bool(beside[index]) and _SMALL_PART * figure < min(beside[index]) for index, figure in own.items()
        )

    def sum_up(self, row: int, cells: Mapping[int, Cell]) -> bool:
        """Whether each price of a row is the sum, the mean, the least or the most of some right above it."""
        above = [other.index for other in reversed(self._table.rows) if other.index < row]
        return self.made_of(cells, above[:_LOOKED_AT])

    def made_of(self, cells: Mapping[int, Cell], rows: Iterable[int]) -> bool:
        """The same of the first ones of those rows, wherever they stand."""
        own = self._figures(cells)
        compared = [self._figures(self._table.view.rows[row]) for row in rows]
        return bool(own) and all(
            _sums_up(figure, [one[index] for one in compared if index in one]) for index, figure in own.items()
        )

    def _figures(self, cells: Mapping[int, Cell]) -> dict[int, Decimal]:
        """The prices of a row, by column."""
        read = {index: _figure(cells[index]) for index in self._priced & cells.keys()}
        return {index: figure for index, figure in read.items() if figure is not None}

    def _of_boards(self) -> dict[int, tuple[Decimal, Decimal]]:
        spans: dict[int, tuple[Decimal, Decimal]] = {}
        rows = self._table.rows
        for row in rows[:: 1 + len(rows) // _LOOKED_AT]:
            cells = self._table.view.rows[row.index]
            if any(kind_of_row(cell.text) for cell in cells.values() if isinstance(cell.value, str)):
                continue
            for index in self._priced & cells.keys():
                figure = _figure(cells[index])
                if figure is not None and figure > 0:
                    low, high = spans.get(index, (figure, figure))
                    spans[index] = min(low, figure), max(high, figure)
        return spans


def _sums_up(figure: Decimal, above: Sequence[Decimal]) -> bool:
    """Whether a figure is made of at least two of those above it, the nearest first, up to rounding."""
    total = Decimal(0)
    for count, one in enumerate(above, 1):
        total += one
        made = (total, total / count)
        if count > 1 and any(abs(figure - each) <= _ROUNDED * each for each in made):
            return True
    return len(above) > 1 and figure in (min(above), max(above))


_ROUNDED = Decimal("0.0005")


_SMALL_PART = 5
"""What is charged on top of board is less than a fifth of what it costs; common practice, no source."""


def _figure(cell: Cell) -> Decimal | None:
    if isinstance(cell.value, Decimal):
        return cell.value
    price = price_text(cell.text) if isinstance(cell.value, str) else None
    return price.amounts[0].value if price is not None and price.amounts else None
