"""A mail that quotes an earlier message and says that it is withdrawn."""

import pytest

from tests.intake.sheets import lines

OFFER = [["18 pt SBS C1S, 74 lb/MSF: $1,205 per short ton"], ["20 pt CRB C1S, 79 lb/MSF: $905 per short ton"]]
EARLIER = [["18 pt SBS C1S, 74 lb/MSF: $1,160 per short ton"], ["20 pt CRB C1S, 79 lb/MSF: $870 per short ton"]]


def found(line):
    return set(lines([["From: Fenbrook Paperboard"], [], *OFFER, [], [line], *EARLIER]))


@pytest.mark.parametrize(
    "line",
    [
        "----- earlier message (withdrawn) -----",
        "----- frühere Nachricht (zurückgezogen) -----",
        "----- message précédent (retiré) -----",
        "----- mensaje anterior (anulado) -----",
        "----- tidigare meddelande (återkallat) -----",
    ],
)
def test_its_prices_are_left_out(line):
    assert found(line) == {"A3", "A4"}


def test_one_that_still_holds_is_read():
    assert found("----- earlier message (still holds) -----") >= {"A7", "A8"}
