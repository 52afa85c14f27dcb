"""'MSF per roll': how much board a roll holds is neither its basis weight nor a price."""

import pytest

from tests.intake.sheets import read

AMERICAN = ["MSF per roll (approx.)", "MSF/roll", "M sq ft per roll", "sq ft per roll", "linear ft per roll"]
METRIC = ["m²/Rolle", "m² je Rolle (ca.)", "m² par bobine", "m²/bobine (env.)", "m² por bobina", "m² per rulle"]


@pytest.mark.parametrize("head", AMERICAN)
def test_it_is_no_second_basis_weight(head):
    rows = [["SBS C1S", 14, 59, 40.1, 61.5], ["SBS C1S", 18, 75, 50.15, 48.2], ["CRB C1S", 18, 70, 32.9, 51]]
    found = read([["US dollars per MSF"], [], ["Board", "Pt.", "Lb/MSF", "Price", head], *rows]).lines
    assert [(str(line.state), line.offer.source.cell) for line in found] == [("accepted", f"D{at}") for at in (4, 5, 6)]
    assert [round(line.offer.grammage_gsm) for line in found] == [288, 366, 342]


@pytest.mark.parametrize("head", METRIC)
def test_it_is_no_price(head):
    rows = [["GC1", 400, 235, 1200, 2100], ["GC1", 500, 300, 1180, 1650], ["GD2", 400, 300, 880, 1650]]
    found = read([["Sorte", "µm", "g/m²", "EUR/t", head], *rows]).lines
    assert [(str(line.state), line.offer.source.cell) for line in found] == [("accepted", f"D{at}") for at in (2, 3, 4)]


@pytest.mark.parametrize("head", ["MSF", "Price per MSF", "USD per MSF, rolls"])
def test_what_a_price_is_per_is_one(head):
    rows = [["SBS C1S", 14, 40.1], ["SBS C1S", 18, 50.15], ["CRB C1S", 18, 32.9]]
    found = read([["US dollars per MSF"], [], ["Board", "Pt.", head], *rows]).lines
    assert [str(line.offer.basis) for line in found] == ["msf"] * 3
