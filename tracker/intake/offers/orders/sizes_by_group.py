"""Order sizes across under heads of several groups, each with sizes of its own: 'Rolls' over 'to 5 t | 5-15 t | over
15 t', and 'Sheets' over 'to 5 t | over 5 t'."""

from collections.abc import Callable, Hashable, Sequence
from dataclasses import replace
from itertools import chain, permutations

from tracker.intake.columns.column import PriceColumn
from tracker.intake.offers.orders.things_sized import forms_in, words_beside_size
from tracker.intake.values.orders.brackets import Bracket
from tracker.intake.values.orders.brackets_in_kg import KgBracket
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.words.lists import phrases

InKg = Callable[[tuple[Bracket, ...]], tuple[KgBracket, ...]]


def sizes_by_group(prices: Sequence[PriceColumn], in_kg: InKg) -> tuple[KgBracket, ...]:
    """The order size of each price in kg, each ended by those of its own group alone.

    'Price 1' over one size and 'Price 2' over the next are no groups. Groups that nothing tells apart for certain, one
    of which begins above the other's last size, may be one scale that goes on: what it would end is asked about, and
    ends there where the heads speak of orders, as 'Small orders | Large orders'.
    """
    sizes = [price.bracket for price in prices if price.bracket is not None]
    ways = [(_delivered(price), _besides_size(price)) for price in prices]
    of_all = sizes_that_overlap(ways, sizes, in_kg) or in_kg(tuple(sizes))
    beside = _words_beside(prices)
    groups: dict[tuple[Hashable, Hashable], list[int]] = {}
    for place, price in enumerate(prices):
        groups.setdefault((_thing(price), (_words_above(price), beside[place])), []).append(place)
    of_things = len({thing for thing, _ in groups}) == len(groups)
    single = all(len({sizes[place] for place in places}) == 1 for places in groups.values())
    if len(groups) == 1 or (single and not of_things):
        return of_all
    found = dict(enumerate(of_all))
    for places in groups.values():
        found |= zip(places, in_kg(tuple(sizes[place] for place in places)), strict=True)
    if of_things or not _go_on([[found[place] for place in places] for places in groups.values()]):
        return tuple(found.values())
    if any(map(_speaks_of_orders, prices)):
        return of_all
    return tuple(
        own if own == whole else replace(own, unread=True)
        for own, whole in zip(found.values(), of_all, strict=True)
    )  # fmt: skip


def sizes_that_overlap(
    things: Sequence[Hashable], sizes: Sequence[Bracket], in_kg: InKg
) -> tuple[KgBracket, ...] | None:
    """The order sizes of each thing by themselves, where those of none begin above all of another's: 'FOB from 5 t |
    FOB from 20 t | Delivered from 10 t'. None where they may be one scale: 'FOB from 5 t | Delivered from 20 t'."""
    groups: dict[Hashable, list[int]] = {}
    for place, thing in enumerate(things):
        groups.setdefault(thing, []).append(place)
    if not 1 < len(groups) < len(things):
        return None
    of_groups = [in_kg(tuple(sizes[place] for place in places)) for places in groups.values()]
    starts = [[size.from_kg or 0 for size in group] for group in of_groups]
    if any(max(one) < min(other) for one, other in permutations(starts, 2)):
        return None
    found = dict(zip((place for places in groups.values() for place in places), chain(*of_groups), strict=True))
    return tuple(found[place] for place in range(len(things)))


def _delivered(price: PriceColumn) -> bool | None:
    return price.delivery.delivered if price.delivery is not None else None


def _thing(price: PriceColumn) -> Hashable:
    """What the head says that is quoted or who quotes it, each of which has order sizes of its own."""
    forms = frozenset(form for head in price.column.said for form in forms_in(head.text))
    board = (price.grade.grades, price.grade.coated_sides) if price.grade is not None else None
    return price.vendor, board, forms, price.caliper, price.weights, price.sheets


def _words_above(price: PriceColumn) -> tuple[str, ...]:
    """The heads above the one that says the order size."""
    texts = [head.text.strip() for head in price.column.heads]
    at = next((place for place, head in enumerate(price.column.heads) if head is price.bracket_head), len(texts))
    return tuple(texts[:at])


def _words_beside(prices: Sequence[PriceColumn]) -> list[str]:
    """What stands in one head with each size, 'North mill' of 'North mill < 5 t', where it stands so beside several."""
    said = [_besides_size(price) for price in prices]
    return said if all(said.count(words) > 1 for words in said) else [""] * len(said)


def _besides_size(price: PriceColumn) -> str:
    return words_beside_size(price.bracket_head.text) if price.bracket_head is not None else ""


def _speaks_of_orders(price: PriceColumn) -> bool:
    heads = (*_words_above(price), price.bracket_head.text if price.bracket_head is not None else "")
    named = (match.value for text in heads for match in phrases("bracket").find(text))
    return not _ORDERED.isdisjoint(named) or any(phrases("order_words").find(text) for text in heads)


_ORDERED = frozenset({*LOADS, "named_size"})
"""'Part loads' over sizes, or 'Small orders'."""


def _go_on(groups: Sequence[Sequence[KgBracket]]) -> bool:
    """Whether all sizes of one group begin above the last of another that nothing ends."""
    starts = [[size.from_kg or 0 for size in group] for group in groups]
    open_ = [max((size.from_kg or 0 for size in group if size.below_kg is None), default=None) for group in groups]
    return any(
        last is not None and min(others) > last
        for place, last in enumerate(open_)
        for other, others in enumerate(starts)
        if other != place
    )
