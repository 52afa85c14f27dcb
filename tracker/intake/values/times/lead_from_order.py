"""Lead times counted from the order, told by what the goods do then: 'Our items leave the warehouse 5 days after we
receive your order', 'Ware wird 14 Tage nach Auftragseingang bereitgestellt', '2 days after order' alone.

Much else is counted from an order as well: deposits, proofs, changes, claims. So no word may stand beside the time, up
to the next comma, that is not known to speak of goods that leave; and where other goods leave at another time, or it is
only what is in stock that leaves so, the time of a list's boards is not known.
"""

import re
from collections.abc import Sequence
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.times.counted_from_order import counted_from
from tracker.intake.values.times.lead import LeadTime, lead_text
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.words.lists import pattern, phrases, without_leading, without_words
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
    if len(timed) != 1 or any(match.value != "straight" for match in phrases("at_once").find(clause)):
        return None
    if any(phrases(section).find(clause) for section in ("not_lead", *_APART)):
        return None
    said, rest = _of_part(timed[0])
    return said if said is not None and _leaving(rest) == "any" else None


@lru_cache(maxsize=4096)
def leaves_at_once(clause: str) -> LeadTime | None:
    """'All lots are FOB our warehouse and can be picked up right away': goods that leave on the day of the order."""
    told = _part_at_once(clause)
    known = told is not None and not _of_stock(told) and not _parts_with_times(clause)
    return LeadTime(0, 0, told.strip()) if told is not None and known else None


@lru_cache(maxsize=4096)
def leaves_for_some(clause: str) -> bool:
    """Whether goods leave so that it is not known which: 'Stock items are shipped at once', 'Goods are delivered
    immediately, sheets 10 days'."""
    if _goes_on_for_some(clause):
        return True
    told = _part_at_once(clause)
    if told is not None:
        return _of_stock(told) or bool(_parts_with_times(clause))
    timed = _timed(clause)
    left = [_leaving(rest) for said, rest in timed if said is not None]
    return "of_stock" in left or ("any" in left and len(timed) > 1)


def _goes_on_for_some(clause: str) -> bool:
    """The 'five for' of 'four weeks after your order, five for heavy boards': the same unit, and another time."""
    first, *parts = COMMA.split(clause)
    if not parts or not counts_time(first) or phrases("not_lead").find(first):
        return False
    begun = (part.split(maxsplit=2) for part in parts if not counts_time(part))
    return any(
        len(words) > 1
        and phrases("about_lines").whole(words[1]) is not None
        and (words[0].isdigit() or len(words[0]) >= _NUMBER)
        and times_in_figures(f"{words[0]} {_WEEKS}")[:1].isdigit()
        for words in begun
    )


_WEEKS = "weeks"
_NUMBER = 3
"""Letters of the shortest number; the 'a' and 'en' before it are articles."""


def leaves_from_stock(clause: str) -> LeadTime | None:
    """The one time of such a clause that it says of goods in stock: 'Stock items leave our mill 5 days after order'."""
    told = _part_at_once(clause)
    if told is not None:
        return LeadTime(0, 0, told.strip()) if _of_stock(told) and not _parts_with_times(clause) else None
    timed = _timed(clause)
    return timed[0][0] if len(timed) == 1 and _leaving(timed[0][1]) == "of_stock" else None


def _timed(clause: str) -> list[tuple[LeadTime | None, str]]:
    """What each part that counts a time of delivery counts from the order, and its other words."""
    return list(map(_of_part, _parts_with_times(times_in_figures(clause))))


def _parts_with_times(clause: str) -> list[str]:
    """Those that count a time which is none of payment and the like."""
    return [part for part in COMMA.split(clause) if counts_time(part) and not phrases("not_lead").find(part)]


def _part_at_once(clause: str) -> str | None:
    """The one part of a sentence about goods which says that they leave at once."""
    if not phrases("at_once").find(clause) or any(phrases(section).find(clause) for section in _APART):
        return None
    parts = [part for piece in COMMA.split(clause) for part in _AND.split(piece)]
    goods = without_leading(parts[0].strip(), "articles", "all_of_them")
    if not any(match.start == 0 for said in _GOODS for match in phrases(said).find(goods)):
        return None
    told = [part for part in parts if _leaves_at_once(part)]
    return told[0] if len(told) == 1 else None


def _leaves_at_once(part: str) -> bool:
    """'Ware ist ab sofort abholbereit' does, where 'wird ab sofort geliefert' says what is done from now on."""
    found = phrases("at_once").find(part)
    if len(found) != 1 or found[0].value == "straight":
        return False
    rest = blanked(part, (found[0].span,))
    waits = any(match.value == "waiting" for match in phrases("goods_leave").find(rest))
    return (found[0].value == "any" or waits) and _leaving(rest) is not None


def _of_stock(part: str) -> bool:
    return any(match.value == "of_stock" for match in phrases("goods_leave").find(part))


@lru_cache(maxsize=4096)
def is_from_order(words: str) -> bool:
    """Whether a time is counted from the order: '2 days after order'."""
    return bool(counted_from(times_in_figures(words)))


def _of_part(part: str) -> tuple[LeadTime | None, str]:
    """The time that a part counts from the order, and the part without it."""
    ordered = counted_from(part)
    if len(ordered) != 1:
        return None, part
    (start, end) = ordered[0]
    ahead = part[:start].rstrip()
    for count in range(_LONGEST, 1, -1):
        words = " ".join(ahead.split()[-count:])
        said = lead_text(words) if words[:1].isdigit() else None
        if said is not None and said.high > 0:
            if _needs_another(ahead.removesuffix(words)):
                return None, part
            return said, blanked(part, ((ahead.rfind(words), end),)) if words in ahead else part
    return None, part


def _needs_another(ahead: str) -> bool:
    """'We need shipping instructions 3 days after your order': 'we need' stands not right before the time."""
    plain = without_words(ahead, "about").rstrip()
    return any(match.value == "needs" and match.end != len(plain) for match in phrases("goods_leave").find(plain))


def _leaving(rest: str) -> str | None:
    """'any' where words that are all known to say that goods leave, 'of_stock' where they say it of those in stock."""
    spans: list[tuple[int, int]] = []
    leaves: Sequence[Found[str]] = phrases("goods_leave").find(rest)
    spans.extend(match.span for match in leaves)
    for section in _SAID:
        spans.extend(match.span for match in phrases(section).find(blanked(rest, spans)))
    how = {match.value for match in leaves}
    if not how & {"any", "needs", "waiting"} or "past" in how or any(map(str.isalnum, blanked(rest, spans))):
        return None
    return "of_stock" if "of_stock" in how else "any"
