"""Half a truckload beside a whole one and less than half of one: what each weighs, and where it ends."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State


def sized(note, heads, title="EUR/t"):
    """The (from, below) of each price in kg, 'asked' where its size is."""
    rows = [[title], ["Board", "g/m²", "µm", *heads], ["GD2", 410, 525, *range(910, 910 - 20 * len(heads), -20)]]
    found = lines([*rows, [], [note]]).values()
    return [(one.offer.from_kg, one.offer.below_kg) if one.state is State.ACCEPTED else "asked" for one in found]


@pytest.mark.parametrize(
    ("note", "heads"),
    [
        ("Full truck = 22 t, half truck = 11 t", ("less than half a truck", "half truck", "full truck")),
        ("Voller LKW ab 22 t; halber LKW: ab 11 t", ("unter halber LKW", "halber LKW", "voller LKW")),
        ("Camion complet = 22 t, demi-camion = 11 t", ("moins d'un demi-camion", "demi-camion", "camion complet")),
        ("Camión completo = 22 t; medio camión = desde 11 t", ("menos de medio camión", "medio camión", "camión")),
        ("Helt lass = 22 ton, halvt lass = 11 ton", ("under halvt lass", "halvt lass", "helt lass")),
        ("LKW = 22 t, halber LKW = 11 t", ("Stückgut", "halber LKW", "LKW")),
        ("LKW = 22 t, halber LKW = 11 t", ("bis halber LKW", "über halber LKW", "LKW")),
    ],
)
def test_half_a_load_parts_the_orders_below_it_from_those_above(note, heads):
    assert sized(note, heads) == [(None, 11000), (11000, 22000), (22000, None)]


def test_less_than_a_load_ends_where_one_begins():
    assert sized("Camión completo = 22 t", ("menos de un camión completo", "camión completo")) == [
        (None, 22000), (22000, None),
    ]  # fmt: skip


def test_what_half_a_load_weighs_is_asked_where_only_a_whole_one_is_weighed():
    assert sized("LKW = 22 t", ("unter halber LKW", "halber LKW", "LKW")) == ["asked", "asked", (22000, None)]


def test_half_a_load_is_asked_where_nobody_says_what_a_whole_one_weighs():
    assert sized("halber LKW = 11 t", ("halber LKW", "LKW")) == ["asked"] * 2


@pytest.mark.parametrize(
    "title",
    [
        "Precios EUR/t (tonelada de 1.000 kg)",
        "Prix en EUR la tonne de 1 000 kg",
        "Preise in EUR je Tonne von 1.000 kg",
        "Prix EUR/t en bobines de 800 kg",
        "Precios EUR/t en palés de 600 kg",
    ],
)
def test_what_a_tonne_or_a_reel_weighs_is_no_order_size(title):
    (line,) = lines([[title], ["Board", "g/m²", "µm", "EUR/t"], ["GD2", 410, 525, 890]]).values()
    assert (line.state, line.offer.from_kg, codes(line)) == (State.ACCEPTED, None, set())


@pytest.mark.parametrize(
    "title", ["Precios EUR/t para pedidos de 5 t o más", "Prix EUR/t à partir de 5 t", "Preise EUR/t ab 5 t"]
)
def test_orders_that_begin_at_a_weight_begin_there(title):
    (line,) = lines([[title], ["Board", "g/m²", "µm", "EUR/t"], ["GD2", 410, 525, 890]]).values()
    assert (line.state, line.offer.from_kg) == (State.ACCEPTED, 5000)


def test_half_a_load_by_its_abbreviation_is_half_a_load():
    heads = ("less than half TL", "half TL to under 1 TL", "1 TL and over")
    note = "1 truckload (TL) = 22 t. Half TL = 11 t."
    assert sized(note, heads) == [(None, 11000), (11000, 22000), (22000, None)]
