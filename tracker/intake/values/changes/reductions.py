"""What is taken off prices: 'less 3 %', 'Rabatt 4 %', '5 % off all items', 'Remise 3 %'."""

from collections.abc import Sequence

from tracker.intake.values.figures.rates import (
    amount_follows,
    masses_of_orders,
    minus_before_a_rate,
    off_behind_a_rate,
    states_amount,
    states_rate,
)  # fmt: skip
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, outside


def reduces(clause: str) -> bool:
    """Whether a part sentence that does not speak of prices can take a rate or amount off nothing else: 'Discount 3 %',
    '12 % off', and 'Less 12 %' where it begins so."""
    begins = any(match.first == 0 for match in phrases("minus_words").find(clause))
    named = phrases("reductions").find(clause) or off_behind_a_rate(clause)
    return bool(begins or named) and states_amount(clause) and takes_off(clause)


def takes_off(clause: str) -> bool:
    """A rate or amount off; a cash discount, one of larger orders and one taken off already are none."""
    named = phrases("reductions").find(clause)
    if not (states_rate(clause) or find_currencies(clause)):
        return False
    if not (named or _minus(clause) or off_behind_a_rate(clause)):
        return False
    return not (find_dates(clause) or masses_of_orders(clause) or _hangs_on_something(clause, named))


def _minus(clause: str) -> bool:
    words = phrases("minus_words").find(clause)
    return minus_before_a_rate(clause) or any(amount_follows(clause[match.end :]) for match in words)


def _hangs_on_something(clause: str, named: Sequence[Found[str]]) -> bool:
    """The 'net' of 'your net' and the 'om' of 'rabatt om 3 %' are no conditions; 'to be deducted' is yet to come."""
    own = [*named, *(match for section in _NO_CONDITIONS for match in phrases(section).find(clause))]
    return any(outside(phrases(section).find(clause), own) for section in _CONDITIONS)


_CONDITIONS = ("taken_off", "discount_conditions", "compared_with", "roll_measures")
_NO_CONDITIONS = ("to_be_deducted", "for_this_buyer")
