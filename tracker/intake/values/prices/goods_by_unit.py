"""What board is sold by where a clause tells it beside other goods: 'Kerne je Stück, Karton je Tonne'."""

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.basis import BasisReading, after_per, unit_at
from tracker.intake.values.prices.units_by_board import OF_ALL, OfBoards, boards_of_unit
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import between, tokens_of

_BOARD = ("board_nouns", "board_by_name")
_MOST_WORDS = 2


def boards_by_unit(clause: str) -> tuple[tuple[BasisReading, OfBoards], ...]:
    """The unit of board, and those of kinds of it, where each part of a clause is the name of goods and a unit, and one
    of them is board; () where another part may be of boards that are not known, or says more."""
    parts = [part for piece in COMMA.split(clause) for part in between(piece, phrases("and_words").find(piece))]
    told = [_goods_and_unit(part.strip(" .:")) for part in parts if part.strip(" .:")]
    named = [one for one in told if one is not None]
    if len(named) < len(told) or not all(unit.bases for _, unit in named):
        return ()
    board = [unit for goods, unit in named if joined(*_BOARD).whole(goods) is not None]
    others = [(goods, unit) for goods, unit in named if joined(*_BOARD).whole(goods) is None]
    kinds = [(unit, boards_of_unit(goods)) for goods, unit in others if phrases("beside_board").whole(goods) is None]
    if len(board) != 1 or not all(boards.grades for _, boards in kinds):
        return ()
    return ((board[0], OF_ALL), *kinds)


def _goods_and_unit(part: str) -> tuple[str, BasisReading] | None:
    """'Karton' and the tonne of 'Karton je Tonne'."""
    found = tokens_of(part)
    for place in range(1, min(_MOST_WORDS, len(found)) + 1):
        after = after_per(found, place, weak=True)
        unit = unit_at(found, after, part) if place < after < len(found) else None
        if unit is not None and unit[1] == len(found):
            return part[: found[place - 1][2]].strip(), unit[0]
    return None
