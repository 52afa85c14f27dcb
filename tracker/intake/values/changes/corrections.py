"""Notes that correct what a list says: '921 should read 912', and what holds 'whatever is said above'."""

import re
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.boards.grade import find_grade, names_grade
from tracker.intake.values.figures.numbers import SPACED_NUMBER, number_readings
from tracker.intake.values.figures.sheetsize import without_sheet_sizes
from tracker.intake.values.times.dates import without_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of

_FIGURE = re.compile(SPACED_NUMBER)
_CODE = re.compile(r"(?<![^\W\d_])([A-Z]{2})\d(?!\d|[.,]\d)")
"""The figure of 'GC1' is no price, nor part of the one in 'GC1 921'."""
_BEFORE_MONEY = 4
"""Letters and signs before a figure, or around the words between two: 'EUR 912', '£ '."""


@lru_cache(maxsize=8192)
def misprinted(clause: str) -> tuple[frozenset[Decimal], ...]:
    """What the figures may be of which one is printed for the other: of '921 should read 912' both, of 'the correct
    price is 912' the one; none in all other clauses.

    'Errors and misprints excepted' corrects nothing, nor do '6 weeks instead of 4' a price.
    """
    clause = _CODE.sub(r"\1 ", clause)
    for said in phrases("corrections").find(clause):
        before = [found for found in _FIGURE.finditer(clause) if found.end() <= said.start]
        behind = next((found for found in _FIGURE.finditer(clause) if found.start() >= said.end), None)
        if said.value == _LABEL or behind is None or behind.start() - said.end > _BEFORE_MONEY:
            continue
        beside = bool(before) and said.start - before[-1].end() <= _BEFORE_MONEY
        if not _is_bare(clause[behind.end() :]) or (said.value == "between" and not beside):
            continue
        figures = [behind.group(), *(found.group() for found in before[-1:])]
        # 'It should read 1,118.00, not 1,181.00' names what is printed behind it.
        printed = _one_for_another(clause[said.end :]) if not before else ()
        return (*map(_values, figures), *printed[1:])
    return _one_for_another(clause)


def _one_for_another(clause: str) -> tuple[frozenset[Decimal], ...]:
    """Both figures of '1,118.00, not 1,181.00' and 'muss 1.118,00 lauten, nicht 1.181,00': what stands between them is
    few words, and they are of a height."""
    for said in phrases("instead_of").find(clause):
        before = [found for found in _FIGURE.finditer(clause) if found.end() <= said.start][-1:]
        behind = next((found for found in _FIGURE.finditer(clause) if found.start() >= said.end), None)
        if not before or behind is None or behind.start() - said.end > _BEFORE_MONEY:
            continue
        between = clause[before[0].end() : said.start]
        bare = _is_bare(between) and _is_bare(clause[behind.end() :])
        one, other = _values(before[0].group()), _values(behind.group())
        if bare and len(between) <= _BETWEEN and any(a != b and a < 2 * b and b < 2 * a for a in one for b in other):
            return one, other
    return _in_turn(clause)


def _in_turn(clause: str) -> tuple[frozenset[Decimal], ...]:
    """The figures of 'statt 1200 richtig 1210' and 'instead of 1,200 read 1,210', the one that is meant first."""
    for said in phrases("instead_of").find(clause):
        behind = [found for found in _FIGURE.finditer(clause) if found.start() >= said.end][:2]
        if len(behind) < 2 or behind[0].start() - said.end > _BEFORE_MONEY:
            continue
        wrong, meant = behind
        between = clause[wrong.end() : meant.start()]
        bare = _is_bare(between) and _is_bare(clause[meant.end() :]) and len(between) <= _BETWEEN
        long = all(sum(map(str.isdigit, found.group())) >= _FEWEST_DIGITS for found in behind)
        one, other = _values(meant.group()), _values(wrong.group())
        if bare and long and any(a != b and a < 2 * b and b < 2 * a for a in one for b in other):
            return one, other
    return ()


_BETWEEN = 16


def _values(figure: str) -> frozenset[Decimal]:
    return frozenset(reading.value for reading in number_readings(figure))


