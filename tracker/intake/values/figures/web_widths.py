"""How wide a web is, as a head that prices stand below: '40in', 'Width 42 in', 'laize 700', '1020 mm rolls'; and what
else is measured of its roll: '3 in core'."""

import re
from functools import lru_cache

from tracker.intake.values.figures.lengths import Measured, measured
from tracker.intake.values.figures.sheetsize import MM_PER, LengthUnit, with_whole_numbers
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, blanked

_NARROWEST_MM, _WIDEST_MM = 100, 6000
"""Of webs of board; common practice, no source."""
_NARROWEST_NAMED_MM = 50
"""Of what a word says to be measured across a roll: a core of 3 in."""
_NARROWEST_BARE = 20
"""Of widths without a unit, which may be in inches: 'Width 1' and 'Width 2' count columns."""
_MOST_FIGURES = 2
_LONGEST = 60


@lru_cache(maxsize=16384)
def is_web_width(text: str) -> bool:
    """A text that tells a width, or from which to which it goes, and no more. No board is as thick as one is wide:
    '400 mm' is a width and '0.4 mm' none, nor is '1.020 mm' for certain, where no word says so."""
    whole = with_whole_numbers(text)
    found = measured(whole, "length_units") if len(text) <= _LONGEST else ()
    if not found or len(found) > _MOST_FIGURES:
        return False
    named = phrases("web_widths").find(whole)
    worded = [*named, *_names_of_measures(whole)]
    # The 700 of '700-920 mm' is in millimetres as well.
    unit = found[-1].unit
    if not all(_is_wide(one, one.unit or unit, bare=bool(named), said=bool(worded)) for one in found):
        return False
    spoken = [*worded, *phrases("range").find(whole), *phrases("open_measures").find(whole)]
    rest = blanked(fold(whole), [(one.start, one.end) for one in found] + [match.span for match in spoken])
    return not any(map(str.isalnum, rest))


def _is_wide(one: Measured, unit: str, *, bare: bool, said: bool) -> bool:
    if not unit:
        return bare and all(_NARROWEST_BARE <= amount.value <= _WIDEST_MM for amount in one.amounts)
    if unit == LengthUnit.METRE and not said:
        # '5M' and '10M' are thousands of pounds to some.
        return False
    lengths = [amount.value * MM_PER[LengthUnit(unit)] for amount in one.amounts]
    if said:
        return any(_NARROWEST_NAMED_MM <= length <= _WIDEST_MM for length in lengths)
    return all(_NARROWEST_MM <= length <= _WIDEST_MM for length in lengths)


def _names_of_measures(text: str) -> list[Found[str]]:
    """The words for a roll, and for what is measured of it or across a sheet."""
    heads = (match for match in phrases("headers").find(text) if match.value in ("roll_width", "width"))
    return [*heads, *phrases("roll_measures").find(text), *phrases("rolls").find(text)]


def without_web_width(text: str) -> str:
    """'rolls' of '40 in. rolls': a width without its figures and the word for it; any other text as it is."""
    if not is_web_width(text):
        return text
    whole = with_whole_numbers(text)
    figures = [(one.start, one.end) for one in measured(whole, "length_units")]
    words = [match.span for section in ("web_widths", "open_measures") for match in phrases(section).find(whole)]
    return blanked(whole, [*figures, *words]).strip(" ,;:.–-")


def without_diameters(text: str) -> str:
    """'Ships in 60 dia. rolls' without what is measured of the rolls by a word that is a day in another language; 60
    'días' are days."""
    said = (match for match in phrases("roll_measures").find(text) if text[match.start : match.end].isascii())
    days = [match for match in said if phrases("lead").whole(text[match.start : match.end]) == "day"]
    if not days or not phrases("rolls").find(text):
        return text
    figures = (_FIGURES_AHEAD.search(text, 0, match.start) for match in days)
    spans = [(found.start(), match.end) for match, found in zip(days, figures, strict=True) if found is not None]
    return blanked(text, spans)


_FIGURES_AHEAD = re.compile(r"(?:\d[\d.,]*\W*(?:[^\W\d_]{1,3}\W+)?)*$")
"""The '40 to 60 ' before 'dia.'."""


def named_width(text: str, figure: str) -> str:
    """'Roll width 40 in' for the 40 below 'Roll width (in)'; '' below what names no width, or has a figure too."""
    named = phrases("web_widths").find(text)
    units = phrases("length_units").find(text)
    rest = blanked(fold(text), [match.span for match in (*named, *units)])
    if len(named) != 1 or len({match.value for match in units}) > 1 or any(map(str.isalnum, rest)):
        return ""
    unit = units[0].value if units else ""
    whole = f"{text[named[0].start : named[0].end]} {figure} {unit}".strip()
    return whole if is_web_width(whole) else ""
