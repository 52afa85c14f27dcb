"""A1 addresses as a file writes them, turned into rows and columns counted from 0."""

import re
from collections.abc import Iterable
from functools import cache

from tracker.intake.grid import MergedRange

LAST_ROW = 1_048_575
LAST_COLUMN = 16_383

_PLACE = re.compile(r"\$?([A-Za-z]{1,3})\$?([0-9]{1,7})")


@cache
def column_number(letters: str) -> int:
    """'A' is 0, 'XFD' is 16383."""
    number = 0
    for letter in letters.upper():
        number = number * 26 + ord(letter) - 64
    return number - 1


def place(reference: str) -> tuple[int, int] | None:
    """(row, column) of 'D5', or None for what is no address on a sheet."""
    found = _PLACE.fullmatch(reference)
    if found is None:
        return None
    row, column = int(found[2]) - 1, column_number(found[1])
    return (row, column) if 0 <= row <= LAST_ROW and column <= LAST_COLUMN else None


def spread(runs: Iterable[tuple[int, int]], count: int) -> frozenset[int]:
    """Every number below `count` that lies in one of the runs (first, last).

    Runs may overlap a million times over in a hostile file, so each number is visited once.
    """
    found: set[int] = set()
    reached = 0
    for first, last in sorted(set(runs)):
        found.update(range(max(first, reached), min(last + 1, count)))
        reached = max(reached, last + 1)
    return frozenset(found)


def merged_range(reference: str) -> MergedRange | None:
    """The block of 'A1:C3', or None where it is a single cell or no range."""
    first, _, last = reference.partition(":")
    start, stop = place(first), place(last)
    if start is None or stop is None or start == stop:
        return None
    top, bottom = sorted((start[0], stop[0]))
    left, right = sorted((start[1], stop[1]))
    return MergedRange(top, left, bottom, right)
