"""Until when a price holds: 'valid until 31.12.2026', '30 days from 2026-05-04', '30 days from date of list'."""

import re
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from itertools import takewhile

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.relatives import without_relatives
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import DateOrder, DateReading, find_dates, ordered
from tracker.intake.values.times.firm_times import without_firm
from tracker.intake.values.times.held_apart import ends_otherwise, labelled_of_some, may_be_of_another, of_another
from tracker.intake.values.times.held_for import (
    counts_of_orders,
    dates_another_list,
    dates_its_list,
    days_counted,
    days_until_end,
    end_of_named_month,
    months_counted,
    months_later,
    of_validity,
    without_weights,
)
from tracker.intake.values.times.held_subject import of_unknown_subject
from tracker.intake.values.times.lasting import lasting
from tracker.intake.values.times.open_validity import begun, end_in_doubt, ends_on_no_day, runs_to, within
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of


@dataclass(frozen=True, slots=True)
class Validity:
    """Until when a price holds, the day included: either `until`, or so many `days` and `months` after `base`.

    `base` None with `days`: counted from the date of the list itself. `unread`: it speaks of that, and gives no day;
    `perhaps`: of these prices, or of others.
    """

    words: str
    until: DateReading | None = None
    days: int | None = None
    base: DateReading | None = None
    unread: bool = False
    months: int = 0
    perhaps: bool = False

    def last_day(self, order: DateOrder | None = None, list_date: date | None = None) -> date | None:
        """The last day, once the file's order of day and month and the list's own date are known; None while open."""
        if self._counted_from is not None:
            found = _of_the_time(ordered(self._counted_from, order), list_date)
        else:
            found = (list_date,) if self.days is not None and list_date is not None else ()
        return self._after(found[0]) if len(found) == 1 else None

    @property
    def possible_days(self) -> tuple[date, ...]:
        """The last day in each way that its date can be read, whatever the file's order of day and month: in the order
        in which a person is asked for that."""
        found = self._counted_from
        if found is None:
            return ()
        told = (day for order in DateOrder for day in ordered(found, order))
        return tuple(self._after(day) for day in dict.fromkeys((*told, *found.readings)))

    def _after(self, day: date) -> date:
        return months_later(day, self.months) + timedelta(days=self.days or 0)

    @property
    def _counted_from(self) -> DateReading | None:
        return self.until if self.days is None else self.base

    @property
    def ambiguous(self) -> bool:
        """A date that may be read two ways."""
        return any(found is not None and len(found.readings) > 1 for found in (self.until, self.base))


_LONGEST = timedelta(days=2 * 366)
"""For longer than two years no list of prices holds (our choice)."""


def _of_the_time(days: tuple[date, ...], list_date: date | None) -> tuple[date, ...]:
    """Of '26-10-31' the day in 2026, not the one in 2031, in a list of 2026; its year tells of no other two."""
    if list_date is None or len({day.year for day in days}) < 2:
        return days
    return tuple(day for day in days if list_date <= day <= list_date + _LONGEST) or days


@lru_cache(maxsize=16384)
def validity(text: str) -> Validity | None:
    """What a title, note or label says of validity; None where it doesn't speak of it.

    Clauses that disagree are unread.
    """
    now = without_relatives(text)
    told = validity(now) if now != text else None
    if told is not None and not told.unread:
        # 'The offer, which at first ran to 15 December, now stands until 31 January 2027'.
        return told
    found = {}
    for clause in clauses(text):
        said = _clause(without_firm(clause))
        if said is not None:
            days = (said.days, said.months, said.base and said.base.readings)
            found[(said.until and said.until.readings, *days)] = said
    if not found:
        return None
    known = [said for said in found.values() if not said.unread]
    return known[0] if len(known) == 1 else Validity(text.strip(), unread=True)


@lru_cache(maxsize=1024)
def until_in_head(text: str) -> Validity | None:
    """The last day that the head of a price names: 'Price until 30 September 2026'; None for one that names none."""
    dates = find_dates(text)
    for match in phrases("until").find(text) if len(dates) == 1 else ():
        named = match.value in _LAST_DAY and match.end <= dates[0].start
        if named and not _far(text, match.end, dates[0].start):
            return Validity(text.strip(), until=dates[0])
    return None


