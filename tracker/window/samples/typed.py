"""What a user types into the sample fields: days, calipers, grades, vendors. None or () is 'left open'; Unclear says
what to mend."""

import re
from collections.abc import Container, Sequence
from datetime import date, timedelta
from decimal import Decimal, InvalidOperation
from fractions import Fraction

from tracker.desk.vendors import vendor_meant
from tracker.trade.exact import as_decimal, plain_text
from tracker.trade.grades import grade_named, grades
from tracker.trade.quantities import CaliperUnit, caliper_in, micrometres
from tracker.window.look.figures import Units

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_DAY_MONTH = re.compile(r"^(\d{1,2})\.?\s*([a-z]{3})[a-z]*\.?(?:\s+(\d{4}))?$")
_DOTTED = re.compile(r"^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})?$")
_AHEAD = re.compile(r"^\+?(\d{1,3})\s*(d|days?|w|wk|weeks?)$")
_CALIPER = re.compile(r"^(\d+(?:[.,]\d+)?|[.,]\d+)\s*(pt|points?|µm|um|mm|mil|in|inch|inches|\"|″)?$")
_UNITS = {"pt": CaliperUnit.POINT, "mil": CaliperUnit.POINT, "µm": CaliperUnit.MICROMETRE, "um": CaliperUnit.MICROMETRE,
          "mm": CaliperUnit.MILLIMETRE, "in": CaliperUnit.INCH, "inch": CaliperUnit.INCH, "inche": CaliperUnit.INCH,
          '"': CaliperUnit.INCH, "″": CaliperUnit.INCH}  # fmt: skip
_LEAST_UM, _MOST_UM = 100, 3000
_BARE_INCHES_BELOW = Decimal("0.12")
"""A bare .018 is inches: below this no board could be in points, micrometres or millimetres that anyone sells."""
_TWO_OR_ONE = re.compile(r"^(\d{1,2}),(\d{1,2})\s*(?:pt|points?|mil)?$")
_LEAST_POINTS, _LEAST_SECOND = 4, 8  # 16,5 is sixteen and a half; 16,18 may be two


class Unclear(ValueError):
    """What was typed can't be understood; the message says how to write it."""


class NewVendor(Unclear):
    """A name that is new, but may be a slip for a known vendor's; `name` is what was typed."""

    def __init__(self, name: str, close: Sequence[str]) -> None:
        super().__init__(f"“{name}” is a new vendor: did you mean {' or '.join(close)}? Enter again takes it as new.")
        self.name = name


def day_typed(text: str, today: date) -> date | None:
    """'12 Dec', '12 December 2026', '2026-12-12', '12.12.2026', '+14 days', '2 weeks'.

    3/4 is refused: it is read two ways. Between dots the day always comes first.
    """
    words = text.strip().casefold()
    if not words:
        return None
    if words in ("today", "tomorrow"):
        return today + timedelta(days=words == "tomorrow")
    if ahead := _AHEAD.match(words):
        return today + timedelta(days=int(ahead[1]) * (7 if ahead[2].startswith("w") else 1))
    try:
        if found := _DAY_MONTH.match(words):
            return _of_month(int(found[1]), _MONTHS.index(found[2]) + 1, found[3], today)
        if found := _DOTTED.match(words):
            return _of_month(int(found[1]), int(found[2]), found[3], today)
        return date.fromisoformat(words)
    except ValueError as error:
        raise Unclear(f"“{text.strip()}” is not a day: write 12 Dec, 2026-12-12 or 2 weeks.") from error


def _of_month(day: int, month: int, year: str | None, today: date) -> date:
    """Without a year the nearest one: a day more than half a year gone is next year's."""
    if year is not None:
        return date(int(year), month, day)
    this_year = date(today.year, month, day)
    return this_year if (today - this_year).days < 183 else date(today.year + 1, month, day)


