"""What a vendor pays himself, and what he earns, is no offer beside what he asks; what the reader pays is."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines, read
from tracker.trade.offer import State

SOLD = "Prices are in U.S. dollars per hundredweight"


@pytest.mark.parametrize(
    ("cost", "margin"), [("Int. cost", "Mgn %"), ("Mfg cost", "Mrgn %"), ("Std cost", "Mark up %")]
)
def test_what_a_board_costs_its_maker_is_no_offer(cost, margin):
    head = ["Board", "pt", "lb/MSF", cost, margin, "Price"]
    assert [line.offer.price for line in lines([[SOLD], head, ["SBS C1S", 18, 76, 51.2, 15.7, 60.75]]).values()] == [
        Decimal("60.75")
    ]


BOARDS = [["GC2", 230, 380, 921, 1064], ["GC2", 270, 445, 915, 1055], ["GD2", 350, 470, 661, 771]]


def offered(*heads, boards=BOARDS, **more):
    """The columns that offers stand in."""
    rows = [["Prices per tonne, delivered"], ["Board", "gsm", "micron", *heads], *boards]
    found = lines(rows, **more)
    assert all(line.state is State.ACCEPTED for line in found.values())
    return sorted({cell[0] for cell in found})


@pytest.mark.parametrize(
    "cost",
    [
        "Our buying cost £/t", "Purchase price £/t", "Buy-in price £/t", "EK £/t", "EK netto £/t", "Einkauf £/t",
        "Unser Einkaufspreis £/t", "Selbstkosten £/t", "Prix d'achat £/t", "Notre prix d'achat £/t", "Achat £/t",
        "Coût d'achat £/t", "Precio de compra £/t", "Coste de compra £/t", "Compra £/t", "Inköpspris £/t", "Inpris £/t",
    ],
)  # fmt: skip
def test_a_vendors_own_cost_is_no_offer_beside_his_price(cost):
    assert offered(cost, "Price £/t") == ["E"]
    assert offered(cost, "Price £/t", hidden_columns=frozenset({3})) == ["E"]
    assert offered(cost, "£/t < 5 t", "£/t 5 t +", boards=[[*board, board[4] - 20] for board in BOARDS]) == ["E", "F"]


def test_the_cost_column_is_told_and_a_cost_alone_is_what_is_asked():
    passed = read([["Board", "gsm", "micron", "EK £/t", "VK £/t"], *BOARDS]).passed_over
    assert [each.why for each in passed] == ["the column “EK £/t” is a cost price beside the one offered"]
    assert offered("Purchase price £/t", boards=[board[:4] for board in BOARDS]) == ["D"]


@pytest.mark.parametrize("margin", ["Margin £/t", "Marge £/t", "DB £/t", "Spanne £/t", "Margen £/t", "Marginal £/t"])
def test_a_margin_is_no_offer(margin):
    boards = [[*board, board[4] - board[3]] for board in BOARDS]
    assert offered("Our cost £/t", "Price £/t", margin, boards=boards) == ["E"]
    assert offered("Price £/t", margin, boards=[[*board[:3], 1064, 143] for board in BOARDS]) == ["D"]


@pytest.mark.parametrize(
    ("own", "again"),
    [
        ("Your purchase price £/t", "Recommended selling price £/t"), ("Ihr EK £/t", "UVP £/t"),
        ("Votre prix d'achat £/t", "Prix public £/t"), ("Su precio de compra £/t", "PVP £/t"),
        ("Ert inköpspris £/t", "Rek. utpris £/t"),
    ],
)  # fmt: skip
def test_what_the_reader_pays_is_the_offer_beside_what_he_may_sell_for(own, again):
    assert offered(own, again) == ["D"]
