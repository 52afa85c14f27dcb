"""What a clause says of the delivery of orders, without what it says of other things that come or go: samples, returns,
papers, damaged goods, and how board is packed.

A part of it tells of the prices only where these, the boards of the list or nothing at all is its subject, and where
nothing stands behind the term but a place or what goes without saying.
"""

import re
from enum import Enum, auto
from functools import lru_cache

from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.figures.rates import is_added
from tracker.intake.values.freight.delivery import Delivery, find_delivery, terms_in
from tracker.intake.values.freight.freight_to_buyer import costs_to_the_buyer
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.subjects import Subject, begins_with_goods, left_over, subject_of
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.orders.small_orders import begins_with_small_orders
from tracker.intake.values.times.lead_sentences import times_deliveries
from tracker.intake.values.times.leads_in_full import tells_its_time
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.values.times.told_later import told_later
from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import Found, blanked, tokens_of


class _Told(Enum):
    """Of what a part with a term of delivery tells. PARTLY: of the prices, and then of more that is not read. UNKNOWN:
    of nothing that is known to be the list's, or to be something else."""

    OF_PRICES = auto()
    PARTLY = auto()
    OF_OTHERS = auto()
    UNKNOWN = auto()


def freight_of_orders_in(clause: str) -> str:
    """The clause without its parts about other goods; '' where the whole of it tells of something else."""
    if begins_with_small_orders(clause):
        # Of them the prices' own freight is told: that it is another.
        return clause
    told = COMMA.split(clause)
    # In 'Order confirmation in 2 days, delivered to your dock' only the first part is of another thing.
    parts = [part for part in told if not told_later(part)] or told
    goes_on = any(phrases("price_words").find(part) for part in parts) or any(map(begins_with_goods, parts[1:]))
    if _begins_with_others(parts[0]) and not goes_on:
        return ""
    left = [part for part in parts if _told(part) not in (_Told.OF_OTHERS, _Told.UNKNOWN)]
    own = clause if len(left) == len(told) else ", ".join(left)
    return "" if costs_to_the_buyer(own) else own


def told_of_unknown(clause: str) -> set[bool | None]:
    """What terms say in parts about something unknown, where they are said of nothing but freight or of some loads:
    'all else ab Werk' and 'LTL freight extra' contradict 'delivered', and 'engineers are collected' does not."""
    found = ((part, find_delivery(part)) for part in COMMA.split(clause) if _told(part) is _Told.UNKNOWN)
    return {said.delivered for part, said in found if said and _contradicts(part, said)}


def _contradicts(part: str, said: Delivery) -> bool:
    return _is_firm(said) or bool(_loads(part) or phrases("price_words").find(part))


def goes_on_unread(clause: str) -> bool:
    """'Prices cover freight up to $40/ST', 'delivered on Saturdays': what stands behind may bound the term."""
    return any(_told(part) is _Told.PARTLY for part in COMMA.split(clause))


@lru_cache(maxsize=8192)
def _told(part: str) -> _Told | None:
    said = find_delivery(part)
    if said is None:
        return None
    ahead, behind = _around(part, said)
    behind = behind if said.delivered else _before_instead(behind)
    subject = subject_of(ahead, *_AHEAD, *(_JOINED if _joins(ahead) else ()))
    # Of 'Delivery 3 weeks ex mill' the time is no unknown thing.
    unknown = subject is Subject.OTHER and not (_is_a_title(ahead, said) or tells_its_time(ahead))
    timed = times_deliveries(part)
    start = said.delivered is False and _is_a_start(ahead, behind)
    if _is_of_other_things(ahead, behind, said) or (start and (unknown or not timed)):
        return _Told.OF_OTHERS
    if said.delivered and subject is not Subject.PRICES and _tells_a_size(ahead):
        return _Told.PARTLY
    if unknown:
        # Whether a region bounds a delivery is heard elsewhere: 'within Ohio delivered'.
        return None if said.delivered and phrases("reach").find(ahead) else _Told.UNKNOWN
    # 'With prices FOB mill we allow 2 % for cash' goes on to a discount.
    goes_on = counts_time(behind) or timed or (subject is Subject.PRICES and names_discount(behind))
    if said.delivered is None or goes_on or not _rest_behind(behind, said):
        return _Told.OF_PRICES
    if said.delivered and (subject is not Subject.BOARDS or not _is_one_word(said)):
        return _Told.PARTLY
    return _Told.UNKNOWN


