"""How a sample of board is measured: properties, their units and standards, from resources/methods.toml."""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import cache
from types import MappingProxyType

from tracker.trade.datafile import Entry, read_data_file
from tracker.trade.resources import resource
from tracker.trade.sourced import Provenance, SourceKind, provenance


@dataclass(frozen=True, slots=True)
class Tolerance:
    """How far from a claim a board may be: exactly one of per cent of the claim, or an absolute amount."""

    percent: Decimal | None
    absolute: Decimal | None
    source: Provenance

    def around(self, claim: Fraction) -> tuple[Fraction, Fraction]:
        """The lowest and highest value that still keeps the claim."""
        half = abs(claim) * Fraction(self.percent) / 100 if self.percent is not None else Fraction(self.absolute or 0)
        return claim - half, claim + half

    def __str__(self) -> str:
        return f"± {self.percent} %" if self.percent is not None else f"± {self.absolute}"


@dataclass(frozen=True, slots=True)
class Property:
    """One measured property. `units` holds the factor from each accepted unit to the kept one; `possible` is the range,
    in the kept unit, that any board lies in, where that tells units apart; `us_unit`, '' where it is the kept one."""

    key: str
    name: str
    unit: str
    units: Mapping[str, Fraction]
    methods: tuple[str, ...]
    least: int
    least_source: Provenance
    tolerance: Tolerance
    note: str
    possible: tuple[Decimal, Decimal] | None = None
    us_unit: str = ""

    def factor(self, unit: str) -> Fraction | None:
        """What a reading in this unit is multiplied by, None for a unit the property is not measured in."""
        wanted = _folded(unit or self.unit)
        if wanted == _folded(self.unit):
            return Fraction(1)
        return next((factor for name, factor in self.units.items() if _folded(name) == wanted), None)


@cache
def properties() -> Mapping[str, Property]:
    """All properties by key. WrongDataFile when the data file can't be used."""
    return MappingProxyType(
        {key: _property(key, entry) for key, entry in read_data_file(resource("methods.toml")).each()}
    )


def measured(words: str) -> Property | None:
    """The property a person names by key or name ('caliper', 'Basis weight'), None when there is no such one."""
    wanted = _folded(words)
    for found in properties().values():
        if wanted in (_folded(found.key), _folded(found.name)):
            return found
    return None


def _folded(words: str) -> str:
    plain = words.casefold().replace("µ", "u").replace("μ", "u").replace("²", "2").replace("·", ".")
    return plain.replace(" ", "").replace("_", "").replace("-", "")


def _property(key: str, entry: Entry) -> Property:
    entry.refuse_unknown(
        "name",
        "unit",
        "units",
        "methods",
        "least",
        "least_source",
        "least_reference",
        "tolerance",
        "note",
        "possible",
        "us",
    )
    units = entry.table("units")
    methods = entry.values.get("methods")
    if not isinstance(methods, list) or not methods or not all(isinstance(method, str) for method in methods):
        raise entry.complaint("methods", 'this should be a list of standards like ["ISO 534"]')
    return Property(
        key=key,
        name=entry.text("name"),
        unit=entry.text("unit"),
        units={name: _factor(units, name) for name in units.values},
        methods=tuple(methods),
        least=entry.integer("least"),
        least_source=Provenance(entry.member("least_source", SourceKind), entry.text("least_reference", "")),
        tolerance=_tolerance(entry.table("tolerance")),
        note=entry.text("note", ""),
        possible=_possible(entry.table("possible")) if "possible" in entry else None,
        us_unit=_us_unit(entry, units),
    )


def _us_unit(entry: Entry, units: Entry) -> str:
    said = entry.text("us", "")
    if said and said not in units.values:
        raise entry.complaint("us", "this should be one of the units above")
    return said


def _possible(entry: Entry) -> tuple[Decimal, Decimal]:
    entry.refuse_unknown("low", "high", "source")
    return entry.number("low"), entry.number("high")


def _factor(units: Entry, name: str) -> Fraction:
    try:
        factor = Fraction(units.text(name))
    except (ValueError, ZeroDivisionError):
        raise units.complaint(name, 'this should be a factor like "25.4" or "45359237/9290304"') from None
    if factor <= 0:
        raise units.complaint(name, "a factor is above 0")
    return factor


def _tolerance(entry: Entry) -> Tolerance:
    entry.refuse_unknown("percent", "absolute", "source", "reference")
    percent = entry.number("percent") if "percent" in entry else None
    absolute = entry.number("absolute") if "absolute" in entry else None
    if (percent is None) == (absolute is None):
        raise entry.complaint("percent", "give either percent or absolute")
    return Tolerance(percent, absolute, provenance(entry))
