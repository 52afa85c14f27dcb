"""A rise of prices that a letter announces, beside the price before and the new one: whether the two differ by it."""

import re
from collections.abc import Iterator
from decimal import Decimal
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.figures.numbers import NUMBER, number_readings
from tracker.intake.values.figures.rates import in_signs
from tracker.intake.values.prices.basis import find_basis
from tracker.intake.words.lists import pattern, phrases
from tracker.trade.basis import Basis

_MONEY = r"(?:[$€£]|[A-Z]{3})"
_AMOUNT = re.compile(
    # The 1 of 'GC1' is none.
    rf"(?<![\d.,])(?:(?<![^\W\d_])|(?<=[A-Z]{{3}}))(?P<low>{NUMBER})\s*(?:%|{_MONEY})?"
    rf"(?:\s*(?:[-–—]|{pattern('range', 'and', 'any')})\s*{_MONEY}?\s*(?P<high>{NUMBER}))?"
)
_PER_CENT_OFF = Decimal("0.5")
_SHARE_OFF = Decimal("0.002")
"""By how much new prices may miss what was announced, being rounded: per cent points, and a share of the price."""


class _Rise(NamedTuple):
    low: Decimal
    high: Decimal
    percent: bool
    bases: frozenset[Basis]


def makes_the_difference(words: str, old: Decimal, new: Decimal, basis: Basis | None) -> bool:
    """Whether 'prices rise by 55 to 60 € a tonne' is what parts an old price of 802 from a new one of 857: then it is
    in the new one. `basis`: of both prices."""
    change = old - new if phrases("reductions").find(words) else new - old
    return old > 0 and any(_fits(rise, change, old, basis) for rise in _rises(words))


def _fits(rise: _Rise, change: Decimal, old: Decimal, basis: Basis | None) -> bool:
    if rise.percent:
        change, off = change * 100 / old, _PER_CENT_OFF
    else:
        off = old * _SHARE_OFF
    of_unit = rise.percent or not rise.bases or basis in rise.bases
    return of_unit and change > 0 and rise.low - off <= change <= rise.high + off


@lru_cache(maxsize=1024)
def _rises(words: str) -> tuple[_Rise, ...]:
    """What the amounts of a sentence may come to, each of some boards; the 1,000 of '55 € per 1,000 kg' is none."""
    said = in_signs(words)
    found = list(_AMOUNT.finditer(said))
    told = [*found[:1], *(match for match in found[1:] if _is_money(said, match))]
    ends = [*(match.start() for match in told[1:]), len(said)][: len(told)]
    return tuple(rise for match, end in zip(told, ends, strict=True) for rise in _rise(match, said[:end]))


def _is_money(said: str, found: re.Match[str]) -> bool:
    before, behind = said[: found.start()], said[found.end("low") :]
    return re.search(rf"{_MONEY}\s*$", before) is not None or re.match(rf"\s*(?:%|{_MONEY})", behind) is not None


def _rise(found: re.Match[str], said: str) -> Iterator[_Rise]:
    unit = find_basis(said[found.start() :])
    percent = re.match(r"\s*%", said[found.end() :]) is not None or "%" in found.group()
    bases = unit.bases if unit is not None else frozenset[Basis]()
    for low in number_readings(found["low"]):
        for high in number_readings(found["high"] or found["low"]):
            if low.value <= high.value:
                yield _Rise(low.value, high.value, percent, bases)
