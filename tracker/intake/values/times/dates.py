"""Dates as written, in every order of day and month that they allow."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from functools import lru_cache

from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, without


class DateOrder(StrEnum):
    DAY_FIRST = "dmy"
    MONTH_FIRST = "mdy"


@dataclass(frozen=True, slots=True)
class DateReading:
    """One date in a text with all its readings; `numeric`: day and month are both figures, so the order matters."""

    readings: tuple[date, ...]
    start: int
    end: int
    words: str
    numeric: bool = False


_NUMERIC = re.compile(
    r"(?<![\d./,-])"
    r"(?:(\d{4})([-/.])(\d{1,2})\2(\d{1,2})"
    r"|(\d{1,2})([-/.])\s?(\d{1,2})(?:\6\s?(\d{4}|\d{2})|(?:(?<=/\d)|(?<=/\d\d)) (20[2-4]\d)))"
    r"(?![\d/-]|\.\d|,\d)"
)
_DAY_MONTH_YEAR = re.compile(
    r"(?<![\d./])(\d{1,2})(?:st|nd|rd|th|er|:e|\.|)\s*[-/ ]?\s*(?:(?:of|de|del|den)\s+)?"
    r"([^\W\d_]{3,10})\.?(?:\s*/\s*(?P<again>[^\W\d_]{3,10}))?\s*[-/,' ]?\s*"
    r"(?:(?:of|de|del)\s+)?'?(?P<year>\d{4}|\d{2}(?!,?\s+20[2-4]\d))(?![\d.,]*\d)"
)
"""In two languages the month stands there twice: '31 oktober / October 2026'."""
_MONTH_DAY_YEAR = re.compile(r"([^\W\d_]{3,10})\.?\s+(\d{1,2})(?:st|nd|rd|th|)\s*,?\s+'?(\d{4})(?!\d)")
_YEAR_MONTH_DAY = re.compile(r"(\d{4})[- /]([^\W\d_]{3,10})[- /](\d{1,2})(?!\d)")
_MONTH_YEAR = re.compile(r"([^\W\d_]{3,10})\.?\s*[-/, ]?\s*(?:(?:of|de|del)\s+)?'?(\d{4})(?!\d)")
_YEAR_ALONE = re.compile(r"(?:(?:of|de|del|des jahres)\s+)?((?:20)\d{2})(?![\d./-])")
_QUARTER = re.compile(
    # '2T 2026' is a quarter in Spanish and French; '2 t 2026' may be an order in that year.
    r"(?:q([1-4])|([1-4])(?:\.?\s*(?:quartal|quarter|trimestre|kvartal(?:et)?|kv|q)|t))"
    r"\s*[-/, ]?\s*(?:de\s+)?(\d{4})"
)


def _month(word: str) -> int | None:
    match = phrases("months").whole(word)
    return int(match) if match is not None else None


def _year(text: str) -> int:
    return int(text) if len(text) == 4 else 2000 + int(text)


def _made(year: int, month: int, day: int) -> date | None:
    try:
        made = date(year, month, day)
    except ValueError:
        return None
    # Anything else is no date of a price list; spreadsheets' day 0 lies in 1899 or 1904.
    return made if 1990 <= year <= 2100 else None


@lru_cache(maxsize=16384)
def find_dates(text: str) -> tuple[DateReading, ...]:
    """Every date in a text from left to right, each with all its readings.

    Also 'end of June 2026', a month's last day.
    """
    folded = fold(text)
    if not any(sign.isdigit() for sign in folded):
        return ()
    found: list[DateReading] = []
    in_figures = (*_numeric(text, folded), *_worded(text, folded))
    for reading in (*in_figures, *_written_out(text, folded), *_ends(text, folded)):
        if all(reading.end <= other.start or other.end <= reading.start for other in found):
            found.append(reading)
    return tuple(sorted(found, key=lambda reading: reading.start))


_TO = re.compile(r"(?:(?<=\d\.)|(?<=\.\d{4}))-(?=\d{1,2}\.\d{1,2}\.)")
"""The hyphen of '01.10.-31.12.2026' parts two days, where those of '26-05-04' join one."""


def _numeric(text: str, folded: str) -> Iterable[DateReading]:
    for match in _NUMERIC.finditer(_TO.sub(" ", folded)):
        year, _, month, day, first, separator, second, last, set_apart = match.groups()
        # '31/12 2026', as Swedes write.
        last = last or set_apart
        if year is not None:
            dates = {_made(int(year), int(month), int(day))}
        elif len(last) == 2 and separator == "-" and int(first) > 12 and int(second) <= 12:
            # '26-05-04' is the year first as often as last.
            dates = {_made(_year(last), int(second), int(first)), _made(_year(first), int(second), int(last))}
        else:
            dates = {_made(_year(last), int(second), int(first))}
            # A dot is the sign of those who write the day first.
            if separator != ".":
                dates.add(_made(_year(last), int(first), int(second)))
        readings = tuple(sorted(one for one in dates if one is not None))
        if readings:
            yield DateReading(readings, match.start(), match.end(), text[match.start() : match.end()], numeric=True)


def _worded(text: str, folded: str) -> Iterable[DateReading]:
    for pattern, day, month, year in (
        (_DAY_MONTH_YEAR, 1, 2, "year"),
        (_MONTH_DAY_YEAR, 2, 1, 3),
        (_YEAR_MONTH_DAY, 3, 2, 1),
    ):
        for match in _outside_spans(pattern, folded):
            number = _month(match[month])
            again = match.groupdict().get("again")
            if number is None or (again is not None and _month(again) != number):
                continue
            made = _made(_year(match[year]), number, int(match[day]))
            if made is not None:
                yield DateReading((made,), match.start(), match.end(), text[match.start() : match.end()])


def _written_out(text: str, folded: str) -> Iterator[DateReading]:
    """'The thirty-first of December 2026', 'treinta y uno de diciembre de 2026'."""
    for match in _MONTH_YEAR.finditer(folded):
        month = _month(match[1])
        before = _OF_MONTH.sub("", folded[: match.start()]).rstrip() if month is not None else ""
        named = phrases("days_in_words").find(before) if before else []
        # The 'uno' of 'treinta y uno' is no day by itself: the longest phrase is found.
        if month is None or not named or named[-1].end != len(before):
            continue
        made = _made(int(match[2]), month, int(named[-1].value))
        if made is not None:
            start = named[-1].start
            yield DateReading((made,), start, match.end(), text[start : match.end()])


_OF_MONTH = re.compile(r"(?<=\s)(?:of|de|den)\s+$")

_SPAN = re.compile(r"\d{1,2}(?:st|nd|rd|th|er|:e|\.)?\s+[^\W\d_]{3,10}\.?\s*-\s*\d{2}")


def _outside_spans(pattern: re.Pattern[str], folded: str) -> Iterator[re.Match[str]]:
    """The pattern's matches but for '1 July - 30' in '1 July - 30 September 2026', which is no day of 2030."""
    match = pattern.search(folded)
    while match is not None:
        span = _SPAN.fullmatch(match.group())
        if span is None:
            yield match
        match = pattern.search(folded, match.end() if span is None else match.start() + 1)


