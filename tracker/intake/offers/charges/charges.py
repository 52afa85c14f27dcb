"""Charges beside a price: columns of freight, energy or sheeting, and notes that hold for every row."""

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.sheets_said import comes_in_rolls
from tracker.intake.offers.charges.bounded_charges import Bearing, several_open
from tracker.intake.offers.charges.charge_columns import ChargeColumns
from tracker.intake.offers.charges.charge_units import may_share_unit
from tracker.intake.offers.charges.charges_to_come import columns_to_come
from tracker.intake.offers.charges.rates_around import charges_around
from tracker.intake.offers.charges.relief import free_for, free_of_itself, kind_of
from tracker.intake.offers.charges.row_charges import LARGEST_PERCENTAGE
from tracker.intake.offers.charges.units_of_charges import amount_in, basis_of, currency_of
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.offers.orders.load_terms import charges_of_load
from tracker.intake.offers.orders.order_terms import small_orders_cost_more
from tracker.intake.offers.prices.price_cell import is_price
from tracker.intake.values.figures.numbers import percent, settled_in_words
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import ChargeKind, same_charge
from tracker.intake.values.freight.charge_parts import OptionalCharge, is_fee, is_optional
from tracker.intake.values.freight.charges import ChargeWords, find_charges, relieved
from tracker.intake.values.freight.delivery import terms_under
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.values.prices.currency import CurrencyReading
from tracker.intake.values.prices.money import price_text
from tracker.intake.values.prices.shares import is_share_of_another
from tracker.intake.words.lists import phrases
from tracker.trade.offer import OPEN, Charge, Evidence, NoteCode


def fill_charges(
    draft: Draft, cells: dict[int, Cell], columns: Columns, scope: Scope, facts: FileFacts, told: ChargeColumns,
    below: Sequence[Said[ChargeWords]] = (), load: str = "", ways: Callable[[], frozenset[str]] = frozenset,
) -> None:  # fmt: skip
    """The row's charges in the order of the sheet, and the cells that said them; a charge with no currency or unit of
    its own has the price's. `told`: what the columns of charges are for this price; `below`: the charges that a row of
    the table gives to this price's column alone; `load`: the kind of load that its order size is called by; `ways`:
    those in which the row's board is sold."""
    found: list[Charge] = []
    free = free_for(scope, draft, facts)
    in_columns: list[tuple[ChargeKind, str]] = []
    unsure = told.open | columns_to_come(columns, cells, scope, facts)
    for column in columns.of(*ON_TOP):
        aside = _WITHOUT if is_optional(column.text) else _OF_DEALINGS if is_fee(column.text) else ""
        if aside:
            _note_aside(draft, cells.get(column.index), column, aside)
            continue
        in_columns.append((kind_of(column), column.text))
        cell = cells.get(column.index)
        if column.index in told.borne or _note_of_others(draft, cell, column, told):
            continue
        charge = _in_cell(cell, column, facts, draft) if cell is not None else None
        if charge is not None and column.index in unsure:
            charge = _open(charge)
        if cell is not None and charge is not None:
            found.append(charge)
            draft.evidence.append(Evidence("charges", at(cell), f"{column.text}: {cell.text.strip()}"))
        elif cell is not None and column.role is Role.FREIGHT:
            _take_freight_words(draft, cell, column)
    for column in told.unread:
        head = charge_header(column.said[0].text)
        label = head.label if head is not None else column.text
        found.append(_open(Charge(label, Decimal(0), draft.currency, draft.basis, column.said[0].role is Role.FREIGHT)))
    bearing = Bearing(draft, cells, columns, ways)
    told_of_row = (*below, *_remarked(cells, columns), *_commented(draft.cell), *charges_of_load(scope, load))
    own = [left for said in told_of_row if (left := bearing.left(said)) is not None]
    draft.by_figure = draft.by_figure or bool(told_of_row or scope.charges or columns.of(*ON_TOP))
    in_row = [*in_columns, *((said.value.kind, said.value.label) for said in own)]
    in_row += [(ChargeKind.FREIGHT, "")] if told.freight_borne else []
    around = [
        said
        for said in charges_around(scope, bearing.left)
        if not (_said_in_row(said.value, in_row) or told.has(said.value))
    ]
    if any(said.value.kind is ChargeKind.SHEETING for said in around) and comes_in_rolls(cells):
        around = [said for said in around if not _is_of_sheets(said)]
    for said in several_open([*own, *(said for said in around if not _repeats(said.value, in_columns))]):
        words = relieved(said.value, [*free, *free_of_itself(said.words, facts)])
        charge = _stated(words, facts, draft) if words is not None else None
        if charge is not None:
            found.append(charge)
            draft.evidence.append(said.evidence("charges"))
    draft.charges = tuple(
        charge for place, charge in enumerate(found) if charge.currency != OPEN or charge not in found[:place]
    )
    _note_open_charges(draft)
    for optional in scope.all_of(OptionalCharge):
        told_so = _OF_DEALINGS if optional.value.of_dealings else _WITHOUT
        draft.note(NoteCode.NUMBER_AMBIGUOUS, optional.where, told_so.format(optional.value.words))


