"""By how much more an order may be is no second smallest order, wherever it stands."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["Grade", "g/m²", "EUR/t"], ["GC1", 300, 1200], ["GD2", 350, 900], []]


@pytest.mark.parametrize(
    "note",
    [
        "Minimum order 5 t, in multiples of 1 t", "Minimum order 5 t, multiples of 1 t",
        "Minimum order 5 t in steps of 1 t",
        "Minimum order 5 t, in increments of 500 kg.", "Mindestmenge 5 t, in Schritten von 1 t",
        "Mindestmenge 5 t, Vielfache von 1 t", "Commande minimum 5 t, par multiples de 1 t",
        "Pedido mínimo 5 t, en múltiplos de 1 t", "Minsta order 5 t, i multiplar om 1 t",
    ],
)  # fmt: skip
def test_steps_behind_a_comma_leave_the_smallest_order(note):
    found = lines([*ROWS, [note]]).values()
    assert [line.offer.minimum_kg for line in found] == [5000, 5000]
    assert not any("bracket-unread" in codes(line) for line in found)


@pytest.mark.parametrize(
    "note", ["Minimum order 5 t, 1 t for GD2", "Mindestmenge 5 t, GD2 1 t", "Pedido mínimo 5 t, GD2 1 t"]
)
def test_a_second_weight_of_a_board_is_its_smallest_order(note):
    assert [line.offer.minimum_kg for line in lines([*ROWS, [note]]).values()] == [5000, 1000]


def test_steps_alone_are_no_smallest_order():
    assert {line.offer.minimum_kg for line in lines([*ROWS, ["Orders in multiples of 1 t."]]).values()} == {None}
