"""Order sizes that go up to a load: where they end, and the load begins, is in the file or asked."""

import pytest

from tests.intake.sheets import codes, lines

METRIC = ["Sorte", "g/m²", "µm"]


def sized(unit, *heads, notes=()):
    rows = [[unit], [*METRIC, *heads], ["GC2", 280, 470, 1205, 1180, 1150], [], *([note] for note in notes)]
    return list(lines(rows).values())


def bounds(found):
    return [(line.offer.from_kg, line.offer.below_kg) for line in found]


CASES = [
    ("EUR per tonne", "Under 5 t", "5 t up to a truckload", "Full truckload", "A truckload weighs 22 t"),
    ("EUR per tonne", "Under 5 t", "5 t but less than a full truck", "Full truck", "Full truck = 22 t"),
    ("EUR je Tonne", "unter 5 t", "5 t bis zu einer vollen LKW-Ladung", "volle LKW-Ladung", "LKW-Ladung = 22 t"),
    ("EUR la tonne", "moins de 5 t", "de 5 t jusqu'au camion complet", "camion complet", "Camion complet : 22 t"),
    (
        "EUR por tonelada",
        "menos de 5 t",
        "de 5 t hasta un camión completo",
        "camión completo",
        "Camión completo = 22 t",
    ),
    ("EUR per ton (1000 kg)", "under 5 t", "5 t upp till en full bil", "full bil", "Full bil = 22 t"),
    ("EUR per tonne", "Under 5 t", "5 t and more, less than truckload", "Full truckload", "Full truckload = 22 t"),
]


@pytest.mark.parametrize(("unit", "first", "second", "load", "note"), CASES)
def test_a_size_up_to_a_load_does_not_say_what_the_load_weighs(unit, first, second, load, note):
    found = sized(unit, first, second, load)
    assert [str(line.state) for line in found][1:] == ["question", "question"]
    assert all("bracket-unread" in codes(line) for line in found[1:])


@pytest.mark.parametrize(("unit", "first", "second", "load", "note"), CASES)
def test_it_ends_at_the_weight_that_a_note_gives_the_load(unit, first, second, load, note):
    found = sized(unit, first, second, load, notes=[note])
    assert [str(line.state) for line in found] == ["accepted"] * 3
    assert bounds(found) == [(None, 5000), (5000, 22000), (22000, None)]


def test_part_loads_from_a_weight_end_where_full_loads_of_a_weight_begin():
    assert bounds(sized("EUR per tonne", "Under 5 t", "LTL 5 t and more", "TL 20 t and more")) == [
        (None, 5000),
        (5000, 20000),
        (20000, None),
    ]


ONE_LOAD = [
    ("5 t to under 1 truckload", "1 truckload and up"), ("5 t bis unter 1 LKW", "ab 1 LKW"),
    ("5 t à moins de 1 camion", "à partir de 1 camion"), ("5 t a menos de 1 camión", "desde 1 camión"),
    ("5 t till under 1 bil", "från 1 bil"),
]  # fmt: skip


@pytest.mark.parametrize(("size", "load"), ONE_LOAD)
def test_one_load_in_figures_ends_a_size_as_in_words(size, load):
    found = sized("EUR per tonne", "Under 5 t", size, load, notes=["1 truckload = 22 t"])
    assert bounds(found) == [(None, 5000), (5000, 22000), (22000, None)]


@pytest.mark.parametrize("size", ["5 t to under 10 truckloads", "5 t bis unter 10 LKW", "5 t up to 20 trucks"])
def test_the_figure_before_loads_counts_them_and_no_tons(size):
    found = sized("EUR per tonne", "Under 5 t", size, "from 30 truckloads")
    assert str(found[1].state) == "question"
    assert "bracket-unread" in codes(found[1])
