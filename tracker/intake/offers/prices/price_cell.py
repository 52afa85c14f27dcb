"""What a price cell itself says: an amount, no price, a range, a fault; and the currency and unit written in it."""

import re
from collections.abc import Iterable, Sequence
from decimal import Decimal
from enum import StrEnum
from typing import NamedTuple

from tracker.intake.grid import Cell, CellFault
from tracker.intake.values.figures.formats import unit_of_format
from tracker.intake.values.figures.halves import halves_of
from tracker.intake.values.figures.numbers import NumberReading, crowns_and_ore, number_readings, settled
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.values.prices.currency import CurrencyReading
from tracker.intake.values.prices.money import PriceText, one_of_two, price_text
from tracker.intake.values.prices.tax import names_tax
from tracker.intake.words.lists import words
from tracker.trade.offer import NoteCode


class Standing(StrEnum):
    """Whether a price cell offers a price."""

    AMOUNT = "amount"
    NOTHING = "nothing"
    UNREAD = "unread"
    REFUSED = "refused"


class PriceCell(NamedTuple):
    """A price cell as read. `amounts`: what is left of its readings, or the figures of what is not one price; `code`
    and `text`: why it is unread or refused.

    `about`: the words that keep the amount from being exact, as 'ca.' or '+'. `keyed`: its unit is the one that a key
    gives the letter behind it, whatever is said of the others.
    A tuple, because a long list makes one a row and a frozen dataclass is made several times as slowly.
    """

    standing: Standing
    amounts: tuple[Decimal, ...] = ()
    currency: CurrencyReading | None = None
    basis: BasisReading | None = None
    format_currency: CurrencyReading | None = None
    format_basis: BasisReading | None = None
    delivered: bool | None = None
    indicative: bool = False
    about: str = ""
    own_cents: bool = False
    keyed: bool = False
    code: NoteCode | None = None
    text: str = ""

    @property
    def says_no_unit(self) -> bool:
        """A bare number: currency and basis are for others to say."""
        return not (self.currency or self.basis or self.format_currency or self.format_basis)


_NOTHING = PriceCell(Standing.NOTHING)
_LEAST, _MOST = Decimal("0.000001"), Decimal(10) ** 12
"""No board costs less or more per anything in any currency; what lies beyond is a slip or a spoilt file."""
_DIGITS = 18
"""More significant digits no price has; they are a reckoning's leftovers, and can't be kept exactly."""
_SHOWN = 24
_PLUS = ("+", '"+', "\\+")
"""How number formats begin that show a plus before a figure."""


def read_price(cell: Cell, sign: str | None, *, crowns: bool = False, pair: int | None = None) -> PriceCell:
    """Reads a cell of a price column; `sign` is the decimal sign, where its column or the file settles it.

    `crowns`: the column's '15:80' are crowns and öre. `pair`: which of two prices in a cell is in force.
    """
    if cell.fault is not None:
        return _faulty(cell)
    if cell.struck:
        return _NOTHING
    if pair is not None and cell.text.strip():
        return _of_two(cell.text, pair, sign)
    if isinstance(cell.value, Decimal):
        return _number(cell)
    if not isinstance(cell.value, str):
        return _NOTHING if cell.value is None else _unread(f"“{cell.text}” is not a price.")
    return _text(cell, sign, crowns)


def in_crowns(texts: Iterable[str], *, shown: bool = False) -> bool:
    """'15:80' among a column's figures is no time of day, nor are the others, as all are written so.

    `shown`: the table writes crowns with a colon elsewhere, as in '12 450:-'.
    """
    written = [text.strip() for text in texts if ":" in text]
    told = shown or any(text[-2:] >= _MINUTES for text in written)
    return told and all(crowns_and_ore(text) is not None for text in written)


def shows_crowns(texts: Iterable[str]) -> bool:
    """'12 450:-' is how crowns are written, and no time of day."""
    return any(text.rstrip()[-2:] in (":-", ":–") for text in texts)


_MINUTES = "60"


def _faulty(cell: Cell) -> PriceCell:
    if cell.fault is CellFault.ERROR:
        text = f"The cell shows the error {cell.text}. Ask the vendor for the price."
        return PriceCell(Standing.REFUSED, code=NoteCode.ERROR_CELL, text=text)
    text = (
        f"The formula {cell.text} was never calculated, so the file holds no price. "
        "Open it in a spreadsheet program, save it and import it again."
    )
    return PriceCell(Standing.REFUSED, code=NoteCode.FORMULA_WITHOUT_VALUE, text=text)


def _number(cell: Cell) -> PriceCell:
    assert isinstance(cell.value, Decimal)
    unit = unit_of_format(cell.number_format)
    currency = unit.currency if unit is not None else None
    basis = unit.basis if unit is not None else None
    if cell.value <= 0:
        return _not_positive(cell.text)
    if not is_price(cell.value):
        return _no_price(cell.text)
    if cell.number_format.startswith(_PLUS):
        return _added(f"+{cell.text.strip()}")
    return PriceCell(Standing.AMOUNT, (cell.value,), format_currency=currency, format_basis=basis)


def is_price(amount: Decimal) -> bool:
    """Whether a figure can be what board, or a charge on it, costs per anything."""
    return _LEAST <= amount <= _MOST and len(amount.as_tuple().digits) <= _DIGITS


def _not_positive(text: str) -> PriceCell:
    told = f"The price is {text}, and a price must be above nothing. Ask the vendor for it."
    return PriceCell(Standing.REFUSED, code=NoteCode.PRICE_NOT_POSITIVE, text=told)


