"""A charge that a note gives some boards another rate of, or spares them."""

import pytest

from tests.intake.charges.two_boards import ROWS, charged
from tests.intake.sheets import lines


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 35 EUR/t, 20 EUR/t for GD2",
        "Energy surcharge 35 EUR/t; GD2 20 EUR/t",
        "Energiezuschlag 35 EUR/t, für GD2 20 EUR/t",
        "Energiezuschlag 35 EUR/t (GD2: 20 EUR/t)",
        "Surcharge énergie 35 EUR/t, 20 EUR/t pour GD2",
        "Recargo energético 35 EUR/t; para GD2, 20 EUR/t",
        "Energitillägg 35 EUR/t, för GD2 20 EUR/t",
    ],
)
def test_each_board_bears_its_own_rate(note):
    assert charged(note) == [[35], [20]]


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 2 %, GD2 exempt",
        "Energy surcharge 2 %, not GD2",
        "Energiezuschlag 2 %, GD2 frei",
        "Energiezuschlag 2 %. GD2 ohne Zuschlag.",
        "Surcharge énergie 2 % (pas pour GD2)",
        "Recargo energético 2 %, GD2 exento",
        "Energitillägg 2 %, ej GD2",
    ],
)
def test_a_board_that_is_spared_bears_none(note):
    assert charged(note) == [[2], []]


@pytest.mark.parametrize(
    ("note", "own"),
    [
        ("Energy surcharge 35 EUR/t", [[35], [35]]),
        ("Energy surcharge 35 EUR/t, lead time for GD2 6 weeks", [[35], [35]]),
        ("Energy surcharge 35 EUR/t; GD2 in 400 g/m² at 790 EUR/t on request", [[35], [35]]),
        ("Energy surcharge 35 EUR/t, for GD2 only", [[], [35]]),
        ("Energiezuschlag 35 EUR/t auf alle Sorten", [[35], [35]]),
        ("Energitillägg 35 EUR/t, ej rabattgrundande", [[35], [35]]),
    ],
)
def test_what_says_no_rate_of_a_board_changes_none(note, own):
    assert charged(note) == own


def test_freight_that_one_board_is_spared():
    found = lines([["EUR/t"], *ROWS[1:], ["Freight 45 EUR/t; GC1 freight free"]])
    assert [found[cell].offer.delivered for cell in ("D3", "D4")] == [True, None]
    assert charged("Freight 45 EUR/t; GC1 freight free") == [[], [45]]
