"""What has a last day and is no price: a shutdown, a stock, a discount."""

import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize(
    ("note", "until"),
    [
        ("Our shutdown runs until January 4, 2027", None),
        ("Stock is kept until December 31, 2026", None),
        ("Die Maschine läuft bis zum 04.01.2027", None),
        ("Offer stands till January 4, 2027", "2027-01-04"),
    ],
)
def test_only_prices_and_offers_hold(note, until):
    (line,) = lines([["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 16, 67, 1230], [], [note]]).values()
    assert (line.offer.valid_until and line.offer.valid_until.isoformat()) == until
