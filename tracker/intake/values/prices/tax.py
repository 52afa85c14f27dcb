"""Whether prices have value added tax in them: 'incl. 19 % VAT', 'TTC', 'IVA incluido'."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases

_PARTS = re.compile(r",(?!\d)|[;()\[\]\n]")
_SAYS = ("included", "excluded")


@lru_cache(maxsize=8192)
def tax_included(text: str) -> bool:
    """'Plus VAT' and 'HT' say no; so does 'MwSt. 19 %', which says neither."""
    return any(map(_in_part, _PARTS.split(text)))


def names_tax(text: str) -> bool:
    """Whether a text speaks of value added tax, be it in the prices or not."""
    return any(match.value in ("named", "with_tax") for match in phrases("tax").find(text))


def _in_part(part: str) -> bool:
    """The word nearest before the tax decides, else the first behind it: 'inkl. Fracht zzgl. MwSt' is without tax."""
    found = phrases("tax").find(part)
    for place, match in enumerate(found):
        if match.value == "with_tax":
            return True
        if match.value != "named":
            continue
        before = [one.value for one in found[:place] if one.value in _SAYS]
        behind = [one.value for one in found[place + 1 :] if one.value in _SAYS]
        if (before[-1:] or behind[:1]) == ["included"]:
            return True
    return False
