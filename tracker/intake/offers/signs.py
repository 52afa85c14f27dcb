"""Which sign is the decimal sign, as the figures of a column or a file show it, with or without money around them."""

from collections.abc import Iterable

from tracker.intake.values.money import price_text
from tracker.intake.values.numbers import SignEvidence


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
