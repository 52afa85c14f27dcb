"""Points that all look alike, drawn as one: pyqtgraph looks at each of many thousand to find what they share."""

from __future__ import annotations

from typing import Any

import pyqtgraph as pg
from numpy.typing import NDArray


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
