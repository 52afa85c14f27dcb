"""What a clause says of the delivery of orders, without what it says of other things that come or go: samples, returns,
damaged goods, goods that stay the vendor's, and how board is packed."""

from tracker.intake.values.freight.delivery import Delivery, find_delivery
from tracker.intake.values.freight.freight_to_buyer import costs_to_the_buyer
from tracker.intake.values.freight.things_delivered import tells_of_other_things
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.times.lead_sentences import times_deliveries
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def freight_of_orders_in(clause: str) -> str:
    """The clause without its parts about other goods; '' where the whole of it tells of something else."""
    own = _of_orders(clause)
    others = (
        _tells_of_packing,
        _allows_for_collection,
        _tells_of_property,
        _tells_of_other_things,
        _tells_of_a_start,
        _is_in_anothers_freight,
        costs_to_the_buyer,
    )
    return "" if any(tells(own) for tells in others) else own


def _of_orders(clause: str) -> str:
    """The clause without its parts that tell how samples and damaged goods come: 'Muster frei Haus', 'goods delivered
    damaged should be refused'."""
    parts = COMMA.split(clause)
    if _begins_with_others(parts[0]) and not any(phrases("price_words").find(part) for part in parts):
        return ""
    left = [part for part in parts if not (_of_samples(part) or _of_damaged_goods(part))]
    return clause if len(left) == len(parts) else ", ".join(left)


def _begins_with_others(part: str) -> bool:
    """'Sample sheets are shipped from stock, freight paid', 'Returns only carriage paid': they are what the whole
    sentence is about."""
    said = (next(iter(phrases(section).find(part)), None) for section in _OTHERS)
    led = min((one for one in said if one is not None), key=lambda one: one.first, default=None)
    joined = any(match.value in ("and", "or") for match in phrases("range").find(part))
    return led is not None and led.first <= 1 and not joined


def _of_samples(part: str) -> bool:
    said = find_delivery(part)
    ahead = part[: part.find(said.words)] if said is not None else ""
    if not any(phrases(section).find(ahead) for section in _OTHERS) or phrases("price_words").find(part):
        return False
    # 'Samples and orders are delivered free'.
    return not any(match.value in ("and", "or") for match in phrases("range").find(ahead))


def _of_damaged_goods(part: str) -> bool:
    """The state that they come in stands right beside the word for it."""
    said = find_delivery(part)
    if said is None or not said.delivered:
        return False
    before, _, behind = part.partition(said.words)
    states = phrases("damaged")
    ahead = any(match.end == len(before.rstrip()) for match in states.find(before))
    return ahead or states.at(tokens_of(behind.lstrip()), 0) is not None


def _tells_of_packing(clause: str) -> bool:
    """'Sheets are delivered unwrapped on one-way pallets': how the goods come, and not at whose freight; 'board is
    delivered to your dock on pallets' says both."""
    packed = phrases("packed").find(clause)
    # 'Pallets are wrapped and delivered with corner protection'.
    goods = next(iter([*phrases("goods_delivered").find(clause), *packed[:1]]), None)
    if goods is None or goods.first > _FIRST_WORDS or not packed or packed[-1].start < goods.end:
        return False
    said = find_delivery(clause)
    if said is None or not _is_one_word(said) or "," in clause[goods.end : clause.find(said.words)]:
        # 'Frei Haus', 'delivered price'; the title 'Sheets on pallets, delivered'.
        return False
    return not any(phrases(words).find(clause) for words in ("price_words", "carriage", "to_the_buyer", "the_buyer"))


def _allows_for_collection(clause: str) -> bool:
    """'If you pick up at our dock we allow $0.60 per cwt', 'Bei Selbstabholung vergüten wir 12 EUR/t': the prices
    without that are others."""
    said = find_delivery(clause)
    if said is None or said.delivered is not False:
        return False
    ahead = clause[: clause.find(said.words)]
    if any(phrases(section).find(ahead) for section in ("price_words", "forms")):
        # 'With prices FOB mill we allow 2 % for cash', 'for rolls FOB mill, discount 2 %'.
        return False
    on_collection = any(match.start == 0 for match in phrases("on_collection").find(ahead))
    allowed = any(phrases(section).find(clause) for section in ("allows_money", "reductions", "discounts"))
    return on_collection and allowed and len(ahead.split()) <= _FIRST_WORDS


def _tells_of_property(clause: str) -> bool:
    """'Goods delivered remain our property until paid': of what came, and not how."""
    said = find_delivery(clause)
    return (
        said is not None and said.delivered is True and _is_one_word(said) and bool(phrases("kept_ours").find(clause))
    )


def _tells_of_other_things(clause: str) -> bool:
    said = find_delivery(clause)
    return said is not None and tells_of_other_things(clause, said)


def _tells_of_a_start(clause: str) -> bool:
    """'Leveranstiden från bruk är fyra veckor': from where the weeks count, though they are not read."""
    said = find_delivery(clause)
    if said is None or said.delivered is not False:
        return False
    ahead = clause[: clause.find(said.words)]
    timed = any(match.end == len(ahead.rstrip()) for match in phrases("lead_topic").find(ahead))
    return timed and counts_time(clause) and not times_deliveries(clause)


def _is_in_anothers_freight(clause: str) -> bool:
    """'Die Maut ist in der Fracht des Spediteurs enthalten': in what else than the prices something is."""
    said = find_delivery(clause)
    return said is not None and bool(said.delivered) and bool(phrases("to_carriers").find(clause))


def _is_one_word(said: Delivery) -> bool:
    """'Delivered', which is said of many things; 'frei Haus' and 'delivered price' are of freight alone."""
    return len(said.words.split()) == 1


_OTHERS = ("samples", "other_dealings")
_FIRST_WORDS = 2
"""Words that may stand before the goods: 'all our', 'unsere'."""
