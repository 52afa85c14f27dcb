"""Order sizes written out in words or with fractions: 'over three and up to ten tonnes', 'half a tonne', '1½ t'."""

import re
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.figures.numbers_in_words import in_figures_to_the_end, outside_large_numbers
from tracker.intake.values.orders.masses import MASS_UNITS
from tracker.intake.words.lists import pattern, phrases

_SIGNS = ("below", "up_to", "to")


@lru_cache(maxsize=8192)
def weights_in_figures(text: str) -> str:
    """'up to three tonnes' -> 'up to 3 tonnes', 'half a tonne' -> '500 kg', '½ t' -> '0.5 t'; all other words stay."""
    text = fractions_in_figures(text)
    for half in reversed(phrases("weights_in_words").find(text)):
        text = f"{text[: half.start]}{half.value}{text[half.end :]}"
    return outside_large_numbers(in_figures_to_the_end(text), _thousands)


def fractions_in_figures(text: str) -> str:
    """'½ t' -> '0.5 t', '1 1/2 tonnes' -> '1.5 tonnes'; fractions of anything but a weight stay as they are."""
    return _FRACTION.sub(_decimal, text)


def _decimal(match: re.Match[str]) -> str:
    part = _SIGNED[match["sign"]] if match["sign"] else Decimal(int(match["over"])) / Decimal(int(match["under"]))
    return f"{int(match['whole'] or 0) + part:f}"


_SIGNED = {"¼": Decimal("0.25"), "½": Decimal("0.5"), "¾": Decimal("0.75")}
_UNIT = pattern("basis", *MASS_UNITS)
_FRACTION = re.compile(
    rf"(?<![\d.,/])(?:(?P<whole>\d{{1,3}})(?: |-|(?=[¼½¾])))?(?:(?P<sign>[¼½¾])|(?P<over>[13])/(?P<under>[24]))"
    rf"(?=\s*(?:(?:[-–—]|{pattern('range', 'any', 'and', 'or')})\s*\d[\d.,/ ]*[¼½¾]?\s*)?{_UNIT}\b)",
    re.IGNORECASE,
)
"""Fractions of a unit of weight, '½ t', '1 1/2 tonnes', also of the one that a range ends in; '28-1/2' is a side of a
sheet."""


def _thousands(text: str) -> str:
    """'5 to 10 thousand' counts both in thousands; '500 to 10 thousand' as likely does not, and stays."""
    text = _THOUSANDS_TO.sub(_both, text)
    return _THOUSANDS.sub(lambda match: f"{match[1]}000", text)


def _both(match: re.Match[str]) -> str:
    first, last = (Decimal(match[end].replace(",", ".")) for end in ("first", "last"))
    if first >= last:
        return match.group()
    return f"{first * 1000:.0f}{match['between']}{last * 1000:.0f}"


_FIGURE = r"\d{1,3}(?:[.,]\d{1,2})?"
_THOUSANDS_TO = re.compile(
    rf"(?<![\d.,])(?P<first>{_FIGURE})"
    rf"(?P<between>\s*[-–—]\s*|(?:\s+(?:{pattern('range', 'any', 'and', 'or')}|{pattern('bracket', *_SIGNS)}))+\s+)"
    rf"(?P<last>{_FIGURE})\s?{pattern('thousand_words', 'any')}\b",
    re.IGNORECASE,
)
_THOUSANDS = re.compile(rf"(?<![\d.,])(\d{{1,3}})\s?{pattern('thousand_words', 'any')}\b", re.IGNORECASE)
