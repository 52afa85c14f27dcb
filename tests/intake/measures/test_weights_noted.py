"""Units of basis weights that a footnote of their head tells."""

import pytest

from tests.intake.sheets import codes, lines


def _read(head, note, *rows):
    heads = ["Kind", "Thickness (1)", head, "Price (3)"]
    notes = [["(1) thousandths of an inch"], [note], ["(3) U.S. dollars per ton of 2,000 pounds."]]
    return lines([["Ashlock Paper Co."], heads, *rows, *notes])


@pytest.mark.parametrize("note", ["(2) lb/MSF", "(2) Pounds per 1,000 square feet, at 6.5 % moisture."])
def test_the_note_of_the_head_is_its_unit(note):
    found = _read("Weight (2)", note, ["SBS, C1S", 12, 51, 1266], ["CRB, C1S", 14, 148, 906])
    assert codes(found["D3"]) == set()
    assert codes(found["D4"]) == {"weight-implausible"}


def test_a_note_of_another_head_is_not():
    found = _read("Weight", "(4) Freight rates are per load; pallets weigh 60 lb", ["SBS, C1S", 12, 51, 1266])
    assert codes(found["D3"]) == {"weight-basis-unknown"}
