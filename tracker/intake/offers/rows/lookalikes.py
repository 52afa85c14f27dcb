"""Rows that may be boards or something else: a name with the word for a charge, a term or a total in it."""

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.rows.neighbours import Neighbours
from tracker.intake.offers.rows.row_labels import RowKind, boards_beside, is_other_charge
from tracker.intake.values.boards.boards_named import is_measured_twice, names_measure
from tracker.intake.values.boards.grade import names_grade


class Lookalikes:
    """Tells the boards among them by what they cost and how they are measured."""

    def __init__(self, columns: Columns, neighbours: Neighbours) -> None:
        self._columns, self._neighbours = columns, neighbours
        self._priced = frozenset(price.index for price in columns.prices)
        self._across = any(price.caliper or price.weights for price in columns.prices)

    def told(self, kind: RowKind, label: Cell, cells: dict[int, Cell]) -> str | None:
        """What leaves it open whether a row is a board, where its name has a word for something else in it: '' where
        what it costs shows that it is one, None where it is what its name says."""
        named, measured = names_grade(label.text), names_measure(label.text)
        if kind is RowKind.MEASURES:
            return None
        alike = self._neighbours.cost_as_much(cells)
        doubt = f"“{label.text.strip()}” may be a board, or {kind.value.partition(',')[0]}"
        beside = kind is not RowKind.TOTAL and any(boards_beside(label, cells, self._columns))
        if not (named or measured or beside):
            # 'Premium' that costs as much as the boards do, 'Extra smooth' that does so in every column.
            told = "" if len(self._priced & cells.keys()) > 1 else doubt
            return told if alike and kind is RowKind.CHARGE and is_other_charge(label.text) else None
        if alike and kind in (RowKind.CHARGE, RowKind.TERM):
            return ""
        # 'Gletscherweiß Premium 250 g/m² 400 µm' has a surcharge's word in its name, and is measured as a board is.
        whole = beside or (named and (measured or self._across)) or is_measured_twice(label.text)
        unsure = alike is None and not beside and label not in self._named(cells)
        return None if alike is False or not whole or unsure else doubt

    def _named(self, cells: dict[int, Cell]) -> list[Cell]:
        """The row's cells below a head that says that boards stand there."""
        return [cells[column.index] for column in self._columns.board if column.heads and column.index in cells]
