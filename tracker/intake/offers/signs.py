"""Which sign is the decimal sign, as the figures of a column or a file show it, with or without money around them."""

import re
from collections.abc import Iterable

from tracker.intake.values.money import price_text
from tracker.intake.values.numbers import NumberReading, SignEvidence, number_readings
from tracker.intake.words.lists import phrases


def evidence_of(texts: Iterable[str]) -> SignEvidence:
    """How many figures can only be read with a point, and how many only with a comma.

    A measure with its unit ('0,40 mm', '8,4 t') tells by its comma alone: technical data have a point everywhere.
    """
    point = comma = 0
    for text in texts:
        said = price_text(text)
        amounts = said.amounts if said is not None and not said.rest else _measured(text)
        signs = {reading.decimal_sign for reading in amounts}
        point += signs == {"."}
        comma += signs == {","}
    return SignEvidence(point, comma)


_MEASURE = re.compile(r"\s*(\d+,\d+)\s*[^\W\d]{1,3}²?\s*")


def _measured(text: str) -> tuple[NumberReading, ...]:
    found = _MEASURE.fullmatch(text)
    return number_readings(found[1]) if found is not None else ()


_THOUSANDS = re.compile(r"(?<!\d)[123]([.,])000(?!\d)")


def sign_of_units(texts: Iterable[str]) -> str | None:
    """The decimal sign by the names of units: 'ton of 2,000 lb' and '1,000 sheets' part thousands by a comma.

    None where no unit is written so, or units are written both ways.
    """
    parting = {found[1] for text in texts if any(map(str.isdigit, text)) for found in _in_units(text)}
    return {",": ".", ".": ","}[parting.pop()] if len(parting) == 1 else None


def _in_units(text: str) -> Iterable[re.Match[str]]:
    """The thousands in names of units: '2,000 lb' and '3,000 ft²', and not an order of '2,000 rolls'."""
    spans = [
        (unit.start, unit.end)
        for section in ("basis", "weight_units", "ton_definitions")
        for unit in phrases(section).find(text)
    ]
    return [
        found
        for found in _THOUSANDS.finditer(text)
        if any(start <= found.start() and found.end() <= end for start, end in spans)
    ]
