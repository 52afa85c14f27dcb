"""A board's price against its own last one, and against how its grade moved meanwhile."""

from dataclasses import dataclass
from weakref import WeakKeyDictionary

import numpy as np
from numpy.typing import NDArray

from tracker.market.bands import vendor_weights
from tracker.market.offers import Codes, Offers
from tracker.market.robust import Floats, weighted_median

FEWEST_MOVES = 3
"""Other vendors' boards with a price on both days from which one may say how the grade moved."""

_Moves = tuple[Floats, Codes]
_KNOWN: WeakKeyDictionary[Offers, dict[tuple[int, int, int], _Moves]] = WeakKeyDictionary()
"""How grades moved between two days, worked out once: thousands of boards ask the same when a list is explained."""


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
    same = np.flatnonzero(offers.board == offers.board[offer])
    own = same[offers.usable[same] & (offers.received[same] >= 0) & (offers.received[same] < day)]
    if own.size == 0:
        return None
    before = int(own[np.argmax(offers.received[own])])
    change = float(offers.per_tonne[offer] / offers.per_tonne[before]) - 1
    moves, vendors = _moves_of_grade(offers, int(offers.grade[offer]), int(offers.received[before]), day)
    others = vendors != offers.vendor[offer]
    moves, vendors = moves[others], vendors[others]
    if moves.size < FEWEST_MOVES:
        return History(before, change, None, int(moves.size))
    return History(before, change, float(np.expm1(weighted_median(moves, vendor_weights(vendors)))), int(moves.size))


def _moves_of_grade(offers: Offers, grade: int, then: int, now: int) -> _Moves:
    """Change of log price between two days of every board of a grade that had a price on both, and those boards'
    vendors. The price on a day is the last one received by then."""
    known = _KNOWN.setdefault(offers, {})
    if (grade, then, now) not in known:
        known[grade, then, now] = _moves(offers, grade, then, now)
    return known[grade, then, now]


def _moves(offers: Offers, grade: int, then: int, now: int) -> _Moves:
    of_grade = np.flatnonzero((offers.grade == grade) & (offers.board >= 0) & (offers.received >= 0) & offers.usable)
    by_day = of_grade[np.argsort(offers.received[of_grade], kind="stable")]
    at_first, at_last = (_last_of_each_board(offers, by_day[offers.received[by_day] <= day]) for day in (then, now))
    boards = np.array(sorted(at_first.keys() & at_last.keys()), dtype=np.int64)
    first = np.array([at_first[board] for board in boards], dtype=np.int64)
    last = np.array([at_last[board] for board in boards], dtype=np.int64)
    return np.log(offers.per_tonne[last] / offers.per_tonne[first]), offers.vendor[last]


def _last_of_each_board(offers: Offers, by_day: NDArray[np.intp]) -> dict[int, int]:
    return dict(zip(offers.board[by_day].tolist(), by_day.tolist(), strict=True))
