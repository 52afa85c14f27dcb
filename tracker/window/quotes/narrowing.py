"""Which offers the user wants to see: filters as masks over the snapshot's columns."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from tracker.desk.comparison import Comparison
from tracker.desk.quotes import bracket_fits
from tracker.window.quotes.board_names import board_names


@dataclass(frozen=True, slots=True)
class Narrowing:
    """What is let through. Empty sets and None let everything through; `words` are looked for in vendor and board."""

    grade: str = ""
    vendors: frozenset[str] = frozenset()
    caliper_from_um: float | None = None
    caliper_to_um: float | None = None
    words: str = ""
    standing_out: bool = False


# Half a point, and what rounding a caliper to whole micrometres may lose.
_CALIPER_SLACK_UM = 0.6


def rows_of(
    comparison: Comparison, narrowing: Narrowing, *, any_grade: bool = False, ever: bool = False
) -> NDArray[np.intp]:
    """Offers (indices of the snapshot) that take part and are let through. `any_grade` leaves the grade aside; `ever`
    takes those in that have lapsed or were replaced by the comparison's day."""
    snapshot, footing = comparison.snapshot, comparison.footing
    mask = comparison.shown.copy()
    if ever:
        mask = bracket_fits(snapshot, footing.order_kg) & (snapshot.received <= footing.as_of.toordinal())
    if narrowing.grade and not any_grade:
        mask &= _named(snapshot.grade, snapshot.grades, {narrowing.grade})
    if narrowing.vendors:
        mask &= _named(snapshot.vendor, snapshot.vendors, set(narrowing.vendors))
    with np.errstate(invalid="ignore"):
        if narrowing.caliper_from_um is not None:
            mask &= snapshot.caliper_um >= narrowing.caliper_from_um - _CALIPER_SLACK_UM
        if narrowing.caliper_to_um is not None:
            mask &= snapshot.caliper_um <= narrowing.caliper_to_um + _CALIPER_SLACK_UM
    if narrowing.standing_out:
        mask &= comparison.out_of_line | comparison.slip
    rows = np.flatnonzero(mask)
    if narrowing.words.strip():
        rows = _with_words(comparison, rows, narrowing.words.casefold().split())
    return rows


def _named(codes: NDArray[np.int32], names: list[str], wanted: set[str]) -> NDArray[np.bool_]:
    is_wanted = np.array([name in wanted for name in names] + [False])
    return is_wanted[codes]


def _with_words(comparison: Comparison, rows: NDArray[np.intp], words: list[str]) -> NDArray[np.intp]:
    """The rows with every word in the vendor's or the board's name. The same names come again and again: each is
    looked at once a word, not once a row."""
    snapshot, boards = comparison.snapshot, board_names(comparison.snapshot)
    for word in words:
        in_vendor = np.array([word in name.casefold() for name in snapshot.vendors] + [False])
        in_board = np.array([word in name for name in boards.folded], dtype=np.bool_)
        rows = rows[in_vendor[snapshot.vendor[rows]] | in_board[boards.codes[rows]]]
    return rows
