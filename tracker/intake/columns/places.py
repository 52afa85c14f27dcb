"""Places told by figures: '20–29' and '3' under 'Zone (postcode)' are where board goes, and no order sizes."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.heads import head_text
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.masses import find_masses
from tracker.intake.values.role_words import header_roles
from tracker.intake.values.roles import ORDER_SIZES, Role

_OUTRIGHT = 0.9


def with_places(columns: Sequence[HeadedColumn]) -> list[HeadedColumn]:
    """The columns with the word for places said before each such figure, as in 'Zone 20–29'."""
    return [_placed(column) for column in columns]


def _placed(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads or (None,)
    over = next((cell for cell in reversed(above) if cell is not None and _names_places(cell)), None)
    if lowest is None or over is None or not _numbers_a_place(lowest):
        return column
    word, _, _ = head_text(over).partition("(")
    text = f"{word.strip()} {lowest.text.strip()}"
    return replace(column, heads=(*column.heads[:-1], lowest._replace(value=text, text=text, number_format="General")))


def _names_places(cell: Cell) -> bool:
    strongest = header_roles(head_text(cell))
    said = {reading.role for reading in strongest if reading.strength >= _OUTRIGHT}
    return Role.DESTINATION in said and not said.intersection(ORDER_SIZES)


def _numbers_a_place(cell: Cell) -> bool:
    """'3', '20-29', '01', and not '< 5 t' or '5 t', which weigh orders."""
    text = cell.text
    return any(map(str.isdigit, text)) and not any(map(str.isalpha, text)) and not find_masses(text)
