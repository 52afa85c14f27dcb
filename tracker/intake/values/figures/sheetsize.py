"""Sheet sizes: '28 x 40 in', '700 x 1000', '70x100 cm'. Without a unit, by what a sheet of board can measure."""

import re
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from functools import lru_cache

from tracker.intake.values.boards.board_words import names_board_and_price
from tracker.intake.values.figures.letters_of_places import letters_of_a_place
from tracker.intake.values.figures.numbers import NUMBER, number_readings
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of, without


class LengthUnit(StrEnum):
    INCH = "in"
    CENTIMETRE = "cm"
    MILLIMETRE = "mm"
    METRE = "m"


MM_PER = {
    LengthUnit.INCH: Decimal("25.4"),
    LengthUnit.CENTIMETRE: Decimal(10),
    LengthUnit.MILLIMETRE: Decimal(1),
    LengthUnit.METRE: Decimal(1000),
}
"""How many millimetres one of each has."""
# Sides of a sheet of folding-carton board in mm, common practice, no source. A bare '28 x 40' could be 280 x 400 mm
# as a shape, but presses for board begin above that, so the span leaves only inches. Cut sheets that a cell gives in a
# unit of its own may be as small as a letter's or half of it: '8 1/2 x 11 in'.
_SHORTEST_MM, _SHORTEST_CUT_MM, _LONGEST_MM = Decimal(300), Decimal(140), Decimal(2200)


@dataclass(frozen=True, slots=True)
class SheetSize:
    """Width and length in mm, exactly, in the order written. `said`: the text or its header names the unit."""

    width_mm: Decimal
    length_mm: Decimal
    unit: LengthUnit
    words: str
    said: bool = True

    @property
    def mm(self) -> tuple[Decimal, Decimal]:
        return self.width_mm, self.length_mm


_UNIT = r"(?:\s*(mm|cm|m\b|inches|inch|in\b\.?|\"|''|tum|zoll|po\b|pouces|pulg\w*))?"
_SIZE = re.compile(rf"(?<![\d.,])({NUMBER}){_UNIT}\s*[x*×/]\s*({NUMBER}){_UNIT}")
_LONG_UNIT = {"mm": LengthUnit.MILLIMETRE, "cm": LengthUnit.CENTIMETRE, "m": LengthUnit.METRE}


_FRACTION = re.compile(r"(?<![\d.,])(\d{1,2})(?:\s*-\s*|\s+)([1357])[/⁄]([248])(?!\d)")
"""Inches as halves, quarters and eighths: '28-1/2', '40 3/4'."""
_SIGNS = str.maketrans({"½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8"})


def with_whole_numbers(text: str) -> str:
    """'8½ x 11 in' and '8 1/2 x 11 in' as '8.5 x 11 in'."""
    return _FRACTION.sub(_in_decimals, text.translate(_SIGNS))


def _in_decimals(match: re.Match[str]) -> str:
    return str(Decimal(match[1]) + Decimal(match[2]) / Decimal(match[3]))


def length_unit(text: str) -> LengthUnit | None:
    """The unit of length that a header names: 'Size (cm)', 'Format mm'. None for none or two."""
    units = phrases("length_units").find(text)
    found = {match.value for match in units if not letters_of_a_place(text, match.start, match.end)}
    if "in" in found and len(found) > 1:
        # 'Format in mm' says mm; 'in' is the preposition.
        found.discard("in")
    if found == {"in"} and not _is_inch(text):
        return None
    return LengthUnit(found.pop()) if len(found) == 1 else None


def _is_inch(text: str) -> bool:
    words = [token for token, _, _ in tokens_of(text)]
    return "in" not in words or words[-1] in ("in", ")", "]") or any(word in words for word in ('"', "inch", "inches"))


@lru_cache(maxsize=8192)
def sheet_text(text: str, unit: LengthUnit | None = None) -> tuple[SheetSize, ...]:
    """A sheet-size cell and nothing else; `unit` is the header's. One size is certain, several are not."""
    stripped = with_whole_numbers(_without_grain(text.strip()).strip("()"))
    match = _SIZE.fullmatch(fold(stripped).replace("sheets", "").strip())
    if match is None or ("/" in match.group() and not _sizes_with_slash(match)):
        return ()
    plain = unit is LengthUnit.INCH or bool(match[4] or match[2])
    return _sizes(match, unit, stripped, _SHORTEST_CUT_MM if plain else _SHORTEST_MM)


