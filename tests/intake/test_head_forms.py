"""'Roll price' and 'Sheet price': what the board comes in where something else says what prices are per."""

import pytest

from tests.intake.sheets import codes, lines

ROW = ["CRB C1S", 16, 63]


@pytest.mark.parametrize("head", ["Roll price", "Sheet price", "Reel price"])
def test_below_a_title_s_unit_the_head_says_the_form(head):
    (line,) = lines([["US$ per short ton f.o.b. mill"], ["Grade", "Caliper pt", "lb/MSF", head], [*ROW, 912]]).values()
    assert (str(line.state), line.offer.basis) == ("accepted", "short_ton")


@pytest.mark.parametrize("head", ["Price per roll", "US$/roll", "Price/roll"])
def test_with_per_it_says_what_prices_are_per(head):
    (line,) = lines([["US$ per short ton f.o.b. mill"], ["Grade", "Caliper pt", "lb/MSF", head], [*ROW, 912]]).values()
    assert "basis-unknown" in codes(line)


def test_and_where_nothing_else_says_a_unit():
    (line,) = lines([["US$, f.o.b. mill"], ["Grade", "Caliper pt", "lb/MSF", "Roll price"], [*ROW, 912]]).values()
    assert "basis-unknown" in codes(line)


def test_a_pack_is_the_smallest_order_and_no_unit_of_price():
    head = ["Board", "gsm", "Microns", "Sheet mm", "Price £", "Sold per", "Min. qty"]
    (line,) = lines([head, ["GC1", 230, 370, "640 x 900", 212.4, "1000 sheets", "1 pack"]]).values()
    assert (str(line.state), line.offer.basis, line.offer.minimum_kg) == ("accepted", "1000sheets", None)
