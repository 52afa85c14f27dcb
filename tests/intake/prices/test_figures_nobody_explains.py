"""Figures like prices that no head explains are asked about, and never left out in silence."""

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.trade.offer import State


@pytest.mark.parametrize(
    "heads",
    [("Price USD/ST", "Rush"), ("Ex stock", "Making order"), ("Stock", "Fabrication"), ("Reels USD/ST", "Sheets")],
)
def test_no_column_like_prices_beside_prices_is_left_out_in_silence(heads):
    rows = [["Prices in USD per short ton"], ["Board", "pt", "lb/MSF", *heads], ["SBS", 18, 75, 1150, 1210]]
    found = lines([*rows, ["CRB", 18, 70, 900, 960]])
    assert set(found) == {"D3", "E3", "D4", "E4"}


def test_what_no_board_ever_cost_is_asked():
    (line,) = lines([["Grade", "pt", "lb/MSF", "Price"], ["SBS", 16, 68, 45], ["Prices in $/ST"]]).values()
    assert (line.state, codes(line)) == (State.QUESTION, {"outside-usual-range"})


@pytest.mark.parametrize(
    "rows",
    [
        [["Falken Weiss", "0.46", "1190"], ["Falken Grau", "0.50", "990"]],
        [["Tolmere Board"], [], ["A100", 450, 1190], ["B200", 500, 990]],
        [["SBS C1S", 18, 1190], ["CRB C1S", 20, 990]],
    ],
)
def test_figures_under_no_heads_are_one_question_for_the_table(rows):
    reading = read(rows)
    (question,) = reading.questions
    assert question.key == "table:Sheet1"
    assert len(question.cells) == 2
    assert {line.state for line in reading.lines} == {State.QUESTION}
