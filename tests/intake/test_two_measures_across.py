"""Calipers and weights across in two rows of heads, and units of a file beside an error and beside another market."""

import pytest

from tests.intake.sheets import codes, lines


@pytest.mark.parametrize(
    ("over", "corner"),
    [
        ("Épaisseur (µm)", "Grammage (g/m²)"), ("Caliper (µm)", "Basis weight (g/m²)"), ("Dicke µm", "Gewicht g/m²"),
        ("Espesor (µm)", "Gramaje (g/m²)"), ("Tjocklek µm", "Ytvikt g/m²"),
    ],
)  # fmt: skip
def test_a_second_row_of_figures_is_what_its_own_corner_says(over, corner):
    rows = [["EUR/t"], ["Sorte", over], [None, 350, 400], [corner, 260, 300], ["GD2", 821, 812], ["GT2", 868, 859]]
    told = {(line.offer.caliper_um, line.offer.grammage_gsm) for line in lines(rows).values()}
    assert told == {(350, 260), (400, 300)}


def test_one_row_of_figures_takes_the_words_above_it():
    rows = [["EUR/t"], ["Sorte", "Dicke µm"], [None, 350, 400], ["GD2", 821, 812], ["GT2", 868, 859]]
    assert {line.offer.caliper_um for line in lines(rows).values()} == {350, 400}


def test_an_impossible_caliper_in_microns_is_in_no_points():
    rows = [["SEK/ton"], ["Sort", "g/m²", "µm", "Pris"], ["GD2", 280, 370, 8900], ["GC2", 270, 90, 12800]]
    found = lines(rows)
    assert str(found["D3"].state) == "accepted"
    assert found["D3"].offer.basis == "tonne"
    assert str(found["D4"].state) == "question"


@pytest.mark.parametrize(
    ("first", "second"), [("Importación, USD/t", "Nacional, por kg"), ("Import, USD/t", "Domestic, per kg")]
)
def test_the_money_of_imports_is_not_that_of_the_home_market(first, second):
    head = ["Material", "g/m²", "Calibre (pt)", "Precio"]
    rows = [["Empaques Tlaneco, S.A. de C.V."], ["Calz. de los Fresnos 212, Tlaneco, México"], [], [first], head,
            ["CRB", 340, 18, 980], [], [second], head, ["URB", 450, 26, 12.9]]  # fmt: skip
    found = lines(rows, formats={(9, 3): '"$"#,##0.00'})
    assert found["D6"].offer.currency == "USD"
    assert "currency-unknown" in codes(found["D10"])
