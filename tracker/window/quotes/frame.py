"""How much of x and y a picture shows: all of it, or where a few far-off points would squash the rest, most of it."""

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from tracker.window.look.figures import counted
from tracker.window.quotes.drawing import Drawing, Floats

_FEWEST = 8
"""Of fewer points none can be told to be the odd one."""
_FENCE = 3.0
_SQUASHED = 3.0
_GAP = 0.12
_MOST_HELD = 0.1
_MOST_TOLD = 8
_AIR_X, _AIR_Y, _ARROW_ROOM_PX = 0.05, 0.09, 22


def frame_of(drawing: Drawing, height_px: float) -> tuple[float, float, float, float] | None:
    """Left, right, bottom and top of what shows everything with a little air; None where there is nothing.

    height_px: how tall the picture is; beyond points at the edge there must be room for their arrows.
    """
    ys = [drawing.y_shown, *_edges(drawing)]
    xs = [drawing.x, *(ribbon.x for ribbon in drawing.ribbons), np.array([v for box in drawing.boxes for v in box[:2]])]
    y, x = np.concatenate(ys), np.concatenate(xs)
    y, x = y[np.isfinite(y)], x[np.isfinite(x)]
    if not len(y) or not len(x):
        return None
    tall = y.max() - y.min()
    air = tall * _AIR_Y or abs(y.max()) * 0.2 or 1.0
    for_arrows = max(air, tall * _ARROW_ROOM_PX / max(height_px - 2 * _ARROW_ROOM_PX, _ARROW_ROOM_PX))
    middle = (x.max() + x.min()) / 2
    half = max((x.max() - x.min()) * (0.5 + _AIR_X), drawing.least_width / 2) or 1.0
    below, above = (for_arrows if (drawing.beyond == way).any() else air for way in (-1, 1))
    return float(middle - half), float(middle + half), float(y.min() - below), float(y.max() + above)


def limits_of(y: Floats, behind: Floats) -> tuple[float, float] | None:
    """Lowest and highest y of a picture that a few far-off points would squash; None where all of it can be shown.

    The points within three quartile ranges of the quartiles, with what is drawn behind them, are the picture; what
    lies no further from it than it is high is shown in its place, what lies beyond at its edge.
    """
    y = y[np.isfinite(y)]
    if len(y) < _FEWEST:
        return None
    low_quarter, high_quarter = np.quantile(y, [0.25, 0.75])
    fence = _FENCE * (high_quarter - low_quarter)
    core = y[(y >= low_quarter - fence) & (y <= high_quarter + fence)]
    most = np.concatenate([core, behind[np.isfinite(behind)]])
    low, high = float(most.min()), float(most.max())
    tall = high - low
    if max(float(y.max()), high) - min(float(y.min()), low) <= _SQUASHED * tall or not tall:
        return None
    near = y[(y >= low - tall) & (y <= high + tall)]
    if len(y) - len(near) > _MOST_HELD * len(y):
        return None
    bottom, top = min(low, float(near.min())), max(high, float(near.max()))
    gap = _GAP * (top - bottom)
    return (bottom - gap if y.min() < bottom else bottom, top + gap if y.max() > top else top)


def held_in(drawing: Drawing, label: Callable[[int], str], figure: Callable[[float], str]) -> Drawing:
    """The drawing with far-off points at its edge, each labelled before any other, with its figure.

    label: the words for a place in rows. figure: those for a y.
    """
    limits = limits_of(drawing.y, np.concatenate([np.empty(0), *_edges(drawing)]))
    if limits is None:
        return drawing
    held = replace(drawing, limits=limits)
    far = np.flatnonzero(held.beyond)
    known = dict(drawing.labels)
    far_first = sorted(far.tolist(), key=lambda place: place not in known)[:_MOST_TOLD]
    told = {
        place: _with_figure(known.get(place) or label(place), figure(float(drawing.y[place]))) for place in far_first
    }
    return replace(held, labels=[*told.items(), *(each for each in drawing.labels if each[0] not in told)])


def far_off_words(drawing: Drawing) -> str:
    """Says that some points lie further off than the picture reaches; '' where none does."""
    far = int(np.count_nonzero(drawing.beyond))
    return f" {counted(far, 'price')} further off: at the edge, with an arrow." if far else ""


def _with_figure(label: str, figure: str) -> str:
    return label if label.endswith(figure) else f"{label} {figure}"


def _edges(drawing: Drawing) -> list[NDArray[np.float64]]:
    edges = [edge for ribbon in drawing.ribbons for edge in (ribbon.low, ribbon.high)]
    return [*edges, np.array([v for box in drawing.boxes for v in box[2:]], dtype=np.float64)]
