"""What a plot shows, as plain arrays: made without Qt, drawn by plot.py."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from tracker.window.quotes.geometry import Ribbon

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Drawing:
    """What a plot shows. `rows` are the offers drawn, with their x, y and marks; all four arrays are of one length.

    labels: (place in rows, words), in order of importance. faint: points of offers that are no
    longer current. notes: (x, y, words) about the ground behind the points.
    x_ticks: (value, words), or empty for numbers with `x_unit`. spans: (place in rows, left, right) drawn as ranges
    behind the points. boxes: (left, right, low, high). level: y of a dashed line. front: places in rows, ringed.
    x_also, y_also: factor and unit in which x or y is told a second time, where there is room.
    x_zero, y_zero: the word for zero; with y_zero the figures carry their sign.
    limits: lowest and highest y shown; points beyond are drawn at the edge, with an arrow (frame.py).
    least_width: how much of x is shown at least. joins: places in rows, two by two, of points with a line between.
    """

    rows: NDArray[np.intp]
    x: Floats
    y: Floats
    marks: NDArray[np.int8]
    labels: Sequence[tuple[int, str]] = ()
    faint: NDArray[np.bool_] | None = None
    ribbons: Sequence[Ribbon] = ()
    boxes: Sequence[tuple[float, float, float, float]] = ()
    spans: Sequence[tuple[int, float, float]] = ()
    notes: Sequence[tuple[float, float, str]] = ()
    level: float | None = None
    front: NDArray[np.intp] = field(default_factory=lambda: np.empty(0, dtype=np.intp))
    joins: NDArray[np.intp] = field(default_factory=lambda: np.empty(0, dtype=np.intp))
    limits: tuple[float, float] | None = None
    x_ticks: Sequence[tuple[float, str]] = ()
    least_width: float = 0.0
    x_unit: str = ""
    x_zero: str = ""
    x_also: tuple[float, str] | None = None
    y_also: tuple[float, str] | None = None
    y_unit: str = ""
    y_zero: str = ""

    @cached_property
    def y_shown(self) -> Floats:
        """Where each point is drawn: at its y, or at the edge that it lies beyond."""
        return self.y if self.limits is None else np.clip(self.y, *self.limits)

    @cached_property
    def beyond(self) -> NDArray[np.int8]:
        """1 for points that lie above what is shown, -1 for those below, else 0."""
        return np.nan_to_num(np.sign(self.y - self.y_shown)).astype(np.int8)
