"""What said each field of a file's lines, packed small enough to be kept beside them."""

import json
import re
import zlib
from collections.abc import Sequence
from itertools import chain

from tracker.trade.offer import Evidence, Line, LineEvidence, RowEvidence

_ZIP_LEVEL = 1
_Piece = tuple[str, str, str, str, int]
_FIRST_PIECE = 2
_BETWEEN_PIECES = re.compile(r'",[01]\],\["')
"""Where one piece ends and the next begins: within a text a quote has a backslash before it."""
_BETWEEN_LINES = "],["


def pack_evidence(lines: Sequence[Line]) -> bytes:
    """What said each field of each line, small: every distinct piece once, the lines as numbers into them.

    A piece ends in 1 where it names only a column; the first number of a line is the row that makes it a cell.
    """
    pieces = _Pieces()
    uses = [pieces.of(line.evidence) for line in lines]
    return zlib.compress(json.dumps([list(pieces.numbers), uses], separators=(",", ":")).encode(), _ZIP_LEVEL)


class _Pieces:
    """Numbers pieces of evidence in the order they come, each kind once."""

    def __init__(self) -> None:
        self.numbers: dict[_Piece, int] = {}
        self._of_rows: dict[int, list[int]] = {}

    def of(self, said: Sequence[Evidence]) -> list[int]:
        """One line's evidence: its row (0 where no part stands for a row), then its pieces' numbers."""
        row, used = 0, [0]
        for part in said.parts if isinstance(said, LineEvidence) else said:
            if isinstance(part, Evidence):
                used.append(self._number(part, 0))
            elif row in (0, part.row):
                row = part.row
                used += self._of_row(part)
            else:
                used += [self._number(piece, 0) for piece in part.pieces()]
        used[0] = row
        return used

    def _of_row(self, part: RowEvidence) -> list[int]:
        # By identity: thousands of rows share one, and the lines keep it alive.
        if id(part.said) not in self._of_rows:
            self._of_rows[id(part.said)] = [self._number(piece, int(own)) for piece, own in part.said]
        return self._of_rows[id(part.said)]

    def _number(self, piece: Evidence, own: int) -> int:
        key = (piece.field, piece.said_by, piece.words, piece.against, own)
        return self.numbers.setdefault(key, len(self.numbers))


def evidence_at(packed: bytes, position: int) -> tuple[Evidence, ...]:
    """The evidence of one line, by its position among those packed; none beyond the last.

    The line and its pieces are looked up in the text. To take all of it apart for one line holds every other thread up,
    a window's too, and of a long sheet makes so many objects that Python then looks through all there are for garbage.
    """
    text = zlib.decompress(packed).decode()
    last_quote = text.rfind('"') + 1
    uses = text[text.index(_BETWEEN_LINES, last_quote) + len(_BETWEEN_LINES) : -2]
    lines = uses.split(_BETWEEN_LINES, position + 1)
    if not uses or position >= len(lines):
        return ()
    row, *numbers = map(int, lines[position].strip("[]").split(","))
    pieces = _pieces_at(text, set(numbers), last_quote)
    return tuple(_piece(pieces[number], row) for number in numbers)


def _pieces_at(text: str, wanted: set[int], last_quote: int) -> dict[int, _Piece]:
    """The pieces of these numbers, out of the text of all."""
    starts = chain([_FIRST_PIECE], (found.end() - 2 for found in _BETWEEN_PIECES.finditer(text, 0, last_quote)))
    decode = json.JSONDecoder().raw_decode
    return {number: decode(text, at)[0] for number, at in enumerate(starts) if number in wanted}


def _piece(kept: _Piece, row: int) -> Evidence:
    field, said_by, words, against, own = kept
    return Evidence(field, f"{said_by}{row}" if own else said_by, words, against)
