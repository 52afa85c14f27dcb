"""The amounts of an entry below a line that adds, and the entry as one would write it in one line with that."""

import re
from collections.abc import Iterator

from tracker.intake.values.figures.rates import SHARE
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.words.lists import phrases


def entry_as_added(entry: str, line: str) -> str:
    """'Mautpauschale 4,80 €/t' with the line that it stands below, as one would write them in a line; '' where no
    amount of money and no share of the price stands in it."""
    amounts = amounts_in(entry)
    if not amounts:
        return ""
    start = min(min(amounts)[0], *(found.start() for found in _FIGURE.finditer(entry)))
    start -= len(_ends_in_bound(entry[:start]))
    name, rest = entry[:start].strip(_AROUND), entry[start:]
    if not name:
        # '4,80 €/t Maut'.
        end = max(end for begins, end in amounts if begins == min(amounts)[0])
        name, rest = entry[end:].strip(_AROUND), entry[start:end]
    return f"{name}: {rest.strip()}, {line.strip(' :')}:" if name else ""


def _ends_in_bound(name: str) -> str:
    """The 'approx. ' and 'max. ' that stand between a name and its amount."""
    bounds = [match for section in ("about", "amount_bounds") for match in phrases(section).find(name)]
    ends = (name[match.start :] for match in bounds if not name[match.end :].strip(" .:"))
    return max(ends, key=len, default="")


def amounts_in(entry: str) -> list[tuple[int, int]]:
    """The amounts of money and shares alone: neither the 'about' of 'about $25/ST' nor the aside of '40 €/t (nur
    Bogen)', which a price may hold."""
    priced = list(_priced(entry))
    shortest = [one for one in priced if not any(one != other and _holds(one, other) for other in priced)]
    shortest = shortest or list(_money_alone(entry))
    return [*shortest, *(found.span() for found in SHARE.finditer(entry))]


def _money_alone(entry: str) -> Iterator[tuple[int, int]]:
    """The '9 EUR' of '9 EUR/unidad', whose unit nobody knows."""
    for currency in find_currencies(entry):
        start = entry.find(currency.words)
        end = start + len(currency.words)
        ahead, behind = _ENDS_IN_FIGURE.search(entry[:start]), _BEGINS_WITH_FIGURE.match(entry[end:])
        if ahead is not None or behind is not None:
            yield (ahead.start() if ahead is not None else start), end + (behind.end() if behind is not None else 0)


_ENDS_IN_FIGURE = re.compile(r"(?<![\w.,])\d[\d.,]*\s?$")
_BEGINS_WITH_FIGURE = re.compile(r"\s?\d[\d.,]*\d|\s?\d")


def _holds(span: tuple[int, int], other: tuple[int, int]) -> bool:
    return span[0] <= other[0] and other[1] <= span[1]


_AROUND = " :=–—-+•*()"
_FIGURE = re.compile(r"(?<![^\W_])\d")
"""One that no letter stands before: not that of 'CO2'."""


def _priced(entry: str) -> Iterator[tuple[int, int]]:
    return ((start, end) for _, start, end, _ in prices_within(entry, unit=False))
