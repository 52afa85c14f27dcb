"""A charge in a row of its own among a table's prices: 'Energy surcharge | | 28' below the boards."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import PriceColumn
from tracker.intake.grid import Cell
from tracker.intake.offers.prices.price_cell import is_price
from tracker.intake.offers.rows.row_labels import charge_of_label, names_board
from tracker.intake.tables.figures import is_figure
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.numbers import NumberReading, number_readings, percent
from tracker.intake.values.figures.rates import names_percent
from tracker.intake.values.freight.charge_names import ChargeKind, is_of_the_past
from tracker.intake.values.freight.charge_parts import is_optional
from tracker.intake.values.freight.charges import ChargeWords, find_charges
from tracker.intake.values.freight.freight_to_buyer import freight_to_buyer
from tracker.intake.values.freight.relieved_charges import within_price
from tracker.intake.values.notes.ways_named import ways_named
from tracker.intake.values.orders.small_orders import signs_of_small, size_of_small
from tracker.intake.values.prices.money import price_text, price_unit
from tracker.intake.words.lists import phrases

# A bare figure between these may be per cent; common practice, no source.
LARGEST_PERCENTAGE = 15
_LEAST_PERCENTAGE = Decimal("0.2")


def charge_of_row(label: Cell, figures: Sequence[Cell], head: ChargeWords | None = None) -> ChargeWords | None:
    """The charge that a row's label names and its figures under the prices give; None where it holds for some only.

    It is in the prices' currency and per their unit, unless a figure says its own ('2.5 %', '62 USD/ST'). It has no
    amounts where the figures differ from one price to the next, or may as well be per cent: then only its being there
    is certain. `head`: what the line above makes of a label that is no known charge.
    """
    head = head or charge_of_label(label.text)
    charged = [cell for cell in figures if any(map(str.isdigit, cell.text))]
    if head is None or not charged or phrases("not_charge").find(label.text) or find_grade(label.text) is not None:
        return None
    if within_price(label.text) or is_optional(label.text) or _of_small_orders(label.text):
        return None
    rates = {_rate(cell, head) for cell in charged}
    rate = rates.pop() if len(rates) == 1 and not is_of_the_past(label.text) else None
    # 'Fracht frei Empfänger ab 5 t' is a term, where no money stands beside it.
    return rate or (ChargeWords(head.kind, head.label) if freight_to_buyer(label.text) is None else None)


def _of_small_orders(label: str) -> bool:
    """'Mindermengenzuschlag', 'Surcharge below 5 t'."""
    return bool(signs_of_small(label)) or size_of_small(label) is not None


def charge_told_beside(cells: Mapping[int, Cell], label: Cell, priced: Collection[int]) -> ChargeWords | None:
    """'Freight to you | 410 | SEK/ton' under heads of other things: a charge, its amount and its unit, and no more.

    None where the amount stands among the prices, where a board may be called 'Premium'.
    """
    if len(cells) != _CELLS or charge_of_label(label.text) is None or names_board(label.text):
        return None
    amount, unit = (cells[index] for index in sorted(cells) if cells[index] is not label)
    if amount.column in priced or not label.column < amount.column < unit.column or not is_figure(amount):
        return None
    named = price_unit(unit.text)
    if not names_percent(unit.text) and (named is None or named.currency is None or named.basis is None):
        return None
    return next(iter(find_charges(f"{label.text.strip(' +:')}: {amount.text.strip()} {unit.text.strip()}")), None)


_CELLS = 3


def is_of_all_prices(
    cells: Mapping[int, Cell], label: Cell, prices: Sequence[PriceColumn], *, apart: bool, added: bool = False
) -> bool:
    """Whether an amount right behind its name, in the first of several price columns and none of the others, is that of
    every price: 'Energy surcharge, all grades | £38'; what a line above says is `added` to them; what stands `apart`
    from the boards, below a gap or a heading of its own; and energy with a unit of its own, '£38 per tonne' or '3 %'
    below bare prices. Freight and sheeting may be for the board ex works, or for the sheets, alone; so may anything
    where the heads name forms, ways or order sizes."""
    below = [cells[index] for index in sorted({price.index for price in prices}) if index in cells]
    if len(below) != 1 or below[0].column != label.column + 1 or names_board(below[0].text):
        return False
    if added:
        return True
    said, charge = price_text(below[0].text), charge_of_label(label.text)
    if charge is None or charge.kind in (ChargeKind.FREIGHT, ChargeKind.SHEETING) or _differ_in_order(prices):
        return charge is not None and bool(phrases("all_of_them").find(label.text))
    own_unit = names_percent(below[0].text) or (said is not None and said.basis is not None)
    per_unit = charge.kind is ChargeKind.ENERGY and own_unit
    return apart or per_unit or bool(phrases("all_of_them").find(label.text))


def _differ_in_order(prices: Sequence[PriceColumn]) -> bool:
    """Whether the heads tell prices apart by form, way or size of an order: packing may be for one alone."""
    told = ((ways_named(price.column.text), price.delivery, price.bracket) for price in prices)
    return len({(ways, way and way.delivered, size) for ways, way, size in told}) > 1


def has_figure(cell: Cell) -> bool:
    return has_figure_in(cell.text)


def has_figure_in(text: str) -> bool:
    return any(map(str.isdecimal, text))


def says_unit_of_charge(text: str, label: str) -> bool:
    """'Per short ton' and '% of price' beside 'Fuel surcharge', in whatever column."""
    if _counts(text) or charge_of_label(label) is None:
        return False
    unit = price_unit(text)
    return names_percent(text) or (unit is not None and unit.basis is not None)


def _counts(text: str) -> bool:
    """It has a figure that is not its unit's: that of 'SEK/1000 kg' is."""
    unit = price_unit(text) if has_figure_in(text) else None
    return has_figure_in(text) and (unit is None or unit.currency is None or unit.basis is None)


