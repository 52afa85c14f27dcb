"""A charge in a row of its own among a table's prices: 'Energy surcharge | | 28' below the boards."""

from collections.abc import Sequence
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.offers.price_cell import is_price
from tracker.intake.values.charges import ChargeKind, ChargeWords, charge_header
from tracker.intake.values.grade import find_grade
from tracker.intake.values.numbers import NumberReading
from tracker.intake.words.lists import phrases

# A bare figure below this may be per cent; common practice, no source.
LARGEST_PERCENTAGE = 15


def charge_of_row(label: Cell, figures: Sequence[Cell]) -> ChargeWords | None:
    """The charge that a row's label names and its figures under the prices give; None where it holds for some only.

    It is in the prices' currency and per their unit. It has no amounts where the figures differ from one price to the
    next, or may as well be per cent: then only its being there is certain.
    """
    head = charge_header(label.text)
    amounts = {cell.value for cell in figures if isinstance(cell.value, Decimal)}
    if head is None or not amounts or phrases("not_charge").find(label.text) or find_grade(label.text) is not None:
        return None
    formats = {"%" in cell.number_format for cell in figures}
    percent = head.percent or formats == {True}
    amount = amounts.pop() if len(amounts) == 1 and len(formats) == 1 else None
    if amount is not None and formats == {True}:
        amount *= 100
    if amount is None or not (percent or _is_money(amount, head)):
        return ChargeWords(head.kind, head.label)
    readings = (NumberReading(amount),)
    return ChargeWords(head.kind, head.label, readings, head.currency, head.basis, percent, as_price=not percent)


def _is_money(amount: Decimal, head: ChargeWords) -> bool:
    perhaps_percent = amount <= LARGEST_PERCENTAGE and head.kind in (ChargeKind.ENERGY, ChargeKind.OTHER)
    return is_price(amount) and not (perhaps_percent and head.currency is None and head.basis is None)
