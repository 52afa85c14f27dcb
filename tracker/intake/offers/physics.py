"""Physics as a judge: which basis weight a caliper allows, what board usually weighs, which price is far off.

It settles what the contract lets it settle, raises questions, and never overrules what is written.
"""

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

from tracker.intake.values.weight import WeightReading, possible
from tracker.trade.basis import Basis, BoardMeasure, mass_of
from tracker.trade.exact import KG_PER_TONNE
from tracker.trade.grades import estimate_grammage, plausible_density, usual_density
from tracker.trade.quantities import density

# What any board has cost per tonne in the larger currencies; common practice, no source. Only a note hangs on it.
_USUAL = {"SEK": (2_500, 40_000), "NOK": (2_500, 40_000), "DKK": (1_800, 30_000), "PLN": (1_000, 16_000)}
_USUAL_ELSEWHERE = (200, 4_000)
_ABSURD = 20
"""So many times below or above the usual, a price is on another basis than it says, or misread."""
_MAIN = frozenset({"USD", "EUR", "GBP", "CHF", "CAD", "AUD"})


def possible_weights(
    readings: Sequence[WeightReading], caliper_um: Decimal, grade: str | None
) -> tuple[WeightReading, ...]:
    """The readings that make board at this caliper; of several, those that the grade's usual density allows."""
    left = possible(readings, caliper_um)
    if len({one.gsm for one in left}) > 1 and grade is not None:
        low, high = usual_density(grade, caliper_um)
        left = possible(left, caliper_um, low * Fraction(8, 10), high * Fraction(12, 10))
    return left


@lru_cache(maxsize=4096)
def is_plausible(grammage_gsm: Decimal | Fraction, caliper_um: Decimal) -> bool:
    """Whether any board could weigh this at this caliper."""
    return caliper_um > 0 and plausible_density(density(grammage_gsm, caliper_um))


@lru_cache(maxsize=4096)
def usual_weight(grade: str, caliper_um: Decimal) -> Decimal:
    """The basis weight that boards of this grade usually have at this caliper, in g/m²."""
    return estimate_grammage(grade, caliper_um).grammage_gsm


@lru_cache(maxsize=4096)
def _tonnes_in(basis: Basis, board: BoardMeasure) -> Fraction | None:
    """Tonnes of board in one unit of the basis."""
    mass = mass_of(basis, board)
    return None if mass is None else mass / KG_PER_TONNE


def far_off(price: Decimal, currency: str, basis: Basis, board: BoardMeasure) -> Fraction | None:
    """The price per tonne where it lies far outside what board costs, else None."""
    if currency not in _MAIN and currency not in _USUAL:
        return None
    mass = _tonnes_in(basis, board)
    if not mass:
        return None
    low, high = _USUAL.get(currency, _USUAL_ELSEWHERE)
    # Floats are near enough to see what is far off; the figure told is exact.
    if low * 1.01 <= float(price) / float(mass) <= high * 0.99:
        return None
    tonne = Fraction(price) / mass
    return tonne if not low <= tonne <= high else None


def absurd(tonne: Fraction, currency: str) -> bool:
    """A price per tonne that no board ever cost."""
    low, high = _USUAL.get(currency, _USUAL_ELSEWHERE)
    return not Fraction(low, _ABSURD) <= tonne <= high * _ABSURD