_OF_YEAR = re.compile(r"\s*(?:of|de|del|av|des jahres|,)?\s*(20\d\d)(?!\d)")


def _ends(text: str, folded: str) -> Iterable[DateReading]:
    """'end of June 2026', 'Ende Juni 2026', 'end of Q4 2026', 'fin du troisième trimestre 2026': the last day. A bare
    month or quarter is no day."""
    for match in phrases("end_of").find(text):
        rest = folded[match.end :].lstrip(" .")
        start = len(folded) - len(rest)
        month = _MONTH_YEAR.match(rest)
        quarter = _QUARTER.match(rest)
        named = phrases("quarters").at(tokens(rest), 0)
        of_year = _OF_YEAR.match(rest, named.end) if named is not None else None
        year = _YEAR_ALONE.match(rest)
        number = _month(month[1]) if month is not None else None
        if month is not None and number is not None:
            made, end = _last_of(int(month[2]), number), start + month.end()
        elif quarter is not None:
            made, end = _last_of(int(quarter[3]), 3 * int(quarter[1] or quarter[2])), start + quarter.end()
        elif named is not None and of_year is not None:
            made, end = _last_of(int(of_year[1]), 3 * int(named.value)), start + of_year.end()
        elif year is not None:
            made, end = _last_of(int(year[1]), 12), start + year.end()
        else:
            continue
        yield DateReading((made,), match.start, end, text[match.start : end])