def _said_in_row(words: ChargeWords, in_row: Iterable[tuple[ChargeKind, str]]) -> bool:
    """Whether a charge that is said around stands in the row already. Of other charges there may be several: an FSC's
    beside a toll. 'Energy surcharges are reviewed monthly' tells of the fuel's column; 'energy 3 %' comes on top."""
    of_kind = [label for kind, label in in_row if kind is words.kind]
    if words.kind is ChargeKind.OTHER:
        return False
    return any(same_charge(words.kind, words.label, label) for label in of_kind) if words.amounts else bool(of_kind)


def _is_of_sheets(said: Said[ChargeWords]) -> bool:
    """'Cutting 12 EUR per 1,000 sheets' is not charged for rolls, where 'rewinding' and 'cutting on all rolls' are."""
    of_rolls = phrases("roll_work").find(said.value.label) or phrases("rolls").find(said.words)
    return said.value.kind is ChargeKind.SHEETING and not of_rolls


def _repeats(words: ChargeWords, in_columns: Iterable[tuple[ChargeKind, str]]) -> bool:
    """'Surcharge is added to the price' says of the column 'Energy surcharge' what to do with it."""
    general = words.kind is ChargeKind.OTHER and phrases("surcharge_words").whole(words.label) is not None
    return general and not words.amounts and any(kind is not ChargeKind.FREIGHT for kind, _ in in_columns)


def _note_aside(draft: Draft, cell: Cell | None, column: Column, aside: str) -> None:
    """A column of what a buyer may do without is no part of the cost, and must not be lost."""
    if cell is not None and any(map(str.isdigit, cell.text)):
        draft.note(NoteCode.NUMBER_AMBIGUOUS, at(cell), aside.format(f"{column.text}: {cell.text.strip()}"))


def _note_of_others(draft: Draft, cell: Cell | None, column: Column, told: ChargeColumns) -> bool:
    """Tells of what is charged for another form of board, or for orders of some size, and is no part of this cost."""
    if column.index in told.optional:
        _note_aside(draft, cell, column, _WITHOUT)
        return True
    if cell is not None and column.index in told.of_some_orders:
        draft.note(NoteCode.BRACKET_UNREAD, at(cell), small_orders_cost_more(f"{column.text}: {cell.text.strip()}"))
        return True
    return False


_WITHOUT = "“{}” is charged only if you order it: the costs shown are without it."
_OF_DEALINGS = "“{}” is charged only where an order is cancelled, returned or not paid: the costs shown are without it."


def _remarked(cells: dict[int, Cell], columns: Columns) -> list[Said[ChargeWords]]:
    """The charges that the row's own remarks name: 'zzgl. 25 EUR/t FSC'."""
    remarks = columns.remarks_in(cells)
    return [Said(charge, at(cell), cell.text.strip()) for cell in remarks for charge in find_charges(cell.text)]


def _commented(cell: Cell) -> list[Said[ChargeWords]]:
    """Those that a comment at the price names: 'plus energy surcharge 3 %'."""
    return [Said(charge, at(cell), cell.comment) for charge in find_charges(cell.comment)] if cell.comment else []


def _take_freight_words(draft: Draft, cell: Cell, column: Column) -> None:
    """'inkl.' and 'prepaid' in a column of freights: this row's price bears it already."""
    if not isinstance(cell.value, str):
        return
    said = terms_under(cell.text, column.text)
    if phrases("freight_included").whole(cell.text) is not None or (said is not None and said.delivered):
        draft.delivered = True
        draft.evidence.append(Evidence("delivered", at(cell), f"{column.text}: {cell.text.strip()}"))


def _in_cell(cell: Cell, column: Column, facts: FileFacts, draft: Draft) -> Charge | None:
    head = charge_header(column.text)
    freight = column.role is Role.FREIGHT
    label = head.label if head is not None else column.text
    amount = _percentage(cell, column, facts)
    if amount is not None and amount > 0:
        share = Charge(label, amount, None, None, freight)
        return _open(share) if any(is_share_of_another(head.text) for head in column.said) else share
    if amount is not None:
        return None
    charge = _money(cell, column, facts, Charge(label, Decimal(0), draft.currency, draft.basis, freight), draft)
    # Without the price's own currency or unit the line is asked about anyway.
    return charge if charge is None or charge.basis is not None else None


