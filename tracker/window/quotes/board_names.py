"""The boards' names as codes: of many thousand offers most bear a name that another bears too."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.desk.snapshot import Snapshot


@dataclass(frozen=True, slots=True)
class BoardNames:
    """`codes`, one an offer, into `names`; `folded` are these without capitals, to look for words in."""

    of: list[str]
    codes: NDArray[np.int64]
    names: list[str]
    folded: list[str]


_NONE_YET = BoardNames([], np.empty(0, np.int64), [], [])
_latest = [_NONE_YET]


def board_names(snapshot: Snapshot) -> BoardNames:
    """Made once for a snapshot: the latest is kept. Whoever compares asks for them off the interface."""
    kept = _latest[0]
    if kept.of is not snapshot.product:
        kept = _latest[0] = _coded(snapshot.product)
    return kept


def _coded(products: list[str]) -> BoardNames:
    code_of: dict[str, int] = {name: code for code, name in enumerate(dict.fromkeys(products))}
    codes = np.fromiter(map(code_of.__getitem__, products), dtype=np.int64, count=len(products))
    return BoardNames(products, codes, list(code_of), [name.casefold() for name in code_of])
