"""What a title says of charges: how much they are, beside the boards, or that the table below is one of charges."""

import pytest

from tests.intake.sheets import lines

ACROSS = [["Pounds per shipment", "18 pt\n74 lb/MSF", "21 pt\n87 lb/MSF"], ["under 10,000", 43.7, 51.1]]
METRIC = [["t per order", "250 g/m²\n410 µm", "300 g/m²\n500 µm"], ["< 5", 1298, 1277], ["> 5", 1246, 1222]]


def test_freight_told_above_prices_by_caliper_is_charged_beside_them():
    title = "Freight to your plant adds $3.20 per MSF; energy adds 2 % of the board price."
    found = lines([["Coated unbleached kraft, $ per MSF"], [title], [], *ACROSS])
    assert [(str(line.state), line.offer.grade) for line in found.values()] == [("accepted", "CUK")] * 2
    assert {len(line.offer.charges) for line in found.values()} == {2}


@pytest.mark.parametrize(
    ("board", "title"),
    [
        ("GC1 Faltschachtelkarton, EUR je t", "Fracht kommt mit 42 EUR/t hinzu."),
        ("Carton GC1, EUR la tonne", "Transport : 42 EUR/t en sus."),
        ("Cartoncillo GC1, EUR por tonelada", "Flete: 42 EUR/t aparte."),
        ("GC1 kartong, EUR per ton (1000 kg)", "Frakt tillkommer med 42 EUR/ton."),
    ],
)
def test_so_in_other_languages(board, title):
    found = lines([[board], [title], [], *METRIC])
    assert {(line.offer.grade, len(line.offer.charges)) for line in found.values()} == {("FBB", 1)}
    assert len(found) == 4


@pytest.mark.parametrize(
    "title", ["Freight to your plant is extra.", "Energy surcharge waived", "Freight: collect", "Energy included"]
)
def test_a_board_named_above_is_what_its_calipers_are_of(title):
    found = lines([["Coated unbleached kraft, $ per MSF"], [title], [], *ACROSS])
    assert {line.offer.grade for line in found.values()} == {"CUK"}


@pytest.mark.parametrize("title", ["Freight charges, $ per MSF", "Energy surcharge by caliper, $ per MSF"])
def test_a_title_that_says_of_no_charge_how_much_it_is_heads_charges(title):
    assert not lines([[title], [], ["Zone", "18 pt", "21 pt"], ["Ohio", 3.9, 5.2], ["Maine", 4.35, 5.4]])