@lru_cache(maxsize=8192)
def says_misprinted(clause: str) -> bool:
    """Whether a part sentence about a board says that its price is printed wrongly: 'the price in the table is a typing
    error', 'please correct to 1,118.00'; not 'errors and misprints excepted', nor what was wrong in an earlier list."""
    if not phrases("misprints").find(clause) or phrases("errors_reserved").find(clause):
        return False
    return bool(phrases("price_words").find(clause)) or _names_money(clause)


def labelled_as_corrected(clause: str) -> bool:
    """Whether a part sentence that names a figure like a price begins or ends with the word for a correction:
    'Correction: SBS $1,210', 'SBS 1,210 (corrected)'; not that of a charge, a size or a smallest order."""
    labels = [found for found in phrases("corrections").find(clause) if found.value == _LABEL]
    at_an_end = any(found.first == 0 or not any(map(str.isalnum, clause[found.end :])) for found in labels)
    others = any(phrases(section).find(clause) for section in ("charges", "minimum", "contact"))
    return at_an_end and not others and _names_money(without_sheet_sizes(clause))


_LABEL = "label"


def _names_money(clause: str) -> bool:
    """A figure like a price, bare: no year, no share and nothing counted in weeks or micrometres."""
    plain = without_dates(_CODE.sub(r"\1 ", clause))
    bare = [found.group() for found in _FIGURE.finditer(plain) if _is_bare(plain[found.end() :])]
    return any(sum(map(str.isdigit, figure)) >= _FEWEST_DIGITS and not _YEAR.fullmatch(figure) for figure in bare)


_FEWEST_DIGITS = 3
_YEAR = re.compile(r"\s*(?:19|20)\d\d\s*")


def _is_bare(behind: str) -> bool:
    """Not '6 weeks', '18 pt', '5 t' or '250 g/m²': what these correct is no price."""
    ahead = behind[:_WORD_LENGTH].lstrip()
    units = ("lead", "caliper_units", "weight_units", "months", "length_units")
    # The 'for' of 'instead of 1200 read 1210 for SBS' is a small word beside a time, and none itself.
    named = (found for section in units for found in phrases(section).find(ahead) if found.value != "filler")
    return not ahead.startswith("%") and not any(found.start == 0 for found in named)


_WORD_LENGTH = 16


@lru_cache(maxsize=8192)
def overrides(text: str) -> bool:
    """Whether a note says that what it states holds instead of what stands elsewhere: 'whatever is said above'."""
    return any(match.value != _NOW for match in phrases("overrides").find(text))


@lru_cache(maxsize=8192)
def may_hold_now(text: str) -> bool:
    """Whether a note says that something is so now, of which elsewhere something else is said: 'now 5 weeks'."""
    return any(match.value == _NOW for match in phrases("overrides").find(text))


_NOW = "now"
_OF_TIMES = ("overrides", "lead_topic", "lead", "about", "range", "and", "articles", "copula", "generic_names", "grade")


def holds_now(clause: str, *, of_its_board: bool) -> bool:
    """Whether a part sentence says of boards by their grade what is so now, without any condition. `of_its_board`: the
    words that name them were left out of it."""
    return (of_its_board or names_grade(clause)) and may_hold_now(clause) and _is_all_of_a_time(clause)


@lru_cache(maxsize=4096)
def _is_all_of_a_time(text: str) -> bool:
    """Whether a part sentence says nothing beside boards and how long they take: 'CRB is now 9 weeks', but not 'for new
    customers' or 'from our depot'."""
    found = tokens_of(text)
    known: set[int] = set()
    for section in _OF_TIMES:
        known.update(*(range(match.first, match.after) for match in phrases(section).among(found)))
    grade = find_grade(text)
    named = {word for word, *_ in tokens_of(grade.words)} if grade is not None else set()
    heads = (match for match in phrases("headers").among(found) if match.value in ("lead_time", "product", "grade"))
    known.update(*(range(match.first, match.after) for match in heads))
    return not any(
        word.isalpha() and place not in known and word not in named for place, (word, *_) in enumerate(found)
    )
