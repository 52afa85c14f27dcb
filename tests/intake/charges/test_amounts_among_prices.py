"""Amounts among prices that are added to the price beside them: they are asked about, and never offered."""

import pytest

from tests.intake.sheets import lines

US, SBS, CRB = ["Board", "pt", "lb/MSF"], ["SBS C1S", 18, 75], ["CRB C1S", 20, 79]
METRIC, GC1, GD2 = ["g/m²", "µm"], ["GC1", 250, 400], ["GD2", 350, 480]


def states(rows):
    return {cell: str(line.state) for cell, line in lines(rows).items()}


@pytest.mark.parametrize(
    ("board", "heads"),
    [
        ("Board", ["Ex works", "Delivered"]),
        ("Sorte", ["ab Werk", "frei Haus"]),
        ("Qualité", ["Départ usine", "Franco"]),
        ("Calidad", ["En fábrica", "Franco destino"]),
        ("Kvalitet", ["Fritt fabrik", "Fritt levererat"]),
    ],
)
@pytest.mark.parametrize("added", ["+80", "+ 80", "+€80", "+ 80 EUR"])
def test_a_figure_with_a_plus_before_it_is_no_price(board, heads, added):
    found = states([["EUR/t"], [board, *METRIC, *heads], [*GC1, 1180, added], [*GD2, 760, added]])
    assert found == {"D3": "accepted", "E3": "question", "D4": "accepted", "E4": "question"}
    whole = states([["EUR/t"], [board, *METRIC, *heads], [*GC1, 1180, "1260"], [*GD2, 760, "840 EUR"]])
    assert set(whole.values()) == {"accepted"}


def test_a_format_may_show_the_plus():
    rows = [["USD/ST"], [*US, "20 ST", "< 5 ST"], [*SBS, 1190, 65], [*CRB, 874, 65]]
    found = lines(rows, formats={(2, 4): "+#,##0", (3, 4): "+#,##0"})
    assert {cell for cell, line in found.items() if str(line.state) == "accepted"} == {"D3", "D4"}


@pytest.mark.parametrize(
    ("board", "heads"),
    [
        ("Board", ["C1S", "C2S add"]),
        ("Board", ["Price", "Freight included"]),
        ("Sorte", ["Rolle", "Bogen Aufschlag"]),
        ("Qualité", ["Bobines", "Formats supplément"]),
        ("Calidad", ["Bobinas", "Hojas recargo"]),
        ("Kvalitet", ["Rulle", "Ark tillägg"]),
    ],
)
def test_what_is_far_below_the_price_beside_it_is_never_offered(board, heads):
    found = states([["EUR/t"], [board, *METRIC, *heads], [*GC1, 1180, 95], [*GD2, 760, 95]])
    assert [cell for cell, state in found.items() if state == "accepted"] == ["D3", "D4"]


def test_a_slip_in_one_row_and_prices_in_another_unit_are_told_as_before():
    slip = states([["USD/ST"], [*US, "Rolls", "Sheets"], [*SBS, 1190, 125], [*CRB, 874, 960]])
    assert set(slip.values()) == {"accepted"}
    units = states([[*US, "USD/ST", "USD/MSF"], ["SBS C1S", 18, 75, 1190, 44.63], ["CRB C1S", 20, 79, 874, 34.52]])
    assert set(units.values()) == {"accepted"}
    boards = states([["USD/ST"], ["pt", "SBS", "URB"], ["20 pt", 1900, 370]])
    assert set(boards.values()) == {"accepted"}


def test_by_area_the_prices_of_one_board_are_compared():
    premium = states([["USD/MSF"], [*US, "C1S", "C2S premium"], ["SBS", 18, 75, 44, 4], ["CRB", 20, 79, 34, 4]])
    assert premium == {"D3": "accepted", "E3": "question", "D4": "accepted", "E4": "question"}
    thick = states([["USD/MSF"], ["Board", "10 pt", "60 pt"], ["CRB", 18, 105], ["URB", 14, 90]])
    assert set(thick.values()) == {"accepted"}


def test_a_premium_beside_the_rolls_is_no_price_that_makes_them_a_count():
    beside = states([["USD/ST"], [*US, "Rolls", "C2S premium"], [*SBS, 1195, 95], [*CRB, 874, 95]])
    assert beside["D3"] == beside["D4"] == "accepted"
    assert "accepted" not in {beside.get("E3"), beside.get("E4")}
    counted = states([["USD/ST"], [*US, "Price", "Rolls"], [*SBS, 1195, 95], [*CRB, 874, 95]])
    assert counted == {"D3": "accepted", "D4": "accepted"}
