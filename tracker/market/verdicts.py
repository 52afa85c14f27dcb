"""One conclusion for every offer, out of peers, band, its vendor's own last price and slips."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.market.bands import Bands, Places, of_grade, place
from tracker.market.history import history_of
from tracker.market.offers import Flags, Offers, Settings
from tracker.market.outliers import FEWEST_FOR_ESD
from tracker.market.peers import FEWEST_PEERS, Peers, compare
from tracker.market.robust import Floats
from tracker.market.slips import Slip, find_slips

METHOD = (
    "modified z-score (Iglewicz and Hoaglin) of log price beside other vendors' offers at that caliper and order size, "
    "its spread steadied by all grades and widened by the doubt about what to expect; "
    f"from {FEWEST_FOR_ESD} offers also the generalized ESD test"
)

_SECOND_OPINION = 0.5
"""How far below the cut-off a price may stay and still be out of line when a second witness says so: Rosner's test,
or a jump from the vendor's own last price that the grade did not make."""

_JUMP = 3.0  # spreads of a change between two prices; a change has the scatter of both


@dataclass(frozen=True, slots=True)
class Verdicts:
    """Arrays of length n aligned with the offers; prices per tonne in the comparison currency.

    place: -1 below, 0 within, 1 above its band, -9 no band. band_low, band_high: NaN where there is none.
    expected: the going price, what other vendors' offers (and the band, where they are few) come to; NaN unknown.
    low, high: where a clean price may lie by that expectation, at the cut-off applied, `cut_off`.
    peers: other vendors' offers in the grade. score: modified z-score among them, NaN where they are too few.
    out_of_line: the one conclusion. jumped: the vendor's own last price tipped the balance.
    slip: a slip is likely; slips: which, by the offer's index. evidence: what the peers say in full, for sentences.
    """

    place: Places
    band_low: Floats
    band_high: Floats
    expected: Floats
    low: Floats
    high: Floats
    cut_off: float
    peers: NDArray[np.int32]
    score: Floats
    out_of_line: Flags
    jumped: Flags
    slip: Flags
    slips: Mapping[int, Slip]
    evidence: Peers


def judge(offers: Offers, bands: Bands, settings: Settings) -> Verdicts:
    """Judge every shown offer. Offers that are not shown or have no usable price get a place and nothing else."""
    peers = compare(offers, bands)
    away, limit = farthest(peers), settings.cut_off
    doubtful = (away <= limit) & (away > limit - _SECOND_OPINION)
    jumped = _jumped(offers, np.flatnonzero(doubtful), peers)
    out = (away > limit) | jumped | (peers.extreme & doubtful)
    suspects = np.flatnonzero(out)
    slips = find_slips(offers, settings, suspects, peers.gap[suspects], peers.spread[suspects])
    slipped = np.zeros(len(offers), np.bool_)
    slipped[list(slips)] = True
    width = limit * peers.spread
    return Verdicts(
        place=place(np.where(offers.usable, offers.per_tonne, np.nan), offers.grade, bands),
        band_low=of_grade(bands.low, offers.grade),
        band_high=of_grade(bands.high, offers.grade),
        expected=np.exp(peers.expected),
        low=np.exp(peers.expected - width),
        high=np.exp(peers.expected + width),
        cut_off=settings.cut_off,
        peers=peers.n,
        score=np.where(peers.n >= FEWEST_PEERS, peers.gap / peers.spread, np.nan),
        out_of_line=out,
        jumped=jumped,
        slip=slipped,
        slips=slips,
        evidence=peers,
    )


def farthest(peers: Peers) -> Floats:
    """How many spreads an offer lies from the farther of the two expectations, 0 where there is none."""
    among_others, with_own = peers.gap / peers.spread, peers.own_gap / peers.own_spread
    away: Floats = np.maximum(np.abs(np.nan_to_num(among_others)), np.abs(np.nan_to_num(with_own)))
    return away


def _jumped(offers: Offers, doubtful: NDArray[np.intp], peers: Peers) -> Flags:
    """Which of the doubtful offers moved away from their own last price, as far as they now stand out, when their
    grade did not."""
    flags = np.zeros(len(offers), np.bool_)
    for at in doubtful:
        history = history_of(offers, int(at))
        if history is None or history.grade_change is None:
            continue
        moved = np.log1p(history.change) - np.log1p(history.grade_change)
        flags[at] = moved * np.sign(peers.gap[at]) > _JUMP * np.sqrt(2) * peers.noise[at]
    return flags
