"""A unit said once, in the first head of several prices, holds for those at its right; anything else is asked."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

GERMAN = [["GC1", 250, 1210, 1165, 1105], ["GC1", 270, 1200, 1155, 1095], ["GD2", 300, 890, 845, 790]]


def _with_heads(*heads: str, rows=None):
    return lines([["Sorte", "g/m²", *heads], *[row[: 2 + len(heads)] for row in rows or GERMAN]])


def test_order_sizes_beside_the_first_one_with_the_unit_are_in_it_too():
    found = _with_heads("EUR/t < 5 t", "5-20 t", "> 20 t")
    offers = [found[cell].offer for cell in ("C2", "D2", "E2")]
    assert [(str(offer.basis), offer.currency) for offer in offers] == [("tonne", "EUR")] * 3
    assert [(offer.from_kg, offer.below_kg) for offer in offers] == [(None, 5000), (5000, 20000), (20000, None)]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("EUR/t ab Werk", "frei Haus"),
        ("EUR/t", "inkl. Fracht"),
        ("€/t départ", "franco"),
        ("USD/MT FOB mill", "Delivered"),
        ("SEK/t fritt fabrik", "fraktfritt"),
    ],
)
def test_a_delivered_price_beside_one_with_the_unit_is_in_it_too(first, second):
    rows = [["GC1", 250, 1210, 1265], ["GC1", 270, 1200, 1255], ["GD2", 300, 890, 945]]
    found = lines([["Grammage in g/m², caliper in µm"], ["Grade", "g/m²", first, second], *rows])
    first_offer, second_offer = found["C3"].offer, found["D3"].offer
    assert str(found["D3"].state) == "accepted"
    assert (second_offer.currency, second_offer.basis) == (first_offer.currency, first_offer.basis)
    assert second_offer.delivered is True


def test_a_single_price_including_freight_is_not_left_out():
    found = _with_heads("EUR/t", "inkl. Fracht", rows=[["GC1", 250, 1210, 1265]])
    assert found["D2"].offer.price == 1265
    assert found["D2"].offer.delivered is True


def test_cents_are_shared_with_the_unit():
    found = lines([["Grade", "pt", "¢/lb FOB mill", "Delivered"], ["SBS", 18, 61.5, 64.5], ["CRB", 20, 43, 46]])
    assert found["D2"].offer.price == Decimal("0.645")
    assert str(found["D2"].offer.basis) == "lb"


@pytest.mark.parametrize(
    ("heads", "row"),
    [
        (("$/ST FOB mill", "Delivered"), ["SBS", 18, 1240, 47.2]),
        (("FOB mill", "Delivered $/ST"), ["SBS", 18, 1240, 1295]),
        (("$/ST FOB mill", "Delivered per skid"), ["SBS", 18, 1240, 1295]),
        (("$/ST FOB mill", "Delivered/BLX"), ["SBS", 18, 1240, 1295]),
    ],
)
def test_a_unit_is_not_lent_to_other_figures_nor_leftwards_nor_beside_another(heads, row):
    found = lines([["Grade", "pt", *heads], row, [row[0], 20, *[figure - 10 for figure in row[2:]]]])
    asked = found["D2" if "$/ST" in heads[0] else "C2"]
    assert str(asked.state) == "question"
    assert codes(asked) & {"basis-unknown", "number-ambiguous"}


def test_what_the_sheet_says_of_all_its_prices_is_nearer_than_a_neighbours_head():
    found = lines(
        [
            ["All prices in CAD per tonne"],
            ["Grade", "g/m²", "USD/t FOB mill", "Delivered"],
            ["GC1", 250, 1210, 1265],
            ["GC1", 270, 1200, 1255],
        ]
    )
    assert str(found["C3"].state) == "question"
    assert found["D3"].offer.currency != "USD"
