"""A sheet whose name calls it old, beside one with the same boards, holds no offers."""

import pytest

from tests.intake.sheets import book, grid
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

HEAD = ["Grade", "pt", "lb/MSF", "$/cwt"]


def rows(price, *boards):
    return [
        HEAD,
        *([*board, price + place] for place, board in enumerate(boards or (("CRB", 18, 66), ("CRB", 20, 73)))),
    ]


def states(*sheets):
    """Sheet -> the states of its lines."""
    reading = read_workbook(book(*(grid(cells, sheet=name) for name, cells in sheets)), Answers())
    found = {name: set() for name, _ in sheets}
    for line in reading.lines:
        found[line.offer.source.sheet].add(line.state)
    why = {part.sheet: part.why for part in reading.passed_over}
    return found, why


@pytest.mark.parametrize(
    ("name", "other"),
    [
        ("Old 2025", "Current"),
        ("2025 old", "Current"),
        ("Old_2025", "Prices"),
        ("old prices", "Price list"),
        ("Old", "Current"),
        ("Old 2025", "2026"),
        ("Alt 2025", "Aktuell"),
        ("Alt", "Neu"),
        ("ancien 2025", "Tarif"),
        ("Ancien", "En vigueur"),
        ("viejo", "Actual"),
        ("Precios viejos", "Precios"),
        ("gamla priser", "Priser"),
        ("Gammal 2025", "Aktuell"),
    ],
)
def test_a_sheet_called_old_beside_another_of_its_boards_is_passed_over(name, other):
    found, why = states((other, rows(47.5)), (name, rows(41)))
    assert found == {other: {State.ACCEPTED}, name: set()}
    assert why == {name: "the sheet's name marks it as old"}


@pytest.mark.parametrize(
    ("name", "other"),
    [("Old Mill Rd", "New St"), ("Oldham", "Dayton"), ("Altstadt", "Neustadt"), ("Old Kraft Co", "Current")],
)
def test_a_name_with_such_a_word_in_it_is_another(name, other):
    found, why = states((other, rows(47.5)), (name, rows(61, ("SBS", 18, 76), ("SBS", 24, 99))))
    assert found == {other: {State.ACCEPTED}, name: {State.ACCEPTED}}
    assert why == {}


def test_one_short_word_beside_other_boards_is_a_name():
    found, _ = states(("Main", rows(47.5)), ("Alt", rows(61, ("SBS", 18, 76), ("SBS", 24, 99))))
    assert found == {"Main": {State.ACCEPTED}, "Alt": {State.ACCEPTED}}


@pytest.mark.parametrize(
    "sheets",
    [
        (("Main", rows(47.5)), ("Alt", rows(41))),
        (("Current", rows(47.5)), ("Old 2025", rows(61, ("SBS", 18, 76), ("SBS", 24, 99)))),
        (("Old 2025", rows(41)),),
    ],
)
def test_what_may_be_old_is_asked_about(sheets):
    found, _ = states(*sheets)
    assert found[sheets[-1][0]] == {State.QUESTION}


def test_a_sheet_named_by_its_year_alone_is_in_force():
    assert states(("2025", rows(41)))[0] == {"2025": {State.ACCEPTED}}


def test_of_two_years_the_later_is_in_force():
    found, why = states(("2025", rows(41)), ("2026", rows(47.5)))
    assert found == {"2025": set(), "2026": {State.ACCEPTED}}
    assert why == {"2025": "a later year has a sheet of its own"}
