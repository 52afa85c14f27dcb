"""What a point says when the pointer rests on it."""

import numpy as np
import pytest

from tests.window.fixtures.invented_offers import comparison
from tracker.desk.comparison import Per
from tracker.desk.standing import Standing, standings
from tracker.window.look.figures import Units, figure
from tracker.window.quotes.card import card
from tracker.window.quotes.offer_columns import offers


@pytest.mark.parametrize(
    ("per", "units", "others"),
    [
        (Per.MSF, Units.US, "({tonne} per tonne)"),
        (Per.TONNE, Units.US, "({msf} per MSF)"),
        (Per.MSF, Units.METRIC, "({tonne} per tonne = {km2} per 1,000 m²)"),
        (Per.TONNE, Units.METRIC, "({km2} per 1,000 m²)"),
    ],
)
def test_a_price_is_told_on_the_other_bases_of_the_units_in_force(per, units, others: str) -> None:
    made = comparison(300, per=per)
    tonne, msf = float(made.per_tonne[7]), float(made.per_msf[7])
    told = {"tonne": figure(tonne, 0), "msf": figure(msf, 2), "km2": figure(msf / 0.09290304, 2)}
    said = card(offers(made, standings(made), units), 7)
    assert others.format(**told) in said


def test_the_verdict_is_told_in_words() -> None:
    made = comparison(300)
    marks = standings(made)
    row = int(np.flatnonzero(marks == Standing.ABOVE)[0])
    lines = card(offers(made, marks, Units.US), row).splitlines()
    assert lines[0].startswith(made.snapshot.vendors[made.snapshot.vendor[row]])
    assert made.snapshot.as_quoted[row] in lines[1]
    assert "34 % above the going price" in lines[3]
