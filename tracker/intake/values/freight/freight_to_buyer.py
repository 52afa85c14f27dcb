"""Freight that is named with where it leads, as what it costs: 'Fracht frei Empfänger 61,50 €/t', 'Freight delivered
UK: 48 GBP/t'."""

import re
from functools import lru_cache

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.delivery import terms_in
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.lists import phrases

_PLACE = re.compile(r"\s*(?:[A-ZÄÖÜÅÉ][^\W\d]*\s*){0,3}")
_STOPS = " +:=–—-()"


@lru_cache(maxsize=4096)
def freight_to_buyer(label: str) -> str | None:
    """The freight's name, where a label says no more than that and where it leads; 'Fracht frei' and 'freight prepaid'
    say that the prices bear it."""
    name, behind = _led(label)
    rest = behind.strip(_STOPS)
    return name if name and (not rest or price_unit(rest) is not None) else None


def costs_to_the_buyer(clause: str) -> bool:
    """Whether an amount stands behind such a label, or what it is in: the prices themselves bear no freight then."""
    name, behind = _led(clause)
    figure = behind.strip(_STOPS)
    return bool(name) and (bool(find_currencies(figure)) or _FIGURE.fullmatch(figure) is not None)


_FIGURE = re.compile(r"\d+(?:[.,]\d{1,3})?")


def _led(text: str) -> tuple[str, str]:
    words = text.strip(" +:.")
    named, terms = charges_named(words), terms_in(words)
    if not named or ChargeKind(named[0].value) is not ChargeKind.FREIGHT or named[0].start or len(terms) != 1:
        return "", ""
    place = words[terms[0].start : terms[0].end]
    leads = terms[0].value == "delivered" and terms[0].start >= named[0].end
    between = words[named[0].end : terms[0].start].strip()
    if not leads or between or phrases("freight_included").whole(place) is not None:
        return "", ""
    end = _PLACE.match(words, terms[0].end)
    return words[: named[0].end], words[end.end() if end is not None else terms[0].end :]
