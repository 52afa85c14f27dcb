"""Order sizes whose figures are written out, and loads that only the vendor can weigh."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.brackets_in_kg import in_kg
from tracker.intake.values.orders.minimum import find_minimum
from tracker.trade.offer import State
from tracker.trade.quantities import MassUnit

_HEAD = ["Grade", "g/m²", "µm"]


def asked(found):
    return {cell for cell, line in found.items() if line.state is State.QUESTION}


@pytest.mark.parametrize(
    "heads",
    [
        ("less than three tonnes", "three to ten tonnes", "over ten tonnes"),
        ("unter drei Tonnen", "von drei bis zehn Tonnen", "über zehn Tonnen"),
        ("moins de trois tonnes", "de trois à dix tonnes", "plus de dix tonnes"),
        ("menos de tres toneladas", "de tres a diez toneladas", "más de diez toneladas"),
        ("under tre ton", "tre till tio ton", "över tio ton"),
    ],
)
def test_order_sizes_whose_figures_are_written_out(heads):
    found = lines([["EUR per 1000 kg"], [*_HEAD, *heads], ["GC2", 250, 410, 1240, 1186, 1152]])
    assert asked(found) == set()
    sizes = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert sizes == [(None, 3000), (3000, 10000), (10000, None)]


def test_one_lot_of_a_weight_is_no_span():
    found = lines([["EUR/t"], [*_HEAD, "Price", "Remark"], ["GC2", 250, 410, 1240, "for one lot of 20 t"]])
    assert [line.offer.from_kg for line in found.values()] in ([None], [20000])


HEAD = ["Board", "gsm", "micron"]
BOARDS = [["GC1", 235, 380], ["GC2", 290, 480]]


def sized(heads, note=""):
    rows = [[*board, *(1300 - 40 * place - 10 * n for place in range(len(heads)))] for n, board in enumerate(BOARDS)]
    return lines([["EUR per tonne"], *([[note]] if note else []), [*HEAD, *heads], *rows])


@pytest.mark.parametrize(
    ("text", "start", "end"),
    [
        ("Orders up to three tonnes", None, 3000), ("over four and up to twelve tonnes", 4000, 12000),
        ("Over ten tonnes, up to twenty", 10000, 20000), ("from half a tonne", 500, None),
        ("bis drei Tonnen", None, 3000), ("über vier bis zwölf Tonnen", 4000, 12000),
        ("ab einer halben Tonne", 500, None), ("jusqu'à trois tonnes", None, 3000),
        ("de quatre à douze tonnes", 4000, 12000),
        ("más de cuatro y hasta doce toneladas", 4000, 12000), ("över fyra och upp till tolv ton", 4000, 12000),
    ],
)  # fmt: skip
def test_figures_written_out_are_read(text, start, end):
    size = in_kg(bracket_text(text), MassUnit.TONNE)
    assert (size.from_kg, size.below_kg, size.unread) == (start, end, False)


@pytest.mark.parametrize("text", ["two sides", "one lot of twenty tonnes", "six", "three qualities"])
def test_other_words_with_numbers_are_no_sizes(text):
    assert bracket_text(text) is None


def test_a_tonne_is_not_half_of_one():
    assert find_minimum("Nothing below half a tonne is accepted.").kg() == 500
    assert find_minimum("3 tonne minimum per quality").kg() == 3000


@pytest.mark.parametrize("load", ["Full lorry", "Voller Lastzug", "Camion plein", "Camión lleno", "Fullastad bil"])
def test_a_load_beside_sizes_is_asked_about(load):
    found = sized(["up to three tonnes", "over three tonnes", load])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted", "question"] * 2
    assert codes(found["F3"]) == {"bracket-unread"}


def test_a_key_names_its_unit_once():
    found = sized(["A", "B", "C"], "A = up to three tonnes, B = over three and up to eight, C = over eight tonnes")
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()][:3] == [
        (None, 3000), (3000, 8000), (8000, None),
    ]  # fmt: skip


@pytest.mark.parametrize("last", ["over 20,000 lb", "our choice"])
def test_a_key_in_two_units_or_with_one_size_leaves_the_bare_size_open(last):
    found = sized(["A", "B", "C"], f"A = up to 3 tonnes, B = over 3 and up to 8, C = {last}")
    assert str(found["E4"].state) == "question"


def test_sizes_down_a_column_are_read_in_words():
    rows = [["three to eight t", 1262], ["above eight t", 1237]]
    found = lines([["EUR/t"], ["Order size", "GC1 230 g/m²"], *rows])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [(3000, 8000), (8000, None)]


@pytest.mark.parametrize(
    "last",
    ["15 t & above", "15 t and greater", "15 t & mehr", "15 t u. darüber", "15 t & plus", "15 t & más", "15 t & uppåt"],
)
def test_where_the_largest_orders_begin(last):
    found = bracket_text(last)
    assert found is not None
    assert found.start is not None
    assert (found.end, found.alone, found.not_weight) == (None, False, "")


def test_such_a_size_among_others_is_no_question():
    heads = ["under 5", "5 to under 15", "15 & above"]
    group, units = ["Thickness", "Weight", "Tonnes per order"], ["mic", "gsm", *heads]
    found = lines([["URB greyboard, pence per kilo"], [], group, units, [750, 510, 61.5, 59.25, 57]])
    assert [(str(line.state), line.offer.from_kg) for line in found.values()] == [
        ("accepted", None), ("accepted", 5000), ("accepted", 15000),
    ]  # fmt: skip
    odd = lines(
        [["URB greyboard, pence per kilo"], [], group, [*units[:4], "15 & thereabouts"], [750, 510, 61.5, 59, 57]]
    )
    assert str(odd["E5"].state) == "question"