def _percentage(cell: Cell, column: Column, facts: FileFacts) -> Decimal | None:
    """A percentage, where the cell, its format or its header says so."""
    if isinstance(cell.value, Decimal):
        if "%" in cell.number_format:
            return cell.value * 100
        return cell.value if column.percent and _stated_rate(column) in (None, cell.value) else None
    readings = settled_in_words(percent(cell.text), facts.decimal_sign)
    if not readings and column.percent:
        said = price_text(cell.text)
        readings = settled_in_words(said.amounts, facts.decimal_sign) if said is not None and not said.rest else ()
    return readings[0].value if len(readings) == 1 else None


_RATE = re.compile(r"(\d+(?:[.,]\d+)?)\s*%")


def _stated_rate(column: Column) -> Decimal | None:
    """The 3.5 of 'Energiezuschlag 3,5 %': below it stand amounts of money, unless they are that rate once more."""
    found = _RATE.findall(column.text)
    return Decimal(found[0].replace(",", ".")) if len(found) == 1 else None


def _money(cell: Cell, column: Column, facts: FileFacts, charge: Charge, draft: Draft) -> Charge | None:
    amount, own_currency, own_basis = amount_in(cell, facts)
    if amount is None:
        return _open(charge) if any(sign.isdigit() for sign in cell.text) else None
    if amount <= 0:
        return None
    if not is_price(amount) or (amount <= LARGEST_PERCENTAGE and _perhaps_percent(column, own_currency, own_basis)):
        return _open(charge)
    head_currency = column.currencies[-1] if column.currencies else None
    head_basis = column.bases[-1] if column.bases else None
    currency = currency_of(own_currency or head_currency, charge.currency)
    basis = basis_of(own_basis or head_basis, charge.basis, facts)
    if own_currency is None and (head_currency.cents if head_currency is not None else _is_in_cents(draft)):
        amount /= 100
    if not (currency and basis):
        return _open(charge)
    lent = own_basis is None and head_basis is None and currency == charge.currency
    if lent and not may_share_unit(amount, draft.price, freight=charge.freight, label=charge.label):
        return _open(charge)
    return Charge(charge.label, amount, currency, basis, charge.freight)


def _is_in_cents(draft: Draft) -> bool:
    """The price's figure counts cents: '58.25' that is 0.5825 USD."""
    figure = draft.cell.value
    return draft.price is not None and isinstance(figure, Decimal) and figure == draft.price * 100


def _open(charge: Charge) -> Charge:
    """A charge that is named but not known; only its being there is told."""
    return replace(charge, price=Decimal(0), currency=OPEN)


def _note_open_charges(draft: Draft) -> None:
    for charge in draft.charges:
        if charge.currency == OPEN:
            note_open_charge(draft, charge)


def note_open_charge(draft: Draft, charge: Charge) -> None:
    """Tells of a charge that keeps the delivered cost from being known."""
    text = f"What “{charge.label}” comes to is not certain, so the delivered cost is not known. Ask the vendor."
    draft.note(NoteCode.NUMBER_AMBIGUOUS, draft.where, text)


def _perhaps_percent(column: Column, currency: CurrencyReading | None, basis: BasisReading | None) -> bool:
    """A surcharge that nothing gives a currency, a unit or a percent sign may be either, and is left open."""
    return column.role in (Role.ENERGY, Role.CHARGE) and not (currency or basis or column.currencies or column.bases)


def _stated(words: ChargeWords, facts: FileFacts, draft: Draft) -> Charge | None:
    currency, of_price = draft.currency, draft.basis
    readings = settled_in_words(words.amounts, facts.decimal_sign)
    if words.amounts and all(reading.value <= 0 for reading in readings):
        return None
    freight = words.kind is ChargeKind.FREIGHT
    charge = Charge(words.label, Decimal(0), currency, of_price, freight)
    if len(readings) != 1:
        return _open(charge) if of_price is not None else None
    if words.percent:
        return Charge(words.label, readings[0].value, None, None, freight)
    own = currency_of(words.currency, currency)
    basis = basis_of(words.basis, of_price if words.as_price else None, facts)
    lent = words.as_price and words.basis is None
    if lent and not may_share_unit(readings[0].value, draft.price, freight=freight, label=words.label):
        return _open(charge)
    if own and basis:
        return Charge(words.label, readings[0].value, own, basis, freight)
    return _open(charge) if currency is not None and of_price is not None else None
