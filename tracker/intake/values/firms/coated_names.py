"""Firms that are called by what they do to board: 'Estucados Almendriz' coats it."""

from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.firms.company import BREAK
from tracker.intake.values.firms.own_words import has_words_of_its_own
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


@lru_cache(maxsize=1024)
def name_of_a_coater(text: str) -> str | None:
    """The firm of a sheet's first words. Farther down 'Estucados Almendriz' may be a line of boards, and 'Estucados
    dos caras', 'Estucados Blancos' and 'Estucados GC1' are boards anywhere."""
    head = BREAK.split(text.strip(), maxsplit=1)[0].strip()
    first, board = phrases("company").at(tokens_of(head), 0), find_grade(head)
    if first is None or first.value != "first" or board is None or board.tells_board or board.words:
        return None
    behind = head[first.end :].strip()
    named = all(word[0].isupper() or phrases("name_particles").whole(word) for word in behind.split())
    told = has_words_of_its_own(behind) and not any(map(str.isdigit, behind)) and find_grade(behind) is None
    return head if named and told else None
