"""Goods that no list of board sells, of which a vendor may tell terms beside those of board: tissue, pulp, corrugated
boxes."""

from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases

_LED = ("articles", "copula", "goods_go_on", "minimum", "lead_topic", "delivery", "valid", "price_words")
"""What goes on behind 'for tissue'; a noun there makes another thing of them: 'for pulp grades'."""


@lru_cache(maxsize=8192)
def of_other_goods(part: str) -> bool:
    """'Prices for tissue …', 'Pulp is delivered by rail', 'Tissue prices are …', 'Pulp: …': a part that such goods
    begin by themselves.

    What is called after them is no such goods ('pulp surcharge', 'recovered fibre grades', 'corrugated covers'), nor is
    what board is joined to ('corrugated and solid board').
    """
    led = next(iter(phrases("other_goods").find(part)), None)
    if led is None or rest_of(part[: led.start], (), "ahead_of_goods"):
        return False
    behind = part[led.end :].strip(" .")
    meant = any(match.value == "for" for match in phrases("ahead_of_goods").find(part[: led.start]))
    if meant:
        return behind[:1].isdigit() or behind[:1] == ":" or any(_begins(behind, section) for section in _LED)
    charged = any(phrases(section).find(behind) for section in ("charges", "surcharge_words"))
    goes_on = behind[:1] == ":" or any(_begins(behind, section) for section in ("goods_go_on", "copula", "price_words"))
    return goes_on and not charged


def _begins(text: str, section: str) -> bool:
    return any(match.first == 0 for match in phrases(section).find(text))


def without_other_goods(clause: str) -> str:
    """The parts of a clause between its commas without those of such goods."""
    parts = COMMA.split(clause)
    own = [part for part in parts if not of_other_goods(part)]
    return clause if len(own) == len(parts) else ",".join(own).strip()


def behind_other_goods(clause: str) -> str:
    """What a clause that such goods begin goes on with: theirs, or that of board. What names prices is that of board:
    'prices for tissue on request, board prices delivered'."""
    first, *parts = COMMA.split(clause)
    if not of_other_goods(first):
        return ""
    return ",".join(part for part in parts if not phrases("price_words").find(part)).strip()
