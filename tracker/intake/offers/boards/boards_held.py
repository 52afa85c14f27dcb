"""Whether what a note says of some boards is said of this one."""

import re
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Protocol, TypeVar

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said
from tracker.intake.values.boards.boards_meant import BoardsMeant, MeasureSpan, boards_meant
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.open_grades import UNCOATED
from tracker.trade.offer import GrammageFrom


class _OfGrades(Protocol):
    """A value that is said of boards of some grades, () for all; `part`: the words that name them."""

    @property
    def grades(self) -> tuple[str, ...]: ...

    @property
    def part(self) -> str: ...


G = TypeVar("G", bound=_OfGrades)


def of_board(said: Sequence[Said[G]], draft: Draft) -> list[Said[G]]:
    """What is said of a board by its grade, or of all beside others named: '10 days' for GC2 beside 'GC1 15 days, all
    others 10 days'. Nothing where no grade is named, or where it is not known whether the board is meant."""
    if not any(one.value.grades for one in said):
        return []
    named = [(one, boards_meant(one.value.part)) for one in said if draft.grade in one.value.grades]
    own = [(one, boards) for one, boards in named if holds_for(boards, draft, unsure=True)]
    if not all(surely_holds_for(boards, draft) for _, boards in own):
        return []
    return [one for one, _ in own] or [one for one in said if not one.value.grades]


@dataclass(frozen=True, slots=True)
class BoardPriced:
    """What tells for which prices a currency or a unit of some boards is: grade, and codes as board is called by them
    in Europe."""

    grade: str | None = None
    codes: tuple[str, ...] = ()

    def is_of(self, grades: Collection[str], words: str) -> bool:
        """Whether it is one of the boards of these grades that words name: of 'GT2' no GD2."""
        return self.grade in grades and not _others(_CODE.findall(words), self.codes)


ANY_BOARD = BoardPriced()


def board_priced(draft: Draft) -> BoardPriced:
    """That of a row's board."""
    return BoardPriced(draft.grade, tuple(_CODE.findall(draft.product)))


def holds_for(boards: BoardsMeant, draft: Draft, *, unsure: bool = False) -> bool:
    """Whether a board is, or for all that is said may be, one of those meant.

    `unsure`: what a row does not say of its coating may be what its own remark means.
    """
    grade = boards.grade
    if grade is not None and other_code(grade.words, draft.product):
        return False
    if grade is not None and grade.grades and draft.grade not in grade.grades:
        return False
    if grade is not None and _is_of_coating(grade):
        coated = _is_coated(draft)
        return unsure if coated is None else coated is grade.coated
    if grade is not None and grade.coated_sides is not None and draft.coated_sides != grade.coated_sides:
        return unsure and draft.coated_sides is None
    return not boards.spans or any(_may_be_within(span, draft) for span in boards.spans)


def _is_of_coating(grade: GradeReading) -> bool:
    """'Coated grades', 'uncoated boards', and not the 'C2S' of some of them."""
    return not grade.grades and grade.coated is not None and not grade.coated_sides


def _is_coated(draft: Draft) -> bool | None:
    """Whether a board is coated, by its sides or its grade; None where neither says so."""
    if draft.coated_sides is not None:
        return draft.coated_sides > 0
    letters = {code[0] for code in _CODE.findall(draft.product)}
    if len(letters) == 1:
        return letters != {_UNCOATED_CODE}
    return draft.grade not in UNCOATED if draft.grade in _BY_GRADE else None


_BY_GRADE = frozenset({"CUK", "UUK", "CRB", "URB"})
"""Folding boxboard and bleached board come with and without coating."""
_UNCOATED_CODE = "U"
"""The first letter of UC, UZ and UD after DIN 19303 (second hand), where G and A are coated."""


def surely_holds_for(boards: BoardsMeant, draft: Draft) -> bool:
    """Whether a board that may be meant by what it measures, or by its coating, is known to be so: its own is said."""
    if boards.grade is not None and _is_of_coating(boards.grade):
        return _is_coated(draft) is boards.grade.coated
    if boards.grade is not None and _seldom_called_so(boards.grade, draft):
        return False
    if boards.grade is not None and _of_unsaid_sides(boards.grade, draft):
        return False
    measures = ((span, measure_of(span, draft)) for span in boards.spans)
    return not boards.spans or any(measure is not None and span.may_hold(measure) for span, measure in measures)


def _of_unsaid_sides(grade: GradeReading, draft: Draft) -> bool:
    """'C2S: $80/ST' names boards by their sides alone, and this one's are not said."""
    return not grade.grades and grade.coated_sides is not None and draft.coated_sides is None


def _seldom_called_so(grade: GradeReading, draft: Draft) -> bool:
    """'Recycled board' may be said of grey board too, which is seldom called so."""
    called = grade.words.casefold() in draft.product.casefold()
    return "recycled" in grade.kinds and draft.grade in UNCOATED and not called


def _may_be_within(span: MeasureSpan, draft: Draft) -> bool:
    """A board whose measure is not said, or only estimated, may be meant as well."""
    measure = measure_of(span, draft)
    return measure is None or span.may_hold(measure)


def measure_of(span: MeasureSpan, draft: Draft) -> Decimal | None:
    """What a board measures of that of which a note speaks; None where it is not said, or only estimated."""
    estimated = draft.grammage_from is GrammageFrom.ESTIMATED
    return draft.caliper_um if span.of_caliper else None if estimated else draft.grammage_gsm


_CODE = re.compile(r"(?<!\w)([A-Z]{2}[1-4]|G[CDGKNTZ]|[AU][CDTZ])(?!\w)")
"""What European boards are called by: coating and furnish in two letters, the back by a figure (GC1, GT2, GD3)."""
_LETTERS = 2


def other_code(meant: str, product: str) -> bool:
    """A note about GT2 says nothing of GD2, though both are of one grade here; one about GT does of GT2 and GT4."""
    return _others(_CODE.findall(meant), _CODE.findall(product))


def _others(of_note: Sequence[str], own: Sequence[str]) -> bool:
    return bool(of_note and own) and not any(_are_one(one, other) for one in of_note for other in own)


def _are_one(one: str, other: str) -> bool:
    short = min(len(one), len(other)) == _LETTERS
    return one == other or (short and one[:_LETTERS] == other[:_LETTERS])
