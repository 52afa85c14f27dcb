"""A price for 280 to 330 g/m² says of no board what it weighs: neither end may be taken for its weight."""

import pytest

from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.weight import find_weights


@pytest.mark.parametrize(
    "text",
    [
        "GD2 280-330 g/m²",
        "GD2 280 g/m² – 330 g/m²",
        "GC1 von 200 bis 300 g/m²",
        "200 till 300 g/m²",
        "de 200 à 300 g/m²",
        "from 62 to 75 lb/MSF",
        "300/350 g/m²",
        "300, 350 und 400 g/m²",
        "GC1 ab 250 g/m²",
        "över 300 g/m²",
        "300 g/m² and heavier",
    ],
)
def test_spans_lists_and_open_weights_are_no_one_weight(text):
    assert find_weights(text) == ()


@pytest.mark.parametrize(
    "text",
    ["12-24 pt", "12 pt to 24 pt", "0.3–0.5 mm", "16, 18 and 20 pt", "18 pt and up", ".016-.018 in", "ab 400 µm"],
)
def test_spans_lists_and_open_calipers_are_no_one_caliper(text):
    assert find_calipers(text) == ()


@pytest.mark.parametrize(
    "text",
    ["GD2-300 g", "carton de 300 g/m²", "Pos. 3, 300 g/m²", "4711-300 g/m²", "400 µm / 300 g/m²", "300 g/m² ab Lager"],
)
def test_other_figures_beside_a_weight_leave_it_alone(text):
    assert [reading.gsm for reading in find_weights(text)] == [300]
