"""'Mill price list' is whose list it is; 'mill price' is a price from where the board lies."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Board", "pt", "lb/MSF", "USD/ST"], ["SBS", 18, 75, 1225]]


@pytest.mark.parametrize(("title", "delivered"), [
    ("Folding carton grades - mill price list", None), ("Mill price sheet", None), ("Price list, mill price", False),
])  # fmt: skip
def test_whose_list_it_is_says_nothing_of_freight(title, delivered):
    assert lines([["Harlan Gap Paperboard Co."], [title], *ROWS])["D4"].offer.delivered is delivered
