"""By what a sentence says goods to be sold: 'Rollen berechnen wir je Tonne', 'we sell chipboard by the tonne'."""

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import Span, rest_of
from tracker.intake.values.prices.basis import basis_span, find_basis
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import between, blanked, tokens_of

_GOODS = ("forms", "all_goods", "board_goods")
_NO_MORE = ("sold_by_unit", "copula", "articles", "per", "all_of_them", "ton_definitions", *_GOODS)


def is_sold_by_unit(clause: str) -> bool:
    """Whether a unit stands with goods and a verb for selling them, and nothing else up to the comma or 'and'; 'freight
    is charged per tonne' is of something else."""
    pieces = [piece for part in between(clause, phrases("and_words").find(clause)) for piece in COMMA.split(part)]
    return any(map(_tells_a_unit, pieces)) and not any(map(_leaves_a_unit_open, pieces))


def _tells_a_unit(piece: str) -> bool:
    unit, span = find_basis(piece), basis_span(piece)
    if unit is None or span is None or not unit.bases or not phrases("sold_by_unit").find(piece):
        return False
    found = tokens_of(piece)
    per = (found[span[0]][1], found[span[1] - 1][2])
    goods = _goods(blanked(piece, [per]))
    return bool(goods) and not rest_of(piece, [per, *goods], *_NO_MORE)


def _leaves_a_unit_open(piece: str) -> bool:
    """'Les feuilles au mille' beside reels by the tonne: a form that is sold by something else."""
    unit = find_basis(piece)
    told = unit is not None and bool(unit.bases)
    return bool(phrases("forms").find(piece)) and not told and not phrases("no_price").find(piece)


def _goods(piece: str) -> list[Span]:
    """Where a part names what is sold."""
    named = [match.span for section in _GOODS for match in phrases(section).find(piece)]
    grade = find_grade(piece)
    start = piece.find(grade.words) if grade is not None and grade.words else -1
    return named if grade is None or start < 0 else [*named, (start, start + len(grade.words))]
