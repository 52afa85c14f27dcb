"""Runs the product's reader on a generated file, in this process, and puts what it read in the contract's shape."""

import traceback
from pathlib import Path
from typing import Any

from tests.corpus.registry import Made
from tests.corpus.scoring import Fault, Score, judge, judge_crash
from tracker.intake.files.opening import open_workbook
from tracker.intake.grid import Unreadable
from tracker.intake.read import read_workbook
from tracker.trade.exact import as_decimal, plain_text
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN, Answers, Charge, Line


def score(made: Made, folder: Path) -> Score:
    """Write the file, read it, judge it. Faults name the file."""
    path = folder / made.name
    path.write_bytes(made.data)
    return score_file(path, made.truth)


def score_file(path: Path, truth: dict[str, Any]) -> Score:
    """Judge the reading of a file that is already there."""
    try:
        reading = read_workbook(open_workbook(path), Answers())
    except Unreadable as reason:
        result = judge(truth, str(reason), [])
    except Exception:  # a crash is what is being counted here
        result = judge_crash(truth, traceback.format_exc(limit=-3))
    else:
        result = judge(truth, None, [as_entry(line) for line in reading.lines])
    result.faults = [Fault(fault.kind, f"{path.name} {fault.cell}", fault.why) for fault in result.faults]
    return result


def as_entry(line: Line) -> dict[str, Any]:
    """A line of a reading with the fields that are judged."""
    offer = line.offer
    on_one_footing = footing(offer)
    return {
        "sheet": offer.source.sheet,
        "cell": offer.source.cell,
        "state": str(line.state),
        "vendor": offer.vendor,
        "grade": offer.grade,
        "coated_sides": offer.coated_sides,
        "caliper_um": _shown(offer.caliper_um),
        "grammage_gsm": _shown(offer.grammage_gsm),
        "grammage_from": None if offer.grammage_from is None else str(offer.grammage_from),
        "price": _shown(offer.price),
        "currency": offer.currency,
        "basis": None if offer.basis is None else str(offer.basis),
        "sheet_mm": None if offer.sheet_mm is None else [_shown(side) for side in offer.sheet_mm],
        "from_kg": _shown(offer.from_kg),
        "below_kg": _shown(offer.below_kg),
        "minimum_kg": _shown(offer.minimum_kg),
        "lead_days": None if offer.lead_days is None else list(offer.lead_days),
        "valid_until": None if offer.valid_until is None else offer.valid_until.isoformat(),
        "delivered": offer.delivered,
        "charges": [_charge(charge) for charge in offer.charges if charge.currency != OPEN],
        "per_tonne": _shown(on_one_footing.per_tonne),
        "per_msf": _shown(on_one_footing.per_msf),
        "delivered_per_tonne": _shown(on_one_footing.delivered_per_tonne),
        "delivered_per_msf": _shown(on_one_footing.delivered_per_msf),
        "notes": [{"code": str(note.code), "cell": note.cell, "text": note.text} for note in line.notes],
    }


def _charge(charge: Charge) -> dict[str, Any]:
    basis = "percent" if charge.basis is None else str(charge.basis)
    return {"label": charge.label, "price": _shown(charge.price), "currency": charge.currency, "basis": basis}


def _shown(value: Any) -> str | None:
    if value is None:
        return None
    return plain_text(as_decimal(value) if hasattr(value, "numerator") else value)
