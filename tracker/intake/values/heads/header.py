"""What a header says its column holds, and the units, currency and basis it carries.

'Price\\n(US$/ST)', 'BW lb/MSF'.
"""

import re
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.boards.caliper import CaliperReading, caliper_unit, find_calipers
from tracker.intake.values.boards.grade import GradeReading, find_grade
from tracker.intake.values.boards.reams import Ream, ream_of
from tracker.intake.values.boards.weight import WeightReading, find_weights
from tracker.intake.values.figures.sheetsize import LengthUnit, SheetSize, find_sheet_sizes, length_unit
from tracker.intake.values.freight.delivery import Delivery, find_delivery
from tracker.intake.values.heads.before_charges import of_prices_before_charges
from tracker.intake.values.heads.counted import without_count
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import MEASURES, PRICES, Role, RoleReading
from tracker.intake.values.heads.sizes_delivered import size_beside_delivery
from tracker.intake.values.heads.technical_units import is_technical_unit
from tracker.intake.values.heads.weighed import weighing_units, weighs_a_package
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.loads import load_at_end
from tracker.intake.values.orders.masses import find_mass_units
from tracker.intake.values.prices.basis import BasisReading, basis_span, basis_text
from tracker.intake.values.prices.currency import CurrencyReading, find_currencies
from tracker.intake.values.prices.money import find_price_unit, price_unit
from tracker.intake.values.prices.pounds_of_money import with_pounds_as_money
from tracker.intake.values.prices.several_bases import bases_side_by_side, one_of
from tracker.intake.values.times.lead import LeadUnit, lead_unit
from tracker.intake.words.likeness import near_miss
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import CaliperUnit, MassUnit, WeightUnit


@dataclass(frozen=True, slots=True)
class Header:
    """All that one header text says.

    `calipers`, `weights`, `sheet_sizes`, `bracket`, `grade`: the header is itself a value of a
    cross-tab ('18 pt', '< 5 t').
    """

    text: str
    roles: tuple[RoleReading, ...]
    currency: CurrencyReading | None = None
    basis: BasisReading | None = None
    caliper_unit: CaliperUnit | None = None
    weight_units: tuple[WeightUnit, ...] = ()
    mass_units: tuple[MassUnit, ...] = ()
    lead_unit: LeadUnit | None = None
    length_unit: LengthUnit | None = None
    percent: bool = False
    delivery: Delivery | None = None
    bracket: Bracket | None = None
    grade: GradeReading | None = None
    calipers: tuple[CaliperReading, ...] = ()
    weights: tuple[WeightReading, ...] = ()
    sheet_sizes: tuple[SheetSize, ...] = ()
    ream: Ream | None = None

    @property
    def role(self) -> Role | None:
        """The strongest role, or None."""
        return self.roles[0].role if self.roles else None

    def strength(self, role: Role) -> float:
        return next((reading.strength for reading in self.roles if reading.role is role), 0.0)


_USUAL_REAM = 3
"""1,000 ft² in 500 sheets of 24 x 36 in."""


_OWN_FIELD = re.compile(r"(?:ZZ|YY|Z_|Y_|U_|X_)_?(?P<name>[A-ZÄÖÜ][A-ZÄÖÜ_]{3,})")
"""'ZZGRAMM', 'U_CALIPER': a field that a firm added to its own system, before whose name the system wants a sign."""


@lru_cache(maxsize=8192)
def header(text: str) -> Header:
    """All roles of a header text, the strongest first, with every unit it carries. An unknown text has no roles."""
    own_field = _OWN_FIELD.fullmatch(text.strip())
    name = own_field["name"] if own_field is not None else without_count(text)
    if name != text and header(name).roles:
        return replace(header(name), text=text)
    unit = find_price_unit(with_pounds_as_money(text) if phrases("price_words").find(text) else text)
    currency = unit.currency if unit is not None else None
    basis = one_of(bases_side_by_side(text)) or (unit.basis if unit is not None else None)
    weights = (weighing_units(text) or _metric_by_its_word(text)) if currency is None else ()
    ream = ream_of(text)
    if ream is not None and len(weights) != 1:
        weights = (WeightUnit.LB_3000FT2,) if ream.msf == _USUAL_REAM else ()
    roles = of_prices_before_charges(header_roles(text), text)
    by_pallet = _size_of_pallets(text, basis) if currency is None else None
    delivery = find_delivery(text)
    bracket = by_pallet or _size_of_a_form(text) or bracket_text(text) or size_beside_delivery(text, delivery)
    if bracket is not None and _counts_what_one_holds(bracket):
        bracket = None
    if bracket is not None and not bracket.alone:
        # 'Moins de 5 t' is an order size, though 'moins' is a letter off the 'main' of a sheet, its bulk.
        roles = tuple(reading for reading in roles if reading.role is not Role.PROPERTY)
    if _names_tolerance(text):
        roles = tuple(reading for reading in roles if reading.role not in MEASURES)
    measured = not (roles and roles[0].role in (Role.PROPERTY, Role.YIELD)) and not weighs_a_package(text)
    measured = measured and not _names_tolerance(text)
    by_load = bracket is not None and (bracket.not_weight in VEHICLES or load_at_end(text) is not None)
    by_load = by_load or (currency is None and _names_pallets(text, bracket))
    ordered = by_pallet is not None or by_load
    if (roles and roles[0].role is Role.YIELD) or is_technical_unit(text):
        # The 'ft' of 'linear ft per roll' is no forint, nor is the roll what a price is per or an order size.
        currency = basis = bracket = None
    return Header(
        text=text,
        roles=roles,
        currency=currency,
        # A truckload over a column is an order size, not what its price is per.
        basis=None if ordered or _names_form(text, basis) or _names_no_basis(text, roles, weights) else basis,
        # 'Bulk cm³/g' and 'Roughness µm' measure something else.
        caliper_unit=caliper_unit(text) if measured else None,
        weight_units=weights if measured else (),
        mass_units=find_mass_units(text),
        lead_unit=lead_unit(text),
        length_unit=length_unit(text),
        percent="%" in text or bool(phrases("percent").find(text)),
        delivery=delivery,
        bracket=bracket,
        grade=find_grade(text),
        # '.001 in' over 16 and 18 is their unit.
        calipers=() if phrases("caliper_units").whole(text) else find_calipers(text),
        weights=find_weights(text),
        sheet_sizes=find_sheet_sizes(text) if ream is None else (),
        ream=ream,
    )


