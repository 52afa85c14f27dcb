"""The board that a text begins with, and what it says behind it: 'CRB' and 'delivered' of 'CRB delivered'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.boards_named import measures_named
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases


@lru_cache(maxsize=4096)
def board_ahead(text: str) -> tuple[str, str]:
    """The words of a board that a text begins with, and what goes on behind them: 'CRB' of 'CRB delivered'."""
    rest = text
    while (words := _first_words(rest)) is not None:
        rest = rest[len(words) :].lstrip()
        joint = next((found for found in phrases("about_lines").find(rest) if found.start == 0), None)
        if joint is not None and _first_words(rest[joint.end :].lstrip()) is not None:
            # 'GC2 in 300 g/m²', 'le GC2 de 300 g'.
            rest = rest[joint.end :].lstrip()
    return text[: len(text) - len(rest)].strip(), rest


def kind_ahead(text: str) -> GradeReading | None:
    """A kind of board of which it is not told which: the 'recycled board' that a text begins with."""
    kind = find_grade(text)
    if kind is None or kind.tells_board or not kind.words:
        return None
    told = set(kind.kinds) - {"any_board"}
    return kind if told and text.strip().casefold().startswith(kind.words.casefold()) else None


def _first_words(text: str) -> str | None:
    twice = _called_twice(text)
    if twice is not None:
        return twice
    grade = find_grade(text)
    said = [grade.words] if grade is not None and grade.tells_board else []
    said += measures_named(text)[:2]
    return max((words for words in said if words and text.startswith(words)), key=len, default=None)


def _called_twice(text: str) -> str | None:
    """'Coated kraft (CUK)', 'coated board (CRB)': a board's name, or its kind, with its grade in brackets, and nothing
    else in front of or in them."""
    named = _BRACKETED.match(text)
    if named is None or board_ahead(named[2]) != (named[2], ""):
        return None
    return named[0] if board_ahead(named[1]) == (named[1], "") or _is_of_kind(named[1], named[2]) else None


def _is_of_kind(kind: str, board: str) -> bool:
    """'Coated board' before 'CRB', with which it agrees."""
    said, grade, both = find_grade(kind), find_grade(board), find_grade(f"{kind} {board}")
    if said is None or grade is None or both is None or said.grades or len(grade.grades) != 1:
        return False
    return both.grades == grade.grades and not rest_of(kind, (), *_KINDS)


_KINDS = ("families", "coating", "board_goods", "articles")


_BRACKETED = re.compile(r"([^():;,.]*[^():;,.\s])\s+\(([^()\d]+)\)")
