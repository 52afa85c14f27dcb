"""The words of a price's head that tell it from the prices beside it: a place, a form, a customer's class."""

from tracker.intake.columns.column import Column, basis_in_head
from tracker.intake.columns.sizes.forms import form_alone
from tracker.intake.columns.sizes.order_sizes import without_unit
from tracker.intake.tables.headers.periods import is_period, of_shipment
from tracker.intake.values.figures.spans import is_span
from tracker.intake.values.figures.web_widths import is_web_width
from tracker.intake.values.heads.header import Header
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import without


def label_of(column: Column) -> str:
    """The lowest head, where it has words beside those for price, money and unit, behind a board or form above it."""
    if not column.said:
        return ""
    lowest = column.said[-1]
    if of_shipment(lowest.text):
        return lowest.text.strip()
    if form_alone(lowest.text) or is_span(lowest.text, "weight_units") or is_span(lowest.text, "caliper_units"):
        return lowest.text.strip()
    group = next(filter(None, map(_group, reversed(column.said[:-1]))), "")
    if lowest.delivery is not None and lowest.currency is None and lowest.basis is None:
        # 'EXW mill' and 'FCA port' are two prices, and so are 'Zone A' and 'Zone B' over 'delivered'.
        return f"{group} {lowest.text.strip()}".strip()
    if names_a_place(lowest) or lowest.role is Role.VENDOR:
        # 'Zone A', 'Region 2 $/cwt', 'Supplier 1': the sign behind the word is what tells one from the next.
        return without_unit(lowest, basis_in_head(lowest)).strip()
    if _prices_a_width(lowest):
        # 'Price 40in' and 'Price 42in' are two prices.
        return lowest.text.strip()
    plain = price_unit(lowest.text) is not None or any(reading.strength >= 0.9 for reading in lowest.roles)
    # The same order sizes may stand under 'East' and again under 'West'.
    # 'Precio venta EUR/t' and 'Precio venta EUR/1000 m²' are one price: the unit tells none from another.
    return group if plain else f"{group} {without_unit(lowest, basis_in_head(lowest))}".strip()


def _prices_a_width(head: Header) -> bool:
    rest = without_unit(head, basis_in_head(head))
    return is_web_width(without(rest, phrases("price_words").find(rest)))


def names_a_place(head: Header) -> bool:
    """'Zone 1', 'Delivered region B'."""
    return head.role is Role.DESTINATION or head.strength(Role.DESTINATION) >= _OUTRIGHT


_OUTRIGHT = 0.9


def _group(head: Header) -> str:
    """The words that head a group of columns above their unit: a board, a form, or what is no known word and no value
    ('GC2', 'Sheets', a place, a zone, a customer's class)."""
    if form_alone(head.text) or (head.grade is not None and head.grade.grades):
        return head.text.strip()
    if head.delivery is not None and head.currency is None and head.basis is None and head.bracket is None:
        # 'Delivered Arkham' and 'Delivered Salem' over 'per ton' are two prices.
        return head.text.strip()
    if (names_a_place(head) or head.role is Role.VENDOR) and head.currency is None and head.bracket is None:
        # 'Zone 1' and 'Zone 2', 'Supplier 1' and 'Supplier 2' over '$/cwt'.
        return head.text.strip()
    told = head.roles or head.currency or head.basis or head.bracket or head.calipers or head.weights or head.grade
    return "" if told or is_period(head.text) else head.text.strip()
