"""Rows of units below the heads, and what a price is per in the second row of them."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State


def test_a_row_of_units_below_the_heads_offers_nothing():
    rows = [
        ["Qualité", "Grammage", "Epaisseur", "Prix en euros la tonne"],
        [None, None, None, "Zone 1"],
        [None, "g/m²", "microns", "dépts 27-28-61"],
        ["GC1", 240, 375, 1248],
    ]
    assert list(lines(rows)) == ["D4"]


BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_a_unit_over_a_column_without_a_head_of_its_own_heads_it():
    rows = [
        ["A. ROLLS", None, None, None, "US$/ST"],
        ["Stock no.", "Kind", "Pt", "Lb/M sq ft", None],
        ["R-14", "SBS C1S", 14, 61, 1210],
        ["R-18", "SBS C1S", 18, 75, 1195],
    ]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"E3": "accepted", "E4": "accepted"}
    form = [["Basis", "US$/ST"], [*HEAD, "Price"], [*BOARD, 1190]]
    assert lines(form)["D3"].offer.basis == "short_ton"


SHEET = "Format 70 x 100 cm, EUR ab Werk"


@pytest.mark.parametrize(
    ("price", "mass", "sheets"),
    [
        ("Preis pro", "1.000 kg", "1.000 Bogen"),
        ("Preis je", "Tonne", "1000 Bogen"),
        ("Price per", "1,000 kg", "1,000 sheets"),
        ("Prix par", "tonne", "1 000 feuilles"),
        ("Precio por", "1.000 kg", "millar de hojas"),
        ("Pris per", "1 000 kg", "1 000 ark"),
    ],
)
def test_what_a_price_is_per_may_stand_in_the_row_below(price, mass, sheets):
    heads = [["Sorte", "g/m²", "µm", price, price], [None, None, None, mass, sheets]]
    found = lines([[SHEET], [], *heads, ["GC1", 250, 390, 1400, 245], ["GC1", 300, 470, 1380, "289.8"]])
    assert [(line.state, str(line.offer.basis), line.offer.from_kg) for line in found.values()] == [
        (State.ACCEPTED, "tonne", None)
    ] * 2
    assert [line.offer.source.also for line in found.values()] == [("E5",), ("E6",)]


@pytest.mark.parametrize("price", ["Price for", "Preis bei", "Prix pour"])
def test_weights_below_words_for_an_order_are_order_sizes(price):
    heads = [["Sorte", "g/m²", "µm", price, price], [None, None, None, "1000 kg", "5000 kg"]]
    found = lines([["EUR/t"], [], *heads, ["GC1", 250, 390, 1400, 1360]])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [(1000, 5000), (5000, None)]


def test_bulk_over_a_length_is_the_caliper_and_over_its_own_unit_a_property():
    rows = [["Quality", "Substance", "Bulk", "Rate"], ["", "gsm", "micron", "£/tonne"], ["GC1", 270, 440, 1185]]
    (line,) = lines(rows).values()
    assert line.offer.caliper_um == 440
    rows[1][2] = "cm³/g"
    (line,) = lines([*rows[:2], ["GC1", 270, 1.6, 1185]]).values()
    assert line.offer.caliper_um is None


def test_a_footnote_in_brackets_behind_a_head_is_no_amount():
    rows = [["Sorte", "Grammage", "Ancien prix", "Nouveau prix (1)"], ["", "g/m²"], ["GD2", 280, 862, 894], [],
            ["(1) en euros par tonne, départ usine"]]  # fmt: skip
    (line,) = lines(rows).values()
    assert (str(line.offer.price), line.offer.currency, str(line.offer.basis)) == ("894", "EUR", "tonne")
