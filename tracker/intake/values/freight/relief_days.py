"""From when to when a charge is not charged: 'waived from 1 July 2026', 'suspended until 31 December 2025'."""

import re
from dataclasses import dataclass
from datetime import date

from tracker.intake.values.times.dates import DateOrder, DateReading, find_dates, ordered
from tracker.intake.words.lists import joined, phrases, words
from tracker.intake.words.phrases import Found


@dataclass(frozen=True, slots=True)
class ReliefDays:
    """The days that a text gives a relief; `year`: the one that it is of. `ahead`: a word leads to its beginning, so
    that without the day of the list it may be still to come."""

    begins: DateReading | None = None
    ends: DateReading | None = None
    year: int | None = None
    ahead: bool = False

    def to_come(self, day: date | None, order: DateOrder | None) -> bool:
        """Whether it begins after a day; a day that may be read both ways may come as well."""
        if day is None:
            return self.ahead or self.year is not None
        begins = ordered(self.begins, order) if self.begins is not None else ()
        return any(one > day for one in begins) or (self.year is not None and self.year > day.year)

    def over(self, day: date | None, order: DateOrder | None) -> bool:
        """Whether it has ended before a day, for certain."""
        if day is None:
            return False
        ends = ordered(self.ends, order) if self.ends is not None else ()
        return (bool(ends) and all(one < day for one in ends)) or (self.year is not None and self.year < day.year)


def relief_days(part: str, said: Found[str]) -> ReliefDays | None:
    """The days in a part of a sentence that says that a charge is not charged, or has ended; None without any."""
    has_ended = said.value == "ended"
    begins, ends, ahead = None, None, False
    for found in find_dates(part):
        before = part[: found.start].rstrip(" :")
        if _led(before, "until"):
            ends = ends or found
        elif any(phrases("already_since").whole(said) for said in _leading(before, "since")):
            continue
        elif _led(before, "since") or _led(before, "relief_begins"):
            begins, ahead = begins or found, True
        elif has_ended:
            # 'Ended 1 March 2026', 'was dropped in June 2026'.
            begins = begins or found
    if begins is None and (month := _month_led_to(part)) is not None:
        begins, ahead = month, True
    # 'The surcharge that we brought in during 2022 has ended' tells of its beginning.
    during = _DURING.search(part, said.end) or _DURING.match(part)
    year = int(during[1]) if during is not None else None
    ahead = ahead and not (has_ended and begins is not None and _happened(part, begins))
    return ReliefDays(begins, ends, year, ahead) if (begins or ends or year) is not None else None


def _month_led_to(part: str) -> DateReading | None:
    """The first day of the month in 'dropped from January 2027'."""
    for led in joined("since", "since_months").find(part):
        month = next((one for one in phrases("months").find(part) if not part[led.end : one.start].strip()), None)
        year = _YEAR_NEXT.match(part, month.end) if month is not None else None
        if month is not None and year is not None and not phrases("already_since").whole(part[led.start : led.end]):
            first = date(int(year[1]), int(month.value), 1)
            return DateReading((first,), month.start, year.end(), part[month.start : year.end()], numeric=False)
    return None


_YEAR_NEXT = re.compile(r"\W{0,3}(?:de\s|del\s)?(20\d\d)\b")


def _led(before: str, section: str) -> bool:
    return bool(_leading(before, section))


def _leading(before: str, section: str) -> list[str]:
    found = phrases(section).find(before)
    return [before[match.start : match.end] for match in found if match.end == len(before)]


def _happened(part: str, begins: DateReading) -> bool:
    """'Was withdrawn on 1 October' has happened, though no list says of what day it is; 'was suspended from 1 July' was
    decided."""
    return not _led(part[: begins.start].rstrip(" :"), "since")


_DURING = re.compile(
    rf"\b(?:{'|'.join(re.escape(word) for group in words('during_a_year').values() for word in group)})\s+(20\d\d)\b",
    re.IGNORECASE,
)
