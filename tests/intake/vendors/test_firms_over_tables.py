"""A sheet with several tables, each under the name of the firm that offers what stands in it."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "gsm", "micron", "price"]
ONE = [HEAD, ["GC1", 240, 385, 1095], ["GD2", 350, 450, 690]]
TWO = [HEAD, ["GC2", 300, 500, 835]]
THREE = [HEAD, ["GC2", 320, 540, 845]]
AGENT = [["Pellgate Board Agents"], ["Weekly offers – valid until 27 March 2026"], []]


def vendors(*titles):
    rows = [row for title, table in zip(titles, (ONE, TWO, THREE), strict=False) for row in ([title], *table, [])]
    found = lines([*AGENT, *rows]).values()
    assert all(str(line.state) == "accepted" for line in found)
    return [line.offer.vendor for line in found][1:]


@pytest.mark.parametrize(
    ("first", "second", "third"),
    [
        ("ORVALDA KARTON – EUR per tonne, EXW mill, 6 weeks", "SORBEK BOARD – USD per metric ton, 8 weeks",
         "HOLLMERE MILL – GBP per tonne, delivered UK"),
        ("Orvalda Karton GmbH: EUR/t ab Werk", "Sorbek Karton: EUR/t, 8 Wochen",
         "Papierfabrik Hollmere: EUR/t frei Haus"),
        ("Cartonnerie Orvalda – EUR/t départ usine", "Sorbek Carton – EUR/t franco",
         "Papeterie Hollmere – EUR/t franco"),
        ("Papelera Orvalda – EUR/t en fábrica", "Sorbek Cartón – EUR/t, 8 semanas", "Cartonera Hollmere – EUR/t"),
        ("Orvalda Kartong AB – SEK/ton (1000 kg) fritt fabrik", "Sorbek Board – EUR/ton (1000 kg)",
         "Hollmere Bruk – EUR/ton (1000 kg)"),
    ],
)  # fmt: skip
def test_each_table_is_offered_by_the_firm_over_it(first, second, third):
    one, two, three = vendors(first, second, third)
    assert (one, three) == tuple(title.split(" – ")[0].split(": ")[0] for title in (first, third))
    assert two in (None, second.split(" – ")[0].split(": ")[0])


def test_what_may_be_another_firm_is_not_the_one_above():
    assert vendors("ORVALDA KARTON – EUR per tonne", "FENNTALWERK – EUR per tonne, 8 weeks") == ["ORVALDA KARTON", None]


@pytest.mark.parametrize("second", ["Sheets – EUR per tonne", "Stock lots, EUR per tonne", "GD2 – EUR per tonne"])
def test_a_firm_goes_on_quoting_under_the_titles_of_its_own_tables(second):
    assert vendors("ORVALDA KARTON – EUR per tonne", second) == ["ORVALDA KARTON"] * 2


def test_what_stands_below_the_second_firm_is_not_the_firsts():
    told = vendors("ORVALDA KARTON – EUR per tonne", "HOLLMERE MILL – EUR per tonne", "Sheets – EUR per tonne")
    assert told == ["ORVALDA KARTON", "HOLLMERE MILL", "HOLLMERE MILL"]


@pytest.mark.parametrize(
    ("first", "second", "third", "expected"),
    [
        ("ORVALDA KARTON", "SORBEK BOARD", "HOLLMERE MILL", "SORBEK BOARD"),
        ("ORVALDA KARTON", "FENNTAL", "HOLLMERE MILL", None),
        ("Offer from Orvalda Karton, EXW", "Offer from Sorbek Board, FOB", "Offer from Hollmere Mill, DAP",
         "Sorbek Board"),
        ("ORVALDA KARTON", "GD2", "HOLLMERE MILL", "ORVALDA KARTON"),
        ("ORVALDA KARTON", "Sheets", "HOLLMERE MILL", "ORVALDA KARTON"),
    ],
)  # fmt: skip
def test_names_alone_over_tables(first, second, third, expected):
    head = [*HEAD[:3], "EUR/t"]
    tables = ([head, *ONE[1:]], [head, *TWO[1:]], [head, *THREE[1:]])
    rows = [row for title, table in zip((first, second, third), tables, strict=True) for row in ([title], *table, [])]
    assert [line.offer.vendor for line in lines([*AGENT, *rows]).values()][2] == expected
