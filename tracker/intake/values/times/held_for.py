"""For how long prices hold, where that is counted or ends with a month: '30 days', 'trois mois', 'bis Monatsende'."""

import re
from datetime import date, timedelta

from tracker.intake.values.times.dates import DateReading, find_dates, months_named
from tracker.intake.values.times.open_validity import COUNTED
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import blanked

_MOST_MONTHS = 12
"""For longer a board may be warranted, and no list of prices counts it in months (our choice)."""
_OF_PRICES = ("price_words", "price_lists", "list_names")


def days_counted(text: str) -> int | None:
    """A count of days or weeks; None for none, two, or months."""
    counts = set()
    for match in COUNTED.finditer(fold(times_in_figures(text))):
        unit = phrases("lead").whole(match[2])
        if unit in ("day", "week"):
            counts.add(int(match[1]) * (7 if unit == "week" else 1))
        elif unit == "month":
            return None
    return counts.pop() if len(counts) == 1 else None


def months_counted(text: str) -> int | None:
    """A count of months; None beside another count."""
    counted = [
        (int(match[1]), unit)
        for match in COUNTED.finditer(fold(times_in_figures(text)))
        if (unit := phrases("lead").whole(match[2])) in ("day", "working_day", "week", "month")
    ]
    months = counted[0][0] if len(counted) == 1 and counted[0][1] == "month" else None
    return months if months is not None and 0 < months <= _MOST_MONTHS else None


def dates_its_list(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Offer of 15 July 2026, valid three months': the one day is that of the list, from which months count as days do.

    From the day on which prices begin a month may end on the day before, and what else holds for months is no list.
    """
    ahead = clause[: dates[0].start] if len(dates) == 1 else ""
    named = [match.end for section in ("price_lists", "list_names") for match in phrases(section).find(ahead)]
    between = ahead[max(named) :].split() if named else []
    return bool(named) and all(len(word.strip(".,:")) <= _SMALL_WORD for word in between)


_SMALL_WORD = 3
"""Letters of 'of', 'vom', 'du', 'no.'"""


def months_later(day: date, months: int) -> date:
    """The same day so many months on, or the last of a month that has none such."""
    if not months:
        return day
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    following = date(year + (month + 1) // 12, (month + 1) % 12 + 1, 1)
    return date(year, month + 1, min(day.day, (following - timedelta(days=1)).day))


def days_until_end(clause: str) -> int | None:
    """The days after which a list says that its prices end, counted from its own date: 'Prices expire 45 days after the
    date of this list'. None where they are counted from anything else."""
    for end in phrases("ends_after").find(clause):
        before, behind = clause[: end.start], clause[end.end :]
        days = days_counted(behind)
        if days is not None and _only(before, _OF_PRICES) and before.strip() and _only(behind, (*_OF_PRICES, "lead")):
            return days
    return None


def _only(text: str, sections: tuple[str, ...]) -> bool:
    """Nothing but figures, words of these lists and little ones stands there."""
    rest = times_in_figures(text)
    for section in (*sections, "words_of_lists", "articles", "about"):
        rest = blanked(rest, (match.span for match in phrases(section).find(rest)))
    return not any(map(str.isalpha, rest))


def end_of_named_month(clause: str) -> DateReading | None:
    """The last day of the one month that a clause about its month's end names: 'Prices August 2026, good to month
    end'."""
    named = [clause[start:] for start in months_named(clause)]
    until = [match.end for match in phrases("until").find(clause)]
    ends = any(not clause[end : match.start].strip() for match in phrases("month_end").find(clause) for end in until)
    if not ends or len(named) != 1:
        return None
    found = find_dates(f"{words('end_of')['any'][0]} {named[0]}")
    return found[0] if found and found[0].start == 0 else None


def of_validity(clause: str) -> str:
    """The clause without what it says of payment or lead time: 'Effective 4 May, 1 % 10 days', '… payment net 30'.

    A stop may end a short form or a sentence: 'Lieferzeit: 6 Wo. Es gelten unsere Verkaufsbedingungen.'
    """
    return ", ".join(
        _before_another_term(part)
        for part in _PARTS.split(clause)
        if phrases("valid").find(part) or not _of_another_term(part)
    )


def _before_another_term(part: str) -> str:
    """Up to the first word for payment or lead time that stands behind all words for validity; behind a word for lead
    time, as in 'Lieferzeit 6 Wochen gültig 30 Tage', from the first word for validity on."""
    speaking = phrases("valid").find(part)
    spoken = max((match.end for match in speaking), default=0)
    others = [match.start for kind in ("lead_topic", "not_lead") for match in phrases(kind).find(part)]
    led = any(match.start < speaking[0].start for match in phrases("lead_topic").find(part)) if speaking else False
    start = speaking[0].start if led else 0
    return part[start : min((start for start in others if start >= spoken), default=len(part))]


_PARTS = re.compile(r",(?!\d)|\.\s+(?=[A-ZÄÖÜÅÉ])")


def _of_another_term(part: str) -> bool:
    return "%" in part or bool(phrases("lead_topic").find(part) or phrases("not_lead").find(part))
