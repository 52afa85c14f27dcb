"""'Sheets in 6 weeks, rolls in 4': the bare figure goes on with the weeks of the other form."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Sort", "g/m²", "EUR/t"], ["GC1", 250, 1262], ["GD2", 280, 821]]


def leads(note, rows=ROWS):
    return [line.offer.lead_days for line in lines([*rows, [], [note]]).values()]


@pytest.mark.parametrize(
    "note",
    ["Sheets in 6 weeks, rolls in 4.", "Bogen in 6 Wochen, Rollen in 4.", "Rolls 6 weeks, sheets 4."],
)
def test_neither_is_the_time_of_rows_that_name_no_form(note):
    assert leads(note) == [None, None]


def test_rows_that_name_their_form_have_its_time():
    rows = [["Product", "Grade", "g/m²", "EUR/t"], ["Board rolls", "GC1", 250, 1262], ["Board sheets", "GD2", 280, 821]]
    assert leads("Sheets in 6 weeks, rolls in 4 weeks.", rows) == [(28, 28), (42, 42)]
