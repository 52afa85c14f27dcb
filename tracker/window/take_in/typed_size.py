"""An order size as a buyer types it, '5 tons', '10,000 lb', '5-10 t', as the answer that is kept: kg from and below."""

from __future__ import annotations

import re
from collections.abc import Mapping
from fractions import Fraction

from tracker.trade.quantities import MassUnit, kilograms
from tracker.window.look.figures import Units

EXAMPLES: Mapping[Units, str] = {
    Units.US: "such as 5 tons, 10,000 lb, 5-10 tons, below 20 tons, 2,000 kg",
    Units.METRIC: "such as 5 t, 5-10 t, below 20 t, 2,000 kg, 10,000 lb",
}
_UNITS: Mapping[str, MassUnit] = {
    word: unit
    for unit, words in {
        MassUnit.KG: "kg kgs kilo kilos kilogram kilograms",
        MassUnit.TONNE: "t mt tonne tonnes|metric ton|metric tons",
        MassUnit.SHORT_TON: "st|short ton|short tons",
        MassUnit.LB: "lb lbs pound pounds #",
        MassUnit.CWT: "cwt",
    }.items()
    for part in words.split("|")
    for word in ([part] if part.startswith(("short ", "metric ")) else part.split())
}
_TONS = ("ton", "tons")
_NUMBER = r"\d[\d.,]*"
_MASS = rf"({_NUMBER})\s*([a-z#][a-z ]*?)?"
_RANGE = re.compile(rf"(?:from\s+|between\s+)?{_MASS}\s*(?:-|to|and below|and under|:)\s*(?:below\s+)?{_MASS}")
_BELOW = re.compile(rf"(?:(?:below|under|less than|up to|max\.?|<|<=|≤|:)\s*){_MASS}")
_OR_LESS = re.compile(rf"{_MASS}\s*(?:or|and) (?:less|below|under)")
_FIRST = r"(?:from|over|above|at least|more than|min\.?|>|>=|≥)\s*"
_FROM = re.compile(rf"(?:{_FIRST})?{_MASS}\s*(?:\+|:|-|(?:or|and) (?:more|over|up|above))?")


def size_typed(text: str, units: Units) -> str | None:
    """'5000:18000', '18000:' for what begins there, ':5000' for what ends there; None where it is none for certain.

    A 'ton' is the ton of the units that the user chose to see, which the card says back as it is typed. Of two figures
    with a colon alone between them both are kilograms.
    """
    typed = " ".join(text.casefold().replace("–", "-").replace("—", "-").split())
    if both := _RANGE.fullmatch(typed):
        low_text, low_unit, high_text, high_unit = both.groups()
        unit = high_unit or ("kg" if ":" in typed else None)
        return _span(_kg(low_text, low_unit or unit, units), _kg(high_text, unit, units))
    if below := _BELOW.fullmatch(typed) or _OR_LESS.fullmatch(typed):
        return _span(Fraction(0), _kg(below[1], below[2] or _bare(typed), units))
    if above := _FROM.fullmatch(typed):
        low = _kg(above[1], above[2] or _bare(typed), units)
        return None if low is None else f"{_decimal(low)}:"
    return None


def _bare(typed: str) -> str | None:
    """'18000:' and ':18000' are kilograms, as they always were; '18000' may be anything."""
    return "kg" if ":" in typed else None


def _span(low: Fraction | None, high: Fraction | None) -> str | None:
    if low is None or high is None or low >= high:
        return None
    return f"{_decimal(low) if low else ''}:{_decimal(high)}"


def _kg(figure: str, unit: str | None, units: Units) -> Fraction | None:
    said = (unit or "").strip()
    if said in _TONS:
        mass = MassUnit.SHORT_TON if units is Units.US else MassUnit.TONNE
    elif said in _UNITS:
        mass = _UNITS[said]
    else:
        return None
    value = _figure(figure)
    return None if value is None else kilograms(value, mass)


def _figure(text: str) -> Fraction | None:
    """'10,000' and '5.5'; '10.000' may be ten or ten thousand, and is neither."""
    if re.fullmatch(r"\d{1,3}(?:,\d{3})+(?:\.\d{1,2})?|\d+(?:\.\d{1,2})?", text):
        return Fraction(text.replace(",", ""))
    return Fraction(text.replace(",", ".")) if re.fullmatch(r"\d+,\d{1,2}", text) else None


def _decimal(kg: Fraction) -> str:
    """Every unit of mass is a whole number of hundredths of a milligram, so that no figure is cut."""
    text = f"{kg.numerator * 10**8 // kg.denominator:09d}"
    return f"{text[:-8]}.{text[-8:]}".rstrip("0").rstrip(".")
