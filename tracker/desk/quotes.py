"""Every offer on the footing the user chose, judged: what the table, the pictures and `quotes` show."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

import numpy as np

from tracker.desk.board_verdicts import verdicts_by_offer
from tracker.desk.comparison import ChosenFooting, Comparison, Per
from tracker.desk.estimates import at_either_end, between
from tracker.desk.judged import Judged
from tracker.desk.judging import judge_offers
from tracker.desk.measured_weights import at_measured_weight, measured_weights
from tracker.desk.money_as_written import without_impossible_slips
from tracker.desk.rates import RatesOn, rates_on
from tracker.desk.snapshot import Flags, Floats, Snapshot
from tracker.desk.yardsticks import yardsticks

if TYPE_CHECKING:
    from tracker.desk.opening import Desk


def load_snapshot(desk: Desk) -> Snapshot:
    """Every offer of every file that was not withdrawn, as columns."""
    from tracker.desk.loading import snapshot_of
    from tracker.store import columns

    with desk.store.reading() as connection:
        return snapshot_of(columns.load(connection))


def compare(desk: Desk, snapshot: Snapshot, footing: ChosenFooting) -> Comparison:
    """The snapshot on one footing with its verdicts.

    Offers that are on offer on the day and whose bracket fits the order size are judged and serve as each other's
    peers; with `current_only` off the others are shown too, with their place in the band and nothing more.
    """
    if footing.measured_weight:
        snapshot = at_measured_weight(snapshot, measured_weights(desk))
    rates = rates_on(desk, footing.as_of)
    current = is_current(snapshot, footing)
    fits = bracket_fits(snapshot, footing.order_kg)
    per_tonne, per_msf = prices_on(snapshot, footing, rates)
    is_delivered = (is_delivered_figure(snapshot) & footing.delivered) | (snapshot.delivered == 1)
    judged = judge_offers(snapshot, footing, per_tonne, current & fits, is_delivered, yardsticks(desk), rates)
    judged = without_impossible_slips(desk, snapshot, judged)
    shown = fits & current if footing.current_only else fits
    made = _with_ranges(_comparison(snapshot, footing, shown, current, per_tonne, per_msf, is_delivered, judged), rates)
    return replace(made, board_verdicts=verdicts_by_offer(desk, snapshot, footing.as_of))


def _with_ranges(made: Comparison, rates: RatesOn) -> Comparison:
    ends = at_either_end(made.snapshot)
    if ends is None:
        none = np.full(len(made.snapshot), np.nan)
        return replace(made, price_low=none, price_high=none)
    which = 0 if made.footing.per is Per.TONNE else 1
    to_caliper = at_equal_caliper(made.snapshot, made.footing)
    low, high = between(*(prices_on(end, made.footing, rates)[which] * to_caliper for end in ends))
    return replace(made, price_low=low, price_high=high, ends=ends)


def prices_on(snapshot: Snapshot, footing: ChosenFooting, rates: RatesOn) -> tuple[Floats, Floats]:
    """Every price per tonne and per MSF in the chosen currency, with charges where the footing says delivered."""
    factor = _factors(snapshot, rates, footing.currency)
    charged = is_delivered_figure(snapshot) & footing.delivered
    per_tonne = np.where(charged, snapshot.delivered_per_tonne, snapshot.per_tonne) * factor
    per_msf = np.where(charged, snapshot.delivered_per_msf, snapshot.per_msf) * factor
    return per_tonne, per_msf


def is_current(snapshot: Snapshot, footing: ChosenFooting) -> Flags:
    """Received by the day, not lapsed by every reading of its last day, and no newer offer of the same board."""
    day = footing.as_of.toordinal()
    lapsed = (snapshot.valid_at_latest >= 0) & (snapshot.valid_at_latest < day)
    superseded = (snapshot.superseded_by_day >= 0) & (snapshot.superseded_by_day <= day)
    current: Flags = (snapshot.received <= day) & ~lapsed & ~superseded
    return current


def bracket_fits(snapshot: Snapshot, order_kg: float | None) -> Flags:
    """The order size lies in the offer's bracket; every bracket fits where no order size is asked for."""
    if order_kg is None:
        return np.ones(len(snapshot), np.bool_)
    above = np.isnan(snapshot.from_kg) | (snapshot.from_kg <= order_kg)
    below = np.isnan(snapshot.below_kg) | (order_kg < snapshot.below_kg)
    fits: Flags = above & below
    return fits


