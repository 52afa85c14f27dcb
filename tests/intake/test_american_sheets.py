"""Shapes that American and Spanish-speaking vendors send, as small grids. All vendors, boards and prices are invented."""

from datetime import date, datetime

from tests.intake.test_seen_in_the_wild import accepted, by_cell, codes, read
from tracker.trade.offer import NoteCode

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_a_truckload_beside_the_unit_is_an_order_size_that_nothing_weighs():
    reading = read([[*HEAD, "LTL $/cwt", "Full truckload $/cwt"], [*BOARD, 62.5, 58.4]])
    assert accepted(reading) == {}
    assert all(NoteCode.BRACKET_UNREAD in codes(line) for line in reading.lines)


def test_days_without_a_date_of_the_list_end_on_no_known_day():
    reading = read([["Prices firm for 30 days"], [], [*HEAD, "USD/ST"], [*BOARD, 1165]])
    line = by_cell(reading)["D4"]
    assert line.offer.valid_until is None
    assert NoteCode.VALIDITY_UNREAD in codes(line)


def test_days_count_from_a_date_that_stands_by_itself_in_the_letterhead():
    letter = [["Tamsin Creek Paperboard"], [datetime(2026, 9, 14)], ["Firm for 30 days from the date above."], []]
    reading = read([*letter, [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert by_cell(reading)["D6"].offer.valid_until == date(2026, 10, 14)
