"""What said each field of a file's lines, packed small enough to be kept beside them."""

import json
import zlib
from collections.abc import Sequence

from tracker.trade.offer import Evidence, Line, LineEvidence, RowEvidence

_ZIP_LEVEL = 1
_Piece = tuple[str, str, str, str, int]


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
    """The evidence of one line, by its position among those packed; none beyond the last."""
    pieces, uses = json.loads(zlib.decompress(packed))
    if position >= len(uses):
        return ()
    row, *numbers = uses[position]
    return tuple(_piece(pieces[number], row) for number in numbers)


def _piece(kept: tuple[str, str, str, str, int], row: int) -> Evidence:
    field, said_by, words, against, own = kept
    return Evidence(field, f"{said_by}{row}" if own else said_by, words, against)
