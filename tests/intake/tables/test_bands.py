"""Stretches of words beside a table: a letterhead is none of it, a column of boards is, whatever stands over it."""

import pytest

from tests.intake.readings import accepted, read_rows

BOARDS = [["GC2", 375, 215, 1170], ["GC2", 510, 300, 1130], ["URB", 630, 400, 730]]
HEAD = ["Grade", "µm", "gsm", "Cost"]


def test_a_title_with_the_word_for_price_right_of_the_table_heads_no_column():
    letter = [
        "Price schedule 7-6",
        "Wexholme Board Merchants Ltd",
        "EUR per metric tonne",
        "Delivery: 15 business days",
    ]
    rows = [[*row, None, None, words] for row, words in zip([HEAD, *BOARDS], letter, strict=True)]
    reading = read_rows(rows)
    assert accepted(reading) == {
        "D2": ("FBB", "1170", "EUR", "tonne"),
        "D3": ("FBB", "1130", "EUR", "tonne"),
        "D4": ("URB", "730", "EUR", "tonne"),
    }
    assert {line.offer.vendor for line in reading.lines} == {"Wexholme Board Merchants Ltd"}


def test_boards_under_an_unknown_word_before_an_empty_column_are_the_tables():
    head = ["Zzubber", None, "µm", None, "gsm", None, "Price EUR/t"]
    rows = [[name, None, um, None, gsm, None, price] for name, um, gsm, price in BOARDS]
    assert [grade for grade, _, _, _ in accepted(read_rows([head, *rows])).values()] == ["FBB", "FBB", "URB"]


@pytest.mark.parametrize(
    "letter",
    [
        ["Norrhamra Bruk AB", "Prislista", "Alla priser i EUR per ton (1000 kg)"],
        ["Carton board pricing", "Wexholme Board Merchants Ltd", "Unit 7, Tannery Yard", "All prices in € per tonne"],
        ["Älvrike Kartong AB", "Priser falskartong", "EUR/tonne"],
    ],
)
def test_a_letterhead_in_line_with_the_heads_is_no_column(letter):
    rows = [HEAD, *BOARDS]
    reading = read_rows([[*row, None, None, None, words] for row, words in zip(rows, [*letter, None][:4], strict=True)])
    assert {cell: price for cell, (_, price, _, _) in accepted(reading).items()} == {
        "D2": "1170",
        "D3": "1130",
        "D4": "730",
    }
    assert {line.offer.vendor for line in reading.lines} <= set(letter)


def test_boards_that_sound_like_firms_stay_a_column_under_their_head():
    names = ["Grade", "GC2 Fenlight Board Mills", "GC2 Fenlight Board Mills", "URB Tarn Paperboard Group"]
    head = [["µm", "gsm", "Price EUR/t"], *(row[1:] for row in BOARDS)]
    reading = read_rows([[name, None, *row] for name, row in zip(names, head, strict=True)])
    assert [grade for grade, _, _, _ in accepted(reading).values()] == ["FBB", "FBB", "URB"]


def test_a_letterhead_above_the_first_of_columns_set_apart_leaves_it_a_column():
    rows = [["Grade", "µm", "gsm", "Price EUR/t"], *BOARDS]
    apart = [[piece for value in row for piece in (value, None)] for row in rows]
    reading = read_rows([["Wexholme Board Merchants Ltd"], ["Folding carton board pricing"], [], *apart])
    assert [grade for grade, _, _, _ in accepted(reading).values()] == ["FBB", "FBB", "URB"]
