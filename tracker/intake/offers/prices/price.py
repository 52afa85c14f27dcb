"""The price of a draft: its amount, its currency and what it is per, with every doubt asked."""

from decimal import Decimal

from tracker.intake.columns.column import Columns
from tracker.intake.offers.answered import answer_about, key_about
from tracker.intake.offers.draft import DECIMAL, Draft
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.offers.notes.remarked import (
    bases_in,
    currencies_in,
    denied_by_remarks,
    remarked,
    take_sheet_remarked,
)
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.prices.marked_unit import as_marked
from tracker.intake.offers.prices.money import (
    Around,
    basis_claim,
    comment_bases,
    comment_currencies,
    currency_claim,
    foreign_unit,
)  # fmt: skip
from tracker.intake.offers.prices.nearer_unit import of_these_rows
from tracker.intake.offers.prices.no_currency import why_no_currency
from tracker.intake.offers.prices.out_of_measure import look_over
from tracker.intake.offers.prices.price_cell import PriceCell, Standing
from tracker.intake.offers.prices.settle import Claim, Settled, settle
from tracker.intake.offers.prices.ticked_rows import ticked_rows
from tracker.intake.offers.prices.unit_cells import UnitCell, counted, ton_of_row, unit_cells
from tracker.intake.offers.rows.rows import WholeRow
from tracker.intake.values.prices.money import find_price_unit
from tracker.trade.basis import BY_SHEET, Basis
from tracker.trade.offer import Evidence, NoteCode
from tracker.trade.quantities import MassUnit

_TONS = frozenset({Basis.SHORT_TON.value, Basis.TONNE.value})
_TON_VALUES = {
    MassUnit.SHORT_TON: Basis.SHORT_TON.value,
    MassUnit.TONNE: Basis.TONNE.value,
    MassUnit.LONG_TON: "foreign:long ton",
}


def fill_price(
    draft: Draft, read: PriceCell, whole: WholeRow, columns: Columns, money: Around, facts: FileFacts
) -> None:
    """Amount, currency and basis from the cell, its format, the row's unit cells and what is said around."""
    if read.standing is Standing.REFUSED:
        assert read.code is not None
        draft.refuse(read.code, read.text)
        return
    if read.standing is Standing.UNREAD:
        chosen = _chosen(draft, read, facts)
        if chosen is None:
            _ask_amount(draft, read)
            return
        read = chosen
    units = unit_cells(whole, columns, facts)
    _fill_amount(draft, read, units, money)
    remarks = columns.remarks_in(whole.cells)
    said_beside, denied = remarked(remarks), denied_by_remarks(remarks, facts)
    take_sheet_remarked(draft, said_beside)
    marks = ticked_rows(whole.cells, columns, facts.money_of_marks) if remarks else ()
    if not units and not said_beside and not marks and not denied and read.says_no_unit and not draft.cell.comment:
        (currency, basis), said = money.settled, list(money.basis)
    else:
        currencies = _currency_claims(draft, read, units, money)
        bases = _basis_claims(draft, read, units, money, facts)[: 1 if read.keyed else None]
        currencies = currencies[:1] if read.keyed and read.currency is not None else currencies
        currency = settle([*currencies[:1], (*currencies_in(said_beside), *marks), *_but(currencies[1:], denied)])
        said = [*bases[:1], bases_in(said_beside, facts), *_but(bases[1:], denied)]
        basis = settle(said)
    _fill_currency(draft, currency, facts)
    if basis.against is not None:
        basis = as_marked(of_these_rows(basis, said, draft), money.basis, draft)
    draft.by_figure = draft.by_figure or bool(facts.tons_of_codes)
    _fill_basis(draft, counted(basis, whole, columns, facts), facts, ton_of_row(whole, columns, facts))
    if read.delivered is not None:
        draft.delivered = read.delivered
    look_over(draft)


def _but(claims: list[tuple[Claim[str], ...]], denied: frozenset[str]) -> list[tuple[Claim[str], ...]]:
    """The claims of heads and texts without those for what the row says its price is not in."""
    return [tuple(claim for claim in level if not claim.values <= denied) for level in claims] if denied else claims


def _chosen(draft: Draft, read: PriceCell, facts: FileFacts) -> PriceCell | None:
    """The cell with the one of its figures that a person decided for; None where nobody has."""
    answer = facts.answered.settled.get(draft.price_key)
    amount = next((amount for amount in read.amounts if f"{amount:f}" == answer), None)
    if amount is None:
        return None
    draft.evidence.append(_answered(f"{amount:f}", draft.cell.text.strip()).evidence("price"))
    return read._replace(standing=Standing.AMOUNT, amounts=(amount,))


def _ask_amount(draft: Draft, read: PriceCell) -> None:
    assert read.code is not None
    words = draft.cell.text.strip()
    draft.ask(read.code, draft.price_key, draft.where, read.text, words, [f"{amount:f}" for amount in read.amounts])


