"""Thickness of board: '18 pt', '.018"', '0,46 mm', '457 µm'. A mil is a point.

A bare number goes by what board can be.
"""

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache

from tracker.intake.values.figures.lengths import Measured, measured, without_tolerance
from tracker.intake.values.figures.letters_of_places import letters_of_a_place
from tracker.intake.values.figures.numbers import NumberReading, in_one_figure
from tracker.intake.values.figures.spans import lone_figures
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of, without
from tracker.trade.quantities import CaliperUnit

_UM_PER = {
    CaliperUnit.POINT: Decimal("25.4"),
    CaliperUnit.INCH: Decimal(25400),
    CaliperUnit.MILLIMETRE: Decimal(1000),
    CaliperUnit.MICROMETRE: Decimal(1),
    CaliperUnit.TENTH_MILLIMETRE: Decimal(100),
    CaliperUnit.HUNDREDTH_MILLIMETRE: Decimal(10),
}
# What a sheet or roll of paperboard can measure, from thin cover to pasted chip; common practice, no source. The four
# spans, each in its own unit, nowhere overlap, so a bare number has one unit or none.
_SPANS = (
    (Decimal("0.006"), Decimal("0.125"), CaliperUnit.INCH),
    (Decimal("0.150"), Decimal("3.2"), CaliperUnit.MILLIMETRE),
    (Decimal(6), Decimal(120), CaliperUnit.POINT),
    (Decimal(150), Decimal(3200), CaliperUnit.MICROMETRE),
)


@dataclass(frozen=True, slots=True)
class CaliperReading:
    """One thickness: µm exactly, the unit it was read in, the words. `said`: the text names the unit.

    `loose`: it may as well be how wide a roll is."""

    um: Decimal
    unit: CaliperUnit
    words: str
    said: bool = True
    loose: bool = False


@dataclass(frozen=True, slots=True)
class CaliperText:
    """A caliper cell. One reading is certain; none or several are not. `upper`: the second figure of a range."""

    readings: tuple[CaliperReading, ...]
    upper: tuple[CaliperReading, ...] = ()
    words: str = ""

    @property
    def um(self) -> Decimal | None:
        """The one thickness in µm, or None."""
        return self.readings[0].um if len(self.readings) == 1 and not self.upper else None


def possible_for_board(um: Decimal) -> bool:
    return Decimal(150) <= um <= Decimal(3200)


def in_unit(value: Decimal, unit: CaliperUnit, words: str = "", *, said: bool = True) -> CaliperReading:
    """A number that is known to be in this unit."""
    return CaliperReading(value * _UM_PER[unit], unit, words or str(value), said)


def bare_caliper(value: Decimal) -> CaliperReading | None:
    """A number without a unit, by what board can be: 18 is points, 0.018 inches, 0.46 mm, 457 µm."""
    for low, high, unit in _SPANS:
        if low <= value <= high:
            return in_unit(value, unit, said=False)
    return None


def caliper_unit(text: str) -> CaliperUnit | None:
    """The unit that a header or unit row names: 'Caliper (pt)', 'µm', 'Dicke in mm'. None for none or two."""
    units = {
        match.value
        for match in phrases("caliper_units").find(text)
        if not (_ordinary_word(text, match.start, match.end) or letters_of_a_place(text, match.start, match.end))
    }
    if MICRON_SIGN.search(text):
        units.add(CaliperUnit.MICROMETRE.value)
    return CaliperUnit(units.pop()) if len(units) == 1 else None


MICRON_SIGN = re.compile(r"(?<![^\W_])[\u00b5\u03bc](?![^\W_])")
"""The sign of a millionth and the Greek letter: short for the micron where nothing follows them."""


def _ordinary_word(text: str, start: int, end: int) -> bool:
    """'in' is an inch only where nothing but a sign or the end follows: not in 'Dicke in mm', 'in Wochen' and 'in %';
    'PO' is an order."""
    if text[start:end] == "PO":
        return True
    behind = text[end:]
    lower = behind.strip(" \n").startswith(tuple("abcdefghijklmnopqrstuvwxyzµ%"))
    return text[start:end].lower() == "in" and (lower or behind.lstrip(" ")[:1].isalpha())


_THOUSANDTHS = re.compile(r"(\d{1,3})\s*/\s*1000\s*(?:\"|''|in\b|inch)|0(\d\d)")
"""'18/1000 in', and '018' as the places behind the point of inches are said, or those of millimetres but for the
last."""
_PARTS_OF_AN_INCH = re.compile(r"(\d{1,2})\s*[/⁄]\s*(8|16|32|64)(\D*)")
"""'1/32 in' and '3/64"', as heavy chipboard is called."""
_RANGE_GAP = re.compile(r"\s*(?:-|to|bis|/)\s*")


