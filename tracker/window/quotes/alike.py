"""Points that all look alike, drawn as one: pyqtgraph looks at each of many thousand to find what they share."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import pyqtgraph as pg
from numpy.typing import NDArray

_MANY, _VERY_MANY = 1_200, 12_000


class AlikePoints(pg.ScatterPlotItem):
    """A scatter of one symbol, one size, one pen and one fill."""

    def updateSpots(self, dataSet: NDArray[Any] | None = None) -> None:  # noqa: N803  (pyqtgraph calls it by this name)
        spots = self.data if dataSet is None else dataSet
        if not len(spots):
            return
        first = spots[:1]
        look = tuple(column[0] for column in self._style(["symbol", "size", "pen", "brush"], data=first))
        (where,) = self.fragmentAtlas[[look]]
        spots["sourceRect"] = where
        self._updateMaxSpotSizes(data=first)
        self.invalidate()


def draw_as_shapes(items: Iterable[object], wanted: bool) -> None:
    """Has the points among the items drawn as shapes, not as pictures kept for the screen, or as before."""
    for item in items:
        if isinstance(item, AlikePoints):
            item.setExportMode(wanted, {"antialias": True})


def size_among(points: int) -> float:
    """How large a point is among so many, beside its full size: many are smaller, and so hide each other less."""
    return 1.0 if points < _MANY else 0.75 if points < _VERY_MANY else 0.55
