"""Numbers said with hundreds and thousands: read as a whole, or not at all."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.figures.numbers_in_words import in_figures
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.minimum import find_minimum

_HEAD = ["Board", "g/m²", "µm", "EUR/t"]
_ROW = ["GC1", 250, 400, 1250]


@pytest.mark.parametrize(
    "said",
    [
        "Minimum order one hundred thirty tonnes", "Minimum order six hundred and forty kg",
        "Minimum order three thousand two hundred pounds", "Minimum order 3 thousand two hundred pounds",
        "Mindestmenge hundert vierzig kg", "Mindestmenge zweitausend fünfzig kg", "Mindestmenge zweihundert bis 500 kg",
        "Minimum trois cent quarante kg", "Minimum mille deux cents kg",
        "Pedido mínimo ciento treinta kg", "Pedido mínimo trescientos cuarenta kg", "Pedido mínimo dos mil cien kg",
        "Minsta order tvåhundra trettio kg", "Minsta order två tusen fem hundra kg",
    ],
)  # fmt: skip
def test_a_part_of_a_large_number_is_no_smallest_order(said):
    assert find_minimum(said) is None
    (line,) = lines([[said], _HEAD, _ROW]).values()
    assert line.offer.minimum_kg is None


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("Minimum order three tonnes", 3000), ("Minimum order twenty-five thousand kg", 25000),
        ("Mindestmenge zwei tausend kg", 2000), ("Minimum trois mille kg", 3000), ("Pedido mínimo dos mil kg", 2000),
        ("Minsta order tre tusen kg", 3000), ("Minimum order 5 tonnes, price per hundred kg", 5000),
    ],
)  # fmt: skip
def test_what_is_read_whole_is_one(said, kg):
    assert find_minimum(said).kg() == kg


@pytest.mark.parametrize(
    ("said", "start", "end"),
    [
        ("thirty to sixty thousand pounds", 30000, 60000), ("3 to 6 thousand pounds", 3000, 6000),
        ("3 - 6 thousand lb", 3000, 6000), ("2.5 to 5 thousand lb", 2500, 5000),
        ("3 thousand to 6 thousand lb", 3000, 6000), ("dreißig bis sechzig tausend kg", 30000, 60000),
        ("trente à soixante mille kg", 30000, 60000), ("de treinta a sesenta mil kg", 30000, 60000),
        ("trettio till sextio tusen kg", 30000, 60000), ("entre trois mille et six mille kg", 3000, 6000),
    ],
)  # fmt: skip
def test_both_ends_of_a_range_are_in_thousands(said, start, end):
    read = bracket_text(said)
    assert (read.start.amounts[0].value, read.end.amounts[0].value) == (start, end)


def test_what_has_a_unit_or_is_larger_is_not():
    assert bracket_text("from 3 tonnes to 6 thousand kg").start.amounts[0].value == 3
    assert bracket_text("300 to 6 thousand kg").start.amounts[0].value == 300


@pytest.mark.parametrize("said", ["over six hundred forty kg", "less than three thousand two hundred pounds"])
def test_a_part_of_a_large_number_is_no_order_size(said):
    assert bracket_text(said) is None


@pytest.mark.parametrize("said", ["one hundred twenty days", "hundert zwanzig Tage", "cent vingt jours"])
def test_a_part_of_a_large_number_is_no_time(said):
    assert in_figures(said) == said
    assert in_figures("twenty days") == "20 days"


def test_prices_under_order_sizes_that_are_not_read_are_asked_about():
    # 'Twenty tonnes and up' is its end.
    sizes = ["under one hundred twenty tonnes", "one hundred twenty tonnes and up"]
    found = lines([["EUR/t, ex works"], ["Board", "g/m²", "µm", *sizes], [*_ROW, 1200]]).values()
    assert [(str(line.state), codes(line)) for line in found] == [("question", {"bracket-unread"})] * 2


def test_prices_under_order_sizes_in_thousands_are_not():
    sizes = ["thirty to sixty thousand kg", "over sixty thousand kg"]
    small, large = lines([["EUR/t, ex works"], ["Board", "g/m²", "µm", *sizes], [*_ROW, 1200]]).values()
    assert (small.offer.from_kg, large.offer.from_kg) == (30000, 60000)
    assert codes(small) | codes(large) == set()
