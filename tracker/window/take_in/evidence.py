"""What said each field of a line, in words, and the cells it stands in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from tracker.trade.offer import Evidence, Line, Offer, Source
from tracker.trade.quoted import basis_sign
from tracker.window.look import figures
from tracker.window.look.figures import Units, date_text
from tracker.window.take_in.cells import place_of

_FIELD_WORDS = {
    "price": "Price", "vendor": "Vendor", "product": "Board", "grade": "Grade", "coated_sides": "Coating",
    "caliper_um": "Caliper", "grammage_gsm": "Basis weight", "currency": "Currency", "basis": "Price is per",
    "sheet_mm": "Sheet size", "from_kg": "Order size", "below_kg": "Order size", "minimum_kg": "Smallest order",
    "lead_days": "Lead time", "valid_until": "Valid until", "delivered": "Delivery", "charges": "Charge",
    "received": "Dated", "comment": "Comment", "layout": "Read by", "indicative": "Indicative",
    "also": "Same price as",
}  # fmt: skip
_LONGEST = 90
_ANSWERED = "your answer"
_OF_TWO_CELLS = (_FIELD_WORDS["caliper_um"], _FIELD_WORDS["grammage_gsm"])
_FIRST_TOLD = ("price", "also", "currency", "basis", "charges", "delivered", "product")
"""What makes the price, then which board: a list that is cut short ends in what matters less."""


@dataclass(frozen=True, slots=True)
class Said:
    """One row of what said so: the field, where (a cell, or words such as 'your answer'), what stands there, and what
    it was taken for ('' where that is plain)."""

    field: str
    where: str
    words: str
    against: str = ""
    meant: str = ""


def what_said(line: Line, units: Units = Units.US) -> tuple[Said, ...]:
    """The price's own cell first, then what makes the price, then each field in the order it was read."""
    source = line.offer.source
    price = Said(_FIELD_WORDS["price"], source.cell, source.as_written)
    said = said_by(sorted(line.evidence, key=_place))
    # What a person settled the answer made what it is, and not the cell that left it open.
    answered = {each.field for each in said if each.where == _ANSWERED}
    open_left = {each for each in said if each.field in answered and each.where != _ANSWERED}
    # A bare figure and the head that gives its unit are one thing said by two cells.
    last = {each.field: each for each in said}
    open_left |= {each for each in said if each.field in _OF_TWO_CELLS and each is not last[each.field]}
    told = (replace(each, meant="" if each in open_left else _meant(each.field, line.offer, units)) for each in said)
    return (price, *told)


def _meant(field: str, offer: Offer, units: Units) -> str:
    """What a field was taken for, where that is not plain from the words: a wrong reading is what one looks for."""
    if field == _FIELD_WORDS["caliper_um"] and offer.caliper_um is not None:
        return figures.caliper(offer.caliper_um, units)
    if field == _FIELD_WORDS["grammage_gsm"] and offer.grammage_gsm is not None:
        return f"{figures.weight(float(offer.grammage_gsm), units)} {figures.weight_unit(units)}"
    if field == _FIELD_WORDS["grade"]:
        return offer.grade or ""
    if field == _FIELD_WORDS["valid_until"] and offer.valid_until is not None:
        return date_text(offer.valid_until)
    if field == _FIELD_WORDS["lead_days"] and offer.lead_days is not None:
        low, high = offer.lead_days
        return f"{low}–{high} days" if low != high else f"{low} days"
    if field == _FIELD_WORDS["basis"] and offer.basis is not None:
        return basis_sign(offer.basis)
    return (offer.currency or "") if field == _FIELD_WORDS["currency"] else ""


def _place(piece: Evidence) -> int:
    return _FIRST_TOLD.index(piece.field) if piece.field in _FIRST_TOLD else len(_FIRST_TOLD)


def said_by(evidence: Sequence[Evidence]) -> tuple[Said, ...]:
    """Evidence in words; a thing said twice by the same cell is told once."""
    found = dict.fromkeys(
        Said(_FIELD_WORDS.get(piece.field, piece.field.replace("_", " ")), piece.said_by, _short(piece.words),
             _short(piece.against))
        for piece in evidence
    )  # fmt: skip
    return tuple(found)


def cells_of(source: Source, evidence: Sequence[Evidence]) -> dict[str, set[tuple[int, int]]]:
    """Sheet name to the cells that one offer was read from, its price included."""
    cells: dict[str, set[tuple[int, int]]] = {}
    for where in (source.cell, *source.also, *(piece.said_by for piece in evidence)):
        sheet, address = located(where, source.sheet)
        place = place_of(address)
        if place is not None:
            cells.setdefault(sheet, set()).add(place)
    return cells


def located(where: str, sheet: str) -> tuple[str, str]:
    """'Terms!A3' as (sheet, address); a bare address stands on `sheet`."""
    other, mark, address = where.rpartition("!")
    return (other, address) if mark else (sheet, where)


def _short(text: str) -> str:
    plain = " ".join(text.split())
    return plain if len(plain) <= _LONGEST else plain[: _LONGEST - 1] + "…"
