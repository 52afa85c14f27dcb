"""Freight to places in columns of their own, in the rows of boards that have nothing to do with it."""

import pytest

from tests.intake.sheets import lines

BOARDS = [
    ["Sorte", "g/m²", "µm", "€/t ab Werk"],
    ["GD2", 290, 380, 866],
    ["GD2", 360, 480, 855],
    ["GT2", 310, 405, 968],
    ["GC2", 265, 425, 1239],
]


def beside(*rates):
    return [[*board, None, *rate] for board, rate in zip(BOARDS, rates, strict=True)]


def charged(rows):
    found = lines(rows)
    assert len(found) == 4
    return {str(charge.price) for line in found.values() for charge in line.offer.charges}


@pytest.mark.parametrize(
    ("heads", "places"),
    [
        (["Zone", "Fracht €/t"], ["1", "2", "3", "4"]),
        (["Ship to", "Freight €/t"], ["North", "South", "East", "West"]),
        (["Département", "Port €/t"], ["59", "69", "13", "75"]),
        (["Destino", "Porte €/t"], ["Norte", "Sur", "Este", "Islas"]),
        (["Ort", "Frakt EUR/ton"], ["Norra", "Södra", "Östra", "Västra"]),
        (["Wohin", "Fracht €/t"], ["Nord", "Süd", "Ost", "West"]),
    ],
)
def test_rates_to_places_in_columns_of_their_own_are_no_charge_of_the_board_in_their_row(heads, places):
    rates = [[place, rate] for place, rate in zip(places, (41, 52, 96, 60), strict=True)]
    assert charged(beside(heads, *rates)) == set()


def test_rates_may_begin_beside_the_units_of_the_boards_and_end_before_the_last():
    rows = [
        ["Clase", "Gramaje", "Calibre", "€/t", None, "Destino", "Flete €/t"],
        [None, "g/m²", "µm", None, None, "Levante", 34],
        ["GD2", 290, 380, 866, None, "Norte", 41],
        ["GC2", 265, 425, 1239],
    ]
    assert [line.offer.charges for line in lines(rows).values()] == [(), ()]


def test_several_loads_and_days_may_stand_behind_each_place():
    heads = ["Ziel", "Fracht LKW €/t", "Fracht Stückgut €/t", "Tage"]
    rates = [["Nord", 41, 61, 2], ["Süd", 52, 72, 3], ["Ost", 60, "auf Anfrage", 3], ["West", 70, 90, 4]]
    assert charged(beside(heads, *rates)) == set()


def test_freight_to_one_place_in_every_row_is_each_boards_own():
    assert charged(beside(["Ziel", "Fracht €/t"], *[["Nord", 41]] * 4)) == {"41"}


def test_freight_without_a_place_is_each_boards_own():
    assert charged(beside(["Fracht €/t"], [41], [45], [38], [40])) == {"41", "45", "38", "40"}
