"""Quantities and amounts beside prices, told by arithmetic; prices of rolls and sheets, told by their heads."""

import pytest

from tests.intake.sheets import lines

TITLE = ["USD per short ton"]
BOARDS = [["SBS C1S", 14, 58, 1225], ["CRB C1S", 20, 77, 885], ["CUK C1S", 18, 75, 1060]]
SPECS = ["Grade", "Caliper (pt)", "lb/MSF"]


def _ordered(head: str, amount_head: str, off: int = 0, pounds: int = 1):
    tons = (40, 22, 31)
    rows = [[*board, many * pounds, board[3] * many + off] for board, many in zip(BOARDS, tons, strict=True)]
    return lines([TITLE, [*SPECS, "Price", head, amount_head], *rows])


@pytest.mark.parametrize("head", ["Tons", "MT", "ST", "Tonnes", "Qty (ST)", "In stock"])
@pytest.mark.parametrize("amount_head", ["Amount USD", "Value", "Extended"])
def test_what_the_price_is_multiplied_by_is_no_price(head, amount_head):
    found = _ordered(head, amount_head)
    assert list(found) == ["D3", "D4", "D5"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_pounds_at_a_price_per_short_ton_come_to_the_amount():
    assert list(_ordered("Qty (lb)", "Amount (USD)", pounds=2000)) == ["D3", "D4", "D5"]


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


@pytest.mark.parametrize("rate", [12, 0.12])
def test_what_a_discount_leaves_of_the_list_price_is_in_its_units(rate):
    heads = [*SPECS, "List USD/ST", "Disc.", "Net"]
    found = lines([heads, ["SBS C1S", 14, 58, 1400, rate, 1232], ["CRB C1S", 20, 77, 1000, rate, 880]])
    assert [(cell, str(line.offer.price), line.offer.basis.value) for cell, line in found.items()] == [
        ("F2", "1232", "short_ton"),
        ("F3", "880", "short_ton"),
    ]


def test_a_net_price_that_the_discount_does_not_explain_is_asked_about():
    heads = [*SPECS, "List USD/ST", "Disc.", "Net"]
    assert str(lines([heads, ["SBS C1S", 14, 58, 1400, 12, 61.6]])["F2"].state) == "question"


def test_one_bare_quantity_a_board_bounds_no_order_size_and_several_do():
    rows = [["SBS C1S", 14, 58, 40, 1232], ["CRB C1S", 20, 77, 22, 900]]
    once = lines([TITLE, [*SPECS, "Qty", "Price"], *rows])
    assert {(str(line.state), line.offer.from_kg) for line in once.values()} == {("accepted", None)}
    several = lines([TITLE, [*SPECS, "Qty", "Price"], *rows, ["SBS C1S", 14, 58, 80, 1190]])
    assert {str(line.state) for line in several.values()} == {"question"}


def test_of_current_and_new_beside_their_change_the_new_is_offered():
    rows = [["SBS C1S", 14, 58, 1220, 1260, 40], ["CRB C1S", 20, 77, 880, 920, 40]]
    found = lines([TITLE, [*SPECS, "Current", "New", "Change"], *rows])
    assert [(cell, str(line.offer.price)) for cell, line in found.items()] == [("E3", "1260"), ("E4", "920")]
