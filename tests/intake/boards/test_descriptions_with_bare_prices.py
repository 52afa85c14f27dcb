"""Boards described in one cell with a bare figure in the next, under no head."""

import pytest

from tests.intake.sheets import codes, lines

DESCRIBED = [
    ["SBS"],
    ["C1S 12pt 52#/MSF rolls", "63.40"],
    ["C2S 18pt 75#/MSF 28x40in sheets", "61.90"],
    [],
    ["CRB"],
    ["C1S 24pt 96#/MSF rolls", "42.35"],
]


def graded(rows):
    return [(str(line.state), line.offer.grade, line.offer.basis) for line in lines(rows).values()]


def test_words_above_say_what_bare_figures_beside_boards_are_in():
    said = ["Quote 88", "US$ per cwt, f.o.b. mill"]
    accepted = [("accepted", grade, "cwt") for grade in ("SBS", "SBS", "CRB")]
    assert graded([["Alder Board Brokers"], said, [], *DESCRIBED]) == accepted


def test_a_price_with_its_own_unit_below_hides_none_of_the_bare_ones():
    rows = [["US$ per cwt unless the line says otherwise"], [], *DESCRIBED, ["C1S 26pt 103#/MSF rolls", "44.5¢/lb"]]
    assert [line.offer.grade for line in lines(rows).values()] == ["SBS", "SBS", "CRB", "CRB"]
    assert graded(rows)[-1] == ("accepted", "CRB", "lb")


@pytest.mark.parametrize(
    ("said", "boards"),
    [
        ("Preise in EUR je 1000 kg, frei Haus", ["GC2 235 g/m² 375 µm, Rollen", "GT2 320 g/m² 420 µm"]),
        ("Prix en €/t, départ usine", ["GC1 480 g/m² 700 µm", "GD2 600 g/m² 900 µm"]),
    ],
)
def test_the_boards_may_carry_their_grade(said, boards):
    rows = [["Kontor Elmtal"], [said], [], *([board, 1412 - 10 * at] for at, board in enumerate(boards))]
    assert {state for state, *_ in graded(rows)} == {"accepted"}


def test_the_first_grade_heads_only_the_boards_below_it():
    rows = [["Alder Board Brokers"], [], *([row[0], f"${row[1]}/cwt"] if len(row) > 1 else row for row in DESCRIBED)]
    assert [grade for _, grade, _ in graded(rows)] == ["SBS", "SBS", "CRB"]


@pytest.mark.parametrize("said", ["Stock in kg", "EUR"])
def test_figures_that_nothing_says_the_unit_of_are_asked_about(said):
    found = lines([["Elmtal"], [said], [], ["GC2 235 g/m² 375 µm", 14120], ["GC2 275 g/m² 445 µm", 13980]])
    assert all("number-ambiguous" in codes(line) for line in found.values())


@pytest.mark.parametrize("number", ["Quote 4711", "Angebot Nr. 88", "Offert 12"])
def test_the_number_of_a_list_beside_its_money_is_no_amount(number):
    rows = [[number, "EUR per 1000 kg, DAP"], [], ["Grade", "g/m²", "µm", "Price"], ["GC2", 235, 375, 1412]]
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.currency, line.offer.basis) == ("accepted", "EUR", "tonne")
