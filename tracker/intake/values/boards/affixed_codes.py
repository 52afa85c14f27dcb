"""What a file says of codes by how they begin or end: 'All items are GD2, except those ending in K, which are CUK'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, tokens_of


@dataclass(frozen=True, slots=True)
class Affix:
    """Letters that codes begin or end with; `ends`: these end with them."""

    letters: str
    ends: bool

    def fits(self, code: str) -> bool:
        """Whether a code has them there, and more letters of the same kind do not go on: 'DOM' begins 'DOM-11'."""
        code = code.strip().upper()
        rest = code.removesuffix(self.letters) if self.ends else code.removeprefix(self.letters)
        beside = rest[-1:] if self.ends else rest[:1]
        return rest != code and bool(rest) and not (beside.isalpha() and self.letters.isalpha())


@dataclass(frozen=True, slots=True)
class AffixedCodes:
    """The grades of codes by their affixes, and that of all other codes, where it is told."""

    own: tuple[tuple[Affix, GradeReading], ...]
    others: GradeReading | None

    def grade_of(self, code: str) -> GradeReading | None:
        """The grade of a code; None for one that no affix or several fit, where nothing is told of the others."""
        fitting = [grade for affix, grade in self.own if affix.fits(code)]
        return fitting[0] if len(fitting) == 1 else None if fitting else self.others


@lru_cache(maxsize=4096)
def affixed_codes(text: str) -> AffixedCodes | None:
    """What a text says of codes so; None where it names no affix, or of one of them not one grade."""
    told = [one for clause in clauses(text) for one in _pieces(clause)]
    own = [(affix, _grade_alone(said)) for affix, said in told if affix is not None]
    grades = [(affix, grade) for affix, grade in own if grade is not None]
    if not own or len(grades) < len(own):
        return None
    others = [grade for affix, said in told if affix is None and (grade := _of_others(said)) is not None]
    named = {grade.grade for grade in others}
    return AffixedCodes(tuple(grades), others[0] if len(named) == 1 else None)


def affixes_named(clause: str) -> list[tuple[Affix, int, int]]:
    """The affixes that a clause names, each with where its words begin and where its letters end."""
    found: list[tuple[Affix, int, int]] = []
    for match in phrases("code_affixes").find(clause):
        letters = _LETTERS.match(clause, match.end)
        if letters is not None and match.value != "verbs":
            found.append((Affix(letters["code"], match.value == "ends"), match.start, letters.end()))
    return found


_LETTERS = re.compile(r"\s*[\"'“”„«»-]?(?P<code>[A-Z0-9]{1,6})[\"'“”»]?(?=[\s,.;:=)]|$)")


def _pieces(clause: str) -> Iterator[tuple[Affix | None, str]]:
    """What is said behind each affix, up to the next one or the others, and before the first."""
    named = affixes_named(clause)
    stops = [start for _, start, _ in named] + [match.start for match in _others_in(clause)]
    if not named or named[0][1] > 0:
        yield None, clause[: named[0][1] if named else len(clause)]
    for affix, _, end in named:
        yield affix, clause[end : min((stop for stop in stops if stop >= end), default=len(clause))]
    for match in _others_in(clause) if named else ():
        yield None, clause[match.start : min((stop for stop in stops if stop > match.start), default=len(clause))]


def _others_in(clause: str) -> tuple[Found[str], ...]:
    return tuple(phrases("the_others").find(clause))


def _of_others(said: str) -> GradeReading | None:
    """The grade of 'All items are GD2, except' and of 'all others GD2'."""
    ends = min((match.start for match in phrases("exceptions").find(said)), default=len(said))
    return _grade_alone(said[:ends]) if joined("all_of_them", "the_others").find(said[:ends]) else None


def _grade_alone(said: str) -> GradeReading | None:
    """The one grade that words name, where these say no more: 'which are CUK', and not 'ship in 4 weeks, CUK 6'."""
    grade = find_grade(said)
    if grade is None or grade.grade is None:
        return None
    named = {word for word, _, _ in tokens_of(grade.words)}
    spans = [(start, end) for word, start, end in tokens_of(said) if word in named]
    return None if rest_of(said, [*spans, *items_named(said)], *_AROUND) else grade


_AROUND = (
    "copula", "articles", "relative_words", "all_of_them", "the_others", "board_goods", "all_goods", "exceptions",
    "those_of", "coating", "stands_for", "goods_meant", "code_affixes.verbs",
)  # fmt: skip


def items_named(clause: str) -> Iterator[tuple[int, int]]:
    """Where a clause calls rows by what their codes are: 'items', 'item numbers', 'Artikel'."""
    roles = (Role.PRODUCT, Role.GRADE, Role.ITEM)
    return (match.span for match in phrases("headers").find(clause) if match.value in roles)
