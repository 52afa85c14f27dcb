"""The last day that a row's remark names without a word for validity: 'Restposten, nur bis 15.10.2026'."""

from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.times.dates import DateReading, find_dates
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

_NEITHER = " .:()–-/!*"


@lru_cache(maxsize=8192)
def until_in_remark(text: str) -> Validity | None:
    """The row's last day where 'only until' it is said, of the row or of a lot that is sold off; unread where the day
    may be of something else. None where no day ends anything, and for 'delivery until', which ends no price."""
    days = find_dates(text)
    if not days or not phrases("until_plain").find(text):
        return None
    parts = [part for clause in clauses(text) for part in COMMA.split(clause)]
    ending = [(part, left) for part in parts if (left := _left_beside_the_end(part)) is not None]
    if not ending:
        return None
    ((part, left), *more) = ending
    only = bool(phrases("only_these").find(part))
    others = [_without(other, "sold_off", "only_these") for other in parts if other != part]
    known = _without(left, "sold_off", "price_words", "only_these", "articles")
    if only and not (known or any(others) or more) and len(days) == 1:
        return Validity(text.strip(), until=days[0])
    return Validity(text.strip(), unread=True) if only or not known else None


def _left_beside_the_end(part: str) -> str | None:
    """What a part says beside 'until' and the day right behind it; None where it says no such thing."""
    for day in find_dates(part):
        end = _end_before(part, day)
        if end is not None:
            return f"{part[:end]} {part[day.end :]}".strip(_NEITHER)
    return None


def _end_before(part: str, day: DateReading) -> int | None:
    ends = [one for one in phrases("until_plain").find(part) if one.end <= day.start]
    return next((one.start for one in ends if not part[one.end : day.start].strip()), None)


def _without(text: str, *sections: str) -> str:
    spans = [match.span for section in sections for match in phrases(section).find(text)]
    return blanked(text, spans).strip(_NEITHER)
