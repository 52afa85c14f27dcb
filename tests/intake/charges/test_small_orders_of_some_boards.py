"""What small orders of one board cost more is told of that board, and what all do of all."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["Grade", "g/m²", "EUR/t"], ["GC1", 300, 1200], ["GD2", 350, 900], []]
NOTE = "bracket-unread"


def told(note):
    return [NOTE in codes(line) for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "GC1 has a surcharge of €20/t below 5 t", "GC1: surcharge of €20/t below 5 t",
        "GC1 hat einen Zuschlag von 20 €/t unter 5 t", "GC1: Zuschlag 20 €/t unter 5 t",
        "GC1 : supplément de 20 €/t en dessous de 5 t", "GC1: recargo de 20 €/t por debajo de 5 t",
        "GC1: tillägg 20 €/t under 5 t",
    ],
)  # fmt: skip
def test_one_boards_small_orders_are_no_others(note):
    assert told(note) == [True, False]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge €20/t below 5 t.", "A surcharge of €20/t applies to orders below 5 t.",
        "Energiezuschlag 20 €/t unter 5 t.", "Surcharge énergie 20 €/t en dessous de 5 t.",
        "Recargo de energía 20 €/t por debajo de 5 t.", "Energitillägg 20 €/t under 5 t.",
    ],
)  # fmt: skip
def test_those_of_all_boards_are_told_of_all(note):
    assert told(note) == [True, True]


@pytest.mark.parametrize("note", ["Energy surcharge €20/t on all orders.", "Energiezuschlag 20 €/t."])
def test_a_charge_of_all_orders_is_a_charge(note):
    found = lines([*ROWS, [note]]).values()
    assert [[int(charge.price) for charge in line.offer.charges] for line in found] == [[20], [20]]
    assert told(note) == [False, False]


def test_prices_for_larger_orders_are_told_nothing_of_small_ones():
    head = ["Grade", "g/m²", "1-5 t", "5 t +"]
    found = lines([["EUR/t"], head, ["GC1", 300, 1200, 1150], [], ["Energy surcharge €20/t below 5 t."]])
    assert [len(line.offer.charges) for line in found.values()] == [1, 0]
    assert not any(NOTE in codes(line) for line in found.values())
