"""A list that another text of the file calls by its name and says to be replaced holds no offers."""

import pytest

from tests.intake.sheets import book, grid, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

_HEAD = ["Board", "Caliper pt", "lb/MSF", "$/short ton"]
_OLD = [_HEAD, ["SBS C1S", 14, 59, 1190], ["CRB C1S", 20, 79, 860]]
_NEW = [_HEAD, ["SBS C1S", 14, 59, 1225], ["CRB C1S", 20, 79, 895]]


def _states(said, old, new):
    """The states of the lines of both lists beside a cover sheet."""
    cover = grid([["Price workbook"], [], [said], ["Prices in US dollars per short ton."]], sheet="Cover")
    found = read_workbook(book(cover, grid(_OLD, sheet=old), grid(_NEW, sheet=new)), Answers()).lines
    return tuple({line.state for line in found if line.offer.source.sheet == name} for name in (old, new))


@pytest.mark.parametrize(
    ("said", "old", "new"),
    [
        (
            "List 15 took the place of List 14 on October 1, 2026. List 14 is superseded and stays in this workbook.",
            "List 14",
            "List 15",
        ),
        ("List 14 stays in this workbook for your records only.", "List 14", "List 15"),
        ("List 14 is no longer valid.", "List 14", "List 15"),
        ("List 14 was replaced by List 15.", "List 14", "List 15"),
        ("The sheet Spring is superseded by the sheet Autumn.", "Spring", "Autumn"),
        ("Liste 15 ersetzt Liste 14.", "Liste 14", "Liste 15"),
        ("Liste 14 wurde durch die Liste 15 abgelöst.", "Liste 14", "Liste 15"),
        ("La liste 15 remplace la liste 14.", "Liste 14", "Liste 15"),
        ("La liste 14 a été remplacée par la liste 15.", "Liste 14", "Liste 15"),
        ("La lista 15 sustituye a la lista 14.", "Lista 14", "Lista 15"),
        ("La lista 14 queda anulada.", "Lista 14", "Lista 15"),
        ("Lista 15 ersätter lista 14.", "Lista 14", "Lista 15"),
        ("Lista 14 gäller inte längre.", "Lista 14", "Lista 15"),
    ],
)
def test_a_sheet_said_to_be_replaced_offers_nothing(said, old, new):
    assert _states(said, old, new) == (set(), {State.ACCEPTED})


@pytest.mark.parametrize(
    "said",
    [
        "List 14 is not superseded.",
        "List 14 will be superseded by List 15 on January 1, 2027.",
        "List 14 and List 15 are valid.",
        "List 14 is valid until superseded.",
        "This workbook supersedes all earlier lists.",
    ],
)
def test_both_hold_where_neither_is_said_to_be_replaced(said):
    assert _states(said, "List 14", "List 15") == ({State.ACCEPTED}, {State.ACCEPTED})


@pytest.mark.parametrize(
    "said",
    [
        "List 14 is superseded for SBS.",
        "List 15, valid from October 1, 2026, replaces List 14.",
        "Orders under List 14 were cancelled.",
    ],
)
def test_what_bounds_it_is_asked_about(said):
    assert _states(said, "List 14", "List 15") == ({State.QUESTION}, {State.ACCEPTED})


def test_of_both_it_is_asked():
    assert _states("Both List 14 and List 15 are superseded.", "List 14", "List 15") == ({State.QUESTION},) * 2


@pytest.mark.parametrize("said", ["List 14 is superseded.", "List 15 replaces List 14."])
def test_a_table_called_so_by_its_title_offers_nothing(said):
    rows = [["Prices in US dollars per short ton."], [said], [], ["List 15"], *_NEW, [], ["List 14"], *_OLD]
    assert {line.offer.source.cell: line.state for line in read(rows).lines} == dict.fromkeys(
        ["D6", "D7"], State.ACCEPTED
    )


def test_a_sheet_holds_though_it_names_the_list_that_it_replaced():
    new = grid([["List 14 superseded"], ["Prices in US dollars per short ton."], *_NEW], sheet="List 15")
    found = read_workbook(book(new, grid(_OLD, sheet="List 14")), Answers()).lines
    assert {line.offer.source.sheet for line in found} == {"List 15"}
