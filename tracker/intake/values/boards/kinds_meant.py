"""Boards that a sentence calls by a kind which leaves few grades: 'the two kraft items', 'the recycled board'."""

import re
from dataclasses import replace
from typing import NamedTuple

from tracker.intake.values.boards.board_ahead import kind_ahead
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.open_grades import left_open
from tracker.intake.values.boards.some_boards import FAMILIES
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.words.lists import phrases, without_article

_COUNT = re.compile(r"\d+\s+")
_FEW = 2
_STOPS = " ,;:.()–-"


class KindMeant(NamedTuple):
    """The boards, and what stands behind the words for them."""

    boards: BoardsMeant
    behind: str


def kind_meant(text: str) -> KindMeant | None:
    """The boards of a kind that a text begins with, with the grades that it leaves."""
    text = _without_lead(text.strip())
    kind = kind_ahead(text)
    if kind is None:
        return _of_family(text)
    left = left_open(kind.kinds)
    grades = tuple(sorted(left)) if len(left) <= _FEW else ()
    behind = text[len(kind.words) :].lstrip()
    items = next((found for found in phrases("line_numbers").find(behind) if found.start == 0), None)
    return KindMeant(BoardsMeant(replace(kind, grades=grades)), behind[items.end :].lstrip() if items else behind)


def _of_family(text: str) -> KindMeant | None:
    """'Kraftsorten', 'les recyclés': a kind by the words that are said of its boards together."""
    family = next((found for found in phrases("families").find(text) if found.start == 0), None)
    if family is None:
        return None
    grade = GradeReading(FAMILIES[family.value], None, text[: family.end], kinds=(family.value,))
    return KindMeant(BoardsMeant(grade), text[family.end :].lstrip())


def boards_called(text: str) -> BoardsMeant:
    """As boards_named, but words that are nothing but a kind's name tell its boards as well: 'the kraft'."""
    named = boards_named(text)
    kind = kind_meant(text) if not named.some else None
    if kind is None or kind.behind.strip(_STOPS) or kind.boards.grade is None or not kind.boards.grade.grades:
        return named
    return kind.boards


def _without_lead(text: str) -> str:
    """Without 'the', and the 'two' of 'the two kraft items'."""
    text = without_article(text)
    counted = in_figures(text)
    count = _COUNT.match(counted)
    return text if count is None else counted[count.end() :]
