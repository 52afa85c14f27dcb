"""Whether a part of a note says that all a list offers is in stock, by what the list calls it: 'The items are in
stock', 'Artiklarna finns i lager'."""

from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import joined, phrases

_BESIDE = ("copula", "made_so.there", "made_so.kept", "at_once")


def listed_goods_in_stock(part: str) -> bool:
    """Where nothing else is said: those of 'the items marked * are in stock' are some of them."""
    goods = next((match for match in phrases("listed_goods").find(part) if not part[: match.start].strip()), None)
    said = joined("from_stock.any", "kept_in_stock").find(part)
    if goods is None or len(said) != 1 or denied(part, said[0]) or phrases("may_be").find(part):
        return False
    return not rest_of(part, [goods.span, said[0].span], *_BESIDE)
