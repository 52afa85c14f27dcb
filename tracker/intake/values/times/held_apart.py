"""What has a last day of its own beside the prices: 'FSC certificate valid until 30 June 2028', 'Frachtsätze gültig bis
31.12.2026'."""

import re

from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.orders.other_goods import behind_other_goods, of_other_goods
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.times.dates import DateReading
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

_HELD = ("valid", "until", "since")


def of_another(clause: str, dates: tuple[DateReading, ...]) -> bool:
    """Whether a clause says until when something else than its prices holds.

    The words right before its words for validity, or between these and the day, name what does: 'Validité du certificat
    FSC : 30/06/2028'.
    """
    spoken = [match.start for section in _HELD for match in phrases(section).find(clause)]
    if not spoken:
        return False
    begins = max((comma.end() for comma in COMMA.finditer(clause[: min(spoken)])), default=0)
    if of_other_goods(clause[begins:]):
        return True
    ends = next((date.start for date in dates if date.start >= min(spoken)), len(clause))
    return _names_another(clause[begins:ends])


def may_be_of_another(clause: str) -> bool:
    """'Fuel surcharge $12/ST, valid until 31 December 2026' may be said of the surcharge or of the prices, and so may
    'FSC certificate no. 1234, valid until 30 June 2028'."""
    held = [match.start for match in phrases("valid").find(clause)]
    if any(phrases("valid").find(part) for part in COMMA.split(behind_other_goods(clause))):
        return True
    ahead = clause[: min(held)] if held else ""
    if not ahead.rstrip().endswith(",") or not _names_another(ahead):
        return False
    return bool(phrases("held_apart").find(ahead)) or any(charge.amounts for charge in find_charges(ahead))


def _names_another(words: str) -> bool:
    """It names one of those things before any money, no prices and no papers that hold them."""
    others = [match for section in ("held_apart", "charges") for match in phrases(section).find(words)]
    if not others or find_delivery(words) is not None:
        return False
    own = [match for section in ("price_words", "list_names") for match in phrases(section).find(words)]
    first = min(match.start for match in others)
    own = [match for match in own if not _SHARE.search(words[: match.start])]
    return all(_overlaps(match, others) for match in own) and not find_currencies(words[:first])


_SHARE = re.compile(r"%[^,;%]{0,20}$")
"""The price of 'a surcharge of 1.5 % of the board price' is what a share is of."""


def _overlaps(match: Found[str], others: list[Found[str]]) -> bool:
    """The 'rates' of 'freight rates' are no prices."""
    return any(match.start < other.end and other.start < match.end for other in others)
