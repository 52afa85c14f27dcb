"""What a sample measured, property by property, held against what was claimed of its board."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.claims import Claim, Claims, claims
from tracker.desk.readings import readings
from tracker.market.robust import CUT_OFF, spread, weighted_median
from tracker.trade.claims import ClaimCheck, check_claim
from tracker.trade.exact import as_decimal, plain_text
from tracker.trade.methods import Property, properties
from tracker.trade.readings import Spread, spread_of

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.measurements import Measured

FEWEST_TO_STAND_APART = 5
_NEARER_THAN_A_GAUGE_TELLS = 0.01
"""A reading within one per cent of the middle is never pointed at, however alike the others are: gauges are marked no
finer. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class PropertyChecked:
    """One property of one sample. outlying: positions among the readings that stand apart; they count all the same.

    spread: None without readings. check: None without a claim. unconditioned: readings said to be outside the standard
    air; unsaid: readings of which nobody said. sentences: what to know, in words, figures in `unit`; also: the same
    figures in the property's own unit, '' where that is `unit`.
    """

    property: Property
    readings: tuple[Measured, ...]
    spread: Spread | None
    outlying: tuple[int, ...]
    unconditioned: int
    unsaid: int
    claim: Claim | None
    check: ClaimCheck | None
    sentences: tuple[str, ...]
    unit: str
    also: str


@dataclass(frozen=True, slots=True)
class SampleChecked:
    """Every property that was measured or claimed. why_not: why the price sheets claim nothing, '' where they do;
    choices: the vendor's names of the boards it may be, where several fit."""

    properties: tuple[PropertyChecked, ...]
    board: str
    why_not: str
    choices: tuple[str, ...] = ()


def check_sample(desk: Desk, number: int, us_units: bool = False) -> SampleChecked:
    """Holds the readings of a sample against the claims of its board. Trouble where there is no such sample.

    us_units: sentences speak in points and lb/MSF; every figure beside them stays in the property's own unit.
    """
    claimed = claims(desk, number)
    taken = readings(desk, number)
    found = [
        _checked(each, tuple(reading for reading in taken if reading.property == key), claimed, us_units)
        for key, each in properties().items()
        if key in claimed.by_property or any(reading.property == key for reading in taken)
    ]
    return SampleChecked(tuple(found), claimed.board, claimed.why_not, claimed.choices)


def outlying(values: Sequence[float]) -> tuple[int, ...]:
    """Positions of readings whose modified z-score is beyond 3.5 and that a gauge can tell from the middle.

    Source: Iglewicz and Hoaglin 1993 (market/robust.py). None with fewer than five readings.
    """
    if len(values) < FEWEST_TO_STAND_APART:
        return ()
    every = np.array(values, np.float64)
    weights = np.ones_like(every)
    middle = weighted_median(every, weights)
    away = every - middle
    one = spread(away, weights)
    apart = (np.abs(away) > CUT_OFF * one) & (np.abs(away) > _NEARER_THAN_A_GAUGE_TELLS * abs(middle))
    return tuple(int(position) for position in np.flatnonzero(apart))


def _checked(property_: Property, taken: tuple[Measured, ...], claimed: Claims, us_units: bool) -> PropertyChecked:
    values = [float(reading.value) for reading in taken]
    unit = property_.us_unit if us_units else ""
    claim = claimed.by_property.get(property_.key)
    check = None if claim is None else check_claim(property_, claim.value, values, unit)
    apart = outlying(values)
    unconditioned = sum(reading.conditioned is False for reading in taken)
    unsaid = sum(reading.conditioned is None for reading in taken)
    made = spread_of(values) if values else None
    sentences = (
        *((check.sentence,) if check is not None else _unclaimed(property_, made, unit)),
        *_pointed_at(property_, taken, apart, unit),
        *_air(len(taken), unconditioned, unsaid),
        *_few(property_, len(taken), check),
    )
    return PropertyChecked(
        property_,
        taken,
        made,
        apart,
        unconditioned,
        unsaid,
        claim,
        check,
        sentences,
        unit or property_.unit,
        _in_its_own_unit(property_, made, claim) if unit else "",
    )


def _in_its_own_unit(property_: Property, made: Spread | None, claim: Claim | None) -> str:
    parts = []
    if made is not None:
        between = "" if made.low is None or made.high is None else f" ({made.low:.4g} to {made.high:.4g})"
        parts.append(f"mean {made.mean:.4g}{between}")
    if claim is not None:
        parts.append(f"claimed {float(claim.value):.4g}")
    return f"In {property_.unit}: {', '.join(parts)}." if parts else ""


def _unclaimed(property_: Property, made: Spread | None, unit: str) -> tuple[str, ...]:
    if made is None:
        return ()
    mean = f"mean {made.mean / float(property_.factor(unit) or 1):.4g} {unit or property_.unit}"
    return (f"{property_.name}: {made.n} reading{'s' * (made.n > 1)}, {mean}; nothing is claimed to hold it against.",)


def _pointed_at(property_: Property, taken: Sequence[Measured], apart: tuple[int, ...], unit: str) -> tuple[str, ...]:
    if not apart:
        return ()
    factor = property_.factor(unit) or Fraction(1)
    shown = ", ".join(
        f"{plain_text(as_decimal(Fraction(taken[position].value) / factor))} (no. {position + 1})" for position in apart
    )
    word = "stands" if len(apart) == 1 else "stand"
    return (f"{shown} {unit or property_.unit} {word} apart from the rest: look again; counted all the same.",)


def _air(count: int, unconditioned: int, unsaid: int) -> tuple[str, ...]:
    if unconditioned:
        return (f"{unconditioned} of {count} readings taken outside the standard air (23 °C, 50 % relative humidity).",)
    return (f"Nobody said whether {_which(unsaid, count)} conditioned.",) if unsaid else ()


def _which(unsaid: int, count: int) -> str:
    return "these readings were" if unsaid == count else f"{unsaid} of these {count} readings were"


def _few(property_: Property, count: int, check: ClaimCheck | None) -> tuple[str, ...]:
    if not count or count >= property_.least or (check is not None and check.more is not None):
        return ()
    return (f"A weak check: {property_.methods[0]} asks for {property_.least} readings, these are {count}.",)
