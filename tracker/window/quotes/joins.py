"""Which points of a picture are one board at several order sizes, or at several dates, so that a line may join them."""

import numpy as np
from numpy.typing import NDArray

from tracker.desk.snapshot import Snapshot

Floats = NDArray[np.float64]
Places = NDArray[np.intp]


def boards_of(snapshot: Snapshot, rows: Places) -> Places:
    """A code for each row, the same for the order sizes of one vendor's board in one file."""
    known: dict[tuple[object, ...], int] = {}
    parts = zip(
        snapshot.vendor[rows].tolist(),
        [snapshot.product[row] for row in rows],
        snapshot.caliper_um[rows].tolist(),
        snapshot.grade[rows].tolist(),
        snapshot.file[rows].tolist(),
        snapshot.received[rows].tolist(),
        strict=True,
    )
    return np.array([known.setdefault(key, len(known)) for key in parts], dtype=np.intp)


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
