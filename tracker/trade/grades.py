"""The six grades of folding-carton board, as resources/grades.toml describes them.

A grade's density by caliper turns a caliper into an estimated basis weight where a vendor quotes none; whatever
rests on it is marked an estimate.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from functools import cache
from itertools import pairwise
from pathlib import Path
from types import MappingProxyType

from tracker.trade.datafile import Entry, read_data_file
from tracker.trade.exact import UM_PER_POINT
from tracker.trade.quantities import Exact
from tracker.trade.resources import resource
from tracker.trade.sourced import Fact, Provenance, fact, facts, provenance

# No paperboard has a density outside these (g/cm³, the reading contract's own bounds).
LIGHTEST_BOARD = Fraction(45, 100)
DENSEST_BOARD = Fraction(125, 100)

_ONE_FACT = ("name", "pulp", "plies", "coating", "colour_front", "colour_back", "recycled_content")
_MANY_FACTS = ("other_names", "strengths", "weaknesses", "uses", "cautions")
_TABLES = ("calipers", "density", "layers")


class Stuff(StrEnum):
    """What a ply is made of, as the cross-section glyph draws it."""

    COAT = "coat"
    BLEACHED = "bleached"
    KRAFT = "kraft"
    GREY = "grey"
    MECHANICAL = "mechanical"


@dataclass(frozen=True, slots=True)
class Layer:
    """One ply or coat, from the printed side to the back; `part` is its share of the thickness (all add up to 1)."""

    stuff: Stuff
    part: Fraction


@dataclass(frozen=True, slots=True)
class DensityPoint:
    """Usual apparent density in g/cm³ at one caliper in µm."""

    caliper_um: Fraction
    low: Fraction
    typical: Fraction
    high: Fraction


@dataclass(frozen=True, slots=True)
class Grade:
    """What a grade is, what it is good for and what to beware of; every fact with its source."""

    code: str
    name: Fact
    other_names: tuple[Fact, ...]
    pulp: Fact
    plies: Fact
    coating: Fact
    coated_sides: int
    colour_front: Fact
    colour_back: Fact
    recycled_content: Fact
    strengths: tuple[Fact, ...]
    weaknesses: tuple[Fact, ...]
    uses: tuple[Fact, ...]
    cautions: tuple[Fact, ...]
    calipers_pt: tuple[Decimal, ...]
    calipers_source: Provenance
    densities: tuple[DensityPoint, ...]
    density_source: Provenance
    layers: tuple[Layer, ...]
    layers_source: Provenance


@dataclass(frozen=True, slots=True)
class Estimate:
    """A basis weight in g/m² judged from grade and caliper alone: never to be shown without saying so."""

    grammage_gsm: Decimal
    low: Decimal
    high: Decimal


@cache
def grades() -> Mapping[str, Grade]:
    """All grades by code, in the order of the file. WrongDataFile if the file can't be used."""
    return read_grades(resource("grades.toml"))


def grade(code: str) -> Grade:
    """One grade by its code ('SBS'). KeyError for a code that is not a grade's."""
    return grades()[code]


def grade_named(words: str) -> str | None:
    """The code of the one grade that a person names by its code or by a name of the trade: 'sbs', 'GC1', 'GD2'.

    None for words that name none, or several.
    """
    named = _folded(words)
    return _codes_by_name().get(named) or _codes_by_name().get(named.rstrip("0123456789"))


@cache
def _codes_by_name() -> Mapping[str, str | None]:
    """Every name, folded, with its grade's code; None where two grades share it."""
    found: dict[str, str | None] = {}
    for code, each in grades().items():
        for name in {_folded(text) for text in (code, each.name.says, *(other.says for other in each.other_names))}:
            found[name] = None if name in found else code
    return found


def _folded(words: str) -> str:
    return "".join(letter for letter in words.casefold() if letter.isalnum())


def estimate_grammage(grade_code: str, caliper_um: Exact) -> Estimate:
    """The basis weight that boards of this grade usually have at this caliper, to 0.1 g/m², with the usual range."""
    at = _density_at(grade(grade_code).densities, Fraction(caliper_um))
    low, typical, high = (_tenths(part * Fraction(caliper_um)) for part in (at.low, at.typical, at.high))
    return Estimate(typical, low, high)


def usual_density(grade_code: str, caliper_um: Exact) -> tuple[Fraction, Fraction]:
    """Lowest and highest usual density of the grade at the caliper, in g/cm³."""
    at = _density_at(grade(grade_code).densities, Fraction(caliper_um))
    return at.low, at.high


