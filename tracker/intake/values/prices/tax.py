"""Whether prices have value added tax in them: 'incl. 19 % VAT', 'TTC', 'IVA incluido'."""

import re
from functools import lru_cache

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked, outside

_PARTS = re.compile(r",(?!\d)|[;()\[\]\n]")
_SAYS = ("included", "excluded")


@lru_cache(maxsize=8192)
def tax_included(text: str) -> bool:
    """'Plus VAT' and 'HT' say no; so does 'MwSt. 19 %', which says neither."""
    return any(map(_in_part, _PARTS.split(text)))


def names_tax(text: str) -> bool:
    """Whether a text speaks of value added tax, be it in the prices or not."""
    return any(match.value in ("named", "with_tax") for match in _told(text))


def _told(text: str) -> list[Found[str]]:
    """The 'taxe' of 'taxe carbone' is no value added tax."""
    return outside(phrases("tax").find(text), phrases("other_taxes").find(text))


def without_tax(text: str) -> str:
    """A text with blanks for 'excluding VAT', 'zzgl. MwSt.' and 'TTC', and for nothing else."""
    found = _told(text)
    spans = [match.span for match in found if match.value == "with_tax"]
    for tax in (match for match in found if match.value == "named"):
        around = [one for one in found if one.value in _SAYS and (one.after == tax.first or one.first == tax.after)]
        spans += [match.span for match in (tax, *around)]
    return blanked(text, spans)


def _in_part(part: str) -> bool:
    """The word nearest before the tax decides, else the first behind it: 'inkl. Fracht zzgl. MwSt' is without tax."""
    found = _told(part)
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
