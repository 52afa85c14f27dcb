"""Boards that a sentence excepts from how the others are delivered, in full words."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 230, 370, 1268], ["GD2", 300, 385, 862], ["Greyboard", 400, 600, 688]]


def delivered(note, above):
    """Whether each board is delivered, by a note over the table or below it."""
    table = [["Board", "g/m²", "µm", "EUR/t"], *BOARDS]
    rows = [["Ostwerk Karton AB"], [note], [], *table] if above else [["Ostwerk Karton AB"], *table, [], [note]]
    return [line.offer.delivered for line in lines(rows).values()]


@pytest.mark.parametrize("above", [True, False])
@pytest.mark.parametrize(
    "note",
    [
        "Freight to your plant is included in all prices but those for greyboard, which is sold FOB Ardal, Oregon.",
        "Prices are delivered to your works. Greyboard, however, is sold ex works.",
        "Prices are delivered, with one exception: the greyboard is sold ex works.",
        "Die Preise gelten frei Ihrem Werk, der Graukarton hingegen ab Werk Adlau.",
        "Geliefert wird DAP Ihr Werk. Ausgenommen ist der Graukarton, den wir ab Werk Adlau verkaufen.",
        "Nos prix s'entendent rendu votre usine, sauf pour le carton gris, vendu départ usine.",
        "Nos prix s'entendent rendu votre usine. Le carton gris, en revanche, est vendu départ usine.",
        "Son precios puestos en su fábrica; la excepción es el cartón gris, que se entiende en nuestra fábrica.",
        "Son precios puestos en su fábrica. El cartón gris, en cambio, se vende en fábrica.",
        "Priserna är fritt levererat till er fabrik. Gråpappen säljer vi däremot fritt vårt bruk, utan frakt.",
    ],
)
def test_the_boards_excepted_are_not_delivered(note, above):
    assert delivered(note, above) == [True, True, False]


@pytest.mark.parametrize(
    "note",
    [
        "Prices are f.o.b. our mill, with one exception: the greyboard is quoted delivered to your plant.",
        "Die Preise gelten ab Werk, der Graukarton hingegen frei Haus.",
    ],
)
def test_the_boards_excepted_may_be_those_delivered(note):
    assert delivered(note, True) == [False, False, True]


@pytest.mark.parametrize("above", [True, False])
@pytest.mark.parametrize(
    "note",
    [
        "Prices ex works, with one exception: our Kvist boards are delivered.",
        "Prices delivered, except our Kvist boards, which are sold ex works.",
        "Preise frei Haus, außer für unsere Kvist-Sorten, die wir ab Werk verkaufen.",
        "Prix franco, sauf pour la gamme Kvist, vendue départ usine.",
    ],
)
def test_nothing_is_known_of_any_board_where_it_is_not_told_which_are_excepted(note, above):
    assert delivered(note, above) == [None] * 3


@pytest.mark.parametrize(
    "note",
    [
        "Prices delivered, except for the recycled board, which is sold ex works.",
        "Precios franco destino, salvo para el cartón reciclado, que se vende en fábrica.",
        "Priserna är fritt levererat, utom för returkartongen som säljs fritt vårt bruk.",
    ],
)
def test_a_kind_of_board_is_its_grades_and_leaves_grey_board_open(note):
    assert delivered(note, False) == [True, False, None]


def test_two_kinds_of_brown_board_are_meant_by_kraft():
    note = "Prices f.o.b. our mill, with one exception: the two unbleached kraft items are quoted delivered."
    rows = [["Ostwerk Karton AB"], [note], [], ["Board", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 76, 1188]]
    rows += [["Coated unbleached kraft", 18, 75, 1131], ["Uncoated chipboard", 28, 99, 742]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True, False]


@pytest.mark.parametrize(
    "note",
    [
        "Freight is at the buyer's expense.",
        "Die Fracht geht zu Lasten des Käufers.",
        "Le transport est à la charge de l'acheteur.",
        "Los portes corren a cargo del comprador.",
        "Frakten betalas av köparen.",
    ],
)
def test_freight_that_the_buyer_bears_is_not_in_the_prices(note):
    assert delivered(note, False) == [False] * 3


def test_a_lead_time_set_against_all_others_leaves_the_delivery_of_its_board():
    assert delivered("Prices delivered. Greyboard, however, needs a lead time of 6 weeks.", True) == [True] * 3
