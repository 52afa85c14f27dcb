"""What a note says of all but some boards, or but the marked lines, holds for the others alone."""

import pytest

from tests.intake.sheets import lines

_ROWS = [
    ["USD per short ton, FOB mill"], ["Grade", "pt", "lb/MSF", "Price"],
    ["SBS C1S", 16, 68, 1200], ["CRB", 20, 79, 850], ["URB", 24, 90, 700],
]  # fmt: skip


def leads(said):
    return [line.offer.lead_days for line in lines([*_ROWS, [said]]).values()]


@pytest.mark.parametrize(
    "said",
    [
        "Lead time 4 weeks except SBS", "Lead time 4 weeks, except for SBS", "Lead time: 4 weeks, SBS excepted",
        "Except SBS, lead time is 4 weeks", "Lieferzeit 4 Wochen außer SBS", "Lieferzeit 4 Wochen, SBS ausgenommen",
        "Délai 4 semaines sauf SBS", "Plazo 4 semanas salvo SBS", "Leveranstid 4 veckor utom SBS",
        "Lead time 4 weeks except SBS trim rolls",
    ],
)  # fmt: skip
def test_the_excepted_board_has_no_time_and_the_others_have(said):
    assert leads(said) == [None, (28, 28), (28, 28)]


@pytest.mark.parametrize(
    "said",
    [
        "Lead time 4 weeks except for CRB: 2 weeks", "Lieferzeit 4 Wochen, außer CRB (2 Wochen)",
        "Délai 4 semaines sauf CRB (2 semaines)", "Plazo 4 semanas salvo CRB: 2 semanas",
    ],
)  # fmt: skip
def test_what_is_said_behind_the_exception_is_its_own(said):
    assert leads(said) == [(28, 28), (14, 14), (28, 28)]


def test_boards_of_a_measure_are_excepted_too():
    assert leads("Lead time 4 weeks except for 24 pt") == [(28, 28), (28, 28), None]


def test_a_smallest_order_is_of_the_others():
    found = lines([*_ROWS, ["Minimum 10,000 lb except CRB"]]).values()
    assert [line.offer.minimum_kg is None for line in found] == [False, True, False]


def test_a_note_without_exception_holds_for_all():
    assert leads("Lead time 4 weeks") == [(28, 28)] * 3


HEAD = ["Board", "g/m²", "µm", "Price"]
BOARDS = [["GC2", 250, 410, "1090"], ["GC1", 250, 400, "1135*"], ["GD2", 350, 465, "842"]]


def delivered(*notes, boards=BOARDS):
    return [line.offer.delivered for line in lines([*([note] for note in notes), HEAD, *boards]).values()]


@pytest.mark.parametrize(
    "note",
    ["Prices EUR per tonne, EXW unless marked *", "Preise EUR/t, ab Werk, sofern nicht mit * gekennzeichnet",
     "Prix EUR/t, départ usine sauf prix marqués *", "Precios EUR/t, EXW salvo los marcados con *",
     "Priser EUR/t, fritt fabrik om ej märkt *", "Prices EUR per tonne, EXW other than marked *",
     "Preise EUR/t, ab Werk, mit Ausnahme von mit * markierten"],
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


def test_what_is_said_to_all_with_a_mark_excepts_none():
    assert delivered("Prices EUR per tonne, delivered to all, marked *") == [True] * 3
