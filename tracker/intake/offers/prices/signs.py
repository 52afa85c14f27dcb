"""Which sign is the decimal sign, as the figures of a column or a file show it, with or without money around them."""

import re
from collections.abc import Iterable
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.values.figures.numbers import NumberReading, SignEvidence, number_readings, settled
from tracker.intake.values.notes.denials import denied
from tracker.intake.values.prices.money import price_text
from tracker.intake.words.lists import phrases


def evidence_of(texts: Iterable[str]) -> SignEvidence:
    """How many figures can only be read with a point, and how many only with a comma.

    A measure with its unit ('0,40 mm', '8,4 t') tells by its comma alone: technical data have a point everywhere. The
    point of '874.-' tells where nothing else does: francs are written so beside '748,50' too.
    """
    point = comma = dashed = 0
    for text in texts:
        said = price_text(text)
        amounts = said.amounts if said is not None and not said.rest else _measured(text)
        signs = {reading.decimal_sign for reading in amounts}
        without_cents = _WITHOUT_CENTS.search(text) is not None
        point += signs == {"."} and not without_cents
        dashed += signs == {"."} and without_cents
        comma += signs == {","}
    return SignEvidence(point if comma else point + dashed, comma)


_WITHOUT_CENTS = re.compile(r"\.\s?[-–—]")


_OF_A_SIZE = 10
"""How many times one price of a column may be another; the two readings of '1,180' lie a thousandfold apart."""


def sign_by_size(cells: Iterable[Cell]) -> str | None:
    """The decimal sign that makes a column's open figures of a size with its certain ones: '1,180*' beside 1195.

    None where no figure is certain or none is open, and where the cells name several units.
    """
    certain: list[Decimal] = []
    left_open: list[tuple[NumberReading, ...]] = []
    units: set[object] = set()
    for cell in cells:
        said = price_text(cell.text) if isinstance(cell.value, str) else None
        if isinstance(cell.value, Decimal):
            certain.append(cell.value)
            units.add(cell.number_format if "/" in cell.number_format else None)
        elif said is not None and said.amounts and not said.rest and not said.is_range:
            units.add(said.basis and said.basis.bases)
            values = {reading.value for reading in said.amounts}
            certain.extend(values if len(values) == 1 else ())
            left_open.extend([said.amounts] if len(values) > 1 else [])
    certain = [value for value in certain if value > 0]
    if not certain or not left_open or len(units) > 1:
        return None
    signs = [sign for sign in ".," if all(_of_a_size(amounts, sign, certain) for amounts in left_open)]
    return signs[0] if len(signs) == 1 else None


def marks_disagree(texts: Iterable[str]) -> bool:
    """'1.298' above '1,286': whichever sign is the decimal sign, one of them is a thousand times the other. '1.298 €/t'
    above '1,286 €/kg' is as it should be."""
    left_open: dict[object, list[tuple[NumberReading, ...]]] = {}
    for text in texts:
        said = price_text(text)
        if said is not None and not said.rest and len(said.amounts) > 1:
            left_open.setdefault(said.basis and said.basis.bases, []).append(said.amounts)
    return any(not any(_all_near(amounts, sign) for sign in ".,") for amounts in left_open.values())


def _all_near(left_open: Iterable[tuple[NumberReading, ...]], sign: str) -> bool:
    figures = [reading.value for amounts in left_open for reading in settled(amounts, sign)]
    return bool(figures) and max(figures) < _FAR_APART * min(figures)


_FAR_APART = 100
"""Times the least price of a column, beyond which none of the others is. Common practice, no source."""


def _of_a_size(amounts: Iterable[NumberReading], sign: str, certain: list[Decimal]) -> bool:
    left = settled(amounts, sign)
    return len(left) == 1 and all(left[0].value <= _OF_A_SIZE * one <= _OF_A_SIZE**2 * left[0].value for one in certain)


_MEASURE = re.compile(r"\s*(\d+,\d+)\s*[^\W\d]{1,3}²?\s*")


def _measured(text: str) -> tuple[NumberReading, ...]:
    found = _MEASURE.fullmatch(text)
    return number_readings(found[1]) if found is not None else ()


def sign_said(texts: Iterable[str]) -> str | None:
    """The decimal sign that a note names: 'Precios con punto de millar', 'decimal comma'; None for none or both."""
    said = {match.value for text in texts for match in phrases("decimal_signs").find(text) if not denied(text, match)}
    return {"comma": ",", "point": "."}[said.pop()] if len(said) == 1 else None


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
