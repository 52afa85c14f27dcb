"""Where things go in a picture: ribbons, strips, spread points, labels that never overlap. Arrays in, arrays out."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Ribbon:
    """A band along x: three arrays of one length, x rising."""

    x: Floats
    low: Floats
    high: Floats


def ribbon(x: Floats, low: Floats, high: Floats, *, bucket: float) -> Ribbon | None:
    """The band through the offers' own bands: at each bucket of x the median of the lows and of the highs."""
    known = np.isfinite(x) & np.isfinite(low) & np.isfinite(high)
    if not known.any():
        return None
    place = np.round(x[known] / bucket).astype(np.int64)
    places = np.unique(place)
    lows = np.array([np.median(low[known][place == each]) for each in places])
    highs = np.array([np.median(high[known][place == each]) for each in places])
    along = places * bucket
    if len(along) == 1:
        along = np.array([along[0] - bucket, along[0] + bucket])
        lows, highs = np.repeat(lows, 2), np.repeat(highs, 2)
    return Ribbon(along.astype(np.float64), lows, highs)


def spread(ids: NDArray[np.int64], width: float) -> Floats:
    """A sideways step for each point, the same every time, so that equal ones can be told apart: within ± width."""
    scattered = (ids.astype(np.uint64) * np.uint64(2654435761)) % np.uint64(1000)
    return (scattered.astype(np.float64) / 499.5 - 1.0) * width


def thinned(rows: NDArray[np.intp], keep: NDArray[np.bool_], limit: int) -> NDArray[np.intp]:
    """At most about `limit` rows: all that are to be kept, and every k-th of the rest."""
    if len(rows) <= limit:
        return rows
    kept, rest = rows[keep], rows[~keep]
    step = int(np.ceil(len(rest) / max(1, limit - len(kept))))
    return np.sort(np.concatenate([kept, rest[::step]]))


_TOO_MANY_COVERED = 3


@dataclass(frozen=True, slots=True)
class Box:
    """A label's place in pixels."""

    x: float
    y: float
    width: float
    height: float

    def meets(self, other: "Box") -> bool:
        return not (
            self.x + self.width <= other.x
            or other.x + other.width <= self.x
            or self.y + self.height <= other.y
            or other.y + other.height <= self.y
        )

    def covered(self, x: Floats, y: Floats) -> int:
        """How many points lie under the box."""
        across = (x >= self.x - 3) & (x <= self.x + self.width + 3)
        return int(np.count_nonzero(across & (y >= self.y - 3) & (y <= self.y + self.height + 3)))

    def inside(self, other: "Box") -> bool:
        return (
            self.x >= other.x
            and self.y >= other.y
            and self.x + self.width <= other.x + other.width
            and self.y + self.height <= other.y + other.height
        )


NOBODY: tuple[Floats, Floats] = (np.empty(0), np.empty(0))


def place_labels(
    points: Sequence[tuple[float, float]],
    sizes: Sequence[tuple[float, float]],
    area: Box,
    crowd: tuple[Floats, Floats] = NOBODY,
    kept_free: Sequence[Box] = (),
    gap: float = 13.0,
) -> list[Box | None]:
    """A place beside each point, first come first placed: right, left, above, below, then at the corners; None where
    none is free.

    Of the free places the one that covers fewest points of the crowd is taken, none that covers many.
    """
    half, near = gap - 4, gap - 5
    taken = [Box(x - half, y - half, 2 * half, 2 * half) for x, y in points]
    taken.extend(kept_free)
    placed: list[Box | None] = []
    for number, ((x, y), (width, height)) in enumerate(zip(points, sizes, strict=True)):
        # Beside a point at the very edge there may be room if the label stands a little higher or lower.
        beside = min(max(y - height / 2, area.y), area.y + area.height - height)
        beside = beside if abs(beside - (y - height / 2)) <= half else y - height / 2
        candidates = (
            Box(x + gap, beside, width, height),
            Box(x - gap - width, beside, width, height),
            Box(x - width / 2, y - gap - height, width, height),
            Box(x - width / 2, y + gap, width, height),
            Box(x + near, y + near, width, height),
            Box(x + near, y - near - height, width, height),
            Box(x - near - width, y + near, width, height),
            Box(x - near - width, y - near - height, width, height),
        )
        others = taken[:number] + taken[number + 1 :]
        placed.append(_emptiest(candidates, others, area, crowd))
        if placed[-1] is not None:
            taken.append(placed[-1])
    return placed


def _emptiest(candidates: Sequence[Box], others: Sequence[Box], area: Box, crowd: tuple[Floats, Floats]) -> Box | None:
    """The first free candidate that covers nobody, else the free one that covers fewest; None where all cover many."""
    best, fewest = None, _TOO_MANY_COVERED
    for box in candidates:
        if box.inside(area) and not any(box.meets(other) for other in others):
            covers = box.covered(*crowd)
            if covers < fewest:
                best, fewest = box, covers
            if not covers:
                break
    return best
