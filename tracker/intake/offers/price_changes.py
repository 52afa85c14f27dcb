"""Prices that a note or a head changes are not what is paid as they stand: a person says what to do with them."""

from collections.abc import Collection, Iterator

from tracker.intake.columns.column import Column, Kind, PriceColumn
from tracker.intake.offers.answered import key_about
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.said import Said, at
from tracker.intake.offers.scope import Scope
from tracker.intake.values.discounts import discount_to_come
from tracker.intake.values.multiples import multiplied_in_head
from tracker.intake.values.price_changes import ChangesPrice
from tracker.intake.values.roles import Role
from tracker.intake.values.tax import tax_included
from tracker.trade.offer import Evidence, NoteCode

CHANGE = "price-change"
"""The kind of the question whether prices are paid as they stand, though the sheet says what changes them."""
STAND = "stand"


def ask_of_change(
    draft: Draft,
    price: PriceColumn,
    scope: Scope,
    facts: FileFacts,
    own: Said[ChangesPrice] | None,
    *,
    beside: Collection[Kind],
) -> None:
    """Holds back a price that its own row or head, or the first note around it that is about it, says to change.

    `own`: what its row says, or a footnote whose sign it carries.
    `beside`: the kinds of prices in the table: a discount of no known size is taken off list prices, and what is said
    of tax is said of prices with tax, where there are such.
    """
    if any(asked.key.startswith("thousands:") for asked in draft.asked):
        # Asked already, with the currency that is counted so.
        return
    around = (*(() if own is None else (own,)), *_of_head(price.column), *scope.all_of(ChangesPrice))
    net, taxed = price.column.role is Role.NET_PRICE or Kind.LIST in beside, Kind.TAXED in beside
    others = (one for one in around if not (net and one.value.of_gross) and not (taxed and one.value.tax))
    said = next((one for one in others if _holds_for(one.value, draft)), None)
    if said is None:
        return
    ask_whether_it_stands(draft, said.value.words, f"in {said.where} changes what it comes to", facts)


def ask_whether_in_force(draft: Draft, said: Said[str], facts: FileFacts) -> None:
    """Holds back a price beside words that may mean that it is no longer in force."""
    ask_whether_it_stands(draft, said.value, f"in {said.where} may mean that it is no longer in force", facts)


def ask_whether_it_stands(draft: Draft, words: str, why: str, facts: FileFacts) -> None:
    """Holds back a price because of some words of the sheet, unless a person has said that it stands as it is."""
    key = key_about(CHANGE, words)
    if any(asked.key == key for asked in draft.asked):
        return
    if facts.answered.settled.get(key) == STAND:
        draft.evidence.append(Evidence("price", "your answer", words))
        return
    # What a figure is that is not the price itself needs no asking beside it.
    draft.settle(draft.price_key)
    draft.ask(NoteCode.NUMBER_AMBIGUOUS, key, draft.where, f"Is this the price to pay? “{words}” {why}.", words)


def _of_head(price: Column) -> Iterator[Said[ChangesPrice]]:
    for cell in price.heads:
        head = " ".join(cell.text.split())
        if multiplied_in_head(cell.text):
            yield Said(ChangesPrice(head), at(cell), cell.text)
        elif discount_to_come(head):
            yield Said(ChangesPrice(head, of_gross=True), at(cell), cell.text)
        elif tax_included(head):
            yield Said(ChangesPrice(head, tax=True), at(cell), cell.text)


def _holds_for(change: ChangesPrice, draft: Draft) -> bool:
    grade = change.grade
    if grade is not None and grade.grades and draft.grade not in grade.grades:
        return False
    if grade is not None and grade.coated_sides is not None and draft.coated_sides != grade.coated_sides:
        return False
    return not change.calipers or any(reading.um == draft.caliper_um for reading in change.calipers)
