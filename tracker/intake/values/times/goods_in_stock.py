"""Whether a part of a note says that goods are in stock, and no more: all that a list offers, by what the list calls
it, 'The items are in stock', 'Artiklarna finns i lager', or those that it is known to be about, 'we keep in stock'."""

from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.currency import find_currencies
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
    """'In stock in small lots', 'in kleinen Mengen ab Lager': others wait, and for how long is not told. What begins
    with 'Small lots …' says nothing of other orders."""
    little = [match for match in phrases("little_in_stock").find(clause) if clause[: match.start].strip(" -–•*")]
    stock = joined("from_stock.any", "kept_in_stock").find(clause) if little else []
    return bool(stock) and not find_currencies(clause)


def told_in_stock(part: str) -> bool:
    """Where nothing but this is said, of whatever goods: 'are kept in stock', 'liefern wir ab Lager'."""
    said = joined("from_stock.any", "kept_in_stock").find(part)
    if len(said) != 1 or denied(part, said[0]) or phrases("may_be").find(part):
        return False
    return not rest_of(part, [said[0].span], *_BESIDE, *_HAD)


_HAD = ("goods_delivered", "goods_had")
