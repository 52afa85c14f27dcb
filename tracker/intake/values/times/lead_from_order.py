"""Lead times counted from the order, told by what the goods do then: 'Our items leave the warehouse 5 days after we
receive your order', 'Ware wird 14 Tage nach Auftragseingang bereitgestellt', '2 days after order' alone.

Much else is counted from an order as well: deposits, proofs, changes, claims. So no word of the sentence may stand
there that is not known to speak of goods that leave.
"""

import re
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.lead_unread import counts_time
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found, blanked

_LONGEST = 5
"""Words of the longest time: '10 to 12 working days'."""
_APART = ("only_if", "exceptions", "special_orders", "some_of_them")
_GOODS = ("goods_delivered", "goods_leave")
_AND = re.compile(rf"\s{pattern('range', 'and')}\s", re.IGNORECASE)
_SAID = ("goods_delivered", "goods_leave", "articles", "all_of_them", "about")


@lru_cache(maxsize=8192)
def lead_from_order(clause: str) -> LeadTime | None:
    """The time right before the one 'after your order' of a clause whose other words say that goods leave then."""
    timed = [part for part in COMMA.split(times_in_figures(clause)) if counts_time(part)]
    if len(timed) != 1 or any(phrases(section).find(clause) for section in ("not_lead", *_APART)):
        return None
    return _of_part(timed[0])


@lru_cache(maxsize=4096)
def leaves_at_once(clause: str) -> LeadTime | None:
    """'All lots are FOB our warehouse and can be picked up right away': goods that leave on the day of the order."""
    at_once = phrases("at_once").find(clause)
    if len(at_once) != 1 or any(phrases(section).find(clause) for section in ("not_lead", *_APART)):
        return None
    parts = [part for piece in COMMA.split(clause) for part in _AND.split(piece)]
    goods = any(match.start == 0 for said in _GOODS for match in phrases(said).find(_without_articles(parts[0])))
    told = [part for part in parts if phrases("at_once").find(part)]
    (one,) = phrases("at_once").find(told[0]) if len(told) == 1 else (None,)
    leaves = one is not None and _goods_leave(blanked(told[0], (one.span,)))
    return LeadTime(0, 0, told[0].strip()) if goods and leaves else None


def _without_articles(part: str) -> str:
    rest = part.strip()
    for section in ("articles", "all_of_them"):
        lead = next((match for match in phrases(section).find(rest) if match.start == 0), None)
        rest = rest[lead.end :].lstrip() if lead is not None else rest
    return rest


@lru_cache(maxsize=4096)
def is_from_order(words: str) -> bool:
    """Whether a time is counted from the order: '2 days after order'."""
    return bool(phrases("from_order").find(times_in_figures(words)))


def _of_part(part: str) -> LeadTime | None:
    ordered = phrases("from_order").find(part)
    if len(ordered) != 1:
        return None
    ahead = part[: ordered[0].start].rstrip()
    for count in range(_LONGEST, 1, -1):
        words = " ".join(ahead.split()[-count:])
        said = lead_text(words) if words[:1].isdigit() else None
        if said is not None and said.high > 0:
            rest = blanked(part, ((ahead.rfind(words), ordered[0].end),)) if words in ahead else part
            return said if _goods_leave(rest) else None
    return None


def _goods_leave(rest: str) -> bool:
    """It says so, in words that are all known to."""
    spans: list[tuple[int, int]] = []
    leaves: list[Found[str]] = phrases("goods_leave").find(rest)
    spans.extend(match.span for match in leaves)
    for section in _SAID:
        spans.extend(match.span for match in phrases(section).find(blanked(rest, spans)))
    told = any(match.value == "any" for match in leaves) and all(match.value != "past" for match in leaves)
    return told and not any(map(str.isalnum, blanked(rest, spans)))
