"""Whether words for deliveries tell when they come, and nothing else: 'Delivery by truck in 3 weeks' does; 'Documents
of delivery within 3 days' and 'Prices firm for shipment within 60 days' do not.

Nearly all that is done about an order is counted in days or weeks. So a part between commas gives a lead time only
where no word is left that is not known to say how goods come, from where, or from when their time is counted; what more
it tells is a person's to read.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.around_delivery import ordered_ahead
from tracker.intake.values.times.delivery_sentences import with_orders
from tracker.intake.values.times.present_times import is_past
from tracker.intake.values.times.times_in_words import counts_time, times_in_figures
from tracker.intake.values.times.told_later import is_a_journey, told_later
from tracker.intake.words.likeness import near_miss
from tracker.intake.words.lists import joined, pattern, phrases, without_words
from tracker.intake.words.phrases import blanked

_KNOWN = (
    "beside_a_time", "sent_so", "lead_topic", "from_order", "around_delivery", "takes_time", "comes_so",
    "counted_after", "order_taken", "the_order", "ordered_ahead", "copula", "delivery", "incoterms", "from_stock",
    "to_the_buyer", "buyer_sites", "the_buyer", "goods_delivered", "all_goods", "forms", "about", "articles",
    "within_a_time", "countries", "all_of_them", "firm_times", "overrides", "lead", "other_goods",
    "told_when", "made_so.to_order",
)  # fmt: skip
_OTHERS = ("besides_deliveries",)
"""'All orders to ship within 30 days' is what buyers are to do."""
_AND = re.compile(rf"\s{pattern('range', 'and', 'or')}\s(?!\d)", re.IGNORECASE)
_BRACKETED = re.compile(r"\(([^()]*)\)")
_STOP = re.compile(r"\.\s+(?=[A-ZÄÖÜÅÉ])")
_MORE_OR_LESS = re.compile(r"±|\+\s?/?\s?[-–]|[-–]\s?/\s?\+|\d\s?\+|\+\s?\d")
"""Also '3+ weeks' and '+ 2 weeks'."""
_NUMBERED = re.compile(r"\A\s*[^\W\d_]+\s+\d{1,3}\s*[:.)]\s+")
"""The 'Note 3:' before it."""
_OTHER_LANGUAGE = re.compile(r"[^\W\d_]+\s*/\s*")


def tells_its_time(part: str) -> bool:
    """Whether words of deliveries stand beside a time in a part, and nothing else is told."""
    return _speaks_of_one(part) and tells_no_more(part)


@lru_cache(maxsize=8192)
def tells_no_more(part: str) -> bool:
    """Whether a part tells nothing else than when deliveries come, or not even that."""
    if ordered_ahead(times_in_figures(part)):
        return True
    if told_later(part) or is_a_journey(part) or is_past(part):
        return False
    if _MORE_OR_LESS.search(part) or _lasts(part):
        return False
    told = _without_prices(_without_reason(_in_brackets(_NUMBERED.sub("", part[: unless_at(part)], count=1))))
    return goes_without_saying(told) or all(map(_adds_nothing, _AND.split(times_in_figures(told))))


def _speaks_of_one(part: str) -> bool:
    return bool(phrases("lead_topic").find(part)) and counts_time(part)


def _lasts(part: str) -> bool:
    """'Availability guaranteed for 30 days'."""
    told = times_in_figures(part)
    return any(told[match.end :].lstrip()[:1].isdigit() for match in phrases("lasting").find(told))


def _in_brackets(part: str) -> str:
    """All of the lead time, where brackets or stops hold it: 'Über 500 g/m² auf Anfrage (Lieferzeit 8 Wochen)', '6
    weeks after order for list B. Good until 7 August'."""
    held = (piece for stop in _STOP.split(part) for piece in (*_BRACKETED.findall(stop), stop))
    return next(filter(_speaks_of_one, held), part)


def _without_reason(part: str) -> str:
    """The part up to why it takes so long: '6 weeks due to the rebuild of our machine'."""
    reasons = (match.start for match in phrases("reasons").find(part))
    return next((part[:start] for start in reasons if _speaks_of_one(part[:start])), part)


def _without_prices(part: str) -> str:
    """The part without the 'net prices delivered' of 'Net prices delivered, lead time 3 weeks' that lost its comma; in
    'prices for delivery within 60 days' the delivery is what prices are for. Also without the 'Levertijd' of 'Levertijd
    / délai'."""
    topic = min((match.start for match in phrases("lead_topic").find(part)), default=0)
    other = _OTHER_LANGUAGE.match(part)
    if other is not None and other.end() == topic:
        return part[topic:]
    prices = [match for match in phrases("price_words").find(part) if match.end <= topic]
    between = part[prices[-1].end : topic] if prices else ""
    if not prices or phrases("lasting").find(between) or any(map(str.isalpha, without_words(between, *_OF_PRICES))):
        return part
    return without_words(part[: prices[-1].end], "prices_of_this_offer", "price_words") + part[prices[-1].end :]


_OF_PRICES = ("delivery", "incoterms", "basis", "currency")


def _adds_nothing(piece: str) -> bool:
    """The least weight of an order is a term of its own: 'four weeks and not less than 5 t of an item'."""
    of_an_order = bool(phrases("minimum").find(piece) or find_masses(piece))
    own = of_an_order and not counts_time(piece) and not phrases("lead_topic").find(piece)
    return own or goes_without_saying(piece)


def goes_without_saying(part: str) -> bool:
    """Whether no word is left without those that say nothing else beside a lead time. Of all lists the longest phrase
    counts: 'in der Regel' holds an article and a word for a time."""
    told = times_in_figures(part)
    samples = ("samples", "samples_passed") if with_orders(part) else ()
    how = (match.span for match in phrases("not_lead").find(told) if match.value == "how")
    told = blanked(told, how)
    found = joined(*_OTHERS, *_KNOWN, *samples).find(told)
    if any(match.value in _OTHERS for match in found):
        return False
    return not any(map(_says_more, _words(blanked(told, (match.span for match in found)))))


def _words(rest: str) -> Iterator[str]:
    return (match.group() for match in re.finditer(r"[^\W\d_]+", rest))


def _says_more(word: str) -> bool:
    """It does where it is not one of them misspelt, 'Entrga 4 semanas', nor a list's letter: 'lists A and B'."""
    return not (near_miss(word, "dispatch") or (len(word) == 1 and word.isupper()))
