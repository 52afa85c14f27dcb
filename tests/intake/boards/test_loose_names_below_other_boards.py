"""'Folding' names folding boxboard, and below a title of another board it may be that board for folding cartons."""

import pytest

from tests.intake.sheets import codes, read


def states(title, product):
    head = ["Product", "Caliper (pt)", "USD/ST"]
    (line,) = read([["Fairhaven Board Co."], [title], head, [product, 16, 1200]]).lines
    return str(line.state), line.offer.grade, codes(line)


@pytest.mark.parametrize("title", ["SBS board", "CUK board"])
def test_it_is_asked_below_another_board(title):
    state, grade, noted = states(title, "Folding")
    assert (state, grade) == ("question", None)
    assert "grade-unknown" in noted


@pytest.mark.parametrize(
    ("title", "product"), [("FBB board", "Folding"), ("Board", "Folding"), ("SBS board", "Folding boxboard")]
)
def test_a_name_that_is_agreed_with_or_plain_is_certain(title, product):
    assert states(title, product)[:2] == ("accepted", "FBB")
