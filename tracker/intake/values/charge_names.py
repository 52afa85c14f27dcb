"""The names of what is charged beside a price: freight, energy, sheeting and the rest."""

from enum import StrEnum

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found


class ChargeKind(StrEnum):
    FREIGHT = "freight"
    ENERGY = "energy"
    SHEETING = "sheeting"
    OTHER = "other"


def charges_named(text: str) -> list[Found[str]]:
    """Charges named, a particular one ('energy') before a general one ('surcharge')."""
    found = phrases("charges").find(text)
    named = [match for match in found if match.value in set(ChargeKind)]
    return sorted(named, key=lambda match: (match.value == "other", match.start))


def label_of(text: str, found: list[Found[str]]) -> str:
    """The charge's name with the words for 'surcharge' that stand directly beside it."""
    start, end = whole_name(text, found[0])
    for match in sorted(found[1:], key=lambda match: match.start):
        if not text[end : match.start].strip() and match.start >= end:
            end = match.end
    return " ".join(text[start:end].split())


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
        return label.casefold() == other.casefold()
    return kind is not ChargeKind.ENERGY or _burnt(label) == _burnt(other)


def _burnt(label: str) -> frozenset[str]:
    """Which energy a charge is for: none where it is for all that the mill uses."""
    return frozenset(match.value for match in phrases("energies").find(label))
