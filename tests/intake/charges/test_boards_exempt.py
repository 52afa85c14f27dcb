"""Charges that some boards do not bear, or that the coated ones alone bear, in whole sentences."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

BOARDS = [["GC1", 230, 370, 1268], ["GD2", 300, 385, 862], ["Greyboard", 400, 600, 688]]


def charged(note, boards=BOARDS):
    """What each board is charged; '?' where that is not certain."""
    found = lines([["Ostwerk Karton AB"], ["Board", "g/m²", "µm", "EUR/t"], *boards, [], [note]])
    told = (line.offer.charges for line in found.values())
    return [["?" if one.currency == OPEN else f"{one.price}" for one in each] for each in told]


@pytest.mark.parametrize(
    "note",
    [
        "We add an energy surcharge of €22 per tonne, from which greyboard is exempt.",
        "We add an energy surcharge of €22 per tonne. Greyboard is free of it.",
        "We add an energy surcharge of €22 per tonne to every grade but greyboard.",
        "An energy surcharge of €22 per tonne is added; it does not apply to greyboard.",
        "Wir berechnen einen Energiezuschlag von 22 €/t, von dem der Graukarton befreit ist.",
        "Wir berechnen einen Energiezuschlag von 22 €/t, davon ausgenommen ist Graukarton.",
        "Wir berechnen einen Energiezuschlag von 22 €/t, mit Ausnahme des Graukartons.",
        "Un supplément énergie de 22 € par tonne s'ajoute au prix, à l'exception du carton gris.",
        "Un supplément énergie de 22 €/t s'ajoute aux prix, dont le carton gris est exonéré.",
        "Un supplément énergie de 22 €/t s'ajoute aux prix ; le carton gris en est exempté.",
        "A estos precios se añade un recargo energético de 22 € por tonelada, del que queda exento el cartón gris.",
        "Se añade un recargo energético de 22 €/t; el cartón gris está exento.",
        "Se añade un recargo energético de 22 €/t, a excepción del cartón gris.",
        "Ett energitillägg på 22 EUR per ton tillkommer på allt utom gråpappen.",
        "Ett energitillägg på 22 EUR/t tillkommer, från vilket gråpappen är undantagen.",
        "Ett energitillägg på 22 EUR/t tillkommer, dock inte på gråpapp.",
    ],
)
def test_boards_that_are_exempt_bear_no_charge(note):
    assert charged(note) == [["22"], ["22"], []]


@pytest.mark.parametrize(
    "note",
    [
        "An energy surcharge of €22 per tonne is added. Greyboard is not exempt.",
        "Energiezuschlag 22 €/t. Graukarton ist davon nicht ausgenommen.",
        "Se añade un recargo energético de 22 €/t; el cartón gris no está exento.",
    ],
)
def test_boards_that_are_not_exempt_bear_it(note):
    assert charged(note) == [["22"], ["22"], ["22"]]


@pytest.mark.parametrize(
    "note",
    [
        "We add an energy surcharge of €22 per tonne to every coated grade. Uncoated chipboard is free of it.",
        "Wir berechnen einen Energiezuschlag von 22 €/t auf alle gestrichenen Sorten.",
        "Un supplément énergie de 22 € par tonne s'ajoute au prix des qualités couchées.",
        "Se añade un recargo energético de 22 €/t a las calidades estucadas.",
        "Ett energitillägg på 22 EUR/t tillkommer på alla bestrukna kvaliteter.",
    ],
)
def test_a_charge_on_coated_boards_is_on_no_others(note):
    assert charged(note) == [["22"], ["22"], []]


def test_whether_a_board_is_coated_may_be_open():
    note = "An energy surcharge of €22 per tonne is added on uncoated boards."
    boards = [*BOARDS, ["Folding boxboard", 300, 500, 1240]]
    assert charged(note, boards) == [[], [], ["22"], ["?"]]


def test_a_coated_board_that_is_freed_leaves_the_charge_open():
    note = "We add an energy surcharge of €22 per tonne to all coated boards. GD2 is free of it."
    assert charged(note)[1] != ["22"]


@pytest.mark.parametrize(
    "note",
    [
        "On weights under 250 g/m² we add a lightweight surcharge of €40 per tonne.",
        "Weights under 250 g/m² bear a lightweight surcharge of €40 per tonne.",
        "Auf Flächengewichte unter 250 g/m² kommt ein Leichtgewichtszuschlag von 40 €/t.",
        "Sur les grammages inférieurs à 250 g/m² s'ajoute un supplément de 40 € par tonne.",
        "A los gramajes inferiores a 250 g/m² se les suma un suplemento de manipulación de 40 €/t.",
        "På ytvikter under 250 g/m² tillkommer ett lättviktstillägg på 40 EUR per ton.",
    ],
)
def test_a_charge_on_some_measures_is_on_no_others(note):
    assert charged(note) == [["40"], [], []]


@pytest.mark.parametrize(
    "note",
    ["On weights under 250 g/m² prices rise by €40 per tonne.", "Weights under 250 g/m² cost €40 per tonne more."],
)
def test_what_changes_the_price_of_some_measures_is_no_charge(note):
    assert charged(note) == [[], [], []]
