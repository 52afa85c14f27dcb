"""What sentences about deliveries tell beside lead times, and which of their words speak of one.

'Wir liefern in 3 Wochen' does, where 'wir liefern auf Paletten, Rückgabe binnen 30 Tagen' counts something else; 'we
ship 5 days a week' says how often, and 'samples in 2 days' how soon what is no order comes.
"""

import re
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.times.lead import LeadUnit, lead_phrases
from tracker.intake.values.times.times_in_words import counts_in_figures, times_in_figures
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import pattern, phrases, words
from tracker.intake.words.phrases import Found, blanked

_FIGURE = re.compile(r"\d")
_COUNTS = re.compile(rf"\d+(?:[.,]\d+)?(?:\s*(?:[-–/]|\b{pattern('range', *words('range'))}\b)\s*\d+)?\s*$", re.IGNORECASE)
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
    return [topic for topic in found if topic.value != "verb" or _tells_when(clause, topic.end)]


def _tells_when(clause: str, start: int) -> bool:
    """Whether a time stands right behind a verb, or is led to by a word of its own or weeks by a comma: 'we ship any
    item in 10 days', 'we deliver in Ohio, 3 weeks'. Nothing up to there may be about what is done besides."""
    return time_led(clause, start) is not None or _time_within(clause, start)


def _time_within(clause: str, start: int) -> bool:
    behind = times_in_figures(clause[start:])
    figure = _FIGURE.search(behind)
    told = _TIME.match(behind, figure.start()) if figure is not None else None
    if told is None or any(phrases(section).find(behind[: told.end()]) for section in _DONE_BESIDES):
        return False
    unit = next((match.value for match in lead_phrases().find(told.group()) if match.value in (*LeadUnit, "month")), "")
    ahead = behind[: told.start()].rstrip()
    if ahead.endswith(","):
        return unit == LeadUnit.WEEK and "," not in ahead[:-1]
    led = any(match.end == len(ahead) for match in phrases("within_a_time").find(ahead))
    return led and unit in set(LeadUnit) and "," not in ahead


_DONE_BESIDES = ("not_lead", "other_times", "only_if", "confirmations", "exceptions", "samples")


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
    clause, spans = counts_in_figures(clause), []
    for match in lead_phrases().find(clause):
        counted = _COUNTS.search(clause[: match.start])
        said = clause[match.end :]
        behind = phrases("rhythms").at(tokens(fold(said)), 0)
        if match.value in ("day", "working_day") and counted is not None and behind is not None:
            if not said[: behind.start].strip():
                spans.append((counted.start(), match.end + (behind.end if behind.value == "behind" else 0)))
    return blanked(clause, spans)


def without_samples(clause: str) -> str:
    """The clause without the parts between its commas whose time is that of samples or trials; those of which it counts
    from when they please, or is that of orders as well, stay."""
    if not phrases("samples").find(clause):
        return clause
    return ", ".join(part for part in COMMA.split(clause) if not _of_samples(part))


def with_orders(part: str) -> bool:
    """Whether what a part says of samples is said of orders as well, or of these once the samples please."""
    return bool(phrases("samples_passed").find(part)) and bool(phrases("samples").find(part))


def _of_samples(part: str) -> bool:
    if with_orders(part):
        return False
    figure = _FIGURE.search(times_in_figures(part))
    return any(figure is None or match.start < figure.start() for match in phrases("samples").find(part))
