"""'CIF B-00000000' in a letterhead is the firm's number, and no cost, insurance and freight."""

import pytest

from tests.intake.sheets import read

HEAD, ROW = ["Calidad", "g/m²", "€/t"], ["GC1", 240, 1165]
SAID = "Precios puesto en destino, portes pagados."


@pytest.mark.parametrize(
    "number",
    ["CIF B-00000000", "CIF: B00000000", "C.I.F.: A12345678", "CIF/NIF: 12345678-Z", "C.I.F. nº ESB12345678",
     "CIF B-12.345.678", "Tel. 900 000 217 - CIF B00000000"],
)  # fmt: skip
def test_a_number_beside_the_name_is_no_term_of_delivery(number):
    reading = read([["Cartones Torrebriza, S.L.", None, number], [SAID], [], HEAD, ROW])
    assert [line.offer.delivered for line in reading.lines] == [True]
    assert not [over for over in reading.passed_over if "CIF" in over.why]


@pytest.mark.parametrize("term", ["CIF Bilbao", "CIF", "CIF 41001 Sevilla", "Precios CIF Hamburg"])
def test_a_term_beside_the_name_still_leaves_the_freight_open(term):
    reading = read([["Cartones Torrebriza, S.L.", None, term], [SAID], [], HEAD, ROW])
    assert [line.offer.delivered for line in reading.lines] == [None]
