"""A thousand or a hundred of something: what is counted decides."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.prices.money import find_price_unit


@pytest.mark.parametrize(
    ("text", "basis"),
    [
        ("$/M", "1000sheets"),
        ("$/M FOB mill", "1000sheets"),
        ("$ per M C1S", "1000sheets"),
        ("€/1000 ab Werk", "1000sheets"),
        ("EUR je Tausend frei Haus", "1000sheets"),
        ("EUR le mille HT", "1000sheets"),
        ("€ por millar puesto en planta", "1000sheets"),
        ("€/1.000 h", "1000sheets"),
        ("kr/1000 st", "1000sheets"),
        ("$/thousand sq m", "1000m2"),
        ("EUR/Tausend qm", "1000m2"),
        ("EUR le mille de m²", "1000m2"),
        ("EUR por millar de metros cuadrados", "1000m2"),
        ("kr/tusen kvm", "1000m2"),
        ("$/thousand square feet", "msf"),
    ],
)
def test_a_thousand_sheets_or_square_metres(text, basis):
    unit = find_price_unit(text)
    assert (unit.basis.bases, unit.basis.foreign) == ({basis}, None)


@pytest.mark.parametrize(
    "text",
    [
        "$/1000 ft", "$/M cartons", "$ per thousand impressions", "$/M yd", "$/100", "$/3000 ft²", "EUR/1000 lfm",
        "EUR/1000 Zuschnitte", "EUR je 1000 Nutzen", "EUR/m", "EUR/100", "EUR/1000 boîtes", "EUR le mille d'étuis",
        "EUR por millar de cajas", "kr/1000 lådor", "kr per tusen kartonger",
    ],
)  # fmt: skip
def test_a_thousand_of_anything_else_is_no_known_unit(text):
    unit = find_price_unit(text)
    assert (unit.basis.bases, bool(unit.basis.foreign)) == (set(), True)


@pytest.mark.parametrize("head", ["Preis EUR/1000 lfm", "Preis EUR/100", "Preis EUR/100 m²", "Preis EUR/3000 m²"])
def test_beside_a_sheet_size_it_is_asked_about(head):
    (line,) = lines([["Sorte", "g/m²", "Format cm", head], ["GC1", 250, "70 x 100", 145]]).values()
    assert codes(line) == {"basis-unknown"}
