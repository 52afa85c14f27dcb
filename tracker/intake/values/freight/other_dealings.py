"""Clauses whose money is none of the prices, nor added to them: of goods that come back, deposits and late payment."""

import re
from collections.abc import Sequence
from enum import Enum, auto

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found


class _Money(Enum):
    """What the money of a clause is for."""

    OF_PRICES = auto()
    OF_OTHERS = auto()
    UNKNOWN = auto()


def of_other_dealings(clause: str) -> bool:
    """'Les retours se font sur accord, moins 10 % pour frais': what goods cost that come back."""
    return _money(clause) is _Money.OF_OTHERS


def may_be_of_other_dealings(clause: str) -> bool:
    """'Retur av pall ingår, tillägg 80 SEK/ton', 'monatlich angepasster Zuschlag 25 EUR/t': what comes per ton may as
    well be charged on the board."""
    return _money(clause) is _Money.UNKNOWN or any(is_monthly(clause, one) for one in _dealings(clause))


def is_monthly(clause: str, said: Found[str]) -> bool:
    """Whether these are words for each month in a clause whose money is per ton, and so no interest."""
    monthly = any(one.value == "monthly" and one.span == said.span for one in _dealings(clause))
    return monthly and _is_per_weight(clause)


def _dealings(clause: str) -> Sequence[Found[str]]:
    return phrases("other_dealings").find(clause)


def _is_per_weight(clause: str) -> bool:
    return next(prices_within(clause), None) is not None


def _money(clause: str) -> _Money:
    named = charges_named(clause)
    if not named or any(ChargeKind(one.value) is not ChargeKind.OTHER for one in named):
        return _Money.OF_PRICES
    first, last = min(one.start for one in named), max(one.start for one in named)
    led = [one for one in _dealings(clause) if one.start < first and not is_monthly(clause, one)]
    if led and _is_per_weight(clause):
        led = [one for one in led if not _is_beside(clause[: one.start])]
        if led and not any(_is_subject(clause[: one.start], clause[one.end : last]) for one in led):
            return _Money.UNKNOWN
    return _Money.OF_OTHERS if led else _Money.OF_PRICES


def _is_beside(ahead: str) -> bool:
    """'In addition to any returns'."""
    return any(len(ahead[one.end :].split()) <= _FEW_WORDS for one in phrases("beside_dealings").find(ahead))


_FEW_WORDS = 2


def _is_subject(ahead: str, between: str) -> bool:
    """Whether the charge is said of the dealing: 'returns bear a surcharge', 'in case of late payment, a surcharge'."""
    return _BREAK.search(between) is None or bool(phrases("dealing_conditions").find(ahead))


_BREAK = re.compile(r"[,:](?!\d)")
