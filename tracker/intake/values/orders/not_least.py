"""Weights beside words for a least that are those of something else than an order: what a truck carries or a roll
weighs, what is bought in a year or earns a discount. Nothing is told of these; where the words are not known, a note
is."""

from collections.abc import Sequence
from decimal import Decimal

from tracker.intake.values.changes.discounts import names_discount
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.least_parts import PIECES, Part
from tracker.intake.values.orders.pieces_weighed import readings_in_kg
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

_HEAVIEST_KG = Decimal(4000)
"""More than any roll or pallet of board weighs (our choice, above what lift trucks carry)."""
_OF_MONEY = ("charges", "price_words")


def of_something_else(part: Part, parts: Sequence[Part]) -> bool:
    """Whether the weights of a part with words for a least are known to be of no order's size."""
    text = part.text
    listed = any(phrases("other_lists").find(one.text) for one in parts if part.text in one.onwards)
    apart = listed or bool(phrases("yearly").find(text)) or names_discount(text)
    small = not _names_orders(text) or phrases("small_orders").find(text)
    # The '2 skids' of 'minimum 2 skids of 2,000 lb' are ordered, and no charge.
    charged = bool(phrases("charges").find(blanked(text, part.pieces))) and bool(small)
    ahead = text[: part.topics[0].start]
    # 'Preise gelten für Anfertigungen ab 10 t' says for which orders these are.
    priced = not phrases("minimum").find(text) and bool(phrases("price_words").find(ahead))
    return apart or charged or priced or _smaller_are_taken(part) or _of_a_load(part, parts) or _of_a_piece(part)


def _names_orders(text: str) -> bool:
    return any(phrases(section).find(text) for section in ("order_words", "minimum_per"))


def _smaller_are_taken(part: Part) -> bool:
    """'No order below 5 t earns a rebate', 'Kein Auftrag unter 5 t wird frei geliefert'."""
    words = " ".join(part.text[topic.start : topic.end] for topic in part.topics)
    refused = bool(phrases("negations").find(words))
    return refused and (_speaks_of_money(part.text) or find_delivery(part.text) is not None)


def _speaks_of_money(text: str) -> bool:
    return names_discount(text) or any(phrases(section).find(text) for section in _OF_MONEY)


def _of_a_load(part: Part, parts: Sequence[Part]) -> bool:
    """'Truckload = 40,000 lb minimum': what a truck must carry; 'minimum one container of 20 t' is an order."""
    (_, (weight, _)), topic = part.masses[0], part.topics[0]
    if topic.start < weight:
        return any(match.value in VEHICLES for match in phrases("bracket").find(part.rest))
    ahead = [*(one.text for one in parts if part.text in one.onwards), part.text[:weight]]
    return any(match.value in VEHICLES for text in ahead for match in phrases("bracket").find(text))


def _of_a_piece(part: Part) -> bool:
    """'Les bobines pèsent au minimum 400 kg', 'Peso mínimo de bobina 500 kg': what one roll weighs."""
    named = any(match.value in PIECES for match in phrases("bracket").find(_without_forms_behind(part)))
    weighed = any(match.value in PIECES for match in phrases("load_weights").find(part.rest))
    return (named or weighed) and _is_light(part) and not phrases("order_words").find(part.text)


def _without_forms_behind(part: Part) -> str:
    """What is left of a part without the 'on rolls' of 'minimum order 5 ST on rolls', which says of which orders."""
    behind = part.text[part.masses[-1][1][1] :]
    led = any(match.start == len(behind) - len(behind.lstrip()) for match in phrases("about_lines").find(behind))
    return "" if led else part.rest


def may_be_of_a_piece(part: Part, parts: Sequence[Part]) -> bool:
    """'Minimum weight 1,500 lb, rolls': what is meant by it may be a roll; 'per item' is of an order, and so is a
    weight that no roll has."""
    told = part.pieces or _names_orders(part.text)
    weighed = bool(phrases("piece_weighs").find(part.text)) and not told
    pieces = any(match.value in PIECES for one in parts for match in phrases("bracket").find(one.text))
    return weighed and pieces and _is_light(part)


def _is_light(part: Part) -> bool:
    readings = readings_in_kg(part.masses[0][0])
    return min(readings, default=Decimal(0)) <= _HEAVIEST_KG
