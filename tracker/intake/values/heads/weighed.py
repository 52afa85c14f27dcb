"""What a head says is weighed: board on an area, or a package of it."""

from functools import lru_cache

from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.orders.masses import find_mass_units, mass_units
from tracker.intake.values.prices.basis import basis_span, basis_text
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit, WeightUnit


@lru_cache(maxsize=4096)
def weighing_units(text: str) -> tuple[WeightUnit, ...]:
    """The units of basis weight in a head: none in 'Equivalent, per M sq ft', which says what a price is for, where
    'per MSF' by itself may stand below 'Weight (lb)'."""
    named = {match.value for match in phrases("weight_units").find(text)}
    on_area = named == {"area_msf"} and basis_span(text) is not None and basis_text(text) is None
    return () if on_area and not phrases("weight_words").find(text) else weight_units(text)


def weighs_a_package(text: str) -> bool:
    """'Skid wt lb', 'Poids par bobine' and 'kg/Rolle' tell how heavy something is, and 'Sheet weight g/m²' what board
    weighs on an area."""
    on_area = {match.value for match in phrases("weight_units").find(text)} - {"pound", "gram"}
    if on_area or any(map(str.isdigit, text)) or find_currencies(text):
        return False
    named = {match.value for match in phrases("packages").find(text)}
    masses = find_mass_units(text)
    weighs = any(match.value in (Role.WEIGHT, Role.PACKING) for match in phrases("headers").find(text))
    if not weighs and not _is_mass_per(text):
        return "weighed" in named
    return "any" in named or ("in_mass" in named and bool(masses)) or ("in_kilos" in named and MassUnit.KG in masses)


def _is_mass_per(text: str) -> bool:
    """'kg/Rolle', 'lb per roll': what one of something weighs."""
    unit, sign, _ = text.partition("/")
    before = unit if sign else text.partition(" ")[0]
    return mass_units(before) in ((MassUnit.KG,), (MassUnit.LB,)) and (bool(sign) or bool(phrases("per").find(text)))
