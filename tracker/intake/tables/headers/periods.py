"""Heads that are a time: a month, a quarter, a year, a date. Prices under several of them are a history."""

import re
from calendar import monthrange
from datetime import date
from functools import lru_cache
from itertools import pairwise

from tracker.intake.values.times.dates import date_readings, months_named
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked, without

YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")
_NUMBERED = re.compile(
    r"(?:[QqHhTt]\.?\s?[1-4]|[1-4][Tt](?=[\s/-]*20\d\d)|KW\s?\d{1,2}|(?:19|20)\d\d)(?:[\s/'’.-]*(?:(?:19|20)?\d\d|[QqHhTt]\.?\s?[1-4]))?"
)
_LEFT_OVER = " .,'’/0123456789-"


@lru_cache(maxsize=4096)
def is_period(text: str) -> bool:
    """'January', 'Q2 2026', 'Mai 26', '01.07.2026', '2027 est.': a time and nothing else, on one line or two."""
    text = without_estimates(" ".join(text.split()))
    if date_readings(text) or _NUMBERED.fullmatch(text) or phrases("relative_periods").whole(text) is not None:
        return True
    rest = _without_names(text)
    return rest != text and not rest.strip(_LEFT_OVER)


def of_shipment(text: str) -> bool:
    """'Ship Jul 26', 'Lieferung Juli', 'For Q3 delivery': over prices, when the board leaves that they are paid for."""
    said = phrases("shipped_in").find(text)
    rest = blanked(text, (match.span for match in said))
    return any(match.value == "any" for match in said) and is_period(" ".join(rest.split()).strip(" :,-–()"))


def _without_names(text: str) -> str:
    """A text without the names of months and quarters in it."""
    for section in ("quarters", "months"):
        for match in reversed(phrases(section).find(text)):
            text = text[: match.start] + text[match.end :]
    return text


def _quarters_in(text: str) -> set[int]:
    """By their sign, 'Q3' and '3T 2026', or in words: '3. Quartal', 'third quarter'."""
    named = {int(match.value) for match in phrases("quarters").find(text)}
    return named | {int(found[1] or found[2]) for found in _QUARTER.finditer(text)}


def without_estimates(text: str) -> str:
    """'2027 est.' and '2027 (Prognose)' without the word that says what prices are expected to be."""
    if not any(map(str.isdigit, text)):
        return text
    said = phrases("estimates").find(text)
    return " ".join(without(text, said).split()).strip(" .,()-") if said else text


def says_estimate(text: str) -> bool:
    """'2027 est.': what prices of that time are expected to be; 'Price 2027 planned quantity' heads something else."""
    return without_estimates(text) != text and is_period(without_estimates(text))


def is_realised(text: str) -> bool:
    """'2025 actual price', 'Preis 2025 (Ist)': what was charged in a year."""
    return bool(YEAR.search(text)) and bool(phrases("realised_prices").find(_BRACKETS.sub(" ", YEAR.sub(" ", text))))


_BRACKETS = re.compile(r"[()\[\]]")


def is_later(text: str, other: str) -> bool:
    """Whether a text's one month or quarter follows the other's by up to half a year: 'Jan' after 'Dec'. Where each
    names its year, whether it is later at all: 'Jan 2025' is not after 'Q3 2026'."""
    month, other_month = _month(text), _month(other)
    years = [YEAR.findall(each) for each in (text, other)]
    if month is not None and other_month is not None and all(len(each) == 1 for each in years):
        return (int(years[0][0]), month) > (int(years[1][0]), other_month)
    return month is not None and other_month is not None and 0 < (month - other_month) % 12 <= _HALF_A_YEAR


_HALF_A_YEAR = 6
_QUARTER = re.compile(r"\b(?:[QqTt]\.?\s?([1-4])\b|([1-4])[Tt](?=[\s/-]*20\d\d))")


def _month(text: str) -> int | None:
    """The last month of the one time that a text names; None for none or several."""
    named = {int(match.value) for match in phrases("months").find(text)}
    named |= {quarter * 3 for quarter in _quarters_in(text)}
    return named.pop() if len(named) == 1 else None


def months_in(text: str) -> frozenset[int]:
    """The months that a text names, those between two that it joins, and those of its quarters: 'January to March' and
    'Q1' are 1, 2 and 3."""
    found = phrases("months").find(text)
    named = {int(match.value) for match in found}
    for first, last in pairwise(found):
        between = text[first.end : last.start]
        if _DASH.fullmatch(between) or phrases("range").whole(between.strip()) == "any":
            named |= set(range(int(first.value), int(last.value)))
    for quarter in _quarters_in(text):
        named |= {3 * quarter - 2, 3 * quarter - 1, 3 * quarter}
    return frozenset(named)


_DASH = re.compile(r"\s*[-–—]\s*")
_QUARTERS = re.compile(r"\b(?:[1-4][Tt](?=[\s/-]*20\d\d)|[QqHhTt]\.?\s?[1-4](?:\s?[/'’]\s?\d\d)?|(?:19|20)\d\d)\b")


def without_periods(text: str) -> str:
    """A text without the months, quarters and years in it: 'Q2 2026 price' -> 'price'."""
    return _QUARTERS.sub(" ", _without_names(text))


def begins_with_a_time(text: str) -> bool:
    """'January 2027', 'Q1 2027', 'January', and '2027' alone, with more behind it perhaps."""
    places = [*months_named(text), *(match.start for match in phrases("months").find(text))]
    places += [match.start() for pattern in (YEAR, _QUARTER) for match in pattern.finditer(text)]
    return bool(places) and not any(map(str.isalnum, text[: min(places)]))


def span_of(text: str, year: int) -> tuple[date, date] | None:
    """The first and last day of the one month, quarter or year that a head names: 'Price Q2 2026', 'Mar', '2026'.

    `year`: the one that is meant where none is named. None for several times, or none.
    """
    years = {int(found) for found in YEAR.findall(text)}
    months = {int(match.value) for match in phrases("months").find(text)}
    quarters = _quarters_in(text)
    if len(years) > 1 or len(months) + len(quarters) > 1 or not (years or months or quarters):
        return None
    year = years.pop() if years else year
    if quarters:
        last = 3 * quarters.pop()
        first = last - 2
    else:
        first, last = (months.pop(),) * 2 if months else (1, 12)
    return date(year, first, 1), date(year, last, monthrange(year, last)[1])
