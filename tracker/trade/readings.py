"""Readings as a person types or pastes them, and what they amount to."""

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from tracker.trade.exact import as_decimal
from tracker.trade.methods import Property

_READING = re.compile(r"^([+\-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(\S.*)?$")
_BETWEEN = re.compile(r"[\n\r\t;]+|,\s+|(?<=[^\s+\-−])[ \u00a0\u202f]+(?=[+\-−]?[.,]?\d)")
OTHER_UNIT = 5
"""A board's readings never lie five times apart; those in another unit do (µm and points are 25 apart)."""


@dataclass(frozen=True, slots=True)
class Pasted:
    """What a pasted column holds: values in the property's own unit, and a sentence for each line that was not one."""

    values: tuple[Decimal, ...]
    problems: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Spread:
    """n readings: their mean, standard deviation and 95 % confidence interval of the mean (None with fewer than 2)."""

    n: int
    mean: float
    deviation: float | None
    low: float | None
    high: float | None


def pasted(text: str, property_: Property, unit: str = "") -> Pasted:
    """Readings from text, apart by lines, tabs, semicolons, spaces or a comma and a space, in `unit` where one names
    none itself. '19,1' is one reading: its comma is the decimal sign."""
    values: list[Decimal] = []
    problems: list[str] = []
    for number, words in enumerate(_pieces(text), start=1):
        found = reading(words, property_, unit)
        if isinstance(found, str):
            problems.append(f"Reading {number}, '{words}': {found}")
        else:
            values.append(found)
    return Pasted(tuple(values), (*problems, *_in_another_unit(values, property_)))


def unit_meant(figures: Sequence[Decimal], property_: Property) -> str | None:
    """The unit that figures without one are in: the property's own where they can be, else the only other they can be.

    None where no unit, or more than one, makes boards of them all; '' means the property's own.
    """
    if property_.possible is None or _all_possible(figures, Fraction(1), property_.possible):
        return ""
    fitting: dict[Fraction, str] = {}
    for unit, factor in property_.units.items():
        if factor != 1 and _all_possible(figures, factor, property_.possible):
            fitting.setdefault(factor, unit)  # a mil is a point
    return next(iter(fitting.values())) if len(fitting) == 1 else None


def _all_possible(figures: Sequence[Decimal], factor: Fraction, possible: tuple[Decimal, Decimal]) -> bool:
    low, high = possible
    return all(low <= Fraction(figure) * factor <= high for figure in figures)


def reading(words: str, property_: Property, unit: str = "") -> Decimal | str:
    """One reading in the property's own unit, or a sentence that says why it is none and what to do."""
    match = _READING.match(words.strip())
    if match is None:
        return "this is not a number; type a figure, with a unit behind it if need be."
    figures, own_unit = match.group(1).replace("−", "-"), match.group(2) or unit
    if re.fullmatch(r"[+-]?[1-9]\d{0,2},\d{3}", figures):
        return "the comma may be a decimal sign or a thousands sign; write it with a point or without."
    factor = property_.factor(own_unit)
    if factor is None:
        known = ", ".join((property_.unit, *property_.units))
        return f"{property_.name} is not measured in {own_unit}; the units are {known}."
    value = Fraction(figures.replace(",", ".")) * factor
    if value <= 0:
        return f"a reading of {property_.name.lower()} is above 0."
    return as_decimal(value)


def spread_of(values: Sequence[float]) -> Spread:
    """Mean, sample deviation and the Student-t 95 % interval of the mean (NIST/SEMATECH e-Handbook, 1.3.5.2)."""
    n = len(values)
    if not n:
        raise ValueError("no readings")
    mean = math.fsum(values) / n
    if n < 2:
        return Spread(n, mean, None, None, None)
    deviation = math.sqrt(math.fsum((value - mean) ** 2 for value in values) / (n - 1))
    half = student_t(n - 1) * deviation / math.sqrt(n)
    return Spread(n, mean, deviation, mean - half, mean + half)


def student_t(degrees: int) -> float:
    """The two-sided 95 % point of Student's t."""
    from scipy.special import stdtrit

    return float(stdtrit(degrees, 0.975))


def _pieces(text: str) -> list[str]:
    return [piece.strip() for piece in _BETWEEN.split(text) if piece.strip()]


def _in_another_unit(values: list[Decimal], property_: Property) -> list[str]:
    if len(values) < 3:
        return []
    middle = sorted(values)[len(values) // 2]
    return [
        f"{_shown(value)} {property_.unit} is far from the other readings ({_shown(middle)}): is it in another unit?"
        for value in values
        if value * OTHER_UNIT < middle or value > middle * OTHER_UNIT
    ]


def _shown(value: Decimal) -> str:
    return f"{value.normalize():f}"