def months_named(text: str) -> tuple[int, ...]:
    """Where months and quarters of a year stand that have no day: 'October 2026', '10/2026', 'Q4 2026'."""
    folded = fold(text)
    worded = [match for match in _MONTH_YEAR.finditer(folded) if _month(match[1]) is not None]
    found = (*worded, *_QUARTER.finditer(folded), *_FIGURED_MONTH.finditer(folded))
    days = find_dates(text)
    return tuple(one.start() for one in found if not any(day.start <= one.start() < day.end for day in days))


_FIGURED_MONTH = re.compile(r"(?<![\d./-])(?:0?[1-9]|1[0-2])\s?[/.-]\s?20\d\d(?![\d./-])")


def _last_of(year: int, month: int) -> date:
    following = date(year + month // 12, month % 12 + 1, 1)
    return following - timedelta(days=1)


@lru_cache(maxsize=16384)
def date_readings(text: str) -> tuple[date, ...]:
    """All readings of a text that is one date and nothing else; a time of day behind it does not count."""
    stripped = re.sub(r"[T ]\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?$", "", text.strip())
    found = find_dates(stripped)
    if len(found) != 1 or (stripped[: found[0].start] + stripped[found[0].end :]).strip(" .,()"):
        return ()
    return found[0].readings


def date_order(texts: Iterable[str]) -> DateOrder | None:
    """What the dates of a file prove about the order of day and month, or its '(dd/mm/yyyy)' says: None where nothing
    does, or both."""
    orders: set[DateOrder] = set()
    for text in texts:
        dates = find_dates(text)
        formats = phrases("date_orders").find(text)
        if formats and (_told_beside(formats, dates, text) or _of_this_list(without(text, formats))):
            orders.update(DateOrder[match.value.upper()] for match in formats)
        for found in dates:
            if found.numeric and len(found.readings) == 1 and (order := _order_shown(found.words)) is not None:
                orders.add(order)
    return orders.pop() if len(orders) == 1 else None


def _told_beside(formats: Sequence[Found[str]], dates: tuple[DateReading, ...], text: str) -> bool:
    """Whether a text with a date says how that is written: right behind it, or without asking the buyer for one."""
    pairs = [(date.end, said.start) for said in formats for date in dates if date.end <= said.start]
    behind = any(not text[end:start].strip(" (") for end, start in pairs)
    return behind or (bool(dates) and not any(match.value == "any" for match in phrases("asked_days").find(text)))


def _of_this_list(text: str) -> bool:
    """Whether a text with a format and no date tells of the days in this list: 'valid until (dd/mm/yyyy)', 'please
    note: all dates are', and not 'please enter your delivery date as dd/mm/yyyy'."""
    asked = {match.value for match in phrases("asked_days").find(text)}
    if "any" in asked or any(phrases(section).find(text) for section in ("order_words", "lead_topic")):
        return False
    if phrases("dates_written").find(text):
        return True
    told = any(phrases(section).find(text) for section in ("valid", "until", "dated", "price_words", "these_prices"))
    return not asked and (told or not any(map(str.isalpha, text)))


def _order_shown(words: str) -> DateOrder | None:
    numbers = [int(number) for number in re.findall(r"\d+", words)]
    if len(numbers) != 3 or numbers[0] > 31:
        return None
    if numbers[0] > 12:
        return DateOrder.DAY_FIRST
    if numbers[1] > 12:
        return DateOrder.MONTH_FIRST
    return DateOrder.DAY_FIRST if "." in words else None


def ordered(found: DateReading, order: DateOrder | None) -> tuple[date, ...]:
    """A found date's readings once the order of day and month is known.

    That order does not tell whether '26-10-31' has its year first or last.
    """
    if order is None or len(found.readings) < 2:
        return found.readings
    numbers = [int(number) for number in re.findall(r"\d+", found.words)]
    day = numbers[0] if order is DateOrder.DAY_FIRST else numbers[1]
    kept = (one for one in found.readings if one.day == day or [one.year % 100, one.month, one.day] == numbers)
    return tuple(kept) or found.readings


def without_dates(text: str) -> str:
    """A head's words but for the days in it, and the 'from' or 'until' right before one."""
    for found in sorted(find_dates(text), key=lambda date: -date.start):
        before = text[: found.start].rstrip(" .:")
        leading = (match for kind in ("since", "until") for match in phrases(kind).find(before))
        start = min((match.start for match in leading if match.end == len(before)), default=len(before))
        text = before[:start] + " " + text[found.end :]
    return text
