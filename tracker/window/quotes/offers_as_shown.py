"""The table of offers as it stands on screen, to be handed on: its heads, its units, figures to reckon with."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from math import isnan
from typing import Any

from tracker.desk.comparison import Per
from tracker.window.look import figures
from tracker.window.look.figures import NONE
from tracker.window.quotes.offer_columns import OFFER_COLUMNS, Offers, per_words

_AS_TEXT = ("grade", "vendor", "board", "decided", "quoted", "order", "lead", "mark")
_TEXT_OF = {column.key: column.text for column in OFFER_COLUMNS if column.key in _AS_TEXT}


def rows_as_shown(offers: Offers, rows: Iterable[int]) -> list[dict[str, Any]]:
    """One row an offer under the heads that the table has; None where nothing is known, days as days, and last where
    in which file the price stands."""
    return [_row(offers, int(row)) for row in rows]


def _row(offers: Offers, row: int) -> dict[str, Any]:
    comparison, units = offers.comparison, offers.units
    snapshot = comparison.snapshot
    caliper = figures.caliper_value(float(snapshot.caliper_um[row]), units)
    weight = figures.weight_value(float(snapshot.grammage_gsm[row]), units)
    return {
        "Grade": _text(offers, "grade", row),
        "Vendor": _text(offers, "vendor", row),
        "Board": _text(offers, "board", row),
        "Sample": _text(offers, "decided", row),
        f"Caliper, {figures.caliper_unit(units)}": _number(caliper, 1),
        f"Weight, {figures.weight_unit(units)}": _number(weight, 1),
        "Weight is": "estimated" if snapshot.estimated[row] else None if isnan(weight) else "quoted or measured",
        "As quoted": _text(offers, "quoted", row),
        per_words(comparison): _number(float(comparison.price[row]), 2 if comparison.footing.per is Per.MSF else 0),
        "Freight": "included" if comparison.is_delivered[row] else "not included, or not said",
        "vs going price, %": _number(100 * (float(offers.of_others[row]) - 1), 0),
        "Stands out": _text(offers, "mark", row),
        "Order": _text(offers, "order", row),
        "Lead time": _text(offers, "lead", row),
        "Received": _day(int(snapshot.received[row])),
        "Valid until": _day(int(snapshot.valid_until[row])),
        "File": offers.name("file", row),
    }


def _text(offers: Offers, key: str, row: int) -> str | None:
    text = _TEXT_OF[key](offers, row)
    return None if text in ("", NONE) else text


def _number(value: float, places: int) -> float | None:
    return None if isnan(value) else round(value, places) + 0.0


def _day(ordinal: int) -> date | None:
    return None if ordinal < 1 else date.fromordinal(ordinal)
