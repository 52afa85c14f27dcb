"""What a price is per, and how it becomes a price per tonne and per 1,000 ft².

Every basis is either a mass of board or an area of it. Between the two stands the grammage; for bases counted in
sheets the sheet's size gives the area.
"""

from enum import StrEnum
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from tracker.trade.exact import KG_PER_CWT, KG_PER_LB, KG_PER_SHORT_TON, KG_PER_TONNE, M2_PER_MSF
from tracker.trade.quantities import Exact


class Basis(StrEnum):
    SHORT_TON = "short_ton"
    TONNE = "tonne"
    CWT = "cwt"
    LB = "lb"
    KG = "kg"
    MSF = "msf"
    M2 = "m2"
    THOUSAND_M2 = "1000m2"
    THOUSAND_SHEETS = "1000sheets"
    SHEET = "sheet"

    # A basis is part of every key that sizes are remembered by, and an Enum's own hash is a Python function.
    __hash__ = str.__hash__


_KG: dict[Basis, Fraction] = {
    Basis.SHORT_TON: KG_PER_SHORT_TON,
    Basis.TONNE: Fraction(KG_PER_TONNE),
    Basis.CWT: KG_PER_CWT,
    Basis.LB: KG_PER_LB,
    Basis.KG: Fraction(1),
}
_M2: dict[Basis, Fraction] = {Basis.MSF: M2_PER_MSF, Basis.M2: Fraction(1), Basis.THOUSAND_M2: Fraction(1000)}
_SHEETS: dict[Basis, int] = {Basis.THOUSAND_SHEETS: 1000, Basis.SHEET: 1}

BY_WEIGHT = frozenset(_KG)
IN_POUNDS_AND_FEET = frozenset({Basis.SHORT_TON, Basis.CWT, Basis.LB, Basis.MSF})
BY_AREA = frozenset(_M2)
BY_SHEET = frozenset(_SHEETS)


class BoardMeasure(NamedTuple):
    """What turns a weight of board into an area: grammage in g/m² and the sheet's two sides in mm, where known.

    A tuple, because sizes are remembered by it and a dataclass hashes and compares many times as slowly.
    """

    grammage_gsm: Exact | None = None
    sheet_mm: tuple[Exact, Exact] | None = None


def per_tonne(price: Exact, basis: Basis, board: BoardMeasure) -> Fraction | None:
    """The price of 1,000 kg, or None where grammage or sheet size that it needs is not known."""
    units = units_in_a_tonne(basis, board)
    return None if units is None else Fraction(price) * units


def per_msf(price: Exact, basis: Basis, board: BoardMeasure) -> Fraction | None:
    """The price of 1,000 ft², or None where grammage or sheet size that it needs is not known."""
    units = units_in_an_msf(basis, board)
    return None if units is None else Fraction(price) * units


# A sheet of 20,000 rows has a few hundred boards: their sizes are remembered, exact as they are.
@lru_cache(4096)
def units_in_a_tonne(basis: Basis, board: BoardMeasure) -> Fraction | None:
    """How many units of the basis 1,000 kg are: what a price is multiplied by."""
    mass = mass_of(basis, board)
    return None if mass is None else KG_PER_TONNE / mass


@lru_cache(4096)
def units_in_an_msf(basis: Basis, board: BoardMeasure) -> Fraction | None:
    """How many units of the basis 1,000 ft² are."""
    area = area_of(basis, board)
    return None if area is None else M2_PER_MSF / area


@lru_cache(4096)
def mass_of(basis: Basis, board: BoardMeasure) -> Fraction | None:
    """Kilograms of board in one unit of the basis."""
    if basis in _KG:
        return _KG[basis]
    area = area_of(basis, board)
    if area is None or not board.grammage_gsm:
        return None
    return area * Fraction(board.grammage_gsm) / 1000


@lru_cache(4096)
def area_of(basis: Basis, board: BoardMeasure) -> Fraction | None:
    """Square metres of board in one unit of the basis."""
    if basis in _M2:
        return _M2[basis]
    if basis in _SHEETS:
        return None if board.sheet_mm is None else _SHEETS[basis] * sheet_area(board.sheet_mm)
    return None if not board.grammage_gsm else _KG[basis] * 1000 / Fraction(board.grammage_gsm)


def sheet_area(sheet_mm: tuple[Exact, Exact]) -> Fraction:
    """Square metres of one sheet given in mm."""
    width, length = sheet_mm
    return Fraction(width) * Fraction(length) / 1_000_000
