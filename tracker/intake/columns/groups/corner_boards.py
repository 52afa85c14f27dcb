"""A board's name in the corner of a block whose rows are order sizes, forms, deliveries or towns: 'SBS 18 pt' over
'FOB mill' and 'Delivered'."""

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.heads.roles import Role

COSTS_BY = (Role.BRACKET, Role.FORM, Role.DELIVERY_TERMS, Role.DESTINATION)
"""What the rows of such a block may be."""


def corner_boards(columns: Columns) -> list[Cell]:
    """The corner's cells, each of which names a board and its measures alone."""
    return [
        cell
        for column in columns.of(*COSTS_BY)
        for cell, head in zip(column.heads, column.said, strict=True)
        if head.grade is not None and names_only_board(cell.text)
    ]
