"""What the judge is given: offers on one footing as columns, and how sensitive the user wants it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from tracker.market.robust import Floats

Codes = NDArray[np.int32]
Flags = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, eq=False, weakref_slot=True)
class Offers:
    """Offers in one currency at one date, all arrays of the same length n, an index an offer.

    per_tonne: price of 1,000 kg in the comparison currency; NaN, zero or less: can't be judged.
    shown: the offer is on offer now (current, its bracket applies): only these are judged and serve as peers; the
    others only tell history. grade, vendor, basis, currency, board: codes into the lists of names (-1 unknown);
    a board is one vendor's product at one order size, so that its offers of different days follow each other.
    caliper_um (µm), grammage_gsm (g/m²), from_kg and below_kg (kg): NaN where not known.
    received: days (`date.toordinal`), -1 unknown. delivered: 1 freight is in the price, 0 it is not, -1 nothing is said
    of it.
    estimated: the per-tonne price rests on an estimated grammage.
    usable: has a price above 0 and a grade, so can be compared at all; judged: usable and shown.
    """

    per_tonne: Floats
    shown: Flags
    grade: Codes
    vendor: Codes
    basis: Codes
    currency: Codes
    board: Codes
    received: Codes
    caliper_um: Floats
    grammage_gsm: Floats
    from_kg: Floats
    below_kg: Floats
    delivered: Codes
    estimated: Flags
    grades: Sequence[str]
    vendors: Sequence[str]
    bases: Sequence[str]
    currencies: Sequence[str]
    usable: Flags = field(init=False)
    judged: Flags = field(init=False)

    def __len__(self) -> int:
        return len(self.per_tonne)

    def __post_init__(self) -> None:
        # Asked for once an offer where reasons are told, so worked out but once for all.
        object.__setattr__(self, "usable", (self.per_tonne > 0) & np.isfinite(self.per_tonne) & (self.grade >= 0))
        object.__setattr__(self, "judged", self.shown & self.usable)


USUAL_CUT_OFF = 3.0
"""The modified z-score beyond which a price is out of line.

Iglewicz and Hoaglin's 3.5 is for a sample that must show its own spread. Here the spread is steadied by all grades and
holds the doubt about what to expect, so a lower one is as safe: of normal scatter three spreads leave 0.27 % outside,
and by simulation (tests/benchmarks/) about as many clean offers are called.
"""

SENSITIVITIES: Mapping[str, float] = {
    "only what nobody would defend": 4.0,
    "as a careful buyer would": USUAL_CUT_OFF,
    "anything worth asking about": 2.5,
}
"""What a user may choose, in plain words, and the cut-off it stands for. The outer two are our choice (assumed)."""


@dataclass(frozen=True, slots=True)
class Settings:
    """How to judge. cut_off: the modified z-score beyond which a price is out of line; a lower one finds more and cries
    wolf more. rates: by currency code, what one unit is worth in the currency of `Offers.per_tonne` (itself 1), for
    every currency that offers are quoted in.
    """

    cut_off: float = USUAL_CUT_OFF
    rates: Mapping[str, float] = field(default_factory=dict)
