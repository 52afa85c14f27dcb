"""Freight that a seller pays and then bills: 'freight prepaid by seller and added to the invoice', 'port payé et
facturé'."""

import re

from tracker.intake.values.freight.delivery_charged import sums_in
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found

_JOINT = re.compile(r"[\s,;]*(?:[^\W\d_]{1,4}\s+)?")
_END = re.compile(r"[,;.()\n]|\s[–—-]\s")
_SO = ("billed_so", "currency", "to_the_buyer", "the_buyer")


def billed_on(text: str, term: Found[str]) -> bool | None:
    """Whether the buyer is billed for the freight of a term behind it: 'Freight paid by seller, then invoiced to you'.
    In 'freight included, energy billed separately' energy is.

    None where that is not certain: 'freight prepaid and billed below 5 tons'. What is included is in the prices, and
    'and billed in USD' behind it tells of these; 'freight included, billed separately' contradicts itself.
    """
    words = text[term.start : term.end]
    if not phrases("carriage").find(words):
        return False
    behind = text[term.end :]
    billed = [one for one in phrases("billed_on").find(behind) if _JOINT.fullmatch(behind[: one.start])]
    if not billed:
        return False
    rest = behind[billed[0].end :]
    if _is_in_prices(words):
        apart = phrases("billed_apart").whole(behind[billed[0].start : billed[0].end]) is not None
        return None if apart and not _until_its_end(rest).strip(" .") else False
    read = not rest_of(_until_its_end(rest), (), *_SO) or sums_in(rest)
    return True if read else None


def _is_in_prices(words: str) -> bool:
    """'Freight included', 'includes freight', 'Fracht inklusive', and not 'freight prepaid'."""
    within = any(one.value == "in_price" for one in phrases("freight_included").find(words))
    return within or any(one.value == "included" for one in phrases("bears").find(words))


def _until_its_end(behind: str) -> str:
    stop = _END.search(behind)
    return behind if stop is None else behind[: stop.start()]
