"""A vendor is the same one whatever its legal form is written like, and a slip is pointed at."""

import pytest

from tracker.desk.vendors import VendorMeant, vendor_meant

KNOWN = (
    "Ferrowick Mills LLC",
    "Saltmarrow Paperboard Inc.",
    "Cartonnerie de Valbrune SAS",
    "Lindmoor Karton GmbH & Co. KG",
)


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("Ferrowick Mills LLC", "Ferrowick Mills LLC"),
        ("ferrowick  mills", "Ferrowick Mills LLC"),
        ("Ferrowick Mills, L.L.C.", "Ferrowick Mills LLC"),
        ("SALTMARROW PAPERBOARD", "Saltmarrow Paperboard Inc."),
        ("Saltmarrow Paperboard Incorporated", "Saltmarrow Paperboard Inc."),
        ("cartonnerie de valbrune", "Cartonnerie de Valbrune SAS"),
        ("Lindmoor Karton", "Lindmoor Karton GmbH & Co. KG"),
    ],
)
def test_legal_form_capitals_and_punctuation_make_no_other_vendor(typed: str, name: str) -> None:
    assert vendor_meant(typed, KNOWN) == VendorMeant(name, True)


@pytest.mark.parametrize(
    ("typed", "close"),
    [
        ("Saltmarow Paperboard", ("Saltmarrow Paperboard Inc.",)),
        ("Ferrowick", ("Ferrowick Mills LLC",)),
        ("Ostrel Karton", ()),
        ("Paperboard Inc.", ()),
    ],
)
def test_a_name_that_is_nearly_a_known_one_is_new_and_points_at_it(typed: str, close: tuple[str, ...]) -> None:
    assert vendor_meant(typed, KNOWN) == VendorMeant(typed, False, close)


def test_two_vendors_that_differ_in_nothing_else_are_never_mixed_up() -> None:
    known = ("Ferrowick Mills LLC", "Ferrowick Mills Ltd")
    assert vendor_meant("Ferrowick Mills", known) == VendorMeant("Ferrowick Mills", False, known)
    assert vendor_meant("FERROWICK MILLS LTD", known) == VendorMeant("Ferrowick Mills Ltd", True)


def test_a_name_of_nothing_but_a_legal_form_is_a_name() -> None:
    assert vendor_meant("AB", KNOWN) == VendorMeant("AB", False)
    assert vendor_meant("Co", ("AB",)) == VendorMeant("Co", False)
    assert vendor_meant("???", KNOWN) == VendorMeant("???", False)
