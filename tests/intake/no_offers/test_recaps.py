"""Tables that a title calls a recap of others repeat offers, and make none of their own.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEAD = ["Item", "Pt", "lb/MSF", "$/ST"]
FIRST = [["Vendor: Ellerdyke Board Inc."], HEAD, ["SBS C1S", 16, 66, 1219], ["CRB C1S", 18, 71, 907], []]
SECOND = [["Vendor: Holmwath Paper Ltd"], HEAD, ["SBS C1S", 16, 66, 1231], ["CRB C1S", 18, 71, 899], []]
TITLES = [
    "RECAP of the lowest bid per item (copied from above)", "Summary", "Übersicht der günstigsten Angebote",
    "Récapitulatif des meilleures offres", "Resumen de las mejores ofertas", "Sammanfattning",
]  # fmt: skip


def recapped(title, crb=899, bidder="Holmwath Paper Ltd"):
    recap = [["SBS C1S", 16, 66, 1219, "Ellerdyke Board Inc."], ["CRB C1S", 18, 71, crb, bidder]]
    return lines([*FIRST, *SECOND, [title], [*HEAD, "Bidder"], *recap])


@pytest.mark.parametrize("title", TITLES)
def test_a_recap_of_offers_above_makes_none(title):
    assert {cell: line.state for cell, line in recapped(title).items()} == dict.fromkeys(
        ("D3", "D4", "D8", "D9"), "accepted"
    )


@pytest.mark.parametrize(("crb", "bidder"), [(891, "Holmwath Paper Ltd"), (899, "Ellerdyke Board Inc.")])
def test_what_a_recap_does_not_repeat_is_asked(crb, bidder):
    found = recapped(TITLES[0], crb, bidder)
    assert {cell: line.state for cell, line in found.items() if line.offer.source.cell > "D9" or len(cell) > 2} == {
        "D14": "question"
    }


def test_a_list_called_a_summary_beside_another_of_other_boards_is_a_list():
    other = [["Summary of special grades"], HEAD, ["CUK", 18, 74, 1022], ["URB", 24, 86, 688]]
    assert {line.state for line in lines([*FIRST, *other]).values()} == {"accepted"}
    assert len(lines([*FIRST, *other])) == 4


def test_another_brand_of_the_same_board_and_price_is_no_repeat():
    brand = [["Overview of Tarn grades"], HEAD, ["Tarn SBS C1S", 16, 66, 1219], ["Tarn CRB C1S", 18, 71, 915]]
    assert len(lines([*FIRST, *brand])) == 4


def test_the_only_list_of_a_file_is_no_recap():
    assert len(lines([["Preisübersicht"], *FIRST])) == 2


def test_a_sheet_of_its_own_may_be_a_recap():
    sheets = grid([*FIRST[:1], *FIRST[1:]], sheet="Bids"), grid([HEAD, FIRST[2]], sheet="Summary")
    found = read_workbook(book(*sheets), Answers())
    assert [(line.offer.source.sheet, line.offer.price) for line in found.lines] == [("Bids", 1219), ("Bids", 907)]


@pytest.mark.parametrize("title", TITLES)
def test_a_recap_need_not_repeat_the_weights(title):
    recap = [["SBS C1S", 16, 1219, "Ellerdyke Board Inc."], ["CRB C1S", 18, 899, "Holmwath Paper Ltd"]]
    found = lines([*FIRST, *SECOND, [title], ["Item", "Pt", "$/ST", "Bidder"], *recap])
    assert {cell: line.state for cell, line in found.items()} == dict.fromkeys(("D3", "D4", "D8", "D9"), "accepted")


@pytest.mark.parametrize("title", ["Summary of changes", "Übersicht", "Récapitulatif", "Resumen", "Sammanfattning"])
def test_another_price_in_a_recap_is_asked(title):
    found = lines([*FIRST, [title], ["Item", "Pt", "$/ST"], ["SBS C1S", 16, 1259]])
    assert {cell: line.state for cell, line in found.items()} == {
        "D3": "accepted",
        "D4": "accepted",
        "C8": "question",
    }


TERMS = [
    ("Lead time", "1 week", "6 weeks"),
    ("Min order", "500 lb", "20 ST"),
    ("Order size", "under 5,000 lb", "40,000 lb and over"),
    ("Sheet size", "", '28" x 40"'),
    ("Delivery", "delivered", "FOB mill"),
]


@pytest.mark.parametrize(("head", "here", "there"), TERMS, ids=[head for head, *_ in TERMS])
@pytest.mark.parametrize("title", ["Summary of stock", "Preisübersicht", "Vue d'ensemble", "Resumen", "Översikt"])
def test_what_a_list_called_so_offers_on_other_terms_is_an_offer(title, head, here, there):
    rows = [["SBS C1S", 16, 66, 1219], ["CRB C1S", 18, 71, 907]]
    overview = [[title], [*HEAD, head], *([*row, here] for row in rows), []]
    mill = [["Mill list"], [*HEAD, head], *([*row, there] for row in rows)]
    found = lines([*overview, *mill])
    assert {cell: line.state for cell, line in found.items()} == dict.fromkeys(("D3", "D4", "D8", "D9"), "accepted")
