"""Signs and short words for money: crowns, cents and letters, and where they are none."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, prices
from tracker.trade.basis import Basis


def european_prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


def test_the_swedish_short_word_for_from_is_no_franc():
    rows = [
        ["SEK/kg"],
        ["Kvalitet", "g/m2", "µm", "500-1 999 kg", "fr 2 000 kg"],
        ["GC1", 240, 405, "17,20", "16,10"],
    ]
    found = lines(rows)
    assert european_prices(found) == {"D3": ("accepted", "17.20", "kg"), "E3": ("accepted", "16.10", "kg")}
    assert (found["E3"].offer.from_kg, found["E3"].offer.below_kg) == (2000, None)


HEAD = ["Board", "pt", "lb/MSF", "Price"]
ROW = ["SBS C1S", 18, 76, 60.75]
SOLD = "Prices are in U.S. dollars per hundredweight"


@pytest.mark.parametrize("share", ["10 per cent", "5 per cent under 20,000 lb", "cinq pour cent"])
def test_a_share_makes_no_cents_of_the_prices(share):
    (line,) = lines([[SOLD], [f"Quantity tolerance is {share}"], HEAD, ROW]).values()
    assert (str(line.state), line.offer.price) == ("accepted", Decimal("60.75"))


def test_cents_are_still_heard():
    (line,) = lines([["Prices are in U.S. cents per pound"], HEAD, ROW]).values()
    assert line.offer.price == Decimal("0.6075")


@pytest.mark.parametrize(
    ("text", "price"), [("13 450:50", "13450.50"), ("8.995:00", "8995.00"), ("9:75 kr/kg", "9.75"), ("8995:-", "8995")]
)
def test_crowns_and_ore(text, price):
    unit = "SEK/kg" if "kg" in text else "SEK/ton"
    found = lines([[f"Priser i {unit}"], ["Sort", "g/m²", "µm", "Pris"], ["GC2", 240, 390, text]])
    assert f"{found['D3'].offer.price:f}" == price


@pytest.mark.parametrize(("beside", "currency"), [("1.145 €/t", "EUR"), ("1.145 CHF/t", None), ("1145", None)])
def test_a_cent_is_a_part_of_the_only_money_that_the_list_names(beside, currency):
    found = lines([["Bezeichnung", "Preis"], ["GC2 250 g/m² 405 µm", beside], ["GD2 350 g/m² 465 µm", "78 ct/kg"]])
    assert found["B3"].offer.currency == currency


def test_crowns_and_ore_in_a_column_that_holds_no_times_of_day():
    rows = [["Prislista SEK"], ["Sort", "g/m²", "µm", "Pris per kg"], ["GC1", 260, 420, "15:80"]]
    found = lines([*rows, ["GC2", 240, 390, "14:30"]])
    assert [(str(line.state), f"{line.offer.price:f}") for line in found.values()] == [
        ("accepted", "15.80"), ("accepted", "14.30"),
    ]  # fmt: skip
    assert {str(line.state) for line in lines([*rows, ["GC2", 240, 390, "14:30:00"]]).values()} == {"question"}


def test_crowns_and_ore_beside_crowns_that_are_plainly_so():
    rows = [["Prislista SEK"], ["Sort", "g/m²", "µm", "Pris/kg", "Pris/ton"], ["GC1", 260, 420, "12:45", "12 450:-"]]
    assert prices(lines(rows)) == {"D3": ("accepted", "12.45", "kg")}


QUEBEC = [
    ["Produit", "Calibre (points)", "lb/1000 pi²", "Prix", "Unité"],
    ["SBS couché 1 face", 18, 76, "1 490,00", "tonne courte"],
    ["Kraft couché non blanchi", 18, 75, "68,5 ¢", "livre"],
    ["CCNB", 24, 94, "1 240,00", "tonne métrique"],
    ["Carton gris", 28, 98, "880,00", "ton"],
]


def test_the_sign_for_cents_explained_makes_no_price_cents():
    for note in ("Les prix sont en dollars canadiens. ¢ = cents canadiens.", "Prices in CAD. ¢ = Canadian cents"):
        found = list(lines([*QUEBEC, [], [note]]).values())
        assert [line.offer.price for line in found] == [1490, Decimal("0.685"), 1240, 880]
        assert {line.offer.currency for line in found} == {"CAD"}


def only(rows, answers=None, **more):
    (line,) = lines(rows, answers, **more).values()
    return line


def headed(head, value, **more):
    """The one line of a list whose price column is headed so."""
    return only([["Board", "Caliper (pt)", "lb/MSF", head], ["SBS C1S", 18, 75, value]], **more)


def test_cents_are_given_in_the_main_unit():
    offer = headed("Price ¢/lb", 52.5).offer
    assert (offer.price, offer.currency, offer.basis) == (Decimal("0.525"), "USD", Basis.LB)


BOARD = ["SBS C1S", 18, 75]
CALIPER_HEAD = ["Board", "pt", "lb/MSF"]


def test_a_letter_is_cents_only_before_a_stroke_or_per():
    appendix = lines(
        [["Appendix C to the Supply Agreement"], ["USD per short ton"], [*CALIPER_HEAD, "Price"], [*BOARD, 59.5]]
    )
    assert str(appendix["D4"].offer.price) == "59.5"
    cents = lines([["Prices in c/lb"], [*CALIPER_HEAD, "Price"], [*BOARD, 59.5]])
    assert (str(cents["D3"].offer.price), cents["D3"].offer.currency) == ("0.595", "USD")


@pytest.mark.parametrize(
    ("title", "currency"),
    [
        ("delivered Chicago, dollars U.S./short ton", "USD"),
        ("Schedule RS-14, USD per short ton", "USD"),
        ("Precios en S/ por tonelada corta", "PEN"),
    ],
)
def test_letters_within_other_words_are_no_money(title, currency):
    rows = [[title], [*CALIPER_HEAD, "Price"], [*BOARD, 1262]]
    assert lines(rows)["D3"].offer.currency == currency


def test_pounds_sterling_per_thousand_are_no_thousands_of_pounds():
    rows = [["Prices in pounds sterling per 1,000 sheets"], ["Board", "gsm", "Mic", "Sheet (mm)", "£ /000"]]
    line = lines([*rows, ["GC1", 250, 400, "640 x 920", 171.4]])["E3"]
    assert (str(line.state), line.offer.basis) == ("accepted", "1000sheets")


def test_a_sign_for_money_that_is_also_a_short_word_counts_only_beside_a_figure():
    rows = [
        ["€/tonne"],
        ["Qualité", "g/m²", "Prix"],
        ["GC1", 250, 1250],
        ["GC2", 250, "s/d"],
        [],
        ["s/d : sur demande"],
    ]
    assert {cell: line.offer.currency for cell, line in lines(rows).items()} == {"C3": "EUR"}
    rows = [["Precios por TM"], ["Tipo", "g/m²", "Precio"], ["GC1", 250, "S/ 4,510.00"]]
    assert lines(rows)["C3"].offer.currency == "PEN"


@pytest.mark.parametrize(
    ("unit", "weight", "expected"),
    [("ct/kg", "250 g/m²", None), ("ct/lb", "52 lb/MSF", "USD"), ("Cent/kg", "250 g/m²", None)],
)
def test_a_cent_is_a_dollars_in_a_file_of_pounds_alone(unit, weight, expected):
    rows = [["Grade", "Weight", f"Price {unit}"], ["GC1", weight, 58]]
    (line,) = lines(rows).values()
    assert line.offer.currency == expected
    assert ("currency-unknown" in codes(line)) is (expected is None)
