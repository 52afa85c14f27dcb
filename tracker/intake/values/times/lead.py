"""Lead times in calendar days: a week is 7, n business days are ceil(n*7/5), from stock is 0.

What is not plain stays unread.
"""

import re
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from functools import cache, lru_cache
from math import ceil

from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.times.counted_from_order import with_short_forms
from tracker.intake.values.times.lasting import lasting
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.likeness import near_miss
from tracker.intake.words.lists import joined, phrases, words
from tracker.intake.words.phrases import Found, Phrases, Token, blanked, outside


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
    def part(self) -> str:
        """The words that name its grades."""
        return self.words

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
def lead_phrases() -> Phrases[str]:
    about = {"filler": tuple(word for group in words("about").values() for word in group)}
    return Phrases({key: found + about.get(key, ()) for key, found in words("lead").items()})


_COUNT = re.compile(r"\d+(?:[.,]\d+)?")
_SIGNS = ("/", "-", "–")
_MOST_COUNTED = 400
"""More days than a year's are no lead time (our choice)."""


@lru_cache(maxsize=16384)
def lead_text(text: str, unit: LeadUnit | None = None) -> LeadTime | None:
    """A lead-time cell: '4-6 wks', '10 business days', 'ab Lager', or a bare number in its header's unit.

    None where anything in it is not understood, where a range runs backwards, and for months, which have no fixed
    length.
    """
    stripped = text.strip()
    if lasting(stripped):
        return None
    said = _heard(with_short_forms(_without_other_language(times_in_figures(stripped))))
    if not stripped or said is None:
        return None
    counts, units, stock, upper = said.counts, said.units, said.stock, said.upper
    if "month" in units or len(units) > 1:
        return None
    if not counts:
        return LeadTime(0, 0, stripped) if stock and not units and not _tells_from_where(stripped) else None
    known = LeadUnit(units[0]) if units else unit
    # 'Within 4 weeks' says the longest and leaves the shortest open; 'in stock, ready in 2 days' is ready in 2 days.
    if (stock and not said.ready) or known is None or len(counts) > 2 or upper:
        return None
    days = [calendar_days(count, known) for count in counts]
    return LeadTime(days[0], days[-1], stripped) if days[0] <= days[-1] else None


def _tells_from_where(text: str) -> bool:
    """'Direkt ab Werk' is no stock; 'direkt ab Lager' is."""
    straight = [match for match in phrases("at_once").find(text) if match.value == "straight"]
    stock = [match for match in lead_phrases().find(text) if match.value == "stock"]
    return bool(straight) and not outside(stock, straight)


def _heard(text: str) -> "_Spoken | None":
    """What a text says of a time, where that is all it says; '4 weks' and '3 Wohcen' as they are meant."""
    for each in dict.fromkeys((text, _BEHIND_A_COUNT.sub(_spelt, text))):
        said = _Spoken(each)
        if said.is_all():
            return said
    return None


_BEHIND_A_COUNT = re.compile(r"(?<=\d)(\s*)([^\W\d_]{4,})")


def _spelt(match: re.Match[str]) -> str:
    meant = near_miss(match[2], "lead")
    if phrases("lead").find(match[2]) or len(meant) != 1 or meant[0] not in set(LeadUnit):
        return match[0]
    return f"{match[1]}{words('lead')[meant[0]][0]}"


def _without_other_language(text: str) -> str:
    """'3-4 viikkoa / weeks' -> '3-4 weeks': the unit, behind the same in a language of no list here; '1 run / week'
    says how often."""
    match = _UNIT_AGAIN.fullmatch(text)
    if match is None or lead_unit(match["unit"]) is None or lead_phrases().find(match["word"]):
        return text
    if any(phrases(known).find(match["word"]) for known in ("bracket", "basis", "forms")):
        return text
    return f"{match['counts']} {match['unit']}"


_UNIT_AGAIN = re.compile(
    r"(?P<counts>[^/()]*\d ?[-–] ?\d+) ?(?P<word>[^\W\d_]{3,})(?: ?/ ?| ?\()(?P<unit>[^\W\d_][^/()\d]*)\)?"
)


class _Spoken:
    """What a text says of a time, taken up word by word: its numbers, their units, whether stock, whether a bare
    limit and whether when it is ready is spoken of."""

    def __init__(self, text: str) -> None:
        self.counts: list[Decimal] = []
        self.units: list[str] = []
        self.stock = self.upper = self.ready = False
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
        if (
            len(readings) != 1
            or readings[0].value > _MOST_COUNTED
            or self._apart
            or not self._is_joined(number.start())
        ):
            return False
        self.counts.append(readings[0].value)
        self._reached, self._place = number.end(), self._place + 1
        return True

    def _is_joined(self, start: int) -> bool:
        """The second count of '3 weeks to 4 weeks' is; that of '3 weeks, normally 5 weeks' is another time."""
        between = self._folded[self._reached : start]
        if not self.counts or not self.units:
            return True
        units = joined(*(f"lead.{unit}" for unit in LeadUnit), "range")
        rest = blanked(between, (match.span for match in units.find(between)))
        return not any(map(str.isalnum, rest)) and not {",", ";", "+"} & set(rest)

    def _adds(self) -> bool:
        """The plus of '3+ weeks' and '+ 2 weeks'; that of '+/-' adds nothing."""
        return self._word(self._place) == "+" and self._word(self._place + 1) not in _SIGNS

    def _passes_range(self) -> bool:
        """The word between the two numbers of '4 to 6 weeks'."""
        between = phrases("range").at(self._found, self._place) if len(self.counts) == 1 and not self.units else None
        if between is None or not self._word(between.after)[:1].isdigit():
            return False
        self._place = between.after
        return True

    def _takes_phrase(self) -> bool:
        match = lead_phrases().at(self._found, self._place)
        if match is None:
            if self._adds():
                return False
            self._place += 1
            return self._word(self._place - 1) in "()/+,;:~≈±*…!"
        ready = match.value == "stock" and self._says_when(match)
        self.ready |= ready
        self.stock |= match.value == "stock" and not ready
        self.upper |= match.value == "upper"
        self._apart |= match.value == "filler" and bool(self.counts) and not self.units
        if match.value not in ("stock", "upper", "filler"):
            if match.value == LeadUnit.WEEK and not self.counts and self._word(match.after) not in ("", ":", ")", "]"):
                # 'Week 33' is a week of the calendar; 'weeks: 4' counts them.
                return False
            if not self.counts and match.end - match.start == 1 and self._word(match.after)[:1].isdigit():
                # 'D1' is a code; '1 d' and 'd: 1' count days.
                return False
            if match.value not in self.units:
                self.units.append(match.value)
        self._place = match.after
        return True

    def _says_when(self, match: Found[str]) -> bool:
        """The 'ready' of 'ready 20 working days after order'."""
        said = self._folded[match.start : match.end]
        return self._word(match.after)[:1].isdigit() and phrases("ready_in").whole(said) is not None

    def _word(self, place: int) -> str:
        """'' behind the last."""
        return self._found[place][0] if place < len(self._found) else ""


@lru_cache(maxsize=8192)
def counts_plain_days(text: str) -> int | None:
    """How many days a text that is a lead time otherwise counts; None for weeks, working days, stock and the rest.

    By themselves such days may as well be those of payment.
    """
    said = lead_text(text)
    return said.high if said is not None and lead_unit(text) is LeadUnit.DAY else None