@lru_cache(maxsize=16384)
def caliper_text(text: str, unit: CaliperUnit | None = None) -> CaliperText | None:
    """A caliper cell: '18 pt', '.018"', '18 pt (0.46 mm)', '457'. A bare number takes `unit`, else what board can be.

    None where the cell holds anything else. Where the header's unit makes an impossible board ('0.018' under 'pt') and
    exactly one other unit a possible one, both readings come back.
    """
    stripped = in_one_figure(without_tolerance(_without_plain_thousandths(text.strip())))
    thousandths = _THOUSANDTHS.fullmatch(fold(stripped))
    if thousandths and (thousandths[1] or unit in (None, CaliperUnit.POINT, CaliperUnit.INCH)):
        points = in_unit(Decimal(thousandths[1] or thousandths[2]), CaliperUnit.POINT, stripped)
        return CaliperText((points, *(_millimetres(stripped) if thousandths[2] and unit is None else ())), (), stripped)
    parts = _PARTS_OF_AN_INCH.fullmatch(stripped)
    if parts and (caliper_unit(parts[3]) or unit) is CaliperUnit.INCH:
        part = in_unit(Decimal(parts[1]) / Decimal(parts[2]), CaliperUnit.INCH, stripped)
        return CaliperText((part,), words=stripped) if possible_for_board(part.um) else None
    found = measured(stripped, "caliper_units")
    if not found or len(found) > 2 or _left_over(stripped, found):
        return None
    first = _readings(found[0], found[0].unit, unit, stripped)
    if len(found) == 1:
        return CaliperText(first, words=stripped)
    second = _readings(found[1], found[1].unit, unit, stripped)
    if _RANGE_GAP.fullmatch(fold(stripped)[found[0].end : found[1].start]):
        return CaliperText(_readings(found[0], found[0].unit or found[1].unit, unit, stripped), second, stripped)
    return CaliperText(_agreed(first, second), words=stripped)


def _without_plain_thousandths(text: str) -> str:
    """'450 milésimas' without its thousandths, which are an inch's to one vendor and a millimetre's to another: what
    board can be tells, as it does of a bare number."""
    if phrases("caliper_units").find(text):
        return text
    return without(text, phrases("plain_thousandths").find(text)).strip()


def _millimetres(figures: str) -> tuple[CaliperReading, ...]:
    """The '030' of a metric list may be 0.30 mm: which it is, the units around tell."""
    read = in_unit(Decimal(f"{figures[0]}.{figures[1:]}"), CaliperUnit.MILLIMETRE, figures, said=False)
    return (read,) if possible_for_board(read.um) else ()


_IDLE = re.compile(
    r"[\s()\[\]/=,;:*†‡\-.~+±]*(?:ca|cal|caliper|approx|about|nominal|nom|thk|to|bis)?[\s()\[\]/=,;:*†‡\-.~]*"
)


def _left_over(text: str, found: tuple[Measured, ...]) -> bool:
    folded = fold(text)
    edges = [0, *(edge for one in found for edge in (one.start, one.end)), len(folded)]
    gaps = [folded[edges[i] : edges[i + 1]] for i in range(0, len(edges), 2)]
    return any(_IDLE.fullmatch(gap) is None for gap in gaps)


def _readings(one: Measured, said: str, header: CaliperUnit | None, words: str) -> tuple[CaliperReading, ...]:
    if said:
        readings = [in_unit(amount.value, CaliperUnit(said), words) for amount in one.amounts]
        # '0,018"' and '1,016 µm': only one reading of the number can be board.
        likely = tuple(reading for reading in readings if possible_for_board(reading.um))
        return likely or tuple(readings)
    if header is not None:
        return _under(one.amounts, header, words)
    bare = {
        reading.um: reading for reading in (bare_caliper(amount.value) for amount in one.amounts) if reading is not None
    }
    return tuple(bare.values())


def _under(amounts: tuple[NumberReading, ...], header: CaliperUnit, words: str) -> tuple[CaliperReading, ...]:
    readings = tuple(in_unit(amount.value, header, words) for amount in amounts)
    likely = tuple(reading for reading in readings if possible_for_board(reading.um))
    if likely:
        return likely
    others = tuple(reading for reading in (bare_caliper(amount.value) for amount in amounts) if reading is not None)
    return readings + others


def _agreed(first: tuple[CaliperReading, ...], second: tuple[CaliperReading, ...]) -> tuple[CaliperReading, ...]:
    """One board in two units: the first figure where they agree within rounding, both where they don't."""
    for one in first:
        for other in second:
            if abs(one.um - other.um) <= Decimal("0.03") * max(one.um, other.um):
                return (one,)
    return first + second


