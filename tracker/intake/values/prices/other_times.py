"""Units that prices had, or will have one day: 'CRB was per tonne until 2025', 'table B changes to DKK in January'."""

import re
from collections.abc import Iterator

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.rest import Span, rest_of
from tracker.intake.values.prices.several_bases import bases_with_places
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

_STOPS = re.compile(r",(?!\d)|[;()]")


def without_other_times(clause: str) -> str:
    """A clause with blanks for the units that it gives prices of another time, each with the word that says so."""
    spans = tuple(_of_other_times(clause))
    return blanked(clause, spans) if spans else clause


def _of_other_times(clause: str) -> Iterator[Span]:
    led = [*_leads(clause)]
    units = sorted(_units(clause)) if led else []
    for lead in led:
        unit = next((span for span in units if span[0] >= lead.end), None)
        if unit is not None and not _says_more(clause[lead.end : unit[0]]):
            yield lead.start, unit[1]


def _leads(clause: str) -> Iterator[Found[str]]:
    """The words that lead to such a unit: 'was', 'formerly', 'will change to'."""
    yield from phrases("was_then").find(clause)
    yield from (one for one in phrases("present_times").find(clause) if one.value == "past")
    yield from phrases("changes_over").find(clause)


def _units(clause: str) -> list[Span]:
    money = [one.span for one in phrases("currency").find(clause)]
    return [*money, *((start, end) for _, start, end in bases_with_places(clause))]


def _says_more(between: str) -> bool:
    """'Were last reviewed in May and are in EUR' says what prices are in now; a day leads to what they were then."""
    if _STOPS.search(between):
        return True
    dates = [(one.start, one.end) for one in find_dates(between)]
    grade = find_grade(between)
    for words in grade.words.split() if grade is not None else ():
        # 'Bis 2025 war GD2 je Tonne'.
        between = between.replace(words, " " * len(words), 1)
    left = rest_of(between, dates, "until", "present_times", "sold_by_unit", "unit_words", "price_words", "per")
    return any(map(str.isalpha, left))
