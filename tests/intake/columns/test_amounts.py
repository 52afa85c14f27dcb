"""Quantities and amounts beside prices, told by arithmetic; prices of rolls and sheets, told by their heads."""

import pytest

from tests.intake.sheets import lines

TITLE = ["USD per short ton"]
BOARDS = [["SBS C1S", 14, 58, 1225], ["CRB C1S", 20, 77, 885], ["CUK C1S", 18, 75, 1060]]
SPECS = ["Grade", "Caliper (pt)", "lb/MSF"]


def _ordered(head: str, amount_head: str, off: int = 0):
    tons = (40, 22, 31)
    rows = [[*board, many, board[3] * many + off] for board, many in zip(BOARDS, tons, strict=True)]
    return lines([TITLE, [*SPECS, "Price", head, amount_head], *rows])


@pytest.mark.parametrize("head", ["Tons", "MT", "ST", "Tonnes"])
@pytest.mark.parametrize("amount_head", ["Amount USD", "Value", "Extended"])
def test_what_the_price_is_multiplied_by_is_no_price(head, amount_head):
    found = _ordered(head, amount_head)
    assert list(found) == ["D3", "D4", "D5"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_figures_whose_product_is_something_else_are_not_passed_over():
    assert {str(line.state) for line in _ordered("Tons", "Amount USD", off=500).values()} == {"question"}


@pytest.mark.parametrize(
    ("roll", "sheet"), [("Rolle", "Format"), ("Rollenware", "Formatware"), ("Bobines", "Feuilles"), ("Rullar", "Ark")]
)
def test_rolls_and_sheets_beside_each_other_are_two_prices(roll, sheet):
    heads = ["Grade", "g/m²", "µm", roll, sheet]
    found = lines([["EUR per 1000 kg"], heads, ["GC1", 230, 380, 1260, 1320], ["GD2", 350, 450, 830, 890]])
    assert list(found) == ["D3", "E3", "D4", "E4"]
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert {line.offer.basis.value for line in found.values()} == {"tonne"}
