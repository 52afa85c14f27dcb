"""'For sheets add 38 EUR/t' charges sheets, and says of rolls nothing."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

BOARDS = [
    ["Grade", "Caliper", "Form", "EUR/tonne"],
    ["SBS", "450 µm", "rolls", 1200],
    ["CUK", "500 µm", "sheets", 1000],
]


def charges(note, boards=BOARDS):
    return [
        [charge.price if charge.currency != OPEN else None for charge in line.offer.charges]
        for line in lines([*boards, [], [note]]).values()
    ]


@pytest.mark.parametrize(
    "note",
    [
        "For sheets add €38/t.", "For sheets, add EUR 38/t.", "Sheets: add €38/t.", "Sheets +38 €/t",
        "Für Bogen 38 €/t hinzurechnen.", "Bei Bogen kommen 38 €/t hinzu.", "Pour les feuilles, ajouter 38 €/t.",
        "Para pliegos, añadir 38 €/t.", "För ark tillkommer 38 €/t.", "För ark lägg till 38 €/t.",
    ],
)  # fmt: skip
def test_what_is_added_for_sheets_is_charged_on_them_alone(note):
    assert charges(note) == [[], [38]]


def test_where_the_form_is_not_told_it_is_open():
    boards = [["Grade", "Caliper", "EUR/tonne"], ["SBS", "450 µm", 1200]]
    assert charges("For sheets add €38/t.", boards) == [[None]]


@pytest.mark.parametrize("note", ["For narrow sheets add €38/t.", "For sheets under 5 t add €38/t."])
def test_so_it_is_where_only_some_of_them_bear_it(note):
    assert charges(note) == [[], [None]]


@pytest.mark.parametrize("note", ["Sheets cost €38/t.", "For sheets add 38 kg.", "Sheets are packed on pallets."])
def test_what_adds_no_money_charges_nothing(note):
    assert charges(note) == [[], []]


@pytest.mark.parametrize(
    "note",
    [
        "Freight EUR 51 / 1000 kg, not included, to be added",
        "Fracht EUR 51 / 1000 kg, nicht enthalten, hinzuzurechnen",
        "Transport 51 EUR / 1000 kg, non compris, à ajouter", "Transporte EUR 51 / 1000 kg, no incluido, a añadir",
        "Frakt 51 EUR / 1000 kg, ingår ej, att lägga till",
    ],
)  # fmt: skip
def test_what_is_not_included_and_to_be_added_is_charged(note):
    assert charges(note) == [[51], [51]]
