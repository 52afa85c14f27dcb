"""A board's price against its own last one, and against how its grade moved meanwhile."""

from dataclasses import dataclass

import numpy as np

from tracker.market.bands import vendor_weights
from tracker.market.offers import Offers
from tracker.market.robust import weighted_median

FEWEST_MOVES = 3
"""Other vendors' boards with a price on both days from which one may say how the grade moved."""


@dataclass(frozen=True, slots=True)
class History:
    """before: index of the board's last earlier offer. change: price over the last price, less 1.
    grade_change: the same for the grade (median over `boards` boards of other vendors), None where too few tell."""

    before: int
    change: float
    grade_change: float | None
    boards: int


def history_of(offers: Offers, offer: int) -> History | None:
    """What the board cost before. None where there is no earlier price of the same board, or no day to go by."""
    day = int(offers.received[offer])
    if offers.board[offer] < 0 or day < 0 or not offers.usable[offer]:
        return None
    own = np.flatnonzero(
        (offers.board == offers.board[offer]) & offers.usable & (offers.received >= 0) & (offers.received < day)
    )
    if own.size == 0:
        return None
    before = int(own[np.argmax(offers.received[own])])
    change = float(offers.per_tonne[offer] / offers.per_tonne[before]) - 1
    moves, vendors = _moves_of_others(offers, offer, int(offers.received[before]), day)
    if moves.size < FEWEST_MOVES:
        return History(before, change, None, int(moves.size))
    return History(before, change, float(np.expm1(weighted_median(moves, vendor_weights(vendors)))), int(moves.size))


def _moves_of_others(offers: Offers, offer: int, then: int, now: int) -> tuple[np.ndarray, np.ndarray]:
    """Change of log price between two days of every other vendor's board of the grade that had a price on both,
    and those boards' vendors. The price on a day is the last one received by then."""
    others = np.flatnonzero(
        (offers.grade == offers.grade[offer])
        & (offers.vendor != offers.vendor[offer])
        & (offers.board >= 0)
        & (offers.received >= 0)
        & offers.usable
    )
    by_day = others[np.argsort(offers.received[others], kind="stable")]
    at_first, at_last = (_last_of_each_board(offers, by_day[offers.received[by_day] <= day]) for day in (then, now))
    boards = np.array(sorted(at_first.keys() & at_last.keys()), dtype=np.int64)
    first = np.array([at_first[board] for board in boards], dtype=np.int64)
    last = np.array([at_last[board] for board in boards], dtype=np.int64)
    return np.log(offers.per_tonne[last] / offers.per_tonne[first]), offers.vendor[last]


def _last_of_each_board(offers: Offers, by_day: np.ndarray) -> dict[int, int]:
    return dict(zip(offers.board[by_day].tolist(), by_day.tolist(), strict=True))