def _clause(clause: str) -> Validity | None:
    speaks = [*phrases("valid").find(clause), *lasting(clause)]
    holds = [match for match in speaks if match.value != "for_orders"]
    begins = phrases("since").find(clause)
    # The 'to' of 'referring to our offer of 15 January' ends nothing.
    led = [*begins, *phrases("refers_to").find(clause)]
    ends = [match for match in phrases("until").find(clause) if not within(match, led)]
    dates = find_dates(clause)
    if of_another(clause, dates) or of_unknown_subject(clause):
        return None
    if may_be_of_another(clause) or end_in_doubt(clause, dates) or labelled_of_some(clause, speaks, ends):
        return Validity(clause, unread=True)
    if not dates and (after := days_until_end(clause)) is not None:
        return _relative(clause, after, dates)
    if not speaks and not any(match.value == "strong" for match in ends):
        return _by_itself(clause, dates) or _list_of_a_span(clause, dates)
    for match in ends:
        date_after = next((found for found in dates if found.start >= match.end), None)
        # 'Prix valables au 1er juillet, révision le 31 décembre': before another day 'au' ends only what has begun.
        if match.value == "of_a_span" and date_after not in dates[-1:] and not begun(clause[: match.start], begins):
            continue
        between = "" if date_after is None else clause[match.end : date_after.start]
        counted = days_counted(between) if COMMA.search(between) is None else None
        if counted is not None:
            # 'Expires 45 days from 6 July 2026', and not 'Lieferzeit 1 bis 2 Wochen, Bindefrist 30.06.2026'.
            return _relative(clause, counted, dates)
        if date_after is not None and not _far(clause, match.end, date_after.start):
            apart = ends_otherwise(clause[date_after.end :], date_after)
            return Validity(clause, unread=True) if apart else Validity(clause, until=date_after)
    labels = [match for match in speaks if not any(since.end == match.end for since in begins)]
    if any(_is_labelled(clause, match, dates) for match in labels):
        return Validity(clause, until=dates[-1])
    if len(dates) == 1 and _labels_its_date(clause, dates[0]):
        return Validity(clause, until=dates[0])
    if speaks and dates and _DASH.search(clause[speaks[0].end : dates[-1].start]):
        # 'Valid: 1 July – 30 September 2026', whose first day has no year.
        return Validity(clause, until=dates[-1])
    days = days_counted(of_validity(clause))
    months = months_counted(of_validity(clause)) if holds and dates_its_list(clause, dates) else None
    if months is not None:
        return _relative(clause, 0, dates, months)
    if days is not None and holds and (dates_another_list(clause, dates) or counts_of_orders(clause, holds)):
        return Validity(clause, unread=True)
    if days is not None and holds:
        # 'Valid 9/30/2026 - 60 day term': the days behind a day right after the word are counted for something else.
        behind = len(dates) == 1 and dates[0].start >= speaks[0].end
        own = behind and not any(map(str.isalnum, clause[speaks[0].end : dates[0].start]))
        return Validity(clause, unread=True) if own else _relative(clause, days, dates)
    if speaks and len(dates) == 2 and dates[0].start >= speaks[0].end and _joins_a_span(clause, dates):
        return Validity(clause, until=dates[1])
    month_end = end_of_named_month(clause)
    if month_end is not None and not dates:
        return Validity(clause, until=month_end)
    return Validity(clause, unread=True) if ends_on_no_day(clause, dates, holds) else None


_LAST_DAY = ("strong", "weak")
"""Words that say a last day with no span around them; 'Tarif au 1er mai' is the list of that day."""


def _by_itself(clause: str, dates: tuple[DateReading, ...]) -> Validity | None:
    """'EUR per tonne, until 31 August 2026', 'Prices until 31 August 2026': a last day among words for money; 'Ends 31
    August 2026' alone."""
    if _closes(clause, dates) or runs_to(clause, dates):
        return Validity(clause, until=dates[0])
    if len(dates) != 1 or not (phrases("price_words").find(clause) or find_currencies(clause)):
        return None
    before, behind = COMMA.split(clause[: dates[0].start])[-1].strip(), clause[dates[0].end :]
    before = _behind_the_prices(before)
    end = phrases("until").whole(before.strip())
    # 'To 1 May' may be from then on; 'to end of April' can't be.
    last = end in _LAST_DAY or (end == "of_a_span" and _ends_a_month(before.strip(), dates[0]))
    alone = last and not behind.partition(",")[0].strip(" .:")
    return Validity(clause, until=dates[0]) if alone else None


