"""Offers as `quotes --json` prints them."""

from collections.abc import Iterable, Sequence
from datetime import date
from typing import Any

import numpy as np

from tracker.desk.comparison import Comparison
from tracker.desk.explanation import board_verdict, is_measured, offer_reasons, rate_used
from tracker.desk.verdict_json import number, verdict_object
from tracker.trade.exact import settled
from tracker.trade.offer import GrammageFrom

_FIGURES = ("per_tonne", "per_msf", "delivered_per_tonne", "delivered_per_msf")


def offer_objects(comparison: Comparison, indices: Iterable[int]) -> list[dict[str, Any]]:
    """The OFFER objects of these indices, in their order; per_* in the chosen currency."""
    return [_offer(comparison, int(index)) for index in indices]


def _offer(comparison: Comparison, index: int) -> dict[str, Any]:
    snapshot = comparison.snapshot
    return {
        "id": int(snapshot.id[index]),
        "vendor": _name(snapshot.vendors, snapshot.vendor[index]),
        "product": snapshot.product[index],
        "grade": _name(snapshot.grades, snapshot.grade[index]),
        "coated_sides": _known(snapshot.coated_sides[index]),
        "caliper_um": number(snapshot.caliper_um[index]),
        "grammage_gsm": number(snapshot.grammage_gsm[index]),
        "grammage_from": _grammage_from(comparison, index),
        "price": number(snapshot.price[index]),
        "currency": _name(snapshot.currencies, snapshot.currency[index]),
        "basis": _name(snapshot.bases, snapshot.basis[index]),
        "from_kg": number(snapshot.from_kg[index]),
        "below_kg": number(snapshot.below_kg[index]),
        "minimum_kg": number(snapshot.minimum_kg[index]),
        **_prices(comparison, index),
        **_ranges(comparison, index),
        **_at_caliper(comparison, index),
        "rate": _rate(comparison, index),
        "lead_days": _lead(comparison, index),
        "valid_until": _day(snapshot.valid_until[index]),
        "received": _day(snapshot.received[index]),
        "current": bool(comparison.current[index]),
        "source": _source(comparison, index),
        "board_verdict": board_verdict(comparison, index),
        "verdict": {**verdict_object(comparison, index), "reasons": list(offer_reasons(comparison, index))},
    }


def _prices(comparison: Comparison, index: int) -> dict[str, float | None]:
    factor = _factor(comparison, index)
    return {name: _figure(getattr(comparison.snapshot, name)[index] * factor) for name in _FIGURES}


def _at_caliper(comparison: Comparison, index: int) -> dict[str, float | None]:
    """The price per MSF at the equal caliper asked for; nothing where none was."""
    caliper, snapshot = comparison.footing.equal_caliper_um, comparison.snapshot
    if caliper is None:
        return {}
    figure = snapshot.per_msf[index] * _factor(comparison, index) * caliper / snapshot.caliper_um[index]
    return {"per_msf_at_equal_caliper": _figure(figure)}


def _ranges(comparison: Comparison, index: int) -> dict[str, list[float] | None]:
    """Between which figures each of the four lies where it rests on an estimated basis weight, else null."""
    found: dict[str, list[float] | None] = {f"{name}_range": None for name in _FIGURES}
    if comparison.ends is None or not comparison.snapshot.estimated[index]:
        return found
    factor = _factor(comparison, index)
    for name in _FIGURES:
        low, high = sorted(float(getattr(end, name)[index] * factor) for end in comparison.ends)
        if high - low > 1e-9 * high:
            found[f"{name}_range"] = [float(settled(low)), float(settled(high))]
    return found


def _figure(value: float) -> float | None:
    """What was worked out, as the vendor's own figures give it: 37.485, not 37.48499999998."""
    return float(settled(value)) if np.isfinite(value) else None


def _factor(comparison: Comparison, index: int) -> float:
    """What one unit of the offer's currency is in the chosen one, NaN where that is not known."""
    snapshot = comparison.snapshot
    if _name(snapshot.currencies, snapshot.currency[index]) == comparison.footing.currency:
        return 1.0
    rate = rate_used(comparison, index)
    return float("nan") if rate is None else float(rate.factor)


def _rate(comparison: Comparison, index: int) -> dict[str, Any] | None:
    rate = rate_used(comparison, index)
    if rate is None:
        return None
    return {
        "factor": float(rate.factor),
        "date": rate.on.isoformat(),
        "source": rate.source,
        "said": rate.said(comparison.footing.as_of),
    }


def _source(comparison: Comparison, index: int) -> dict[str, str | None]:
    snapshot = comparison.snapshot
    return {
        "file": _name(snapshot.files, snapshot.file[index]),
        "sha256": _name(snapshot.sha256s, snapshot.file[index]),
        "sheet": snapshot.sheet[index],
        "cell": snapshot.cell[index],
    }


def _grammage_from(comparison: Comparison, index: int) -> str | None:
    if number(comparison.snapshot.grammage_gsm[index]) is None:
        return None
    if is_measured(comparison, index):
        return "measured"
    estimated = bool(comparison.snapshot.estimated[index])
    return (GrammageFrom.ESTIMATED if estimated else GrammageFrom.QUOTED).value


def _lead(comparison: Comparison, index: int) -> list[int] | None:
    low, high = comparison.snapshot.lead_low[index], comparison.snapshot.lead_high[index]
    return None if low != low or high != high else [int(low), int(high)]


def _day(ordinal: int) -> str | None:
    return None if ordinal < 0 else date.fromordinal(int(ordinal)).isoformat()


def _known(code: int) -> int | None:
    return None if code < 0 else int(code)


def _name(names: Sequence[str], code: int) -> str | None:
    return None if code < 0 else names[code]
