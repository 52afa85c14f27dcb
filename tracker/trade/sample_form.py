"""What a sample is to be: sheets of a size, a roll end, made-up blanks, from words such as '20 sheets 28 x 40 in'."""

import re
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from tracker.trade.exact import as_decimal


class Form(StrEnum):
    SHEETS = "sheets"
    ROLL_END = "roll end"
    BLANKS = "made-up blanks"


@dataclass(frozen=True, slots=True)
class SampleForm:
    """As far as the words say: the form, how many, and the size in mm as written. None is not said."""

    form: Form | None = None
    pieces: int | None = None
    size_mm: tuple[Decimal, Decimal] | None = None


_FORMS = (
    (Form.ROLL_END, re.compile(r"\b(?:roll|reel)s?(?:[ -]?ends?)?\b|\bend rolls?\b")),
    (Form.BLANKS, re.compile(r"\bblanks?\b|\bmade[ -]up\b|\bmock[ -]?ups?\b")),
    (Form.SHEETS, re.compile(r"\bsheets?\b|\bhandsheets?\b|\ba[0-5]\b|\bletter\b")),
)
_SIZE = re.compile(r"(\d+(?:[.,]\d+)?)\s*[x×*]\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|inch(?:es)?|in\b|\")?")
_PIECES = re.compile(
    r"(?<![\d.,])(\d{1,5})\s*(?:(?:made[ -]up|roll|reel)\s*)*(?:sheets?|pcs|pieces|blanks?|ends?|rolls?|reels?|off|x?$)"
)
_MM = {"mm": Fraction(1), "cm": Fraction(10), "in": Fraction("25.4"), '"': Fraction("25.4")}
# ISO 216; letter is 8.5 × 11 in (ANSI/ASME Y14.1).
_NAMED = {
    "a0": ("841", "1189"),
    "a1": ("594", "841"),
    "a2": ("420", "594"),
    "a3": ("297", "420"),
    "a4": ("210", "297"),
    "a5": ("148", "210"),
    "letter": ("215.9", "279.4"),
}


def understood(words: str) -> SampleForm:
    """What the words tell; never an error, since words that tell nothing are kept as they are."""
    plain = " ".join(words.casefold().split())
    form = next((form for form, pattern in _FORMS if pattern.search(plain)), None)
    size = _size(plain)
    if form is None and size is not None:
        form = Form.SHEETS
    pieces = _PIECES.search(_SIZE.sub(" ", plain).strip())
    return SampleForm(form, int(pieces[1]) if pieces else None, size)


def _size(plain: str) -> tuple[Decimal, Decimal] | None:
    found = _SIZE.search(plain)
    if found is not None and found[3]:  # 70 x 100 without a unit is inches to one and centimetres to another
        factor = _MM[found[3] if found[3] in _MM else "in"]
        width, length = (as_decimal(Fraction(figure.replace(",", ".")) * factor) for figure in found.group(1, 2))
        return (width, length) if width > 0 and length > 0 else None
    named = next((size for name, size in _NAMED.items() if re.search(rf"\b{name}\b", plain)), None)
    return None if named is None else (Decimal(named[0]), Decimal(named[1]))
