"""Figures under a word for places are no order sizes; and what everything on a list is sold by."""

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


@pytest.mark.parametrize(
    "said", ["Allt per 1000 kg", "Alles je 1000 kg", "Todo por 1000 kg", "Le tout à la tonne", "All grades per tonne"]
)
def test_everything_on_a_list_is_sold_by(said):
    rows = [[said], [], ["Sorte", "g/m²", "µm", "EUR", "SEK"], ["GC2", 230, 365, 1262, 14100]]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


def test_everything_on_pallets_says_no_unit_of_prices():
    rows = [["Everything on pallets of 1000 kg"], [], ["Grade", "g/m²", "µm", "EUR"], ["GC2", 230, 365, 1262]]
    assert "basis-unknown" in codes(lines(rows)["D4"])
