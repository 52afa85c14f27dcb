"""Rows of amounts that are added to prices offer nothing."""

import pytest

from tests.intake.readings import accepted, read_rows
from tests.intake.sheets import lines

BOARDS = [["GC1", 375, 240, 1145], ["GD2", 415, 320, 868]]


@pytest.mark.parametrize(
    ("head", "heading", "labels"),
    [
        (["Product", "µm", "g/m²", "EUR/t"], "Adders, where they apply:",
         ["Trim under 500 mm", "Orders of 15 to 20 tons", "Wet-strength (GC1 only)"]),
        (["Sorte", "µm", "g/m²", "EUR/t"], "Aufpreise (je t):", ["Breite unter 500 mm", "Nassfest (nur GC1)"]),
        (["Qualité", "µm", "g/m²", "EUR/t"], "Plus-values", ["Laize inférieure à 500 mm", "Résistance humide (GC1)"]),
        (["Calidad", "µm", "g/m²", "EUR/t"], "Recargos, si procede:", ["Ancho inferior a 500 mm", "De 5 a 10 t"]),
        (["Kvalitet", "µm", "g/m²", "EUR/ton"], "Tillägg", ["Bredd under 500 mm", "Våtstark (endast GC1)"]),
    ],
)  # fmt: skip
def test_small_rows_under_a_heading_of_adders_offer_nothing(head, heading, labels):
    charges = [[label, None, None, 15 + place] for place, label in enumerate(labels)]
    assert sorted(lines([head, *BOARDS, [], [heading], *charges])) == ["D2", "D3"]


def test_boards_under_a_heading_like_one_of_adders_are_offers():
    rows = [["Product", "µm", "g/m²", "EUR/t"], *BOARDS, [], ["Extra grades:"], ["GC2", 450, 280, 1040]]
    assert sorted(lines(rows)) == ["D2", "D3", "D6"]


def test_an_adder_is_no_price_even_where_the_figures_are_text():
    rows = [
        ["Grade", "Caliper (pt)", "Base", "Adder C2S", "Price, $/ST"],
        ["SBS C1S", "16", "1180", "0", "1180"],
        ["SBS C2S", "18", "1170", "45", "1215"],
        ["CUK", "18", "990", "0", "990"],
    ]  # fmt: skip
    assert list(lines(rows)) == ["E2", "E3", "E4"]


def test_what_is_added_below_the_table_is_no_offer():
    reading = read_rows(
        [
            ["Cobden Reach Mills Inc."],
            ["US$/short ton FOB mill"],
            [],
            ["Grade", "Caliper (pt)", "lb/MSF", "Price"],
            ["SBS C1S", 16, 69, 1190],
            ["CRB C1S", 20, 79, 885],
            ["PE coating one side, add", None, None, 120],
            ["Sheeting, add", None, None, 65],
        ]
    )
    assert set(accepted(reading)) == {"D5", "D6"}
