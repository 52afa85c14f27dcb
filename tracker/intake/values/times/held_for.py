"""For how long prices hold, where that is counted or ends with a month: '30 days', 'trois mois', 'bis Monatsende'."""

import re
from datetime import date, timedelta

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.dates import DateReading, find_dates, months_named
from tracker.intake.values.times.lasting import lasting
from tracker.intake.values.times.leads_in_full import tells_its_time
from tracker.intake.values.times.open_validity import COUNTED
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases, without_words, words
from tracker.intake.words.phrases import Found, blanked

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
    named = [match for section in ("price_lists", "list_names") for match in phrases(section).find(ahead)]
    if not named or dates_another_list(clause, dates):
        return False
    last = max(named, key=lambda match: match.end)
    # Names of firms and boards begin with a capital.
    before = (word for word in ahead[: last.start].split() if not word[:1].isupper())
    return _only(" ".join(before), (*_OF_PRICES, "copula", "the_buyer")) and _dates(ahead[last.end :])


def dates_another_list(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """'Replaces our offer of 15 January 2026, valid 30 days': the day of a list that is replaced or answered."""
    ahead = COMMA.split(clause[: dates[0].start])[-1] if dates else ""
    return any(phrases(section).find(ahead) for section in ("replaces", "refers_to"))


def _dates(between: str) -> bool:
    """'No. 1234 of', 'vom': nothing between a list's name and its day but its number and little words for that."""
    return not any(map(str.isalpha, without_words(between, "dates_a_list")))


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
    rest = without_words(times_in_figures(text), *sections, "words_of_lists", "articles", "about")
    return not any(map(str.isalpha, rest))


def end_of_named_month(clause: str) -> DateReading | None:
    """The last day of the one month that a list's name has in a clause about its month's end: 'Prices August 2026, good
    to month end'; None for the month of a delivery, and where the month's end is that of another: 'month end
    following'."""
    starts = months_named(clause)
    until = [match.end for match in phrases("until").find(clause)]
    ends = [
        match.end
        for match in phrases("month_end").find(clause)
        if any(not clause[end : match.start].strip() for end in until)
    ]
    if len(starts) != 1 or not ends or any(map(str.isalnum, COMMA.split(clause[ends[-1] :])[0])):
        return None
    leads = f"{words('end_of')['any'][0]} "
    found = find_dates(leads + clause[starts[0] :])
    if not found or found[0].start != 0:
        return None
    month = (starts[0], starts[0] + found[0].end - len(leads))
    begin = max((stop.end() for stop in _STOPS.finditer(clause[: month[0]])), default=0)
    stop = _STOPS.search(clause, month[1])
    part = blanked(clause, (month,))[begin : stop.start() if stop is not None else len(clause)]
    return found[0] if _only(part, (*_OF_PRICES, "of_its_month", "copula", "valid", "until", "month_end")) else None


_STOPS = re.compile(r",(?!\d)|:\s")


def counts_of_orders(clause: str, holds: list[Found[str]]) -> bool:
    """'Prices apply to orders paid within 30 days' counts for the orders, and 'to orders placed within 30 days' for the
    prices."""
    for orders in phrases("orders_held").find(clause):
        counted = COUNTED.search(clause, orders.end)
        if counted is None or orders.value != "any" or not any(match.end <= orders.start for match in holds):
            continue
        between = clause[orders.end : counted.start()]
        placed = (match.span for match in phrases("orders_held").find(between) if match.value == "placed")
        between = blanked(between, placed)
        if any(map(str.isalpha, without_words(between, "within_a_time"))):
            return True
    return False


def of_validity(clause: str) -> str:
    """The clause without what it says of payment or lead time: 'Effective 4 May, 1 % 10 days', '… payment net 30',
    'Lead time held at 3 weeks'.

    A stop may end a short form or a sentence: 'Lieferzeit: 6 Wo. Es gelten unsere Verkaufsbedingungen.'
    """
    return ", ".join(
        _before_another_term(part)
        for part in _PARTS.split(clause)
        if not tells_its_time(part) and (phrases("valid").find(part) or lasting(part) or not _of_another_term(part))
    )


def without_weights(clause: str) -> str:
    """The clause without the 'and the minimum per order is 1,000 kg' of 'valid for 45 days from the date above, and the
    minimum per order is 1,000 kg'."""
    return ", ".join(part for part in COMMA.split(clause) if not find_masses(part) or days_counted(part) is not None)


def _before_another_term(part: str) -> str:
    """Up to the first word for payment or lead time that stands behind all words for validity; behind a word for lead
    time, as in 'Lieferzeit 6 Wochen gültig 30 Tage', from the first word for validity on."""
    speaking = [*phrases("valid").find(part), *lasting(part)]
    spoken = max((match.end for match in speaking), default=0)
    others = [match.start for kind in ("lead_topic", "not_lead") for match in phrases(kind).find(part)]
    led = any(match.start < speaking[0].start for match in phrases("lead_topic").find(part)) if speaking else False
    start = speaking[0].start if led else 0
    return part[start : min((start for start in others if start >= spoken), default=len(part))]


_PARTS = re.compile(r",(?!\d)|\.\s+(?=[A-ZÄÖÜÅÉ])")


def _of_another_term(part: str) -> bool:
    return "%" in part or bool(phrases("lead_topic").find(part) or phrases("not_lead").find(part))
