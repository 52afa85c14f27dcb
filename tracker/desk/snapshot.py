"""All offers as columns: what tables and pictures draw from.

One array a column, one index an offer. Text that repeats (vendor, grade, currency, basis, file) is a code into a
list of names. Missing numbers are NaN, missing codes and days -1; days are proleptic ordinals (`date.toordinal`).
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Codes = NDArray[np.int32]
Days = NDArray[np.int32]
Flags = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Charges:
    """Charges of many offers, aligned: the offer's index, price, basis code (-1: per cent of the price), freight, and
    whether the charge is in the price's currency."""

    offer: Codes
    price: Floats
    basis: Codes
    freight: Flags
    same_currency: Flags


@dataclass(frozen=True, slots=True)
class Snapshot:
    """Every stored offer. All arrays and lists of per-offer values have the same length n.

    id: database id. vendor, grade, currency, basis, file: codes into vendors, grades, currencies, bases, files.
    product, as_quoted (for example '$1,240 /ST'), sheet, cell: lists of str. caliper_um in µm, grammage_gsm in g/m².
    per_tonne … delivered_per_msf: in the quoted currency, NaN where unknown. from_kg, below_kg, minimum_kg in kg,
    NaN open. lead_low, lead_high: calendar days, NaN unknown. delivered: 1 yes, 0 no, -1 not said. estimated: the
    grammage is an estimate.
    valid_at_latest: the last day by every reading of what the sheet says: valid_until itself where that is certain.
    superseded_by_day: the day a newer offer of the same vendor, board and bracket arrived (-1: none).
    board: code of what stays the same from sheet to sheet (vendor, board, bracket). sha256s: of the files, aligned with
    `files`. sheet_m2: the area of a sheet, NaN where none is quoted; charges: as quoted, by the offers' indices; both
    serve to bring prices to another weight. measured: the grammage was measured on a sample, not claimed.
    """

    id: NDArray[np.int64]
    vendor: Codes
    grade: Codes
    currency: Codes
    basis: Codes
    file: Codes
    coated_sides: Codes
    delivered: Codes
    caliper_um: Floats
    grammage_gsm: Floats
    estimated: Flags
    price: Floats
    per_tonne: Floats
    per_msf: Floats
    delivered_per_tonne: Floats
    delivered_per_msf: Floats
    from_kg: Floats
    below_kg: Floats
    minimum_kg: Floats
    lead_low: Floats
    lead_high: Floats
    valid_until: Days
    valid_at_latest: Days
    received: Days
    superseded_by_day: Days
    product: list[str]
    as_quoted: list[str]
    sheet: list[str]
    cell: list[str]
    vendors: list[str]
    grades: list[str]
    currencies: list[str]
    bases: list[str]
    files: list[str]
    board: Codes = field(default_factory=lambda: np.zeros(0, np.int32))
    sha256s: list[str] = field(default_factory=list)
    sheet_m2: Floats = field(default_factory=lambda: np.zeros(0))
    charges: Charges | None = None
    measured: Flags = field(default_factory=lambda: np.zeros(0, np.bool_))

    def __len__(self) -> int:
        return len(self.id)
