"""Two prices for one offer that do not agree: asked once, with both figures, and answered by the cell that holds."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read

TWO_BASES = [
    ["Grade", "pt", "lb/MSF", "USD/short ton", "USD/MSF"],
    ["CRB", 24, 94, 970, 54.6],
    ["CRB", 18, 74, 980, 36.26],
]
TWO_ROWS = [
    ["Grade", "pt", "lb/MSF", "USD/short ton"],
    ["CRB", 24, 94, 970],
    ["CRB", 24, 94, 1020],
    ["SBS", 18, 74, 1300],
]


def _lines(reading):
    return {line.offer.source.cell: line for line in reading.lines}


@pytest.mark.parametrize(
    ("rows", "cells", "figures"),
    [
        (TWO_BASES, ("D2", "E2"), "(1,069 and 1,281 USD a tonne)"),
        (TWO_ROWS, ("D2", "D3"), "(1,069 and 1,124 USD a tonne)"),
    ],
)
def test_one_question_names_both_prices_and_what_they_come_to(rows, cells, figures):
    (question,) = read(rows).questions
    assert question.code == "prices-disagree"
    assert [choice.value for choice in question.choices] == list(cells)
    assert figures in question.text


@pytest.mark.parametrize(
    ("holds", "other", "price", "basis"), [("D2", "E2", "970", "short_ton"), ("E2", "D2", "54.6", "msf")]
)
def test_of_two_bases_the_one_that_holds_stands_for_the_offer(holds, other, price, basis):
    (question,) = read(TWO_BASES).questions
    reading = read(TWO_BASES, {question.key: holds})
    line = _lines(reading)[holds]
    assert (str(line.state), line.offer.price, line.offer.basis) == ("accepted", Decimal(price), basis)
    assert line.offer.source.also == (other,)
    assert "as you decided" in line.notes[-1].text
    assert set(_lines(reading)) == {holds, "D3"}
    assert not reading.questions


def test_of_two_rows_the_one_that_does_not_hold_is_left_out():
    (question,) = read(TWO_ROWS).questions
    found = _lines(read(TWO_ROWS, {question.key: "D3"}))
    assert {cell: str(line.state) for cell, line in found.items()} == {
        "D2": "refused",
        "D3": "accepted",
        "D4": "accepted",
    }
    assert codes(found["D2"]) == {"prices-disagree"}


def test_an_answer_about_other_cells_settles_nothing():
    (question,) = read(TWO_ROWS).questions
    assert str(_lines(read(TWO_ROWS, {question.key: "D4"}))["D2"].state) == "question"


@pytest.mark.parametrize("head", ["same in USD/MSF", "soit USD/MSF", "Posted USD/MSF"])
def test_a_row_whose_two_bases_differ_is_asked_whatever_stands_at_their_heads(head):
    boards = [["SBS C1S", 16, 70, 1200, 42], ["SBS C2S", 18, 80, 1250, 50], ["CRB C1S", 20, 80, 900, 39]]
    found = lines([["Board", "pt", "lb/MSF", "USD/ST", head], *boards])
    assert {cell: str(line.state) for cell, line in found.items()} == {
        "D2": "accepted", "D3": "accepted", "D4": "question",
    }  # fmt: skip
    assert codes(found["D4"]) == {"prices-disagree"}


def test_prices_that_never_agree_are_offers_each():
    boards = [["SBS C1S", 16, 70, 1200, 52], ["SBS C2S", 18, 80, 1250, 61], ["CRB C1S", 20, 80, 900, 45]]
    found = lines([["Board", "pt", "lb/MSF", "USD/ST", "Sheeted USD/MSF"], *boards])
    assert not any("prices-disagree" in codes(line) for line in found.values())
    assert len(found) == 6
