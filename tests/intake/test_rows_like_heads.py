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


def test_a_whole_board_beside_a_range_of_prices_heads_nothing():
    rows = [
        ["Article proposé", "Prix remis", "Mise à disposition"],
        ["GC1 300 g/m² 490 µm bobines", "1 362 €/t", "3 semaines"],
        ["GC2 270 g/m² 445 µm", "de 1 240 à 1 275 €/t", "3 semaines"],
        ["URB 600 g/m² 920 µm", "698 € la tonne", "stock"],
    ]
    found = lines(rows)
    assert {cell: str(line.state) for cell, line in found.items()} == {
        "B2": "accepted", "B3": "question", "B4": "accepted",
    }  # fmt: skip
    assert [line.offer.lead_days for line in found.values()] == [(21, 21), (21, 21), (0, 0)]


@pytest.mark.parametrize("corner", ["Sorte / Gewicht in g/m²", "Grade / basis weight g/m²", "Qualité / poids en g/m²"])
def test_a_corner_with_a_square_metre_in_it_names_what_is_spread(corner):
    found = lines([["EUR/t ab Werk"], [corner, 230, 250, 280], ["GC1", 1342, 1336, 1328], ["GC2", None, 1254, 1246]])
    assert {cell: line.offer.grammage_gsm for cell, line in found.items()} == {
        "B3": 230, "C3": 250, "D3": 280, "C4": 250, "D4": 280,
    }  # fmt: skip


def test_a_bulk_in_microns_is_a_caliper_and_one_by_itself_none():
    board = ["GC2", 260, 425, 1240]
    (line,) = lines([["Carton", "Poids g/m²", "Main µm", "€ / t"], board]).values()
    assert line.offer.caliper_um == 425
    (line,) = lines([["Carton", "Poids g/m²", "Main cm³/g", "€ / t"], ["GC2", 260, 1.63, 1240]]).values()
    assert line.offer.caliper_um is None


def test_an_index_by_months_and_grades_offers_nothing():
    rows = [["Fibre cost index, 2024 = 100"], ["Month", "SBS", "CRB"], ["April", 104.2, 98.1], ["May", 105, 97.4]]
    assert not lines(rows, sheet="Index")
