"""Prices in several columns, each with its order size in the column before it."""

import pytest

from tests.intake.readings import accepted, by_cell, note_codes, pounds, read_rows
from tracker.trade.offer import NoteCode

BOARD = ["SBS C2S", 18, 75]
PAIRED = ["Grade", "Pts", "lb/MSF", "MOQ lb", "Break 1 (lb)", "Price 1 $/cwt", "Break 2 (lb)", "Price 2 $/cwt"]


def test_each_price_holds_from_its_own_break_to_the_next():
    found = by_cell(read_rows([PAIRED, [*BOARD, 5000, 5000, 61.2, 20000, 58.4], [*BOARD, 9000, 10000, 46, 40000, 44]]))
    bounds = {cell: (line.offer.from_kg, line.offer.below_kg) for cell, line in found.items()}
    assert bounds == {
        "F2": (pounds(5000), pounds(20000)),
        "H2": (pounds(20000), None),
        "F3": (pounds(10000), pounds(40000)),
        "H3": (pounds(40000), None),
    }
    assert all(not line.notes or NoteCode.BRACKET_UNREAD not in note_codes(line) for line in found.values())
    assert {line.offer.minimum_kg for line in found.values()} == {pounds(5000), pounds(9000)}


def test_prices_that_are_only_counted_beside_their_sizes_are_read():
    head = ["Sorte", "µm", "g/m²", "Menge 1 (kg)", "Preis 1", "Menge 2 (kg)", "Preis 2", "Menge 3 (kg)", "Preis 3"]
    reading = read_rows([["Preise in EUR/t"], [], head, ["GC1", 400, 250, 1000, 1190, 5000, 1120, 10000, 1080]])
    bounds = [(line.offer.from_kg, line.offer.below_kg) for line in reading.lines]
    assert [price for _, price, _, _ in accepted(reading).values()] == ["1190", "1120", "1080"]
    assert bounds == [(1000, 5000), (5000, 10000), (10000, None)]


def test_ends_of_order_sizes_stand_before_their_prices_too():
    head = ["Grade", "µm", "gsm", *["From (kg)", "Below (kg)", "Price"] * 2]
    reading = read_rows([["EUR per tonne"], [], head, ["GC1", 400, 250, 1000, 5000, 1190, 5000, 10000, 1120]])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in reading.lines] == [(1000, 5000), (5000, 10000)]


@pytest.mark.parametrize("size", [None, "see note"])
def test_a_size_that_is_blank_or_not_understood_is_asked(size):
    found = by_cell(read_rows([PAIRED, [*BOARD, 5000, size, 61.2, 20000, 58.4], [*BOARD, 5000, 5000, 60, 20000, 58]]))
    assert NoteCode.BRACKET_UNREAD in note_codes(found["F2"])
    assert NoteCode.BRACKET_UNREAD not in note_codes(found["F3"])


def test_sizes_without_a_unit_are_asked():
    head = ["Grade", "Pts", "lb/MSF", "Break 1", "Price 1 $/cwt", "Break 2", "Price 2 $/cwt"]
    reading = read_rows([head, [*BOARD, 5000, 61.2, 20000, 58.4]])
    assert accepted(reading) == {}
    assert all(NoteCode.BRACKET_UNREAD in note_codes(line) for line in reading.lines)


def test_sizes_that_no_price_can_call_its_own_are_asked():
    head = ["Grade", "Pts", "lb/MSF", "Qty 1 (lb)", "Qty 2 (lb)", "Price 1 $/cwt", "Price 2 $/cwt"]
    reading = read_rows([head, [*BOARD, 5000, 20000, 61.2, 58.4]])
    assert reading.lines
    assert accepted(reading) == {}


def test_one_price_with_a_figure_behind_its_word_is_no_head():
    reading = read_rows([["Grade", "Pts", "lb/MSF", "Price"], [*BOARD, "Price 5 $/lb"]])
    assert "5" in {f"{line.offer.price:f}" for line in reading.lines if line.offer.price is not None}
