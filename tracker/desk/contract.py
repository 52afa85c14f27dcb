"""A reading as the JSON that `import --json` prints: one dict a file, numbers as decimal strings."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

from tracker.desk.take_in import TakenIn
from tracker.trade.basis import units_in_a_tonne, units_in_an_msf
from tracker.trade.exact import figure_text, plain_text, product_text
from tracker.trade.footing import delivered_cost_known, footing
from tracker.trade.offer import OPEN, Charge, Line, Note, NoteCode, Offer, PassedOver


def file_object(taken: TakenIn) -> dict[str, Any]:
    """One entry of `files`: everything that reading this file yielded.

    `lines` is an iterator, to be printed once: a long list's dicts take more memory than its lines.
    """
    reading = taken.reading
    repeated = _already_imported(taken)
    return {
        "file": reading.file,
        "sha256": reading.sha256,
        "unreadable": reading.unreadable,
        "vendor": reading.vendor,
        "lines": (line_object(line, reading.vendor, repeated) for line in reading.lines),
        "passed_over": [_passed_over_object(part) for part in reading.passed_over],
    }


def line_object(line: Line, vendor: str | None, more_notes: tuple[Note, ...] = ()) -> dict[str, Any]:
    """One line of a file; `vendor` stands in where the offer itself names none."""
    offer = line.offer
    return {
        "sheet": offer.source.sheet,
        "cell": offer.source.cell,
        "also": list(offer.source.also),
        "state": line.state.value,
        "vendor": offer.vendor or vendor,
        "product": offer.product,
        "grade": offer.grade,
        "coated_sides": offer.coated_sides,
        "caliper_um": _number(offer.caliper_um),
        "grammage_gsm": _number(offer.grammage_gsm),
        "grammage_from": offer.grammage_from.value if offer.grammage_from else None,
        "price": _number(offer.price),
        "currency": offer.currency,
        "basis": offer.basis.value if offer.basis else None,
        "sheet_mm": [_number(side) for side in offer.sheet_mm] if offer.sheet_mm else None,
        "from_kg": _number(offer.from_kg),
        "below_kg": _number(offer.below_kg),
        "minimum_kg": _number(offer.minimum_kg),
        "lead_days": list(offer.lead_days) if offer.lead_days else None,
        "valid_until": offer.valid_until.isoformat() if offer.valid_until else None,
        "delivered": offer.delivered,
        "charges": [_charge_object(charge, offer) for charge in offer.charges if charge.currency != OPEN],
        **_footing_object(offer),
        "notes": [_note_object(note) for note in (*line.notes, *more_notes)],
    }


def _already_imported(taken: TakenIn) -> tuple[Note, ...]:
    if taken.imported_on is None:
        return ()
    text = f"This very file was taken in on {taken.imported_on.isoformat()}; reading it again adds nothing."
    return (Note(NoteCode.ALREADY_IMPORTED, "", text),)


def _footing_object(offer: Offer) -> dict[str, str | None]:
    if offer.price is None or offer.basis is None or offer.charges:
        prices = footing(offer)
        tonne, msf = _figure(prices.per_tonne), _figure(prices.per_msf)
        delivered = _figure(prices.delivered_per_tonne), _figure(prices.delivered_per_msf)
    else:
        # With nothing to add, as nearly every line of a long list, its price is put straight into words.
        board = offer.measure
        tonne = _product(offer.price, units_in_a_tonne(offer.basis, board))
        msf = _product(offer.price, units_in_an_msf(offer.basis, board))
        delivered = (tonne, msf) if delivered_cost_known(offer) else (None, None)
    return {
        "per_tonne": tonne,
        "per_msf": msf,
        "delivered_per_tonne": delivered[0],
        "delivered_per_msf": delivered[1],
    }


def _charge_object(charge: Charge, offer: Offer) -> dict[str, Any]:
    return {
        "label": charge.label,
        "price": _number(charge.price),
        "currency": charge.currency or offer.currency,
        "basis": charge.basis.value if charge.basis else "percent",
    }


def _note_object(note: Note) -> dict[str, str]:
    return {"code": note.code.value, "cell": note.cell, "text": note.text}


def _passed_over_object(part: PassedOver) -> dict[str, str]:
    return {"sheet": part.sheet, "rows": part.rows, "why": part.why}


def _number(value: Decimal | None) -> str | None:
    return None if value is None else plain_text(value)


def _figure(value: Fraction | None) -> str | None:
    return None if value is None else figure_text(value)


def _product(price: Decimal, units: Fraction | None) -> str | None:
    return None if units is None else product_text(price, units)
