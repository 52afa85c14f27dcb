"""What every price on a screen means: the footing a user chose, and the offers brought to it with their verdicts."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from enum import StrEnum
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.snapshot import Codes, Flags, Floats, Snapshot
from tracker.trade.exact import UM_PER_POINT

if TYPE_CHECKING:
    from tracker.desk.judged import Judged
    from tracker.desk.sensitivity import Sensitivity
    from tracker.store.verdicts import BoardVerdict


class Per(StrEnum):
    TONNE = "tonne"
    MSF = "msf"


@dataclass(frozen=True, slots=True)
class ChosenFooting:
    """The user's choice: `delivered` compares delivered cost where known; `order_kg` picks each board's bracket;
    `measured_weight` brings prices to the basis weight that samples measured, where that is known, not the claimed one.
    `sensitivity`: how far a price must stand out, None as this database is set. `equal_caliper_um`: prices per MSF
    as if every board were of this caliper at its own density, so that a thick board does not look dear.
    """

    as_of: date
    currency: str = "USD"
    per: Per = Per.TONNE
    delivered: bool = False
    order_kg: float | None = None
    current_only: bool = True
    measured_weight: bool = False
    sensitivity: Sensitivity | None = None
    equal_caliper_um: float | None = None

    @property
    def at_caliper_um(self) -> float | None:
        """The caliper that prices are brought to; None where they are not."""
        return self.equal_caliper_um if self.per is Per.MSF else None

    @property
    def per_words(self) -> str:
        """'per tonne', 'per 1,000 ft²', 'per 1,000 ft² at 18 pt'."""
        if self.per is Per.TONNE:
            return "per tonne"
        caliper = self.at_caliper_um
        return "per 1,000 ft²" if caliper is None else f"per 1,000 ft² at {caliper / float(UM_PER_POINT):.4g} pt"


@dataclass(frozen=True, slots=True)
class Comparison:
    """Offers on one footing, arrays aligned with `snapshot` (length n).

    shown: the offer takes part (current, bracket applies). current: neither lapsed nor superseded on the day.
    per_tonne, per_msf: in the chosen currency, with charges where the footing says delivered and that is known; NaN
    unknown.
    price: the one of the two the footing asks for. is_delivered: freight is in that figure.
    expected: the going price, what other vendors' offers come to (the band, where they are few), in the unit of
    `price`; band_low, band_high likewise; NaN none.
    place: -1 below, 0 within, 1 above its band, -9 no band. score: modified z-score among peers, NaN too few; peers:
    how many.
    out_of_line: the one conclusion. slip: the price fits clearly better on another basis.
    price_low, price_high: what `price` may be where it rests on an estimated basis weight, NaN where it rests on none.
    ends: the snapshot with every estimated weight at its lightest and at its heaviest.
    judged: what the verdicts rest on, for whoever asks why. board_verdicts: what people decided about an offer's board,
    the latest first, by its index; most have none.
    """

    snapshot: Snapshot
    footing: ChosenFooting
    shown: Flags
    current: Flags
    per_tonne: Floats
    per_msf: Floats
    price: Floats
    is_delivered: Flags
    expected: Floats
    band_low: Floats
    band_high: Floats
    place: Codes
    score: Floats
    peers: Codes
    out_of_line: Flags
    slip: Flags
    price_low: Floats = field(default_factory=lambda: np.zeros(0))
    price_high: Floats = field(default_factory=lambda: np.zeros(0))
    ends: tuple[Snapshot, Snapshot] | None = None
    judged: Judged | None = None
    board_verdicts: Mapping[int, tuple[BoardVerdict, ...]] = field(default_factory=dict)

    def range_of(self, index: int) -> tuple[float, float] | None:
        """What an offer's price may be, where it rests on an estimated basis weight."""
        if not len(self.price_low) or np.isnan(self.price_low[index]):
            return None
        return float(self.price_low[index]), float(self.price_high[index])

    @property
    def of_others(self) -> Floats:
        """Price over the going price, NaN where no other vendor offers the grade: there the band alone would be met."""
        with np.errstate(invalid="ignore", divide="ignore"):
            ratio: Floats = np.where(self.peers > 0, self.price / self.expected, np.nan)
        return ratio

    @property
    def rests_on_estimate(self) -> Flags:
        """Which prices would be others if an estimated basis weight were."""
        flags: Flags = np.isfinite(self.price_low) if len(self.price_low) else self.snapshot.estimated
        return flags


@dataclass(frozen=True, slots=True)
class Step:
    """One rung of the way from the cell as written to the compared figure: 'per MSF', '1,240 × 74 ÷ 2,000 = 45.88'."""

    label: str
    text: str
    cell: str = ""
    estimate: bool = False
    last: bool = False
