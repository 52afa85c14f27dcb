"""What the buyer's report says, ready to be set: figures on their footing, verdicts in words."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from tracker.trade.exact import half_up


class Mark(StrEnum):
    """The verdict on one price, told by shape first: the same marks stand in the window."""

    ABOVE = "above"
    BELOW = "below"
    SLIP = "looks like another basis"
    IN_LINE = "in line"
    ESTIMATED = "rests on an estimated weight"
    TOO_FEW = "too few to judge"


def signed_percent(ratio: float) -> str:
    """1.62 as '+62 %', 0.95 as '−5 %', 1 as '0 %'."""
    off = int(half_up(100 * (ratio - 1), 0))
    return f"{'+' if off > 0 else '−' if off < 0 else ''}{abs(off):,} %"


@dataclass(frozen=True, slots=True)
class OfferRow:
    """One offer. `decided` is what was decided about the board, `order` the order size the price holds for.

    `price` is in the report's unit, None unknown; `of_expected` is price over the going price. `between`: from where
    to where the price may lie when it rests on an estimated weight.
    """

    mark: Mark
    vendor: str
    board: str
    decided: str
    caliper_pt: float | None
    order: str
    weight: str
    weight_estimated: bool
    as_quoted: str
    price: float | None
    of_expected: float | None
    lead_time: str
    valid_until: date | None
    source: str
    between: tuple[float, float] | None = None

    @property
    def price_words(self) -> str:
        """'45.88', '43.10–48.20*' where it rests on an estimate, a dash where it is not known."""
        if self.between is not None:
            low, high = self.between
            return f"{half_up(low, 2):,f}–{half_up(high, 2):,f}*"
        return "–" if self.price is None else f"{half_up(self.price, 2):,f}"

    @property
    def beside_going(self) -> str:
        """'+62 %', '−5 %': how far from the going price; a dash where none is known."""
        return "–" if self.of_expected is None else signed_percent(self.of_expected)


@dataclass(frozen=True, slots=True)
class BandPoint:
    """The expected band at one caliper, in the report's unit."""

    caliper_pt: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Unusual:
    """A price that stands out, with the sentences a buyer can repeat to the vendor."""

    title: str
    mark: Mark
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class GradeSection:
    code: str
    name: str
    band: str
    band_points: tuple[BandPoint, ...]
    rows: tuple[OfferRow, ...]
    unusual: tuple[Unusual, ...]
    cautions: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SampleRow:
    """One sample that is still owed. `overdue_days` is None where nothing was promised and no usual time is known."""

    number: str
    vendor: str
    board: str
    requested: date
    promised: date | None
    waiting_days: int
    overdue_days: int | None
    state: str


@dataclass(frozen=True, slots=True)
class ReportContent:
    """`unit` names what every price is in ('USD per tonne'); `footing` is the whole sentence about it."""

    as_of: date
    unit: str
    footing: str
    grades: tuple[GradeSection, ...]
    samples: tuple[SampleRow, ...]
    questions: tuple[str, ...]

    @property
    def offers(self) -> int:
        return sum(len(grade.rows) for grade in self.grades)

    @property
    def out_of_line(self) -> int:
        return sum(len(grade.unusual) for grade in self.grades)


CONFIDENCE = (
    "Vendors' prices are given in confidence. This report names several vendors: keep it inside the buying team, "
    "and show a vendor that vendor's own lines only. Ask counsel where in doubt."
)
CARE = (
    "A verdict is a prompt to check basis, ton, freight and date, not proof of a bad price. Nothing here says that a "
    "board is fit for contact with food: that rests on the vendor's recorded letter, local rules and a "
    "competent person."
)
ESTIMATE = "* basis weight estimated from grade and caliper: figures that rest on it may be several per cent off."
