"""Amounts that a note adds to the prices under a name that is no known charge: 'An eco-fee of 12 USD per short ton is
added to all prices'. A cost without them would look whole."""

from collections.abc import Iterator

from tracker.intake.values.charge_names import ChargeKind, charges_named
from tracker.intake.values.charges import ChargeWords
from tracker.intake.values.clauses import clauses
from tracker.intake.values.costs_told import tells_costs
from tracker.intake.values.currency import find_currencies
from tracker.intake.values.denials import denied
from tracker.intake.values.price_within import plain_price, prices_within
from tracker.intake.words.lists import phrases

_LONGEST = 60
_TAKEN_OFF = ("reductions", "not_charge")
_OTHERS = ("small_orders", "optional")
"""What is told of elsewhere, or is no part of what board costs."""


def added_on_top(text: str) -> Iterator[ChargeWords]:
    """Each such addition with its amount, or without where it is not certain which figure that is."""
    for clause in clauses(text):
        if _adds_to_prices(clause):
            yield _read(clause)


def _adds_to_prices(clause: str) -> bool:
    figure = any(map(str.isdigit, clause)) and (bool(find_currencies(clause)) or "%" in clause)
    says_so = phrases("added_on_top").find(clause) and phrases("price_words").find(clause)
    verbs = phrases("added_on_top").find(clause)
    if any(phrases(section).find(clause) for section in _TAKEN_OFF) or any(denied(clause, verb) for verb in verbs):
        return False
    taxed = any(match.value == "named" for match in phrases("tax").find(clause))
    known = taxed or charges_named(clause) or tells_costs(clause) or any(phrases(of).find(clause) for of in _OTHERS)
    return figure and bool(says_so) and not known


def _read(clause: str) -> ChargeWords:
    label = " ".join(clause.split())[:_LONGEST].strip()
    amounts = {(start, end) for _, start, end, _ in prices_within(clause)}
    longest = max(amounts, key=lambda span: span[1] - span[0], default=None)
    price = plain_price(clause[longest[0] : longest[1]]) if longest is not None else None
    if price is None or len(price.amounts) != 1 or "%" in clause:
        return ChargeWords(ChargeKind.OTHER, label)
    return ChargeWords(ChargeKind.OTHER, label, price.amounts, price.currency, price.basis)
