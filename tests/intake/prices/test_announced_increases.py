"""Old and new prices around an announced increase: the new one is offered, the old one has its last day."""

from datetime import date

import pytest

from tests.intake.readings import accepted, by_cell, read_rows
from tests.intake.sheets import lines
from tracker.intake.grid import MergedRange


def test_an_announced_increase_offers_the_new_price():
    reading = read_rows(
        [
            ["Marrowby Board plc"],
            ["Price adjustment – deliveries from 1 July 2026"],
            ["All prices GBP per tonne delivered"],
            [],
            ["Product", "gsm", "micron", "Current price", "Increase", "New price"],
            ["GC1 Larchwhite", 235, 380, 1020, 60, 1080],
            ["GC2 Larchcream", 270, 440, 985, 55, 1040],
        ]
    )
    assert accepted(reading) == {"F6": ("FBB", "1080", "GBP", "tonne"), "F7": ("FBB", "1040", "GBP", "tonne")}


def test_the_old_price_in_a_hidden_column():
    reading = read_rows(
        [
            ["Lindal Paperboard Ltd – price list 2026, EUR/t DDP, valid to 31 Dec 2026"],
            [],
            ["Grade", "GSM", "Microns", "Old price 2025", "New price 2026"],
            ["GC1", 250, 400, 1180, 1225],
            ["GD2", 300, 400, 800, 845],
        ],
        hidden=frozenset({3}),
    )
    assert accepted(reading) == {"E4": ("FBB", "1225", "EUR", "tonne"), "E5": ("CRB", "845", "EUR", "tonne")}


def test_two_years_side_by_side_under_merged_heads():
    reading = read_rows(
        [
            ["Ramsholt Board Ltd, price list of 5 March 2026"],
            [],
            ["Grade", "gsm", "µm", "2026", None, "2025", None],
            [None, None, None, "£/t", "Lead time", "£/t", "Lead time"],
            ["GC1", 250, 400, 1240, "4 weeks", 1200, "5 weeks"],
            ["GD2", 300, 400, 845, "4 weeks", 805, "5 weeks"],
        ],
        merged=(MergedRange(2, 3, 2, 4), MergedRange(2, 5, 2, 6)),
    )
    assert accepted(reading) == {"D5": ("FBB", "1240", "GBP", "tonne"), "D6": ("CRB", "845", "GBP", "tonne")}
    assert by_cell(reading)["D5"].offer.caliper_um == 400


@pytest.mark.parametrize(
    ("until", "since"),
    [
        ("Price until 30 September 2026", "Price from 1 October 2026"),
        ("Preis bis 30. September 2026", "Preis ab 1. Oktober 2026"),
        ("Prix jusqu'au 30 septembre 2026", "Prix à partir du 1 octobre 2026"),
    ],
)
def test_an_announced_increase_gives_the_old_price_its_last_day(until, since):
    found = lines([["EUR/t"], ["Board", "µm", "g/m²", until, since], ["GC2", 370, 215, 1165, 1225]])
    assert {cell: (str(line.state), line.offer.valid_until) for cell, line in found.items()} == {
        "D3": ("accepted", date(2026, 9, 30)),
        "E3": ("accepted", None),
    }


def test_prices_by_their_last_day_are_prices():
    heads = ["Board", "µm", "g/m²", "Price valid to 31 Dec 2026", "Price valid to 31 Mar 2027"]
    found = lines([["EUR/t"], heads, ["GC2", 370, 215, 1165, 1225]])
    last = {cell: (str(line.state), line.offer.valid_until) for cell, line in found.items()}
    assert last == {"D3": ("accepted", date(2026, 12, 31)), "E3": ("accepted", date(2027, 3, 31))}
