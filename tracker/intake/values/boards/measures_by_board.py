"""A note that gives several boards their measures: 'GC1: 250 g/m²; GD2: 300 g/m²', 'SBS 18 pt = 214 lb, CUK 20 pt = 226
lb'."""

import re
from collections.abc import Collection
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.words.lists import pattern
from tracker.intake.words.phrases import tokens_of

_STOPS = re.compile(rf"[;\n]|,(?!\d)|\.\s|\s{pattern('range', 'and')}\s")
_NUMBER = re.compile(r"\d[\d.,]*")
_SEVERAL = 2


def measures_of_board(text: str, name: str, grades: Collection[str], calipers: Collection[Decimal]) -> str:
    """What a text that gives several boards their measures says of one: '' where it is none of these. All of the text
    where it is no such list, or where it is not told which of its boards the one is."""
    listed = _by_board(text)
    if not listed or not grades:
        return text
    called = [part for part, board in listed if _words(board.words) <= _words(name)]
    # GC2 is none of GC1, though both are folding boxboard.
    general = [(part, board) for part, board in listed if not any(map(str.isdigit, board.words))]
    alike = called or [part for part, board in general if not set(board.grades).isdisjoint(grades)]
    own = {part for part in alike if _is_as_thick(part, calipers)}
    return text if len(own) > 1 else next(iter(own), "")


def _words(name: str) -> frozenset[str]:
    return frozenset(token for token, _, _ in tokens_of(name))


def _is_as_thick(part: str, calipers: Collection[Decimal]) -> bool:
    """'SBS 18 pt = 214 lb' is nothing of 24 pt SBS."""
    told = [one.um for one in find_calipers(part)]
    return not (told and calipers) or any(abs(one - own) <= _ROUNDED * own for one in told for own in calipers)


_ROUNDED = Decimal("0.03")


@lru_cache(maxsize=4096)
def _by_board(text: str) -> tuple[tuple[str, GradeReading], ...]:
    """Each board of such a list with the part that is about it, '' for one with figures that are not read; () where the
    text gives no board its weight, or only one is named."""
    parts: list[str] = []
    for piece in _STOPS.split(text):
        if not parts or _named(piece) is not None:
            parts.append(piece)
        else:
            # 'SBS 18 pt, 214 lb'.
            parts[-1] += f", {piece}"
    listed: list[tuple[str, GradeReading]] = []
    waiting: list[GradeReading] = []
    for part in parts:
        board = _named(part)
        if board is None:
            return ()
        waiting.append(board)
        if _NUMBER.search(part.replace(board.words, " ", 1)) is not None:
            # 'GC1 and GC2 250 g/m²' is about both.
            listed += [(part if _is_read(part, board) else "", each) for each in waiting]
            waiting = []
    listed += [("", each) for each in waiting]
    return tuple(listed) if len(listed) >= _SEVERAL and any(part for part, _ in listed) else ()


def _named(piece: str) -> GradeReading | None:
    grade = find_grade(piece)
    return grade if grade is not None and grade.grades else None


def _is_read(part: str, board: GradeReading) -> bool:
    """Whether its only figures are one weight and no more than one caliper."""
    weights, calipers = {one.words for one in find_weights(part)}, {one.words for one in find_calipers(part)}
    rest = part.replace(board.words, " ", 1)
    for words in (*weights, *calipers):
        rest = rest.replace(words, " ", 1)
    return len(weights) == 1 and len(calipers) <= 1 and _NUMBER.search(rest) is None
