"""One conclusion for every offer, out of band, peers and slip."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.market.bands import Bands, Places, of_grade, place
from tracker.market.offers import Flags, Offers, Settings
from tracker.market.peers import FEWEST_PEERS, Peers, compare
from tracker.market.robust import Floats
from tracker.market.slips import Slip, find_slips

METHOD = "modified z-score (Iglewicz and Hoaglin) on log price"


@dataclass(frozen=True, slots=True)
class Verdicts:
    """Arrays of length n aligned with the offers; prices per tonne in the comparison currency.

    place: -1 below, 0 within, 1 above its band, -9 no band. band_low, band_high: NaN where there is none.
    expected: what the grade's other offers and its band lead one to expect, NaN where neither is there.
    low, high: where a clean price may lie by that expectation.
    peers: other vendors' offers in the grade. score: modified z-score among them, NaN where they are too few.
    out_of_line: the one conclusion. slip: a slip is likely; slips: which, by the offer's index.
    evidence: what the peers say in full, for sentences.
    """

    place: Places
    band_low: Floats
    band_high: Floats
    expected: Floats
    low: Floats
    high: Floats
    peers: NDArray[np.int32]
    score: Floats
    out_of_line: Flags
    slip: Flags
    slips: Mapping[int, Slip]
    evidence: Peers


def judge(offers: Offers, bands: Bands, settings: Settings) -> Verdicts:
    """Judge every shown offer. Offers that are not shown or have no usable price get a place and nothing else."""
    peers = compare(offers, bands)
    judged = offers.shown & offers.usable
    away = np.nan_to_num(peers.gap / peers.spread)
    away_alone = np.nan_to_num(peers.own_gap / peers.own_spread)
    out = judged & (np.maximum(np.abs(away), np.abs(away_alone)) > settings.cut_off)
    suspects = np.flatnonzero(out)
    slips = find_slips(offers, settings, suspects, peers.gap[suspects], peers.spread[suspects])
    slipped = np.zeros(len(offers), np.bool_)
    slipped[list(slips)] = True
    width = settings.cut_off * peers.spread
    return Verdicts(
        np.where(offers.usable, place(offers.per_tonne, offers.grade, bands), -9).astype(np.int8),
        of_grade(bands.low, offers.grade),
        of_grade(bands.high, offers.grade),
        np.exp(peers.expected),
        np.exp(peers.expected - width),
        np.exp(peers.expected + width),
        peers.n,
        np.where(peers.n >= FEWEST_PEERS, peers.gap / peers.scatter, np.nan),
        out,
        slipped,
        slips,
        peers,
    )
