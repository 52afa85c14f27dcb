"""What bare numbers across a table are values of: 200 | 225 | 250 under 'Grammage (g/m²)' or beside it.

The words stand above the numbers, in line with them in the corner, or in what is said above the table ('price by
grammage, g/m²').
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from tracker.intake.columns.column import Column
from tracker.intake.columns.sizes.order_sizes import is_order_size
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.caliper import CaliperReading, bare_caliper, in_unit
from tracker.intake.values.boards.weight import WeightReading, weight_in, weight_text
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.roles import MEASURES, Role
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without


@dataclass(frozen=True, slots=True)
class Axes:
    """Where the words for bare numbers across may stand: in columns that hold no prices, and above the table."""

    corner: Sequence[Column]
    above: Sequence[Words] = ()

    def caliper(self, column: Column) -> CaliperReading | None:
        """The one caliper that a column's heads say, or that their bare number is."""
        for head in column.said:
            if len(head.calipers) == 1:
                return head.calipers[0]
        number, head_of_axis = self._bare_head(column, Role.CALIPER)
        if number is None:
            return None
        unit = head_of_axis.caliper_unit if head_of_axis is not None else None
        return in_unit(number, unit, column.text) if unit is not None else bare_caliper(number)

    def weights(self, column: Column) -> tuple[WeightReading, ...]:
        """The basis weight that a column's heads say, or that their bare number is, in every unit it may be in."""
        for head in column.said:
            # '$ per hundredweight (100 lb)' has a weight in it, but not one of board.
            one_unit = len(head.weight_units) == 1 or len(head.weights) == 1 or weight_text(head.text) is not None
            if head.weights and one_unit and not is_order_size(head):
                return head.weights
        number, head_of_axis = self._bare_head(column, Role.WEIGHT)
        if number is None or head_of_axis is None:
            return ()
        return tuple(weight_in(number, unit, column.text) for unit in head_of_axis.weight_units)

    def _bare_head(self, column: Column, axis: Role) -> tuple[Decimal | None, Header | None]:
        """The bare number that heads a column on an axis, and the words that name the axis.

        A column that holds such values itself names no axis ('µm' beside prices under '2025' and '2026').
        """
        corner = [other for other in self.corner if other.role is not axis]
        for level in reversed(range(len(column.said))):
            readings = number_readings(column.said[level].text)
            if len(readings) != 1 or _measures_otherwise(column, level, self.corner, axis):
                continue
            for head in (*reversed(column.said[:level]), *_in_line(column, level, corner)):
                if head.strength(axis) > 0 or _names_by_unit(head, axis):
                    return readings[0].value, head
            named = self._named_above(axis)
            if named is not None and not _measure_another(column.said[:level], axis):
                return readings[0].value, named
        return None, None

    def _named_above(self, axis: Role) -> Header | None:
        """The one measure that is named above the table with its unit, where no column of the table holds any."""
        if any(column.role in (Role.CALIPER, Role.WEIGHT) for column in self.corner):
            return None
        named = [found for words in self.above for found in _measures_named(words.text)]
        return named[0][1] if len({role for role, _ in named}) == 1 and named[0][0] is axis else None


def _measures_named(text: str) -> list[tuple[Role, Header]]:
    """The measures that a line names with a unit and without a value: 'price by grammage (g/m²)', not '250 g/m²'."""
    parts = [header(part) for part in (*_PARTS.split(text), *_from_the_name(text))]
    if any(said.calipers or said.weights for said in parts):
        return []
    weights = [(Role.WEIGHT, said) for said in parts if len(said.weight_units) == 1 and said.strength(Role.WEIGHT)]
    calipers = [(Role.CALIPER, said) for said in parts if said.caliper_unit and said.strength(Role.CALIPER)]
    return [*weights, *((role, said) for role, said in calipers if not _is_a_length(said.text))]


def _is_a_length(text: str) -> bool:
    """'3 in' and 'to 84 in' are lengths, of cores and reels; the figure of '.001 in' is the unit's."""
    return any(map(str.isdigit, without(text, phrases("caliper_units").find(text))))


def _from_the_name(text: str) -> list[str]:
    """'by basis weight, lb per 1,000 sq ft' in a line that begins with the price: from the measure's name on."""
    named = [match for match in phrases("headers").find(text) if match.value in (Role.CALIPER, Role.WEIGHT)]
    return [text[match.start :] for match in named if match.start > 0]


_PARTS = re.compile(r"\s[-–—]\s|[;,|\n]|\.\s")


def _names_by_unit(head: Header, axis: Role) -> bool:
    """'Grade / µm' in the corner: the words name the rows and the unit the numbers across."""
    if head.currency is not None or head.strength(Role.CALIPER) or head.strength(Role.WEIGHT):
        return False
    unit = head.caliper_unit is not None if axis is Role.CALIPER else len(head.weight_units) == 1
    return unit and (head.caliper_unit is None or not head.weight_units)


def _measure_another(heads: Sequence[Header], axis: Role) -> bool:
    """'Basis weight, lb/MSF' right over 52 and 60: what a line above the table measures is something else."""
    return any(head.strength(of) > 0 for head in heads for of in MEASURES if of is not axis)


def _measures_otherwise(column: Column, level: int, corner: Sequence[Column], axis: Role) -> bool:
    """'Grammage (g/m²)' in line with 260 and 300, below calipers: these are no calipers, whatever stands above them."""
    row = column.heads[level].row
    in_line = [head for other in corner for cell, head in zip(other.heads, other.said, strict=True) if cell.row == row]
    named = {of for head in in_line for of in MEASURES if head.strength(of) or _names_by_unit(head, of)}
    return bool(named) and axis not in named


def _in_line(column: Column, level: int, corner: Sequence[Column]) -> list[Header]:
    """The corner's header cells in the number's own row; where it has none there, all of them."""
    row = column.heads[level].row
    in_line = [head for other in corner for cell, head in zip(other.heads, other.said, strict=True) if cell.row == row]
    return in_line or [head for other in corner for head in other.said]
