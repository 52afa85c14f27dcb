"""Values of a currency that are none, and are asked about: figures that count thousands, and the money of lines that
nobody sees which they are."""

from tracker.intake.values.notes.signs_in_words import marks_unseen
from tracker.intake.values.prices.currency import CurrencyReading, counted_in_thousands

_THOUSANDS, _MARKED = "thousands of ", "marked lines in "
_WHY = {
    _THOUSANDS: "counts thousands: these figures are not the prices themselves. Ask the vendor for those.",
    _MARKED: "tells the currency of lines marked in a way that is not seen. Ask the vendor which they are.",
}


def counted_or_marked(reading: CurrencyReading, words: str) -> str:
    """What stands before the code of such a value; '' for a currency."""
    if counted_in_thousands(words, reading.words):
        return _THOUSANDS
    return _MARKED if marks_unseen(words) else ""


def why_no_currency(values: frozenset[str]) -> tuple[str, str] | None:
    """The kind of the question about such a value, and what it says behind the words; None for currencies alone."""
    kind = next((kind for kind in _WHY if any(value.startswith(kind) for value in values)), None)
    return None if kind is None else (kind.split()[0], _WHY[kind])
