"""Every grade's expected band, those included that nobody offers yet: what to expect before asking for a quote."""

from __future__ import annotations

from dataclasses import dataclass, replace

from tracker.desk.comparison import Comparison
from tracker.desk.yardsticks import levels_standing, ratios_standing
from tracker.market.bands import expected_bands
from tracker.trade.bands import REFERENCE_GRADE
from tracker.trade.grades import grades


@dataclass(frozen=True, slots=True)
class GradeBand:
    """From `low` to `high` per tonne in the comparison's currency, NaN where nothing tells; `source` in words.
    `offered`: whether any offer is of the grade."""

    low: float
    high: float
    source: str
    offered: bool


def grade_bands(comparison: Comparison) -> dict[str, GradeBand]:
    """By the code of every grade of the trade, in the trade's order; {} where nothing was judged."""
    judged, footing = comparison.judged, comparison.footing
    if judged is None or judged.held is None or judged.on is None:
        return {}
    named = [*judged.offers.grades, *(code for code in grades() if code not in judged.offers.grades)]
    bands = expected_bands(
        replace(judged.offers, grades=named),
        levels_standing(judged.held.levels, footing.as_of, footing.currency, judged.on),
        ratios_standing(judged.held.ratios, footing.as_of),
        REFERENCE_GRADE,
        footing.as_of.toordinal(),
    )
    offered = set(judged.offers.grades)
    return {
        code: GradeBand(float(bands.low[at]), float(bands.high[at]), bands.sources[at], code in offered)
        for code, at in ((code, named.index(code)) for code in grades())
    }
