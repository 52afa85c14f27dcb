"""What the user marked a column of prices to be per, in the sheet that it was marked in, against what else it says."""

import re
from collections.abc import Sequence

from tracker.intake.columns.roles.marked import HERE, unmarked
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.prices.settle import Claim, Settled
from tracker.trade.offer import NoteCode

_CELL = re.compile(r"(?:.*!)?[A-Z]+(\d+)")


def as_marked(settled: Settled[str], around: Sequence[Sequence[Claim[str]]], draft: Draft) -> Settled[str]:
    """What was marked in this sheet holds over its heads and texts, which the user had before their eyes; a note says
    what names another unit. What the price's own row says stands against it: it is about that one price.

    A layout of an earlier sheet settles nothing here: this one may be on another unit since.
    """
    claims = [claim for level in around for claim in level]
    mark = next((claim for claim in claims if claim.words.endswith(HERE) and len(claim.values) == 1), None)
    if mark is None or settled.by is None or settled.against is None:
        return settled
    others = [claim for claim in (settled.by, settled.against) if not claim.values & mark.values]
    if not others or any(other not in claims for other in others):
        return settled
    where = " and ".join(dict.fromkeys(_row(other.where) for other in others))
    text = f"“{unmarked(mark.words)}” holds, as you marked it, though {where} names another unit."
    draft.note(NoteCode.BASIS_UNKNOWN, draft.where, text)
    return Settled(mark.values, mark)


def _row(where: str) -> str:
    """A label and what stands beside it are one text, whose unit may stand in any cell of its row."""
    cell = _CELL.fullmatch(where)
    return f"row {cell[1]}" if cell else where
