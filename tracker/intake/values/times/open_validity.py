"""Validity that is spoken of without a last day: 'valid October 2026', 'until further notice', '2 months'."""

import re
from collections.abc import Sequence
from itertools import pairwise

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import DateReading, find_dates, months_named
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

COUNTED = re.compile(r"(?<![\d.,/-])(\d{1,3})\s*-?\s*([^\W\d_]+)")
"""A count with its unit: '30 days', '6-week'."""


def ends_on_no_day(clause: str, dates: tuple[DateReading, ...], holds: Sequence[Found[str]]) -> bool:
    """Whether a clause names an end of its prices, and no day: `dates` are those it has, `holds` its words for how long
    prices hold."""
    if _names_an_end(clause):
        return True
    open_ = _speaks_of_months(clause) or _leaves_its_end_open(clause, dates)
    return open_ and bool(holds)


def end_in_doubt(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'The offer now closes earlier, on 28 February 2027', in words that nobody reads for certain, and 'the validity
    below is a typing error': whatever else is said of a last day may be wrong."""
    spoken = bool(phrases("valid").find(clause))
    if _says_two_days(clause, dates) or _lists_days(clause, dates):
        return True
    if spoken and not dates:
        return bool(phrases("misprints").find(clause)) and not phrases("errors_reserved").find(clause)
    if spoken or len(dates) != 1 or phrases("until").find(clause):
        return False
    named = [*phrases("price_lists").find(clause), *phrases("list_names").find(clause)]
    named += [match for match in phrases("held_subject").find(clause) if match.value == "own"]
    # 'The offer', and not 'our works order book'.
    ahead = [match for match in named if len(clause[: match.start].split()) <= 1]
    verbs = (match for match in phrases("closes").find(clause) if match.end <= dates[0].start)
    between = [clause[match.end : verb.start] for verb in verbs for match in ahead if match.end <= verb.start]
    return any(len(words.split()) <= _FEW_WORDS for words in between)


def _says_two_days(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Until the thirty-first of December 2026 (30/11/2026)': a day, and another in brackets in its place."""
    beside = ((one, other) for one, other in pairwise(dates) if clause[one.end : other.start].strip() == "(")
    return any(
        clause[other.end :].lstrip().startswith(")") and not set(one.readings) & set(other.readings)
        for one, other in beside
    )


def _lists_days(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Bid good through: 31 October 2026 15 November 2026', the cells of several bidders in one line; of 'Valid from /
    until: 1 October 2026 31 December 2026' the first is where it begins."""
    if len(dates) < _SEVERAL or begun(clause[: dates[0].start], phrases("since").find(clause)):
        return False
    ends = any(match.end <= dates[0].start for match in phrases("until").find(clause))
    return ends and any(
        not clause[one.end : other.start].strip() and not set(one.readings) & set(other.readings)
        for one, other in pairwise(dates)
    )


_SEVERAL = 2


def _names_an_end(clause: str) -> bool:
    """'Valid until further notice' does; 'Valid through:' is only the label of the cell beside it."""
    return any(match.value == "strong" and clause[match.end :].strip(" :.") for match in phrases("until").find(clause))


def _speaks_of_months(clause: str) -> bool:
    return any(phrases("lead").whole(match[2]) == "month" for match in COUNTED.finditer(fold(times_in_figures(clause))))


def _leaves_its_end_open(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Valid October 2026', 'valid from 1 January 2026 to 31 March': an end is named, and no day of a year."""
    if dates:
        return not _only_begins(clause, dates) or _goes_on_to_a_day(clause[dates[0].end :])
    return any(_held_for_a_month(part) for part in COMMA.split(clause) if phrases("valid").find(part))


def _held_for_a_month(part: str) -> bool:
    months = months_named(part)
    if not months:
        return False
    return len(months) > 1 or not begun(part[: months[0]], phrases("since").find(part))


def _goes_on_to_a_day(behind: str) -> bool:
    return any(behind[match.end :].lstrip()[:1].isdigit() for match in phrases("until").find(behind))


def _only_begins(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Valid from 1 May 2026' says when prices begin, not when they end."""
    return len(dates) == 1 and any(match.end <= dates[0].start for match in phrases("since").find(clause))


def begun(before: str, begins: Sequence[Found[str]]) -> bool:
    """Whether words or a day before a place say when prices begin to hold."""
    return any(match.end <= len(before) for match in begins) or bool(find_dates(before))


def within(match: Found[str], others: Sequence[Found[str]]) -> bool:
    """The 'au' of 'applicable au 1er octobre' belongs to the words for a beginning."""
    return any(other.start < match.start and match.end <= other.end for other in others)


def runs_to(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Offer to 12 September 2026', where 'Offer to Pellow Cartons, 12 September 2026' goes to a buyer, 'Old prices to
    12 September 2026' have run out, and 'We reduced our prices to 1 October 2025 levels' tells of others."""
    ahead = phrases("runs_to").find(clause) if len(dates) == 1 and _ends_there(clause[dates[0].end :]) else []
    return any(
        not clause[match.end : dates[0].start].strip() and _names_a_list(clause[: match.start].strip())
        for match in ahead
    )


def _ends_there(behind: str) -> bool:
    """Nothing, something else behind a comma, or what the prices are in: 'to 30 September 2026 in EUR'."""
    plain = behind.strip(" .:")
    in_money = len(plain.split()) <= _FEW_WORDS and bool(find_currencies(plain))
    return not plain or plain.startswith(",") or in_money


def _names_a_list(before: str) -> bool:
    """Nothing, or a list's name: the 'Preise' of 'Preise laufen bis', the 'Le tarif' of 'Le tarif court jusqu'au'."""
    last = before.split()[-1:]
    return len(before.split()) <= _FEW_WORDS and all(
        phrases("price_lists").whole(word) is not None or phrases("list_names").whole(word) is not None for word in last
    )


_FEW_WORDS = 2