def caliper_typed(text: str, units: Units) -> Decimal | None:
    """µm from '18', '18 pt', '457 µm', '0.46 mm', '.018 in'.

    A bare number is in the user's units where a board can be so thick, else in the only unit in which one can.
    """
    # Folding case turns the micro sign into a Greek mu, which looks the same.
    words = text.strip().casefold().replace("\u03bc", "µ")
    if not words:
        return None
    found = _CALIPER.match(words)
    if found is None:
        raise Unclear(f"“{text.strip()}” is not a caliper: write 18 pt, 0.018 in or 457 µm.")
    unit = _UNITS.get((found[2] or "").rstrip("s").replace("point", "pt"))
    number = Decimal(found[1].replace(",", "."))
    try:
        caliper = micrometres(number, unit or _bare_unit(number, units))
    except InvalidOperation as error:
        raise Unclear(f"“{text.strip()}” is not a number.") from error
    if not _LEAST_UM <= caliper <= _MOST_UM:
        raise Unclear(f"“{text.strip()}” is no board's caliper: boards are 4 to 118 pt (100 to 3,000 µm).")
    return as_decimal(Fraction(caliper))


def _bare_unit(number: Decimal, units: Units) -> CaliperUnit:
    if number < _BARE_INCHES_BELOW:
        return CaliperUnit.INCH
    # No board is 16 µm thick, so who measures in metric and types 16 means points.
    return CaliperUnit.POINT if units is Units.US or number < _LEAST_UM else CaliperUnit.MICROMETRE


def calipers_typed(text: str, units: Units) -> tuple[Decimal, ...]:
    """Several calipers: '16 18 20', '16; 18 pt', '16, 18'. '16,18' is refused: a comma between two is read two ways."""
    pieces = [piece for piece in re.split(r"\s*;\s*|,\s+|\s+(?=[.,]?\d)", text.strip()) if piece]
    for piece in pieces:
        both = _TWO_OR_ONE.match(piece)
        if both is not None and int(both[1]) >= _LEAST_POINTS and int(both[2]) >= _LEAST_SECOND:
            raise Unclear(f"“{piece}” may be one caliper or two: write {both[1]} {both[2]} or {both[1]}.{both[2]}.")
    found = [caliper_typed(piece, units) for piece in pieces]
    return tuple(dict.fromkeys(caliper for caliper in found if caliper is not None))


def caliper_exact(caliper_um: Decimal) -> str:
    """A caliper so that typing it gives the very same one: '18 pt', or in µm where points would be rounded."""
    points = caliper_in(caliper_um, CaliperUnit.POINT)
    if (points * 1000).denominator == 1:
        return f"{float(points):g} pt"
    return f"{plain_text(caliper_um)} µm"


def vendors_typed(text: str, known: Sequence[str], sure: Container[str] = ()) -> tuple[str, ...]:
    """Several vendors apart by semicolons, each as vendor_typed() takes it."""
    names = [vendor_typed(piece, known, sure) for piece in text.split(";") if piece.strip()]
    if not names:
        raise Unclear("Whom was it asked of? Write the vendor's name.")
    return tuple(dict.fromkeys(names))


def msf_typed(text: str) -> float:
    """A year's volume in thousands of square feet: '30000', '30,000', '30 000'. 30,5 is refused."""
    words = text.strip().casefold().removesuffix("msf").strip()
    if re.fullmatch(r"\d{1,3}([ ,]\d{3})+|\d+(\.\d+)?", words):
        figure = float(words.replace(",", "").replace(" ", ""))
        if figure > 0:
            return figure
    raise Unclear(f"“{text.strip()}” is not a volume: write thousands of square feet a year, such as 30000.")


def grade_typed(text: str) -> str:
    """A grade's code from its letters, another name of it (WLC, GC1), or the beginning of its name."""
    words = text.strip().casefold()
    if not words:
        raise Unclear("Which grade? Write its letters, such as SBS.")
    named = grade_named(words)
    if named is not None:
        return named
    found = [code for code, grade in grades().items() if grade.name.says.casefold().startswith(words)]
    if len(found) != 1:
        raise Unclear(f"“{text.strip()}” names none of {', '.join(grades())}, nor is it another name of just one.")
    return found[0]


def vendor_typed(text: str, known: Sequence[str], sure: Container[str] = ()) -> str:
    """The known vendor where only capitals, punctuation or the legal form differ, else a new one as typed.

    NewVendor for one that may be a slip, unless it is among the names that the user is `sure` of.
    """
    words = " ".join(text.split())
    if not words:
        raise Unclear("Whom was it asked of? Write the vendor's name.")
    meant = vendor_meant(words, known)
    if meant.close and meant.name not in sure:
        raise NewVendor(meant.name, meant.close)
    return meant.name
