"""Units that a sentence gives rolls and sheets, over a column in which sizes of sheets stand among rolls."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis

_TONNE, _SHEETS = Basis.TONNE, Basis.THOUSAND_SHEETS


def _bases(note, head, *forms):
    prices = (218.4, 271.5, 1190)
    rows = [["GC1", 250 + n, 410, form, price] for n, (form, price) in enumerate(zip(forms, prices, strict=True))]
    found = lines([["Alder Board, prices in EUR"], ["Grade", "g/m²", "µm", head, "Price"], *rows, [], [note]])
    return [line.offer.basis if line.state == "accepted" else "asked" for line in found.values()]


@pytest.mark.parametrize(
    ("note", "head", "roll"),
    [
        ("Rolls are priced per tonne, sheets per 1,000 sheets.", "Form", "Roll"),
        ("Rolls are priced per tonne, sheets per 1,000 sheets.", "Format", "Reel 700 mm"),
        ("Rollenware in EUR je Tonne, Formatware in EUR je 1.000 Bogen.", "Format/Rolle", "Rolle 700 mm"),
        ("Rollenware je Tonne, Formatware je 1.000 Bogen.", "Format", "Rolle"),
        ("Les bobines sont cotées à la tonne, les feuilles au mille.", "Présentation", "bobine"),
        ("Les bobines sont cotées à la tonne, les feuilles aux 1000 feuilles.", "Format", "bobine"),
        ("Las bobinas se cotizan por tonelada métrica y las hojas por millar.", "Formato", "bobina"),
        ("Ark säljs per 1000 ark och rullar per ton om 1000 kg.", "Format", "rulle"),
    ],
)
def test_a_size_is_one_of_sheets_and_a_roll_is_one(note, head, roll):
    assert _bases(note, head, "70 x 100 cm", "72x102 cm", roll) == [_SHEETS, _SHEETS, _TONNE]


@pytest.mark.parametrize("form", [None, "700 mm", "various", "Rolls, cut to 70 x 100 cm"])
def test_of_a_form_that_is_not_told_it_is_asked(form):
    note = "Rolls are priced per tonne, sheets per 1,000 sheets."
    assert _bases(note, "Form", "70 x 100 cm", "Roll", form) == [_SHEETS, _TONNE, "asked"]


def test_cents_are_those_of_rolls():
    note = "Roll prices are in US cents per pound. Sheet prices are in US dollars per thousand sheets."
    rows = [["SBS C1S", 18, 76, "Roll", 57.8], ["SBS C1S", 18, 76, "28 x 40 in", 362.5]]
    roll, sheet = lines([["Item", "Pt", "lb/MSF", "Form", "Price"], *rows, [], [note]]).values()
    assert (str(roll.offer.price), roll.offer.basis) == ("0.578", Basis.LB)
    assert (str(sheet.offer.price), sheet.offer.basis) == ("362.5", _SHEETS)


def test_one_unit_of_all_is_that_of_both():
    assert _bases("All prices per tonne.", "Form", "70 x 100 cm", "72 x 102 cm", "Roll") == [_TONNE] * 3
