"""Tables of freight to places, beside the boards or below them, are no offers and no charge of their row's board."""

import pytest

from tests.intake.sheets import lines


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


@pytest.mark.parametrize("title", ["Freight rates, US$ per cwt, truckload 40,000 lb", "Fracht US$/cwt"])
def test_rates_by_zone_and_state_below_a_title_for_freight_are_no_board(title):
    rows = [[title], [], ["Zone", "States", "Rate"], [1, "OH, IN, MI", 1.65], [2, "IL, WI, MN", 2.05]]
    assert states(rows) == {}


HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def test_rates_below_a_heading_that_names_a_charge_are_no_offers():
    rows = [
        HEAD,
        SBS,
        [],
        ["Freight, US$ per short ton"],
        ["Zone 1", None, None, 38],
        ["CRB C1S 18 pt", None, None, 900],
    ]
    assert [line.offer.price for line in lines(rows).values()] == [1100, 900]


def test_freight_to_zones_across_is_no_offer():
    rows = [["GD2, EUR/t ab Werk"], [], ["Menge", "Zone 1", "Zone 2"], ["bis 5 t", 95, 110], ["ab 5 t", 60, 75]]
    assert not lines(rows)


def test_freight_to_zones_apart_from_the_boards_is_no_freight_of_their_rows():
    rows = [
        ["Preise EUR/t ab Werk"],
        ["Sorte", "g/m²", "µm", "Preis", None, "Frachtzone", "PLZ", "Fracht EUR/t"],
        ["GC1", 250, 405, 1204, None, "1", "0-1", 38],
        ["GD2", 350, 465, 846, None, "2", "2-5", 52],
    ]
    assert [line.offer.charges for line in lines(rows).values()] == [(), ()]


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
