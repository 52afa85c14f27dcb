"""A column as an object: what it shows, how it sorts, how it stands."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Any

import numpy as np
from numpy.typing import NDArray


class Stand(Enum):
    """Words start at the left, figures end at the right, marks stand in the middle."""

    LEFT = "left"
    RIGHT = "right"
    MIDDLE = "middle"


@dataclass(frozen=True, slots=True)
class Column:
    """One column over some data of n rows.

    text(data, row) is what is shown, ready for the eye. keys(data) is an array of n sort keys (NaN sorts last either
    way). title(data) may depend on the user's units. `paint` names what a delegate draws in place of text ('mark',
    'plies'); `spoken` is then read out instead. `strong` makes the figure the one a row is about. `share` is the part
    of spare width the column takes. `wraps`: a text too long for one line goes on in further ones, where rows are tall.
    """

    key: str
    title: Callable[[Any], str]
    text: Callable[[Any, int], str]
    keys: Callable[[Any], NDArray[Any]]
    stand: Stand = Stand.LEFT
    width: int = 90
    share: int = 0
    strong: bool = False
    wraps: bool = False
    paint: str = ""
    paints: Callable[[Any, int], Any] | None = None
    tip: Callable[[Any, int], str] | None = None
    about: str = ""


def fixed(title: str) -> Callable[[Any], str]:
    """A title that doesn't depend on the data."""
    return lambda _data: title


def text_keys(words: Sequence[str]) -> NDArray[np.int64]:
    """Each text's place in alphabetical order, capitals aside; empty ones last."""
    # The same texts come again and again: each is folded once.
    folded = {word: word.casefold() or "\U0010ffff" for word in set(words)}
    order = {text: place for place, text in enumerate(sorted(set(folded.values())))}
    rank = {word: order[text] for word, text in folded.items()}
    return np.fromiter(map(rank.__getitem__, words), dtype=np.int64, count=len(words))


def coded_keys(codes: NDArray[Any], names: Sequence[str]) -> NDArray[np.int64]:
    """Alphabetical order for codes into a list of names; -1 (unknown) last."""
    ranks: NDArray[np.int64] = np.append(text_keys(names), len(names) + 1)[codes]
    return ranks


def order_by(keys: NDArray[Any], rows: NDArray[np.intp], *, descending: bool) -> NDArray[np.intp]:
    """Rows in the order of their keys, stable, unknown (NaN) ones last in either direction."""
    chosen = keys[rows]
    if not descending:
        return rows[np.argsort(chosen, kind="stable")]
    as_numbers = chosen.astype(np.float64)
    return rows[np.argsort(-as_numbers, kind="stable")]