def _around(part: str, said: Delivery) -> tuple[str, str]:
    """What stands before the first term of a part, from the last bracket or colon on, and what behind it as far as the
    next one, or as an 'unless marked'."""
    terms = terms_in(part)
    start = terms[0].start if terms else part.find(said.words)
    end = terms[0].end if terms else start + len(said.words)
    rest = blanked(part, (term.span for term in terms))
    behind = _ENDS.split(rest[end:])[0]
    otherwise = [one.start for one in phrases("unless").find(behind) if one.value == "lead"]
    return _STARTS.split(rest[:start])[-1], behind[: min(otherwise)] if otherwise else behind


def _before_instead(behind: str) -> str:
    """'Freight is not included but charged by weight': what is done instead changes nothing of it."""
    return behind[: min((match.start for match in phrases("but_rather").find(behind)), default=len(behind))]


_STARTS = re.compile(r"[():\n]|\s(?:[-–—]+|/)\s")
_ENDS = re.compile(r"[()=\n]|\s(?:[-–—]+|/)\s")


def _is_of_other_things(ahead: str, behind: str, said: Delivery) -> bool:
    """'Catalogues are delivered', 'free delivery of the catalogue', 'orders may be collected', 'delivered damaged'."""
    if any(_is_small(ahead, one) for one in phrases("may_be").find(ahead)):
        return True
    if said.delivered and _leads_to_others(behind):
        return True
    if any(phrases(section).find(ahead) for section in ("price_words", "list_names", "goods_meant")):
        return False
    how = _tells_their_state(ahead, behind) or _tells_of_packing(ahead, behind) or _tells_their_form(behind)
    # 'Weight: as delivered' and 'delivered within 3 weeks' are of no freight, where nothing else is named.
    how = how or phrases("as_it_comes").whole(ahead.strip()) is not None or _tells_when(ahead, behind)
    told = _is_one_word(said) and how
    return told or _names_others(ahead)


def _is_a_start(ahead: str, behind: str) -> bool:
    """'Leveranstiden från bruk är fyra veckor': from where the weeks count."""
    return counts_time(behind) and any(one.end == len(ahead.rstrip()) for one in phrases("lead_topic").find(ahead))


def _names_others(ahead: str) -> bool:
    """'Samples and orders are delivered free' tells of both."""
    rest = without_words(ahead, "ahead_of_delivered")
    return not _joins(ahead) and any(phrases(section).find(rest) for section in _OTHERS)


def _joins(words: str) -> bool:
    return any(match.value in ("and", "or") for match in phrases("range").find(words))


def _leads_to_others(behind: str) -> bool:
    """The 'of the catalogue' of 'free delivery of the catalogue'."""
    led = phrases("leads_to_things").at(tokens_of(behind.strip()), 0)
    rest = behind.strip()[led.end :] if led is not None else ""
    found = [one.start for section in _OTHERS for one in phrases(section).find(rest)]
    return bool(found) and not left_over(rest[: min(found)], "articles", "the_buyer")


def _tells_their_state(ahead: str, behind: str) -> bool:
    """'Delivered damaged' and 'delivered remain our property' are said of what came."""
    return any(phrases(section).find(words) for section in ("damaged", "kept_ours") for words in (ahead, behind))


def _tells_of_packing(ahead: str, behind: str) -> bool:
    """'Sheets are delivered unwrapped on one-way pallets': how the goods come, and not at whose freight; 'board is
    delivered to your dock on pallets' says both."""
    packed = phrases("packed").find(_without_loads(f"{ahead} {behind}"))
    led = phrases("to_the_buyer").find(behind) or phrases("carriage").find(f"{ahead} {behind}")
    return bool(packed) and not led


def _tells_their_form(behind: str) -> bool:
    """'Delivered in reels' says how board comes; 'delivered in rolls, USD/ST' does as well, and 'delivered in reels to
    your dock' is of freight."""
    form = phrases("comes_in_forms").at(tokens_of(behind.strip()), 0)
    return form is not None and not any(map(str.isalpha, behind.strip()[form.end :]))


def _tells_when(ahead: str, behind: str) -> bool:
    led = phrases("within_a_time").at(tokens_of(behind.strip()), 0) is not None
    return bool(led and counts_time(behind)) and subject_of(ahead, *_AHEAD) is not Subject.PRICES


def _without_loads(words: str) -> str:
    """The pallets of 'in full pallets' are how much is ordered at once."""
    return blanked(words, (load.span for load in _loads(words)))


def _loads(words: str) -> list[Found[str]]:
    return [one for one in phrases("loads_priced").find(words) if one.value != "filler"]