def _without_grain(text: str) -> str:
    """'70 x 100 SB' and '28 x 40 in (long grain)': which way the fibres run changes no size."""
    said = phrases("grain").find(text)
    if not said or text[said[-1].end :].strip(" )."):
        return text
    return text[: said[-1].start].rstrip(" ,(-")


@lru_cache(maxsize=8192)
def find_sheet_sizes(text: str) -> tuple[SheetSize, ...]:
    """Every sheet size in a description: '28 x 40 in' or, without its unit, one that can only be in one unit."""
    found: list[SheetSize] = []
    text = with_whole_numbers(text)
    folded = fold(text)
    for match in _SIZE.finditer(folded):
        behind = folded[match.end() : match.end() + 6]
        # 24x36-500 is a ream's definition, 12/1000" a caliper.
        if "/" in match.group() or re.match(r"\s*[-/,]\s*(?:480|500|1000)\b", behind):
            continue
        found += _sizes(match, None, text[match.start() : match.end()])
    return tuple(found)


def without_sheet_sizes(text: str) -> str:
    """'Cartoncillo GD2 en hojas de 70 x 100 cm' without the size."""
    for size in find_sheet_sizes(text):
        text = text.replace(size.words, " ", 1) if size.words else text
    return text


@lru_cache(maxsize=4096)
def sheets_in_title(text: str) -> str:
    """'Sheets 700 x 1000 mm' of 'B. Sheets 700 x 1000 mm, GBP per 1,000 sheets, collected from our warehouse': the one
    part of a title that names a sheet and nothing else; '' for none or several."""
    found = [part.strip() for part in _PARTS.split(text) if _names_a_sheet_alone(part)]
    return found[0] if len(found) == 1 else ""


_PARTS = re.compile(r"[,;:](?!\d)|\.\s|\s[-–—]\s")


def _names_a_sheet_alone(part: str) -> bool:
    sizes = find_sheet_sizes(part)
    if len(sizes) != 1:
        return False
    rest = part.replace(sizes[0].words, " ", 1)
    if phrases("headers").whole(rest.strip()) == "sheet_size":
        return True
    forms = phrases("forms").find(rest)
    named, rest = {match.value for match in forms}, without(rest, forms)
    if not any(map(str.isalnum, rest)):
        return "roll" not in named
    # 'Oferta en hojas 72 x 102 cm'; 'sheets from 70 x 100 cm' and 'other sheets 70 x 100 cm' are no line's own.
    return named == {"sheet"} and not _limits(rest) and names_board_and_price(rest)


def _limits(words: str) -> bool:
    """The 'from' of 'sheets from 70 x 100 cm', and not the 'de' of 'hojas de 70 x 100 cm'."""
    ends = (match for match in phrases("bracket").find(words) if match.value in ("from", "above", "below", "up_to"))
    return any(phrases("name_particles").whole(words[end.start : end.end]) is None for end in ends)


def _sizes_with_slash(match: re.Match[str]) -> bool:
    """'72/102' is a size in cm where both sides can be; '1/2' and '12/1000' are not."""
    return len(match[1]) in (2, 3, 4) and len(match[3]) in (2, 3, 4)


def _sizes(
    match: re.Match[str], header: LengthUnit | None, words: str, shortest: Decimal = _SHORTEST_MM
) -> tuple[SheetSize, ...]:
    said = match[4] or match[2]
    unit = _named(said) if said else header
    units = (unit,) if unit is not None else tuple(LengthUnit)
    found = {}
    for one in units:
        for width in number_readings(match[1]):
            for length in number_readings(match[3]):
                size = SheetSize(width.value * MM_PER[one], length.value * MM_PER[one], one, words, unit is not None)
                if all(shortest <= side <= _LONGEST_MM for side in size.mm):
                    found[size.mm] = size
    return tuple(found.values())


def _named(word: str) -> LengthUnit:
    return _LONG_UNIT.get(word.strip(), LengthUnit.INCH)
