"""What is said of one kind of load, at the prices whose order size is called by it: 'LTL', 'Teilladung'; and of small
orders, at the prices whose order size is all below theirs: 'Freight 48 EUR/t, on orders under 5 t only'."""

from collections.abc import Iterator

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.order_terms import small_orders_cost_more, ton_of
from tracker.intake.offers.said import Said
from tracker.intake.offers.scope import Scope
from tracker.intake.values.brackets_in_kg import KgBracket
from tracker.intake.values.charges import ChargeWords
from tracker.intake.values.loads_charged import PART_LOAD, LoadCharge, load_named
from tracker.intake.values.small_orders_charged import SmallOrderCharge


def load_of(bracket: Said[KgBracket] | None) -> str:
    """The kind of load that an order size is called by, '' for none."""
    return load_named(bracket.words) if bracket is not None else ""


def charges_of_load(scope: Scope, load: str) -> Iterator[Said[ChargeWords]]:
    """The charges of a price for part loads."""
    for said in scope.nearest(LoadCharge) if load == PART_LOAD else ():
        yield Said(said.value.charge, said.where, said.words)


def charges_of_size(draft: Draft, scope: Scope, facts: FileFacts) -> tuple[Said[ChargeWords], ...]:
    """The charges that small orders bear, where these prices are for such; nothing is left to tell of small orders
    where none or all of the prices' orders are. A price for orders on both sides of the weight is left as it is."""
    charged: list[Said[ChargeWords]] = []
    for said in scope.nearest(SmallOrderCharge):
        limit = said.value.below.kg(ton_of(said.value.below, facts), facts.decimal_sign)
        small = limit is not None and draft.below_kg is not None and draft.below_kg <= limit
        large = limit is not None and draft.from_kg is not None and draft.from_kg >= limit
        charged.extend([Said(said.value.charge, said.where, said.words)] if small else [])
        if small or large:
            told = small_orders_cost_more(said.value.words)
            draft.notes = [note for note in draft.notes if note.text != told]
    return tuple(charged)


def drop_told_of_loads(draft: Draft, scope: Scope, load: str) -> None:
    """A price for part loads bears what these are charged, and one for full loads does not: nothing is left to tell."""
    if load:
        told = {small_orders_cost_more(said.value.words) for said in scope.nearest(LoadCharge)}
        draft.notes = [note for note in draft.notes if note.text not in told]
