"""Prices that a note or a head changes are not what is paid as they stand: a person says what to do with them."""

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column, Kind, PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.answered import key_about
from tracker.intake.offers.boards.boards_held import holds_for
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.tables.figures import sure_figure
from tracker.intake.values.changes.list_age import Age, age_of_list
from tracker.intake.values.changes.price_changes import ChangesPrice, price_changes
from tracker.intake.values.changes.rises_shown import makes_the_difference
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.multiples import multiplied_in_head
from tracker.intake.values.prices.tax import tax_included
from tracker.trade.offer import Evidence, NoteCode

CHANGE = "price-change"
"""The kind of the question whether prices are paid as they stand, though the sheet says what changes them."""
STAND = "stand"


def ask_of_change(
    draft: Draft,
    price: PriceColumn,
    scope: Scope,
    facts: FileFacts,
    own: Iterable[Said[ChangesPrice]],
    *,
    beside: Collection[Kind],
    before: Collection[Decimal] = (),
) -> None:
    """Holds back a price that its own row or head, or the first note around it that is about it, says to change.

    `own`: what its row says, or a footnote whose sign it carries.
    `beside`: the kinds of prices in the table: a discount of no known size is taken off list prices, what is said of
    tax is said of prices with tax, and what is called superseded is the earlier price, where there are such.
    `before`: the earlier prices in its row: a rise that parts it from one of them is in it already.
    """
    if any(asked.key.startswith("thousands:") for asked in draft.asked):
        # Asked already, with the currency that is counted so.
        return
    every = tuple(_said(draft, price.column, scope, own))
    if not every:
        return
    draft.by_figure = True
    net, taxed = price.column.role is Role.NET_PRICE or Kind.LIST in beside, Kind.TAXED in beside
    told = (one for one in every if _is_of(one.value, draft))
    if Kind.PREVIOUS in beside:
        told = (one for one in told if age_of_list(one.value.words) is Age.IN_FORCE)
    told = (one for one in told if not _is_in_it(one.value, draft, before) and not _is_sold_off(one, draft))
    said = next((one for one in told if not (net and one.value.of_gross) and not (taxed and one.value.tax)), None)
    if said is None:
        return
    ask_whether_it_stands(draft, said.value.words, f"in {said.where} changes what it comes to", facts)


def figures_in(cells: Mapping[int, Cell], prices: Sequence[PriceColumn]) -> list[Decimal]:
    """The certain figures that a row has in some columns of prices, such as the earlier ones beside those offered."""
    found = [cells[price.index] for price in prices if price.index in cells]
    return [figure for cell in found if (figure := sure_figure(cell)) is not None]


def _is_of(change: ChangesPrice, draft: Draft) -> bool:
    """'921 should read 912' is said of that price alone, as it is printed or counted, or of one that was corrected
    already; the 300 of 'GD2 300 should read 912' is no price but the board's own measure."""
    measures = {draft.grammage_gsm, draft.caliper_um} if change.boards.some else set()
    of_price = {draft.price, sure_figure(draft.cell), *measures}
    return not change.figures or not of_price.isdisjoint(change.figures)


def _is_in_it(change: ChangesPrice, draft: Draft, before: Collection[Decimal]) -> bool:
    price = draft.price
    return price is not None and any(makes_the_difference(change.words, old, price, draft.basis) for old in before)


def _is_sold_off(said: Said[ChangesPrice], draft: Draft) -> bool:
    """'Discontinued' beside a price from stock says that the board will go, and not that its price does: told."""
    if not said.value.unless_in_stock or draft.lead_days != (0, 0):
        return False
    text = f"“{said.value.words}” in {said.where}: this board is sold from stock as long as there is any."
    draft.note(NoteCode.VALIDITY_UNREAD, said.where, text)
    return True


def ask_whether_in_force(draft: Draft, said: Said[str], may_mean: str, facts: FileFacts) -> None:
    """Holds back a price beside words that may mean that it is no longer in force, or nobody's offer."""
    ask_whether_it_stands(draft, said.value, f"in {said.where} may mean that {may_mean}", facts)


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


def _said(draft: Draft, price: Column, scope: Scope, own: Iterable[Said[ChangesPrice]]) -> Iterator[Said[ChangesPrice]]:
    """What is said of this price, nearest first."""
    yield from (one for one in own if holds_for(one.value.boards, draft, unsure=True))
    yield from (one for one in _around(price, scope) if holds_for(one.value.boards, draft))


def _around(price: Column, scope: Scope) -> tuple[Said[ChangesPrice], ...]:
    """What a column's heads and the texts around its rows say, worked out once for all of these."""
    known = scope.changes.get(price.index)
    if known is None:
        known = scope.changes[price.index] = (*_of_head(price), *scope.all_of(ChangesPrice))
    return known


def _of_head(price: Column) -> Iterator[Said[ChangesPrice]]:
    for cell in price.heads:
        head = " ".join(cell.text.split())
        if multiplied_in_head(cell.text):
            yield Said(ChangesPrice(head), at(cell), cell.text)
        elif tax_included(head):
            yield Said(ChangesPrice(head, tax=True), at(cell), cell.text)
        else:
            # 'Less 3 %' beside list prices is what they come to.
            yield from (Said(replace(change, of_gross=True), at(cell), cell.text) for change in price_changes(head))
