"""Whether times under a head that says nothing of them are lead times, when to pay, or until when prices hold."""

from collections.abc import Sequence
from dataclasses import replace

from tracker.intake.columns.column import Column
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.times.dates import without_dates
from tracker.intake.values.times.lead import counts_plain_days, lead_text
from tracker.intake.values.times.open_validity import COUNTED
from tracker.intake.values.times.validity_cell import validity_text
from tracker.intake.words.lists import phrases

_LONG = 30
"""Days that are a usual time to pay; board is seldom promised in so many (our choice)."""


def told_from_payment(column: Column, columns: list[Column], cells: Sequence[Cell]) -> Column:
    """'30 days' under 'Terms' is when to pay, and so are a month's days and more under any head of no known meaning.

    What looks like a lead time beside a column whose head says lead time is something else.
    """
    if column.role is not Role.LEAD_TIME or _says_lead(column):
        return column
    days = [counts_plain_days(cell.text) for cell in cells if isinstance(cell.value, str)]
    counted = [count for count in days if count is not None]
    named_terms = any(head.strength(Role.DELIVERY_TERMS) or head.strength(Role.PAYMENT) for head in column.said)
    to_pay = len(counted) == len(days) and (named_terms or (bool(column.text) and min(counted, default=0) >= _LONG))
    if to_pay:
        return replace(column, role=Role.PAYMENT)
    other = any(other is not column and other.role is Role.LEAD_TIME and _says_lead(other) for other in columns)
    return replace(column, role=None, sure=False) if other else column


def waiting(column: Column, columns: list[Column], cells: Sequence[Cell]) -> Column:
    """'In stock' and 'Ships in 10 days' under 'Stock status': how soon board comes, where no other column says it."""
    told = any(other.role is Role.LEAD_TIME for other in columns)
    if told or column.role not in (Role.STOCK, Role.PRODUCT) or not column.heads or not cells:
        return column
    times = [lead_text(cell.text) if isinstance(cell.value, str) else None for cell in cells]
    return replace(column, role=Role.LEAD_TIME, sure=False) if all(times) else column


def holding(column: Column, cells: Sequence[Cell]) -> Column:
    """'Price good' over 'through March 31, 2027' and 'Held' over '30 days from 1 December': until when prices hold."""
    named = column.role in PRICE_ROLES or (column.role is None and phrases("valid").find(column.text))
    if not named or mostly_priced(cells):
        return column
    return replace(column, role=Role.VALIDITY) if 2 * sum(map(_ends_on_a_day, cells)) > len(cells) else column


def _ends_on_a_day(cell: Cell) -> bool:
    """A last day or so many days, in words that say so and no other figure: '1,210 until 31 March' is a price."""
    said = validity_text(cell.text) if isinstance(cell.value, str) else None
    if said is None or said.unread or any(map(str.isdigit, COUNTED.sub(" ", without_dates(cell.text)))):
        return False
    return said.days is not None or bool(phrases("until").find(cell.text))


def _says_lead(column: Column) -> bool:
    return any(head.strength(Role.LEAD_TIME) or phrases("lead_topic").find(head.text) for head in column.said)
