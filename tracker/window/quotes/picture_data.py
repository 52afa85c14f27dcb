"""The data behind a picture, one row a point, with its band and the cell its price came from."""

from typing import Any

import numpy as np

from tracker.window.look.marks import WORDS, Mark
from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.offer_columns import Offers, per_words


def rows_behind(offers: Offers, drawing: Drawing) -> list[dict[str, Any]]:
    """Every point with what it stands for; figures unrounded, None where one is not known."""
    return [
        _row(offers, int(row), float(x), float(y)) for row, x, y in zip(drawing.rows, drawing.x, drawing.y, strict=True)
    ]


def _row(offers: Offers, row: int, x: float, y: float) -> dict[str, Any]:
    comparison = offers.comparison
    snapshot = comparison.snapshot
    low, high = comparison.range_of(row) or (None, None)
    return {
        "x": x,
        "y": y,
        "grade": offers.name("grade", row),
        "vendor": offers.name("vendor", row),
        "board": snapshot.product[row],
        "caliper_um": _known(snapshot.caliper_um[row]),
        "as_quoted": snapshot.as_quoted[row],
        "price": _known(comparison.price[row]),
        "price_low": low,
        "price_high": high,
        "unit": per_words(comparison),
        "expected": _known(comparison.expected[row]),
        "band_low": _known(comparison.band_low[row]),
        "band_high": _known(comparison.band_high[row]),
        "verdict": WORDS[Mark(int(offers.marks[row]))],
        "current": bool(comparison.current[row]),
        "file": offers.name("file", row),
        "sheet": snapshot.sheet[row],
        "cell": snapshot.cell[row],
    }


def _known(value: float) -> float | None:
    return float(value) if np.isfinite(value) else None
