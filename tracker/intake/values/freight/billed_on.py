"""Freight that a seller pays and then bills: 'freight prepaid by seller and added to the invoice', 'port payé et
facturé'."""

import re

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.delivery_charged import sums_in
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.price_within import prices_within
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


def billed_beside(clause: str) -> bool:
    """'Delivered, freight billed on a separate line': a part by itself says no more than that the freight is billed
    apart. 'Freight for samples is billed separately' is of something else."""
    return any(map(_bills_freight, COMMA.split(clause)))


def _bills_freight(part: str) -> bool:
    named = [one for one in charges_named(part) if one.value == ChargeKind.FREIGHT]
    billed = phrases("billed_apart").find(part)
    if not named or not billed or any(denied(part, one) for one in billed):
        return False
    spans = [one.span for one in (*named, *billed)] + [(start, end) for _, start, end, _ in prices_within(part)]
    return not rest_of(part, spans, *_SO)


def _is_in_prices(words: str) -> bool:
    """'Freight included', 'includes freight', 'Fracht inklusive', and not 'freight prepaid'."""
    within = any(one.value == "in_price" for one in phrases("freight_included").find(words))
    return within or any(one.value == "included" for one in phrases("bears").find(words))


def _until_its_end(behind: str) -> str:
    stop = _END.search(behind)
    return behind if stop is None else behind[: stop.start()]
