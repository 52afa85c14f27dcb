"""Amounts that a note adds to the prices under a name of its own, so that a cost without them does not look whole:
'An eco-fee of 12 USD per short ton is added to all prices', 'Edge guards: US$1.15 per cwt, added on the invoice'.

Freight, energy and all else that the trade has a name for is read by `charges`.
"""

import re
from collections.abc import Iterator

from tracker.intake.values.boards.boards_meant import boards_meant
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.added_for_forms import added_for_form
from tracker.intake.values.freight.additions_below import (
    Adds,
    Entry,
    is_added_for_certain,
    said_as_added,
    words_unread,
)
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.charge_parts import is_of_some_board
from tracker.intake.values.freight.charges import ChargeWords, find_charges, without_pieces
from tracker.intake.values.freight.costs_told import tells_costs
from tracker.intake.values.freight.not_included import without_denied
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.price_within import plain_price, prices_within
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked

_LONGEST = 60
_TAKEN_OFF = ("reductions", "not_charge")
_OTHERS = ("small_orders", "optional")
"""What is told of elsewhere, or is no part of what board costs."""
_OF_SOME = ("invoiced_beside", "grades", "coating", "forms")


def added_on_top(text: str) -> Iterator[ChargeWords]:
    """One charge for each clause that adds such an amount, called by its name or else by the clause; without the amount
    where it is not certain which figure that is."""
    for clause in clauses(text):
        entry = said_as_added(clause)
        if entry is not None and _is_charged(entry):
            yield _entry(entry)
        elif entry is None and _adds_to_prices(clause):
            yield _read(clause)
        elif entry is None and (of_form := added_for_form(clause)) is not None:
            yield of_form


def _is_charged(entry: Entry) -> bool:
    return entry.adds is not Adds.NEVER and may_be_charged(entry.said) and not _is_relieved(entry.said)


def may_be_charged(said: str) -> bool:
    """Whether a name or an entry below a line that adds it is neither tax, nor a discount, nor what a buyer may do
    without, nor denied. 'From 5 t' leaves open whether it is charged, and so do the condition of 'toll 4 €/t bei
    Lieferung frei Haus' and the 'claim' of 'FSC claim fee'."""
    if joined(*_NEVER_ADDED).find(said) or any(phrases("negations").find(one) for one in _unsure(said)):
        return False
    # 'Skonto: 2 %' is no charge, and 'energy surcharge, payable with the invoice' is one.
    return bool(charges_named(said)) or not joined(*_OF_PAYMENT).find(said)


_NEVER_ADDED = ("tax.named", "reductions", "fees_of_dealings", *_OTHERS)
_OF_PAYMENT = ("pays", "headers.discount")


def _unsure(said: str) -> list[str]:
    """The words of an entry that elsewhere say that nothing is charged, but for those of a condition and of a
    relief."""
    conditions = {found.span for section in ("entry_conditions", "relieved") for found in phrases(section).find(said)}
    found = (one for one in phrases("not_charge").find(without_denied(said)) if one.span not in conditions)
    return [said[one.start : one.end] for one in found]


def _is_relieved(said: str) -> bool:
    """'Toll: $4/ST, waived', and no more than that: 'waived in June' leaves open what holds before."""
    found = phrases("relieved").find(said)
    return bool(found) and not words_unread(blanked(said, (match.span for match in found)))


def _entry(entry: Entry) -> ChargeWords:
    """A charge below a line that adds it to the prices; without an amount where more is said of it than is read."""
    known, certain = find_charges(entry.said), is_added_for_certain(entry) and not _unsure(entry.said)
    if len(known) == 1 and known[0].amounts:
        # One that may be an alternative is no rate of another freight.
        return known[0] if certain else ChargeWords(ChargeKind.OTHER, _label_of(entry))
    label, amount = _label_of(entry), entry.amount
    # 'Energy: about $25/ST'.
    unsure = len(known) == 1 or not certain
    if unsure or boards_meant(f"{entry.name} {amount}").spans:
        return ChargeWords(ChargeKind.OTHER, label)
    shares = _SHARE.findall(fold(amount))
    if len(shares) == 1 and not find_currencies(amount):
        return ChargeWords(ChargeKind.OTHER, label, number_readings(shares[0]), percent=True)
    price = plain_price(amount)
    if price is None or len(price.amounts) != 1 or price.is_range or shares:
        return ChargeWords(ChargeKind.OTHER, label)
    return without_pieces(ChargeWords(ChargeKind.OTHER, label, price.amounts, price.currency, price.basis))


_SHARE = re.compile(r"(\d+(?:[.,]\d+)?)\s*%")


def _label_of(entry: Entry) -> str:
    return " ".join(entry.name.split())[:_LONGEST].strip()


def _adds_to_prices(clause: str) -> bool:
    figure = any(map(str.isdigit, clause)) and (bool(find_currencies(clause)) or "%" in clause)
    verbs = phrases("added_on_top").find(clause)
    says_so = (verbs and phrases("price_words").find(clause)) or _is_invoiced_beside(clause)
    if any(phrases(section).find(clause) for section in _TAKEN_OFF) or any(denied(clause, verb) for verb in verbs):
        return False
    return figure and bool(says_so) and not _is_known(clause)


def _is_known(clause: str) -> bool:
    taxed = any(match.value == "named" for match in phrases("tax").find(clause))
    told = taxed or charges_named(clause) or tells_costs(clause) or any(phrases(of).find(clause) for of in _OTHERS)
    return bool(told)


def _is_invoiced_beside(clause: str) -> bool:
    """Something with an amount behind its name, which is not that of what few boards or orders bear: a coating, a rush
    order, rolls."""
    name, colon, rest = clause.partition(":")
    said = any(match.value == "all" for match in phrases("invoiced_beside").find(rest))
    of_some = any(phrases(section).find(name) for section in _OF_SOME) or bool(boards_meant(name).spans)
    return bool(colon) and said and not of_some


def _read(clause: str) -> ChargeWords:
    name = clause.partition(":")[0] if _is_invoiced_beside(clause) else clause
    label = " ".join(name.split())[:_LONGEST].strip()
    amounts = {(start, end) for _, start, end, _ in prices_within(clause)}
    longest = max(amounts, key=lambda span: span[1] - span[0], default=None)
    price = plain_price(clause[longest[0] : longest[1]]) if longest is not None else None
    # '12 or 14 EUR' is neither; what some boards bear alone is no part of what others cost.
    if price is None or len(price.amounts) != 1 or price.is_range or "%" in clause or is_of_some_board(clause):
        return ChargeWords(ChargeKind.OTHER, label)
    return without_pieces(ChargeWords(ChargeKind.OTHER, label, price.amounts, price.currency, price.basis))
