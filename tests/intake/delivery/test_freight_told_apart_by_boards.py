"""Freight that one note tells of some boards and otherwise of the rest."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "µm", "EUR/t"], ["SBS", 260, 325, 1390], ["GC1", 250, 410, 1262], ["GD2", 280, 380, 821]]


def delivered(note):
    return [line.offer.delivered for line in lines([*ROWS, [], [note]]).values()]


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("SBS and GC1 delivered, GD2 not.", [True, True, False]),
        ("SBS and GC1 delivered, not GD2.", [True, True, False]),
        ("SBS und GC1 frei Haus, GD2 nicht", [True, True, False]),
        ("Franco SBS et GC1, pas GD2", [True, True, False]),
        ("SBS och GC1 fritt levererat, GD2 inte", [True, True, False]),
        ("SBS y GC1 con portes pagados, GD2 no", [True, True, None]),
        ("SBS delivered, GC1 and GD2 ex works.", [True, False, False]),
        ("SBS delivered, the others ex works.", [True, False, False]),
        ("Ex works for SBS, delivered for the others", [False, True, True]),
        ("Ab Werk für SBS, frei Haus für die anderen", [False, True, True]),
        ("Départ usine pour SBS, franco pour les autres", [False, True, True]),
        ("Prices FOB mill. SBS delivered.", [True, False, False]),
        ("Preise ab Werk. SBS frei Haus.", [True, False, False]),
        ("Prix départ usine. SBS franco.", [True, False, False]),
        ("Precios en fábrica. SBS con portes pagados.", [True, False, False]),
        ("Priser fritt fabrik. SBS fritt levererat.", [True, False, False]),
    ],
)
def test_each_board_has_its_own_term(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Buyer pays freight, on GD2 the seller does.", [False, False, None]),
        ("Fracht trägt der Käufer, bei GD2 der Verkäufer.", [False, False, None]),
        ("SBS delivered, the other boards at your freight.", [True, None, None]),
        ("SBS and GC1 delivered, GD2 on request.", [True, True, None]),
        ("SBS and GC1 delivered.", [True, True, None]),
        ("Prices FOB mill. SBS delivered within Ohio.", [None, None, None]),
    ],
)
def test_what_is_not_read_for_certain_is_left_open_for_the_boards_that_may_be_meant(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    "note", ["Prices delivered. SBS in stock.", "Prices delivered. SBS samples ex works.", "All boards delivered."]
)
def test_what_is_said_of_a_board_on_another_subject_leaves_its_freight(note):
    assert delivered(note) == [True, True, True]
