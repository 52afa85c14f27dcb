"""Whether freight is in a figure: yes, no, or the sheet says nothing of it; never the second for the third."""

import numpy as np

from tracker.desk.snapshot import Codes, Flags, Snapshot

FREIGHT_WORDS = {1: "included", 0: "not included", -1: "not said"}


def where_freight_stands(snapshot: Snapshot, is_delivered: Flags) -> Codes:
    """Of each figure: 1 freight is in it, 0 the sheet says that it is not, -1 the sheet says nothing of freight.

    A freight charge beside the price says that it is not in the price.
    """
    said: Codes = np.where(is_delivered, 1, snapshot.delivered).astype(np.int32)
    if snapshot.charges is not None:
        charged = np.zeros(len(snapshot), np.bool_)
        charged[snapshot.charges.offer[snapshot.charges.freight]] = True
        said[charged & ~is_delivered & (said < 0)] = 0
    return said
