"""Prices of many offers brought per tonne and per MSF at once, as floats for tables, pictures and statistics.

The exact way of one offer is trade/footing.py; a test holds the two against each other. Factors come from trade/basis.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from tracker.desk.snapshot import Charges, Codes, Floats
from tracker.trade.basis import BY_AREA, BY_SHEET, BY_WEIGHT, Basis, BoardMeasure, area_of, mass_of
from tracker.trade.exact import KG_PER_TONNE, M2_PER_MSF

_ONE_M2_SHEET = BoardMeasure(sheet_mm=(1000, 1000))


@dataclass(frozen=True, slots=True)
class Measures:
    """What turns weight into area, aligned with what is converted: g/m² and m² a sheet, NaN where not known."""

    grammage_gsm: Floats
    sheet_m2: Floats

    def at(self, where: Codes) -> "Measures":
        """The same for the offers of these indices."""
        return Measures(self.grammage_gsm[where], self.sheet_m2[where])


@dataclass(frozen=True, slots=True)
class FootingColumns:
    """The four figures of trade.footing.Footing for every offer, NaN where one can't be known."""

    per_tonne: Floats
    per_msf: Floats
    delivered_per_tonne: Floats
    delivered_per_msf: Floats


def footing_columns(
    price: Floats, basis: Codes, delivered: Codes, board: Measures, charges: Charges, bases: Sequence[str]
) -> FootingColumns:
    """Both common bases of every price alone, and with its charges where delivered cost is really known."""
    kg, m2 = _kilograms(basis, board, bases), _square_metres(basis, board, bases)
    tonne, msf = price * (KG_PER_TONNE / kg), price * (float(M2_PER_MSF) / m2)
    reaches = delivered == 1
    reaches[charges.offer[charges.freight]] = True
    reaches[charges.offer[~charges.same_currency]] = False
    theirs = board.at(charges.offer)
    more_tonne = charges.price * (KG_PER_TONNE / _kilograms(charges.basis, theirs, bases))
    more_msf = charges.price * (float(M2_PER_MSF) / _square_metres(charges.basis, theirs, bases))
    return FootingColumns(
        tonne,
        msf,
        np.where(reaches, _with_charges(tonne, more_tonne, charges), np.nan),
        np.where(reaches, _with_charges(msf, more_msf, charges), np.nan),
    )


def _with_charges(price: Floats, added: Floats, charges: Charges) -> Floats:
    percent = charges.basis < 0
    added = np.where(percent, price[charges.offer] * charges.price / 100, added)
    total = price.copy()
    np.add.at(total, charges.offer, added)
    return total


def _kilograms(basis: Codes, board: Measures, bases: Sequence[str]) -> Floats:
    """Kilograms of board in one unit of the basis."""
    fixed = _by_code(bases, BY_WEIGHT, lambda unit: mass_of(unit, BoardMeasure()))[basis]
    return np.where(np.isnan(fixed), _area(basis, board, bases) * _some(board.grammage_gsm) / 1000, fixed)


def _square_metres(basis: Codes, board: Measures, bases: Sequence[str]) -> Floats:
    """Square metres of board in one unit of the basis."""
    fixed = _by_code(bases, BY_WEIGHT, lambda unit: mass_of(unit, BoardMeasure()))[basis]
    return np.where(np.isnan(fixed), _area(basis, board, bases), fixed * 1000 / _some(board.grammage_gsm))


def _area(basis: Codes, board: Measures, bases: Sequence[str]) -> Floats:
    fixed = _by_code(bases, BY_AREA, lambda unit: area_of(unit, BoardMeasure()))[basis]
    sheets = _by_code(bases, BY_SHEET, lambda unit: area_of(unit, _ONE_M2_SHEET))[basis]
    return np.where(np.isnan(fixed), sheets * _some(board.sheet_m2), fixed)


def _some(values: Floats) -> Floats:
    """A measure of nothing converts nothing."""
    return np.where(values > 0, values, np.nan)


def _by_code(bases: Sequence[str], family: frozenset[Basis], size: Callable[[Basis], object]) -> Floats:
    """A figure for each code, NaN for bases of another family; the last one is NaN too, for code -1."""
    figures = [float(size(Basis(name))) if Basis(name) in family else np.nan for name in bases]  # type: ignore[arg-type]
    return np.array([*figures, np.nan])
