"""The offers as a list to be read in a shell: the footing in words, then a line an offer, nothing cut."""

from collections.abc import Sequence
from typing import Any

from tracker.commands.printing import counted
from tracker.desk.comparison import Comparison
from tracker.desk.footing_words import footing_sentence, order_words
from tracker.desk.freight import FREIGHT_WORDS, where_freight_stands
from tracker.trade.exact import half_up

_RIGHT = frozenset({3, 5, 6, 7})
"""Columns of figures, set to the right."""


def print_list(comparison: Comparison, wanted: Sequence[int], offers: Sequence[dict[str, Any]]) -> None:
    """Prints the offers at these indices; each column is as wide as its widest entry."""
    currency = comparison.footing.currency
    headings = (
        "vendor", "board", "grade", "pt", "order", "as quoted", f"{currency}/t", f"{currency}/MSF", "freight",
        "valid until", "verdict",
    )  # fmt: skip
    freight = where_freight_stands(comparison.snapshot, comparison.is_delivered)
    rows = [
        headings,
        *(
            _row(comparison, index, offer, FREIGHT_WORDS[int(freight[index])])
            for index, offer in zip(wanted, offers, strict=True)
        ),
    ]
    widths = [max(len(row[column]) for row in rows) for column in range(len(headings))]
    print(f"{counted(len(offers), 'offer')}. {footing_sentence(comparison.footing)}")
    for row in rows:
        cells = (_set(text, width, column) for column, (text, width) in enumerate(zip(row, widths, strict=True)))
        print("  ".join(cells).rstrip())


def _row(comparison: Comparison, index: int, offer: dict[str, Any], freight: str) -> tuple[str, ...]:
    snapshot = comparison.snapshot
    return (
        offer["vendor"] or "–",
        offer["product"] or "–",
        offer["grade"] or "–",
        "–" if offer["caliper_um"] is None else f"{offer['caliper_um'] / 25.4:.1f}",
        order_words(snapshot.from_kg[index], snapshot.below_kg[index], snapshot.minimum_kg[index]),
        snapshot.as_quoted[index],
        _figure(comparison.per_tonne[index]),
        _figure(comparison.per_msf[index]),
        freight,
        offer["valid_until"] or "–",
        _verdict(offer["verdict"]),
    )


def _figure(value: float) -> str:
    return "–" if value != value else f"{half_up(value, 2):,f}"


def _set(text: str, width: int, column: int) -> str:
    return f"{text:>{width}}" if column in _RIGHT else f"{text:{width}}"


def _verdict(verdict: dict[str, Any]) -> str:
    said = [verdict["place"] or "no band"]
    if verdict["out_of_line"]:
        said.append("OUT OF LINE")
    if verdict["slip"]:
        said.append(f"perhaps per {verdict['slip']['likely_basis']}")
    return ", ".join(said)
