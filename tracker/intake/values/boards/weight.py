"""Basis weight of board: mass on an area. Pounds without an area stay two things until header, notes or physics say."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

from tracker.intake.values.figures.lengths import Measured, measured, without_tolerance
from tracker.intake.values.figures.numbers import in_one_figure
from tracker.intake.values.figures.spans import lone_figures
from tracker.intake.values.orders.weights_in_words import weights_in_figures
from tracker.intake.values.prices.basis import found_bases
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of, without
from tracker.trade.exact import GSM_PER_LB_MSF
from tracker.trade.quantities import Exact, WeightUnit, density, grammage

_UNITS = {
    "msf": (WeightUnit.LB_MSF,),
    "3000ft2": (WeightUnit.LB_3000FT2,),
    "gsm": (WeightUnit.GSM,),
    "kgm2": (WeightUnit.KG_M2,),
    "gram": (WeightUnit.GSM,),
    "pound": (WeightUnit.LB_MSF, WeightUnit.LB_3000FT2),
    "area_msf": (),
}


@dataclass(frozen=True, slots=True)
class WeightReading:
    """One basis weight as quoted. `unit` is None for a ream of another size, where only `gsm` is known."""

    value: Decimal
    unit: WeightUnit | None
    gsm: Fraction
    words: str


@dataclass(frozen=True, slots=True)
class WeightText:
    """A basis-weight cell. One reading is certain. `lb_without_area`: pounds, on 1,000 or 3,000 ft²."""

    readings: tuple[WeightReading, ...]
    words: str
    lb_without_area: bool = False
    is_range: bool = False

    @property
    def gsm(self) -> Fraction | None:
        """The one grammage in g/m², or None."""
        return self.readings[0].gsm if len(self.readings) == 1 and not self.is_range else None


def weight_in(value: Decimal, unit: WeightUnit, words: str = "") -> WeightReading:
    """A number that is known to be in this unit."""
    return WeightReading(value, unit, grammage(value, unit), words or str(value))


@lru_cache(maxsize=4096)
def weight_units(text: str) -> tuple[WeightUnit, ...]:
    """The units that a header, unit row or note names: 'lb/MSF' -> one, 'Basis wt (lb)' -> two, none -> ().

    Two that exclude each other in one text ('g/m² (lb/MSF)') come back as both.
    """
    # The 'thousand square feet' of 'three thousand square feet' is no thousand of them.
    said = weights_in_figures(text) if phrases("thousand_words").find(text) else text
    keys = {match.value for match in phrases("weight_units").find(without_density(said))}
    exact = keys & {"msf", "3000ft2", "gsm", "kgm2"}
    if not exact and "area_msf" in keys:
        exact = {"msf"}
    keys = exact or keys
    return tuple(dict.fromkeys(unit for key in sorted(keys) for unit in _UNITS[key]))


@lru_cache(maxsize=4096)
def without_density(text: str) -> str:
    """The text without its units of bulk and density: the grams of 'cm³/g' are no basis weight."""
    return without(text, phrases("density_units").find(text))


_REAM = re.compile(r"\(?\s*(\d{2}(?:[.,]\d+)?)\s*\"?\s*x\s*(\d{2}(?:[.,]\d+)?)\s*\"?\s*[-/,]\s*(480|500|1000)\s*\)?")
_GAP = re.compile(r"[\s()\[\]=,;:*†‡~|]*(?:ca|approx|about|nominal|nom|bw|basis|weight|wt|/)?[\s()\[\].=,;:*†‡~/|]*")
_RANGE_GAP = re.compile(r"\s*(?:-|to|bis)\s*")


@lru_cache(maxsize=16384)
def weight_text(text: str, units: tuple[WeightUnit, ...] = ()) -> WeightText | None:
    """A basis-weight cell.

    '75#/MSF', '300 gsm', '190 lb/3000 ft²', '62 lb (24x36-500)', a bare number under its header's units.

    None where the cell holds anything else or no unit is known at all.
    """
    stripped = in_one_figure(without_tolerance(text.strip()))
    folded = fold(stripped)
    ream = _REAM.search(folded)
    head = stripped[: ream.start()] if ream else stripped
    found = measured(head, "weight_units")
    if not found or len(found) > 2 or _left_over(fold(head), found):
        return None
    if ream is not None:
        return _on_ream(found[0], ream, stripped)
    first, bare_pounds = _readings(found[0], found[0].unit or found[-1].unit, units, stripped)
    if len(found) == 1:
        return WeightText(first, stripped, bare_pounds) if first else None
    second, _ = _readings(found[1], found[1].unit, units, stripped)
    if _RANGE_GAP.fullmatch(folded[found[0].end : found[1].start]):
        return WeightText(first + second, stripped, bare_pounds, is_range=True)
    first, bare_pounds = _readings(found[0], found[0].unit, units, stripped)
    return WeightText(_agreed(first, second), stripped)


def _left_over(folded: str, found: tuple[Measured, ...]) -> bool:
    edges = [0, *(edge for one in found for edge in (one.start, one.end)), len(folded)]
    gaps = [folded[edges[i] : edges[i + 1]] for i in range(0, len(edges), 2)]
    return any(_GAP.fullmatch(gap) is None and _RANGE_GAP.fullmatch(gap) is None for gap in gaps)


def _on_ream(one: Measured, ream: re.Match[str], words: str) -> WeightText | None:
    """Pounds on so many sheets of a stated size: 24x36-500 is 3,000 ft², other reams are their own area."""
    width, length = (Fraction(ream[place].replace(",", ".")) for place in (1, 2))
    thousand_ft2 = width * length * int(ream[3]) / 144 / 1000
    unit = WeightUnit.LB_3000FT2 if thousand_ft2 == 3 else None
    readings = tuple(
        WeightReading(amount.value, unit, Fraction(amount.value) * GSM_PER_LB_MSF / thousand_ft2, words)
        for amount in one.amounts
    )
    return WeightText(_board_only(readings), words) if one.unit in ("pound", "") else None


def _readings(
    one: Measured, said: str, header: tuple[WeightUnit, ...], words: str
) -> tuple[tuple[WeightReading, ...], bool]:
    units = _UNITS[said] if said else header
    # A cell that says only 'lb' under a header that says which area.
    if said == "pound" and any(unit in header for unit in units):
        units = tuple(unit for unit in units if unit in header)
    readings = tuple(weight_in(amount.value, unit, words) for unit in units for amount in one.amounts)
    return _board_only(readings), WeightUnit.LB_MSF in units and len(units) > 1


def _board_only(readings: tuple[WeightReading, ...]) -> tuple[WeightReading, ...]:
    """Where a number has two readings ('1,016'), those that can be board."""
    if len({reading.value for reading in readings}) == 1:
        return readings
    likely = tuple(reading for reading in readings if _LIGHTEST <= reading.gsm <= _HEAVIEST)
    return likely or readings


_LIGHTEST, _HEAVIEST = 80, 3000
"""Grams a square metre of board. Common practice, no source."""


def _agreed(first: tuple[WeightReading, ...], second: tuple[WeightReading, ...]) -> tuple[WeightReading, ...]:
    """One weight in two units: the first where they agree within rounding, all where they don't."""
    for one in first:
        for other in second:
            if abs(one.gsm - other.gsm) <= Fraction(2, 100) * max(one.gsm, other.gsm):
                return (one,)
    return first + second


