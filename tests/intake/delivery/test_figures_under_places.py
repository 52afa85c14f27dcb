"""Figures under a word for places are no order sizes."""

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["GD3", 280, 340, 851, 839], ["GC2", 230, 365, 1262, 1250]]


def under(group, *heads, said="EUR per 1000 kg, DAP"):
    return lines([[said], [], [None, None, None, group], ["Sorte", "g/m²", "µm", *heads], *BOARDS])


@pytest.mark.parametrize(
    ("group", "heads"),
    [
        ("Zone (PLZ-Anfang)", ("20–29", "40–47")),
        ("Zone", (1, 2)),
        ("Ship-to ZIP", ("100-199", "200-499")),
        ("Código postal", ("01-19", "20-52")),
        ("Leveransort (postnr)", ("10-19", "20-39")),
        ("Code postal", ("59", "69")),
    ],
)
def test_figures_under_a_word_for_places_size_no_orders(group, heads):
    found = under(group, *heads)
    assert {(str(line.state), line.offer.from_kg, line.offer.below_kg) for line in found.values()} == {
        ("accepted", None, None)
    }
    assert len(found) == 4


def test_order_sizes_under_a_word_for_places_stay_order_sizes():
    assert {line.offer.below_kg for line in under("Zone", "< 5 t", "5 t +").values()} == {5000, None}


def test_such_figures_under_no_word_are_asked_about():
    assert all("bracket-unread" in codes(line) for line in under("Preise", "20–29", "40–47").values())
