"""A charge on all boards but some that are named before it, and on kinds of board with their grades in brackets."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GZ", 280, 1400], ["GD2", 300, 800], ["URB", 500, 650]]


def _charged(note):
    return [[charge.price for charge in line.offer.charges] for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "On all grades except GZ we add an energy surcharge of 3 %.",
        "Auf alle Sorten außer GZ kommt ein Energiezuschlag von 3 %.",
        "Sur toutes les qualités sauf GZ nous ajoutons un supplément énergie de 3 %.",
        "En todas las calidades salvo GZ añadimos un recargo energético del 3 %.",
        "På alla kvaliteter utom GZ lägger vi på 3 % energitillägg.",
    ],
)
def test_all_but_some_bear_it(note):
    assert _charged(note) == [[3], [], [3], [3]]


@pytest.mark.parametrize(
    "note",
    [
        "Beim GD2 kommen 18 EUR/t Energiezuschlag dazu.", "Für den GD2 kommen 18 EUR/t Energiezuschlag dazu.",
        "Sobre el GD2 aplicamos un recargo energético de 18 EUR/t.",
    ],
)  # fmt: skip
def test_a_board_with_its_article_bears_it_alone(note):
    assert _charged(note) == [[], [], [18], []]


@pytest.mark.parametrize(
    "note",
    [
        "We are passing on an energy surcharge of EUR 22 per tonne on the recycled boards (CRB and URB).",
        "Energiezuschlag von 22 EUR/t auf die recycelten Sorten (CRB und URB).",
        "Supplément énergie de 22 EUR/t sur les cartons recyclés (CRB et URB).",
        "Recargo energético de 22 EUR/t en los cartones reciclados (CRB y URB).",
    ],
)
def test_kinds_are_those_in_brackets(note):
    assert _charged(note) == [[], [], [22], [22]]


def test_what_is_excepted_from_small_orders_is_not_read_so():
    assert _charged("On all orders except GZ we add an energy surcharge of 3 % below 5 t.") != [[3], [], [3], [3]]


@pytest.mark.parametrize(
    "note",
    [
        "All grades except GZ: energy surcharge 25 EUR/t", "All but GZ: energy surcharge 25 EUR/t",
        "Alle Sorten außer GZ: Energiezuschlag 25 EUR/t", "Alles außer GZ: Energiezuschlag 25 EUR/t",
        "Tout sauf GZ : surcharge énergie 25 €/t", "Toutes qualités sauf GZ : surcharge énergie 25 €/t",
        "Todo salvo GZ: recargo energético 25 €/t", "Todas las calidades salvo GZ: recargo energético 25 €/t",
        "Alla utom GZ: energitillägg 25 EUR/t", "Alla kvaliteter utom GZ: energitillägg 25 EUR/t",
    ],
)  # fmt: skip
def test_all_but_one_told_before_the_charge(note):
    assert _charged(note) == [[25], [], [25], [25]]


@pytest.mark.parametrize("note", ["GZ only: energy surcharge 25 EUR/t", "Nur GZ: Energiezuschlag 25 EUR/t"])
def test_the_opposite_of_all_but_one(note):
    assert _charged(note) == [[], [25], [], []]
