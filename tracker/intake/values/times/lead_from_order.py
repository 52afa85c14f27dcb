"""Lead times counted from the order, told by what the goods do then: 'Our items leave the warehouse 5 days after we
receive your order', 'Ware wird 14 Tage nach Auftragseingang bereitgestellt', '2 days after order' alone.

Much else is counted from an order as well: deposits, proofs, changes, claims. So no word of the sentence may stand
there that is not known to speak of goods that leave.
"""

from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.lead_unread import counts_time
from tracker.intake.values.times.times_in_words import times_in_figures
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

_LONGEST = 5
"""Words of the longest time: '10 to 12 working days'."""
_SAID = ("goods_delivered", "goods_leave", "articles", "all_of_them", "about")


@lru_cache(maxsize=8192)
def lead_from_order(clause: str) -> LeadTime | None:
    """The time right before the one 'after your order' of a clause whose other words say that goods leave then."""
    timed = [part for part in COMMA.split(times_in_figures(clause)) if counts_time(part)]
    if len(timed) != 1 or any(phrases(section).find(clause) for section in ("not_lead", "only_if", "exceptions")):
        return None
    return _of_part(timed[0])


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
