"""Charges of a kind of board and which boards of a list are of it: 'the recycled grades, CRB and URB'."""

import pytest

from tests.intake.sheets import lines

_ROWS = [["SBS C1S", 300, 390, 1380], ["CUK", 300, 430, 1140], ["CRB C1S", 300, 400, 860], ["URB", 400, 600, 660]]


def _charged(note):
    """Whether each board bears a charge, None where that is not certain."""
    found = lines([["Tarnwell Board Ltd"], ["Board", "g/m²", "µm", "EUR/tonne"], *_ROWS, [note]])
    told = [line.offer.charges for line in found.values()]
    return [None if any(one.currency == "XXX" for one in charges) else bool(charges) for charges in told]


@pytest.mark.parametrize(
    "note",
    [
        (
            "An energy surcharge of 2.5 % is added to the recycled grades, CRB and URB. There is no surcharge on"
            " SBS and CUK."
        ),
        "An energy surcharge of 2.5 % is added to the recycled grades (CRB and URB).",
        (
            "Auf die Recyclingsorten, CRB und URB, kommt ein Energiezuschlag von 2,5 %. Auf SBS und CUK gibt es keinen"
            " Zuschlag."
        ),
        (
            "Un supplément énergie de 2,5 % s'ajoute aux qualités recyclées, CRB et URB. Il n'y a pas de supplément"
            " sur le SBS et le CUK."
        ),
        (
            "A las calidades recicladas, CRB y URB, se les suma un recargo energético de 2,5 %. No hay recargo en SBS y"
            " CUK."
        ),
        "På returkvaliteterna, CRB och URB, tillkommer ett energitillägg på 2,5 %. På SBS och CUK finns inget tillägg.",
        "An energy surcharge of 2.5 % is added. There is no surcharge on SBS and CUK.",
    ],
)
def test_these_bear_it_and_no_others(note):
    assert _charged(note) == [False, False, True, True]


def test_another_rate_of_one_board_behind_and():
    found = lines([["Board", "g/m²", "µm", "EUR/tonne"], *_ROWS, ["Freight is 30 EUR/t and 45 EUR/t for URB."]])
    assert [[f"{one.price:f}" for one in line.offer.charges] for line in found.values()] == [["30"]] * 3 + [["45"]]


def test_boards_of_another_kind_behind_it_are_not_told_apart():
    assert _charged("An energy surcharge of 2.5 % is added to the recycled grades, SBS and CUK.") == [None] * 4
