"""Rows of a list that sum up those above them: 'Average | 290 | 1,033', measured as boards are, or bare sums."""

from collections.abc import Collection, Mapping
from functools import lru_cache

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.rows.neighbours import Neighbours
from tracker.intake.offers.rows.row_labels import RowKind, names_board
from tracker.intake.tables.figures import figure_of
from tracker.intake.tables.table import BodyRow, Table
from tracker.intake.values.changes.totals import is_total
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_CLOSING = 4
"""Rows that a list may end with: its mean, its median, its least and its most."""


class Means:
    """Tells them from boards by their figures."""

    def __init__(self, table: Table, columns: Columns, neighbours: Neighbours) -> None:
        self._table, self._columns, self._neighbours = table, columns, neighbours
        self._measured = columns.of(Role.CALIPER, Role.WEIGHT)
        self._closing = table.rows[-_CLOSING:][0].index if table.rows else 0

    def told(self, row: BodyRow, cells: dict[int, Cell], label: Cell) -> tuple[str, str]:
        """Why a row offers nothing, and why it may be no offer."""
        said = self._said_in_a_measure(cells)
        if said is not None:
            if self._neighbours.sum_up(row.index, cells):
                return RowKind.TOTAL.value, ""
            return "", f"“{said.text.strip()}” may head {RowKind.TOTAL.value}"
        return (RowKind.TOTAL.value if self._sums_up_the_list(row, cells, label) else ""), ""

    def sums_up_the_quantities(self, row: BodyRow, cells: Mapping[int, Cell], priced: Collection[int]) -> bool:
        """'120,000 | Goods total | 58,077' and '120,000 | | 58,077' at the end of what was ordered: its label stands
        where others have their prices, or a figure beside no price is the sum of its column."""
        instead = [cells[index] for index in priced if index in cells]
        if any(figure_of(cell) is not None for cell in instead):
            return False
        if any(is_total(cell.text) for cell in instead):
            return True
        last = self._table.rows[-_CLOSING:][0].index <= row.index
        return last and not instead and any(self._is_sum(row, cell, index) for index, cell in cells.items())

    def _is_sum(self, row: BodyRow, cell: Cell, index: int) -> bool:
        """Of at least two figures of its column, to the last digit."""
        rows = (self._table.view.rows[other.index] for other in self._table.rows if other.index < row.index)
        above = [figure for cells in rows if index in cells and (figure := figure_of(cells[index])) is not None]
        return len(above) > 1 and figure_of(cell) == sum(above)

    def _said_in_a_measure(self, cells: Mapping[int, Cell]) -> Cell | None:
        """The 'avg.' of 'SBS C1S | avg. | 67.7' and the 'Mittel' of 'GC1 | 300 | Mittel', in the place of a caliper or
        a weight."""
        words = (cells[column.index] for column in self._measured if column.index in cells)
        return next((cell for cell in words if isinstance(cell.value, str) and _names_a_sum(cell.text)), None)

    def _sums_up_the_list(self, row: BodyRow, cells: dict[int, Cell], label: Cell) -> bool:
        """'Average of list | 74.5 | 1,093.67' at the end of a list: the mean weight describes no board, where the price
        is the mean of those above it. So is that of 'Average SBS' below rows of SBS, wherever it stands."""
        if _begins_or_ends_as_sum(label.text) and names_board(label.text):
            return self._neighbours.sum_up(row.index, cells)
        last = self._closing <= row.index or row.after_gap
        if not (last and is_total(label.text)):
            return False
        graded, measured = (self._columns.of(role) for role in (Role.GRADE, Role.CALIPER))
        described = any(one.index in cells for one in graded) and any(one.index in cells for one in measured)
        return not described and self._neighbours.sum_up(row.index, cells)


@lru_cache(maxsize=8192)
def _begins_or_ends_as_sum(text: str) -> bool:
    """'Average SBS', 'GC1, Mittel'; not 'SBS medium caliper', whatever else a word for a mean may be."""
    said = text.strip(_AROUND)
    sums = phrases("total")
    ends = sums.may_begin_in(said) and any(found.start == 0 or found.end == len(said) for found in sums.find(said))
    return ends or text.strip()[:1] in _MEAN


def _names_a_sum(text: str) -> bool:
    word = text.strip(_AROUND)
    signed = text.strip()[:1] in _MEAN and not any(map(str.isdigit, text))
    return signed or any(phrases(section).whole(word) is not None for section in ("total", "no_firms"))


_MEAN = ("Ø", "∅")
_AROUND = " .:*()Ø∅"
