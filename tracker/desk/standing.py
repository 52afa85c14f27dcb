"""What a price is, in one word, wherever it is shown: table, picture, shell, files and report say it alike."""

from __future__ import annotations

from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from tracker.desk.comparison import Comparison
from tracker.market.bands import ABOVE, BELOW, NO_BAND


class Standing(IntEnum):
    """In the order in which a reader should meet them."""

    SLIP = 0
    ABOVE = 1
    BELOW = 2
    FEW = 3
    ESTIMATED = 4
    IN_LINE = 5


_WORDS = {
    Standing.SLIP: "looks like another basis",
    Standing.ABOVE: "out of line, above",
    Standing.BELOW: "out of line, below",
    Standing.FEW: "too few to judge",
    Standing.ESTIMATED: "in line",
    Standing.IN_LINE: "in line",
}
_ESTIMATED = ", on an estimated weight"
_BESIDE_BAND = {ABOVE: ", but above its expected band", BELOW: ", but below its expected band"}
"""Near enough to what others ask, and yet outside what the level leads one to expect: both are told."""


def standings(comparison: Comparison) -> NDArray[np.int8]:
    """One Standing an offer, from the conclusions already drawn; nothing is judged here."""
    found = np.full(len(comparison.snapshot), Standing.IN_LINE, dtype=np.int8)
    found[comparison.rests_on_estimate] = Standing.ESTIMATED
    found[np.isnan(comparison.score) & (comparison.place == NO_BAND)] = Standing.FEW
    # Without a going price the band called it.
    above = np.where(np.isnan(comparison.expected), comparison.place > 0, comparison.price > comparison.expected)
    found[comparison.out_of_line & above] = Standing.ABOVE
    found[comparison.out_of_line & ~above] = Standing.BELOW
    found[comparison.slip] = Standing.SLIP
    return found


def standing_words(comparison: Comparison, index: int, standing: Standing) -> str:
    """'in line', 'in line, but above its expected band', 'out of line, above'."""
    beside = _BESIDE_BAND.get(int(comparison.place[index]), "") if standing >= Standing.ESTIMATED else ""
    return _WORDS[standing] + beside + (_ESTIMATED if standing is Standing.ESTIMATED else "")
