"""What a code beside a price stands for: the 'US dollars per cwt' of 'Code A: figure is US dollars per cwt'."""

import re
from collections.abc import Iterator, Mapping

from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.basis import basis_text
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_LABELLED = re.compile(
    r"\s*(?P<label>[^\W\d_][^=:;]{0,19}?)\s+(?P<code>[^\s=:]{1,4})\s*(?:[=:]|\s[-–—]\s)\s*(?P<said>[^=]+?)\s*"
)
_PARTS = re.compile(r"[;\n|·]|,\s(?=[^,=:]{3,24}\s*[=:])")

BEHIND_THE_CODES = re.compile(r"(?<=[^\W\d]{2}|.[)\d²]|/[^\W\d])\.\s+(?=[^\W\d_a-z])(?!.*[=:])")
"""Where the last entry ends and a sentence follows that explains no code; 'sq. ft' goes on."""


def units_of_codes(text: str) -> Iterator[tuple[str, str, str]]:
    """The head of the codes' column and the code, folded, and what the code means: 'Code A: price is EUR per tonne,
    Code B: price is EUR per 1,000 m²'."""
    for part in _PARTS.split(text):
        entry = _LABELLED.fullmatch(part)
        unit = None if entry is None else unit_led_to(_without_delivery(entry["said"].rstrip(".")))
        if entry is not None and unit is not None:
            yield fold(entry["label"]).strip(), fold(entry["code"]).strip(), unit


def _without_delivery(said: str) -> str:
    """'US dollars per short ton, FOB Dayton' without the terms, which hold for the rows with that code likewise."""
    unit, *terms = COMMA.split(said)
    return unit if terms and all(find_delivery(term) is not None for term in terms) else said


def unit_led_to(said: str) -> str | None:
    """The unit that a text ends with, behind words that lead to one and nothing else; a roll is one as well. None for
    what may say more."""
    words = said.split()
    for start, word in enumerate(words):
        rest = " ".join(words[start:])
        if price_unit(rest) is not None or basis_text(rest) is not None:
            return rest
        if phrases("leads_to_unit").whole(word) is None:
            return None
    return None


def without_terms_of_the_last(key: Mapping[str, str]) -> dict[str, str]:
    """'a = per short ton, b = per cwt, delivered': what stands behind the unit of the last alone may be said of all the
    codes, and is no part of it."""
    *others, last = key or ("",)
    apart = {code: _without_delivery(said) for code, said in key.items()}
    if not others or any(apart[code] != key[code] for code in others):
        return dict(key)
    return {**key, last: apart[last]}
