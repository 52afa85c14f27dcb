"""The names of what is charged beside a price: freight, energy, sheeting and the rest."""

import re
from enum import StrEnum

from tracker.intake.words.lists import joined, pattern, phrases
from tracker.intake.words.phrases import Found, blanked


class ChargeKind(StrEnum):
    FREIGHT = "freight"
    ENERGY = "energy"
    SHEETING = "sheeting"
    OTHER = "other"


_CHARGE_KINDS = frozenset(ChargeKind)


def charges_named(text: str) -> list[Found[str]]:
    """Charges named, a particular one ('energy') before a general one ('surcharge')."""
    found = phrases("charges").find(text)
    named = [match for match in found if match.value in _CHARGE_KINDS]
    return sorted(named, key=lambda match: (match.value == "other", match.start))


def label_of(text: str, found: list[Found[str]]) -> str:
    """The charge's name with the words for 'surcharge' that stand directly beside it."""
    start, end = whole_name(text, found[0])
    both = _BEFORE_AND.search(text[:start])
    if both is not None and phrases("energies").whole(both["word"]) is not None:
        # 'Energy and fuel surcharge' is for both.
        start = both.start()
    for match in sorted(found[1:], key=lambda match: match.start):
        between = text[end : match.start].strip()
        joined = found[0].value == match.value == ChargeKind.ENERGY and _AND.fullmatch(between)
        if match.start >= end and (not between or joined):
            end = match.end
    return " ".join(text[start:end].split())


_AND = re.compile(rf"[&/+]|{pattern('range', 'and')}", re.IGNORECASE)
_BEFORE_AND = re.compile(rf"(?P<word>[^\W\d_]+)\s*(?:[&/+]|{pattern('range', 'and')})\s*$", re.IGNORECASE)


def is_of_the_past(label: str) -> bool:
    """'Energy surcharge last quarter', 'Energy surcharge (old)': no charge of today. 'Unchanged from last quarter'
    is one."""
    found = joined("past_periods", "price_ages.old").find(label)
    spans = [*(match.span for match in found), *(whole_name(label, match) for match in charges_named(label))]
    spans += [match.span for match in phrases("articles").find(label)]
    return bool(found) and not any(map(str.isalpha, blanked(label, spans)))


def whole_name(text: str, match: Found[str]) -> tuple[int, int]:
    """Where a charge's name begins and ends, with what a hyphen joins to it: the 'LSVA-Zuschlag' around 'Zuschlag'."""
    start = match.start
    while start and (text[start - 1] == "-" or (text[start - 1].isalnum() and "-" in text[start : match.start])):
        start -= 1
    return start, match.end


def same_charge(kind: ChargeKind, label: str, other: str) -> bool:
    """Whether two names of a kind are of one charge, so that what is said of the one replaces the other.

    'Fuel', 'gas' and 'energy surcharge' are three; 'toll' and 'palletising' two.
    """
    if kind is ChargeKind.OTHER:
        return _bare(label) == _bare(other)
    return kind is not ChargeKind.ENERGY or bool(_burnt(label) & _burnt(other))


def _bare(label: str) -> str:
    """'CO2 levy' and 'CO2 surcharge' are one charge; 'surcharge' and no more is called so."""
    words = [word for word in label.casefold().split() if phrases("surcharge_words").whole(word) is None]
    return " ".join(words) or label.casefold()


def _burnt(label: str) -> frozenset[str]:
    """Which energies a charge is for: 'energy and fuel surcharge' is for both, and a name that tells none for all."""
    return frozenset(match.value for match in phrases("energies").find(label)) or frozenset({"all"})
