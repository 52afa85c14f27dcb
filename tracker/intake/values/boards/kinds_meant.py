"""Boards that a sentence calls by a kind which leaves few grades: 'the two kraft items', 'the recycled board'."""

import re
from dataclasses import replace
from typing import NamedTuple

from tracker.intake.values.boards.board_ahead import kind_ahead
from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.open_grades import left_open
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.words.lists import phrases

_COUNT = re.compile(r"\d+\s+")
_FEW = 2


class KindMeant(NamedTuple):
    """The boards, and what stands behind the words for them."""

    boards: BoardsMeant
    behind: str


def kind_meant(text: str) -> KindMeant | None:
    """The boards of a kind that a text begins with, with the grades that it leaves."""
    text = _without_lead(text.strip())
    kind = kind_ahead(text)
    if kind is None:
        return None
    left = left_open(kind.kinds)
    grades = tuple(sorted(left)) if len(left) <= _FEW else ()
    behind = text[len(kind.words) :].lstrip()
    items = next((found for found in phrases("line_numbers").find(behind) if found.start == 0), None)
    return KindMeant(BoardsMeant(replace(kind, grades=grades)), behind[items.end :].lstrip() if items else behind)


def _without_lead(text: str) -> str:
    """Without 'the', and the 'two' of 'the two kraft items'."""
    lead = next((found for found in phrases("articles").find(text) if found.start == 0), None)
    text = text if lead is None else text[lead.end :].lstrip()
    counted = in_figures(text)
    count = _COUNT.match(counted)
    return text if count is None else counted[count.end() :]
