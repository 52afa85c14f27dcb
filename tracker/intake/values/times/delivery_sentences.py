"""What sentences about deliveries tell beside lead times, and which of their words speak of one.

'Wir liefern in 3 Wochen' does, where 'wir liefern auf Paletten, Rückgabe binnen 30 Tagen' counts something else; 'we
ship 5 days a week' says how often, and 'samples in 2 days' how soon what is no order comes.
"""

import re
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.times.lead import LeadUnit, lead_phrases
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

_FIGURE = re.compile(r"\d")
_COUNT = re.compile(r"\d+(?:[.,]\d+)?\s*$")
_TIME = re.compile(r"\d[^,;]*")
_SMALL = (
    "delivery", "incoterms", "from_stock", "to_the_buyer", "buyer_sites", "the_buyer", "goods_delivered", "all_goods",
    "forms", "about", "articles",
)  # fmt: skip
"""What may stand between a verb and its time, beside the small words of lead times."""


def lead_topics(clause: str) -> list[Found[str]]:
    """The words that speak of lead time; a verb such as 'wir liefern' only where its time stands right behind it, or
    where no figure stands at all: 'ready to ship (stock)'."""
    found = phrases("lead_topic").find(clause)
    if _FIGURE.search(times_in_figures(clause)) is None:
        return found
    verbs = phrases("sending_verbs")
    return [
        topic
        for topic in found
        if verbs.whole(clause[topic.start : topic.end]) is None or time_led(clause, topic.end) is not None
    ]


@lru_cache(maxsize=8192)
def time_led(text: str, start: int) -> LeadUnit | None:
    """The unit of the time that the words up to there lead to: nothing but small words between; weeks may stand behind
    a comma, where '…, 30 days' may be terms of payment."""
    behind = times_in_figures(text[start:])
    figure = _FIGURE.search(behind)
    told = _TIME.match(behind, figure.start()) if figure is not None else None
    if told is None:
        return None
    units = (match.value for match in lead_phrases().find(told.group()) if match.value in (*LeadUnit, "month"))
    first = next(units, None)
    unit = LeadUnit(first) if first in set(LeadUnit) else None
    ahead = behind[: told.start()]
    if unit is LeadUnit.DAY and fold(ahead).strip() == _CREDIT:
        return None
    between = _without_small(ahead).strip(" .:–-=(~≈")
    return unit if not between or (between == "," and unit is LeadUnit.WEEK) else None


_CREDIT = fold("à")
"""'Servimos a 30 días' and 'nous livrons à 30 jours' tell in how many days to pay."""


def _without_small(between: str) -> str:
    for section in _SMALL:
        between = blanked(between, (match.span for match in phrases(section).find(between)))
    small = (match for match in lead_phrases().find(between) if match.value in ("filler", "upper", "stock"))
    return blanked(between, (match.span for match in small))


def without_rhythms(clause: str) -> str:
    """The clause without the '5 days a week' of what is done so often."""
    if not any(match.value == "behind" for match in phrases("rhythms").find(clause)):
        return clause
    spans = []
    for match in lead_phrases().find(clause):
        counted = _COUNT.search(clause[: match.start])
        behind = phrases("rhythms").at(tokens(fold(clause[match.end :])), 0)
        if match.value in ("day", "working_day") and counted is not None and behind is not None:
            spans.append((counted.start(), match.end + (behind.end if behind.value == "behind" else 0)))
    return blanked(clause, spans)


def without_samples(clause: str) -> str:
    """The clause without the parts between its commas whose time is that of samples or trials."""
    if not phrases("samples").find(clause):
        return clause
    return ", ".join(part for part in COMMA.split(clause) if not _of_samples(part))


def _of_samples(part: str) -> bool:
    figure = _FIGURE.search(times_in_figures(part))
    return any(figure is None or match.start < figure.start() for match in phrases("samples").find(part))
