from hypothesis import given
from hypothesis import strategies as st

from tests.window.fixtures.invented_sheet import taken
from tracker.intake.grid import address
from tracker.trade.offer import Answers
from tracker.window.take_in.cells import Use, column_letters, place_of, uses_of


@given(st.integers(0, 1_048_575), st.integers(0, 16_383))
def test_addresses_agree_with_those_the_reader_gives(row: int, column: int) -> None:
    assert place_of(address(row, column)) == (row, column)
    assert address(0, column) == f"{column_letters(column)}1"


def test_words_are_no_addresses() -> None:
    assert [place_of(words) for words in ("header", "D0", "", "5D", "ABCD1")] == [None] * 5


def test_cells_are_marked_by_what_they_did() -> None:
    reading = taken(Answers()).reading
    uses = uses_of(reading.lines, reading.questions)["Prices"]
    assert uses[5, 3] is Use.ASKED
    assert uses[12, 3] is Use.REFUSED
    assert uses[5, 0] is Use.SAID
    settled = taken(Answers({"ton": "short"})).reading
    assert uses_of(settled.lines, settled.questions)["Prices"][5, 3] is Use.PRICE
