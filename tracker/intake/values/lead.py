"""Lead times in calendar days: a week is 7, n business days are ceil(n*7/5), from stock is 0.

What is not plain stays unread.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import StrEnum
from functools import cache, lru_cache
from math import ceil

from tracker.intake.values.clauses import clauses
from tracker.intake.values.currency import find_currencies
from tracker.intake.values.grade import find_grade
from tracker.intake.values.numbers import number_readings
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Phrases, Token


class LeadUnit(StrEnum):
    DAY = "day"
    WORKING_DAY = "working_day"
    WEEK = "week"


@dataclass(frozen=True, slots=True)
class LeadTime:
    """Shortest and longest in calendar days. `grades`: the only ones that it is said of, () for all."""

    low: int
    high: int
    words: str
    grades: tuple[str, ...] = ()

    @property
    def days(self) -> tuple[int, int]:
        return self.low, self.high


def calendar_days(count: Decimal, unit: LeadUnit) -> int:
    """So many units in whole calendar days, rounded up."""
    if unit is LeadUnit.WEEK:
        return ceil(count * 7)
    return ceil(count * 7 / 5) if unit is LeadUnit.WORKING_DAY else ceil(count)


def lead_unit(text: str) -> LeadUnit | None:
    """The unit of time that a header names: 'Lead time (weeks)', 'LT, wks'. None for none, two, or months."""
    found = {
        match.value for match in phrases("lead").find(text) if match.value in ("day", "working_day", "week", "month")
    }
    return LeadUnit(found.pop()) if len(found) == 1 and "month" not in found else None


@cache
def _lead_phrases() -> Phrases[str]:
    about = {"filler": tuple(word for group in words("about").values() for word in group)}
    return Phrases({key: found + about.get(key, ()) for key, found in words("lead").items()})


_COUNT = re.compile(r"\d+(?:[.,]\d+)?")
_MOST_COUNTED = 400
"""More days than a year's are no lead time (our choice)."""


@lru_cache(maxsize=16384)
def lead_text(text: str, unit: LeadUnit | None = None) -> LeadTime | None:
    """A lead-time cell: '4-6 wks', '10 business days', 'ab Lager', or a bare number in its header's unit.

    None where anything in it is not understood, where a range runs backwards, and for months, which have no fixed
    length.
    """
    stripped = text.strip()
    said = _Spoken(in_figures(stripped))
    if not stripped or not said.is_all():
        return None
    counts, units, stock, upper = said.counts, said.units, said.stock, said.upper
    if "month" in units or len(units) > 1:
        return None
    if not counts:
        return LeadTime(0, 0, stripped) if stock and not units else None
    known = LeadUnit(units[0]) if units else unit
    # 'Within 4 weeks' says the longest and leaves the shortest open.
    if stock or known is None or len(counts) > 2 or upper:
        return None
    days = [calendar_days(count, known) for count in counts]
    return LeadTime(days[0], days[-1], stripped) if days[0] <= days[-1] else None


def in_figures(text: str) -> str:
    """'three weeks' -> '3 weeks'; other words stay as they are."""
    return _count_words().sub(lambda match: _figures()[match.group().lower()], text)


@cache
def _figures() -> dict[str, str]:
    return {word.lower(): figure for figure, group in words("count_words").items() for word in group}


@cache
def _count_words() -> re.Pattern[str]:
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, _figures()))})\b(?=\W+[^\W\d])", re.IGNORECASE)


class _Spoken:
    """What a text says of a time, taken up word by word: its numbers, their units, whether stock and whether a bare
    limit is spoken of."""

    def __init__(self, text: str) -> None:
        self.counts: list[Decimal] = []
        self.units: list[str] = []
        self.stock = self.upper = False
        self._apart = False
        """Other words stand behind the first number: a second one is not the end of its range."""
        self._folded = fold(text)
        self._found: list[Token] = tokens(self._folded)
        self._place = self._reached = 0

    def is_all(self) -> bool:
        """Takes up the whole text; False where something else is spoken of."""
        while self._place < len(self._found):
            start = self._found[self._place][1]
            number = _COUNT.match(self._folded, start)
            if start < self._reached:
                self._place += 1
            elif number is not None:
                if not self._takes_count(number):
                    return False
            elif not (self._passes_range() or self._takes_phrase()):
                return False
        return True

    def _takes_count(self, number: re.Match[str]) -> bool:
        readings = number_readings(number.group())
        if len(readings) != 1 or readings[0].value > _MOST_COUNTED or self._apart:
            return False
        self.counts.append(readings[0].value)
        self._reached, self._place = number.end(), self._place + 1
        return True

    def _passes_range(self) -> bool:
        """The word between the two numbers of '4 to 6 weeks'."""
        between = phrases("range").at(self._found, self._place) if len(self.counts) == 1 and not self.units else None
        if between is None or not self._word(between.after)[:1].isdigit():
            return False
        self._place = between.after
        return True

    def _takes_phrase(self) -> bool:
        match = _lead_phrases().at(self._found, self._place)
        if match is None:
            self._place += 1
            return self._word(self._place - 1) in "()/+,;:~≈±*…!"
        self.stock |= match.value == "stock"
        self.upper |= match.value == "upper"
        self._apart |= match.value == "filler" and bool(self.counts) and not self.units
        if match.value not in ("stock", "upper", "filler"):
            if match.value == LeadUnit.WEEK and not self.counts and self._word(match.after) not in ("", ":", ")", "]"):
                # 'Week 33' is a week of the calendar; 'weeks: 4' counts them.
                return False
            if match.value not in self.units:
                self.units.append(match.value)
        self._place = match.after
        return True

    def _word(self, place: int) -> str:
        """'' behind the last."""
        return self._found[place][0] if place < len(self._found) else ""


