"""Rows of terms below several price columns, where each has its own: 'Minimum order | 5,000 lb | 10,000 lb'."""

from collections.abc import Collection, Mapping

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.columns_meant import Piece
from tracker.intake.words.lists import phrases


def terms_by_column(label: Cell, cells: Mapping[int, Cell], offered: Collection[int]) -> tuple[Piece, ...]:
    """What a row of terms gives each price column; () where it says one thing of all of them.

    What stands below one of them alone is that one's, unless it stands right beside the label, where it may have been
    put for all.
    """
    own = {index: cells[index].text.strip() for index in sorted(offered) if index in cells}
    if len(set(own.values())) < 2 and not (len(own) == 1 < len(offered) and not _is_beside(label, cells, min(own))):
        return ()
    return tuple(Piece(f"{label.text.strip()} {text}", frozenset({index})) for index, text in own.items())


def _is_beside(label: Cell, cells: Mapping[int, Cell], column: int) -> bool:
    """'Minimum order | 5 t', with nothing between the label and what it says."""
    return any(cell is label and index + 1 == column for index, cell in cells.items())


def terms_alike(label: Cell, cells: Mapping[int, Cell], offered: Collection[int]) -> tuple[Piece, ...]:
    """What a row of terms says the same of several price columns, once: 'Minimum order | 5 t | 5 t | 5 t'."""
    said = {index: cells[index].text.strip() for index in sorted(offered) if index in cells}
    alike = len(said) > 1 and len(set(said.values())) == 1
    return (Piece(f"{label.text.strip()} {min(said.values())}", frozenset(said)),) if alike else ()


def merged_over(view: View, row: int, offered: Collection[int]) -> dict[int, Cell]:
    """What is merged over several price columns, and told of each: of `offered`, those without a cell of their own."""
    merged = {index: view.spread.get((row, index)) for index in offered} if view.spread else {}
    return {index: cell for index, cell in merged.items() if cell is not None}


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
