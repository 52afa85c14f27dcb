"""Heads of prices that leave a surcharge out: 'Price without surcharge', 'Preis exkl. Energiezuschlag'."""

from enum import Enum, auto

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases


class Without(Enum):
    """What a price leaves out: energy, which all board bears, or a surcharge that is not named."""

    NAMED = auto()
    UNNAMED = auto()


def head_without(head: str) -> Without | None:
    """The surcharge right behind 'without'. Sheeting, pallets and freight are for a buyer to choose."""
    left_out = (_surcharge_at_first(head[match.end :]) for match in phrases("leaves_out").find(head))
    return next((without for without in left_out if without is not None), None)


def is_of_all_board(head: str) -> bool:
    """'Energy surcharge', 'Surcharge (included)', but no 'Small-lot surcharge'."""
    return _surcharge_at_first(head) is not None


def _surcharge_at_first(text: str) -> Without | None:
    named = charges_named(text)
    if not named or rest_of(text[: named[0].start], (), "articles", "relieved.of_which"):
        return None
    if named[0].value == ChargeKind.ENERGY:
        return Without.NAMED
    bare = phrases("unnamed_surcharges").whole(text[named[0].start : named[0].end]) is not None
    more = rest_of(text[named[0].end :], (), *_BESIDE)
    return Without.UNNAMED if bare and not more else None


_BESIDE = ("relieved.within", "basis", "currency", "price_words", "articles", "copula", "beside_included")
