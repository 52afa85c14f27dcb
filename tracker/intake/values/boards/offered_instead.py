"""The board that a vendor's remark offers in the place of the one asked for: 'we supply 420 g, not 400 g'."""

import re
from functools import lru_cache

from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.changes.list_age import is_of_something_else
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.words.lists import phrases

_PARTS = re.compile(r",(?!\d)|[()\n]")


@lru_cache(maxsize=4096)
def offered_instead(text: str) -> BoardsMeant | None:
    """What a remark says is offered, which may be the row's own board; None where it says so of none.

    What it offers beside that ('20 pt also available', 'alt. 17 pt') takes no board's place.
    """
    said = [match for match in phrases("offered_instead").find(text) if not denied(text, match)]
    if not said or phrases("other_boards").find(text) or is_of_something_else(text):
        return None
    named = boards_named(" ; ".join(_affirmed(part) for clause in clauses(text) for part in _PARTS.split(clause)))
    return named if named.some else None


def _affirmed(part: str) -> str:
    """A part of a remark up to what it denies: '420 g' of '420 g statt 400 g', nothing of 'pas de 400 g'."""
    denying = [match for section in ("negations", "not_this_board", "was_now") for match in phrases(section).find(part)]
    return part[: min((match.start for match in denying), default=len(part))]
