"""Prices of several years under a title that says for which the list is.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import lines, read

BOARDS = [["SBS C1S", 16, 66, 1129, 1176, 1217, 1246], ["CUK", 18, 74, 946, 993, 1034, 1063]]
NUMBERS = [2024, 2025, 2026]
NOTE = "Earlier years and the 2027 estimate are shown for reference only and are not offered."


def offered(title, years, *notes):
    head = ["Grade", "Cal. pt", "lb/MSF", *years]
    rows = [
        [title],
        ["US$/short ton, delivered"],
        head,
        *(board[: len(head)] for board in BOARDS),
        *([n] for n in notes),
    ]
    return {cell: line.state for cell, line in lines(rows).items()}


@pytest.mark.parametrize(
    "years",
    [
        [*NUMBERS, "2027 est."], ["2024", "2025", "2026", "2027 est."], [*NUMBERS, "2027 Prognose"],
        ["2024", "2025", "2026", "2027 (prév.)"], ["Price 2024", "Price 2025", "Price 2026", "Price 2027 forecast"],
    ],
)  # fmt: skip
def test_the_year_of_the_title_is_offered_and_an_estimate_is_not(years):
    assert offered("Contract pricing 2026", years) == {"F4": "accepted", "F5": "accepted"}


@pytest.mark.parametrize("years", [[*NUMBERS, 2027], ["2024", "2025", "2026", "2027"]])
def test_a_later_year_that_nothing_calls_an_estimate_is_asked(years):
    assert offered("Contract pricing 2026", years) == dict.fromkeys(("F4", "G4", "F5", "G5"), "question")
    assert offered("Contract pricing 2026", years, NOTE) == {"F4": "accepted", "F5": "accepted"}


def test_the_last_year_is_offered_where_the_list_is_for_that_one():
    assert offered("Contract pricing 2026", NUMBERS) == {"F4": "accepted", "F5": "accepted"}


def test_what_else_is_said_of_a_year_is_asked():
    assert set(offered("Contract pricing 2026", ["2024", "2025", "2026", "2027 (new mill)"]).values()) == {"question"}


def test_numbers_as_high_as_years_under_a_word_for_calipers_head_those():
    found = lines([["EUR/t"], ["GC1 / µm", 2000, 2001], ["EXW", 1210, 1240]])
    assert all(line.state != "accepted" or line.offer.caliper_um for line in found.values())


ESTIMATES = ["2027 prices are estimates.", "Die Preise 2027 sind Schätzungen.", "Les prix 2027 sont des estimations.",
             "Los precios 2027 son estimaciones.", "Priserna 2027 är uppskattningar."]  # fmt: skip


@pytest.mark.parametrize("note", ESTIMATES)
def test_a_later_year_that_a_note_calls_estimates_is_set_aside(note):
    assert offered("Contract pricing 2026", [*NUMBERS, 2027], note) == {"F4": "accepted", "F5": "accepted"}
    assert noted("Contract pricing 2026", [*NUMBERS, 2027], note) == {"F4": False, "F5": False}


@pytest.mark.parametrize("note", ESTIMATES)
def test_the_year_offered_that_a_note_calls_estimates_is_noted(note):
    assert noted("Proposal 2027", [*NUMBERS, 2027], note) == {"G4": True, "G5": True}


@pytest.mark.parametrize("head", ["2027 est.", "2027 Prognose", "2027 (prév.)", "2027 previsto", "2027 prognos"])
@pytest.mark.parametrize("years", [NUMBERS, ["2024", "2025", "2026"]])
def test_an_estimate_that_is_offered_is_noted(years, head):
    assert noted("Proposal 2027", [*years, head]) == {"G4": True, "G5": True}
    assert noted("Contract pricing 2026", [*years, head]) == {"F4": False, "F5": False}


def test_what_a_note_expects_of_other_things_sets_no_year_aside():
    found = offered("Contract pricing 2026", [*NUMBERS, 2027], "2027 expected lead time 3 weeks.")
    assert set(found.values()) == {"question"}


def test_a_later_year_is_told_for_what_it_is():
    rows = [["Contract pricing 2026, US$/short ton"], ["Grade", "Cal. pt", "lb/MSF", "2026", "2027 est."]]
    told = [passed.why for passed in read([*rows, *(board[:5] for board in BOARDS)]).passed_over]
    assert told == ["the column “2027 est.” is a later year's price beside the one offered"]


def noted(title, years, *notes):
    head = ["Grade", "Cal. pt", "lb/MSF", *years]
    rows = [[title], ["US$/short ton"], head, *(board[: len(head)] for board in BOARDS), *([n] for n in notes)]
    found = lines(rows)
    return {cell: any("indicative" in one.text for one in line.notes) for cell, line in found.items()}
