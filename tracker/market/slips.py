"""Whether a price that is out of line would sit where it should if it were on another basis than it says.

Nothing is changed by what is found here: a slip is named for a person to ask the vendor about. It is named only
where the price as typed sits clearly outside and the other reading both sits well inside and explains clearly better.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from tracker.market.offers import Offers, Settings
from tracker.market.robust import Floats
from tracker.trade.basis import BY_AREA, BY_SHEET, BY_WEIGHT, Basis, BoardMeasure, area_of, mass_of

THREE_THOUSAND = "3000ft2"
"""What a basis is called whose area or weight belongs to 3,000 ft² (a ream of 24 × 36 inch sheets)."""


class SlipKind(StrEnum):
    BASIS = "basis"
    BASIS_WEIGHT = "basis weight"
    CURRENCY = "currency"
    DECIMAL = "decimal place"


@dataclass(frozen=True, slots=True)
class Slip:
    """How a price may have been meant. factor: by how much the two readings differ, 1 or more. likely_currency is
    set for a slip of currency only; for that and for a slipped decimal place likely_basis is the quoted one."""

    kind: SlipKind
    factor: float
    quoted_basis: str
    likely_basis: str
    likely_currency: str | None
    per_tonne_if_so: float


@dataclass(frozen=True, slots=True)
class _Other:
    """One other reading: prices per tonne become `times` as high. cost: how much less likely a mistake it is, in
    units of log likelihood. `times` has one entry an offer asked about; NaN where the reading can't be."""

    kind: SlipKind
    likely: str
    times: Floats
    cost: Floats


_COMMON = frozenset(
    frozenset(pair)
    for pair in (
        (Basis.TONNE, Basis.SHORT_TON), (Basis.CWT, Basis.SHORT_TON), (Basis.CWT, Basis.TONNE), (Basis.LB, Basis.KG),
        (Basis.LB, Basis.CWT), (Basis.THOUSAND_M2, Basis.MSF), (Basis.M2, Basis.THOUSAND_M2),
        (Basis.SHEET, Basis.THOUSAND_SHEETS), (Basis.KG, Basis.TONNE), (Basis.LB, Basis.SHORT_TON),
    )
)  # fmt: skip
_RARE, _UNRELATED, _REAM, _PLACE, _MONEY = 4.0, 6.0, 1.0, 3.0, 6.0
_UNMISTAKABLE = 1.6
_DECIMALS = (10.0, 100.0, 1000.0)
_SMALL_FACTOR = 1.5
_WELL_INSIDE, _WELL_INSIDE_IF_SMALL = 3.0, 1.0
_CLEARLY_BETTER = 6.0
_POSSIBLE_DENSITY = (0.45, 1.05)  # g/cm³, wider than any board sold by caliper (assumed)


def find_slips(
    offers: Offers, settings: Settings, where: NDArray[np.intp], gap: Floats, spread: Floats
) -> dict[int, Slip]:
    """The likely slip of each offer in `where` that has one, by the offer's index.

    gap: log price per tonne less what is expected; spread: its standard deviation for a clean offer; both aligned
    with `where`.
    """
    found: dict[int, Slip] = {}
    for code in np.unique(offers.basis[where]):
        if code < 0:
            continue
        picked = np.flatnonzero(offers.basis[where] == code)
        asked = where[picked]
        others = list(_other_readings(offers, settings, asked, Basis(offers.bases[code])))
        best, chosen = _choose(others, gap[picked], spread[picked])
        for at in np.flatnonzero(best >= 0):
            other = others[best[at]]
            found[int(asked[at])] = _slip(other, float(chosen[at]), offers, int(asked[at]))
    return found


def _choose(others: list[_Other], gap: Floats, spread: Floats) -> tuple[NDArray[np.intp], Floats]:
    """Which reading explains each price best, -1 where none does clearly, and by what its price would change."""
    times = np.array([other.times for other in others])
    costs = np.array([other.cost for other in others])
    with np.errstate(invalid="ignore", divide="ignore"):
        away = np.abs(gap + np.log(times)) / spread
        small = np.abs(np.log(times)) < np.log(_SMALL_FACTOR)
        inside = away <= np.where(small, _WELL_INSIDE_IF_SMALL, _WELL_INSIDE)
        worth = (gap / spread) ** 2 / 2 - away**2 / 2 - costs
        worth = np.where(inside & (worth >= _CLEARLY_BETTER), worth, -np.inf)
    best = np.argmax(worth, axis=0)
    rows = np.arange(gap.size)
    return np.where(np.isfinite(worth[best, rows]), best, -1), times[best, rows]


