"""Rows of charges that are read as one would write them in a line, wherever in the row their amount stands."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.offers.charges.row_charges import has_figure
from tracker.intake.offers.rows.row_labels import charge_of_label
from tracker.intake.tables.rows.charge_lines import in_one_line, names_bare_amount, states_charge
from tracker.intake.tables.table import Headings
from tracker.intake.values.freight.added_on_top import added_on_top, may_be_charged
from tracker.intake.values.freight.additions_below import (
    Adds,
    Entry,
    additions_of,
    is_added_for_certain,
    unit_of_line,
)
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, is_of_the_past, label_of
from tracker.intake.values.freight.charges import ChargeWords, find_charges, without_pieces
from tracker.intake.values.freight.entry_amounts import entry_as_added
from tracker.intake.values.freight.freight_to_buyer import freight_to_buyer
from tracker.intake.values.freight.relieved_charges import within_price
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.prices.currency import find_currencies


def charge_in_line(
    cells: Mapping[int, Cell], label: Cell, headed: Iterable[int], headings: Headings | None
) -> ChargeWords | None:
    """The charge that a row tells with its amount below no price: 'Energy surcharge | 3.5 %'; under any name below a
    line that adds it to the prices. `headed`: the columns of prices, where a figure may be another's or a board's.
    """
    if (
        any(index in cells and has_figure(cells[index]) for index in headed)
        or min(cells.values(), key=_at) is not label
    ):
        return None
    line = line_above(headings)
    added = next(iter(added_on_top(entry_as_added(in_one_line(cells), line))), None) if line else None
    if added is not None:
        return added
    if states_charge(cells):
        charge = next(iter(find_charges(in_one_line(cells))), None)
        past = charge is not None and is_of_the_past(label.text)
        return replace(charge, amounts=()) if charge is not None and past else charge
    if names_bare_amount(cells):
        # Nothing says what it is in: only its being there is certain.
        head = charge_of_label(label.text)
        return None if head is None else ChargeWords(head.kind, head.label)
    return None


def _at(cell: Cell) -> tuple[int, int]:
    return cell.column, cell.row


def line_above(headings: Headings | None) -> str:
    """The line right above some rows that adds them to the prices; '' where none does."""
    own = headings.own if headings is not None else ()
    return next((words.text for words in reversed(own) if additions_of(words.text) is not None), "")


def as_far_as_added(
    charge: ChargeWords | None, label: Cell, headings: Headings | None, *, figures: bool = True
) -> ChargeWords | None:
    """A charge with its figures under the prices below such a line: 'Canada | 15' and 'Mexico | 35' exclude each other,
    and what is 'Not added to the prices' is none. `figures`: whether the row has any; then it is never silent."""
    adds = additions_of(line_above(headings))
    if adds is None:
        return charge
    if adds is Adds.NEVER or (charge is None and not (figures and _is_open(label.text))):
        return None
    certain = charge is not None and is_added_for_certain(Entry(label.text, "", adds))
    # One that may be an alternative is no rate of another freight.
    open_ = ChargeWords(ChargeKind.OTHER, label.text.strip(" +:"))
    return without_pieces(charge) if charge is not None and certain else open_


def _is_open(label: str) -> bool:
    """'FSC claim fee'; 'Freight included' and 'Sheeting, if wanted' add nothing."""
    return may_be_charged(label) and not within_price(label) and freight_to_buyer(label) is None


def with_unit_above(head: ChargeWords | None, headings: Headings | None) -> ChargeWords | None:
    """A charge without a unit of its own, with that of the line above: 'Zuschläge je Tonne, zusätzlich berechnet:'."""
    line = line_above(headings)
    if head is None or not line or head.currency is not None or head.basis is not None:
        return head
    told = unit_of_line(line)
    return head if told is None else replace(head, currency=told.unit.currency, basis=told.unit.basis)


def freight_to_somewhere(label: Cell) -> ChargeWords | None:
    """The freight of 'Fracht frei Haus' in a row with a figure: who bears it, and the figure, are told elsewhere."""
    named = charges_named(label.text)
    if not named or named[0].value != ChargeKind.FREIGHT:
        return None
    return ChargeWords(ChargeKind.FREIGHT, label_of(label.text, named))


def named_below(label: Cell, headings: Headings | None) -> ChargeWords | None:
    """What such a line makes of a label that is no known charge."""
    return ChargeWords(ChargeKind.OTHER, label.text.strip(" +:")) if line_above(headings) else None


def is_added_term(label: str, role: Role | None, figures: Iterable[Cell], headings: Headings | None) -> bool:
    """Whether a row that elsewhere tells a term of the offer, 'Pallets | $12/ST', is added to the prices by such a
    line."""
    money = any(has_figure(cell) and find_currencies(cell.text) for cell in figures)
    return bool(line_above(headings)) and role in _ADDED and money and may_be_charged(label)


_ADDED = (Role.PACKING, Role.STOCK, Role.DELIVERY_TERMS)
