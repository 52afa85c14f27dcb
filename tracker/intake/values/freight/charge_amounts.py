"""What a charge comes to: the one amount that is left of a part of a note without the words around it."""

import re
from itertools import chain

from tracker.intake.values.freight.charge_names import whole_name
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.prices.money import PriceText, price_text
from tracker.intake.values.prices.price_within import prices_within
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import Found, blanked


def left_beside(part: str, named: list[Found[str]]) -> str:
    """The part without the names of charges and the words that change nothing of what they come to."""
    found = (phrases(section).find(part) for section in _FILLERS)
    fillers = [one.span for one in chain.from_iterable(found) if not _leads_to_a_unit(part, one)]
    left = blanked(part, (*(whole_name(part, match) for match in named), *fillers, *_days_so_far(part)))
    return _before_the_prices(part, left)


def _before_the_prices(part: str, left: str) -> str:
    """'35 €/t' of '35 €/t is not included in the rates shown', where what is left behind it names the prices alone."""
    if not any(phrases(section).find(part) for section in ("surcharge_applies", "on_top_of_prices")):
        return left
    end = max((end for _, _, end, _ in prices_within(left)), default=0)
    return left[:end] if end and not rest_of(left[end:], (), "price_words", "prices_shown", "list_names") else left


_FILLERS = ("charge_filler", "charge_reasons", "all_of_them", "every_board", "to_the_buyer", "everybody_pays")


def _days_so_far(part: str) -> list[tuple[int, int]]:
    """'Since 1 October 2026': since when it has been charged."""
    since = {match.end: match.start for match in phrases("already_since").find(part)}
    ahead = ((len(part[: day.start].rstrip()), day.end) for day in find_dates(part))
    return [(since[begins], end) for begins, end in ahead if begins in since]


def amount_in(part: str, rest: str) -> PriceText | None:
    """What is left of a part, where that is one amount and nothing else."""
    price = price_text(rest.strip(" :=–—-()."))
    if price is None or not price.amounts or price.is_range or price.rest:
        return None
    # '25/ST' and '25 per ST' are in the prices' money; '25 kg' is none, and '500/pallet' counts sheets.
    per_unit = price.basis is not None and price.basis.foreign is None and _PER_UNIT.search(part) is not None
    return price if price.currency is not None or per_unit else None


def _leads_to_a_unit(part: str, match: Found[str]) -> bool:
    """The 'por' of 'CHF 18 por 1000 kg', without which two figures would stand side by side."""
    before, word, behind = part[: match.start], part[match.start : match.end], part[match.end :].lstrip()
    return any(map(str.isdigit, before)) and behind[:1].isdigit() and phrases("per").whole(word) is not None


_PER_UNIT = re.compile(rf"\d\s*(?:/|{pattern('per', 'strong')}\s)\s*[^\W\d]", re.IGNORECASE)
