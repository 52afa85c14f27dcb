"""Smallest orders told in rolls or pallets."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
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


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Minimum order 6 pallets of 4,500 kg total", 4500),
        ("Minimum order 9 rolls of 9,000 kg in all", 9000),
        ("Mindestmenge 6 Paletten mit 4.500 kg insgesamt", 4500),
        ("Commande minimum : 6 palettes de 4500 kg au total", 4500),
        ("Pedido mínimo 6 palets de 4500 kg en total", 4500),
        ("Minsta order 6 pallar om 4500 kg totalt", 4500),
        ("Minimum order 6 pallets at 700 kg each", 4200),
        ("Mindestmenge 6 Paletten mit je 700 kg", 4200),
        ("Minimum order 9 pallets at 900 kg", 8100),
    ],
)
def test_words_behind_the_weight_say_whose_it_is(text, kg):
    assert find_minimum(text).kg() == Decimal(kg)


@pytest.mark.parametrize(
    "text",
    [
        "Mindestmenge 9 Rollen von 6 t", "Mindestmenge 7 Paletten zu 3 t", "Mindestmenge 5 Paletten von 2.600 kg",
        "Commande minimum : 7 palettes de 3 t", "Pedido mínimo 9 bobinas de 6 t",
        "Minsta order 6 pallar på 4000 kg", "Minimum order 9 rolls at 14,000 lb", "Mindestmenge 3 Rollen mit 2.100 kg",
        "Minsta order 3 rullar med 2100 kg", "Pedido mínimo 3 bobinas con 2100 kg", "Minimum order 3 rolls at 2100 kg",
    ],
)  # fmt: skip
def test_a_weight_of_one_piece_or_of_all_is_left_open(text):
    assert find_minimum(text).kg() is None
    (line,) = lines([["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 240, 390, 1211], [], [text]]).values()
    assert (str(line.state), line.offer.minimum_kg, codes(line)) == ("accepted", None, {"bracket-unread"})


@pytest.mark.parametrize(
    "text",
    [
        "Minimum order 4 skids of 600 kg, total 2,400 kg", "Minimum order 4 skids of 600 kg, 2,400 kg in all",
        "Mindestmenge 4 Paletten à 600 kg gesamt 2.400 kg", "Commande minimum 4 palettes de 600 kg, au total 2 400 kg",
        "Pedido mínimo 4 palets de 600 kg, en total 2.400 kg", "Minsta order 4 pallar à 600 kg, totalt 2 400 kg",
    ],
)  # fmt: skip
def test_a_second_weight_behind_total_is_that_of_all(text):
    assert find_minimum(text).kg() == Decimal(2400)


@pytest.mark.parametrize(
    "text",
    [
        "Minimum order 20 skids of 900 kg combined", "Commande minimum : 4 palettes de 500 kg au total",
        "Pedido mínimo 4 palets de 500 kg en total", "Minimum order 5 skids of 900 kg, total 6,000 kg",
    ],
)  # fmt: skip
def test_a_total_that_cannot_be_one_is_told(text):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [text]]).values()
    assert line.offer.minimum_kg is None
    assert "bracket-unread" in codes(line)
