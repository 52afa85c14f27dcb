"""What to ask a vendor: each question with its cells and the sheet's own words."""

from tracker.desk.vendor_words import words_to_vendor
from tracker.trade.offer import NoteCode, Question

WEIGHT = Question(
    "weight", NoteCode.WEIGHT_IMPLAUSIBLE, "No board of this caliper weighs 1582 g/m².", "324",
    (), tuple(("Prices", f"D{row}") for row in range(5, 14)),
)  # fmt: skip


def test_a_question_is_put_with_its_cells_and_words() -> None:
    text = words_to_vendor("list.xlsx", [WEIGHT])
    assert "in your price list “list.xlsx”" in text
    assert "1. Cells Prices!D5, Prices!D6, Prices!D7, Prices!D8, Prices!D9, Prices!D10 and 3 more (“324”): " in text
    assert "No board of this caliper weighs 1582 g/m²." in text


def test_a_question_about_the_whole_file_needs_no_cell() -> None:
    whole = Question("currency", NoteCode.CURRENCY_UNKNOWN, "In which currency are the prices?", "", ())
    assert "2. In which currency are the prices?" in words_to_vendor("list.csv", [WEIGHT, whole])
