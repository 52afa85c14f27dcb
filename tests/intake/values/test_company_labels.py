"""Who stands behind a label: a firm, or a person or desk of one."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.firms.company import company_name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Quoted by: Larch Board Sales Inc.", "Larch Board Sales Inc."),
        ("Quoted by: Ferrowick Cartonboard", "Ferrowick Cartonboard"),
        ("Supplier: Kestrel Ridge", "Kestrel Ridge"),
        ("From: Anna Berg, Larch Board Ltd", "Larch Board Ltd"),
        ("Quoted by: Inside sales desk, 555-0119", None),
        ("Quoted by: R. Halden (sales)", None),
        ("From: Anna Berg", None),
        ("Supplier: Verkaufsinnendienst", None),
        ("Établi par : Service commercial", None),
        ("Elaboró: Departamento de ventas", None),
        ("Från: Innesälj", None),
    ],
)
def test_a_person_or_a_desk_behind_a_label_is_no_firm(text, name):
    assert company_name(text) == name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Vertrieb Karton", None),
        ("Kartonvertrieb Hallen", "Kartonvertrieb Hallen"),
        ("RFQ 26-311 Paperboard", None),
        ("RFQ 5512 – reply of Larchmoor Board Inc.", "Larchmoor Board Inc."),
        (
            "between Larchmoor Paper Corporation (the Mill) and Grenfell Foods (the Buyer)",
            "Larchmoor Paper Corporation",
        ),
        ("Comptoir du Carton Plat Sarrazin", "Comptoir du Carton Plat Sarrazin"),
        ("Reno NV", None),
        ("Kalmwater Board NV", "Kalmwater Board NV"),
    ],
)
def test_what_signs_numbers_or_places_say_is_told_from_a_firms_name(text, name):
    assert company_name(text) == name


def test_a_firm_with_and_without_its_legal_form_is_one():
    rows = [["Kartonfabrik Hallen GmbH"], ["EUR je Tonne"], ["Sorte", "g/m²", "µm", "Preis"], ["GD2", 250, 330, 847]]
    found = lines([*rows, [], ["Kartonfabrik Hallen"]])
    assert [line.offer.vendor for line in found.values()] == ["Kartonfabrik Hallen GmbH"]


def test_a_field_that_the_buyer_signs_is_no_vendor():
    assert company_name("ACCEPTANCE / Company: ________ Signed: ________ PO no.: ________") is None
    assert company_name("Acceptance / Company: Signed:") is None
    assert company_name("Ferrowick Paper Company: price list") == "Ferrowick Paper Company"


@pytest.mark.parametrize("title", ["Staffelpreise Karton", "Bogenpreise Karton", "Grundpriser Kartong"])
def test_what_a_list_is_called_is_no_firm(title):
    assert company_name(title) is None
    assert company_name("Nordpreis Karton GmbH") == "Nordpreis Karton GmbH"