def _no_price(text: str) -> PriceCell:
    figure = text.strip() if len(text.strip()) <= _SHOWN else f"{text.strip()[:_SHOWN]}…"
    return _unread(f"“{figure}” is no figure that a price of board has. Ask the vendor for it.")


def _added(text: str) -> PriceCell:
    return _unread(f"“{text.strip()}” comes on top of another price, and is none itself.")


def _text(cell: Cell, sign: str | None, crowns: bool) -> PriceCell:
    if _shows_error(cell.text):
        return _faulty(cell._replace(fault=CellFault.ERROR))
    if len(cell.text.strip()) > 2 and set(cell.text.strip()) == {"#"}:
        return _unread("The cell shows no figure, as its column was too narrow when the file was made. Ask the vendor.")
    amount = crowns_and_ore(cell.text.strip()) if crowns else None
    if amount is not None:
        return _amount(PriceText(cell.text, (NumberReading(amount),)), sign)
    said = price_text(cell.text)
    if said is None or not said.amounts or _is_tax(cell.text):
        return _NOTHING
    if cell.text.lstrip().startswith("+"):
        return _added(cell.text)
    if said.is_range:
        return _range(said, sign)
    parts = _figures(cell.text, sign) if said.rest else ()
    if parts:
        return _unread(f"“{cell.text.strip()}” is not one price.")._replace(amounts=_certain(parts))
    if said.rest:
        return _unread(f"“{said.rest}” in “{cell.text.strip()}” is not understood.")
    return _amount(said, sign)


def _shows_error(text: str) -> bool:
    """'#REF!' in a CSV file, where an error is a text like any other."""
    return text.lstrip()[:1] in ("#", "E") and text.strip() in words("error_texts")["any"]


def _is_tax(text: str) -> bool:
    """'19 % MwSt.' below the last price labels the tax of a sum."""
    rest = _RATE.sub(" ", text)
    return rest != text and not any(map(str.isdigit, rest)) and names_tax(rest)


_RATE = re.compile(r"\d{1,2}(?:[.,]\d{1,3})?\s*%")


def _of_two(text: str, pair: int, sign: str | None) -> PriceCell:
    """The later of the two prices of '1.210 / 1.245'; of '– / 1.245' as well, and none of '1.210 / –'."""
    halves = halves_of(text)
    if halves is None:
        return _NOTHING if not any(map(str.isdigit, text)) else _unread(f"“{text.strip()}” is not one price.")
    chosen, other = halves[pair], halves[1 - pair]
    if not any(map(str.isdigit, chosen)):
        return _NOTHING
    said = one_of_two(chosen, other, text) if any(map(str.isdigit, other)) else price_text(chosen)
    if said is None or said.rest or said.is_range:
        return _unread(f"“{text.strip()}” is not one price.")
    return _amount(said, sign)


_PARTS = re.compile(r"\s*[/;|]\s*")


def _figures(text: str, sign: str | None) -> list[tuple[NumberReading, ...]]:
    """What each part of '1190 / 1260' reads, for rolls and for sheets perhaps; [] where one is no figure."""
    read = [settled(number_readings(part), sign) for part in _PARTS.split(text.strip())]
    return read if len(read) > 1 and all(read) else []


def _certain(figures: list[tuple[NumberReading, ...]]) -> tuple[Decimal, ...]:
    """The figures to choose from; () where one of them may be read in two ways or is no price."""
    plain = all(len(readings) == 1 and is_price(readings[0].value) for readings in figures)
    return tuple(dict.fromkeys(readings[0].value for readings in figures)) if plain else ()


def _unread(text: str) -> PriceCell:
    return PriceCell(Standing.UNREAD, code=NoteCode.NUMBER_AMBIGUOUS, text=text)


def _range(said: PriceText, sign: str | None) -> PriceCell:
    """'1100-1150' and 'from 1100': which of its figures is paid is for a person to say, who has asked the vendor."""
    ends = [settled(readings, sign) or readings for readings in (said.amounts, said.upper) if readings]
    figures = tuple(dict.fromkeys(left[0].value for left in ends if len(left) == 1 and is_price(left[0].value)))
    cents = said.currency is not None and said.currency.cents
    return _unread(f"“{said.words.strip()}” is not one price.")._replace(
        amounts=figures if len(figures) == len(ends) else (),
        currency=said.currency, basis=said.basis, delivered=said.delivered, indicative=said.indicative, own_cents=cents,
    )  # fmt: skip


def _amount(said: PriceText, sign: str | None) -> PriceCell:
    left = settled(said.amounts, sign) or said.amounts
    amounts: Sequence[Decimal] = tuple(dict.fromkeys(reading.value for reading in left))
    if all(amount <= 0 for amount in amounts):
        return _not_positive(said.words)
    if not all(is_price(amount) for amount in amounts if amount > 0):
        return _no_price(said.words)
    cents = said.currency is not None and said.currency.cents
    return PriceCell(
        Standing.AMOUNT, tuple(amounts), said.currency, said.basis,
        delivered=said.delivered, indicative=said.indicative, about=_about(said.marks), own_cents=cents,
    )  # fmt: skip


def _about(marks: Sequence[str]) -> str:
    """'ca.', '~', '+': what says that the amount is not exact; a footnote's sign does not."""
    words = (mark for mark in marks if not mark.startswith("[") and not mark.endswith(")"))
    return next((mark for mark in words if mark in ("~", "≈", "±", "+") or any(map(str.isalpha, mark))), "")
