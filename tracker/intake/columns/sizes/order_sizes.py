"""The order size that a price column's head says, by itself or beside the price's unit."""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.columns.column import Column, basis_in_head
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import ORDER_SIZES, Role
from tracker.intake.values.orders.bracket_pieces import NAMED_SIZE, PIECES_OR_TONS, VEHICLES
from tracker.intake.values.orders.brackets import Bracket, bracket_text, is_bare_order_size, is_open_figure
from tracker.intake.values.orders.counted_orders import counted_size, counts_orders
from tracker.intake.values.orders.loads import LOADS
from tracker.intake.values.orders.loads_priced import whole_or_part
from tracker.intake.values.orders.masses import find_mass_units, find_masses, without_quarters
from tracker.intake.values.orders.worded_brackets import bracket_behind_words
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without
from tracker.trade.quantities import MassUnit


def order_size(column: Column) -> tuple[int | None, Bracket | None]:
    """The header level that is an order size, and the order size; bare figures take the unit of the heading above."""
    for level, head in enumerate(column.said):
        if is_order_size(head) and not _defines_a_ton(column, level):
            return _weighed_below(column, level) or (level, _load_in_units(head, column.said[:level]))
        beside = beside_unit(head)
        if beside is not None:
            return level, beside
    level_of_bare, bare = _bare_order_size(column)
    return (level_of_bare, bare) if bare is not None else _behind_words(column)


def _load_in_units(head: Header, above: Sequence[Header]) -> Bracket | None:
    """'Truckload (42,000 +)' under 'Order size, lb': the figure behind a load's name weighs it, and counts no loads."""
    bracket, units = head.bracket, _order_units(above)
    if bracket is None or bracket.not_weight not in VEHICLES or not units or not _NAME_FIRST.match(head.text):
        return bracket
    weighed = bracket_text(head.text, units)
    return bracket if weighed is None or weighed.not_weight else weighed


_NAME_FIRST = re.compile(r"\W*[^\W\d]\D*\d")


def _weighed_below(column: Column, level: int) -> tuple[int, Bracket] | None:
    """The 'under 15 t' below 'Pallet price' or 'Small orders', which says how much that is."""
    above = column.said[level].bracket
    if (
        above is None
        or above.not_weight not in (*LOADS, NAMED_SIZE)
        or above.start is not None
        or above.end is not None
    ):
        return None
    sizes = ((below, head.bracket) for below, head in enumerate(column.said) if below > level and is_order_size(head))
    return next(((below, size) for below, size in sizes if size is not None and _is_weight(size)), None)


def _is_weight(size: Bracket) -> bool:
    return not (size.not_weight or size.alone)


def _defines_a_ton(column: Column, level: int) -> bool:
    """'(2000 lb)' below 'USD per ton' says how much a ton is."""
    bracket = column.said[level].bracket
    start = bracket.start.kg() if bracket is not None and bracket.alone and bracket.start is not None else None
    return start in _UNITS_OF_PRICE and any(basis_in_head(head) is not None for head in column.said[:level])


BARE = "figures without a unit"
"""Why '5,000 - 9,999' is no weight of order until something around the table gives its unit."""


def _behind_words(column: Column) -> tuple[int | None, Bracket | None]:
    """'Kleinmenge (< 1 t)'; a weight that is no order size as written is kept as one that can't be read."""
    for level, head in enumerate(column.said):
        if head.weights or head.calipers or head.basis is not None:
            continue
        bracket = bracket_behind_words(head.text)
        if bracket is not None:
            return level, bracket
        if any(mass.kg() not in _UNITS_OF_PRICE for mass in find_masses(head.text)):
            return level, Bracket(head.text, not_weight="other_unit")
    return None, None


def _bare_order_size(column: Column) -> tuple[int | None, Bracket | None]:
    """'5 - 20' in the unit of the heading above it; without one it is an order size that can't be put in weight."""
    *above, lowest = column.said or (None,)
    if lowest is None:
        return None, None
    level, units = len(column.said) - 1, _order_units(above)
    counted = next((kind for head in reversed(above) if (kind := counts_orders(head.text))), "")
    size = _counted(lowest.text, counted, above) if counted and not units else None
    if size is not None:
        return level, size
    bracket = bracket_text(lowest.text, units) if units else None
    if bracket is not None and not bracket.alone:
        return level, bracket
    if number_readings(lowest.text) and not is_open_figure(lowest.text):
        return _bare_figure(level, lowest.text, bracket, above)
    bare = is_bare_order_size(lowest.text) or is_open_figure(lowest.text)
    if units or not bare or any(_spreads_board(head) for head in above):
        return None, None
    return level, Bracket(lowest.text, not_weight=BARE)


def _bare_figure(
    level: int, text: str, bracket: Bracket | None, above: Sequence[Header]
) -> tuple[int | None, Bracket | None]:
    """'5000' under the words for an order size, which give its unit and say whether it begins or ends there."""
    named = next((head for head in reversed(above) if any(head.strength(role) >= _NAMES for role in ORDER_SIZES)), None)
    if named is None:
        return None, None
    if bracket is None or bracket.start is None:
        return level, Bracket(text, not_weight="figure without a unit")
    return level, replace(_ended(bracket, named), alone=False)


def _ended(size: Bracket, named: Header) -> Bracket:
    """'5000' under 'up to' ends there."""
    ends = {match.value for match in phrases("bracket").find(named.text)} & {"below", "up_to"}
    if ends or named.role is Role.BELOW_QUANTITY:
        return replace(size, start=None, end=size.start, end_included="up_to" in ends)
    return size


