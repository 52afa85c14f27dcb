"""The data behind a picture, one row a point, with its band and the cell its price came from."""

from datetime import date
from typing import Any

import numpy as np

from tracker.window.quotes.drawing import Drawing
from tracker.window.quotes.offer_columns import Offers, per_words, standing_said

_DIGITS = 6
"""As many as mean anything."""
_BESIDE_BAND = {-1: "below", 0: "within", 1: "above"}


def rows_behind(offers: Offers, drawing: Drawing) -> list[dict[str, Any]]:
    """Every point with what it stands for, None where a figure is not known.

    Where a point stands is not told: alike ones are drawn a little apart, which means nothing.
    """
    return [_row(offers, int(row)) for row in drawing.rows]


def _row(offers: Offers, row: int) -> dict[str, Any]:
    comparison = offers.comparison
    snapshot = comparison.snapshot
    low, high = comparison.range_of(row) or (None, None)
    return {
        "grade": offers.name("grade", row),
        "vendor": offers.name("vendor", row),
        "board": snapshot.product[row],
        "caliper_um": _known(snapshot.caliper_um[row]),
        "as_quoted": snapshot.as_quoted[row],
        "price": _known(comparison.price[row]),
        "price_low": None if low is None else _known(low),
        "price_high": None if high is None else _known(high),
        "unit": per_words(comparison),
        "expected": _known(comparison.expected[row]),
        "band_low": _known(comparison.band_low[row]),
        "band_high": _known(comparison.band_high[row]),
        "beside_band": _BESIDE_BAND.get(int(comparison.place[row])),
        "stands_out": standing_said(offers, row),
        "lead_days_low": _known(snapshot.lead_low[row]),
        "lead_days_high": _known(snapshot.lead_high[row]),
        "received": date.fromordinal(int(snapshot.received[row])).isoformat(),
        "current": bool(comparison.current[row]),
        "file": offers.name("file", row),
        "sheet": snapshot.sheet[row],
        "cell": snapshot.cell[row],
    }


def _known(value: float) -> float | None:
    return float(f"{value:.{_DIGITS}g}") if np.isfinite(value) else None