def plausible_density(g_per_cm3: Exact) -> bool:
    """Whether any paperboard could have this density: 0.45 to 1.25 g/cm³, ends included."""
    return LIGHTEST_BOARD <= Fraction(g_per_cm3) <= DENSEST_BOARD


def _density_at(points: Sequence[DensityPoint], caliper_um: Fraction) -> DensityPoint:
    """Straight between the two neighbouring points; beyond the table's ends the end's value holds."""
    if caliper_um <= points[0].caliper_um:
        return points[0]
    for thinner, thicker in pairwise(points):
        if caliper_um <= thicker.caliper_um:
            way = (caliper_um - thinner.caliper_um) / (thicker.caliper_um - thinner.caliper_um)
            return DensityPoint(
                caliper_um,
                thinner.low + way * (thicker.low - thinner.low),
                thinner.typical + way * (thicker.typical - thinner.typical),
                thinner.high + way * (thicker.high - thinner.high),
            )
    return points[-1]


def _tenths(gsm: Fraction) -> Decimal:
    return Decimal(round(gsm * 10)) / 10


def read_grades(path: Path) -> Mapping[str, Grade]:
    """A grades file by code. WrongDataFile, in one sentence with the key, for anything amiss."""
    return MappingProxyType({code: _read_grade(code, entry) for code, entry in read_data_file(path).each()})


def _read_grade(code: str, entry: Entry) -> Grade:
    entry.refuse_unknown(*_ONE_FACT, *_MANY_FACTS, *_TABLES)
    calipers, density, layers = (entry.table(key) for key in _TABLES)
    coating = entry.table("coating")
    coating.refuse_unknown("says", "sides", "source", "reference")
    calipers.refuse_unknown("points", "source", "reference")
    density.refuse_unknown("at", "source", "reference")
    layers.refuse_unknown("from_front", "source", "reference")
    return Grade(
        code=code,
        name=fact(entry, "name"),
        other_names=facts(entry, "other_names"),
        pulp=fact(entry, "pulp"),
        plies=fact(entry, "plies"),
        coating=Fact(coating.text("says"), provenance(coating)),
        coated_sides=_coated_sides(coating),
        colour_front=fact(entry, "colour_front"),
        colour_back=fact(entry, "colour_back"),
        recycled_content=fact(entry, "recycled_content"),
        strengths=facts(entry, "strengths"),
        weaknesses=facts(entry, "weaknesses"),
        uses=facts(entry, "uses"),
        cautions=facts(entry, "cautions"),
        calipers_pt=calipers.numbers("points"),
        calipers_source=provenance(calipers),
        densities=_read_densities(density),
        density_source=provenance(density),
        layers=_read_layers(layers),
        layers_source=provenance(layers),
    )


def _coated_sides(coating: Entry) -> int:
    sides = coating.integer("sides")
    if sides not in (0, 1, 2):
        raise coating.complaint("sides", "a board has 0, 1 or 2 coated sides")
    return sides


def _read_densities(density: Entry) -> tuple[DensityPoint, ...]:
    points = tuple(_read_density(row) for row in density.tables("at"))
    calipers = [point.caliper_um for point in points]
    if sorted(set(calipers)) != calipers:
        raise density.complaint("at", "the calipers must rise from row to row")
    return points


def _read_density(row: Entry) -> DensityPoint:
    row.refuse_unknown("pt", "low", "typical", "high")
    caliper = Fraction(row.number("pt")) * UM_PER_POINT
    low, typical, high = (Fraction(row.number(key)) for key in ("low", "typical", "high"))
    if caliper <= 0 or not LIGHTEST_BOARD <= low <= typical <= high <= DENSEST_BOARD:
        raise row.complaint("typical", "densities must rise from low to high and lie between 0.45 and 1.25 g/cm³")
    return DensityPoint(caliper, low, typical, high)


def _read_layers(layers: Entry) -> tuple[Layer, ...]:
    rows = layers.tables("from_front")
    for row in rows:
        row.refuse_unknown("stuff", "part")
    parts = [Fraction(row.number("part")) for row in rows]
    if min(parts) <= 0:
        raise layers.complaint("from_front", "every layer needs a part above 0")
    return tuple(Layer(row.member("stuff", Stuff), part / sum(parts)) for row, part in zip(rows, parts, strict=True))
