"""Printed quotation forms and exports: who buys, when to pay, whose unit a column is, and what a key below explains."""

import pytest

from tests.intake.sheets import codes, lines, prices, read

HEAD = ["Grade", "pt", "lb/MSF", "Unit price USD", "U/M"]
ROWS = [["SBS C1S", 18, 78, 61.25, "CWT"], ["CCNB", 20, 79, 46.85, "CWT"]]


@pytest.mark.parametrize("terms", ["1% 20, net 30", "Net 30 days", "30 Tage netto", "30 jours net", "30 días neto"])
@pytest.mark.parametrize("label", ["Bill to:", "Rechnungsanschrift:", "Facturer à :", "Facturar a:", "Fakturaadress:"])
def test_a_printed_form_keeps_its_vendor_and_its_terms(label, terms):
    form = [
        ["Wexmoor Packaging Supply, Inc.", None, None, "QUOTATION"],
        ["PO Box 7718, Wexmoor, OH 43999", None, None, "Quote #", "Q-204"],
        [label, None, "Ship to:", "Good through", "04/17/2026"],
        ["Ombrel Cartons LLC", None, "Ombrel Cartons LLC", "Terms", terms],
        ["Attn: Purchasing", None, "Dock 4", "Ship via", "Delivered, freight included"],
        [],
    ]
    found = lines([*form, HEAD, *ROWS])
    assert {line.offer.vendor for line in found.values()} == {"Wexmoor Packaging Supply, Inc."}
    assert {(line.offer.delivered, str(line.state)) for line in found.values()} == {(True, "accepted")}


def test_two_firms_of_which_none_is_addressed_stay_open():
    rows = [["Wexmoor Packaging Supply, Inc."], ["Our partner mill:"], ["Ombrel Board Mills LLC"], [], HEAD, *ROWS]
    assert read(rows).vendor is None


@pytest.mark.parametrize("head", ["Net", "Net USD/ST", "Netto USD/ST"])
def test_net_over_figures_is_a_price(head):
    rows = [["SBS C1S", 18, 78, 1221], ["CCNB", 20, 79, 964]]
    assert set(lines([["USD per short ton"], ["Grade", "pt", "lb/MSF", head], *rows])) == {"D3", "D4"}


@pytest.mark.parametrize("unit", ["MinUoM", "MIN_UOM", "MOQ UoM"])
def test_a_unit_beside_a_smallest_order_is_of_the_order(unit):
    head = ["Grade", "g/m²", "µm", "Amount", "Curr", "Per", "UoM", "MinQty", unit]
    rows = [["GC1", 250, 410, 1218, "GBP", 1, "TNE", 5000, "KG"], ["GD2", 350, 460, 842, "GBP", 1, "TNE", 3000, "KG"]]
    assert [line.offer.minimum_kg for line in lines([head, *rows]).values()] == [5000, 3000]


def _book(explanation):
    rows = [["Snowmere", 14, 60, 37.9], ["Greyford", 20, 78, 35.35]]
    key = [["Key to brands"], ["Snowmere", "solid bleached sulfate, coated one side"], ["Greyford", explanation]]
    return lines([["U.S. dollars per MSF"], [], ["Brand", "Caliper, pt", "lb/MSF", "Price per MSF"], *rows, [], *key])


def test_all_of_an_explanation_is_about_the_name_beside_it():
    found = _book("100% recycled, clay coated one side (CRB)")
    assert [(line.offer.grade, line.offer.coated_sides) for line in found.values()] == [("SBS", 1), ("CRB", 1)]


def test_an_explanation_by_two_grades_explains_nothing():
    found = _book("recycled, coated (CRB) or uncoated (URB)")
    assert codes(found["D5"]) == {"grade-unknown"}


@pytest.mark.parametrize(
    "sentence",
    [
        "Der Energiezuschlag von 18 €/t wird wie bisher zusätzlich berechnet.",
        "The energy surcharge of 18 €/t is charged as before.",
        "Le supplément énergie de 18 €/t reste facturé en sus comme auparavant.",
        "El recargo de energía de 18 €/t se sigue cobrando como hasta ahora.",
        "Energitillägget på 18 €/t debiteras som tidigare.",
    ],
)
def test_a_charge_that_goes_on_as_before_is_read(sentence):
    rows = [["GD2", 250, 320, 830], ["GD2", 300, 390, 820]]
    found = lines([[sentence], [], ["Grade", "g/m²", "µm", "€/t"], *rows])
    assert {str(charge.price) for line in found.values() for charge in line.offer.charges} == {"18"}


def test_a_charge_that_was_and_one_that_will_be_stay_open():
    rows = [["GD2", 250, 320, 830], ["GD2", 300, 390, 820]]
    found = lines([["Energiezuschlag bisher 18 €/t, neu 22 €/t"], [], ["Grade", "g/m²", "µm", "€/t"], *rows])
    assert {str(charge.price) for line in found.values() for charge in line.offer.charges} <= {"0", "22"}


@pytest.mark.parametrize(
    ("by_pallet", "below"),
    [
        ("Par palette (dès 500 kg)", "Moins de 500 kg"),
        ("Per pallet (from 500 kg)", "Below 500 kg"),
        ("Je Palette (ab 500 kg)", "Unter 500 kg"),
        ("Por palet (desde 500 kg)", "Menos de 500 kg"),
        ("Per pall (från 500 kg)", "Under 500 kg"),
    ],
)
def test_pallets_with_a_weight_behind_them_size_orders(by_pallet, below):
    head = ["Carton", "mm", "g/m²", "µm", by_pallet, below]
    rows = [["GC1", "700 x 1000", 250, 405, 252.4, 281], ["GD2", "700 x 1000", 400, 525, 291, 325.2]]
    found = lines([["Prices in CHF per 1000 sheets"], [], head, [None, None, None, None, "CHF", "CHF"], *rows])
    assert {(str(line.state), line.offer.basis) for line in found.values()} == {("accepted", "1000sheets")}
    assert (found["E5"].offer.from_kg, found["F5"].offer.below_kg) == (500, 500)


def test_a_price_per_pallet_stays_one():
    head = ["Carton", "mm", "g/m²", "µm", "CHF par palette"]
    found = lines([head, ["GC1", "700 x 1000", 250, 405, 252.4], ["GD2", "700 x 1000", 400, 525, 291]])
    assert prices(found) == {"E2": ("question", "252.4", None), "E3": ("question", "291", None)}


@pytest.mark.parametrize(
    ("board", "sides"),
    [("SBS una cara", 1), ("SBS dos caras", 2), ("SBS une face", 1), ("SBS una cara gris", None)],
)
def test_sides_written_out_behind_a_grade(board, sides):
    found = lines([["Grade", "pt", "g/m²", "USD/kg"], [board, 14, 295, 1.32], [board, 18, 375, 1.31]])
    assert {line.offer.coated_sides for line in found.values()} == {sides}
