"""Numbers as people write them, in every reading the text allows.

'1,234' is 1234 to an American and 1.234 to a German; both come back, and the rest of the column settles it. A text
that no rule accepts in full ('1,25,00', '12/11/2026', '1e5') is no number at all: nothing is ever dropped or repaired.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from itertools import product

from tracker.intake.words.fold import fold


@dataclass(frozen=True, slots=True)
class NumberReading:
    """One value of a text.

    `decimal_sign` is '.' or ',' where the text shows or implies one in this reading, else ''.
    """

    value: Decimal
    decimal_sign: str = ""


@dataclass(frozen=True, slots=True)
class SignEvidence:
    """How many texts can only be read with a decimal point, and how many only with a decimal comma."""

    point: int = 0
    comma: int = 0

    @property
    def sign(self) -> str | None:
        """The settled decimal sign; None where nothing speaks, or both do."""
        if self.point and not self.comma:
            return "."
        return "," if self.comma and not self.point else None


# Shared by the other grammars: digits with any separators between them. A plain space groups digits only where
# nothing but full groups of three follow, so that '18 350' in a description stays two numbers elsewhere.
NUMBER = r"(?:\d+(?:[.,']\d+)*|[.,]\d+)"
SPACED_NUMBER = r"(?:\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?!\d)|\d+(?:[.,']\d+)*|[.,]\d+)"

# India writes lakhs, and groups of two before the last three: '1,02,500'.
_GROUPED = {
    "": re.compile(r"(?P<whole>0|[1-9]\d*)"),
    ".": re.compile(r"(?P<whole>[1-9]\d{0,2}(?:\.\d{3})+)"),
    ",": re.compile(r"(?P<whole>[1-9]\d{0,2}(?:,\d{3})+|[1-9]\d?(?:,\d{2})+,\d{3})"),
    "'": re.compile(r"(?P<whole>[1-9]\d{0,2}(?:'\d{3})+)"),
    " ": re.compile(r"(?P<whole>[1-9]\d{0,2}(?: \d{3})+)"),
}
_NO_FRACTION = re.compile(r"[.,:]-{1,2}$")
_CROWNS = re.compile(r"(?P<whole>\d+|\d{1,3}(?:[ .,']\d{3})+):(?P<hundredths>\d\d)")
_LEAST_CROWNS = Decimal(100)
"""With fewer before the colon, '14:30' may be a time of day."""
_PLAIN = re.compile(r"[\d.,' ]+")


@lru_cache(maxsize=65536)
def number_readings(text: str) -> tuple[NumberReading, ...]:
    """All values of a text that is one number and nothing else, in ascending order; () where it is not a number.

    Understands a sign, brackets for negative, the Swiss apostrophe, spaces of every width, the ',-' that stands for
    no cents, the colon before öre, and halves, quarters and eighths.
    """
    folded = " ".join(fold(text).split())
    unsigned, negative = _sign_taken(folded)
    broken = _with_a_fraction(unsigned)
    if broken is not None:
        return (NumberReading(-broken if negative else broken),)
    crowns = crowns_and_ore(unsigned)
    if crowns is not None and crowns >= _LEAST_CROWNS:
        return (NumberReading(-crowns if negative else crowns),)
    no_fraction = _NO_FRACTION.search(unsigned)
    if no_fraction:
        # The sign before the dash is the decimal sign: '1.250,-' can only be twelve hundred and fifty.
        sign = unsigned[no_fraction.start()].replace(":", "")
        whole = unsigned[: no_fraction.start()]
        readings = [r for r in _unsigned_readings(whole) if r.value == r.value.to_integral_value()]
        readings = [
            NumberReading(r.value, sign or r.decimal_sign)
            for r in readings
            if sign == "" or r.decimal_sign in ("", sign)
        ]
    else:
        readings = _unsigned_readings(unsigned)
    if negative:
        readings = [NumberReading(-r.value, r.decimal_sign) for r in readings]
    return tuple(sorted(readings, key=lambda r: r.value))


_SPACED = re.compile(r"([1-9])\s(?=\d{3}(?:\s*[^\W\d]|$))")


def in_one_figure(text: str) -> str:
    """'1 650' and '1 650 µm' with the thousand joined to the rest, as a cell that measures board begins; '410 455' may
    be two boards."""
    return _SPACED.sub(r"\1", text.strip(), count=1) if _SPACED.match(text.strip()) else text


FRACTION = r"(?: ?[¼½¾]|[ -][1357]/[248](?!/?\d))"
"""What may follow a whole number, in other grammars' numbers: '59½', '48 1/2'."""
_FRACTION = re.compile(r"(?P<whole>\d{1,3})(?: ?(?P<sign>[¼½¾])|[ -](?P<over>[1357])/(?P<under>[248]))")
_SIGNS = {"¼": Decimal("0.25"), "½": Decimal("0.5"), "¾": Decimal("0.75")}


