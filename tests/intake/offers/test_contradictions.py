"""What two places of a sheet say differently is asked, never settled by the nearer one alone."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["CRB C1S", 16, 62, 905], ["CRB C1S", 18, 70, 885]]
METRIC = [["GD2", 380, 300, 905], ["GD2", 400, 320, 885]]


def asked(rows, code, **more):
    found = lines(rows, **more)
    assert len(found) == 2
    return all(line.state == "question" and code in codes(line) for line in found.values())


def accepted(rows, **more):
    found = lines(rows, **more)
    return len(found) == 2 and all(line.state == "accepted" for line in found.values())


def test_a_footer_that_names_another_ton_than_the_header():
    rows = [["Grade", "µm", "g/m²", "EUR/t"], *METRIC, []]
    assert accepted([*rows, ["All prices per tonne."]])
    assert asked([*rows, ["All prices per short ton."]], "basis-unknown")


@pytest.mark.parametrize("unit", ["per tonne", "/tonne", "EUR/tonne"])
def test_a_unit_below_the_only_price_head_is_part_of_the_header(unit):
    rows = [["EUR, FOB mill"], [], ["Board", "pt", "lb/MSF", "Price"], [None, None, None, unit], *ROWS]
    assert accepted(rows)
    assert {line.offer.basis for line in lines(rows).values()} == {"tonne"}


def test_a_unit_row_that_contradicts_the_header_or_the_title():
    unit_row = [None, None, None, "per tonne"]
    assert asked([["Board", "pt", "lb/MSF", "Price (USD/short ton)"], unit_row, *ROWS], "basis-unknown")
    assert asked([["US$ per short ton"], [], ["Board", "pt", "lb/MSF", "Price"], unit_row, *ROWS], "basis-unknown")


def test_a_title_and_a_sheet_name_that_name_different_grades():
    rows = [["Greyboard (URB) prices"], [], ["Caliper (pt)", "lb/MSF", "USD/ST"], [18, 70, 905], [20, 78, 890]]
    assert accepted(rows, sheet="URB")
    assert accepted(rows, sheet="Prices")
    assert asked(rows, "grade-unknown", sheet="CUK")


def test_a_line_of_the_letterhead_right_above_the_header_heads_nothing():
    rows = [
        ["Minimum order:", "5000 kg per item"],
        ["Board", "Caliper (µm)", "g/m²", "Price EUR/tonne"],
        *METRIC,
    ]
    offer = lines(rows)["D3"].offer
    assert (offer.from_kg, offer.minimum_kg) == (None, 5000)