def _names_tolerance(text: str) -> bool:
    """'Toleranz g/m² %'; 'g/m² (tolerance ±4 %)' is a weight, with how far it may be off."""
    shares = "%" in text and re.search(r"(?<![a-z])[0-9]", text) is None
    return shares and bool(phrases("tolerances").find(text))


def _counts_what_one_holds(bracket: Bracket) -> bool:
    """'Bg/Pal' and 'shts/plt' tell how board is packed, and not how many sheets are ordered."""
    return bracket.not_weight == "sheets" and "/" in bracket.words and not any(map(str.isdigit, bracket.words))


def without_unit(head: Header) -> str:
    """Its text without the currency and the unit of its prices: the t of 'Port €/t' is the unit, and no letter of the
    word before it."""
    rest = head.text
    for said in (head.currency, head.basis):
        if said is not None:
            rest = re.sub(rf"(?<!\w){re.escape(said.words)}(?!\w)", " ", rest, count=1)
    return rest


_IN_BRACKETS = re.compile(r"\(([^()]*)\)")


def _size_of_pallets(text: str, basis: BasisReading | None) -> Bracket | None:
    """'Par palette (dès 500 kg)', with no money beside it, is how much is ordered, and not what a price is per."""
    inside = _IN_BRACKETS.search(text) if basis is not None and basis.foreign == "pallet" else None
    said = bracket_text(inside[1]) if inside is not None else None
    return said if said is not None and not said.not_weight and not said.alone else None


_FORM_FIRST = re.compile(r"(?P<form>[^\W\d_]+)(?:\s*[,:;]|\s[-–])?\s+(?P<size>.*\d.*)")


def _size_of_a_form(text: str) -> Bracket | None:
    """The '10,000 lb' of 'Rolls, 10,000 lb': rolls are what the board comes in, and are not counted."""
    parts = _FORM_FIRST.fullmatch(text.strip())
    named = parts is not None and phrases("forms").whole(parts["form"]) is not None
    size = bracket_text(parts["size"]) if parts is not None and named else None
    return size if size is not None and not size.not_weight else None


def _names_pallets(text: str, bracket: Bracket | None) -> bool:
    """'Pris pall' and 'Pallet price', which no 'per' or '/' parts: prices of what is ordered by the pallet."""
    named = bracket is not None and bracket.not_weight == "pallet" and bracket.start is None and bracket.end is None
    return named and bool(phrases("price_words").find(text)) and basis_span(text) is None


def _names_form(text: str, basis: BasisReading | None) -> bool:
    """'Reels' and 'Price, reels' say in what form the board comes; 'Price per reel' what it is priced by."""
    return basis is not None and phrases("forms").whole(basis.words) is not None and basis_span(text) is None


def _metric_by_its_word(text: str) -> tuple[WeightUnit, ...]:
    """'Gramaje' is in g/m², also where no unit stands beside it and a letter is missing ('Gramage')."""
    named = phrases("metric_weight").find(text) or near_miss(text, "metric_weight")
    return (WeightUnit.GSM,) if named else ()


def _names_no_basis(text: str, roles: tuple[RoleReading, ...], weights: tuple[WeightUnit, ...]) -> bool:
    """The area in 'lb/MSF' is not what a price is per, though 'MSF' by itself may be; nor is the M of 'U/M'."""
    asks_for_unit = bool(roles) and roles[0].role is Role.BASIS
    placed = bool(roles) and (roles[0].role is Role.DESTINATION or leads_to_places(text))
    if placed and basis_span(text) is None and not find_currencies(text):
        return True
    if find_currencies(text) and (unit := price_unit(text)) is not None and unit.basis is not None:
        # '$ each' is a unit, where 'each' alone heads a column of units.
        return False
    if roles and roles[0].role in PRICES and roles[0].strength >= 0.9 and basis_span(text) is not None:
        # 'Price per 100 lb'.
        return False
    return asks_for_unit or (bool(weights) and basis_text(text) is None)


def leads_to_places(text: str) -> bool:
    """'Delivered, freight prepaid, to', though 'to' alone is a ton in German."""
    return text.rstrip(" :").casefold().endswith(" to") and find_delivery(text) is not None
