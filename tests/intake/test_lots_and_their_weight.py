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
    rows = [["Qualité", "Grammage", "Epaisseur", "Prix en euros la tonne"], [None, None, None, "Zone 1"],
            [None, "g/m²", "microns", "dépts 27-28-61"], ["GC1", 240, 375, 1248]]  # fmt: skip
    assert list(lines(rows)) == ["D4"]


@pytest.mark.parametrize("text", ["CARTÓN GRIS;ESPAÑA;señal", "ÉPAISSEUR;PÂTE;À L’UNITÉ", "FÄRG;GRÅKARTONG;“citat”"])
def test_capitals_with_accents_are_read_under_their_own_page(text):
    assert decoded(text.encode("cp1252")) == text


def test_the_page_of_an_old_mac_is_still_known():
    assert decoded("épaisseur;qualité;prix à la tonne".encode("mac_roman")) == "épaisseur;qualité;prix à la tonne"
