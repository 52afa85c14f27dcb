"""A column under a name that no legal form shows to be a firm's is a bid beside those of firms, or asked about."""

import pytest

from tests.intake.sheets import lines

BOARDS = [("GC1", 235, 1255, 1268, 1249), ("GC2", 270, 1231, "n/q", 1227), ("GD2", 300, 918, 906, 931)]


def compared(*firms, head=("Board", "g/m²"), title="all quotes in EUR/t, delivered"):
    rows = [["Quote comparison"], [title], [], [*head, *firms], *BOARDS]
    return {
        cell: (str(line.state), line.offer.vendor, str(line.offer.price))
        for cell, line in lines([list(row) for row in rows]).items()
        if cell[0] == "E"
    }


FIRMS = [
    ("Tarrow Mills", "Quenby Board Inc.", "Lakemont Fiber"),
    ("Kartonfabrik Ellerau", "Quenby Board GmbH", "Lakemont Faserstoff"),
    ("Cartonnerie Fenwold", "Quenby SARL", "Lakemont Fibres"),
    ("Cartonera Fenwold", "Quenby S.A.", "Lakemont Fibras"),
    ("Fenwold Kartongbruk", "Quenby AB", "Lakemont Fiber"),
    ("Tarrow Mills", "Quenby Board Inc.", "Lakemont Packaging"),
]


@pytest.mark.parametrize("firms", FIRMS)
def test_a_strange_word_and_one_of_the_trade_are_one_more_bidder(firms):
    assert compared(*firms) == {
        "E5": ("accepted", firms[2], "1249"),
        "E6": ("accepted", firms[2], "1227"),
        "E7": ("accepted", firms[2], "931"),
    }


@pytest.mark.parametrize(
    "name", ["Lakemont", "Lakemont Kraft", "Lakemont Coatings", "Lakemont Freight", "Lakemont Coated"]
)
def test_a_name_with_other_words_is_asked_about(name):
    found = compared("Tarrow Mills", "Quenby Board Inc.", name)
    assert [state for state, *_ in found.values()] == ["question"] * 3


def test_beside_one_firm_alone_it_is_asked_about():
    rows = [["EUR/t delivered"], [], ["Board", "g/m²", "Tarrow Mills", "Lakemont Fiber"], *(row[:4] for row in BOARDS)]
    found = lines([list(row) for row in rows])
    assert {str(line.state) for cell, line in found.items() if cell[0] == "D"} == {"question"}


@pytest.mark.parametrize("head", ["Virgin Fiber", "Recycled Fiber", "Stiffness", "Target", "Last paid", "Best bid"])
def test_what_is_no_name_is_no_bid(head):
    found = compared("Tarrow Mills", "Quenby Board Inc.", head)
    assert not any(state == "accepted" for state, *_ in found.values())


def test_a_property_under_a_name_that_does_not_move_with_the_prices():
    rows = [["EUR/t"], [], ["Board", "g/m²", "Tarrow Mills", "Quenby Inc.", "Tensometer Stiffness"],
            ["GC1", 235, 1255, 1268, 110], ["GC2", 270, 1231, 1240, 245], ["GD2", 300, 918, 906, 80]]  # fmt: skip
    assert not [cell for cell in lines(rows) if cell[0] == "E"]
