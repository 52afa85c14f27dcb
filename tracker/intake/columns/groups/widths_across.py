"""Prices told apart by how wide the roll is: '40in | 42in', and '700 | 920' below 'Laize (mm)', over figures."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.tables.headers.heads import head_text, is_bare_number
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.figures.web_widths import is_web_width, named_width
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import MEASURES, Role


def with_widths(columns: Sequence[HeadedColumn]) -> list[HeadedColumn]:
    """The columns with the word for widths said before each bare figure below it."""
    return [_widened(column) for column in columns]


def _widened(column: HeadedColumn) -> HeadedColumn:
    *above, lowest = column.heads or (None,)
    if lowest is None or not is_bare_number(lowest):
        return column
    texts = (named_width(head_text(cell), lowest.text.strip()) for cell in reversed(above) if cell is not None)
    text = next(filter(None, texts), "")
    if not text:
        return column
    return replace(column, heads=(*column.heads[:-1], lowest._replace(value=text, text=text, number_format="General")))


def without_widths_roles(said: Sequence[Header], *, priced: bool) -> Sequence[Header]:
    """The heads of a column of prices without what their units alone would make of a width ('in', 'mm' of a caliper)
    and of the words above it: 'Roll width' and 'Caliper' over '40in' hold neither below them."""
    widths = [is_web_width(head.text) for head in said]
    if not priced or not any(widths):
        return said
    return [
        replace(head, roles=(), caliper_unit=None, length_unit=None, calipers=(), basis=None, bracket=None)
        if wide or (any(widths[level:]) and head.role in _MEASURED)
        else head
        for level, (head, wide) in enumerate(zip(said, widths, strict=True))
    ]


_MEASURED = MEASURES | {Role.ROLL_WIDTH, Role.WIDTH, Role.SHEET_SIZE, Role.FORM}
