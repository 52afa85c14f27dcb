"""Smallest orders told in rolls or pallets."""

from decimal import Decimal

import pytest

from tracker.intake.values.orders.minimum import find_minimum


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Minimum order 3 skids of 1000 kg", 3000),
        ("Minimum order two reels, reel weight 650 kg", 1300),
        ("Minimum order 2 rolls per item, 650 kg each", 1300),
        ("Mindestmenge: 2 Rollen, Rollengewicht 650 kg", 1300),
        ("Mindestabnahme 4 Paletten (Palettengewicht 700 kg)", 2800),
        ("Mindestabnahme 4 Paletten à 700 kg", 2800),
        ("Commande minimum : 4 palettes de 700 kg", 2800),
        ("Commande minimum 2 bobines, poids bobine 650 kg", 1300),
        ("Pedido mínimo 4 palets, peso del palet 700 kg", 2800),
        ("Minsta order 2 rullar, rullvikt 650 kg", 1300),
    ],
)
def test_so_many_pieces_weigh_so_many_times_one(text, kg):
    assert find_minimum(text).kg() == Decimal(kg)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Minimum order 3 pallets (2100 kg)", 2100),
        ("Mindestmenge 3 Paletten = 2100 kg", 2100),
        ("Mindestmenge 2100 kg (3 Paletten à 700 kg)", 2100),
        ("Minimum order 2 rolls or 650 kg", 650),
        ("Minimum order 1 pallet of 700 kg", 700),
        ("Minimum order 5000 kg, pallets of 700 kg", 5000),
    ],
)
def test_the_weight_of_all_is_multiplied_by_nothing(text, kg):
    assert find_minimum(text).kg() == Decimal(kg)


def test_two_or_three_rolls_leave_it_open():
    assert find_minimum("Minimum order 2-3 rolls of 650 kg") is None
