"""Order sizes with fractions of a unit, and heads that are counted, whose counts are no weights."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines


def _sizes(*heads, top="Prices in USD per short ton"):
    """Where the orders of each price begin and end, in kg."""
    rows = [
        [top],
        ["Grade", "pt", "lb/MSF", *heads],
        ["SBS C1S", 18, 75, *(1200 - 20 * at for at in range(len(heads)))],
    ]
    return [(line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]


_TON = Decimal("907.18474")


@pytest.mark.parametrize(
    "heads",
    [("under ½ ton", "½ - 2 tons", "2 tons +"), ("under 1/2 ton", "1/2 to 2 tons", "over 2 tons")],
)
def test_a_fraction_of_a_ton_is_no_ton_and_no_range(heads):
    assert _sizes(*heads) == [(None, _TON / 2), (_TON / 2, _TON * 2), (_TON * 2, None)]


def test_a_whole_number_and_a_fraction_are_one_number():
    assert _sizes("under 1½ tons", "1 1/2 - 5 tons", "5 tons and over") == [
        (None, _TON * 3 / 2),
        (_TON * 3 / 2, _TON * 5),
        (_TON * 5, None),
    ]


def test_a_fraction_without_a_unit_of_weight_stays_as_it_is():
    rows = [["Prices in USD per short ton"], ["Grade", "pt", "lb/MSF", "28-1/2 in"], ["SBS C1S", 18, 75, 1200]]
    assert {line.offer.from_kg for line in lines(rows).values()} <= {None}


@pytest.mark.parametrize("counts", [("a)", "b)"), ("(1)", "(2)"), ("1)", "2)"), ("1.", "2.")])
def test_what_counts_a_head_is_no_weight(counts):
    first, second = counts
    assert _sizes(f"{first} under 5 tons", f"{second} 5 tons and over") == [(None, _TON * 5), (_TON * 5, None)]


def test_a_counted_price_beside_another_is_read():
    rows = [
        ["Prices in USD, FOB mill"],
        ["Grade", "pt", "lb/MSF", "a) per short ton", "b) per MSF"],
        ["CRB C1S", 16, 62, 905, 28.06],
        ["SBS C1S", 18, 75, 1190, 49.10],
    ]
    first, second = lines(rows).values()
    assert str(first.state) == "accepted"
    assert codes(second) == {"prices-disagree"}


@pytest.mark.parametrize(
    "heads",
    [
        ("under 5 ST, USD/ST", "5 - 10 ST, USD/ST", "10 ST and over, USD/ST"),
        ("USD/ST under 5 ST", "USD/ST 5 - 10 ST", "USD/ST 10 ST and over"),
        ("Price under 5 ST, $/ST", "Price 5-10 ST, $/ST", "Price over 10 ST, $/ST"),
    ],
)
def test_short_tons_ordered_are_read_beside_the_price_of_one(heads):
    assert _sizes(*heads, top="FOB mill") == [(None, _TON * 5), (_TON * 5, _TON * 10), (_TON * 10, None)]


def test_pieces_are_no_short_tons_among_metric_units():
    rows = [
        ["Preise frei Haus"],
        ["Sorte", "µm", "g/m²", "ab 500 ST, EUR/t", "ab 1000 ST, EUR/t"],
        ["GC2", 400, 250, 1200, 1180],
    ]
    assert all("bracket-unread" in codes(line) for line in lines(rows).values())


@pytest.mark.parametrize("sign", ["€", "EUR"])
def test_the_ton_of_an_order_before_the_sign_of_the_price_counts_no_thousands(sign):
    heads = [f"Preis < 5 t {sign}/t", f"Preis 5-20 t {sign}/t", f"Preis > 20 t {sign}/t"]
    rows = [["Sorte", "g/m²", "µm", *heads], ["GC1", 260, 410, 1200, 1150, 1100], ["GC2", 260, 430, 1180, 1130, 1090]]
    found = [(line.offer.currency, line.offer.from_kg, line.offer.below_kg) for line in lines(rows).values()]
    assert found[:3] == [("EUR", None, 5000), ("EUR", 5000, 20000), ("EUR", 20000, None)]


def test_thousands_of_euros_in_one_word_are_no_plain_prices():
    rows = [["Sorte", "g/m²", "µm", "Preis T€/t"], ["GC1", 260, 410, 1.2], ["GC2", 260, 430, 1.18]]
    assert all(str(line.state) == "question" for line in lines(rows).values())
