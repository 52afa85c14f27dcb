"""What an order size is called where offers are listed."""

from math import nan

import pytest

from tracker.desk.footing_words import order_words


@pytest.mark.parametrize(
    ("from_kg", "below_kg", "minimum_kg", "said"),
    [
        (nan, nan, nan, "any"),
        (nan, nan, 9071.8474, "min. 9.07 t"),
        (nan, 5000, nan, "below 5 t"),
        (20000, nan, nan, "from 20 t"),
        (5000, 20000, 1000, "5–20 t"),
    ],
)
def test_an_order_size_in_words(from_kg, below_kg, minimum_kg, said):
    assert order_words(from_kg, below_kg, minimum_kg) == said
