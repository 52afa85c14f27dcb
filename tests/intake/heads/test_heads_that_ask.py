"""Heads in a seller's own words: what he has, and what he asks for it."""

import pytest

from tests.intake.sheets import lines, prices
from tracker.intake.tables.headers.heads import head_of_words

ROLLS = ["SBS C1S 18pt 77#/MSF 40in rolls", "CCNB 20pt 79#/MSF 44in rolls"]


@pytest.mark.parametrize(
    ("board", "price"),
    [
        ("What we have", "Ask, US$ per cwt"),
        ("What's available", "You pay, US$/cwt"),
        ("Was wir haben", "Sie zahlen, USD/cwt"),
        ("Ce que nous avons", "Vous payez, USD/cwt"),
        ("Lo que tenemos", "Usted paga, USD/cwt"),
        ("Vad vi har", "Ni betalar, USD/cwt"),
    ],
)
def test_sellers_words_head_boards_and_prices(board, price):
    found = lines([[board, price, "Availability"], [ROLLS[0], 58.4, "in stock"], [ROLLS[1], 44.25, "in stock"]])
    assert prices(found) == {"B2": ("accepted", "58.4", "cwt"), "B3": ("accepted", "44.25", "cwt")}


@pytest.mark.parametrize("text", ["Ask", "Price on request", "Call for price, USD/cwt", "auf Anfrage, EUR/t"])
def test_what_bids_a_buyer_call_heads_no_prices(text):
    assert not head_of_words(text).price


def test_a_board_to_ask_about_offers_nothing():
    found = lines([["Board", "US$/cwt", "Availability"], [ROLLS[0], 58.4, "in stock"], [ROLLS[1], "ask", "in stock"]])
    assert set(found) == {"B2"}
