"""How much there is of a lot, how wide its rolls are and rows of units are neither prices nor calipers."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.files.encodings import decoded


@pytest.mark.parametrize(
    ("weight", "price"),
    [("Kg", "Pris"), ("kg", "Preis"), ("Net lbs", "Price"), ("Nettogewicht kg", "Preis"), ("kg nets", "Prix")],
)
def test_a_lot_s_weight_beside_its_price_is_no_price(weight, price):
    rows = [["EUR per kg"], ["Lot", "Board", "g/m²", "µm", weight, price], ["B-17", "GC1", 250, 400, 3150, 0.92]]
    assert list(lines([*rows, ["B-18", "GC1", 300, 490, 1890, 0.88]])) == ["F3", "F4"]


def test_a_price_by_its_unit_alone_stays_one():
    found = lines([["EUR, ex works"], ["Board", "g/m²", "µm", "kg"], ["GC1", 250, 400, 0.92], ["GC1", 300, 490, 0.88]])
    assert list(found) == ["D3", "D4"]


def test_a_roll_s_width_in_the_description_leaves_the_caliper_beside_it_alone():
    head = ["Description", "gsm", "Microns", "GBP/tonne"]
    (line,) = lines([head, ["GC1 FBB, reels 1,020mm", 280, "475 mic", 1140]]).values()
    assert line.offer.caliper_um == 475
    (line,) = lines([head, ["GC1 FBB, 0.48 mm", 280, "475 mic", 1140]]).values()
    assert "caliper-unknown" not in codes(line)
    (line,) = lines([head, ["GC1 FBB, 0.60 mm", 280, "475 mic", 1140]]).values()
    assert "caliper-unknown" in codes(line)


def test_a_row_of_units_below_the_heads_offers_nothing():
    rows = [
        ["Qualité", "Grammage", "Epaisseur", "Prix en euros la tonne"],
        [None, None, None, "Zone 1"],
        [None, "g/m²", "microns", "dépts 27-28-61"],
        ["GC1", 240, 375, 1248],
    ]
    assert list(lines(rows)) == ["D4"]


@pytest.mark.parametrize("text", ["CARTÓN GRIS;ESPAÑA;señal", "ÉPAISSEUR;PÂTE;À L’UNITÉ", "FÄRG;GRÅKARTONG;“citat”"])
def test_capitals_with_accents_are_read_under_their_own_page(text):
    assert decoded(text.encode("cp1252")) == text


def test_the_page_of_an_old_mac_is_still_known():
    assert decoded("épaisseur;qualité;prix à la tonne".encode("mac_roman")) == "épaisseur;qualité;prix à la tonne"


@pytest.mark.parametrize(
    ("head", "price"),
    [
        ("Lbs", "$/cwt"),
        ("Weight", "$/cwt"),
        ("Gewicht", "EUR/kg"),
        ("Poids (kg)", "EUR/kg"),
        ("Peso", "EUR/kg"),
        ("Vikt", "EUR/kg"),
    ],
)
def test_figures_that_no_board_weighs_are_what_there_is_of_each_lot(head, price):
    rows = [["Grade", "Caliper", head, price], ["SBS", "14 pt", 17300, 44.5], ["CUK", "18 pt", 39600, 43.2]]
    found = lines([*rows, ["CRB", "20 pt", 950, 39]]).values()
    assert [codes(line) & {"weight-implausible", "weight-estimated"} for line in found] == [{"weight-estimated"}] * 3


def test_one_weight_too_high_among_weights_of_board_is_a_slip():
    rows = [["Grade", "Pt", "Lbs", "$/cwt"], ["SBS", 14, 59, 44.5], ["CUK", 18, 7400, 43.2], ["CRB", 20, 80, 39]]
    found = lines(rows)
    assert "weight-implausible" in codes(found["D3"])
    assert str(found["D2"].offer.grammage_from) == "quoted"


def test_a_lone_weight_of_binders_board_is_its_own():
    rows = [["Sorte", "Dicke mm", "Gewicht", "EUR/kg"], ["Graupappe", 2.5, 1580, 0.61], ["Graupappe", 3, 1900, 0.6]]
    found = lines(rows).values()
    assert [float(line.offer.grammage_gsm) for line in found] == [1580, 1900]
