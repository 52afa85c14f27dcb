"""Delivery of boards that a sentence calls by their kind and, in brackets, their grade."""

import pytest

from tests.intake.sheets import lines


def _delivered(note):
    rows = [["FBB GC1", 300, 490, 1380], ["CRB C1S", 300, 400, 860], ["URB uncoated chipboard", 400, 600, 660]]
    found = lines([["Tarnwell Board Ltd"], ["Board", "g/m²", "µm", "EUR/tonne"], *rows, [note]])
    return [line.offer.delivered for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        (
            "Coated board (CRB) is sold delivered, freight included. Uncoated chipboard (URB) is sold f.o.b. Tarnby and"
            " freight is for the buyer's account."
        ),
        "Recycled board (CRB) is sold delivered; URB ex works.",
        (
            "CRB wird frei Haus geliefert, Fracht inbegriffen. URB wird ab Werk verkauft, die Fracht geht zu Lasten des"
            " Käufers."
        ),
        (
            "Le CRB est livré franco, port compris. L'URB est vendu départ usine et le transport est à la charge de"
            " l'acheteur."
        ),
        (
            "El CRB se vende entregado, flete incluido. El URB se vende en fábrica y el flete corre por cuenta del"
            " comprador."
        ),
        "CRB säljs fritt levererat, frakt ingår. URB säljs fritt fabrik Norrby och frakten betalas av köparen.",
    ],
)
def test_each_has_its_own_and_others_none(note):
    assert _delivered(note) == [None, True, False]


@pytest.mark.parametrize(
    "note",
    [
        "Coated board is sold delivered.",
        "Die gestrichenen Sorten liefern wir frei Haus.",
        "Les cartons couchés sont livrés franco.",
        "Las calidades estucadas se venden entregadas.",
        "Bestruken kartong levereras fritt.",
    ],
)
def test_what_is_said_of_coated_boards_is_said_of_no_other(note):
    assert _delivered(note)[1:] == [True, None]


def test_a_kind_and_its_boards_by_name():
    assert _delivered("The recycled grades, CRB and URB, are sold ex works.") == [None, False, False]


def test_a_kind_that_its_grade_contradicts_is_none():
    assert _delivered("Uncoated board (CRB) is sold delivered.") == [None] * 3


def test_a_board_that_is_sold_is_no_more_offered():
    (line,) = lines([["Sorte", "g/m²", "µm", "EUR/t"], ["URB", 400, 600, 660], ["URB wird verkauft."]]).values()
    assert str(line.state) == "question"