def boards_without_a_bracket(comparison: Comparison) -> int:
    """How many boards are on offer on the day, but in no order size that holds the order asked for."""
    snapshot = comparison.snapshot

    def boards(where: Flags) -> set[tuple[int, str, float, int]]:
        return {
            (
                int(snapshot.vendor[row]),
                snapshot.product[row],
                float(np.nan_to_num(snapshot.caliper_um[row])),
                int(snapshot.grade[row]),
            )
            for row in np.flatnonzero(where)
        }

    fits = bracket_fits(snapshot, comparison.footing.order_kg)
    return len(boards(comparison.current & ~fits) - boards(comparison.current & fits))


def currencies_without_a_rate(comparison: Comparison, indices: Sequence[int]) -> tuple[str, ...]:
    """In which currencies those offers are quoted whose price is known but can't be brought to the chosen currency."""
    snapshot, at = comparison.snapshot, np.array(indices, np.int64)
    quoted = np.isfinite(snapshot.per_tonne[at]) | np.isfinite(snapshot.per_msf[at])
    brought = np.isfinite(comparison.per_tonne[at]) | np.isfinite(comparison.per_msf[at])
    codes = np.unique(snapshot.currency[at][quoted & ~brought])
    return tuple(snapshot.currencies[code] for code in codes if code >= 0)


def is_delivered_figure(snapshot: Snapshot) -> Flags:
    """A figure with all charges to the buyer's dock is known."""
    known: Flags = np.isfinite(snapshot.delivered_per_tonne) | np.isfinite(snapshot.delivered_per_msf)
    return known


def _factors(snapshot: Snapshot, rates: RatesOn, currency: str) -> Floats:
    """What one unit of each offer's currency is in the chosen one, NaN where no rate is known."""
    known = [rates.rate(code, currency) for code in snapshot.currencies]
    factors = [np.nan if rate is None else float(rate.factor) for rate in known]
    return np.array([*factors, np.nan])[snapshot.currency]


def _comparison(
    snapshot: Snapshot,
    footing: ChosenFooting,
    shown: Flags,
    current: Flags,
    per_tonne: Floats,
    per_msf: Floats,
    is_delivered: Flags,
    judged: Judged,
) -> Comparison:
    verdicts = judged.verdicts
    made = Comparison(
        snapshot=snapshot,
        footing=footing,
        shown=shown,
        current=current,
        per_tonne=per_tonne,
        per_msf=per_msf,
        price=per_tonne,
        is_delivered=is_delivered,
        expected=verdicts.expected,
        band_low=verdicts.band_low,
        band_high=verdicts.band_high,
        place=verdicts.place.astype(np.int32),
        score=verdicts.score,
        peers=verdicts.peers,
        out_of_line=verdicts.out_of_line,
        slip=verdicts.slip,
        judged=judged,
    )
    return made if footing.per is Per.TONNE else _per_msf(made)


def _per_msf(made: Comparison) -> Comparison:
    """The same with price, expectation and band per MSF, each through its own offer's weight."""
    to_caliper = at_equal_caliper(made.snapshot, made.footing)
    ratio = kilograms_per_msf(made.snapshot) / 1000 * to_caliper
    return replace(
        made,
        price=made.per_msf * to_caliper,
        expected=made.expected * ratio,
        band_low=made.band_low * ratio,
        band_high=made.band_high * ratio,
    )


def at_equal_caliper(snapshot: Snapshot, footing: ChosenFooting) -> Floats:
    """What each price per MSF is times as high at the footing's equal caliper; 1 where none is chosen."""
    caliper = footing.at_caliper_um
    return np.ones(len(snapshot)) if caliper is None else caliper / snapshot.caliper_um


def kilograms_per_msf(snapshot: Snapshot) -> Floats:
    """What 1,000 ft² of each board weigh, NaN where no grammage is known."""
    from tracker.trade.exact import M2_PER_MSF

    return snapshot.grammage_gsm * float(M2_PER_MSF) / 1000
