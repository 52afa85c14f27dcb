"""One word for what a price is, from the conclusions drawn."""

from dataclasses import replace

import numpy as np
import pytest

from tests.window.fixtures.invented_offers import comparison
from tracker.desk.comparison import Comparison
from tracker.desk.standing import Standing, standing_words, standings


def _judged(**changed: object) -> Comparison:
    made = comparison(1)
    still = {
        "slip": [False],
        "out_of_line": [False],
        "place": [0],
        "score": [0.1],
        "expected": [100.0],
        "price": [110.0],
    }
    return replace(made, **{name: np.array(value) for name, value in {**still, **changed}.items()})


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({}, "in line"),
        ({"place": [1]}, "in line, but above its expected band"),
        ({"place": [-1]}, "in line, but below its expected band"),
        ({"out_of_line": [True], "place": [1]}, "out of line, above"),
        ({"out_of_line": [True], "price": [70.0]}, "out of line, below"),
        # Without a going price the band's side counts: no comparison with an unknown figure may call it cheap.
        ({"out_of_line": [True], "expected": [np.nan], "place": [1]}, "out of line, above"),
        ({"score": [np.nan], "place": [-9]}, "too few to judge"),
        ({"slip": [True], "out_of_line": [True]}, "looks like another basis"),
    ],
)
def test_a_price_is_called_by_one_word(changed: dict[str, object], said: str) -> None:
    made = _judged(**changed)
    standing = Standing(int(standings(made)[0]))
    assert standing_words(made, 0, standing).startswith(said)