def _with_a_fraction(text: str) -> Decimal | None:
    """'59½' and '59 1/2', as cents per pound are written; None for any other text."""
    match = _FRACTION.fullmatch(text)
    if match is None:
        return None
    part = _SIGNS[match["sign"]] if match["sign"] else Decimal(match["over"]) / Decimal(match["under"])
    return Decimal(match["whole"]) + part if part < 1 else None


def crowns_and_ore(text: str) -> Decimal | None:
    """'13 450:50' as Swedes write crowns and öre; None for any other text."""
    match = _CROWNS.fullmatch(text)
    if match is None:
        return None
    whole = "".join(sign for sign in match["whole"] if sign.isdigit())
    return Decimal(f"{whole}.{match['hundredths']}")


def _sign_taken(folded: str) -> tuple[str, bool]:
    if folded.startswith("(") and folded.endswith(")") and not folded.startswith("(-"):
        return folded[1:-1].strip(), True
    if folded.startswith("-"):
        return folded[1:].lstrip(), True
    # Some accounting programs write the minus behind. A dash after a decimal sign means 'no cents' instead.
    if folded.endswith("-") and len(folded) > 1 and folded[-2].isdigit():
        return folded[:-1], True
    return folded.removeprefix("+"), False


def _unsigned_readings(text: str) -> list[NumberReading]:
    if not _PLAIN.fullmatch(text) or text != text.strip():
        return []
    found: dict[Decimal, NumberReading] = {}
    for group, sign in product(_GROUPED, ".,"):
        if group == sign:
            continue
        reading = _read_as(text, group, sign)
        if reading is not None:
            known = found.get(reading.value)
            # 1234 says nothing about the decimal sign, 1,234.5 does.
            if known is None or (reading.decimal_sign == "" and known.decimal_sign != ""):
                found[reading.value] = reading
    return list(found.values())


def _read_as(text: str, group: str, sign: str) -> NumberReading | None:
    whole, has_sign, fraction = text.partition(sign)
    if has_sign and not (fraction.isascii() and fraction.isdigit()):
        return None
    if whole == "":
        return NumberReading(Decimal(f"0.{fraction}"), sign) if has_sign else None
    if not _GROUPED[group].fullmatch(whole):
        return None
    digits = whole.replace(group, "") if group else whole
    if has_sign:
        return NumberReading(Decimal(f"{digits}.{fraction}"), sign)
    # A group sign that is '.' or ',' implies the other as decimal sign.
    implied = {".": ",", ",": "."}.get(group, "")
    return NumberReading(Decimal(digits), implied)


@lru_cache(maxsize=8192)
def percent(text: str) -> tuple[NumberReading, ...]:
    """All values of a percentage: '3 %', '2,5%', '+3 pct'. () where the text is not one."""
    folded = fold(text).strip()
    for ending in ("%", "percent", "per cent", "prozent", "procent", "pct", "pour cent", "por ciento"):
        if folded.endswith(ending):
            return number_readings(folded[: -len(ending)].strip())
    return ()


def settled(readings: Iterable[NumberReading], sign: str | None) -> tuple[NumberReading, ...]:
    """The readings that agree with a decimal sign; all of them where the sign is not settled."""
    everything = tuple(readings)
    if sign is None:
        return everything
    return tuple(reading for reading in everything if reading.decimal_sign in ("", sign))


def settled_in_words(readings: Iterable[NumberReading], sign: str | None) -> tuple[NumberReading, ...]:
    """Those that agree with the sign of a file's figures, else all: 'Energiezuschlag 4,5 %' beside 1'345.00 is read as
    it is written, because whoever wrote the words need not write as his spreadsheet does."""
    everything = tuple(readings)
    return settled(everything, sign) or everything
