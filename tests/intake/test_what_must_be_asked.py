"""What a file leaves open is asked about, and never guessed: of each cause one small sheet."""

import pytest

from tests.intake.readings import accepted, by_cell, note_codes, read_rows
from tracker.trade.offer import NoteCode, State


@pytest.mark.parametrize(
    ("rows", "cell", "code"),
    [
        (
            [
                ["Portage Lake Board Inc."],
                ["55 Rue des Érables, Trois-Rivières, Québec G8T 2K4"],
                [],
                ["Grade", "Caliper pt", "lb/MSF", "Price $/ST"],
                ["SBS C1S", 16, 68, 1510],
            ],
            "D5",
            NoteCode.CURRENCY_UNKNOWN,
        ),
        (
            [
                ["Vernouil Cartons SARL"],
                [],
                ["Qualité", "g/m²", "µm", "Prix € / 100 m²"],
                ["GC1", 250, 400, 31.2],
            ],
            "D4",
            NoteCode.BASIS_UNKNOWN,
        ),
        (
            [
                ["Quenby Carton Board Co."],
                ["USD per short ton"],
                [],
                ["Grade", "Caliper", "Price"],
                ["SBS C1S", "16-20 pt", 1235],
            ],
            "C5",
            NoteCode.CALIPER_UNKNOWN,
        ),
        (
            [
                ["Rushbrook Cartonboard Ltd"],
                ["£/t delivered"],
                [],
                ["Grade", "gsm", "µm", "1-4 pallets", "5+ pallets"],
                ["GC1", 250, 400, 1240, 1210],
            ],
            "E5",
            NoteCode.BRACKET_UNREAD,
        ),
        (
            [
                ["Merganser Board Export Inc."],
                [],
                ["Board", "Caliper (pt)", "g/m²", "US$/ton"],
                ["SBS C1S", 16, 337, 1190],
            ],
            "D4",
            NoteCode.BASIS_UNKNOWN,
        ),
    ],
)
def test_what_must_be_asked(rows, cell, code):
    reading = read_rows(rows)
    line = by_cell(reading)[cell]
    assert line.state is State.QUESTION
    assert code in note_codes(line)
    assert not accepted(reading)
