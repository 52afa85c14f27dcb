"""What a short ton is tells nothing of a plain ton elsewhere; what a ton is, does."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Tipo", "g/m²", "Precio", None, "Tipo", "lb/MSF", "Precio"]


@pytest.mark.parametrize("short", ["USD/tonelada corta (2.000 lb)", "USD/short ton (2,000 lb)"])
def test_a_defined_short_ton_leaves_the_tonne_of_another_table(short):
    titles = ["Europa, EUR/t", None, None, None, f"América, {short}", None, None]
    found = lines([titles, HEAD, ["GC2", 250, 1221, None, "SBS", 60, 1236], ["GD2", 350, 851, None, "URB", 85, 752]])
    assert {str(found[cell].offer.basis) for cell in ("G3", "G4")} == {"short_ton"}
    assert {str(found[cell].offer.basis) for cell in ("C3", "C4")} <= {"tonne", "None"}


@pytest.mark.parametrize("note", ["1 ton = 2,000 lb", "ton of 2,000 lb", "tons are short tons"])
def test_a_defined_ton_is_every_plain_ton(note):
    found = lines([["USD per ton"], ["Grade", "pt", "g/m²", "Price"], ["SBS", 18, 366, 1190], [note]])
    assert str(found["D3"].offer.basis) == "short_ton"
