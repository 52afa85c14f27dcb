"""Whether freight is said of some orders: 'freight prepaid on large orders', not 'on all orders', 'on your order'."""

import re
from collections.abc import Sequence
from decimal import Decimal

from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.orders.weights_in_words import weights_in_figures
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def of_some_orders(part: str) -> bool:
    """'Freight prepaid on orders of a hundred tons', 'on all large orders': not 'on all orders', 'for your order', nor
    'for orders placed by 1 March 2026', nor '4 weeks from order'."""
    orders = phrases("order_words").find(part)
    led = [one for one in phrases("on_orders").find(part) if one.value == "any"]
    return any(
        _are_some(part, part[one.end : order.start].split(), part[order.end :])
        for one in led
        for order in orders
        if one.after <= order.first
    )


def _are_some(part: str, before: Sequence[str], behind: str) -> bool:
    """Whether the orders behind 'on' and 'for' are some: by their kind, their amount, or because nothing says that they
    are all or the buyer's."""
    kind = [word for word in before if phrases("orders_meant").whole(word) is None]
    if len(kind) > _WORDS_OF_A_KIND or not all(word.replace("-", "").isalpha() for word in kind):
        return False
    if kind or _are_large(behind):
        return True
    behind = weights_in_figures(behind)
    amount = _money(behind)
    if amount is not None or find_masses(behind):
        return amount is None or amount >= _LEAST_SUM
    return not (before or _is_one_of_the_buyers(behind) or find_dates(part))


_WORDS_OF_A_KIND = 1
"""'Large orders', 'call-off orders'."""
_LEAST_SUM = 1000
"""For less no carton maker orders, whatever the money (our choice): 'carriage free on orders of £400 and above'."""


def _are_large(behind: str) -> bool:
    """'Pour toute commande importante'."""
    return phrases("large_orders").at(tokens_of(behind), 0) is not None


def _is_one_of_the_buyers(behind: str) -> bool:
    """'Für den Auftrag Nr. 4711', 'for orders shipped to your plant'."""
    return _NUMBERED.match(behind) is not None or bool(phrases("to_the_buyer").find(behind))


_NUMBERED = re.compile(r"\s*(?:n[ro°º]?|no|núm)?[.°º]?:?\s*(?:#\s*)?\d[\d/-]{2,}\W*$", re.IGNORECASE)


def _money(behind: str) -> Decimal | None:
    """The largest sum named: the 40,000 of 'of $40,000 or more'."""
    found = []
    for sign in {re.escape(one.words) for one in find_currencies(behind)}:
        for match in re.finditer(rf"{sign}\s?({_FIGURE})|({_FIGURE})\s?{sign}", behind):
            found += [reading.value for reading in number_readings(match[1] or match[2])]
    return max(found, default=None)


_FIGURE = r"\d[\d.,'’ \u00a0\u202f]*(?<! )"
