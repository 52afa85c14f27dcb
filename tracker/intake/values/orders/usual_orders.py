"""What a note says of usual orders: without the terms of special sizes, of other goods, of orders in a hurry and of
those delivered free, which no line of the list comes with: 'Mindestmenge für Sonderformate 5 t', 'Expedite charge below
2 weeks'."""

import re
from functools import lru_cache

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.subjects import begins_with_goods
from tracker.intake.values.orders.other_goods import of_other_goods
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.delivery_sentences import begins_with_samples, tells_of_orders, with_orders
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import phrases

_BREAKS = re.compile(r",(?!\d)|\s\(|\)")
_NEAR = 16


@lru_cache(maxsize=8192)
def of_usual_orders(text: str) -> str:
    """The text without what it says of other orders; the text itself where it says nothing of any."""
    told = [(clause, _usual(clause)) for clause in clauses(text)]
    if all(clause == usual for clause, usual in told):
        return text
    return "; ".join(usual for _, usual in told if usual)


def _usual(clause: str) -> str:
    """What is left of a clause: nothing where it begins with other orders, for what it goes on with may be theirs."""
    if not _of_others(clause):
        return clause
    parts = [part.strip() for part in _BREAKS.split(clause) if part.strip()]
    if of_other_goods(parts[0]):
        # 'Prices for tissue on request, minimum 5 t': whose it is is open, but for what names prices.
        return ", ".join(part for part in parts[1:] if phrases("price_words").find(part) and not _of_others(part))
    if _of_others(parts[0]):
        # 'Samples free, lead time 3 weeks' and 'Samples delivered free, goods ex works'.
        own = (part for part in parts[1:] if tells_of_orders(part) or begins_with_goods(part))
        return ", ".join(own) if begins_with_samples(parts[0]) else ""
    return ", ".join(part for part in parts if not _of_others(part))


def _of_others(part: str) -> bool:
    special = bool(phrases("special_orders").find(part)) and not with_orders(part)
    return special or _tells_of_another(part)


def _tells_of_another(part: str) -> bool:
    return of_other_goods(part) or _of_delivery(part) or _of_a_hurry(part)


def _of_delivery(part: str) -> bool:
    """'Minimum order for free delivery 5 t': smaller ones are taken, and pay their freight."""
    for topic in phrases("minimum").find(part):
        behind = part[topic.end :]
        for led in phrases("about_lines").find(behind):
            freight = _freight_at(behind[led.end :])
            if freight is not None and (led.start <= 1 or freight <= 1):
                return True
    return False


def _freight_at(words: str) -> int | None:
    """Where 'free delivery' or 'prepaid freight' begins."""
    freight = [match.start for match in phrases("charges").find(words) if match.value == "freight"]
    said = find_delivery(words)
    return min([*freight, *([] if said is None else [words.find(said.words)])], default=None)


def _of_a_hurry(part: str) -> bool:
    """'Orders under 2 weeks lead time: +50 EUR/t': money for less than a time."""
    below = [match.end for match in phrases("bracket").find(part) if match.value == "below"]
    return any(counts_time(part[end : end + _NEAR]) for end in below) and bool(find_currencies(part))
