"""A layout marked by hand: where a vendor's sheet has its table, and what each of its columns holds.

It is made for one sheet that could not be understood, and serves the vendor's next sheets as long as their header row
says the same words in the same columns. Rows and columns count from 0.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from tracker.trade.basis import Basis

LAYOUT_SAID = "the layout you marked"
"""Where evidence stands that no cell gives but the person who marked the layout."""

NOT_USED = ""
"""The role of a column that holds nothing of an offer."""


@dataclass(frozen=True, slots=True)
class MarkedRole:
    """What a column may be named: the reader's `role`, the words shown, the units (code, words) it may be in."""

    role: str
    words: str
    units: tuple[tuple[str, str], ...] = ()


_MASSES = (("lb", "in lb"), ("kg", "in kg"), ("short_ton", "in short tons"), ("tonne", "in tonnes"))
_BASES = (
    (Basis.SHORT_TON.value, "per short ton"),
    (Basis.TONNE.value, "per tonne"),
    (Basis.CWT.value, "per cwt (100 lb)"),
    (Basis.LB.value, "per lb"),
    (Basis.KG.value, "per kg"),
    (Basis.MSF.value, "per 1,000 ft²"),
    (Basis.M2.value, "per m²"),
    (Basis.THOUSAND_M2.value, "per 1,000 m²"),
    (Basis.THOUSAND_SHEETS.value, "per 1,000 sheets"),
    (Basis.SHEET.value, "per sheet"),
)
MARKED_ROLES: tuple[MarkedRole, ...] = (
    MarkedRole("product", "Board"),
    MarkedRole("grade", "Grade"),
    MarkedRole("coating", "Coating"),
    MarkedRole("caliper", "Caliper", (("pt", "in points"), ("in", "in inches"), ("mm", "in mm"), ("um", "in µm"))),
    MarkedRole(
        "weight",
        "Basis weight",
        (("lb/MSF", "in lb on 1,000 ft²"), ("lb/3000ft2", "in lb on 3,000 ft²"), ("g/m2", "in g/m²")),
    ),
    MarkedRole("price", "Price", _BASES),
    MarkedRole("currency", "Currency"),
    MarkedRole("basis", "What the price is per"),
    MarkedRole("sheet_size", "Sheet size", (("mm", "in mm"), ("cm", "in cm"), ("in", "in inches"))),
    MarkedRole("bracket", "Order size", _MASSES),
    MarkedRole("from_quantity", "Order size from", _MASSES),
    MarkedRole("below_quantity", "Order size below", _MASSES),
    MarkedRole("minimum", "Smallest order", _MASSES),
    MarkedRole(
        "lead_time", "Lead time", (("day", "in days"), ("working_day", "in working days"), ("week", "in weeks"))
    ),
    MarkedRole("validity", "Valid until"),
    MarkedRole("delivery_terms", "Delivery terms"),
    MarkedRole("freight", "Freight"),
    MarkedRole("energy", "Energy surcharge"),
    MarkedRole("charge", "Other charge"),
    MarkedRole("item", "Item number"),
    MarkedRole("remarks", "Remarks"),
    MarkedRole(NOT_USED, "Not used"),
)
_BY_ROLE: Mapping[str, MarkedRole] = {marked.role: marked for marked in MARKED_ROLES}


@dataclass(frozen=True, slots=True)
class MarkedColumn:
    """One named column: `role` and `unit` as MARKED_ROLES has them ('' where the sheet itself says the unit)."""

    index: int
    role: str
    unit: str = ""

    @property
    def words(self) -> str:
        """'Price, per short ton'."""
        known = _BY_ROLE[self.role]
        unit = dict(known.units).get(self.unit, "")
        return f"{known.words}, {unit}" if unit else known.words


@dataclass(frozen=True, slots=True)
class Layout:
    """A table marked by hand in the file with `of_file` (its sha256).

    `heads`: every text of the header row by column, which is what the next sheet is known by; empty where the sheet
    has no header row, and then it serves that one file. `last_row` None: down to the sheet's end. `end_words`: the
    first text below the last row, where the table of the next sheet ends. `currency` and `grade`: what the user says
    of the whole table; the sheet's own words come before them and a contradiction is asked.
    """

    sheet: str
    of_file: str
    columns: tuple[MarkedColumn, ...]
    first_row: int
    header_row: int | None = None
    last_row: int | None = None
    heads: tuple[tuple[int, str], ...] = ()
    end_words: str = ""
    currency: str | None = None
    grade: str | None = None
    marked_on: date | None = None

    @property
    def serves_others(self) -> bool:
        """Whether other files can be known by it: two words in the header row are the least to go by."""
        return self.header_row is not None and len(self.heads) >= 2


def layout_to_plain(layout: Layout) -> dict[str, Any]:
    """The layout as JSON can keep it."""
    return {
        "sheet": layout.sheet,
        "of_file": layout.of_file,
        "columns": [[column.index, column.role, column.unit] for column in layout.columns],
        "first_row": layout.first_row,
        "header_row": layout.header_row,
        "last_row": layout.last_row,
        "heads": [list(head) for head in layout.heads],
        "end_words": layout.end_words,
        "currency": layout.currency,
        "grade": layout.grade,
        "marked_on": layout.marked_on.isoformat() if layout.marked_on else None,
    }


def layout_from_plain(plain: Mapping[str, Any]) -> Layout:
    """What layout_to_plain wrote."""
    return Layout(
        plain["sheet"],
        plain["of_file"],
        tuple(MarkedColumn(int(index), role, unit) for index, role, unit in plain["columns"]),
        plain["first_row"],
        plain["header_row"],
        plain["last_row"],
        tuple((int(column), text) for column, text in plain["heads"]),
        plain["end_words"],
        plain["currency"],
        plain["grade"],
        date.fromisoformat(plain["marked_on"]) if plain["marked_on"] else None,
    )
