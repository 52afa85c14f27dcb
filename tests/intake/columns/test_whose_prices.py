"""Heads that are the vendor's own name and a word for what it offers, stock figures in points, and zeros for no price.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import lines

BOARDS = [["SBS C1S", 16, 66], ["CUK", 21, 86], ["CRB C1S", 18, 71]]
OURS = [1224, 1037, 909]


@pytest.mark.parametrize(
    ("above", "head"),
    [
        ("Prepared by Marwick Fell Board, Inc.", "Marwick Fell offer"),
        ("Marwick Fell Board, Inc.", "Marwick offer"),
        ("Marwick Fell Karton GmbH", "Angebot Marwick Fell"),
        ("Cartonnerie Marwick SA", "Offre Cartonnerie Marwick"),
    ],
)
def test_the_letterhead_s_own_name_beside_a_word_for_its_offer_is_the_price(above, head):
    head_row = ["Grade", "Caliper pt", "lb/MSF", "Competitor A", "Competitor B", head, "Saving vs A"]
    rows = [[*board, ours + 30, ours + 20, ours, 30] for board, ours in zip(BOARDS, OURS, strict=True)]
    found = lines([[above], ["All $ per short ton delivered."], head_row, *rows])
    assert {cell: (line.state, line.offer.price) for cell, line in found.items()} == {
        "F4": ("accepted", 1224), "F5": ("accepted", 1037), "F6": ("accepted", 909),
    }  # fmt: skip


def test_another_name_beside_it_is_asked():
    head_row = ["Grade", "Caliper pt", "lb/MSF", "Competitor A", "Ravensholt offer"]
    rows = [[*board, ours + 30, ours] for board, ours in zip(BOARDS, OURS, strict=True)]
    found = lines([["Marwick Fell Board, Inc."], ["All $ per short ton delivered."], head_row, *rows])
    assert {line.state for line in found.values()} == {"question"}


@pytest.mark.parametrize("head", ["Reorder pt", "Reorder point", "Re-order level"])
def test_where_to_order_again_is_no_caliper(head):
    rows = [["SBS C1S .018 75#/MSF", 18600, 12, 64.5], ["URB .030 105#/MSF", 9800, 18, 37.25]]
    found = lines([["Board", "On hand, lb", head, "$/cwt"], *rows])
    assert [(line.state, round(line.offer.caliper_um)) for line in found.values()] == [
        ("accepted", 457),
        ("accepted", 762),
    ]
    found = lines([["Board", "On hand, lb", "Caliper, pt", "$/cwt"], *rows])
    assert {line.state for line in found.values()} == {"question"}


@pytest.mark.parametrize(("rolls", "sheets"), [("Rolls", "Sheets"), ("Bobines", "Formats"), ("Rollen", "Format")])
def test_a_zero_for_no_price_leaves_rolls_and_sheets_the_prices_they_are(rolls, sheets):
    rows = [["GC1", 250, 400, 1236, 1281], ["GD2", 350, 465, 0, 859], ["GD2", 300, 400, 872, "-"]]
    found = lines([["EUR/t"], ["Grade", "g/m²", "µm", rolls, sheets], *rows])
    assert {cell: line.state for cell, line in found.items()} == {
        "D3": "accepted", "E3": "accepted", "D4": "refused", "E4": "accepted", "D5": "accepted",
    }  # fmt: skip
