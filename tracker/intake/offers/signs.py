"""Which sign is the decimal sign, as the figures of a column or a file show it, with or without money around them."""

import re
from collections.abc import Iterable

from tracker.intake.values.money import price_text
from tracker.intake.values.numbers import SignEvidence
from tracker.intake.words.lists import phrases


def evidence_of(texts: Iterable[str]) -> SignEvidence:
    """How many figures can only be read with a point, and how many only with a comma."""
    point = comma = 0
    for text in texts:
        said = price_text(text)
        if said is None or said.rest:
            continue
        signs = {reading.decimal_sign for reading in said.amounts}
        point += signs == {"."}
        comma += signs == {","}
    return SignEvidence(point, comma)


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
