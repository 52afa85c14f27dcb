"""Whether a part of a note says that goods are in stock, and no more: all that a list offers, by what the list calls
it, 'The items are in stock', 'Artiklarna finns i lager', or those that it is known to be about, 'we keep in stock'."""

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.lead import lead_phrases
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import joined, phrases

_BESIDE = ("copula", "made_so.there", "made_so.kept", "at_once")


def listed_goods_in_stock(part: str) -> bool:
    """Where nothing else is said: those of 'the items marked * are in stock' are some of them."""
    goods = next((match for match in phrases("listed_goods").find(part) if not part[: match.start].strip()), None)
    said = joined("from_stock.any", "kept_in_stock").find(part)
    if goods is None or len(said) != 1 or denied(part, said[0]) or phrases("may_be").find(part):
        return False
    return not rest_of(part, [goods.span, said[0].span], *_BESIDE)


def in_stock_for_some_orders(clause: str) -> bool:
    """'In stock in small lots', 'in kleinen Mengen ab Lager': others wait, and for how long is not told. 'Small lots,
    ex dock, from stock' is the title of what a list offers."""
    told = without_small_orders(clause)
    little = [match for match in phrases("little_in_stock").find(told) if told[: match.start].strip(" -–•*")]
    stock = joined("from_stock.any", "kept_in_stock").find(told) if little else []
    return bool(stock) and not find_currencies(clause)


def without_small_orders(clause: str) -> str:
    """'Lead time 4 weeks' of 'Lead time 4 weeks, small lots from stock': how soon small orders come says nothing of the
    others. 'Small lots from stock, pence per sheet' is what a list offers."""
    if not joined("little_in_stock", "small_orders_in_stock").find(clause) or _is_of_a_list(clause):
        return clause
    return ", ".join(part for part in COMMA.split(clause) if not _of_small_orders(part))


def of_small_orders_alone(clause: str) -> bool:
    """'Small lots ship from stock': when all others come is not told."""
    return bool(clause.strip()) and not without_small_orders(clause).strip()


def _of_small_orders(part: str) -> bool:
    led = joined("little_in_stock", "small_orders_in_stock").find(part)
    told = bool(led) and not part[: led[0].start].strip(" -–•*")
    stock = joined("from_stock.any", "kept_in_stock", "at_once").find(part)
    return told and (counts_time(part) or bool(stock) or any(one.value == "stock" for one in lead_phrases().find(part)))


def _is_of_a_list(clause: str) -> bool:
    return bool(find_currencies(clause) or phrases("price_words").find(clause))


def told_in_stock(part: str) -> bool:
    """Where nothing but this is said, of whatever goods: 'are kept in stock', 'liefern wir ab Lager'."""
    said = joined("from_stock.any", "kept_in_stock").find(part)
    if len(said) != 1 or denied(part, said[0]) or phrases("may_be").find(part):
        return False
    return not rest_of(part, [said[0].span], *_BESIDE, *_HAD)


_HAD = ("goods_delivered", "goods_had")
