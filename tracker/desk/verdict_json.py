"""A verdict as `quotes --json` prints it, without its sentences."""

from typing import Any

import numpy as np

from tracker.desk.comparison import Comparison
from tracker.market.bands import ABOVE, BELOW, WITHIN
from tracker.market.verdicts import METHOD

_PLACES = {BELOW: "below", WITHIN: "within", ABOVE: "above"}


def verdict_object(comparison: Comparison, index: int) -> dict[str, Any]:
    """Band, place, peers, conclusion and slip of one offer, per tonne in the chosen currency."""
    return {
        "band": _band(comparison, index),
        "place": _PLACES.get(int(comparison.place[index])),
        "peers": _peers(comparison, index),
        "out_of_line": bool(comparison.out_of_line[index]),
        "slip": _slip(comparison, index),
    }


def number(value: float) -> float | None:
    """A JSON number, or null for NaN, which JSON does not know."""
    return float(value) if np.isfinite(value) else None


def _band(comparison: Comparison, index: int) -> dict[str, Any] | None:
    judged, grade = comparison.judged, int(comparison.snapshot.grade[index])
    if judged is None or grade < 0 or not np.isfinite(judged.bands.low[grade]):
        return None
    low, high = float(judged.bands.low[grade]), float(judged.bands.high[grade])
    return {"low": low, "high": high, "per": "tonne", "source": judged.bands.sources[grade]}


def _peers(comparison: Comparison, index: int) -> dict[str, Any] | None:
    judged = comparison.judged
    if judged is None or not np.isfinite(judged.verdicts.score[index]):
        return None
    return {
        "n": int(judged.verdicts.peers[index]),
        "expected": number(judged.verdicts.expected[index]),
        "score": float(judged.verdicts.score[index]),
        "method": METHOD,
    }


def _slip(comparison: Comparison, index: int) -> dict[str, Any] | None:
    slip = comparison.judged.verdicts.slips.get(index) if comparison.judged else None
    if slip is None:
        return None
    return {
        "kind": slip.kind.value,
        "factor": slip.factor,
        "quoted_basis": slip.quoted_basis,
        "likely_basis": slip.likely_basis,
        "likely_currency": slip.likely_currency,
        "per_tonne_if_so": slip.per_tonne_if_so,
    }
