"""Amounts that a note adds for one form of board, by no other name: 'For sheets add 38 EUR/t', 'Rollen: +20 EUR/t'."""

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.rest import Span, rest_of
from tracker.intake.values.prices.price_within import plain_price, prices_within
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import blanked

_ADDS = ("added_on_top", "leads_to_additions", "adds_to_prices")
_BESIDE = ("charged_on", "board_goods", "articles", "copula", "charge_filler", "price_words", *_ADDS)


def added_for_form(clause: str) -> ChargeWords | None:
    """The amount, with its form, and without the amount where more is said than is read: 'for narrow sheets add 38
    EUR/t'. None where nothing is added for a form, or what it is has a name."""
    spans = {(start, end) for _, start, end, _ in prices_within(clause)}
    amount = max(spans, key=lambda span: span[1] - span[0], default=None)
    if amount is None or charges_named(clause) or boards_named(clause).some:
        return None
    told = blanked(clause, (amount,))
    forms = phrases("forms_named").find(told)
    if len({form.value for form in forms}) != 1 or not _adds(clause, amount):
        return None
    # 'Roll width under 24 in add $15/ton' is of some rolls by their width.
    if joined("negations", "roll_measures").find(told):
        return None
    price = plain_price(clause[slice(*amount)].lstrip("+ "))
    if price is None or price.basis is None:
        return None
    label, form = told[forms[0].start : forms[0].end], forms[0].value
    left = any(map(str.isdigit, told)) or rest_of(told, (one.span for one in forms), *_BESIDE)
    if left or len(price.amounts) != 1 or price.is_range:
        return ChargeWords(ChargeKind.OTHER, label, form=form)
    return ChargeWords(ChargeKind.OTHER, label, price.amounts, price.currency, price.basis, form=form)


def _adds(clause: str, amount: Span) -> bool:
    """Whether a word or a sign that adds stands right before an amount, or a word behind it."""
    ahead, behind = clause[: amount[0]].rstrip(" :"), clause[amount[1] :]
    if ahead.endswith("+") or clause[amount[0] :].startswith("+"):
        return True
    before = any(match.end == len(ahead) for match in joined(*_ADDS).find(ahead))
    # 'Bei Bogen kommen 38 €/t hinzu'.
    return before or any(not behind[: match.start].strip() for match in joined(*_ADDS).find(behind))
