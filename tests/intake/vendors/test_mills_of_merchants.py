"""A column that names mills in the list of a firm that sells for them."""

import pytest

from tests.intake.sheets import lines

ROWS = (["CRB", 18, 70, 880, "Dover", "3-4"], ["SBS", 18, 75, 1180, "Norwich", "5"])


def sheet(head, *above):
    return [
        *([words] for words in above),
        ["Grade", "pt", "lb/MSF", "USD/ST", head, "Weeks ARO"],
        *([*row] for row in ROWS),
    ]


def vendors(rows):
    return {line.offer.vendor for line in lines(rows).values()}


@pytest.mark.parametrize(
    "head", ["Mill", "Producing mill", "Manufacturer", "Source", "Werk", "usine", "fábrica", "bruk"]
)
def test_who_names_himself_sells_the_board_of_the_mills(head):
    assert vendors(sheet(head, "Arden Board Company")) == {"Arden Board Company"}
    assert vendors(sheet(head)) == {"Dover", "Norwich"}


@pytest.mark.parametrize("head", ["Supplier", "Vendor", "Bidder", "Lieferant", "fournisseur"])
def test_a_column_of_vendors_names_who_quotes(head):
    assert vendors(sheet(head, "Arden Board Company")) == {"Dover", "Norwich"}


def test_a_mill_named_as_a_firm_beside_another_leaves_the_vendor_open():
    rows = sheet("Mill", "Arden Board Company")
    for row, mill in zip(rows[2:], ("Dover Paper Inc.", "Norwich Mills LLC"), strict=True):
        row[4] = mill
    assert vendors(rows) == {None}
    assert vendors(rows[1:]) == {"Dover Paper Inc.", "Norwich Mills LLC"}


@pytest.mark.parametrize(
    "head", ["Ships from", "Ship point", "Mill location", "Versand ab", "expédié de", "skickas från"]
)
def test_a_place_is_neither_vendor_nor_lead_time(head):
    found = lines(sheet(head))
    assert {line.offer.vendor for line in found.values()} == {None}
    assert [line.offer.lead_days for line in found.values()] == [(21, 28), (35, 35)]
    assert not any(note.code.value == "lead-time-unread" for line in found.values() for note in line.notes)
