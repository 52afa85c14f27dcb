"""What sentences about deliveries tell beside lead times, and which of their words speak of one.

'Wir liefern in 3 Wochen' does, where 'wir liefern auf Paletten, Rückgabe binnen 30 Tagen' counts something else; 'we
ship 5 days a week' says how often, and 'samples in 2 days' how soon what is no order comes.
"""

import re
from collections.abc import Sequence
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.orders.bracket_pieces import LOADS_AND_COUNTS, VEHICLES
from tracker.intake.values.times.lead import LeadUnit, lead_phrases
from tracker.intake.values.times.times_in_words import counts_in_figures, counts_time, times_in_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import joined, pattern, phrases, without_words, words
from tracker.intake.words.phrases import Found, blanked, tokens_of

_FIGURE = re.compile(r"\d")
_TO = rf"(?:[-–/]|\b{pattern('range', *words('range'))}\b)"
_COUNTS = re.compile(rf"\d+(?:[.,]\d+)?(?:\s*{_TO}\s*\d+)?\s*$", re.IGNORECASE)
_TIME = re.compile(r"\d[^,;]*")
_SMALL = (
    "delivery", "incoterms", "from_stock", "to_the_buyer", "buyer_sites", "the_buyer", "goods_delivered", "all_goods",
    "forms", "about", "articles",
)  # fmt: skip
"""What may stand between a verb and its time, beside the small words of lead times."""


def lead_topics(clause: str) -> Sequence[Found[str]]:
    """The words that speak of lead time; a verb such as 'wir liefern' only where its time stands right behind it, or
    where no figure stands at all: 'ready to ship (stock)'."""
    found = phrases("lead_topic").find(clause)
    if _FIGURE.search(times_in_figures(clause)) is None:
        return found
    return [topic for topic in found if topic.value != "verb" or _tells_when(clause, topic.end)]


def _tells_when(clause: str, start: int) -> bool:
    """Whether a time stands right behind a verb, or is led to by a word of its own or weeks by a comma: 'we ship any
    item in 10 days', 'we deliver in Ohio, 3 weeks'."""
    return time_led(clause, start) is not None or _time_within(clause, start)


def _time_within(clause: str, start: int) -> bool:
    """No word up to there may be unknown, for samples, replacements and papers are sent as well, and none behind may
    tell that something else is done by then: 'we ship on pallets within 30 days returnable'."""
    behind = times_in_figures(clause[start:])
    figure = _FIGURE.search(behind)
    told = _TIME.match(behind, figure.start()) if figure is not None else None
    if told is None or any(phrases(section).find(behind[: told.end()]) for section in _DONE_BESIDES):
        return False
    unit = next((match.value for match in lead_phrases().find(told.group()) if match.value in (*LeadUnit, "month")), "")
    ahead = behind[: told.start()].rstrip()
    if "," in ahead[:-1] or not changes_nothing(ahead):
        return False
    led = any(match.end == len(ahead) for match in phrases("within_a_time").find(ahead))
    return unit in set(LeadUnit) if led else ahead.endswith(",") and unit == LeadUnit.WEEK


def changes_nothing(between: str) -> bool:
    """Whether no word of it is unknown: how, where and on what goods are sent; whole loads are some of them."""
    # The longest phrase of all: 'in der Regel' holds an article.
    rest = blanked(between, (match.span for match in joined(*_SENT, *_SMALL).find(between)))
    loads = (match.span for match in phrases("bracket").find(rest) if match.value in _PACKED)
    return not any(map(str.isalpha, _without_small(blanked(rest, loads))))


_PACKED = tuple(kind for kind in LOADS_AND_COUNTS if kind not in VEHICLES)
_DONE_BESIDES = ("not_lead", "other_times", "only_if", "confirmations", "exceptions", "samples")
_SENT = ("sent_so", "beside_a_time", "within_a_time", "countries", "order_words", "generic_names", "all_of_them")


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
    between = without_words(between, *_SMALL)
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
        behind = phrases("rhythms").at(tokens_of(said), 0)
        if match.value not in ("day", "working_day") or counted is None or behind is None:
            continue
        # 'Lead time 3 days - weekly deliveries' has a time before the dash.
        if not said[: behind.start].strip():
            spans.append((counted.start(), match.end + (behind.end if behind.value == "behind" else 0)))
    return blanked(clause, spans)


def without_samples(clause: str) -> str:
    """The clause without the parts between its commas whose time is that of samples or trials; those of which it counts
    from when they please, or is that of orders as well, stay."""
    if not phrases("samples").find(clause):
        return clause
    first, *parts = COMMA.split(clause)
    begins = begins_with_samples(first)
    return ", ".join(part for part in (first, *parts) if not (_of_samples(part) or (begins and not _of_board(part))))


def begins_with_samples(part: str) -> bool:
    """'Our A4 samples are free'; not 'sample and production lead time'."""
    return any(match.first <= _FIRST for match in phrases("samples").find(part)) and not with_orders(part)


_FIRST = 2


def _of_board(part: str) -> bool:
    """Behind 'samples are free' a time is that of orders where its own words tell it: 'lead time 3 weeks', 'goods in 3
    weeks'; 'dispatch within 3 days' is that of the samples."""
    return tells_of_orders(part) or any(phrases(section).find(part) for section in ("order_words", "goods_delivered"))


def tells_of_orders(part: str) -> bool:
    """Whether a part counts a lead time by its name, or from the order: 'delivery 3 weeks after order'."""
    own = any(not of_deliveries(part, match) for match in phrases("lead_topic").find(part))
    return counts_time(part) and (own or bool(phrases("from_order").find(part)))


_OF_DELIVERIES = ("dispatch", "shipments", "deliveries_named")


def of_deliveries(text: str, topic: Found[str]) -> bool:
    """Whether words for lead time may as well tell of anything that is delivered: 'delivery', 'availability', 'we
    ship'; 'Lieferzeit' names a lead time alone."""
    said = text[topic.start : topic.end]
    return topic.value == "verb" or any(phrases(section).whole(said) is not None for section in _OF_DELIVERIES)


def with_orders(part: str) -> bool:
    """Whether what a part says of samples is said of orders as well, 'sample and production lead time', or of these
    once the samples please: 'lead time 3 weeks after approval of samples', and not 'approved samples ship in 3 days'
    nor 'samples for approval'."""
    samples = phrases("samples").find(part)
    said = phrases("samples_passed").find(part) if samples else []
    pleased = any(match.value == "any" for match in said)
    for sample in samples:
        for match in said:
            if match.value == "orders" and _are_joined(part, sample, match):
                return True
            if (match.value == "after" or (match.value == "since" and pleased)) and _leads_to(part, match, sample):
                return True
    return False


def _are_joined(part: str, one: Found[str], other: Found[str]) -> bool:
    first, last = sorted((one, other), key=lambda match: match.start)
    return phrases("and_words").whole(part[first.end : last.start]) is not None


def _leads_to(part: str, after: Found[str], sample: Found[str]) -> bool:
    """'After approval of the sample': nothing between but that it pleases."""
    if sample.start < after.end:
        return False
    between = _without_small(part[after.end : sample.start])
    pleased = (match for match in phrases("samples_passed").find(between) if match.value in ("any", "of"))
    return not any(map(str.isalpha, blanked(between, (match.span for match in pleased))))


def _of_samples(part: str) -> bool:
    if with_orders(part):
        return False
    figure = _FIGURE.search(times_in_figures(part))
    return any(figure is None or match.start < figure.start() for match in phrases("samples").find(part))
