"""Offers as rows of a table, for CSV files and spreadsheets: the same columns whatever the offers, figures to read."""

from collections.abc import Iterable, Mapping
from typing import Any

from tracker.desk.comparison import Comparison
from tracker.desk.export import flat
from tracker.desk.offers_json import offer_objects
from tracker.desk.standing import Standing, standing_words, standings

_COLUMNS = (
    "id", "vendor", "product", "grade", "coated_sides", "caliper_um", "grammage_gsm", "grammage_from",
    "price", "currency", "basis", "from_kg", "below_kg", "minimum_kg",
    "compared_in", "per_tonne", "per_msf", "delivered_per_tonne", "delivered_per_msf",
    "per_tonne_range", "per_msf_range", "delivered_per_tonne_range", "delivered_per_msf_range",
    "per_msf_at_equal_caliper", "rate_factor", "rate_date", "rate_source",
    "lead_days", "valid_until", "received", "current", "board_verdict", "verdict",
    "verdict_place", "verdict_out_of_line", "verdict_band_low", "verdict_band_high", "verdict_band_source",
    "verdict_peers_n", "verdict_peers_expected", "verdict_peers_score",
    "verdict_slip_kind", "verdict_slip_factor", "verdict_slip_quoted_basis", "verdict_slip_likely_basis",
    "verdict_slip_likely_currency", "verdict_slip_per_tonne_if_so", "verdict_reasons",
    "source_file", "source_sha256", "source_sheet", "source_cell",
)  # fmt: skip
_AS_SAID = {"id", "price"}
"""What the vendor wrote is never rounded; what was worked out from it keeps as many digits as mean anything."""
_DIGITS = 6
_SPANS = ("lead_days", "per_tonne_range", "per_msf_range", "delivered_per_tonne_range", "delivered_per_msf_range")


def offer_rows(comparison: Comparison, indices: Iterable[int]) -> list[dict[str, Any]]:
    """The offers of these indices, one row each with every column; None where nothing is known."""
    indices, standing = tuple(indices), standings(comparison)
    said = (standing_words(comparison, index, Standing(int(standing[index]))) for index in indices)
    currency = comparison.footing.currency
    return [_row(offer, words, currency) for offer, words in zip(offer_objects(comparison, indices), said, strict=True)]


def _row(offer: Mapping[str, Any], verdict: str, currency: str) -> dict[str, Any]:
    spans = {name: _span(offer.get(name)) for name in _SPANS}
    said = {**flat(offer), **spans, "compared_in": currency, "verdict": verdict}
    return {name: _to_read(name, said.get(name)) for name in _COLUMNS}


def _to_read(name: str, value: Any) -> Any:
    return _rounded(value) if isinstance(value, float) and name not in _AS_SAID else value


def _span(ends: list[float] | None) -> str | None:
    """'35 to 42', and '35' where both ends are the same."""
    return None if ends is None else " to ".join(dict.fromkeys(f"{_rounded(end):.15g}" for end in ends))


def _rounded(value: float) -> float:
    return float(f"{value:.{_DIGITS}g}")
