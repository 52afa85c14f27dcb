"""Offers whose order size decides whether they include freight: 'From 5 t delivered; below that plus 48 EUR/t'."""

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.order_terms import small_orders_cost_more, ton_of
from tracker.intake.offers.said import Said
from tracker.intake.offers.scope import Scope
from tracker.intake.values.charges import ChargeWords
from tracker.intake.values.delivered_from import DeliveredFrom
from tracker.intake.values.delivery import Delivery
from tracker.intake.values.small_orders import DearerIfSmall


def fill_delivered_from(draft: Draft, scope: Scope, facts: FileFacts) -> tuple[Said[ChargeWords], ...]:
    """Whether a price of one order size includes freight, where nothing nearer says so; the freight of small orders.

    A price for orders on both sides of that weight is left open.
    """
    said = scope.nearest(DeliveredFrom)
    if len({one.value for one in said}) != 1:
        return ()
    told = said[0].value
    least = told.least.kg(ton_of(told.least, facts), facts.decimal_sign)
    if least is None or draft.delivered is not None:
        return ()
    if draft.from_kg is not None and draft.from_kg >= least:
        draft.delivered = True
    elif draft.below_kg is not None and draft.below_kg <= least and (told.collected or _collected_else(scope)):
        draft.delivered = False
    else:
        return ()
    draft.evidence.append(said[0].evidence("delivered"))
    charged = draft.delivered is False and told.freight is not None
    if draft.delivered or charged:
        # Nothing is left to tell of what small orders cost more.
        dearer = (
            one.value.words for one in scope.nearest(DearerIfSmall) if told.words and told.words in one.value.words
        )
        more = set(map(small_orders_cost_more, dearer))
        draft.notes = [note for note in draft.notes if note.text not in more]
    return (Said(told.freight, said[0].where, said[0].words),) if charged and told.freight is not None else ()


def _collected_else(scope: Scope) -> bool:
    """'All prices ex works' beside 'delivered free from 5 t'."""
    others = [one.value.delivered for one in scope.all_of(Delivery) if not one.value.conditional]
    return bool(others) and not any(others) and None not in others
