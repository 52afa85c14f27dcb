"""Whether a board is one of those that a note tells of: surely, surely not, or perhaps."""

import re
from collections.abc import Iterable
from decimal import Decimal

from tracker.intake.offers.boards.boards_held import measure_of, other_code
from tracker.intake.offers.draft import Draft
from tracker.intake.values.boards.boards_meant import MeasureSpan
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.boards.some_boards import SomeBoards
from tracker.intake.words.lists import phrases

_CODED = re.compile(r"(?<!\w)[A-Z]{2}[1-4](?!\w)")
_UNCOATED = ("URB", "UUK")
_COATED = ("CRB", "CUK")


def is_one_of(some: SomeBoards, draft: Draft) -> bool | None:
    """None where it is not known."""
    named = [_of_grade(some.boards.grade, draft), _within(some.boards.spans, draft)]
    if some.either and False in named:
        named = [None if set(named) != {False} else False]
    told = [*named, _is_coated(some, draft), _of_size(some, draft), _of_form(some, draft), _beside(some, draft)]
    return _all(told)


def _all(told: Iterable[bool | None]) -> bool | None:
    known = set(told)
    return False if False in known else None if None in known else True


def _of_grade(grade: GradeReading | None, draft: Draft) -> bool | None:
    if grade is None:
        return True
    if grade.grades:
        if draft.grade is None:
            return None
        if draft.grade not in grade.grades or other_code(grade.words, draft.product):
            return False
        if _CODED.search(grade.words) and not _CODED.search(draft.product):
            # A note on GC1 says nothing certain of 'folding boxboard'.
            return None
    return _has_sides(grade.coated_sides, draft)


def _has_sides(sides: int | None, draft: Draft) -> bool | None:
    if sides is None or sides == draft.coated_sides:
        return True
    if draft.coated_sides is not None:
        return False
    coated = _coated(draft)
    if coated is None:
        return None
    if sides:
        return None if coated else False
    return not coated


def _coated(draft: Draft) -> bool | None:
    """Whether it is coated, as it says itself or by its grade."""
    if draft.coated_sides is not None:
        return draft.coated_sides > 0
    return draft.grade in _COATED if draft.grade in (*_COATED, *_UNCOATED) else None


def _is_coated(some: SomeBoards, draft: Draft) -> bool | None:
    coated = _coated(draft)
    return True if some.coated is None else None if coated is None else coated is some.coated


def _within(spans: tuple[MeasureSpan, ...], draft: Draft) -> bool | None:
    if not spans:
        return True
    measures = [(span, measure_of(span, draft)) for span in spans]
    if any(measure is not None and span.may_hold(measure) for span, measure in measures):
        return True
    return None if any(measure is None for _, measure in measures) else False


def _of_size(some: SomeBoards, draft: Draft) -> bool | None:
    if not some.sizes:
        return True
    own = draft.sheet_mm
    if own is None:
        return None
    return any(set(own) == set(size) for size in some.sizes)


def _of_form(some: SomeBoards, draft: Draft) -> bool | None:
    if not some.form:
        return True
    named = {match.value for match in phrases("forms_named").find(f"{draft.product} {' '.join(draft.parts)}")}
    if draft.sheet_mm is not None:
        named.add("sheet")
    return some.form in named if len(named) == 1 else None


def _beside(some: SomeBoards, draft: Draft) -> bool | None:
    """Whether it is none of those told before, or is heavier or lighter than they are."""
    if not some.beside:
        return True
    if not some.told:
        return None
    if some.beside == "others":
        return _all(_not(is_one_of(one, draft)) for one in some.told)
    spans = some.told[-1].boards.spans
    return _past(spans, draft, heavier=some.beside == "heavier") if len(spans) > 0 else None


def _not(held: bool | None) -> bool | None:
    return None if held is None else not held


def _past(spans: tuple[MeasureSpan, ...], draft: Draft, *, heavier: bool) -> bool | None:
    """'Heavier' than weights up to 250 g/m² is more than that; than those from 350 g/m² on, nothing."""
    held = _within(spans, draft)
    if held is not False:
        return _not(held)
    told = []
    for span in spans:
        ends: tuple[Decimal, ...] = tuple(Decimal(float(end)) for end in (span.high if heavier else span.low))
        measure = measure_of(span, draft)
        if not ends or measure is None:
            return None
        told.append(measure > max(ends) if heavier else measure < min(ends))
    return told[0] if len(set(told)) == 1 else None
