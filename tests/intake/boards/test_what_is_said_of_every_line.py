"""What a sheet says of every line holds for those that do not say their own."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

HEAD = ["Line", "Board", "lb/MSF", "Price $/short ton"]
ROWS = [["A", "SBS", 77, 1188], ["B", "CUK 24 pt", 98, 1066], ["C", "CRB C2S", 70, 897], ["D", "URB", 70, 790]]


def boards(found):
    return [(line.offer.caliper_um and float(line.offer.caliper_um), line.offer.coated_sides) for line in found]


def titled(title):
    return boards(lines([[title], [], HEAD, *ROWS]).values())


@pytest.mark.parametrize(
    "title",
    [
        "Everything on this page is 18 pt C1S unless the line says otherwise. $/short ton.",
        "Unless stated otherwise all boards are 18 pt C1S.", "18 pt C1S throughout unless noted",
        "Alle Kartons 18 pt C1S, sofern nicht anders angegeben. Preise in $/short ton",
        "Sofern in der Zeile nichts anderes steht, sind alle Kartons 18 pt und C1S.",
        "Tout est en 18 pt C1S sauf indication contraire de la ligne. $/short ton",
        "Salvo indicación contraria, todos los cartones son de 18 pt C1S.",
        "Om inget annat anges är alla kvaliteter 18 pt C1S.",
    ],
)  # fmt: skip
def test_a_measure_and_a_coating_hold_for_the_lines_that_say_none(title):
    assert titled(title) == [(457.2, 1), (609.6, 1), (457.2, 2), (457.2, None)]


@pytest.mark.parametrize(
    "title",
    [
        "All boards coated one side", "Alle Sorten einseitig gestrichen, sofern nicht anders angegeben",
        "Sauf indication contraire, tous les cartons sont couchés une face",
        "Salvo indicación contraria, todas las calidades estucadas a una cara",
        "Om inget annat anges är alla kvaliteter bestrukna på en sida",
    ],
)  # fmt: skip
def test_a_coating_may_be_said_in_words(title):
    assert [sides for _, sides in titled(title)] == [1, 1, 2, None]


def test_it_may_stand_below_and_on_another_sheet():
    note = "All boards are 18 pt unless the line says otherwise."
    below = boards(lines([HEAD, *ROWS, [], [note]]).values())
    apart = read_workbook(book(grid([HEAD, *ROWS]), grid([[note]], sheet="Terms")), Answers()).lines
    assert (
        [caliper for caliper, _ in below] == [caliper for caliper, _ in boards(apart)] == [457.2, 609.6, 457.2, 457.2]
    )


@pytest.mark.parametrize(
    "title",
    [
        "Everything is SBS C1S unless the line says otherwise.",
        "Sofern nicht anders angegeben, sind alle Zeilen SBS C1S",
    ],
)
def test_a_grade_said_of_every_line_leaves_no_doubt(title):
    rows = [[title], [], ["Line", "Caliper pt", "Price $/short ton"], ["X-1", 16, 1188], ["CRB X-3", 24, 866]]
    assert [(line.state, line.offer.grade) for line in lines(rows).values()] == [
        (State.ACCEPTED, "SBS"), (State.ACCEPTED, "CRB"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    "title",
    [
        "Tolerance 5 % on 18 pt unless otherwise stated", "Minimum caliper 18 pt unless otherwise agreed",
        "Prices are for 18 pt and up unless otherwise stated", "Roll width 40 in unless the line says otherwise",
        "18 pt available on request", "From 18 pt up add $20 unless the line says otherwise",
        "FBB 18 pt is made to order unless otherwise stated", "Alle Preise gelten, sofern nicht anders angegeben",
    ],
)  # fmt: skip
def test_measures_of_something_else_are_no_lines_own(title):
    assert [caliper for caliper, _ in titled(title)] == [None, 609.6, None, None]