def _behind_the_prices(text: str) -> str:
    """'Prices until' and 'Stock board prices until' without the prices; those of 'Old prices until' are others."""
    found = tokens_of(text)
    for place in range(len(found)):
        named = phrases("price_lists").at(found, place) or phrases("price_words").at(found, place)
        if named is not None:
            boards = takewhile(_describes_boards, (token for token, _, _ in found[named.after :]))
            after = named.after + sum(1 for _ in boards)
            return text[found[after][1] :] if after < len(found) else ""
        if not _describes_boards(found[place][0]):
            break
    return text


def _describes_boards(word: str) -> bool:
    return phrases("generic_names").whole(word) is not None


def _ends_a_month(leads: str, date: DateReading) -> bool:
    """'To end of April', 'to 31 January 2027': no prices begin on the last day of a month, though 'au 31 janvier' may
    tell how things stood on it."""
    if phrases("end_of").at(tokens_of(date.words), 0) is not None:
        return True
    last = all((day + timedelta(days=1)).day == 1 for day in date.readings)
    return last and phrases("until_alone").whole(leads) is not None


def _closes(clause: str, dates: tuple[DateReading, ...]) -> bool:
    if len(dates) != 1 or clause[dates[0].end :].strip(" .:"):
        return False
    return phrases("closes").whole(clause[: dates[0].start].strip()) is not None


def _list_of_a_span(clause: str, dates: tuple[DateReading, ...]) -> Validity | None:
    """'Tarif du 1er janvier au 31 mars 2027', 'Preisliste vom 1.1. bis 31.3.2027': prices of a time end with it."""
    if len(dates) not in (1, 2) or phrases("lead_topic").find(clause) or phrases("not_list_date").find(clause):
        return None
    before = clause[: dates[-1].start]
    end = next((match for match in phrases("until").find(before) if not before[match.end :].strip()), None)
    begin = next((match for match in phrases("since").find(before) if end is not None and match.end < end.start), None)
    if end is None or begin is None or not _A_DAY.fullmatch(before[begin.end : end.start]):
        return None
    named = phrases("price_words").find(before[: begin.start])
    return None if not named or _far(before, named[-1].end, begin.start) else Validity(clause, until=dates[-1])


_A_DAY = re.compile(r"\s*\d{1,2}(?:er|st|nd|rd|th)?[./ ]?[^\d]{0,16}(?:\d{1,4}\.?)?(?:[./]?\d{4})?\s*")
"""A day, perhaps with its month and year."""


def _joins_a_span(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """Little words alone between two days, and not the 'next review' or 'or' that makes two matters of them."""
    words = re.findall(r"[^\W\d_]+", clause[dates[0].end : dates[1].start])
    return all(
        phrases("range").whole(word) != "or"
        and (len(word) <= _LITTLE or any(phrases(kind).whole(word) is not None for kind in ("until", "range")))
        for word in words
    )


_LITTLE = 2


def _is_labelled(clause: str, label: Found[str], dates: tuple[DateReading, ...]) -> bool:
    """The last of a clause's dates, right behind the label's colon; before it may stand the one of the paper: 'Offre du
    3 novembre 2026, validité : 18 décembre 2026'."""
    apart = all(other.end <= label.start for other in dates[:-1])
    return bool(dates) and apart and _only_a_colon(clause[label.end : dates[-1].start])


def _only_a_colon(between: str) -> bool:
    """'Validité : 17 octobre 2026': the label of a last day."""
    return ":" in between and not between.strip(" :\u00a0")


def _labels_its_date(clause: str, date: DateReading) -> bool:
    """'Validité 31/12/2026' and no more: a noun labels its last day; 'valable 31/12/2026' may name the first."""
    label, after = clause[: date.start].rpartition(",")[2].strip(), clause[date.end :].strip(" .")
    return not after and phrases("valid").whole(label) == "label"


def _far(clause: str, start: int, end: int) -> bool:
    """More than four words between the word and its date belong to something else."""
    return len(tokens_of(clause[start:end])) > 4


_DASH = re.compile(r"\d[^\W\d]*[ .]*[^\W\d]*\.?\s*[-–—]\s*$")
"""A day, perhaps with its month, and a dash right before the last day."""


def _relative(clause: str, days: int, dates: tuple[DateReading, ...], months: int = 0) -> Validity:
    if len(dates) == 1:
        return Validity(clause, days=days, base=dates[0], months=months)
    # The acceptance of 'open for acceptance for 45 days' begins nothing.
    told = without_weights(clause)
    valid = phrases("valid").find(told)
    said = [match for match in phrases("not_list_date").find(told) if not within(match, valid)]
    return Validity(clause, unread=True) if dates or said else Validity(clause, days=days, months=months)
