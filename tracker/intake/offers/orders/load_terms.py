"""What is said of one kind of load, at the prices whose order size is called by it: 'LTL', 'Teilladung'."""

from collections.abc import Iterator

from tracker.intake.offers.draft import Draft
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.order_terms import drop_told
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.orders.brackets_in_kg import KgBracket
from tracker.intake.values.orders.loads_charged import PART_LOAD, LoadCharge, load_named


def load_of(bracket: Said[KgBracket] | None) -> str:
    """The kind of load that an order size is called by, '' for none."""
    return load_named(bracket.words) if bracket is not None else ""


def charges_of_load(scope: Scope, load: str) -> Iterator[Said[ChargeWords]]:
    """The charges of a price for part loads."""
    for said in scope.nearest(LoadCharge) if load == PART_LOAD else ():
        yield Said(said.value.charge, said.where, said.words)


def drop_told_of_loads(draft: Draft, scope: Scope, load: str) -> None:
    """A price for part loads bears what these are charged, and one for full loads does not: nothing is left to tell."""
    if load:
        drop_told(draft, {said.value.words for said in scope.nearest(LoadCharge)})
