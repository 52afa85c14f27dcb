"""What a charge comes to, and in which currency and unit, beside the price's."""

from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.offers.file_facts import FileFacts
from tracker.intake.values.figures.formats import unit_of_format
from tracker.intake.values.figures.numbers import settled_in_words
from tracker.intake.values.prices.basis import BasisReading
from tracker.intake.values.prices.currency import CurrencyReading
from tracker.intake.values.prices.money import price_text
from tracker.trade.basis import Basis
from tracker.trade.quantities import MassUnit


def amount_in(cell: Cell, facts: FileFacts) -> tuple[Decimal | None, CurrencyReading | None, BasisReading | None]:
    """A cell's amount, and the currency and unit that its format or words give it; None for what it does not say."""
    if isinstance(cell.value, Decimal):
        unit = unit_of_format(cell.number_format)
        return cell.value, unit.currency if unit is not None else None, unit.basis if unit is not None else None
    said = price_text(cell.text) if isinstance(cell.value, str) else None
    if said is None or said.rest or said.is_range:
        return None, None, None
    readings = settled_in_words(said.amounts, facts.decimal_sign)
    return readings[0].value if len(readings) == 1 else None, said.currency, said.basis


def currency_of(reading: CurrencyReading | None, of_price: str | None) -> str | None:
    """A charge without a currency is in the price's."""
    if reading is None:
        return of_price
    return of_price if of_price in reading.codes else reading.code


def basis_of(reading: BasisReading | None, of_price: Basis | None, facts: FileFacts) -> Basis | None:
    """A charge without a unit is per the price's; an open ton is the price's ton, or what the file settles."""
    if reading is None:
        return of_price
    if reading.basis is not None:
        return reading.basis
    lone = MassUnit.TONNE if facts.makes_tonne(reading.words) else facts.lone_t
    ton = lone if reading.metric_hint else facts.ton
    # A 't' beside a price per short ton is as likely another ton.
    if of_price in reading.bases and not (reading.metric_hint and of_price is Basis.SHORT_TON):
        return of_price
    if reading.ambiguous_ton and ton in (MassUnit.SHORT_TON, MassUnit.TONNE):
        return Basis.SHORT_TON if ton is MassUnit.SHORT_TON else Basis.TONNE
    return None
