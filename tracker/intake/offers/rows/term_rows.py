"""Rows of terms below several price columns, where each has its own: 'Minimum order | 5,000 lb | 10,000 lb'."""

from collections.abc import Collection, Mapping

from tracker.intake.grid import Cell
from tracker.intake.values.heads.columns_meant import Piece


def terms_by_column(label: Cell, cells: Mapping[int, Cell], offered: Collection[int]) -> tuple[Piece, ...]:
    """What a row of terms gives each price column; () where it says one thing of all of them.

    What stands below the first of them alone may have been put there for all; below another it was not.
    """
    own = {index: cells[index].text.strip() for index in sorted(offered) if index in cells}
    beside_the_first = len(own) == 1 and min(offered) not in own
    if len(set(own.values())) < 2 and not beside_the_first:
        return ()
    return tuple(Piece(f"{label.text.strip()} {text}", frozenset({index})) for index, text in own.items())
