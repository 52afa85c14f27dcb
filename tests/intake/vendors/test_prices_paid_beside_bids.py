"""A column of what was paid the year before, beside the prices of several vendors, is offered by nobody."""

import pytest

from tests.intake.sheets import lines

FIRMS = ("Ivelstone Board Co.", "Garnock Ridge Mills LLC")
ROWS = [["SBS C1S", 14, 59, 1263, 1252, 1190], ["CUK", 18, 73, 1072, 1062, 1010], ["CRB C1S", 20, 78, 906, 893, 862]]
HEAD = ["Board", "Caliper pt", "lb/MSF"]
PAID = [
    "none (what we paid in 2025)",
    "Paid 2025",
    "Paid in 2025",
    "Price paid last year",
    "Vorjahr",
    "im Vorjahr bezahlt",
    "keiner (bezahlt 2025)",
    "payé en 2025",
    "aucun (payé l'an dernier)",
    "pagado en 2025",
    "ninguno (pagado en 2025)",
    "betalt 2025",
    "ingen (betalt i fjol)",
]


def _labelled(last):
    label = ["Vendor:", None, None, *FIRMS, last]
    return lines([["Bid comparison, June 2026 – US dollars"], [], label, [*HEAD, *["$/ST"] * 3], *ROWS])


def _states(found, column):
    return {str(line.state) for cell, line in found.items() if cell[0] == column}


@pytest.mark.parametrize("paid", PAID)
def test_behind_a_label_of_vendors(paid):
    found = _labelled(paid)
    assert not _states(found, "F")
    assert _states(found, "D") == _states(found, "E") == {"accepted"}


@pytest.mark.parametrize("paid", PAID)
def test_as_the_head_of_its_own_column(paid):
    found = lines([["Bid comparison, June 2026 – US$ per short ton"], [], [*HEAD, *FIRMS, paid], *ROWS])
    assert not _states(found, "F")
    assert _states(found, "D") == {"accepted"}


@pytest.mark.parametrize("firm", ["Last Mile Board Co.", "Tarn", "Personne Cartons SA", "Tarn Board Inc., 2026 bid"])
def test_another_vendors_bid_stays_one(firm):
    assert _states(_labelled(firm), "F") == {"accepted"}


@pytest.mark.parametrize("open_words", ["2025", "Tarn Board (2025)", "Target", "Average", "Best"])
def test_what_may_be_no_bid_is_asked(open_words):
    assert _states(_labelled(open_words), "F") == {"question"}
