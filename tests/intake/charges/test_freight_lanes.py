"""Freight that a note gives for one town is charged; for one of several, or a part of the country, it stays open."""

import pytest

from tests.intake.sheets import lines


def freight(note):
    (line,) = lines([["Grade", "pt", "lb/MSF", "Price USD/ST"], ["SBS C1S", 16, 67, 1230], [], [note]]).values()
    return [charge.price for charge in line.offer.charges]


def test_to_one_town_it_is_charged():
    assert [float(price) for price in freight("Freight to Dayton $1.90/cwt")] == [1.9]


@pytest.mark.parametrize(
    "note",
    [
        "Freight to Dayton $1.90/cwt and Boston $2.90/cwt", "Freight to Midwest $1.90/cwt",
        "Freight to Dayton $1.90/cwt; all other points on request", "Freight to Eastern Seaboard $2.10/cwt",
    ],
)  # fmt: skip
def test_to_others_it_is_open(note):
    assert 0 not in freight(note)
    assert [float(price) for price in freight(note)] != [1.9]
