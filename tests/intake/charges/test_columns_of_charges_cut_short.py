"""Columns of percentages whose heads are cut short, so that nobody can tell whether they come on top."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN


def line(head):
    rows = [["Grade", "Caliper (pt)", "Price USD/short ton", head], ["SBS", 18, 1200, 3], ["CUK", 20, 900, 4]]
    return lines([*rows, [], ["Prices delivered."]])["C2"]


@pytest.mark.parametrize("head", ["E-surch. %", "Surch. %", "EFS %", "Zuschl. %", "Suppl. %"])
def test_what_they_come_to_is_open_and_so_is_the_delivered_cost(head):
    assert [charge.currency for charge in line(head).offer.charges] == [OPEN]
    assert line(head).state.value == "accepted"


@pytest.mark.parametrize("head", ["Moisture %", "Recovery %", "FSC %"])
def test_percentages_in_whole_words_or_of_a_property_are_no_charge(head):
    assert line(head).offer.charges == ()
