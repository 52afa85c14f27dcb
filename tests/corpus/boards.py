"""Boards that could exist: caliper and weight that fit the grade's density, and a price level that fits the grade.

Densities and price levels are the corpus' own plausible inventions (common practice, no source).
"""

import random
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Any

from tests.corpus.truth import GSM_PER, KG_PER, M2_PER, MM_PER, SHEETS_PER, UM_PER, AnyOf

DENSITY = {
    "SBS": (0.76, 0.86),
    "CUK": (0.70, 0.78),
    "UUK": (0.67, 0.75),
    "CRB": (0.71, 0.79),
    "URB": (0.62, 0.69),
    "FBB": (0.57, 0.65),
}
POINTS = {
    "SBS": (10, 12, 14, 16, 18, 20, 24),
    "CUK": (14, 16, 18, 20, 21, 24),
    "UUK": (16, 18, 20, 22, 24),
    "CRB": (14, 16, 18, 20, 22, 24, 26, 28),
    "URB": (18, 20, 22, 24, 28, 30),
    "FBB": (12, 14, 16, 18, 20, 22),
}
GRAMMAGES = {
    "SBS": (200, 220, 240, 260, 280, 300, 330, 350),
    "CUK": (250, 275, 300, 330, 360, 400),
    "UUK": (250, 280, 310, 350),
    "CRB": (230, 250, 280, 300, 350, 400, 450),
    "URB": (300, 350, 400, 450, 500),
    "FBB": (215, 235, 250, 270, 300, 325, 350),
}
PER_TONNE_USD = {
    "SBS": (1250, 1480),
    "CUK": (1080, 1240),
    "UUK": (850, 980),
    "CRB": (880, 1040),
    "URB": (690, 800),
    "FBB": (1060, 1280),
}
RATE = {"USD": 1.0, "EUR": 0.92, "GBP": 0.8, "SEK": 10.6, "CHF": 0.95, "CAD": 1.37, "AUD": 1.52}
PLACES = {
    "short_ton": 0,
    "tonne": 0,
    "cwt": 2,
    "lb": 4,
    "kg": 4,
    "msf": 2,
    "m2": 4,
    "1000m2": 2,
    "1000sheets": 2,
    "sheet": 4,
}
SIDES: dict[Any, Any] = {"coat": AnyOf((1, None)), "bare": AnyOf((0, None))}


@dataclass
class Board:
    """What the vendor sells, as written: a caliper or a weight of None is not quoted."""

    grade: str
    words: str
    sides: Any
    caliper: Decimal | None
    caliper_unit: str
    weight: Decimal | None
    weight_unit: str
    usd_per_tonne: float
    sheet: tuple[Decimal, Decimal, str] | None = None

    @property
    def caliper_um(self) -> Fraction | None:
        return None if self.caliper is None else Fraction(self.caliper) * UM_PER[self.caliper_unit]

    @property
    def gsm(self) -> Fraction | None:
        return None if self.weight is None else Fraction(self.weight) * GSM_PER[self.weight_unit]

    @property
    def sheet_mm(self) -> tuple[Fraction, Fraction] | None:
        if self.sheet is None:
            return None
        return Fraction(self.sheet[0]) * MM_PER[self.sheet[2]], Fraction(self.sheet[1]) * MM_PER[self.sheet[2]]


def board(
    rng: random.Random, grade: str, words: tuple[str, Any], size: int, units: tuple[str, str], level: float
) -> Board:
    """One board. `size` is points where units are US, g/m² where metric; `level` 0…1 places its price."""
    density = rng.uniform(*DENSITY[grade])
    caliper_unit, weight_unit = units
    if caliper_unit in ("pt", "in"):
        caliper = Decimal(size) if caliper_unit == "pt" else Decimal(size) / 1000
        gsm = density * size * 25.4
    else:
        gsm = size
        um = Decimal(5 * round(size / density / 5))
        caliper = um if caliper_unit == "um" else um / 1000
    weight = (
        Decimal(size)
        if weight_unit == "gsm" and caliper_unit in ("um", "mm")
        else Decimal(round(gsm / float(GSM_PER[weight_unit])))
    )
    low, high = PER_TONNE_USD[grade]
    level += rng.uniform(0, 0.09)
    sides = SIDES.get(words[1], words[1])
    return Board(grade, words[0], sides, caliper, caliper_unit, weight, weight_unit, low + (high - low) * (1 - level))


def price(item: Board, basis: str, currency: str, factor: float = 1.0, places: int | None = None) -> Decimal:
    """A plausible price of the board on a basis, rounded as vendors round."""
    per_kg = item.usd_per_tonne * RATE[currency] * factor / 1000
    gsm = float(item.gsm) if item.gsm else sum(DENSITY[item.grade]) / 2 * float(item.caliper_um or 0)
    if basis in KG_PER:
        amount = per_kg * float(KG_PER[basis])
    elif basis in M2_PER:
        amount = per_kg * gsm / 1000 * float(M2_PER[basis])
    else:
        width, length = item.sheet_mm
        amount = per_kg * gsm / 1000 * float(width * length) / 1e6 * SHEETS_PER[basis]
    digits = PLACES[basis] if places is None else places
    rounded = Decimal(repr(round(amount, digits)))
    return 5 * Decimal(round(amount / 5)) if digits == 0 else rounded.quantize(Decimal(1).scaleb(-digits))