def _fill_amount(draft: Draft, read: PriceCell, units: list[UnitCell], money: Around) -> None:
    share = Decimal("0.01") if not read.own_cents and _in_cents(read, units, money) else Decimal(1)
    if len(read.amounts) != 1:
        figures = " or ".join(f"{amount:f}" for amount in read.amounts)
        text = f"“{draft.cell.text.strip()}” is {figures}: nothing in the file says which sign is the decimal sign."
        draft.amounts = tuple(amount * share for amount in read.amounts)
        draft.ask(NoteCode.NUMBER_AMBIGUOUS, DECIMAL, draft.where, text, draft.cell.text.strip())
        return
    draft.price = read.amounts[0] * share
    if read.about:
        text = f"“{draft.cell.text.strip()}” is no exact price (“{read.about}”): ask the vendor what is charged."
        draft.note(NoteCode.NUMBER_AMBIGUOUS, draft.where, text)


def _in_cents(read: PriceCell, units: list[UnitCell], money: Around) -> bool:
    """The nearest that names the money decides: the cell, its unit cell, its format, its header."""
    if read.currency is not None:
        return False
    for one in units:
        if one.unit is not None and one.unit.currency is not None:
            return one.unit.currency.cents
    if read.format_currency is not None:
        return read.format_currency.cents or money.cents
    return money.cents


def _currency_claims(
    draft: Draft, read: PriceCell, units: list[UnitCell], money: Around
) -> list[tuple[Claim[str], ...]]:
    own = list(comment_currencies(draft.cell))
    if read.currency is not None:
        own.append(currency_claim(read.currency, draft.where, draft.cell.text.strip()))
    for one in units:
        if one.unit is not None and one.unit.currency is not None:
            own.append(currency_claim(one.unit.currency, at(one.cell), one.cell.text.strip()))
    if read.format_currency is not None:
        own.append(currency_claim(read.format_currency, draft.where, f"number format {draft.cell.number_format}"))
    return [tuple(own), *money.currency]


def _basis_claims(
    draft: Draft, read: PriceCell, units: list[UnitCell], money: Around, facts: FileFacts
) -> list[tuple[Claim[str], ...]]:
    own = list(comment_bases(draft.cell, facts))
    for reading in (read.basis, read.format_basis):
        if reading is not None:
            own.append(basis_claim(reading, draft.where, draft.cell.text.strip(), facts))
    for cell, left_out in units:
        words, unit = cell.text.strip(), UnitCell(cell, left_out).unit
        if unit is not None and unit.basis is not None:
            own.append(basis_claim(unit.basis, at(cell), words, facts))
        elif unit is None and (left_out or any(map(str.isalpha, words))):
            own.append(Claim(frozenset({f"foreign:{words}"}), at(cell), words))
    return [tuple(own), *money.basis]


def _fill_currency(draft: Draft, settled: Settled[str], facts: FileFacts) -> None:
    why = why_no_currency(settled.values)
    if settled.by is not None and settled.against is None and why is not None:
        words = settled.by.words
        key = key_about(why[0], words)
        draft.ask(NoteCode.CURRENCY_UNKNOWN, key, settled.by.where, f"“{words}” {why[1]}", words)
        return
    code = settled.value or _dollar(settled, facts)
    if code is not None and settled.by is not None:
        draft.currency = code
        draft.evidence.append(settled.by.evidence("currency"))
        return
    left, words = _in_doubt(settled)
    answer = answer_about(facts.answered.settled, "currency", words, left)
    if answer is not None:
        draft.currency = answer
        draft.evidence.append(_answered(answer, words).evidence("currency"))
        return
    if settled.against is not None:
        text = f"{_both_said(settled)} name different currencies."
    else:
        text = f"Which currency is “{words}”?" if words else "Nothing says in which currency the prices are."
    draft.ask(NoteCode.CURRENCY_UNKNOWN, key_about("currency", words), _where(settled, draft), text, words, left)


def _where(settled: Settled[str], draft: Draft) -> str:
    """Of what is asked: the words that leave it open, else the price."""
    return settled.by.where if settled.by is not None and settled.against is None else draft.where


def _in_doubt(settled: Settled[str]) -> tuple[tuple[str, ...], str]:
    """The values that the sheet leaves open (none: all) and the words that do; both sides of a contradiction."""
    if settled.by is None:
        return (), ""
    if settled.against is None:
        return tuple(sorted(settled.values)), settled.by.words
    return tuple(sorted(settled.values | settled.against.values)), f"{settled.by.words} / {settled.against.words}"


def _both_said(settled: Settled[str]) -> str:
    assert settled.by is not None
    assert settled.against is not None
    return f"“{settled.by.words}” in {settled.by.where} and “{settled.against.words}” in {settled.against.where}"


def _answered(value: str, words: str) -> Said[str]:
    return Said(value, "your answer", words or value)


