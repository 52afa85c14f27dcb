"""Board that is weighed in g/m² and priced by 1,000 kg is ordered in tonnes, though no thickness is told."""

import pytest

from tests.intake.sheets import codes, lines

SIZES = ["under 2 tons", "2-5 tons", "from 5 tons"]


def sized(title, sizes=SIZES, weight="g/m²", board=("GC1", 240), notes=()):
    return list(lines([[title], [], ["Board", weight, *sizes], [*board, 1438, 1396, 1362], [], *notes]).values())


@pytest.mark.parametrize(
    ("title", "sizes"),
    [
        ("Prices in EUR per 1,000 kg, ex works", SIZES),
        ("Preise in EUR je 1000 kg, ab Werk", ["unter 2 ton", "2-5 ton", "ab 5 ton"]),
        ("Prix en EUR par 1 000 kg, départ usine", ["moins de 2 ton", "2-5 ton", "à partir de 5 ton"]),
        ("Precios en EUR por 1.000 kg, en fábrica", ["menos de 2 ton", "2-5 ton", "desde 5 ton"]),
        ("Pris i EUR per 1 000 kg, fritt fabrik. Minsta order 500 kg.", ["under 2 ton", "2-5 ton", "från 5 ton"]),
    ],
)
def test_the_sizes_are_in_tonnes(title, sizes):
    found = sized(title, sizes)
    assert {str(line.state) for line in found} == {"accepted"}
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(None, 2000), (2000, 5000), (5000, None)]


def test_the_unit_may_stand_over_the_sizes():
    heads = [["Kvalitet", "Ytvikt", "SEK/1000 kg vid order"], [None, "g/m²", "under 2 ton", "från 2 ton"]]
    found = list(lines([*heads, ["GC1", 240, 14380, 13960]]).values())
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(None, 2000), (2000, None)]


@pytest.mark.parametrize(
    "more",
    [
        {"title": "Prices in USD per metric ton"},
        {"title": "Prices in USD per short ton"},
        {"title": "Prices in USD per 1,000 kg. Export USD per short ton."},
        {"title": "Prices in USD per 1,000 kg", "weight": "lb/MSF", "board": ("SBS", 75)},
        {"title": "Prices in USD per 1,000 kg", "notes": [["Rolls 40 in wide, caliper 18 pt"]]},
    ],
)
def test_beside_other_units_it_is_asked_which_ton_is_meant(more):
    assert all("bracket-unread" in codes(line) for line in sized(**more))


def test_freight_by_kilos_says_nothing_of_the_ton_of_prices():
    rows = [["Prices in USD"], ["Board", "g/m²", "USD/ton", "Freight USD/1000 kg"], ["GC1", 240, 1438, 40]]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}
