"""What stands for a head: an export's field names, units in one word, the sentence above a letter's figures."""

import pytest

from tests.intake.sheets import codes, lines

FIELDS = ["MATNR", "MAKTX", "KBETR", "KONWA", "KPEIN", "KMEIN"]


def test_field_names_of_an_export_are_read():
    rows = [
        ["4711", "GC1 230 g/m² 380 µm", 1225, "EUR", 1, "TO"],
        ["4712", "GC2 250 g/m² 400 µm", 1190, "EUR", 1000, "KG"],
    ]
    found = lines([FIELDS, *rows])
    assert [(str(line.state), line.offer.basis.value) for line in found.values()] == [("accepted", "tonne")] * 2


def test_a_price_per_100_kg_is_still_asked_about():
    found = lines([FIELDS, ["4712", "GD2 350 g/m² 450 µm", 82.5, "EUR", 100, "KG"]])
    assert codes(found["C2"]) == {"basis-unknown"}


def test_hundredths_of_a_millimetre():
    heads = ["Sorte", "g/m²", "Dicke 1/100 mm", "Preis"]
    (line,) = lines([["EUR/t"], heads, ["GC1", 230, 38, 1225]]).values()
    assert (str(line.state), line.offer.caliper_um) == ("accepted", 380)


def test_thousands_of_kronor_are_not_kronor():
    heads = ["Kvalitet", "g/m²", "µm", "Pris tkr/ton (1000 kg)"]
    (line,) = lines([heads, ["GC1", 230, 380, 13.2]], answers={"currency": "SEK"}).values()
    assert str(line.state) == "question"


def test_bare_figures_of_a_letter_are_prices_by_the_sentence_above_them():
    said = "Our prices, in US dollars per short ton delivered, are:"
    offers = ["14 pt SBS C1S 58 lb/MSF: 1225", "20 pt CRB C1S 77 lb/MSF – 885"]
    found = lines([["Acme Mill Inc."], [said], *([offer] for offer in offers)])
    assert [(cell, str(line.state), str(line.offer.price)) for cell, line in found.items()] == [
        ("A3", "accepted", "1225"),
        ("A4", "accepted", "885"),
    ]
    assert not lines([["Acme Mill Inc."], ["Weeks from order:"], *([offer] for offer in offers)])


def test_a_value_by_the_kilo_is_a_price_where_no_other_column_is():
    heads = ["Referencia", "Gramaje (g/m²)", "Valor kg"]
    said = "Precios en pesos colombianos (COP) por kilo"
    (line,) = lines([[said], heads, ["GC1", 230, 5210.5]]).values()
    assert (str(line.state), line.offer.basis.value, line.offer.currency) == ("accepted", "kg", "COP")
    both = lines([[said], ["Referencia", "Gramaje (g/m²)", "Precio", "Valor kg"], ["GC1", 230, 5210.5, 88000]])
    assert list(both) == ["C3"]


@pytest.mark.parametrize(
    ("per", "unit"), [("je", "ME"), ("Per", "UoM"), ("par", "Unité"), ("por", "Unidad"), ("per", "Enhet")]
)
def test_figures_under_per_count_the_units_beside_them(per, unit):
    rows = [["GC1", 230, 380, 1150, 1000, "KG"], ["GD2", 350, 450, 84, 100, "KG"], ["GC2", 270, 455, 1190, 1, "t"]]
    found = lines([["Preise in EUR"], ["Sorte", "g/m²", "µm", "Preis", per, unit], *rows])
    assert (str(found["D3"].state), found["D3"].offer.basis.value) == ("accepted", "tonne")
    assert codes(found["D4"]) == {"basis-unknown"}
    assert (str(found["D5"].state), found["D5"].offer.basis.value) == ("accepted", "tonne")


def test_units_beside_their_figures_under_a_head_that_says_whose_they_are():
    heads = ["Material", "Grammage", "GSM unit", "Thickness", "Thk unit", "EUR", "UoM", "MOQ", "MOQ UoM"]
    (line,) = lines([heads, ["GC2", 250, "g/m2", 410, "um", 1085, "TNE", 5, "TNE"]]).values()
    assert (str(line.state), line.offer.basis.value, line.offer.minimum_kg) == ("accepted", "tonne", 5000)
