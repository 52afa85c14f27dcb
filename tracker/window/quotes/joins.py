"""Which points of a picture are one board at several order sizes, or at several dates, so that a line may join them."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

from tracker.desk.snapshot import Snapshot
from tracker.window.quotes.board_names import board_names

Floats = NDArray[np.float64]
Places = NDArray[np.intp]


def boards_of(snapshot: Snapshot, rows: Places) -> Places:
    """A code for each row, the same for the order sizes of one vendor's board in one file."""
    names = board_names(snapshot).codes[rows]
    whose = _together(snapshot.vendor[rows], snapshot.grade[rows], snapshot.file[rows], names)
    # An unknown caliper (NaN) is like no other.
    _, calipers = np.unique(snapshot.caliper_um[rows], return_inverse=True, equal_nan=False)
    return _together(whose, snapshot.received[rows], calipers)


def _together(*parts: NDArray[Any]) -> Places:
    """A code for each place, the same where all parts are the same."""
    if not len(parts[0]):
        return np.empty(0, dtype=np.intp)
    code = np.zeros(len(parts[0]), dtype=np.int64)
    for part in parts:
        low = int(part.min())
        code = code * (int(part.max()) - low + 1) + (part - low)
    return np.unique(code, return_inverse=True)[1].astype(np.intp)


def first_ids(groups: Places, ids: NDArray[np.int64]) -> NDArray[np.int64]:
    """The smallest id of each row's group: what is spread sideways by it stays one above the other."""
    if not len(groups):
        return ids
    smallest = np.full(int(groups.max()) + 1, np.iinfo(np.int64).max)
    np.minimum.at(smallest, groups, ids)
    return smallest[groups]


MOST_JOINED = 1_500
"""Lines beyond this many make a thicket that shows nothing and takes too long to move."""


def joined(groups: Places, order: Floats) -> Places:
    """Places (in the rows) of neighbours within a group, two by two: shape (2 n,), for lines drawn in pairs.

    Two of the same order (two prices for any order size, two of one day) lie beside each other, not one after the
    other: no line between them. None at all where the lines would be too many.
    """
    known = np.nan_to_num(order, nan=-1.0)
    along = np.lexsort((known, groups))
    same = np.flatnonzero((groups[along][1:] == groups[along][:-1]) & (known[along][1:] != known[along][:-1]))
    if len(same) > MOST_JOINED:
        return np.empty(0, np.intp)
    return np.column_stack([along[same], along[same + 1]]).ravel()
