"""Titles of several lists in one sheet: what the first says of its own part, and what of them all."""

import pytest

from tests.intake.sheets import lines

SHEET = [["Sallow Board"], []]
EXPORT = [["Board", "Caliper µm", "g/m²", "US$/MT"], ["CUK C1S", 400, 320, 1198]]
LOTS = [["Board", "Caliper", "Weight", "US$/ton"], ["CUK C1S", "18 pt", "76 lb/MSF", 905]]


def second(first_title, second_title, lists=(EXPORT, LOTS)):
    above, below = lists
    *_, line = lines([*SHEET, [first_title], *above, [], [second_title], *below]).values()
    return line.offer


def test_a_ton_in_a_title_of_its_own_is_no_ton_of_another_title():
    title = "Metric list, US$ per metric ton, FCA mill"
    assert second(title, "Other boards, US$ per ton").basis is None
    assert second(title, "Other boards").basis == "tonne"


@pytest.mark.parametrize(
    ("first", "other", "delivered"),
    [
        ("Export, US$ per metric ton, delivered", "Job lots", None), ("A. Delivered to works", "B. As they lie", None),
        ("Inland, frei Haus", "Restposten", None), ("Exportación, DAP", "Saldos", None),
        ("Prices delivered", "Job lots", True), ("A. Delivered to works", "A. Delivered to works, second page", True),
    ],
)  # fmt: skip
def test_terms_of_one_part_are_not_those_of_another(first, other, delivered):
    assert second(first, other).delivered is delivered


def test_what_one_part_is_priced_in_says_nothing_of_another():
    plain = [["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 18, 76, 1180]]
    offer = second("Export, US$ per metric ton", "Domestic", (EXPORT, plain))
    assert (offer.currency, offer.basis) == (None, None)
    offer = second("All prices US$ per short ton", "Further grades", (EXPORT, plain))
    assert (offer.currency, offer.basis) == ("USD", "short_ton")
