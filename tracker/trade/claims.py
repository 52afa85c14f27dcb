"""A claim of a quote or data sheet held against what was measured.

The mean of a few readings is known only within an interval. Against the claim's tolerance that interval lies wholly
inside (agrees), wholly outside (off), or across an edge: then nothing can be said yet, and the spread seen so far
tells how many readings would settle it.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from tracker.trade.methods import Property
from tracker.trade.readings import Spread, spread_of, student_t

FEWEST = 5  # common practice, no source: below this no verdict is given
_MOST_WORTH_ASKING = 500


class Verdict(StrEnum):
    AGREES = "agrees"
    OFF = "off"
    OPEN = "cannot be said yet"


@dataclass(frozen=True, slots=True)
class ClaimCheck:
    """`more` readings would settle an open claim, None where too many would; `weak`: fewer than the method asks."""

    verdict: Verdict
    claim: Decimal
    spread: Spread | None
    difference_percent: float | None
    more: int | None
    weak: bool
    sentence: str


def check_claim(property_: Property, claim: Decimal, values: Sequence[float], unit: str = "") -> ClaimCheck:
    """Hold readings against a claim, both in the property's own unit; the sentence speaks in `unit`, '' for its own.

    ValueError for a claim not above 0.
    """
    if claim <= 0:
        raise ValueError(f"A claim of {property_.name.lower()} is above 0; found {claim}.")
    if len(values) < 2:
        return _too_few(property_, claim, values, unit)
    spread = spread_of(values)
    low, high = (float(edge) for edge in property_.tolerance.around(Fraction(claim)))
    verdict = _verdict(spread, low, high) if spread.n >= FEWEST else Verdict.OPEN
    more = _more_needed(spread, low, high) if verdict is Verdict.OPEN else None
    difference = 100 * (spread.mean / float(claim) - 1)
    return ClaimCheck(
        verdict,
        claim,
        spread,
        difference,
        more,
        spread.n < property_.least,
        _sentence(property_, claim, spread, verdict, difference, more, unit),
    )


def _verdict(spread: Spread, low: float, high: float) -> Verdict:
    if spread.low is None or spread.high is None:
        return Verdict.OPEN
    if low <= spread.low and spread.high <= high:
        return Verdict.AGREES
    if spread.high < low or spread.low > high:
        return Verdict.OFF
    return Verdict.OPEN


def _more_needed(spread: Spread, low: float, high: float) -> int | None:
    """How many further readings would bring the interval to one side of the nearer edge, scattering as these do."""
    room = min(abs(spread.mean - low), abs(high - spread.mean))
    deviation = spread.deviation or 0.0
    for n in range(max(spread.n + 1, FEWEST), _MOST_WORTH_ASKING):
        if student_t(n - 1) * deviation / math.sqrt(n) < room:
            return n - spread.n
    return None


def claimed_words(property_: Property, claim: Decimal, unit: str = "") -> str:
    """'20 pt (held to ± 5 %)': a claim kept in the property's own unit, told in `unit`, with the tolerance that it is
    held to: the usual one, and nobody's claim."""
    factor = float(property_.factor(unit) or 1)
    percent, absolute = property_.tolerance.percent, property_.tolerance.absolute
    tolerance = f"{percent} %" if percent is not None else f"{float(absolute or 0) / factor:.4g}"
    return f"{float(claim) / factor:.4g} {unit or property_.unit} (held to ± {tolerance})"


def _too_few(property_: Property, claim: Decimal, values: Sequence[float], unit: str) -> ClaimCheck:
    more = FEWEST - len(values)
    so_far = "1 reading" if values else "no readings"
    sentence = (
        f"{property_.name}: claimed {claimed_words(property_, claim, unit)}; {so_far} so far. "
        f"{_wanted(property_, len(values))}"
    )
    spread = spread_of(values) if values else None
    return ClaimCheck(Verdict.OPEN, claim, spread, None, more, True, sentence)


def _wanted(property_: Property, taken: int) -> str:
    first, firm = FEWEST - taken, property_.least - taken
    more = " more" if taken else ""
    if firm <= first:
        return f"Take {first}{more}."
    return f"Take {first}{more} for a first answer, {firm} for a firm one."


def _sentence(
    property_: Property,
    claim: Decimal,
    spread: Spread,
    verdict: Verdict,
    difference: float,
    more: int | None,
    unit: str,
) -> str:
    factor = float(property_.factor(unit) or 1)
    measured = f"{property_.name}: {spread.n} readings, mean {spread.mean / factor:.4g} {unit or property_.unit}"
    if spread.low is not None and spread.high is not None:
        measured += f" (95 % sure between {spread.low / factor:.4g} and {spread.high / factor:.4g})"
    claimed = f"claimed {claimed_words(property_, claim, unit)}"
    if verdict is Verdict.AGREES:
        return f"{measured} agrees with the {claimed}."
    if verdict is Verdict.OFF:
        side = "above" if difference > 0 else "below"
        return f"{measured} is {abs(difference):.1f} % {side} the {claimed}."
    if more is None:
        return f"{measured} lies at the edge of the {claimed}; more readings are unlikely to settle it."
    return f"{measured}, {claimed}. Too few readings to tell; about {more} more would settle it."
