"""Weights of board: order sizes and minimums. The number and the unit may each have two readings."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache

from tracker.intake.values.figures.numbers import SPACED_NUMBER, NumberReading, number_readings, settled_in_words
from tracker.intake.values.prices.basis import hints_at_tonne
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import pattern, phrases
from tracker.trade.quantities import MassUnit, kilograms

MASS_UNITS = {
    "short_ton": (MassUnit.SHORT_TON,),
    "tonne": (MassUnit.TONNE,),
    "ton": (MassUnit.SHORT_TON, MassUnit.TONNE),
    "long_ton": (MassUnit.LONG_TON,),
    "cwt": (MassUnit.CWT,),
    "lb": (MassUnit.LB,),
    "kg": (MassUnit.KG,),
}
"""The units of weight among the words for what a price is per."""
TONS = (MassUnit.SHORT_TON, MassUnit.TONNE)
"""What 'ton' may be."""
# No order for board is as small as a pallet's corner or as large as a ship: '20.000 kg' is never twenty kilograms.
# Common practice, no source; used only to choose between two readings of one written number.
_SMALLEST_KG, _LARGEST_KG = 50, 2_000_000


@dataclass(frozen=True, slots=True)
class Mass:
    """A weight as written: every reading of its number, every unit it may be in."""

    amounts: tuple[NumberReading, ...]
    units: tuple[MassUnit, ...]
    words: str = ""
    metric_hint: bool = False

    def kg(self, ton: MassUnit | None = None, sign: str | None = None) -> Decimal | None:
        """The weight in kg once the file's ton and decimal sign are known; None while more than one reading is left.

        None too where the file's decimal sign would make '20,000 lb' nine kilograms: then this figure is written in
        another way than the file's others.
        """
        left = self._in_kg(settled_in_words(self.amounts, sign), ton)
        if len(left) > 1:
            return _only(_usual(left))
        otherwise = self._in_kg(self.amounts, ton) - left
        return None if max(left, default=_SMALLEST_KG) < _SMALLEST_KG and _usual(otherwise) else _only(left)

    def _in_kg(self, amounts: Iterable[NumberReading], ton: MassUnit | None) -> set[Fraction]:
        return {kilograms(amount.value, unit) for amount in amounts for unit in self._units(ton)}

    def _units(self, ton: MassUnit | None) -> tuple[MassUnit, ...]:
        return (ton,) if ton is not None and ton in self.units and len(self.units) > 1 else self.units

    def times(self, count: "Mass") -> "Mass":
        """So many of this weight: '2' truckloads of 40,000 lb."""
        one = tuple(amount for amount in self.amounts if self._orders(amount)) or self.amounts
        amounts = tuple(
            NumberReading(amount.value * many.value, amount.decimal_sign) for amount in one for many in count.amounts
        )
        return Mass(amounts, self.units, self.words, self.metric_hint)

    def _orders(self, amount: NumberReading) -> bool:
        return any(_SMALLEST_KG <= kilograms(amount.value, unit) <= _LARGEST_KG for unit in self.units)

    @property
    def ambiguous_ton(self) -> bool:
        return len(self.units) > 1


def alike(one: Mass | None, other: Mass | None) -> bool:
    """Of one weight in every way that they may be read, '10 000 lb' and '10,000 lb', or neither said."""
    if one is None or other is None:
        return one is other
    if (one.amounts, one.units) == (other.amounts, other.units):
        return True
    tons = TONS if one.ambiguous_ton and other.ambiguous_ton else (None,)
    said = [(one.kg(ton), other.kg(ton)) for ton in tons]
    return all(kg is not None and again is not None and abs(kg - again) <= kg / 100 for kg, again in said)


def _usual(masses: set[Fraction]) -> set[Fraction]:
    return {mass for mass in masses if _SMALLEST_KG <= mass <= _LARGEST_KG}


def _only(masses: set[Fraction]) -> Decimal | None:
    return _decimal(next(iter(masses))) if len(masses) == 1 else None


def _decimal(mass: Fraction) -> Decimal:
    """Exact, because every unit of mass is a finite decimal number of kg."""
    return Decimal(mass.numerator) / Decimal(mass.denominator)


def mass_units(text: str) -> tuple[MassUnit, ...]:
    """The units of weight that a text which is only a unit may name: 'lb', '(kg)', 'tons' -> two."""
    key = phrases("basis").whole(text)
    return MASS_UNITS.get(key, ()) if key is not None else ()


def find_mass_units(text: str) -> tuple[MassUnit, ...]:
    """The units of weight that a header names, where it names just one kind: 'Min. order (lb)'."""
    found = [
        match
        for match in phrases("basis").find(text)
        if match.value in MASS_UNITS and not _is_of_a_limit(text, match.start, match.end)
    ]
    if len(found) > 1:
        # 'To kg' beside 'From kg', and 'Lb to'.
        found = [match for match in found if text[match.start : match.end].casefold() != "to"]
    keys = {match.value for match in found}
    if len(keys) != 1:
        return ()
    key = keys.pop()
    counted = _IN_THOUSANDS.search(text[: found[0].start])
    return _THOUSANDS_OF.get(key, ()) if counted is not None else MASS_UNITS[key]


_IN_THOUSANDS = re.compile(
    rf"(?:\b{pattern('in_thousands', 'any')}|['’]0{{3}}s?|\(0{{3}}s?\)?|(?<![\d.,])0{{3}}s?|\bM)\s*$", re.IGNORECASE
)
"""'Order size in thousands of lb', "'000 lb", 'M pounds': what the figures below count; 'M lb' is not read yet."""
_THOUSANDS_OF = {"lb": (MassUnit.THOUSAND_LB,), "kg": (MassUnit.TONNE,)}


def _is_of_a_limit(text: str, start: int, end: int) -> bool:
    """The Swedish 't.o.m.' ('up to') begins with no tonne."""
    limits = (word for word in phrases("bracket").find(text) if word.start <= start and end <= word.end)
    longer = any(word.value == "up_to" and text[word.start : word.end] != text[start:end] for word in limits)
    return longer or _is_english_to(text, start, end)


def _is_english_to(text: str, start: int, end: int) -> bool:
    """'up to (kg)' and '20,000 to 39,999': the English word, not the German ton."""
    longer = any(word.start < start and word.end == end for word in phrases("bracket").find(text))
    return longer or RANGE_TO.match(text[start:]) is not None


_NUMBER = re.compile(SPACED_NUMBER)
# '5,000 to 20,000 lb' and '5,000 to under 20,000 lb': the English word, not the German ton.
RANGE_TO = re.compile(r"\s*to\b\W*(?:(?:under|below|less than|not over)\b\W*)?\d", re.IGNORECASE)


@lru_cache(maxsize=16384)
def mass_text(text: str, units: tuple[MassUnit, ...] = ()) -> Mass | None:
    """A weight and nothing else: '5 t', '20,000 lb'. A bare number takes the units that its header names."""
    folded = fold(text).strip()
    match = _NUMBER.match(folded)
    if match is None:
        return None
    rest = folded[match.end() :].strip()
    thousand = _THOUSAND.match(rest) or (_BARE_THOUSAND.match(rest) if units else None)
    if thousand is not None:
        rest = rest[thousand.end() :]
    own = mass_units(rest) if rest else units
    if not own:
        return None
    amounts = number_readings(match.group())
    if thousand is not None:
        amounts = tuple(NumberReading(amount.value * 1000, amount.decimal_sign) for amount in amounts)
    return Mass(amounts, own, text.strip(), hints_at_tonne(text.strip()[-len(rest) :])) if amounts else None


POUNDS = r"(?:lbs?\b|pounds?\b|#(?!\w))"
_THOUSAND = re.compile(rf"\s?(?:[mk]\s?(?={POUNDS})|k\s?(?=kg\b))")
"""The M of '40M lb', the k of '5k kg'; the M of '5 m tons' is none."""
_BARE_THOUSAND = re.compile(r"[mk]$")
"""The M of '40M' below pounds."""


@lru_cache(maxsize=4096)
def find_masses(text: str) -> tuple[Mass, ...]:
    """Every weight in a sentence that has its unit beside it."""
    folded = fold(text)
    found: list[Mass] = []
    for match in _NUMBER.finditer(folded):
        if RANGE_TO.match(folded[match.end() :]):
            continue
        end = end_of_unit(folded, match.end())
        mass = mass_text(text[match.start() : end]) if end is not None else None
        if end is not None and mass is not None and not _part_of_more(folded, match.start(), end):
            found.append(mass)
    return tuple(found)


_LONGEST_UNIT = 30


def end_of_unit(folded: str, place: int) -> int | None:
    """Where the unit of weight ends that stands behind a number, with its thousand: the 'M lb' of '40M lb'."""
    thousand = _THOUSAND.match(folded, place)
    start = place if thousand is None else thousand.end()
    ahead = folded[start : start + _LONGEST_UNIT]
    found = tokens(ahead)
    unit = phrases("basis").at(found, 0) if found else None
    if unit is None or unit.value not in MASS_UNITS or ahead[: unit.start].strip():
        return None
    return start + unit.end


_QUARTER = re.compile(r"(?<!\w)[1-4]t[\s/-]*20\d\d(?!\d)", re.IGNORECASE)


def without_quarters(text: str) -> str:
    """The 'Precio' of 'Precio 1T 2026', which is that of a first quarter and no order of a ton up to 2,026 of them."""
    return " ".join(_QUARTER.sub(" ", text).split()) if _QUARTER.search(text) else text


def _part_of_more(folded: str, start: int, end: int) -> bool:
    """'75 lb/MSF' and 'USD 5/t' are no weights of an order, and '2T 2026' is a quarter in Spain and France."""
    return (
        _QUARTER.match(folded, start) is not None
        or folded[end : end + 1] in ("/", "²")
        or folded[:start].rstrip()[-1:] in ("/",)
    )
