"""Titles over blocks of columns that tell whose columns they are, and not what stands in them.

'Demande acheteur' over 'Poste | Matière | g/m² | µm' and 'Réponse fournisseur' over the prices beside them.
"""

from collections.abc import Sequence

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES, head_text
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.values.heads.header import Header, header
from tracker.intake.values.heads.roles import MEASURES, Role

_PLAINLY = 0.8
_OF_BOARDS = (Role.PRODUCT, Role.GRADE)
_OF_OTHERS = (*_OF_BOARDS, Role.PROPERTY, Role.TOTAL, Role.STOCK, Role.ITEM, Role.REMARKS)


def titles_of_blocks(columns: Sequence[HeadedColumn]) -> frozenset[Cell]:
    """The heads that stand over a column of boards and over others, or over a measure and a price, each with a head of
    its own below: 'Recycled' over 'lb/MSF | $/ton' names a board.

    'Roughness' over two columns of 'µm' is over no board, and says what both hold.
    """
    over: dict[Cell, list[Cell]] = {}
    for column in columns:
        for cell in column.heads[:-1]:
            over.setdefault(cell, []).append(column.heads[-1])
    return frozenset(cell for cell, below in over.items() if len(below) > 1 and _is_over_a_block(below))


def _is_over_a_block(below: Sequence[Cell]) -> bool:
    roles = {header(head_text(cell)).role for cell in below}
    return any(map(_heads_boards, below)) or bool(roles & PRICE_ROLES and roles & MEASURES)


def tells_of_others(head: Header) -> bool:
    """'Demande acheteur', 'Specification': by its words such a title may name a property, a total or the board."""
    return head.role in _OF_OTHERS


def _heads_boards(cell: Cell) -> bool:
    head = header(head_text(cell))
    return any(head.strength(role) >= _PLAINLY for role in _OF_BOARDS)
