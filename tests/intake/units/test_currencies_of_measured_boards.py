"""A currency that a sentence gives boards by what they measure is that of these boards, and of no others."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["SBS", "18 pt", 1200], ["CUK", "24 pt", 1000], []]


def told(note, head="Price per ST"):
    found = lines([["Grade", "Caliper", head], *BOARDS, [note]])
    return [(line.offer.currency, str(line.state)) for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Prices in USD. 22 pt and up in CAD.", "Prices in USD per short ton. 22 pt and up in CAD.",
        "Prices in USD, 22 pt and up in CAD", "Prices in USD. 24 pt in CAD.",

              "Preise in USD. 22 pt und darüber in CAD.",
        "Preise in USD. Ab 22 pt in CAD.", "Prix en USD. À partir de 22 pt en CAD.",
        "Precios en USD. Desde 22 pt en CAD.",
        "Priser i USD. Från 22 pt i CAD.",
    ],
)  # fmt: skip
def test_boards_of_a_measure_have_their_own_currency(note):
    assert told(note) == [("USD", "accepted"), ("CAD", "accepted")]


def test_behind_a_sentence_of_something_else_it_is_no_one_elses():
    note = "Orders ship from our mill. 22 pt and up in CAD."
    assert told(note) == [(None, "question"), ("CAD", "accepted")]
    assert told(note, "USD/ST") == [("USD", "accepted"), (None, "question")]


@pytest.mark.parametrize(
    "note", ["Prices in USD per short ton. 22 pt and up on request.", "Prices in USD. 22 pt and up."]
)
def test_a_measure_without_a_currency_changes_none(note):
    assert told(note)[0] == ("USD", "accepted")
    assert told(note)[1][0] == "USD"
