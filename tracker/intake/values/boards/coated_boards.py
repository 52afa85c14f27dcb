"""All boards of a list that are coated, or that are not: the 'coated grades' on which a surcharge is charged."""

from tracker.intake.values.boards.boards_meant import BoardsMeant
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases

_STOPS = " .,:;"
_WORDS = 3
"""Of 'clay coated grades', 'calidades no estucadas'."""


def coated_ahead(text: str) -> tuple[BoardsMeant, str] | None:
    """The coated (or uncoated) boards that a text begins with, and what goes on behind them; None where it begins with
    none, or names a grade or a side as well."""
    rest = _without_lead(text.strip())
    words = rest.split()
    for count in range(2, min(_WORDS, len(words)) + 1):
        named = " ".join(words[:count]).strip(_STOPS)
        reading = find_grade(named)
        if reading is None or reading.grades or reading.coated is None or reading.coated_sides not in (None, 0):
            continue
        coating = [match for match in phrases("coating").find(named) if match.value in ("coated", "0")]
        left = " ".join(named[: coating[0].start].split() + named[coating[0].end :].split()) if coating else ""
        if left and _is_boards_word(left):
            return BoardsMeant(reading), " ".join(words[count:])
    return None


def _is_boards_word(word: str) -> bool:
    roles = header_roles(word)
    named = bool(roles) and roles[0].role in (Role.PRODUCT, Role.GRADE)
    return named or phrases("board_goods").whole(word) is not None


def _without_lead(text: str) -> str:
    for section in ("all_of_them", "articles"):
        lead = next((found for found in phrases(section).find(text) if found.start == 0), None)
        text = text if lead is None else text[lead.end :].lstrip()
    return text
