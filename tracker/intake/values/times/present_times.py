"""Two times of which one is that of today: 'Current lead time 3 weeks, normal 5 weeks'; and one that is no more: 'Lead
time was 5 weeks'."""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.times.counted_from_order import counted_from
from tracker.intake.values.times.lead import lead_text
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import phrases, words
from tracker.intake.words.phrases import Found, blanked

_PARTS = re.compile(r",(?!\d)|[()]|\s[-–—/]\s(?!\d)")


@lru_cache(maxsize=8192)
def of_today(clause: str) -> str:
    """The clause without the usual or former times beside its one present time; their words for lead time stay.

    Each of them tells its time and nothing else: 'Now 4 weeks for rolls, normally 6 weeks for sheets' and '6 weeks, 3
    weeks from stock' have two ways to go, and are left with both times.
    """
    kinds = {part: _kinds(part) for part in _PARTS.split(clause) if counts_time(part)}
    present = [part for part, kind in kinds.items() if "now" in kind]
    others = [part for part in kinds if part not in present]
    if len(present) != 1 or not others or not all(kinds[part] for part in others):
        return clause
    if not all(map(_is_only_a_time, kinds)) or any(map(_is_of_some, _PARTS.split(clause))):
        return clause
    kept = (_topic(part) if part in others else part for part in _PARTS.split(clause))
    return ", ".join(part.strip() for part in kept if part.strip())


@lru_cache(maxsize=8192)
def is_past(part: str) -> bool:
    """Whether a part tells a time that was: 'Lead time was 5 weeks'; 'is now' is said of the one after it."""
    return _kinds(part) >= {"past"} and "now" not in _kinds(part)


def _kinds(part: str) -> set[str]:
    return {match.value for match in _found(part)}


def _found(part: str) -> list[Found[str]]:
    """The words for then and now; the 'vår' of 'vår leveranstid' is no 'var'."""
    listed = {word.casefold() for group in words("present_times").values() for word in group}
    found = phrases("present_times").find(part)
    return [one for one in found if (said := part[one.start : one.end]).isascii() or said.casefold() in listed]


def _topic(part: str) -> str:
    return " ".join(part[match.start : match.end] for match in phrases("lead_topic").find(part))


def _is_only_a_time(part: str) -> bool:
    """'Lead time was 5 weeks after order', and why it is so; 'for makings' and 'from stock' say which board's it is."""
    part = _without_reason(part)
    found = (_found(part), phrases("copula").find(part), phrases("articles").find(part), _own_topics(part))
    spans = [match.span for matches in found for match in matches]
    lead = lead_text(blanked(part, (*spans, *counted_from(part))).strip(" :.-–"))
    return lead is not None and lead.high > 0


def _own_topics(part: str) -> Iterator[Found[str]]:
    """Words for lead time that no 'for' leads to."""
    for topic in phrases("lead_topic").find(part):
        if not any(led.after == topic.first for led in phrases("about_lines").find(part)):
            yield topic


def _is_of_some(part: str) -> bool:
    """The 'for rolls' between commas."""
    led = phrases("about_lines").find(part)
    return bool(led) and led[0].first == 0 and not counts_time(part)


def _without_reason(part: str) -> str:
    """'Currently 6 weeks due to the rebuild' without the reason."""
    reasons = (match.start for match in phrases("reasons").find(part))
    return next((part[:start] for start in reasons if counts_time(part[:start])), part)
