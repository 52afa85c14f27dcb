"""What part loads are charged belongs to the prices for part loads; a railcar is no truck."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Board", "pt", "lb/MSF", "LTL", "TL"]
ROW = ["SBS C1S", 16, 67, 66.2, 61.8]
SIZES = "US$ per cwt, delivered. TL = 40,000 lb or more in one shipment; LTL = anything less."


def charged(*rows):
    return [[str(charge.price) for charge in line.offer.charges] for line in lines(list(rows)).values()]


def test_the_charge_is_the_part_loads_alone():
    note = "LTL shipments carry a fuel surcharge of $0.85 per cwt, not included; TL does not."
    part, full = lines([[SIZES], [note], HEAD, ROW]).values()
    assert [str(charge.price) for charge in part.offer.charges] == ["0.85"]
    assert full.offer.charges == ()
    assert "bracket-unread" not in codes(part) | codes(full)


@pytest.mark.parametrize(
    ("part", "full", "note"),
    [
        ("Teilladung", "Komplettladung", "Teilladungen tragen einen Energiezuschlag von 12 EUR/t"),
        ("groupage", "camion complet", "Les groupages supportent une surcharge énergie de 12 EUR/t"),
        ("carga parcial", "camión completo", "Cargas parciales: recargo por energía 12 EUR/t"),
        ("styckegods", "helt lass", "Styckegods: energitillägg 12 EUR/ton"),
    ],
)
def test_in_other_languages(part, full, note):
    head = ["Board", "µm", "g/m²", f"{part} EUR/t", f"{full} EUR/t"]
    assert charged([note], head, ["GC1", 405, 250, 1310, 1260]) == [["12"], []]


def test_beside_prices_of_no_kind_of_load_it_is_told():
    note = "Part loads: energy surcharge 12 EUR/t"
    (line,) = lines([[note], ["Board", "µm", "g/m²", "EUR/t"], ["GC1", 405, 250, 1310]]).values()
    assert line.offer.charges == ()
    assert "bracket-unread" in codes(line)


def test_a_charge_beside_what_a_load_weighs_is_of_all():
    assert charged([SIZES], ["Energy surcharge 3 %, full truckload 40,000 lb"], HEAD, ROW) == [["3"], ["3"]]


def test_what_a_truck_weighs_says_nothing_of_a_railcar():
    found = list(lines([[SIZES], [*HEAD, "Railcar"], [*ROW, 60.4]]).values())
    assert [str(line.state) for line in found] == ["accepted", "accepted", "question"]
    assert codes(found[2]) == {"bracket-unread"}


def test_a_railcar_that_is_weighed_is_read():
    found = list(lines([[SIZES + " Railcar = 88,000 lb."], [*HEAD, "Railcar"], [*ROW, 60.4]]).values())
    assert [str(line.state) for line in found] == ["accepted"] * 3
