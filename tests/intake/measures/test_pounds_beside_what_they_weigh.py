"""Pounds that say how much a price is for, or that stand before the word for rolls, are read for what they are."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.boards.weight import find_weights
from tracker.trade.offer import State


@pytest.mark.parametrize(
    "said",
    [
        "All prices are U.S. dollars per hundredweight (100 lb), f.o.b. mill. Rolls only. Shipment 3-4 weeks ARO.",
        "Prices in US$ per cwt (100 lb). Sheets only. Lead time 3-4 weeks.",
    ],
)
def test_the_pounds_of_a_hundredweight_are_no_board(said):
    found = lines([["Thornquill Board Co."], [said], ["Board", "pt", "lb/MSF", "Price"], ["SBS", 14, 60, 59.4]])
    assert found["D4"].state is State.ACCEPTED
    assert (found["D4"].offer.currency, found["D4"].offer.basis) == ("USD", "cwt")
    assert found["D4"].offer.lead_days == (21, 28)


@pytest.mark.parametrize(("text", "many"), [("60 lb/MSF at $46/MSF", 1), ("100 lb", 2), ("$ per 100 lb", 0)])
def test_other_pounds_stay_a_weight(text, many):
    assert len(find_weights(text)) == many


def test_pounds_by_their_sign_before_rolls_are_the_board_s():
    rows = [["Description", "Price USD/ST"], ["SBS C1S 14pt 60# rolls", 1238], ["SBS C1S 18pt 75# rolls", 1222]]
    found = lines([["Stavenmoor Board LLC"], ["# means pounds per 1,000 square feet."], *rows])
    assert [found[cell].state for cell in ("B4", "B5")] == [State.ACCEPTED] * 2


def test_a_number_of_rolls_is_none():
    found = lines([["Stavenmoor Board LLC"], ["Board", "pt", "# rolls", "Price USD/ST"], ["SBS", 14, 60, 1238]])
    assert found["D3"].offer.grammage_from != "quoted"
