"""Old lists are passed over and told; where a text leaves open whether it means this list, a person is asked."""

import pytest

from tests.intake.sheets import lines, read
from tracker.trade.offer import State

HEAD = ["Product", "Grade", "Caliper (pt)", "Price USD/ST", "Remarks"]
WHITE = ["White A", "SBS", 18, 1145, ""]
BRIGHT = ["White B", "SBS", 20, 1155, ""]


def test_a_title_that_speaks_of_another_list_leaves_the_prices_in_force():
    for title in ("Changes from the previous price list are shown in bold", "Prices hold until superseded"):
        found = lines([["Marlpit Board Mills Inc."], [title], [], HEAD, WHITE, BRIGHT])
        assert [line.state for line in found.values()] == [State.ACCEPTED] * 2
    assert not lines([["Marlpit Board Mills Inc."], ["Price list 2025 (old)"], [], HEAD, WHITE, BRIGHT])


def test_a_doubtful_title_holds_back_every_price_below_it_until_it_is_answered():
    rows = [["Archive board and SBS prices"], [], HEAD, WHITE, BRIGHT]
    reading = read(rows)
    assert {line.state for line in reading.lines} == {State.QUESTION}
    (question,) = reading.questions
    assert "Archive board and SBS prices" in question.text
    answered = lines(rows, {question.key: "stand"})
    assert {line.state for line in answered.values()} == {State.ACCEPTED}


@pytest.mark.parametrize(
    "remark", ["Old price 1,120", "cancelled orders charged 50 %", "expired FSC certificate", "void-free"]
)
def test_a_remark_about_something_else_leaves_its_row(remark):
    found = lines([HEAD, [*WHITE[:4], remark], BRIGHT])
    assert [line.state for line in found.values()] == [State.ACCEPTED] * 2


def test_a_row_marked_as_old_is_passed_over_and_a_doubtful_one_asked():
    reading = read([HEAD, [*WHITE[:4], "superseded 1 Oct 2026"], BRIGHT])
    assert [line.offer.source.cell for line in reading.lines] == ["D3"]
    assert [(passed.rows, passed.why) for passed in reading.passed_over] == [("2", "marked as no longer in force")]
    found = lines([HEAD, [*WHITE[:4], "withdrawn 1 Dec"], BRIGHT])
    assert [line.state for line in found.values()] == [State.QUESTION, State.ACCEPTED]


def test_rows_below_a_sub_heading_that_marks_them_as_old_are_told():
    below = lines([HEAD, WHITE, ["New grades (prices unchanged from previous list)"], BRIGHT])
    assert [line.state for line in below.values()] == [State.ACCEPTED] * 2
    reading = read([HEAD, WHITE, ["Old prices"], BRIGHT])
    assert [line.offer.source.cell for line in reading.lines] == ["D2"]
    assert [passed.rows for passed in reading.passed_over] == ["4"]
    asked = lines([HEAD, WHITE, ["Obsolete grades"], BRIGHT])
    assert [line.state for line in asked.values()] == [State.ACCEPTED, State.QUESTION]


def test_a_head_that_may_mark_its_prices_as_old_is_asked_about():
    asked = lines([[*HEAD[:3], "Price USD/ST (for reference only)"], WHITE[:4]])
    assert asked["D2"].state is State.QUESTION