@lru_cache(maxsize=8192)
def leads_by_grade(text: str) -> tuple[LeadTime, ...]:
    """The lead times that a sentence gives grade by grade: 'Lead times: SBS 4-5 weeks; CRB 3 weeks'.

    () where it gives one for all, or leaves open for which grades one of them holds.
    """
    if not phrases("lead_topic").find(text):
        return ()
    found: list[LeadTime] = []
    for part in (part for clause in clauses(text) for part in _COMMA.split(clause)):
        leads = {lead.days: lead for lead in (*_spans(part), *_from_stock(part))}
        named = find_grade(part)
        if not leads or phrases("not_lead").find(part):
            continue
        if len(leads) > 1 or named is None or not named.grades:
            return ()
        (lead,) = leads.values()
        found.append(replace(lead, grades=named.grades, words=part.strip()))
    return tuple(found)


@lru_cache(maxsize=8192)
def find_lead(text: str) -> LeadTime | None:
    """The lead time that a sentence states: 'Lead time 5 weeks after receipt of order', 'Dispatch 5-7 working days.'

    Only where a clause speaks of lead time, dispatch or delivery; None where two clauses disagree.
    """
    found: dict[tuple[int, int], LeadTime] = {}
    for clause in clauses(text):
        lead = _clause_lead(clause)
        for one in (lead,) if lead is not None else _carried_on(clause) if found else ():
            found[one.days] = one
    return next(iter(found.values())) if len(found) == 1 else None


@lru_cache(maxsize=8192)
def lead_by_itself(text: str) -> LeadTime | None:
    """The lead time that stands alone between commas: 'FOB mill, 4-6 weeks', 'Delivered, 10 working days ARO'.

    Only among words for delivery or money; None for days without more, which may be those of payment, and beside
    words for validity. A single word such as 'stock' may be said of anything.
    """
    terms = (clause for clause in clauses(text) if find_currencies(clause) or phrases("delivery").find(clause))
    own = (part for clause in terms if not phrases("valid").find(clause) for part in _COMMA.split(clause))
    found = {
        said.days: said
        for part in own
        if (said := lead_text(part.strip(" :."))) is not None and (said.high > 0 or " " in said.words)
    }
    said = next(iter(found.values())) if len(found) == 1 else None
    plain_days = said is not None and lead_unit(said.words) is LeadUnit.DAY
    return None if plain_days else said


@lru_cache(maxsize=8192)
def lead_among(text: str) -> LeadTime | None:
    """The one lead time between the commas of a cell about delivery: 'frei Haus, 4 Wochen', 'DAP, 10 days'."""
    found = {lead.days: lead for part in _COMMA.split(text) if (lead := lead_text(part.strip())) is not None}
    return next(iter(found.values())) if len(found) == 1 else None


def _carried_on(clause: str) -> Iterable[LeadTime]:
    """'Lead time: rolls 3 weeks; sheets 5 weeks': a few words behind the first clause, on the same subject."""
    return () if len(clause) > _FEW_WORDS or phrases("not_lead").find(clause) else _spans(clause)


_FEW_WORDS = 40


@cache
def _span() -> re.Pattern[str]:
    """'3 weeks', '3-4 weeks' and '3 y 4 semanas', with the word behind."""
    between = "|".join(re.escape(fold(word)) for group in words("range").values() for word in group)
    figure = r"\d+(?:[.,]\d+)?"
    return re.compile(rf"{figure}(?:\s*(?:-|\b(?:{between})\b)\s*{figure})?\s*[^\W\d_]+\.?(?:\s+[^\W\d_]+)?")


_COMMA = re.compile(r",(?!\d)")


def _clause_lead(clause: str) -> LeadTime | None:
    """A clause's one lead time. Parts between commas that speak of payment or validity are left out."""
    topics = phrases("lead_topic").find(clause)
    if not topics:
        return None
    rest = clause[topics[-1].end :].strip(" :,-–=")
    whole = lead_text(rest) if rest else None
    if whole is not None:
        return whole
    parts = [part for part in _COMMA.split(clause) if not phrases("not_lead").find(part)]
    found = {lead.days: lead for part in parts for lead in _spans(part)}
    return next(iter(found.values())) if len(found) == 1 else None


def _spans(part: str) -> Iterable[LeadTime]:
    part = in_figures(part)
    for match in _span().finditer(fold(part)):
        piece = part[match.start() : match.end()]
        # The word behind the unit may or may not belong to it ('5 working days' / '4 weeks for').
        lead = lead_text(piece) or lead_text(piece.rsplit(" ", 1)[0])
        if lead is not None:
            yield lead
    if phrases("lead_topic").find(part):
        yield from _from_stock(part)


def _from_stock(part: str) -> Iterable[LeadTime]:
    """'Ab Lager' and 'sofort'; the store of 'frei Lager Kunde' is where the board goes to."""
    said = [part[match.start : match.end] for match in _lead_phrases().find(part) if match.value == "stock"]
    if any(phrases("stores").whole(words) is None for words in said):
        yield LeadTime(0, 0, part.strip())


@lru_cache(maxsize=4096)
def lead_in_remark(text: str) -> LeadTime | None:
    """The one lead time among a remark's parts ('3 weeks, min 2 t'): weeks, or stock; '30 days' by itself may be terms
    of payment."""
    parts = (part.strip() for clause in clauses(text) for part in _COMMA.split(clause))
    found = {said.days: said for part in parts if (said := lead_text(part)) is not None}
    said = next(iter(found.values())) if len(found) == 1 else None
    counted_in_days = said is not None and said.days[1] > 0 and lead_unit(said.words) is not LeadUnit.WEEK
    return None if counted_in_days else said
