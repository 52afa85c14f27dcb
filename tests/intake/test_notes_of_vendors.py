"""Notes about one vendor of a comparison whose names stand in a column are kept from the rows of the others."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Vendor", "Board", "Pt", "lb/MSF", "Quoted $/ST"]
ROWS = [
    ["Ostrim Paper Co", "SBS C1S", 16, 66, 1165],
    [None, "SBS C1S", 18, 75, 1150],
    ["Verrick Board Inc", "SBS C1S", 16, 66, 1484],
    ['"', "SBS C1S", 18, 75, 1461],
    ['"', "CRB C1S", 20, 79, 1077],
    ["Tolland Mills", "SBS C1S", 18, 75, 1139],
]


def offers(*notes, above=""):
    found = lines([*([[above]] if above else []), HEAD, *ROWS, [], *([note] for note in notes)])
    return [line.offer for line in found.values()]


def test_a_vendor_written_once_holds_for_the_rows_below_beside_dittos():
    named = [offer.vendor for offer in offers()]
    assert named == ["Ostrim Paper Co"] * 2 + ["Verrick Board Inc"] * 3 + ["Tolland Mills"]


def test_terms_of_a_vendor_are_his_alone():
    found = offers("Ostrim: firm to 30 June 2026, FOB mill.", "Verrick: delivered, 5 weeks.")
    assert [offer.delivered for offer in found] == [False] * 2 + [True] * 3 + [None]
    assert [offer.lead_days for offer in found] == [None] * 2 + [(35, 35)] * 3 + [None]
    assert [offer.valid_until is not None for offer in found] == [True] * 2 + [False] * 4


@pytest.mark.parametrize(
    "note",
    ["Verrick quotes in Canadian dollars, the other two in US dollars.",
     "Verrick bietet in kanadischen Dollar, die beiden anderen in US-Dollar.",
     "Verrick: Canadian dollars; all others: US dollars"],
)  # fmt: skip
def test_money_of_a_vendor_is_his_alone(note):
    assert [offer.currency for offer in offers(above=note)] == ["USD"] * 2 + ["CAD"] * 3 + ["USD"]


def test_what_a_title_with_a_name_says_holds_for_all():
    assert {offer.currency for offer in offers(above="Verrick Board and others, USD per short ton")} == {"USD"}
    assert {offer.delivered for offer in offers("All prices delivered")} == {True}


def test_what_a_vendor_charges_for_some_boards_is_theirs():
    found = offers("Verrick: FOB mill, freight $38/ST to be added to SBS; recycled board is picked up by us.")
    assert [[str(charge.price) for charge in offer.charges] for offer in found] == [[], [], ["38"], ["38"], [], []]
    assert [offer.delivered for offer in found] == [None] * 2 + [False] * 3 + [None]
