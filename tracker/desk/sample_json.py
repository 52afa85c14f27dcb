"""Samples as `samples --json` prints them, and one sample with all that is known of it."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any

from tracker.desk.samples import Sample

if TYPE_CHECKING:
    from tracker.desk.sample_checks import PropertyChecked
    from tracker.store.attachments import Attachment


def sample_object(sample: Sample) -> dict[str, Any]:
    """A sample as `samples --json` prints it."""
    usual = sample.usual
    return {
        "number": sample.number,
        "vendor": sample.vendor,
        "board": sample.board,
        "grade": sample.grade,
        "caliper_um": None if sample.caliper_um is None else float(sample.caliper_um),
        "quantity": sample.quantity,
        "form": sample.form or None,
        "pieces": sample.pieces,
        "size_mm": None if sample.size_mm is None else [float(side) for side in sample.size_mm],
        "contact": sample.contact,
        "requested": sample.requested.isoformat(),
        "needed": _iso(sample.needed),
        "promised": _iso(sample.promised),
        "sent": _iso(sample.sent),
        "carrier": sample.carrier,
        "tracking": sample.tracking,
        "arrived": _iso(sample.arrived),
        "state": sample.state.value,
        "waiting_days": sample.waiting_days,
        "due": _iso(sample.due),
        "due_from": sample.due_from,
        "usual_days": None if usual is None else usual.days,
        "usual_low_days": None if usual is None else usual.low,
        "usual_high_days": None if usual is None else usual.high,
        "overdue_days": None if sample.overdue_days is None else max(0, sample.overdue_days),
        "chance_of_a_week": sample.chance_of_a_week,
        "chance_by": sample.chance_by,
        "chased": sample.chased,
        "last_chased": _iso(sample.last_chased),
        "for": sample.for_what,
        "verdict": sample.verdict,
        "verdict_by": sample.verdict_by or None,
    }


def record_object(
    sample: Sample, checked: tuple[PropertyChecked, ...], attachments: tuple[Attachment, ...]
) -> dict[str, Any]:
    """One sample with its events, its measurements against what was claimed, and the files kept with it."""
    return {
        **sample_object(sample),
        "events": [
            {
                "kind": event.kind,
                "on": event.on.isoformat(),
                "until": _iso(event.until),
                "note": event.note,
                "carrier": event.carrier,
                "tracking": event.tracking,
                "by": event.recorded_by,
            }
            for event in sample.events
        ],
        "measured": [_measured(each) for each in checked],
        "attachments": [
            {"name": each.name, "sha256": each.sha256, "size": each.size, "by": each.added_by} for each in attachments
        ],
    }


def _measured(checked: PropertyChecked) -> dict[str, Any]:
    spread, check, claim = checked.spread, checked.check, checked.claim
    return {
        "property": checked.property.key,
        "unit": checked.property.unit,
        "readings": [float(reading.value) for reading in checked.readings],
        "mean": None if spread is None else spread.mean,
        "deviation": None if spread is None else spread.deviation,
        "low": None if spread is None else spread.low,
        "high": None if spread is None else spread.high,
        "outlying": [float(checked.readings[index].value) for index in checked.outlying],
        "unconditioned": checked.unconditioned,
        "conditioning_not_said": checked.unsaid,
        "claimed": None if claim is None else float(claim.value),
        "claimed_by": None if claim is None else claim.source,
        "check": None if check is None else check.verdict.value,
        "difference_percent": None if check is None else check.difference_percent,
        "more_readings": None if check is None else check.more,
        "sentences": list(checked.sentences),
    }


def _iso(day: date | None) -> str | None:
    return None if day is None else day.isoformat()
