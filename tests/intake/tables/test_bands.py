"""Stretches of words beside a table: a letterhead is none of it, a column of boards is, whatever stands over it."""

from tests.intake.test_seen_in_the_wild import accepted, read

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
    reading = read(rows)
    assert accepted(reading) == {
        "D2": ("FBB", "1170", "EUR", "tonne"),
        "D3": ("FBB", "1130", "EUR", "tonne"),
        "D4": ("URB", "730", "EUR", "tonne"),
    }
    assert {line.offer.vendor for line in reading.lines} == {"Wexholme Board Merchants Ltd"}


def test_boards_under_an_unknown_word_before_an_empty_column_are_the_tables():
    head = ["Zzubber", None, "µm", None, "gsm", None, "Price EUR/t"]
    rows = [[name, None, um, None, gsm, None, price] for name, um, gsm, price in BOARDS]
    assert [grade for grade, _, _, _ in accepted(read([head, *rows])).values()] == ["FBB", "FBB", "URB"]