def _counted(text: str, kind: str, above: Sequence[Header]) -> Bracket | None:
    """'2,000–9,999' and '500' under 'Sheets ordered'."""
    size = counted_size(text, kind)
    bare = size is not None and number_readings(text)
    return _ended(size, next(head for head in reversed(above) if counts_orders(head.text))) if size and bare else size


_NAMES = 0.55


def _spreads_board(head: Header) -> bool:
    """'Caliper' over '14 - 18' spreads what the board is, not what is ordered."""
    return any(head.strength(role) for role in (Role.CALIPER, Role.WEIGHT, Role.SHEET_SIZE))


@lru_cache(maxsize=2048)
def beside_unit(head: Header) -> Bracket | None:
    """The order size that a head says beside its price's unit: 'EUR/t < 5 t', 'Price 5-20 t (EUR/t)'.

    A weight of order that is no size as written ('EUR/t 5 t net') is kept as one that can't be read, so that it is
    asked.
    """
    basis = basis_in_head(head)
    if head.currency is None and basis is None and head.role is not Role.PRICE:
        return None
    rest = without_quarters(without_unit(head, basis))
    weights = [mass for mass in find_masses(rest) if mass.kg() not in _UNITS_OF_PRICE]
    bracket = bracket_text(rest)
    if bracket is not None and not bracket.not_weight and not bracket.alone:
        return bracket
    if bracket is not None and bracket.not_weight in _COUNTED and any(map(str.isdigit, rest)):
        return bracket
    load = _load(rest)
    if load is not None:
        return bracket if bracket is not None and bracket.not_weight else Bracket(rest, not_weight=load)
    if head.weights or head.calipers:
        return None
    if bracket is not None:
        return bracket if weights and bracket.not_weight in ("", "other_unit") else None
    behind = bracket_behind_words(rest) if weights else None
    if behind is not None:
        return behind
    bare = bracket_text(rest, (MassUnit.KG,))
    unread = bool(weights) or (bare is not None and not bare.alone)
    return Bracket(rest, not_weight="other_unit") if unread else None


_COUNTED = ("pallet", "roll", "sheets", PIECES_OR_TONS)
"""What orders are counted in: '5 pallets USD/ST' is a price for so many, whatever they weigh."""

_UNITS_OF_PRICE = frozenset(map(Decimal, ("1000", "907.18474", "45.359237", "100")))
"""A tonne, a short ton, a hundredweight and 100 kg in kg: '$/hundredweight (100 lb)' names no order."""


def _load(text: str) -> str | None:
    """A truckload or less than one: with nothing that weighs it, what the order must reach is not said.

    'Skid price' is what a skid of board costs; 'price incl. pallet' says what comes with it.
    """
    named = {match.value for match in phrases("bracket").find(text)} & set(VEHICLES)
    if named:
        return None if find_masses(text) or whole_or_part(text) else min(named)
    rest = without(text, phrases("price_words").find(text))
    return "pallet" if "pallet" in map(phrases("bracket").whole, (text, rest)) else None


def without_unit(head: Header, basis: BasisReading | None) -> str:
    """A head's text without its currency and the unit behind or before it."""
    currency = re.escape(head.currency.words) if head.currency is not None else ""
    unit = re.escape(basis.words) if basis is not None else ""
    # 'EUR/t', 'EUR per tonne', 'EUR la tonne', '/t'.
    joined = rf"{currency}\s*(?:[/.]|[^\W\d]+)?\s*\b{unit}(?!\w)" if currency and unit else ""
    alone = rf"(?:/|\b[^\W\d]+\s)\s*{unit}(?!\w)" if unit else currency
    for pattern in filter(None, (joined, alone)):
        rest, found = re.subn(pattern, " ", head.text, count=1)
        if found:
            return (rest.replace(head.currency.words, " ") if head.currency is not None else rest).strip(" ,;:()[]–-\n")
    return head.text


def _order_units(heads: Sequence[Header]) -> tuple[MassUnit, ...]:
    """The unit of order sizes in a heading: 'EUR/Tonne bei Abnahme in t' prices by the tonne and counts orders in t."""
    for head in reversed(heads):
        rest = head.text if head.basis is None else head.text.replace(head.basis.words, " ", 1)
        units = find_mass_units(rest)
        if units:
            return units
    return ()


def _names_form(text: str) -> bool:
    """'Rolls', 'sheet' and 'Price, reels' say in what form the board comes, '1-3 rolls' how many are ordered."""
    if phrases("basis").whole(text) in ("roll", "sheet"):
        return True
    return bool(phrases("forms").find(text)) and not any(sign.isdigit() for sign in text)


def is_order_size(head: Header) -> bool:
    """'60 #/MSF' is a basis weight, though '#' and a figure could be an order of 60 lb; '< 5 t' is an order."""
    if head.bracket is None or head.basis is not None or head.currency is not None:
        return False
    if head.bracket.not_weight in ("roll", "sheets") and _names_form(head.text):
        return False
    if head.bracket.not_weight or _weighs_board(head):
        return not (head.weights or head.calipers)
    return True


_LIGHTEST_ORDER_KG = Decimal(100)
"""Nobody orders less by weight; common practice, no source."""


def _weighs_board(head: Header) -> bool:
    """'51#' by itself, which is no order but what 1,000 or 3,000 ft² weigh."""
    order = head.bracket.start if head.bracket is not None and head.bracket.alone else None
    kg = order.kg() if order is not None else None
    return kg is not None and kg < _LIGHTEST_ORDER_KG