def _other_readings(offers: Offers, settings: Settings, asked: NDArray[np.intp], quoted: Basis) -> Iterator[_Other]:
    yield from _other_bases(offers, asked, quoted)
    yield from _decimal_places(asked.size, quoted)
    if quoted not in BY_WEIGHT:
        yield from _ream_weights(offers, asked, quoted)
    yield from _other_currencies(offers, settings, asked)


def _other_bases(offers: Offers, asked: NDArray[np.intp], quoted: Basis) -> Iterator[_Other]:
    family = next(kin for kin in (BY_WEIGHT, BY_AREA, BY_SHEET) if quoted in kin)
    for other in Basis:
        if other is quoted or (other in BY_SHEET) != (quoted in BY_SHEET):
            continue
        if other in family:
            usual = frozenset((quoted, other)) in _COMMON
            times = np.full(asked.size, _within_family(quoted, other))
            yield _Other(SlipKind.BASIS, other, times, np.full(asked.size, 0.0 if usual else _RARE))
        else:
            times = _between_families(quoted, other, offers.grammage_gsm[asked])
            yield _Other(SlipKind.BASIS, other, times, np.full(asked.size, _UNRELATED))


def _within_family(quoted: Basis, other: Basis) -> float:
    """What a price per `quoted` is times as high if it was meant per `other`, both by weight, area or sheet."""
    size = BoardMeasure(sheet_mm=(1000, 1000))
    measured = mass_of if quoted in BY_WEIGHT else area_of
    here, there = measured(quoted, size), measured(other, size)
    if here is None or there is None:
        raise AssertionError("one family of bases needs no grammage")
    return float(here / there)


def _between_families(quoted: Basis, other: Basis, grammage_gsm: Floats) -> Floats:
    by_weight, by_area = (quoted, other) if quoted in BY_WEIGHT else (other, quoted)
    kg, m2 = mass_of(by_weight, BoardMeasure()), area_of(by_area, BoardMeasure())
    if kg is None or m2 is None:
        raise AssertionError("weight has a mass and area an area without a grammage")
    heavier = float(kg) / (float(m2) * grammage_gsm / 1000)
    times: Floats = heavier if quoted in BY_WEIGHT else 1 / heavier
    return np.where(np.abs(np.log(times)) > np.log(3), times, np.nan)


def _decimal_places(count: int, quoted: Basis) -> Iterator[_Other]:
    for ten in _DECIMALS:
        for times in (ten, 1 / ten):
            yield _Other(SlipKind.DECIMAL, quoted, np.full(count, times), np.full(count, _PLACE))


def _ream_weights(offers: Offers, asked: NDArray[np.intp], quoted: Basis) -> Iterator[_Other]:
    """Price per area with a weight, or an area, of 3,000 ft² taken for 1,000: a factor of three either way.

    Beside a price per square metre or per sheet only the weight can be meant, and then the density must look odd.
    """
    with np.errstate(invalid="ignore", divide="ignore"):
        density = offers.grammage_gsm[asked] / offers.caliper_um[asked]
        odd = (density < _POSSIBLE_DENSITY[0]) | (density > _POSSIBLE_DENSITY[1])
    possible = odd | (quoted is Basis.MSF)
    for times in (3.0, 1 / 3.0):
        yield _Other(
            SlipKind.BASIS_WEIGHT, THREE_THOUSAND, np.where(possible, times, np.nan), np.where(odd, 0.0, _REAM)
        )


def _other_currencies(offers: Offers, settings: Settings, asked: NDArray[np.intp]) -> Iterator[_Other]:
    """Meant in another currency that somebody here quotes in: one that nobody does would be a guess the vendor could
    only wonder at. One nearly of the same worth explains any price that is somewhat off, so it counts only for a
    vendor who quotes in it elsewhere."""
    worth = np.array([settings.rates.get(code, np.nan) for code in (*offers.currencies, "")])
    for code, meant in enumerate(offers.currencies):
        vendors = np.unique(offers.vendor[offers.judged & (offers.currency == code)])
        if not vendors.size or np.isnan(worth[code]):
            continue
        times = worth[code] / worth[offers.currency[asked]]
        elsewhere = np.isin(offers.vendor[asked], vendors)
        near = np.abs(np.log(times)) < np.log(_UNMISTAKABLE)
        possible = (times != 1) & (elsewhere | ~near)
        yield _Other(SlipKind.CURRENCY, meant, np.where(possible, times, np.nan), np.where(elsewhere, 0.0, _MONEY))


def _slip(other: _Other, times: float, offers: Offers, offer: int) -> Slip:
    quoted = offers.bases[offers.basis[offer]]
    of_money = other.kind is SlipKind.CURRENCY
    return Slip(
        other.kind,
        max(times, 1 / times),
        quoted,
        quoted if of_money else other.likely,
        other.likely if of_money else None,
        float(offers.per_tonne[offer]) * times,
    )
