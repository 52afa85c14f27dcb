"""Signs of footnotes behind a word of a head that goes on: the head is read without them, and their note is heard."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.tables.heads import without_footnote

ROWS = [["GC2", 240, 390, 1214, 1176], ["GD2", 340, 460, 828, 791]]


def _list(under, above, *notes):
    return [["Harrow Carton Mill"], [], ["Grade", "g/m²", "µm", under, above], *ROWS, [], *([note] for note in notes)]


@pytest.mark.parametrize("sign", ["*", "**", "¹", "¹)", "†", "(*)"])
def test_a_sign_within_a_head_leaves_it_a_price_with_its_order_size(sign):
    found = lines(_list(f"Price{sign} below 8 t", f"Price{sign} from 8 t", f"{sign} EUR per 1000 kg, ex works."))
    sizes = [(one.offer.from_kg, one.offer.below_kg) for one in found.values()]
    assert sizes == [(None, 8000), (8000, None)] * 2
    assert {(str(one.state), one.offer.currency, str(one.offer.basis)) for one in found.values()} == {
        ("accepted", "EUR", "tonne")
    }


def test_the_note_of_one_heads_sign_is_none_of_the_others():
    notes = ["* EUR per 1000 kg.", "** GBP per 1000 kg."]
    found = lines(_list("Price* domestic", "Price** export", *notes))
    assert [one.offer.currency for one in found.values()] == ["EUR", "GBP"] * 2


@pytest.mark.parametrize(
    "text", ["Format 70 * 100 cm", "70*100 cm", "Bulk cm³ per g", "Weight g/m² dry", "Area m² net"]
)
def test_signs_of_sizes_and_units_stay(text):
    assert without_footnote(text) == text


@pytest.mark.parametrize("code", ["G", "K", "GX"])
def test_a_code_of_one_letter_is_explained_in_two_cells(code):
    rows = [
        ["Code", "Grammage", "Thickness", "EUR/t"],
        [code, "340 g/m²", "460 µm", 828],
        ["Z", "240 g/m²", "390 µm", 1214],
    ]
    legend = [["Codes"], [code, "white-lined chipboard GD2"], ["Z", "folding boxboard GC2"]]
    assert [one.offer.grade for one in lines([["Harrow Carton Mill"], [], *rows, [], *legend]).values()] == [
        "CRB",
        "FBB",
    ]