def _is_a_title(ahead: str, said: Delivery) -> bool:
    """Names before the boards or the prices, and a term that is said of nothing else: 'Harlan stock rolls ex works'."""
    named = all(name[0].isupper() for name in left_over(ahead, *_AHEAD))
    if not _is_firm(said):
        return named and bool(phrases("price_words").find(said.words))
    if phrases("price_words").find(said.words):
        return True
    priced = [one.start for one in phrases("price_words").find(ahead)]
    listed = any(phrases(section).find(ahead) for section in ("price_words", "list_names", "board_goods", "basis"))
    if priced and subject_of(ahead[priced[-1] :], *_AHEAD, "charges") is Subject.PRICES:
        # 'On page two you find our prices ex works'.
        return True
    return listed and named


def _is_firm(said: Delivery) -> bool:
    """'FOB mill', 'frei Haus', 'franco', which are said of no other thing as 'delivered' and 'freight' are."""
    return not any(phrases(section).find(said.words) for section in ("done_words", "carriage", "bears", "loaded"))


def _tells_a_size(ahead: str) -> bool:
    """'From five tonnes on we deliver free', 'full loads are delivered': of some orders."""
    led = any(one.value in ("from", "above", "below") for one in phrases("bracket").find(ahead))
    return bool(_loads(ahead)) or (led and bool(find_mass_units(ahead) or phrases("order_words").find(ahead)))


def _rest_behind(behind: str, said: Delivery) -> list[str]:
    """The words behind a term that are no place and do not go without saying there; the 'Saturdays' of 'delivered on
    Saturdays' are none, though they have a capital."""
    orders = phrases("order_words").at(tokens_of(behind.strip()), 0)
    if orders is not None or (said.delivered and _costs_extra(behind)):
        # 'For FOB mill orders' is said of some, and 'delivered east coast +$20/ST' is dearer than the prices.
        return [behind]
    bounds = [one for section in ("days_off", "weekdays") for one in phrases(section).find(behind)]
    bounds += [one for one in phrases("only_if").find(without_words(behind, "basis")) if _is_small(behind, one)]
    rest = [word for word in left_over(behind, *_BEHIND) if not word[0].isupper()]
    only = phrases("only_these").find(behind) if said.delivered else []
    if bounds or (only and any(map(str.isalpha, blanked(behind, (one.span for one in only))))):
        # 'Delivered only' bounds nothing, and 'delivered to Atlanta only' does.
        return [behind]
    # The place of an incoterm may be written in any language: 'DAP magazyn klienta'.
    named = phrases("incoterms").whole(said.words) is not None and len(rest) <= _LONGEST_NAME
    return [] if named else rest


def _costs_extra(behind: str) -> bool:
    """'Freight delivered UK extra', 'delivered east coast +$20/ST', and not 'at no extra charge', 'plus VAT', 'plus an
    energy surcharge'."""
    other = {one.value for one in phrases("charges").find(behind)} - {"freight", "other"}
    denied = any(phrases(section).find(behind) for section in ("negations", "taxes"))
    last = len(behind.rstrip(" ."))
    extra = any(one.end == last for one in phrases("extra_words").find(behind)) or is_added(behind)
    return extra and not other and not denied


_LONGEST_NAME = 2


def _is_small(text: str, word: Found[str]) -> bool:
    """The 'Falls' of 'FOB Anvil Falls' is no 'falls'."""
    return text[word.start].islower()


def _begins_with_others(part: str) -> bool:
    """'Sample sheets are shipped from stock, freight paid', 'Returns only carriage paid': they are what the whole
    sentence is about."""
    said = (next(iter(phrases(section).find(part)), None) for section in _OTHERS)
    led = min((one for one in said if one is not None), key=lambda one: one.first, default=None)
    return led is not None and led.first <= 1 and not _joins(part)


def _is_one_word(said: Delivery) -> bool:
    """'Delivered', which is said of many things; 'frei Haus' and 'delivered price' are of freight alone."""
    return len(said.words.split()) == 1


_JOINED = ("samples", "other_goods")
"""With board they are what a sentence is of as well."""
_OTHERS = ("samples", "other_dealings", "things_sent")
_AHEAD = (
    "ahead_of_delivered", "articles", "all_of_them", "carriage", "freight_included", "delivery", "incoterms", "months",
    "quarters", "tax", "taxes", "to_the_buyer", "orders_meant", "bears", "and_words", "whole_markets", "papers",
    "valid", "since", "until", "quoting",
)  # fmt: skip
_BEHIND = (
    "regions_reached", "freight_conditions", "kept_ours", "bears", "to_the_buyer", "behind_delivered", "whole_markets",
    "loads_priced", "basis", "currency", "tax", "taxes", "months", "quarters", "valid", "until", "delivery",
    "incoterms", "freight_included", "carriage", "charges", "packed", "price_words", "list_names", "papers", "forms",
    "goods_delivered", "board_goods", "orders_meant", "and_words", "articles", "count_words", "minimum",
    "order_words", "against", "payment_means",
)  # fmt: skip
