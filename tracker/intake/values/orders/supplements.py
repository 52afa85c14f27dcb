"""What small orders pay on top of the prices shown: 'a small-order supplement of £35 per tonne on top of the price
shown', 'une majoration de 55 € par tonne, en plus du prix indiqué'."""

import re

from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.figures.rates import in_signs
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.not_included import without_not_included
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.prices.money import PriceText
from tracker.intake.values.prices.price_within import plain_price, prices_within
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import blanked

_RATE = re.compile(r"(?<![\d.,])(\d+(?:[.,]\d+)?)\s*%")


def on_top_of_prices(clause: str) -> ChargeWords | None:
    """The supplement of a clause that says that it comes on top of the prices shown; None where it says no such thing,
    or gives no amount of it, or several."""
    own = without_not_included(clause)
    beside, clause = own != clause, own
    named = charges_named(clause)
    if not named or any(match.value != ChargeKind.OTHER for match in named) or not (beside or _says_so(clause)):
        return None
    if any(denied(clause, match) for match in named) or phrases("relieved").find(clause):
        return None
    label = label_of(clause, named)
    rates = _RATE.findall(in_signs(clause))
    money = _money(clause)
    if rates:
        readings = number_readings(rates[0]) if len(rates) == 1 and money is None else ()
        return ChargeWords(ChargeKind.OTHER, label, readings, percent=True) if readings else None
    return ChargeWords(ChargeKind.OTHER, label, money.amounts, money.currency, money.basis) if money else None


def _says_so(clause: str) -> bool:
    """'On top of the price shown', 'auf die genannten Preise': nothing but small words stands before the prices."""
    leads = [match for match in phrases("on_top_of_prices").find(clause) if match.value == "any"]
    return any(_leads_to_prices(clause[lead.end :]) for lead in leads)


def _leads_to_prices(behind: str) -> bool:
    priced = [match for section in _PRICES for match in phrases(section).find(behind)]
    before = behind[: min((match.start for match in priced), default=0)]
    fillers = [match.span for match in phrases("on_top_of_prices").find(before) if match.value == "filler"]
    return bool(priced) and not blanked(before, fillers).strip()


_PRICES = ("price_words", "these_prices", "prices_shown")


def _money(clause: str) -> PriceText | None:
    """The one amount with what it is per: the '£35 per tonne' of a clause."""
    found = {}
    for _, start, end, _ in prices_within(clause):
        price = plain_price(clause[start:end])
        if price is not None and not price.is_range:
            found[price.amounts, price.currency, price.basis] = price
    return next(iter(found.values())) if len(found) == 1 else None
