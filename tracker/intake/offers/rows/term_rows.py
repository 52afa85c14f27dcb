"""Rows of terms below several price columns, where each has its own: 'Minimum order | 5,000 lb | 10,000 lb'."""

from collections.abc import Collection, Mapping

from tracker.intake.grid import Cell
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.columns_meant import Piece
from tracker.intake.words.lists import phrases


def terms_by_column(label: Cell, cells: Mapping[int, Cell], offered: Collection[int]) -> tuple[Piece, ...]:
    """What a row of terms gives each price column; () where it says one thing of all of them.

    What stands below the first of them alone may have been put there for all; below another it was not.
    """
    own = {index: cells[index].text.strip() for index in sorted(offered) if index in cells}
    beside_the_first = len(own) == 1 and min(offered) not in own
    if len(set(own.values())) < 2 and not beside_the_first:
        return ()
    return tuple(Piece(f"{label.text.strip()} {text}", frozenset({index})) for index, text in own.items())


def terms_alike(label: Cell, cells: Mapping[int, Cell], offered: Collection[int]) -> tuple[Piece, ...]:
    """What a row of terms says the same of several price columns, once: 'Minimum order | 5 t | 5 t | 5 t'."""
    said = {index: cells[index].text.strip() for index in sorted(offered) if index in cells}
    alike = len(said) > 1 and len(set(said.values())) == 1
    return (Piece(f"{label.text.strip()} {min(said.values())}", frozenset(said)),) if alike else ()


def freight_by_column(label: Cell, cells: Mapping[int, Cell], offered: Collection[int]) -> tuple[Piece, ...]:
    """What a row of freight gives each price column in words alone: 'Freight | extra | included', 'Freight included |
    no | yes', and nothing that of a dash; () where it says one thing of all, or an amount."""
    pieces = terms_by_column(label, cells, offered)
    told = tuple(said for piece in pieces if (said := _as_answered(piece)) is not None)
    return told if not _counts(pieces) else ()


def _as_answered(piece: Piece) -> Piece | None:
    """The piece as words that tell of freight; 'Freight included no' does with a colon before the 'no', and the 'yes'
    of another goes without saying."""
    ahead, _, last = piece.text.rpartition(" ")
    answer = phrases("answers").whole(last)
    named = answer != "no" and find_delivery(piece.text) is not None
    text = ahead if answer == "yes" else piece.text if named else f"{ahead}: {last}"
    return piece._replace(text=text) if find_delivery(text) is not None else None


def _counts(pieces: tuple[Piece, ...]) -> bool:
    return any(sign.isdigit() for piece in pieces for sign in piece.text)
