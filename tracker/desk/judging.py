"""The market's verdict on every offer: bands from the user's levels, peers, slips, in the currency that was chosen."""

from __future__ import annotations

import numpy as np

from tracker.desk.comparison import ChosenFooting
from tracker.desk.freight import where_freight_stands
from tracker.desk.judged import Judged
from tracker.desk.rates import RatesOn
from tracker.desk.snapshot import Flags, Floats, Snapshot
from tracker.desk.yardsticks import Yardsticks, levels_standing, ratios_standing
from tracker.market.bands import expected_bands
from tracker.market.offers import Offers, Settings
from tracker.market.verdicts import judge
from tracker.trade.bands import REFERENCE_GRADE
from tracker.trade.basis import BY_WEIGHT, Basis


def judge_offers(
    snapshot: Snapshot,
    footing: ChosenFooting,
    per_tonne: Floats,
    taking_part: Flags,
    is_delivered: Flags,
    held: Yardsticks,
    rates: RatesOn,
) -> Judged:
    """Judges every offer that takes part. `per_tonne` is in the chosen currency, NaN where unknown."""
    known = {code: rates.rate(code, footing.currency) for code in snapshot.currencies}
    worth = {code: rate for code, rate in known.items() if rate is not None}
    offers = Offers(
        per_tonne=per_tonne,
        shown=taking_part,
        grade=snapshot.grade,
        vendor=snapshot.vendor,
        basis=snapshot.basis,
        currency=snapshot.currency,
        board=snapshot.board if len(snapshot.board) else np.full(len(snapshot), -1, np.int32),
        received=snapshot.received,
        caliper_um=snapshot.caliper_um,
        grammage_gsm=snapshot.grammage_gsm,
        from_kg=snapshot.from_kg,
        below_kg=snapshot.below_kg,
        delivered=where_freight_stands(snapshot, is_delivered),
        estimated=rests_on_estimate(snapshot),
        grades=snapshot.grades,
        vendors=snapshot.vendors,
        bases=snapshot.bases,
        currencies=snapshot.currencies,
    )
    sensitivity = footing.sensitivity or held.sensitivity
    settings = Settings(sensitivity.cut_off, {code: float(rate.factor) for code, rate in worth.items()})
    bands = expected_bands(
        offers,
        levels_standing(held.levels, footing.as_of, footing.currency, rates),
        ratios_standing(held.ratios, footing.as_of),
        REFERENCE_GRADE,
        footing.as_of.toordinal(),
    )
    return Judged(offers, bands, settings, judge(offers, bands, settings), worth, held, rates)


def rests_on_estimate(snapshot: Snapshot) -> Flags:
    """The price per tonne would change with the grammage, and that is an estimate."""
    by_weight = np.array([Basis(name) in BY_WEIGHT for name in snapshot.bases] + [True])[snapshot.basis]
    estimated: Flags = snapshot.estimated & ~by_weight
    return estimated
