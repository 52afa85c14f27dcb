"""A sample's whole record is kept alike on SQLite and PostgreSQL."""

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from tests.desk.filing import file
from tests.store.making import VENDOR, line
from tracker.desk import attachments, claims, contacts, readings, sample_templates, samples, verdicts
from tracker.desk.edits import undo
from tracker.desk.measured_weights import measured_weights
from tracker.desk.opening import Desk, open_desk
from tracker.desk.sample_checks import check_sample
from tracker.desk.sample_life import EventKind
from tracker.desk.sample_requests import Enquiry, log_all

TODAY = date(2026, 11, 25)


@pytest.fixture
def desk(where: str) -> Iterator[Desk]:
    opened = open_desk(where, TODAY, "Ada")
    yield opened
    opened.close()


def test_from_enquiry_to_verdict(desk: Desk, tmp_path: Path) -> None:
    file(desk, line())
    enquiry = Enquiry((VENDOR,), "SBS", (Decimal("457.2"),), quantity="20 sheets 28 x 40 in", on=date(2026, 11, 4))
    sample_templates.save(desk, "White board", enquiry)
    (number,) = log_all(desk, sample_templates.template(desk, "white board").used_on(date(2026, 11, 4))).numbers
    contacts.set_contact(desk, VENDOR, "Frau Weiß", "w@quillmere.example", "de")
    samples.record(desk, number, EventKind.SENT, date(2026, 11, 5), carrier="Ostrel Parcel", tracking="OP 123")
    samples.record(desk, number, EventKind.ARRIVED, date(2026, 11, 9))
    readings.add(desk, number, "grammage", ["395", "396", "397", "396", "396"], conditioned=True)
    claims.claim(desk, number, "gloss75", "50.5")
    photograph = tmp_path / "edge.jpg"
    photograph.write_bytes(bytes(range(256)))
    undo(desk, undo(desk, attachments.attach(desk, number, photograph)))
    verdicts.decide(desk, number, True, "tea cartons")

    found = samples.sample(desk, number)
    assert (found.contact, found.carrier, found.tracking, found.pieces) == ("Frau Weiß", "Ostrel Parcel", "OP 123", 20)
    assert (found.size_mm, found.verdict) == ((Decimal("711.2"), Decimal(1016)), "approved for tea cartons")
    checked = {each.property.key: each for each in check_sample(desk, number).properties}
    assert checked["grammage"].readings[0].conditioned is True
    assert checked["gloss75"].claim.value == Decimal("50.5")
    (kept,) = attachments.attachments(desk, number)
    assert attachments.content(desk, kept.id) == bytes(range(256))
    (weight,) = measured_weights(desk)
    assert weight.gsm == pytest.approx(396)
