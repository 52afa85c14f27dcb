"""What has a last day of its own beside the prices: 'FSC certificate valid until 30 June 2028', 'Frachtsätze gültig bis
31.12.2026'."""

import re

from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.boards.kinds_meant import kind_meant
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.other_goods import behind_other_goods, of_other_goods
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import DateReading, find_dates
from tracker.intake.values.times.delivery_sentences import of_deliveries
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

_HELD = ("valid", "until", "since")


def of_another(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """Whether a clause says until when something else than its prices holds.

    The words right before its words for validity, or between these and the day, name what does: 'Validité du certificat
    FSC : 30/06/2028'.
    """
    spoken = [match.start for section in _HELD for match in phrases(section).find(clause)]
    if not spoken:
        return False
    begins = max((comma.end() for comma in COMMA.finditer(clause[: min(spoken)])), default=0)
    if of_other_goods(clause[begins:]):
        return True
    ends = next((date.start for date in dates if date.start >= min(spoken)), len(clause))
    told = clause[begins:ends]
    return _names_another(told) and not _times_a_lead(told)


def may_be_of_another(clause: str) -> bool:
    """'Fuel surcharge $12/ST, valid until 31 December 2026' may be said of the surcharge or of the prices, and so may
    'FSC certificate no. 1234, valid until 30 June 2028'."""
    held = [match.start for match in phrases("valid").find(clause)]
    if any(phrases("valid").find(part) for part in COMMA.split(behind_other_goods(clause))):
        return True
    ahead = clause[: min(held)] if held else ""
    if _times_a_lead(COMMA.split(ahead)[-1]) and find_dates(clause[min(held) :]):
        return True
    if not ahead.rstrip().endswith(",") or not _names_another(ahead):
        return False
    return bool(phrases("held_apart").find(ahead)) or any(charge.amounts for charge in find_charges(ahead))


def labelled_of_some(clause: str, speaks: list[Found[str]], ends: list[Found[str]]) -> bool:
    """'Valid: stock items to 18 December 2026': how long the others hold is not told."""
    held = next((match for match in speaks if clause[match.end :].lstrip().startswith(":")), None)
    end = next((match for match in ends if held is not None and match.start > held.end), None)
    between = clause[held.end : end.start] if held is not None and end is not None else ""
    return any(phrases(section).find(between) for section in ("from_stock", "forms_named")) or names_grade(between)


def ends_otherwise(behind: str, until: DateReading) -> bool:
    """Whether a clause goes on, behind its last day, with another for some boards, or in words that leave open for
    what: 'until 31 December, CRB until 31 January', '…, the specials only until 31 January'. What is known to be no
    board may end on its own: 'the freight rates only until 31 January'."""
    if all(day.readings == until.readings for day in find_dates(behind)):
        # Also 'valid until 30 April 2027 / gültig bis 30.04.2027'.
        return False
    return names_grade(behind) or any(map(_ends_for_some, COMMA.split(_DAYS_COMMA.sub(r"\1 ", behind))))


def _ends_for_some(part: str) -> bool:
    days = find_dates(part)
    ends = [match for match in phrases("until").find(part) if days and match.end <= days[-1].start]
    if not ends or of_another(part, days) or any(phrases(section).find(part) for section in _DELIVERED):
        return False
    spans = [(day.start, day.end) for day in days]
    limited = any(not part[only.end : end.start].strip() for only in phrases("only_these").find(part) for end in ends)
    return limited or kind_meant(part) is not None or not rest_of(part, spans, "until", *_NO_OTHER_MATTER)


_DELIVERED = ("lead_topic", "deliveries_named")
"""'Prices valid until 30 April, for delivery until 31 May'."""
_DAYS_COMMA = re.compile(r"(\d),(?=\s\d{4}\b)")
"""That of 'April 30, 2027'."""
_NO_OTHER_MATTER = ("valid", "about_lines", "but_words", "forms", "board_goods", "those_of")


def _names_another(words: str) -> bool:
    """It names one of those things, or a lead time, before any money, no prices and no papers that hold them."""
    others = [match for section in ("held_apart", "charges") for match in phrases(section).find(words)]
    others += _lead_times(words)
    if not others or find_delivery(words) is not None:
        return False
    own = [match for section in ("price_words", "list_names") for match in phrases(section).find(words)]
    first = min(match.start for match in others)
    own = [match for match in own if not _SHARE.search(words[: match.start])]
    return all(_is_theirs(words, match, others) for match in own) and not find_currencies(words[:first])


def _times_a_lead(words: str) -> bool:
    """'Lead time 3 weeks' right before 'valid until 31 December 2026', with no comma between: a term of its own, or the
    time that holds until then."""
    return counts_time(words) and bool(_lead_times(words))


def _lead_times(words: str) -> list[Found[str]]:
    """Words that name a lead time alone; the term of 'plazo de validez' is that of the prices."""
    valid = phrases("valid").find(words)
    return [
        topic
        for topic in phrases("lead_topic").find(words)
        if not of_deliveries(words, topic)
        and not any(phrases("leads_to_things").whole(words[topic.end : one.start].strip()) for one in valid)
    ]


_SHARE = re.compile(r"%[^,;%]{0,20}$")
"""The price of 'a surcharge of 1.5 % of the board price' is what a share is of."""


def _is_theirs(words: str, own: Found[str], others: list[Found[str]]) -> bool:
    """The 'rates' of 'freight rates' and 'sheeting rates', and the 'tarifas' of 'tarifas de corte', are no prices of
    board."""
    for other in others:
        if own.start < other.end and other.start < own.end:
            return True
        if other.end <= own.start and not words[other.end : own.start].strip():
            return True
        between = words[own.end : other.start]
        if between and phrases("leads_to_things").whole(between.strip()) is not None:
            return True
    return False
