"""The boards that stand behind 'on' or 'for': 'Energy surcharge on CRB and URB grades', 'sur les qualités GD et GT'."""

import re

from tracker.intake.values.boards.boards_excepted import boards_ahead
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.some_boards import FAMILIES
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases, without_article

_JOINED = re.compile(r"(?<=\b[A-Z]{2})-(?=\s|[A-ZÄÖÜa-z][a-zäöüåé])")
"""The hyphens of 'GD- und GT-Sorten'."""
_STOPS = " .,:;"


def boards_behind(text: str) -> tuple[str, str]:
    """The words of the boards that a text begins with, and what goes on behind them; '' where it begins with none."""
    words, rest = boards_ahead(text.strip())
    if words:
        return words, without_boards_word(rest)
    words, rest = boards_ahead(without_boards_word(without_article(_JOINED.sub(" ", text).strip())))
    return (words, without_boards_word(rest)) if words else ("", text)


def names_of_a_kind(text: str) -> tuple[str, str]:
    """'CRB and URB' of 'the recycled grades, CRB and URB': a kind, and then which boards of the list are of it."""
    kind = _KIND.match(text)
    families = phrases("families").find(kind["kind"]) if kind is not None else []
    if kind is None or not families or rest_of(kind["kind"], (), "families", "board_goods", "articles"):
        return "", text
    words, rest = boards_behind(text[kind.end() :])
    grade = boards_named(words).grade if words else None
    of_kind = {one for family in families for one in FAMILIES[family.value]}
    named = grade is not None and bool(grade.grades) and of_kind.issuperset(grade.grades)
    return (words, rest.removeprefix(")")) if named else ("", text)


_KIND = re.compile(r"(?P<kind>[^,(:]+?)\s*(?:[,:]\s|\()")


def without_boards_word(rest: str) -> str:
    """Without the 'grades' that says no more of them; the 'carton' of 'on carton 18 pt' may be one kind of board."""
    first = rest.split(maxsplit=1)[0] if rest else ""
    word = first.strip(_STOPS)
    roles = header_roles(word) if word.isalpha() else ()
    named = bool(roles) and roles[0].role in (Role.PRODUCT, Role.GRADE, Role.ITEM)
    named = (named or phrases("line_numbers").whole(word) is not None) and find_grade(word) is None
    return rest[len(first) :].lstrip() if named else rest