def calipers_of(one: Measured) -> tuple[CaliperReading, ...]:
    """What a figure with its unit can be of board's thickness; () where it measures something else."""
    return tuple(reading for reading in _readings(one, one.unit, None, "") if possible_for_board(reading.um))


@lru_cache(maxsize=16384)
def find_calipers(text: str) -> tuple[CaliperReading, ...]:
    """Every thickness in a description that has its unit beside it and can be board; a 40" roll is not one."""
    folded = fold(text)
    found: list[CaliperReading] = []
    wide: list[CaliperReading] = []
    for one in lone_figures(text, "caliper_units"):
        # '1/8"' is a fraction and 'µm/' the beginning of another unit; '250 g/m² / 345 µm' is a caliper.
        fraction = folded[one.start - 1 : one.start] == "/" and folded[one.start - 2 : one.start - 1].isdigit()
        if not one.unit or fraction or folded[one.end : one.end + 1] == "²":
            continue
        if _is_measure_of_a_sheet(folded, one) or _is_measure_of_a_roll(text, one):
            continue
        readings = _readings(one, one.unit, None, text[one.start : one.end])
        # Beside a caliper the 1.120 mm of 'Rolle 1.120 mm' are the roll's width, and no 1.12 mm.
        across = wide if _may_be_a_width(text, one) else found
        across += [reading for reading in readings if possible_for_board(reading.um)]
    found = found or [replace(one, loose=True) for one in wide]
    bare = (_inches(text[match.start() : match.end()]) for match in _BARE_INCHES.finditer(folded))
    found = found or [one for one in bare if possible_for_board(one.um)]  # '0.001 in' over a column is its unit
    return tuple({reading.um: reading for reading in found}.values())


# 'CCNB .024 94 lb/MSF': three places behind a point that begin with a nought are inches, as printers write them.
_BARE_INCHES = re.compile(
    r"(?<![\d.,$€£¢±+/x-])(?<![$€£±+/x-] )0?\.0\d\d"
    r"(?!\d|[.,]\d)(?!\s*(?:-|to)\s*0?\.\d)(?!\s*(?:[x%/$€£¢\"]|(?:[cm]?m|lbs?|kg|g|per|usd|eur|each|ea)\b))"
)


def _inches(words: str) -> CaliperReading:
    return in_unit(Decimal("0" + words if words.startswith(".") else words), CaliperUnit.INCH, words, said=False)


# Not the end of 'GT2 Triplex 345 µm'.
_TIMES_BEFORE = re.compile(r"\d\s*(?:mm|cm|m|in|inch|inches|zoll|\"|''?)?\s*x\s*$")


def _is_measure_of_a_sheet(folded: str, one: Measured) -> bool:
    return bool(re.match(r"\s*x\s*\d", folded[one.end :])) or bool(_TIMES_BEFORE.search(folded[: one.start]))


def _may_be_a_width(text: str, one: Measured) -> bool:
    """A word for a roll stands right before a figure of which one reading is as wide as one."""
    per_unit = _UM_PER[CaliperUnit(one.unit)]
    named = phrases("rolls").find(text[: one.start])
    beside = bool(named) and not text[named[-1].end : one.start].strip(" :=-")
    return beside and any(amount.value * per_unit >= _NARROWEST_ROLL_UM for amount in one.amounts)


_NARROWEST_ROLL_UM = 100_000
"""Common practice, no source."""
_DIAMETER = re.compile(r"[Øø⌀]\s*$")


def _is_measure_of_a_roll(text: str, one: Measured) -> bool:
    """'Rollenbreite 1.020 mm', 'Hülse: 76 mm', '1020 mm wide', 'Ø max. 1.200 mm': across a roll, not through its
    board."""
    before, behind = _without_at_most(text[: one.start]), text[one.end :]
    named = phrases("roll_measures").find(before)
    if named and not before[named[-1].end :].strip(" :=.,-"):
        return True
    return bool(_DIAMETER.search(before)) or _names_a_roll(behind)


def _without_at_most(before: str) -> str:
    """What stands ahead of 'max.' right before a figure."""
    most = [match for match in phrases("bracket").find(before) if match.value in ("up_to", "below")]
    ends = bool(most) and not before[most[-1].end :].strip(" .:")
    return before[: most[-1].start] if ends else before


def roll_units(text: str) -> tuple[str, ...]:
    """The units that a text measures rolls in: 'trimmed rolls to 84 in. wide, 3 in. cores'."""
    return tuple(one.unit for one in measured(text, "length_units") if one.unit and _is_measure_of_a_roll(text, one))


def _names_a_roll(behind: str) -> bool:
    """'1020 mm wide', and not '410 µm laize 860 mm', where the width is the next figure."""
    found = tokens_of(behind)
    named = phrases("roll_measures").at(found, 0)
    return named is not None and not any(word[0].isdigit() for word, _, _ in found[named.after : named.after + 2])
