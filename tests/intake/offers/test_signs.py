"""A column's decimal sign by the size of its certain figures."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Caliper (pt)", "lb/MSF", "Price"]


def _read(title, *prices):
    boards = (["SBS C1S", 16, 68], ["SBS C1S", 18, 76], ["CRB C1S", 20, 79])
    rows = [[*board, price] for board, price in zip(boards, prices, strict=True)]
    return [(str(line.offer.price), str(line.state)) for line in lines([[title], HEAD, *rows]).values()]


@pytest.mark.parametrize(
    ("prices", "open_one"),
    [((1195, "1,180*", 864), "1180"), (("1.195", 1180, 864), "1195"), (("$1,195/ST", "$890/ST", "$864/ST"), "1195")],
)
def test_figures_of_a_size_settle_how_the_others_are_written(prices, open_one):
    found = _read("US$/ST", *prices)
    assert {state for _, state in found} == {"accepted"}
    assert open_one in {price for price, _ in found}


def test_a_comma_is_a_decimal_sign_where_the_size_says_so():
    assert ("1.195", "accepted") in _read("EUR/kg", "1,195", 1.18, 0.86)


@pytest.mark.parametrize("prices", [("1,195", "1,180", "1,060"), ("$1,195/ST", "$51/cwt", "$42/cwt")])
def test_no_figure_and_figures_on_another_unit_settle_nothing(prices):
    assert _read("FOB mill, US$/ST" if "/" not in prices[0] else "FOB mill", *prices)[0][1] == "question"
