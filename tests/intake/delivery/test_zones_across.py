"""Prices by zone across: each zone's is an offer of its own, whatever stands in its head besides."""

import pytest

from tests.intake.sheets import lines

_ROWS = [["SBS C1S", 12, 51, 64.1, 66.3, 68.9], ["SBS C1S", 14, 59, 63.4, 65.6, 68.2]]


def _found(zones, unit):
    heads = ["Grade", "Caliper", "Basis weight", *zones]
    return lines([["Delivered"], [], heads, ["", "pt", "lb/MSF", unit, unit, unit], *_ROWS])


@pytest.mark.parametrize(
    "word", ["Zone", "Region", "Delivered zone", "Freight zone", "Lieferzone", "Région", "Zona", "Zon", "Fraktzon"]
)
@pytest.mark.parametrize("signs", ["123", "ABC"])
def test_zones_over_their_unit_are_prices_of_their_own(word, signs):
    found = _found([f"{word} {sign}" for sign in signs], "$/cwt")
    assert [(str(line.state), float(line.offer.price)) for line in found.values()] == [
        ("accepted", price) for row in _ROWS for price in row[3:]
    ]


@pytest.mark.parametrize("signs", ["123", "ABC"])
def test_zones_and_their_unit_in_one_head(signs):
    heads = ["Grade", "Caliper pt", "lb/MSF", *(f"Zone {sign} $/cwt" for sign in signs)]
    found = lines([["Delivered"], [], heads, *_ROWS]).values()
    assert {(str(line.state), line.offer.currency) for line in found} == {("accepted", "USD")}
    assert len(found) == 6


def test_one_zone_s_price_on_two_bases_is_one_offer():
    heads = ["Grade", "Caliper pt", "lb/MSF", "Zone 1 $/cwt", "Zone 1 $/MSF", "Zone 2 $/cwt", "Zone 2 $/MSF"]
    assert list(lines([heads, ["SBS C1S", 12, 51, 65.1, 33.20, 66.3, 33.81]])) == ["D2", "F2"]


def test_two_prices_of_one_zone_that_differ_are_asked_about():
    found = _found(["Zone 1", "Zone 1", "Zone 2"], "$/cwt")
    assert str(found["D5"].state) == "question"


def test_letters_behind_no_place_explain_nothing():
    heads = ["Grade", "Caliper pt", "lb/MSF", "Price A $/cwt", "Price B $/cwt", "Price D $/cwt"]
    assert {str(line.state) for line in lines([heads, *_ROWS]).values()} == {"question"}


@pytest.mark.parametrize("places", [("Zone A", "Zone B"), ("Chicago", "Atlanta"), ("North", "South")])
@pytest.mark.parametrize("term", ["delivered", "DAP", "frei Haus", "rendu"])
def test_places_over_one_term_of_delivery_are_told_apart(places, term):
    rows = [
        ["US$ per short ton"],
        ["Board", "Caliper", "Weight", "Mill", *places], [None, "pt", "lb/MSF", "FOB mill", term, term],
        ["SBS C1S", 16, 66, 1165, 1199, 1232], ["CRB", 22, 84, 856, 890, 923],
    ]  # fmt: skip
    found = lines(rows)
    assert set(found) == {f"{column}{row}" for column in "DEF" for row in (4, 5)}
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [line.offer.delivered for line in found.values()] == [False, True, True] * 2
