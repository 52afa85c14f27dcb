"""'D1' and 'D2' in a row are codes of something, where '1 d' counts days."""

import pytest

from tests.intake.sheets import lines


def leads(head, first, second):
    rows = [["Grade", "Caliper", head, "USD/ST"], ["SBS", "18 pt", first, 1200], ["CUK", "20 pt", second, 1000]]
    return [line.offer.lead_days for line in lines(rows).values()]


@pytest.mark.parametrize("head", ["Mill", "Werk", "Usine", "Fábrica", "Bruk", "", "Lead time"])
@pytest.mark.parametrize(("first", "second"), [("D1", "D2"), ("D 1", "D 2"), ("T1", "T2"), ("J1", "J2")])
def test_codes_are_no_lead_times(head, first, second):
    assert leads(head, first, second) == [None, None]


@pytest.mark.parametrize(("first", "second"), [("10 d", "12 d"), ("10d", "12d"), ("d: 10", "d: 12")])
def test_counted_days_are(first, second):
    assert leads("Lead time", first, second) == [(10, 10), (12, 12)]
