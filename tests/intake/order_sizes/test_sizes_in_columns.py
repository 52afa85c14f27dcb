"""Order sizes down a column: one a row, one a board, and some that are no weights."""

import pytest

from tests.intake.sheets import codes, lines

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_one_order_size_a_board_under_a_head_that_says_orders_is_one():
    found = lines([[*HEAD, "Order qty lb", "$/cwt"], [*BOARD, 20000, 62], ["CRB", 18, 70, 40000, 45]])
    assert [round(line.offer.from_kg) for line in found.values()] == [9072, 18144]


def test_brackets_down_hold_for_the_board_written_once_above():
    rows = [
        ["Grade", "µm", "g/m²", "Quantity", "EUR/t"],
        ["GC2", 380, 235, "from 3 t", 1260],
        [None, None, None, "from 10 t", 1205],
    ]
    found = lines(rows)
    assert [(line.offer.grade, line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        ("FBB", 3000, 10000),
        ("FBB", 10000, None),
    ]


@pytest.mark.parametrize(
    ("note", "grade"),
    [("(stock sizes only)", "FBB"), ("not stocked, made to order", "FBB"), ("Marlow White", None), ("GD2", "CRB")],
)
def test_a_remark_between_the_rows_of_a_group_leaves_it_one(note, grade):
    rows = [["Grade", "µm", "g/m²", "EUR/t"], ["GC2", 380, 235, 1260], [note], [None, 400, 250, 1205]]
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", grade]


def test_an_order_size_that_is_no_weight_is_asked():
    line = lines([["USD per short ton"], [], ["Board", "pt", "lb/MSF", "Full truckload"], ["SBS", 18, 75, 1100]])["D4"]
    assert codes(line) == {"bracket-unread"}


_HEAD = ["Kvalitet", "Gramvikt", "Tjocklek", "Pris", "Valuta", "Per", "Kvantitet"]
_ROWS = [["GC1", "250 g/m²", "400 µm", 1215, "EUR", "ton"], ["GD2", "320 g/m²", "390 µm", 0.845, "EUR", "kg"]]


@pytest.mark.parametrize("size", ["vid helbil", "bei vollem LKW", "par camion complet", "en camión completo", "Osmund"])
def test_an_order_size_of_one_row_that_is_no_weight_is_asked(size):
    found = lines([_HEAD, [*_ROWS[0], size], _ROWS[1]])
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]
    assert "bracket-unread" in codes(found["D2"])


def test_words_in_every_row_part_no_order_sizes():
    found = lines([_HEAD, [*_ROWS[0], "1 lot"], [*_ROWS[1], "1 lot"]])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]


_UNITS = {
    "en": ("Scale from", "UoM"),
    "de": ("Staffel ab", "ME"),
    "es": ("Cantidad desde", "Unidad"),
    "sv": ("Från", "Enhet"),
}


@pytest.mark.parametrize(("start", "unit"), _UNITS.values(), ids=_UNITS)
def test_a_column_of_units_right_of_an_order_size_is_the_order_size_s(start, unit):
    head = ["Board", "g/m²", "Dicke mm", start, unit, "Betrag", "Währung", "pro", unit]
    rows = [
        ["GD2", "300", "0,39", "1.000", "KG", "868,00", "EUR", "1.000", "KG"],
        [None, None, None, "5.000", "KG", "839,00", "EUR", "1.000", "KG"],
    ]
    found = list(lines([head, *rows]).values())
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(1000, 5000), (5000, None)]
    assert {str(line.state) for line in found} == {"accepted"}


def test_one_that_is_no_unit_of_weight_is_asked_about():
    head = ["Board", "g/m²", "Dicke mm", "Staffel ab", "ME", "Betrag", "Währung", "pro", "ME"]
    board = ["GD2", "300", "0,39"]
    rows = [[*board, "5", "PAL", "868,00", "EUR", "1.000", "KG"], [*board, "10", "PAL", "839,00", "EUR", "1.000", "KG"]]
    assert {str(line.state) for line in lines([head, *rows]).values()} == {"question"}


@pytest.mark.parametrize("size", ["any", "beliebig", "toutes quantités", "cualquier cantidad", "valfri"])
def test_a_price_for_orders_of_any_size(size):
    heads = ["Board", "pt", "lb/MSF", "Quantity", "Price"]
    found = lines([["USD/cwt"], heads, ["SBS", 18, 76, "10,000 lb and over", 52.4], ["CUK", 21, 88, size, 51]])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]
    found = lines([["USD/cwt"], heads, ["SBS", 18, 76, "10,000 lb and over", 52.4], ["CUK", 21, 88, "some", 51]])
    assert [str(line.state) for line in found.values()] == ["accepted", "question"]


@pytest.mark.parametrize("head", ["à partir de", "ab", "desde", "från", "from"])
def test_a_lone_word_heads_what_orders_begin_at(head):
    rows = [["GC2", 250, 410, "1 t", 1244], ["GC2", 250, 410, "10 t", 1199]]
    found = lines([["Grade", "g/m²", "µm", head, "EUR/t"], *rows])
    assert [(line.state, line.offer.from_kg) for line in found.values()] == [("accepted", 1000), ("accepted", 10000)]
