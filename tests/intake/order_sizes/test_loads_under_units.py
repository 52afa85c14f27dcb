"""A load's name over prices, under a heading that gives the unit of order sizes."""

import pytest

from tests.intake.readings import pounds
from tests.intake.sheets import codes, lines, merged


def last_size(head):
    rows = [[None, None, None, "Order size, lb"], ["Grade", "pt", "lb/MSF", "5,000 - 9,999", head]]
    found = lines([["US$/cwt, FOB mill"], [], *rows, ["SBS C1S", 14, 59, 64.1, 59.1]], merged=merged((2, 3, 2, 4)))
    return found["E5"]


@pytest.mark.parametrize("head", ["Truckload (10,000 +)", "TL 10,000+", "Truckload (10,000 & up)"])
def test_the_figure_behind_the_name_weighs_the_load(head):
    line = last_size(head)
    assert (line.state, line.offer.from_kg) == ("accepted", pounds(10_000))


def test_the_figure_before_it_counts_loads():
    assert codes(last_size("2+ truckloads")) == {"bracket-unread"}


@pytest.mark.parametrize("head", ["USD/ST 10,000 lb up to 2 truckloads", "EUR/t 5 t bis 2 LKW"])
def test_a_size_in_two_units_is_asked_about(head):
    (line,) = lines([["Grade", "pt", "lb/MSF", head], ["SBS C1S", 14, 59, 1164]]).values()
    assert "bracket-unread" in codes(line)
