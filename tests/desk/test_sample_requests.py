"""Asking for samples, one or many, from a template or not; and how their numbers are said."""

from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.desk import contacts, sample_requests, sample_templates, samples
from tracker.desk.edits import undo
from tracker.desk.opening import Desk
from tracker.desk.sample_numbers import number_said, number_text
from tracker.desk.sample_requests import Enquiry
from tracker.desk.trouble import Trouble

TODAY = date(2026, 11, 25)
CALIPERS = (Decimal("406.4"), Decimal("457.2"), Decimal("508"))
VENDORS = ("Quillmere Board Works", "Marrowby Paper", "Newcomer Mill", "Ostrane Karton", "Pellwick Board")


def test_one_grade_three_calipers_five_vendors_in_one_go(desk: Desk) -> None:
    logged = sample_requests.log_all(
        desk, Enquiry(VENDORS, "fbb", CALIPERS, quantity="20 sheets 28 x 40 in", for_what="Tea", contact="Ms Brandt")
    )
    assert logged.numbers == tuple(range(1, 16))
    found = {each.number: each for each in samples.samples(desk)}
    assert [(found[n].vendor, found[n].caliper_um) for n in (1, 3, 15)] == [
        (VENDORS[0], CALIPERS[0]),
        (VENDORS[0], CALIPERS[2]),
        (VENDORS[4], CALIPERS[2]),
    ]
    first = found[1]
    assert (first.form, first.pieces, first.size_mm) == ("sheets", 20, (Decimal("711.2"), Decimal(1016)))
    assert (first.contact, first.grade, first.quantity) == ("Ms Brandt", "FBB", "20 sheets 28 x 40 in")
    undo(desk, logged.edit)
    assert samples.samples(desk) == ()


def test_what_stands_on_a_label_is_one_line(desk: Desk) -> None:
    asked = Enquiry(VENDORS[:1], "FBB", board="Fen\n White", quantity="20\nsheets", for_what="Tea\r\n", contact="Ms\nB")
    sample_requests.log_all(desk, asked)
    (sample,) = samples.samples(desk)
    assert (sample.board, sample.quantity, sample.for_what, sample.contact) == (
        "Fen White", "20 sheets", "Tea", "Ms B"
    )  # fmt: skip


@pytest.mark.parametrize(
    ("enquiry", "words"),
    [
        (Enquiry((), "FBB"), "which vendor"),
        (Enquiry(("A", " "), "FBB"), "which vendor"),
        (Enquiry(("A",), "FBB", (Decimal("457.2"), Decimal(18))), "check its unit"),
        (Enquiry(("A",), "FBB", (Decimal("457.2"), Decimal("457.2"))), "named twice"),
        (Enquiry(tuple(f"Vendor {n}" for n in range(101)), "FBB", (Decimal(400), Decimal(500))), "202 requests"),
    ],
)
def test_an_enquiry_is_logged_whole_or_not_at_all(desk: Desk, enquiry: Enquiry, words: str) -> None:
    with pytest.raises(Trouble, match=words):
        sample_requests.log_all(desk, enquiry)
    assert samples.samples(desk) == ()


def test_a_vendor_named_twice_is_asked_once(desk: Desk) -> None:
    assert len(sample_requests.log_all(desk, Enquiry(("A  Mill", "A Mill"), "FBB")).numbers) == 1


def test_a_template_is_kept_used_changed_and_forgotten(desk: Desk) -> None:
    enquiry = Enquiry(VENDORS[:2], "FBB", CALIPERS, "Fenlight", "1 roll end", "Tea", TODAY + timedelta(days=14), TODAY)
    sample_templates.save(desk, "Tea  board", enquiry)
    found = sample_templates.template(desk, "TEA BOARD")
    assert (found.name, found.needed_days) == ("Tea board", 14)
    later = date(2027, 1, 10)
    used = found.used_on(later)
    assert (used.needed, used.on, used.vendors, used.calipers_um) == (date(2027, 1, 24), later, VENDORS[:2], CALIPERS)
    sample_templates.save(desk, "tea board", Enquiry(VENDORS[:1], "SBS"))
    assert [each.enquiry.grade for each in sample_templates.templates(desk)] == ["SBS"]
    undo(desk, sample_templates.forget(desk, "tea board"))
    assert [each.name for each in sample_templates.templates(desk)] == ["tea board"]
    sample_templates.forget(desk, "tea board")
    with pytest.raises(Trouble, match="none was kept"):
        sample_templates.template(desk, "tea board")
    with pytest.raises(Trouble, match="called"):
        sample_templates.save(desk, " ", enquiry)


def test_a_vendor_s_contact_stands_in_where_none_was_named(desk: Desk) -> None:
    contacts.set_contact(desk, "Ostrane Karton", "Frau Weiß", "muster@ostrane.example", "de")
    samples.log(desk, "OSTRANE karton", "FBB")
    assert samples.samples(desk)[0].contact == "Frau Weiß"
    assert contacts.contact(desk, "ostrane Karton").language == "de"
    assert contacts.contact(desk, "Nobody").language == "en"


@pytest.mark.parametrize(
    ("said", "words"),
    [
        ({"mail": "weiss at ostrane"}, "not a mail address"),
        ({"language": "sv"}, "none of them"),
        ({"vendor": ""}, "whose"),
    ],
)
def test_a_contact_that_can_not_be_is_refused(desk: Desk, said: dict[str, str], words: str) -> None:
    with pytest.raises(Trouble, match=words):
        contacts.set_contact(desk, **{"vendor": "Ostrane Karton", **said})


@pytest.mark.parametrize("text", ["7", "S-0007", "s7", "#7", " S-0007 ", "No. 7", "0007"])
def test_a_number_is_typed_or_scanned(text: str) -> None:
    assert number_said(text) == 7


@pytest.mark.parametrize("text", ["", "S-", "7a", "Tea", "7.5", "-"])
def test_what_is_no_number_is_said(text: str) -> None:
    with pytest.raises(Trouble, match="sample's number"):
        number_said(text)


@given(st.integers(1, 99_999_999))
def test_what_a_label_says_is_understood(number: int) -> None:
    assert number_said(number_text(number)) == number
