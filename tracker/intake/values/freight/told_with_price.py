"""Charges that a sentence tells together with the price of one board: 'SBS C1S 18 pt at $1,190/ST. Freight $45/ST
extra.'"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import takewhile

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.statements import Statement
from tracker.intake.values.prices.priced_prose import priced_prose

_BREAK = re.compile(r",\s|[.;]\s")


def without_own_charges(text: str, stated: Iterable[Statement]) -> Iterator[Statement]:
    """What a text states, for other boards than the one whose price it tells: what these are charged is open."""
    for one in stated:
        if isinstance(one, ChargeWords) and one.amounts and _tells_a_price(text):
            yield replace(one, amounts=())
        else:
            yield one


def _tells_a_price(text: str) -> bool:
    """Ahead of its first charge: 'energy surcharge 35 EUR/t; GD2 400 g/m² at 790 EUR/t' begins with one of all."""
    ahead = takewhile(lambda part: not charges_named(part), _BREAK.split(text))
    return any(priced_prose(part) is not None for part in ahead)
