"""Rows of a table without a figure for their price are no headers, and odd order sizes of single rows are asked."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Kvalitet", "Gramvikt", "Tjocklek", "Pris", "Valuta", "Per", "Kvantitet"]
_ROWS = [["GC1", "250 g/m²", "400 µm", 1215, "EUR", "ton"], ["GD2", "320 g/m²", "390 µm", 0.845, "EUR", "kg"]]


@pytest.mark.parametrize(
    "said", ["offereras separat", "on request", "auf Anfrage", "prix à venir", "see mail of Friday"]
)
def test_a_board_whose_price_is_words_heads_nothing(said):
    found = lines([_HEAD, _ROWS[0], ["GC2", "300 g/m²", "495 µm", said, "SEK", "ton"], _ROWS[1]])
    assert {"D2", "D4"} <= set(found)
    assert str(found["D4"].state) == "accepted"


@pytest.mark.parametrize("size", ["vid helbil", "bei vollem LKW", "par camion complet", "en camión completo", "Osmund"])
def test_an_order_size_of_one_row_that_is_no_weight_is_asked(size):
    found = lines([_HEAD, [*_ROWS[0], size], _ROWS[1]])
    assert [str(line.state) for line in found.values()] == ["question", "accepted"]
    assert "bracket-unread" in codes(found["D2"])


def test_words_in_every_row_part_no_order_sizes():
    found = lines([_HEAD, [*_ROWS[0], "1 lot"], [*_ROWS[1], "1 lot"]])
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]
