"""Physics as a judge: which basis weight a caliper allows, what board usually weighs, which price is far off.

It settles what the contract lets it settle, raises questions, and never overrules what is written.
"""

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.boards.weight import WeightReading, possible
from tracker.trade.basis import Basis, BoardMeasure, mass_of
from tracker.trade.exact import KG_PER_TONNE, as_decimal
from tracker.trade.grades import estimate_grammage, plausible_density, usual_density
from tracker.trade.quantities import density

# What any board has cost per tonne in the larger currencies; common practice, no source. Only a note hangs on it.
_USUAL = {"SEK": (2_500, 40_000), "NOK": (2_500, 40_000), "DKK": (1_800, 30_000), "PLN": (1_000, 16_000)}
_USUAL_ELSEWHERE = (200, 4_000)
_ABSURD = 4
"""So many times below or above the usual, a price is misread: no board costs 50 a tonne, nor 16,000. A price per 100 lb
under a head for short tons is some 70, and left to the verdict, which can say what it was meant per. Common practice,
no source."""
_MAIN = frozenset({"USD", "EUR", "GBP", "CHF", "CAD", "AUD"})


def possible_weights(
    readings: Sequence[WeightReading], caliper_um: Decimal, grade: str | None
) -> tuple[WeightReading, ...]:
    """The readings that make board at this caliper; of several, those that the grade's usual density allows.

    What is written in two ways is settled by neither where both are far from what the grade ever weighs.
    """
    left = possible(readings, caliper_um)
    if grade is None or len({one.gsm for one in readings}) < _SEVERAL:
        return left
    low, high = usual_density(grade, caliper_um)
    if len({one.gsm for one in left}) < _SEVERAL:
        return possible(left, caliper_um, low * Fraction(7, 10), high * Fraction(13, 10))
    return possible(left, caliper_um, low * Fraction(8, 10), high * Fraction(12, 10))


_SEVERAL = 2


@lru_cache(maxsize=4096)
def is_plausible(grammage_gsm: Decimal | Fraction, caliper_um: Decimal) -> bool:
    """Whether any board could weigh this at this caliper."""
    return caliper_um > 0 and plausible_density(density(grammage_gsm, caliper_um))


@lru_cache(maxsize=4096)
def usual_weight(grade: str, caliper_um: Decimal) -> Decimal:
    """The basis weight that boards of this grade usually have at this caliper, in g/m²."""
    return estimate_grammage(grade, caliper_um).grammage_gsm


def far_off(price: Decimal, currency: str, basis: Basis, board: BoardMeasure) -> Fraction | None:
    """The price per tonne where it lies far outside what board costs, else None."""
    usual = _usual_prices(currency, basis, board)
    if usual is None or usual.low <= price <= usual.high:
        return None
    tonne = Fraction(price) / usual.tonnes
    low, high = _USUAL.get(currency, _USUAL_ELSEWHERE)
    return tonne if not low <= tonne <= high else None


def costs_as_board_does(price: Decimal, currency: str, basis: Basis, board: BoardMeasure) -> bool | None:
    """Whether a price lies well within what board costs: evidence for its unit, so that the span is narrower than that
    of `far_off`. None where nothing is known of the currency, or what one unit weighs."""
    usual = _usual_prices(currency, basis, board)
    if usual is None:
        return None
    tonne = Fraction(price) / usual.tonnes
    low, high = _USUAL.get(currency, _USUAL_ELSEWHERE)
    return low * _WELL_ABOVE <= tonne <= high * _WELL_BELOW


_WELL_ABOVE, _WELL_BELOW = Fraction(3, 2), Fraction(3, 4)
"""300 to 3,000 a tonne in the larger currencies; common practice, no source."""


class _UsualPrices(NamedTuple):
    """Tonnes of board in one unit of a basis, and prices of that unit between which none is far off."""

    tonnes: Fraction
    low: Decimal
    high: Decimal


@lru_cache(maxsize=4096)
def _usual_prices(currency: str, basis: Basis, board: BoardMeasure) -> _UsualPrices | None:
    """None where nothing is known of the currency, or what one unit weighs."""
    mass = mass_of(basis, board) if currency in _MAIN or currency in _USUAL else None
    if not mass:
        return None
    tonnes = mass / KG_PER_TONNE
    low, high = _USUAL.get(currency, _USUAL_ELSEWHERE)
    # Twelve digits and a hundredth inside the bounds: near them the exact figure decides.
    return _UsualPrices(tonnes, as_decimal(tonnes * low * 101 / 100), as_decimal(tonnes * high * 99 / 100))


def absurd(tonne: Fraction, currency: str) -> bool:
    """A price per tonne that no board ever cost."""
    low, high = _USUAL.get(currency, _USUAL_ELSEWHERE)
    return not Fraction(low, _ABSURD) <= tonne <= high * _ABSURD