def _dollar(settled: Settled[str], facts: FileFacts) -> str | None:
    """A bare $ is USD unless the file names another dollar or an address abroad; it may name just one dollar.

    Abroad, 'US$' at other prices sets those apart from a plain $, where 'all prices in US dollars' is said of it too.

    A cent may be a euro's as well, but in a file of pounds and inches: it is one where the file names no other money.
    """
    if settled.against is not None or "USD" not in settled.values or len(settled.values) < 2:
        return None
    if "EUR" in settled.values and not facts.units.pound_file:
        return "EUR" if facts.money == {"EUR"} else None
    if facts.abroad:
        return "USD" if facts.dollars_of_all == {"USD"} else None
    return "USD" if facts.named_dollars <= {"USD"} else None


def _fill_basis(draft: Draft, settled: Settled[str], facts: FileFacts, of_row: MassUnit | None) -> None:
    values = settled.values
    ton = of_row or (facts.lone_t if settled.by is not None and settled.by.lone_t else facts.ton)
    answered = False
    if values == _TONS and settled.against is None and ton is not None:
        values = frozenset({_TON_VALUES[ton]})
        answered = settled.by is not None and facts.answers_ton(lone_t=settled.by.lone_t)
    if len(values) == 1 and settled.by is not None and settled.against is None:
        _take_basis(draft, next(iter(values)), settled.by, facts)
        if answered:
            draft.evidence.append(_answered(next(iter(values)), settled.by.words).evidence("basis"))
    elif values == _TONS and settled.by is not None and settled.against is None:
        text = f"Is the ton of “{settled.by.words}” a short ton (2,000 lb) or a tonne (1,000 kg)?"
        draft.ask(NoteCode.BASIS_UNKNOWN, "ton", settled.by.where, text, settled.by.words)
    else:
        _ask_basis(draft, settled, facts)


def _take_basis(draft: Draft, value: str, by: Claim[str], facts: FileFacts) -> None:
    unit = foreign_unit(value)
    answer = facts.answered.settled.get(key_about("basis", by.words)) if unit is not None else None
    if unit is not None and answer is None:
        text = f"The price is per {unit} (“{by.words}”), which is none of the units that prices are compared by."
        draft.ask(NoteCode.BASIS_UNKNOWN, key_about("basis", by.words), by.where, text, by.words)
        return
    if _counts_what_is_open(draft, value, by):
        left = (Basis.MSF.value, Basis.THOUSAND_SHEETS.value)
        answer = answer_about(facts.answered.settled, "basis", by.words, left)
        if answer is None:
            text = f"Is “{by.words}” per 1,000 ft² or per 1,000 sheets? No size of sheets is told."
            draft.ask(NoteCode.BASIS_UNKNOWN, key_about("basis", by.words), by.where, text, by.words, left)
            return
    _set_basis(draft, Basis(value if answer is None else answer), by)
    if answer is not None:
        draft.evidence.append(_answered(answer, by.words).evidence("basis"))


def _counts_what_is_open(draft: Draft, value: str, by: Claim[str]) -> bool:
    """'Price per M' in a list that tells no size of sheets may be per 1,000 square feet."""
    unit = find_price_unit(by.words)
    thousand = unit is not None and unit.basis is not None and unit.basis.needs_sheet
    sized = draft.sheet_mm is not None or draft.sheet_weighed is not None or bool(draft.sheet_words)
    return value == Basis.THOUSAND_SHEETS and thousand and not sized


def _set_basis(draft: Draft, basis: Basis, by: Claim[str] | Said[str]) -> None:
    if basis in BY_SHEET and draft.sheet_mm is None and draft.sheet_weighed is not None:
        # 'M weight of 28 x 40 in' over prices per 1,000 sheets is about these sheets.
        draft.sheet_mm = draft.sheet_weighed
        draft.evidence.append(Evidence("sheet_mm", draft.where, draft.sheet_words or ""))
    if basis in BY_SHEET and draft.sheet_mm is None:
        words = draft.sheet_words if draft.sheet_words is not None else by.words
        text = "The price is for sheets, and their size is not certain."
        draft.ask(NoteCode.BASIS_UNKNOWN, "sheet-size", by.where, text, words)
    draft.basis = basis
    draft.evidence.append(by.evidence("basis"))


def _ask_basis(draft: Draft, settled: Settled[str], facts: FileFacts) -> None:
    left, words = _in_doubt(settled)
    known = tuple(value for value in left if foreign_unit(value) is None)
    answer = answer_about(facts.answered.settled, "basis", words, known)
    if answer is not None:
        _set_basis(draft, Basis(answer), _answered(answer, words))
        return
    if settled.against is not None:
        text = f"{_both_said(settled)} say different units for this price."
    else:
        text = f"What is the price of “{words}” per?" if words else "Nothing says what the prices are per."
    draft.ask(NoteCode.BASIS_UNKNOWN, key_about("basis", words), _where(settled, draft), text, words, known)
