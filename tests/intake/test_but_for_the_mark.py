"""'EXW unless marked *' is said of the lines without the mark."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Board", "g/m²", "µm", "Price"]
BOARDS = [["GC2", 250, 410, "1090"], ["GC1", 250, 400, "1135*"], ["GD2", 350, 465, "842"]]


def delivered(*notes, boards=BOARDS):
    return [line.offer.delivered for line in lines([*([note] for note in notes), HEAD, *boards]).values()]


@pytest.mark.parametrize(
    "note",
    ["Prices EUR per tonne, EXW unless marked *", "Preise EUR/t, ab Werk, sofern nicht mit * gekennzeichnet",
     "Prix EUR/t, départ usine sauf prix marqués *", "Precios EUR/t, EXW salvo los marcados con *",
     "Priser EUR/t, fritt fabrik om ej märkt *"],
)  # fmt: skip
def test_the_mark_excepts_its_lines(note):
    assert delivered(note) == [False, None, False]
    assert delivered(note, "* = delivered to your plant") == [False, True, False]


def test_marked_lines_are_still_meant_by_their_mark():
    assert delivered("Prices EUR per tonne. Prices marked * are EXW") == [None, False, None]
    assert delivered("Prices EUR/t, delivered except those marked *, which are EXW") == [True, False, True]


def test_where_no_line_is_marked_it_holds_for_all():
    plain = [[*board[:3], board[3].strip("*")] for board in BOARDS]
    assert delivered("Prices EUR per tonne, EXW unless marked *", boards=plain) == [False] * 3
