"""A smallest order told of some boards, and behind a semicolon another of others."""

import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize(
    "note",
    [
        "Minimum order: 5 t for GC; 2 t for GD and GT.",
        "Mindestmenge: 5 t bei GC; 2 t bei GD und GT.",
        "Commande minimum : 5 t en GC ; 2 t en GD et GT.",
        "Pedido mínimo: 5 t en GC; 2 t en GD y GT.",
        "Minsta order: 5 t för GC; 2 t för GD och GT.",
    ],
)
def test_each_has_its_own(note):
    rows = (["GC1", 230, 375, 1310], ["GD2", 300, 400, 915], ["GT2", 320, 435, 950])
    found = lines([["EUR/t, DAP"], ["Grade", "g/m²", "µm", "Price"], *map(list, rows), [note]])
    assert [line.offer.minimum_kg for line in found.values()] == [5000, 2000, 2000]


def test_a_weight_in_some_weeks_is_no_smallest_order():
    note = "Minimum order: 5 t for GC; 2 t in 4 weeks for GD."
    rows = (["GC1", 230, 375, 1310], ["GD2", 300, 400, 915])
    found = lines([["EUR/t, DAP"], ["Grade", "g/m²", "µm", "Price"], *map(list, rows), [note]])
    assert next(line.offer.minimum_kg for line in found.values()) == 5000
