"""The charge that a header names."""

from functools import lru_cache

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.prices.money import find_price_unit
from tracker.intake.words.lists import phrases


@lru_cache(maxsize=4096)
def charge_header(text: str) -> ChargeWords | None:
    """The charge that a header names: 'Freight US$/cwt', 'Energy\\nsurcharge %'. None where it names none.

    'Price, freight included' names a delivery term, no charge.
    """
    found = charges_named(text)
    if not found or phrases("delivery").find(text):
        return None
    unit = find_price_unit(text)
    percent = "%" in text or bool(phrases("percent").find(text))
    currency = unit.currency if unit is not None and not percent else None
    basis = unit.basis if unit is not None and not percent else None
    return ChargeWords(ChargeKind(found[0].value), label_of(text, found), (), currency, basis, percent)
