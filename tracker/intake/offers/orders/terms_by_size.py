"""What the size of an order decides of its price: whether it includes freight, and the charges of small orders. A price
for orders on both sides of the weight is left as it is."""

from enum import Enum, auto

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.order_terms import drop_told, small_orders_cost_more, still_told, ton_of
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.orders.masses import Mass
from tracker.intake.values.orders.small_orders import DearerIfSmall, size_of_small
from tracker.intake.values.orders.terms_by_size import DeliveredFrom, SmallOrderCharge
from tracker.intake.values.orders.weights_in_words import weights_in_figures
from tracker.trade.offer import Note, NoteCode


class _Orders(Enum):
    """On which side of a weight all orders of a price are."""

    BELOW = auto()
    FROM_IT_ON = auto()


def fill_terms_by_size(draft: Draft, scope: Scope, facts: FileFacts) -> tuple[Said[ChargeWords], ...]:
    """Whether a price of one order size includes freight, where nothing nearer says so; the charges that it bears as
    one of small orders."""
    return (*_freight_of_size(draft, scope, facts), *_charges_of_small(draft, scope, facts))


def _orders(draft: Draft, weight: Mass, facts: FileFacts) -> _Orders | None:
    kg = weight.kg(ton_of(weight, facts), facts.decimal_sign)
    if kg is not None and draft.from_kg is not None and draft.from_kg >= kg:
        return _Orders.FROM_IT_ON
    return _Orders.BELOW if kg is not None and draft.below_kg is not None and draft.below_kg <= kg else None


def _freight_of_size(draft: Draft, scope: Scope, facts: FileFacts) -> tuple[Said[ChargeWords], ...]:
    """'From 5 t delivered; below that plus 48 EUR/t': what is delivered, what is not, and what that is charged."""
    said = scope.nearest(DeliveredFrom)
    if len({one.value for one in said}) != 1 or draft.delivered is not None:
        return ()
    told = said[0].value
    orders = _orders(draft, told.least, facts)
    if orders is None or (orders is _Orders.BELOW and not (told.collected or _collected_else(scope))):
        return ()
    draft.delivered = orders is _Orders.FROM_IT_ON
    draft.evidence.append(said[0].evidence("delivered"))
    freight = told.freight if orders is _Orders.BELOW else None
    if draft.delivered or freight is not None:
        dearer = (said.value.words for said in scope.nearest(DearerIfSmall))
        drop_told(draft, {words for words in dearer if told.words and told.words in words})
    return (Said(freight, said[0].where, said[0].words),) if freight is not None else ()


def _collected_else(scope: Scope) -> bool:
    """'All prices ex works' beside 'delivered free from 5 t'."""
    others = [one.value.delivered for one in scope.all_of(Delivery) if not one.value.conditional]
    return bool(others) and not any(others) and None not in others


def _charges_of_small(draft: Draft, scope: Scope, facts: FileFacts) -> tuple[Said[ChargeWords], ...]:
    """'Freight 48 EUR/t, on orders under 5 t only' at the prices for such."""
    charged: list[Said[ChargeWords]] = []
    for said in scope.nearest(SmallOrderCharge):
        orders = _orders(draft, said.value.below, facts)
        if orders is _Orders.BELOW:
            charged.append(Said(said.value.charge, said.where, said.words))
        if orders is not None:
            drop_told(draft, {said.value.words})
        elif not any(said.value.words in note.text for note in draft.notes):
            # 'Energy surcharge $20/ST below 10,000 lb', where the price is for smaller and larger orders.
            told = small_orders_cost_more(said.value.words)
            draft.notes.append(Note(NoteCode.BRACKET_UNREAD, said.where, told))
    unread = (said for said in scope.nearest(DearerIfSmall) if still_told(draft, said.value.words))
    return (*charged, *(_not_certain(said) for said in unread if _may_cost_more(said.value.words, draft, facts)))


def _may_cost_more(words: str, draft: Draft, facts: FileFacts) -> bool:
    """Whether all orders of a price are of those that these words say to cost more."""
    size = size_of_small(weights_in_figures(words))
    denies = any(denied(words, match) for match in charges_named(words))
    return size is not None and not denies and _orders(draft, size.below, facts) is _Orders.BELOW


def _not_certain(said: Said[DearerIfSmall]) -> Said[ChargeWords]:
    """What such orders cost more, though how much, or whether the price has it in it, is not told for certain."""
    named = charges_named(said.value.words)
    label = label_of(said.value.words, named) if named else said.value.words
    return Said(ChargeWords(ChargeKind.OTHER, label), said.where, said.words)
