"""'1.298' above '1,286': two ways of writing in one column leave open what either means."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.offers.prices.signs import marks_disagree


def _column(*prices: str, caliper: str = "0,41 mm"):
    rows = [["GC1", caliper, "250 g/m²", price] for price in prices]
    return list(lines([["CHF per Tonne"], ["Sorte", "Dicke", "Gewicht", "Preis"], *rows]).values())


def test_both_ways_in_one_column_are_asked_about():
    first, second, third = _column("1.298", "1,286", "917")
    assert (str(first.state), str(second.state), str(third.state)) == ("question", "question", "accepted")
    assert "number-ambiguous" in codes(first)
    assert "number-ambiguous" in codes(second)


def test_one_way_is_settled_by_the_rest():
    assert [line.offer.price for line in _column("1.298", "1.286", "917")] == [1298, 1286, 917]


@pytest.mark.parametrize(
    ("texts", "disagree"),
    [
        (["1.298", "1,286"], True),
        (["1.298", "1.286"], False),
        (["1,298.00", "1,286"], False),
        (["0.858", "1,286"], False),
        (["call", "917"], False),
        ([], False),
    ],
)
def test_only_open_figures_a_thousandfold_apart_disagree(texts, disagree):
    assert marks_disagree(texts) is disagree


@pytest.mark.parametrize(
    ("text", "state"), [("#REF!", "refused"), ("#NV", "refused"), ("Err:502", "refused"), ("n/a", None)]
)
def test_an_error_in_a_csv_file_is_one_though_it_is_a_text(text, state):
    rows = [["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 250, 410, text], ["GC2", 300, 500, 1150]]
    found = lines(rows)
    assert (str(found["D2"].state) if "D2" in found else None) == state
