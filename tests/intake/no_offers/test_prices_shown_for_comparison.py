"""Headings over prices that are only compared with: 'For comparison only (not offered):'."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["Grade", "Caliper (pt)", "lb/MSF", "Price"], ["SBS C1S", 16, 66, 1265], ["SBS C1S", 20, 81, 1249], []]
OTHERS = [["SBS index, October", 16, None, 1310], ["Your price of last year, SBS C1S", 16, 66, 1225]]


def states(heading):
    found = lines([["US dollars per short ton, delivered"], [], *BOARDS, [heading], *OTHERS])
    return {cell: str(line.state) for cell, line in found.items() if cell in ("D8", "D9")}


@pytest.mark.parametrize(
    "heading",
    [
        "For comparison only (not offered):",
        "Not offered, for comparison only",
        "Nur zum Vergleich (nicht angeboten):",
        "Pour comparaison seulement (non offert) :",
        "Solo para comparar (no ofertado):",
        "Endast för jämförelse (offereras ej):",
    ],
)
def test_what_is_not_offered_and_shown_to_compare_is_passed(heading):
    assert states(heading) == {}


@pytest.mark.parametrize(
    "heading", ["For comparison only:", "Nur zum Vergleich:", "Pour comparaison :", "Para comparar:", "För jämförelse:"]
)
def test_what_is_shown_to_compare_may_be_offered_too(heading):
    assert set(states(heading).values()) == {"question"}


def test_a_heading_that_says_more_is_read_otherwise():
    assert states("For comparison (offered as well):").keys() == {"D8", "D9"}
