"""The offers as a list to be read in a shell: the footing in words, then a line an offer, nothing cut."""

from collections.abc import Sequence
from math import isnan
from typing import Any

from tracker.commands.printing import counted
from tracker.desk.comparison import ChosenFooting, Comparison
from tracker.desk.footing_words import footing_sentence, order_words
from tracker.desk.freight import FREIGHT_WORDS, where_freight_stands
from tracker.desk.standing import Standing, standing_words, standings
from tracker.trade.basis import Basis
from tracker.trade.exact import UM_PER_POINT, half_up
from tracker.trade.quoted import basis_sign

_COLUMNS = (
    "vendor", "board", "grade", "pt", "order", "as quoted", "per tonne", "per MSF", "at equal caliper",
    "vs going price", "freight", "valid until", "verdict",
)  # fmt: skip

_RIGHT = frozenset({"pt", "as quoted", "per tonne", "per MSF", "at equal caliper", "vs going price"})
"""Columns of figures, set to the right."""


def print_list(comparison: Comparison, wanted: Sequence[int], offers: Sequence[dict[str, Any]]) -> None:
    """Prints the offers at these indices; each column is as wide as its widest entry."""
    freight = where_freight_stands(comparison.snapshot, comparison.is_delivered)
    standing, beside = standings(comparison), comparison.of_others
    rows = [
        {
            **_row(comparison, index, offer, FREIGHT_WORDS[int(freight[index])], Standing(int(standing[index]))),
            "vs going price": _beside(float(beside[index])),
        }
        for index, offer in zip(wanted, offers, strict=True)
    ]
    headings = _headings(comparison.footing)
    widths = {name: max(map(len, (heading, *(row[name] for row in rows)))) for name, heading in headings.items()}
    print(f"{counted(len(offers), 'offer')}. {footing_sentence(comparison.footing)}")
    for row in (headings, *rows):
        print("  ".join(_set(row[name], width, name) for name, width in widths.items()).rstrip())


def _headings(footing: ChosenFooting) -> dict[str, str]:
    """What stands above each column; the price at an equal caliper is there only where one was asked for."""
    named = {
        "per tonne": f"{footing.currency}/t",
        "per MSF": f"{footing.currency}/MSF",
        "at equal caliper": "",
        "vs going price": "vs going",
    }
    if footing.equal_caliper_um is not None:
        named["at equal caliper"] = f"at {footing.equal_caliper_um / float(UM_PER_POINT):.3g} pt"
    return {name: heading for name in _COLUMNS if (heading := named.get(name, name))}


def _row(comparison: Comparison, index: int, offer: dict[str, Any], freight: str, standing: Standing) -> dict[str, str]:
    snapshot = comparison.snapshot
    caliper = offer["caliper_um"]
    return {
        "vendor": offer["vendor"] or "–",
        "board": offer["product"] or "–",
        "grade": offer["grade"] or "–",
        "pt": "–" if caliper is None else f"{caliper / float(UM_PER_POINT):.1f}",
        "order": order_words(snapshot, index),
        "as quoted": snapshot.as_quoted[index],
        "per tonne": _figure(comparison.per_tonne[index]),
        "per MSF": _figure(comparison.per_msf[index]),
        "at equal caliper": _figure(offer.get("per_msf_at_equal_caliper")),
        "freight": freight,
        "valid until": offer["valid_until"] or "–",
        "verdict": standing_words(comparison, index, standing) + _likely(offer["verdict"]["slip"]),
    }


def _figure(value: float | None) -> str:
    return "–" if value is None or isnan(value) else f"{half_up(value, 2):,f}"


def _beside(ratio: float) -> str:
    if isnan(ratio):
        return "–"
    off = half_up(100 * (ratio - 1), 0)
    return f"{off:+,f} %" if off else "0 %"


def _set(text: str, width: int, name: str) -> str:
    return f"{text:>{width}}" if name in _RIGHT else f"{text:{width}}"


def _likely(slip: dict[str, Any] | None) -> str:
    """What the price may be meant per, or in, where it is another basis or currency."""
    if slip is None:
        return ""
    if slip["likely_currency"]:
        return f" ({slip['likely_currency']}?)"
    if slip["likely_basis"] == slip["quoted_basis"]:
        return f" ({slip['kind']}?)"
    meant = slip["likely_basis"]
    return f" (per {basis_sign(Basis(meant)) if meant in set(Basis) else '3,000 ft²'}?)"