def with_unit_beside(cells: Mapping[int, Cell], index: int, priced: Collection[int]) -> Cell:
    """A charge's figure with its unit, where that stands in the next cell or the one before, and not below a price:
    '95 | EUR/t', 'per cwt | 2.15'."""
    cell = cells[index]
    beside = next((cells[at] for at in (index + 1, index - 1) if at in cells and at not in priced), None)
    if beside is None or not is_figure(cell) or _counts(beside.text):
        return cell
    unit = price_unit(beside.text)
    if unit is None and not names_percent(beside.text):
        return cell
    if unit is not None and unit.basis is None and beside.column < cell.column:
        return cell
    if unit is not None and unit.currency is None and unit.basis is not None:
        # '41 | ST' and 'per short ton | 41' are 41 a short ton, as '41/ST' is.
        text = f"{cell.text.strip()}/{unit.basis.words}"
    else:
        text = f"{cell.text.strip()} {beside.text.strip()}"
    return cell._replace(value=text, text=text)


def _rate(cell: Cell, head: ChargeWords) -> ChargeWords | None:
    """What one figure says the charge comes to; None where that is not certain."""
    if not isinstance(cell.value, Decimal):
        return _rate_in_words(cell.text, head)
    by_format = "%" in cell.number_format
    share = head.percent or by_format
    amount = cell.value * 100 if by_format else cell.value
    if not (share or _is_money(amount, head)):
        return None
    readings = (NumberReading(amount),)
    return ChargeWords(head.kind, head.label, readings, head.currency, head.basis, share, as_price=not share)


def _rate_in_words(text: str, head: ChargeWords) -> ChargeWords | None:
    readings = number_readings(text)
    if readings:
        # '2.35' as a text is in the price's unit as a number is.
        money = all(_is_money(reading.value, head) for reading in readings)
        return replace(head, amounts=readings, as_price=not head.percent) if head.percent or money else None
    said = next(iter(find_charges(f"{head.label} {text}")), None)
    price = price_text(text)
    if price is not None and price.basis is not None and price.basis.needs_sheet and head.kind is ChargeKind.OTHER:
        # A piece of packaging is no sheet of board.
        return None
    if said is not None and said.amounts and not said.percent and said.basis is None:
        # '$2.35' below prices per cwt, as 2.35 with a dollar's format.
        return replace(said, basis=head.basis, as_price=head.basis is None)
    return said or (_amount_of(text, head) if head.kind is ChargeKind.OTHER else None)


def _amount_of(text: str, head: ChargeWords) -> ChargeWords | None:
    """The amount under a name that is no known charge: '0.35/CWT' or '2 %' beside '+ moisture-proof wrap'."""
    shares = percent(text)
    if shares:
        return replace(head, amounts=shares, percent=True)
    price = price_text(text)
    if price is None or len(price.amounts) != 1 or price.rest or price.basis is None:
        return None
    return replace(head, amounts=price.amounts, currency=price.currency, basis=price.basis)


def _is_money(amount: Decimal, head: ChargeWords) -> bool:
    of_percent = head.kind in (ChargeKind.ENERGY, ChargeKind.OTHER)
    perhaps_percent = of_percent and _LEAST_PERCENTAGE <= amount <= LARGEST_PERCENTAGE
    return is_price(amount) and not (perhaps_percent and head.currency is None and head.basis is None)
