"""Which columns hold prices, which of them are offers, and what each one's header says of board, order and delivery."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column, Columns, Kind, PriceColumn, vendor_in_head
from tracker.intake.columns.groups.group_terms import delivery_of_group, lead_of_group, until_of_group
from tracker.intake.columns.groups.units_of_prices import on_several_bases
from tracker.intake.columns.groups.vendors_beside import with_bids, without_chosen_vendors
from tracker.intake.columns.priced.against_heads import far_below_named, priced_against_heads
from tracker.intake.columns.priced.beside_firms import beside_firms
from tracker.intake.columns.priced.bid_rounds import SEVERAL_ROUNDS, set_aside_earlier_rounds, several_rounds
from tracker.intake.columns.priced.buyers_figures import named_by_buyer
from tracker.intake.columns.priced.in_force import (
    DIFFERENCE,
    SEVERAL_TIMES,
    before_the_announced,
    before_the_new,
    leads_to_another,
    listed_after_the_old,
    marked_as_old,
    not_told_apart_by_time,
    of_the_next_time,
    place_in_force,
    said_to_be_over,
    starts_an_index,
    still_to_come,
    told_apart_by_time,
)
from tracker.intake.columns.priced.labels import label_of
from tracker.intake.columns.priced.letters import told_apart_by_letters
from tracker.intake.columns.priced.own_costs import beside_costs, costs_beside_lists, names_own_cost
from tracker.intake.columns.priced.price_ranges import ranged_prices
from tracker.intake.columns.priced.reference_columns import for_reference
from tracker.intake.columns.priced.standard_prices import ordinary_beside_yours, standard_is_paid
from tracker.intake.columns.priced.unnamed import amount_per_unit, doubt_of, from_a_day, priced_alike, unnamed_figures
from tracker.intake.columns.priced.unread_prices import figures_in_doubt
from tracker.intake.columns.priced.whose_prices import others_prices, says_whose_prices
from tracker.intake.columns.priced.without_surcharge import WITHOUT_SURCHARGE, beside_one_without
from tracker.intake.columns.priced.years_in_heads import of_earlier_years, of_several_years
from tracker.intake.columns.priced.years_told import heads_indicative, stand_beside_years, years_beside
from tracker.intake.columns.roles.headed_figures import heads_delivered
from tracker.intake.columns.sizes.axes import Axes
from tracker.intake.columns.sizes.forms import labelled_by_form
from tracker.intake.columns.sizes.order_sizes import order_size
from tracker.intake.columns.sizes.paired import not_told_apart, sizes_before, without_sizes
from tracker.intake.columns.units.shared_units import with_shared_units
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.changes.discounts import taken_in_head
from tracker.intake.values.changes.list_age import Age, age_of_name
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.prices.tax import tax_included
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_sentences import lead_in_remark
from tracker.intake.values.times.validity import until_in_head
from tracker.intake.words.lists import phrases


def price_columns(
    columns: Sequence[Column],
    samples: Mapping[int, Sequence[Cell]],
    titles: Sequence[Words] = (),
    above: Sequence[Words] = (),
    said: Sequence[Words] = (),
) -> Columns:
    """The table's columns with its prices sorted into offers and what only leads to them.

    `titles` are the table's own, `above` all that the sheet says before it, `said` all that stands around it.
    """
    by_role: dict[Role, tuple[Column, ...]] = {}
    for column in columns:
        if column.role is not None:
            by_role[column.role] = (*by_role.get(column.role, ()), column)
    found = Columns((), by_role)
    amounts = amount_per_unit(found, samples, columns, (*titles, *said))
    kinds = _kinds(found) or dict.fromkeys(amounts, Kind.OFFER)
    kinds |= dict.fromkeys(years_beside(kinds, columns, samples), Kind.OFFER)
    ranged = ranged_prices(columns, list(kinds), samples)
    pairs = {column: place_in_force(column, samples[column.index]) for column in columns}
    kinds |= dict.fromkeys((*ranged, *(column for column in kinds if pairs[column] is not None)), Kind.OFFER)
    if kinds and set(kinds.values()) == {Kind.PREVIOUS}:
        kinds |= dict.fromkeys(from_a_day(columns, samples), Kind.OFFER)
    unsure = ""
    own = named_by_buyer(columns)
    alike = priced_alike(columns, list(kinds), samples)
    alike += beside_firms(columns, [*kinds, *alike], samples)
    unexplained = [column for column in alike if not names_own_cost(column) and column not in own]
    unexplained += [*costs_beside_lists(kinds), *listed_after_the_old(kinds)]
    kinds = _listed_beside(kinds, unexplained) | dict.fromkeys(unexplained, Kind.OFFER)
    old = [*of_earlier_years(kinds), *marked_as_old(kinds)] if unexplained else []
    kinds |= dict.fromkeys(old, Kind.PREVIOUS)
    unexplained = [one for one in unexplained if one not in old and not says_whose_prices(one, (*titles, *above))]
    if not kinds:
        unnamed = unnamed_figures(columns, samples)
        unexplained += others_prices(unnamed)
        held = [column for column in unnamed if not (_superseded(column) or column in unexplained)] or unnamed
        kinds = dict.fromkeys(unnamed, Kind.PREVIOUS) | dict.fromkeys(held, Kind.OFFER)
        unsure = SEVERAL_TIMES if stand_beside_years(held, columns) else doubt_of(held, samples)
    unexplained += priced_against_heads(columns, list(kinds), samples)
    if not kinds:
        unexplained = figures_in_doubt(columns, samples, (*titles, *above))
    kinds |= dict.fromkeys(unexplained, Kind.OFFER)
    listed = [*ordinary_beside_yours(kinds), *for_reference(kinds)]
    kinds |= dict.fromkeys(listed, Kind.LIST)
    unexplained = [
        one for one in (*unexplained, *of_the_next_time(kinds), *far_below_named(kinds, samples)) if one not in listed
    ]
    found = Columns((), {role: tuple(one for one in held if one not in unexplained) for role, held in by_role.items()})
    kinds |= dict.fromkeys(_over(kinds), Kind.PREVIOUS)
    kinds |= dict.fromkeys(before_the_new(kinds, found), Kind.PREVIOUS)
    kinds |= dict.fromkeys(before_the_announced(kinds, (*titles, *above)), Kind.PREVIOUS)
    kinds = set_aside_earlier_rounds(kinds)
    axes = Axes([column for column in columns if column not in kinds and column.said], (*titles, *above))
    sizes = sizes_before(columns, [column for column, kind in kinds.items() if kind is Kind.OFFER])
    prices = labelled_by_form(
        [
            replace(
                _unexplained(price) if column in unexplained and pairs[column] is None else price,
                sizes=sizes.get(column.index, ()),
                pair=pairs[column],
                ranged=column in ranged,
            )
            for column, kind in kinds.items()
            for price in (_price_column(column, kind, axes),)
        ]
    )
    found.prices = with_shared_units(with_bids(prices, columns, (*titles, *above), samples), found.board, samples)
    found.by_role = without_chosen_vendors(_without_prices(without_sizes(found, sizes), kinds), found.prices)
    found.doubt = _doubt(found, unsure, samples)
    return found


def _over(kinds: Mapping[Column, Kind]) -> list[Column]:
    """'Q1 (old) | Q2 (old) | New': the old ones, where another is offered beside them."""
    offers = [column for column, kind in kinds.items() if kind is Kind.OFFER]
    old = [column for column in offers if said_to_be_over(column.text)]
    return old if len(old) < len(offers) else []


def _unexplained(price: PriceColumn) -> PriceColumn:
    """A price whose head does not call it one; what the head says tells it from those beside it."""
    return replace(price, unexplained=not heads_delivered(price.column), label=price.label or price.column.text)


def _without_prices(
    by_role: Mapping[Role, tuple[Column, ...]], kinds: Mapping[Column, Kind]
) -> dict[Role, tuple[Column, ...]]:
    """Where 'Making (min. 5 t)' or 'min | max' heads prices, its figures are no smallest orders as well."""
    return {
        role: tuple(one for one in columns if role not in _QUANTITIES or one not in kinds)
        for role, columns in by_role.items()
    }


_QUANTITIES = frozenset({Role.STOCK, Role.MINIMUM, Role.FROM_QUANTITY, Role.BELOW_QUANTITY})


def _kinds(columns: Columns) -> dict[Column, Kind]:
    """Every column whose header says price, in the order of the sheet, with the kind of price that it is."""
    priced = columns.of(Role.PRICE, Role.NET_PRICE, Role.LIST_PRICE, Role.PREVIOUS_PRICE, Role.ALL_IN)
    settled = beside_costs(priced)
    others = [column for column in priced if column not in settled]
    net, plain = (any(column.role is role for column in others) for role in (Role.NET_PRICE, Role.PRICE))
    kinds = {column: settled.get(column) or _kind(column, columns, net, plain) for column in priced}
    kinds |= dict.fromkeys((column for column in others if standard_is_paid(column, others)), Kind.OFFER)
    for column in (*of_earlier_years(kinds), *marked_as_old(kinds), *before_the_new(kinds, columns)):
        kinds[column] = Kind.PREVIOUS
    kinds |= dict.fromkeys(still_to_come(kinds), Kind.LATER)
    kinds |= dict.fromkeys(named_by_buyer((*priced, *columns.of(Role.DISCOUNT))), Kind.LIST)
    return dict(sorted(kinds.items(), key=lambda item: item[0].index))


def _listed_beside(kinds: dict[Column, Kind], unexplained: Sequence[Column]) -> dict[Column, Kind]:
    """'Zielpreis' or 'List' alone beside figures like prices is no offer: the price to pay is among those, or asked."""
    listed = bool(unexplained) and all(column.role is Role.LIST_PRICE or names_own_cost(column) for column in kinds)
    return dict.fromkeys(kinds, Kind.LIST) if listed else kinds


def _kind(column: Column, columns: Columns, net: bool, plain: bool) -> Kind:
    if column.role is Role.PREVIOUS_PRICE or _superseded(column):
        return Kind.PREVIOUS
    if _with_tax(column):
        return Kind.TAXED if net or plain else Kind.OFFER
    if column.role is Role.LIST_PRICE:
        return Kind.LIST if net or plain else Kind.OFFER
    if column.role is Role.PRICE and net and columns.of(Role.DISCOUNT, Role.LIST_PRICE):
        return Kind.OFFER if _on_another_basis(column, columns.of(Role.NET_PRICE)) else Kind.LIST
    if column.role is Role.ALL_IN and (net or plain) and columns.of(*ON_TOP):
        return Kind.ALL_IN
    if leads_to_another(column, columns):
        return Kind.LIST
    return Kind.OFFER


def _on_another_basis(column: Column, others: Sequence[Column]) -> bool:
    """'Net EUR/t' beside 'EUR/1000 m²': the same price once more, no step on the way to it."""
    own = {basis.bases for basis in column.bases}
    return bool(own) and all(own.isdisjoint(basis.bases for basis in other.bases) and other.bases for other in others)


def _with_tax(column: Column) -> bool:
    return any(tax_included(head.text) for head in column.said)


def _superseded(column: Column) -> bool:
    return any(age_of_name(head.text) is Age.SUPERSEDED for head in column.said)


def _doubt(columns: Columns, unsure: str, samples: Mapping[int, Sequence[Cell]]) -> str:
    offers = [price for price in columns.prices if price.kind is Kind.OFFER]
    if told_apart_by_time([price.column.text for price in offers]) or of_several_years(p.column for p in offers):
        return SEVERAL_TIMES
    if several_rounds(price.column for price in offers):
        return SEVERAL_ROUNDS
    if told_apart_by_letters(offers) and not on_several_bases(columns, samples):
        return "several prices stand beside each other, and their heads do not say how they differ"
    if not_told_apart_by_time([price.column for price in offers], columns):
        return DIFFERENCE
    if beside_one_without(price.column for price in offers):
        return WITHOUT_SURCHARGE
    if starts_an_index([price.column for price in offers], columns):
        return "a base price and an index stand beside the price, and the figures do not show what they make"
    if unsure and offers:
        return unsure
    if len(offers) > 1 and not_told_apart(columns):
        return "several columns of order sizes stand beside several prices"
    discounts = [column for column in columns.of(Role.DISCOUNT) if not taken_in_head(column.text)]
    after_a_year = {column.index for column in discounts if phrases("yearly").find(column.text)}
    # 'Rebate steps (tons/yr) | Rebate' is paid back on what a year came to, and no price bears it.
    open_discounts = [column for column in discounts if not after_a_year & {column.index, column.index - 1}]
    return DISCOUNT_BESIDE if open_discounts and not columns.of(Role.NET_PRICE) else ""


DISCOUNT_BESIDE = "a discount stands beside the price, and it is not said whether it is taken off already"
"""The doubt that a note about such a discount lays to rest."""


def _price_column(column: Column, kind: Kind, axes: Axes) -> PriceColumn:
    grade, grade_words = _grade_across(column)
    bracket_level, bracket = order_size(column)
    of_board = _without_bare_size(column, bracket_level)
    return PriceColumn(
        column,
        kind,
        delivery=_delivery(column),
        until=next(filter(None, (until_in_head(head.text) for head in column.said)), None) or until_of_group(column),
        lead=next(filter(None, (_lead(head.text) for head in column.said)), None) or lead_of_group(column),
        bracket=bracket,
        bracket_head=None if bracket_level is None else column.heads[bracket_level],
        caliper=axes.caliper(of_board),
        weights=axes.weights(of_board),
        sheets=next((head.sheet_sizes for head in column.said if head.sheet_sizes), ()),
        grade=grade,
        grade_words=grade_words,
        vendor=next(filter(None, map(vendor_in_head, reversed(column.said))), None) or column.vendor or None,
        label=label_of(column),
        indicative=heads_indicative(column),
    )


def _without_bare_size(column: Column, level: int | None) -> Column:
    """The column without the head '5,000' or '10 000–' that is its order size, and so no caliper or weight of board."""
    if level is None or not number_readings(column.said[level].text):
        return column
    heads, said = ((*of[:level], *of[level + 1 :]) for of in (column.heads, column.said))
    return replace(column, heads=heads, said=said)


def _grade_across(column: Column) -> tuple[GradeReading | None, str]:
    """The board that a head spreads, in its words; 'SBS' above 'C1S' is one name."""
    spread = [head for head in column.said if head.grade is not None and head.grade.tells_board]
    if not spread:
        return None, ""
    lowest = spread[-1]
    if lowest.grade is not None and lowest.grade.grades:
        return lowest.grade, lowest.text
    words = " ".join(head.text for head in spread)
    return find_grade(words), words


def _lead(head: str) -> LeadTime | None:
    """The weeks that a price's head names: 'Making order (4-5 weeks) €/t'; from stock is the price, too, of what is."""
    said = lead_in_remark(re.sub(r"[()\n;]", ", ", head))
    return said if said is not None and said.high > 0 else None


def _delivery(column: Column) -> Delivery | None:
    own = next((head.delivery for head in reversed(column.said) if head.delivery is not None), None)
    return own or delivery_of_group(column)
