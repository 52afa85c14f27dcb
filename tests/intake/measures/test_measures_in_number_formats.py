"""Figures under no heads whose number formats show what they measure."""

from tests.intake.sheets import lines
from tracker.trade.offer import State

FORMATS = ('0" pt"', '0" lb/MSF"', '"US$ "#,##0.00" per ST"')
ROWS = [["Brinsop Carton Stock"], [], ["SBS C1S", 14, 58, 1172], ["CUK", 16, 62, 1033]]


def test_measures_shown_by_their_formats_are_read():
    formats = {(row, column + 1): shown for row in (2, 3) for column, shown in enumerate(FORMATS)}
    found = lines(ROWS, formats=formats).values()
    assert {line.state for line in found} == {State.ACCEPTED}
    assert [(float(line.offer.caliper_um), round(line.offer.grammage_gsm)) for line in found] == [
        (355.6, 283),
        (406.4, 303),
    ]


def test_bare_figures_measure_nothing():
    formats = {(row, 3): FORMATS[2] for row in (2, 3)}
    assert {line.state for line in lines(ROWS, formats=formats).values()} == {State.QUESTION}
