"""Units that a whole sentence gives the prices."""

import pytest

from tests.intake.readings import accepted, read_rows


@pytest.mark.parametrize(
    ("rows", "expected"),
    [
        (
            [
                ["Selbrook International Board"],
                ["CIF/DAP buyer's works, per 1000 kg"],
                [],
                ["Product", "Grammage g/m²", "Caliper µm", "EUR", "GBP"],
                ["GC1", 235, 375, 1240, 1068],
            ],
            {"D5": ("FBB", "1240", "EUR", "tonne"), "E5": ("FBB", "1068", "GBP", "tonne")},
        ),
        (
            [
                ["Cartonnerie de la Veyle SARL"],
                ["Tarif cartons plats – prix en € h.t. la tonne, franco"],
                [],
                ["Qualité / g/m²", "230 g/m²", "250 g/m²"],
                ["GC1 couché 1 face", 1325.5, 1310],
            ],
            {"B5": ("FBB", "1325.5", "EUR", "tonne"), "C5": ("FBB", "1310", "EUR", "tonne")},
        ),
        (
            [
                ["Wickett Board Sales LLC"],
                ["Item", "Item description", "Your price"],
                ["1001", "16pt SBS C1S 69#/MSF 38.5in roll 6in core", "$60.25/cwt"],
                ["1003", "CCNB .024 94 lbs/msf sheets 28x40", "$430.50/M"],
            ],
            {"C3": ("SBS", "60.25", "USD", "cwt"), "C4": ("CRB", "430.50", "USD", "1000sheets")},
        ),
        (
            [
                ["From: sales desk, Hobbin & Crake Paperboard LLC"],
                ["thanks for the inquiry. We can offer:"],
                ["SBS C1S 18 pt 76 lb/MSF, $1,185.00/ST fob mill"],
                ["CRB C1S 20 pt 79 lb/MSF, $33.90/MSF delivered"],
                ["Call me at ext. 2204 with questions."],
            ],
            {"A3": ("SBS", "1185.00", "USD", "short_ton"), "A4": ("CRB", "33.90", "USD", "msf")},
        ),
    ],
)
def test_units_in_sentences(rows, expected):
    assert accepted(read_rows(rows)) == expected