def weights_of(one: Measured) -> tuple[WeightReading, ...]:
    """What a figure with its unit can be of board's weight; () where it weighs something else."""
    readings, _ = _readings(one, one.unit, (), "")
    return tuple(reading for reading in readings if _LIGHTEST <= reading.gsm <= _HEAVIEST)


@lru_cache(maxsize=16384)
def find_weights(text: str) -> tuple[WeightReading, ...]:
    """Every basis weight in a description that has its unit beside it. '71 lb' gives both areas; '300 g' is g/m²."""
    found = []
    folded = fold(text)
    for one in lone_figures(text, "weight_units"):
        if not one.unit or (one.unit == "pound" and weighs_no_board(text, one)):
            continue
        ream = _REAM.match(folded[one.end :].lstrip(" ,"))
        if ream is not None and one.unit == "pound":
            on_ream = _on_ream(one, ream, text[one.start :])
            found += list(on_ream.readings) if on_ream is not None else []
            continue
        readings, _ = _readings(one, one.unit, (), text[one.start : one.end])
        found += [reading for reading in readings if _LIGHTEST <= reading.gsm <= _HEAVIEST]
    return tuple({(reading.gsm, reading.unit): reading for reading in found}.values())


def weighs_no_board(text: str, one: Measured) -> bool:
    """'Min order 40,000 pounds': pounds in thousands, or behind words for a minimum, weigh an order; the '100 lb' of
    'per hundredweight (100 lb)' are what a price is for."""
    of_order = any(match.end <= one.start for match in phrases("minimum").find(text))
    return len({amount.value for amount in one.amounts}) > 1 or of_order or _is_of_a_price(text, one)


def _is_of_a_price(text: str, one: Measured) -> bool:
    found = tokens_of(text)
    return any(found[per][1] <= one.start and one.end <= found[after - 1][2] for _, per, after in found_bases(text))


def possible(
    readings: Iterable[WeightReading],
    caliper_um: Exact,
    low: Exact = Fraction(45, 100),
    high: Exact = Fraction(125, 100),
) -> tuple[WeightReading, ...]:
    """The readings whose density with this caliper lies between low and high g/cm³: what physics leaves."""
    return tuple(reading for reading in readings if Fraction(low) <= density(reading.gsm, caliper_um) <= Fraction(high))
