"""Lines between rows that take a grade away, 'end of CRB C1S', 'board not identified', or name none at all: 'C1S'."""

from collections.abc import Collection
from functools import lru_cache

from tracker.intake.values.boards.grade import GradeReading, names_grade
from tracker.intake.values.boards.open_grades import UNCOATED
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_LONGEST = 60


@lru_cache(maxsize=4096)
def ends_group(text: str) -> bool:
    """Whether a line says that the group above it ends: '– end of CRB C1S –', 'Ende der Gruppe', 'CRB ends here'."""
    found = [match for match in phrases("group_ends").find(text) if len(text) <= _LONGEST]
    if not found or find_dates(text) or phrases("months").find(text):
        return False
    first, last = found[0], found[-1]
    if first.value == "ahead" and not any(map(str.isalnum, text[: first.start])):
        return _names_a_group(text[first.end :])
    ends = not any(map(str.isalnum, text[last.end :]))
    return last.value == "behind" and ends and _names_a_group(text[: last.start])


def _names_a_group(words: str) -> bool:
    named = names_grade(words) or bool(phrases("group_names").find(words))
    return named or not any(map(str.isalnum, words))


@lru_cache(maxsize=4096)
def board_unknown(text: str) -> bool:
    """Whether a line says that nobody knows the board below it: 'Mixed lots', 'Sorte unbekannt'; 'CRB, various mills'
    and 'various sizes' do not."""
    if len(text) > _LONGEST or names_grade(text):
        return False
    found = [match for match in phrases("unknown_board").find(text) if not denied(text, match)]
    return any(match.value == "strong" for match in found) or (bool(found) and _speaks_of_goods(text))


def _speaks_of_goods(text: str) -> bool:
    """Every word but numbers is of boards and lots."""
    known: set[int] = set()
    for section in ("unknown_board", "board_goods", "header_filler"):
        known.update(place for match in phrases(section).find(text) for place in range(match.first, match.after))
    return all(place in known or not word.isalpha() for place, (word, *_) in enumerate(tokens_of(text)))


def coats_any(said: GradeReading, words: str, grades: Collection[str]) -> bool:
    """'Reels, coated one side' is said of every grade that may be coated; 'coated one side on request' of none."""
    hedged = any(phrases(section).find(words) for section in ("optional", "negations", "exceptions"))
    alone = not said.grades and not said.kinds and bool(said.coated_sides)
    return alone and not hedged and UNCOATED.isdisjoint(grades)
