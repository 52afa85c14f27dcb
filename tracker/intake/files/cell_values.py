"""From what a file stores to what a cell means: numbers, serial dates, and the text that a person sees."""

import math
import re
from datetime import datetime, time, timedelta
from decimal import Decimal
from functools import lru_cache

from tracker.intake.files.number_formats import Shows
from tracker.intake.grid import CellValue

_LAST_SERIAL = 2958465  # 31 December 9999, the last day a spreadsheet can show
_SECONDS_A_DAY = 86400
_CONTROL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ufffe\uffff\ud800-\udfff]")
_ESCAPED = re.compile("_x([0-9A-Fa-f]{4})_")
_RAISED = str.maketrans("0123456789+-()", "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁽⁾")


@lru_cache(maxsize=65536, typed=True)
def shown(stored: float | bool, shown_as: Shows, epoch_1904: bool) -> tuple[CellValue, str]:
    """What a stored number or truth value means under its format, and the text of that.

    Remembered, because a price sheet repeats its calipers, weights and prices thousands of times.
    """
    if shown_as is Shows.NUMBER and not isinstance(stored, bool):
        digits = _digits(stored)
        return Decimal(digits), digits
    value = stored if isinstance(stored, bool) else number_value(stored, shown_as, epoch_1904)
    return value, visible(value)


def decimal_of(number: float) -> Decimal:
    """The number as a spreadsheet shows it at its widest: 15 significant digits, so 0.1 + 0.2 is 0.3.

    A spreadsheet never shows more (ECMA-376 leaves it open; Excel and LibreOffice both stop at 15), so what follows
    is binary noise and not something a vendor wrote.
    """
    return Decimal(_digits(number))


def _digits(number: float) -> str:
    """A number in 15 significant digits without an exponent; adding nothing turns a negative zero into a plain one."""
    digits = f"{number + 0.0:.15g}"
    return format(Decimal(digits), "f") if "e" in digits else digits


def number_value(number: float, shown_as: Shows, epoch_1904: bool) -> CellValue:
    """A stored number as its format shows it; one that no calendar can show stays a number."""
    if shown_as is Shows.NUMBER:
        return decimal_of(number)
    if shown_as is Shows.DURATION:
        return timedelta(seconds=round(number * _SECONDS_A_DAY)) if abs(number) <= _LAST_SERIAL else decimal_of(number)
    if shown_as is Shows.TIME:
        return _time_of_day(number) if 0 <= number <= _LAST_SERIAL else decimal_of(number)
    moment = _moment(number, epoch_1904)
    if moment is None:
        return decimal_of(number)
    if shown_as is Shows.DATE or moment.time() == time():
        return moment.date()
    return moment


def _moment(serial: float, epoch_1904: bool) -> datetime | None:
    """Days counted from the file's epoch; None before its first day and after 9999.

    The 1900 calendar holds a 29 February 1900 that never was (serial 60), so days before it count from one later.
    """
    first = 0 if epoch_1904 else 1
    last = _LAST_SERIAL - 1462 if epoch_1904 else _LAST_SERIAL
    if not first <= serial < last + 1:
        return None
    days, seconds = divmod(round(serial * _SECONDS_A_DAY), _SECONDS_A_DAY)
    if days > last:
        days, seconds = last, _SECONDS_A_DAY - 1
    return _first_day(days, epoch_1904) + timedelta(days=days, seconds=seconds)


def _first_day(days: int, epoch_1904: bool) -> datetime:
    if epoch_1904:
        return datetime(1904, 1, 1)
    return datetime(1899, 12, 31) if days < 60 else datetime(1899, 12, 30)


def _time_of_day(serial: float) -> time:
    seconds = round(math.modf(serial)[0] * _SECONDS_A_DAY) % _SECONDS_A_DAY
    return time(seconds // 3600, seconds // 60 % 60, seconds % 60)


def visible(value: CellValue) -> str:
    """A value as text: numbers plain with a point, dates as year-month-day, '' for nothing."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "TRUE" if value else "FALSE"
    if isinstance(value, Decimal):
        return format(value, "f")
    if isinstance(value, datetime):
        return value.isoformat(" ")
    if isinstance(value, timedelta):
        return _hours(value)
    return value if isinstance(value, str) else value.isoformat()


def _hours(duration: timedelta) -> str:
    """A duration as hours, minutes and seconds: 36:00:00."""
    seconds = round(duration.total_seconds())
    sign, seconds = ("-", -seconds) if seconds < 0 else ("", seconds)
    return f"{sign}{seconds // 3600}:{seconds // 60 % 60:02}:{seconds % 60:02}"


def clean(text: str) -> str:
    """Text without what nobody sees: control characters go (a NUL can't even be stored), line ends become one kind."""
    if "\r" in text:
        text = text.replace("\r\n", "\n").replace("\r", "\n")
    return text if text.isprintable() else _CONTROL.sub("", text)


def unescaped(text: str) -> str:
    """Resolve the _xHHHH_ escapes of spreadsheet XML (ECMA-376 Part 1, 22.9.2.19): '_x000D_' is a carriage return."""
    return _ESCAPED.sub(lambda found: chr(int(found[1], 16)), text) if "_x" in text else text


def raised(text: str) -> str:
    """Superscript digits as characters of their own, so that ft² never reads ft2 and a footnote mark is no digit."""
    return text.translate(_RAISED)
