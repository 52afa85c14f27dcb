"""Sizes of sheets that say what can be cut, or what sheets weigh, and are those of no offer by the ton."""

import pytest

from tests.intake.sheets import lines

_TABLE = [["Fairhaven Board Co."], ["Grade", "g/m²", "USD/tonne"], ["SBS", 250, 1200], ["CUK", 300, 900], []]


def _sheets(*notes, table=_TABLE):
    return {line.offer.sheet_mm for line in lines([*table, *([note] for note in notes)]).values()}


@pytest.mark.parametrize(
    "note",
    [
        "Maximum sheet size 52 x 70 in",
        "Max. sheet size: 52 x 70 in",
        "Minimum sheet size 20 x 26 in",
        "Sheets up to 52 x 70 in",
        "Sheet size 52 x 70 in max.",
        "Maximales Format 120 x 160 cm",
        "Maximalformat 120 x 160 cm",
        "Format max. 120 x 160 cm",
        "Kleinstes Format: 50 x 70 cm",
        "Format maxi 120 x 160 cm",
        "Feuilles jusqu'à 120 x 160 cm",
        "Formato máximo 120 x 160 cm",
        "Hojas hasta 120 x 160 cm",
        "Största format 120 x 160 cm",
        "Maxformat 120 x 160 cm",
    ],
)
def test_what_can_be_cut_is_no_size_of_the_offer(note):
    assert _sheets(note) == {None}
    assert _sheets(table=[[note], *_TABLE]) == {None}


@pytest.mark.parametrize(
    "note",
    [
        "1,000 sheets 26 x 38 in weigh 250 lb",
        "Example: 1,000 sheets 26 x 38 in weigh 250 lb",
        "1,000 sheets 26 x 38 in = 250 lb",
        "1.000 Bogen 70 x 100 cm wiegen 210 kg",
        "Beispiel: 1.000 Bogen 70 x 100 cm",
        "1 000 feuilles 70 x 100 cm pèsent 210 kg",
        "1.000 hojas 70 x 100 cm pesan 210 kg",
        "1 000 ark 70 x 100 cm väger 210 kg",
    ],
)
def test_what_sheets_weigh_is_no_size_of_the_offer(note):
    assert _sheets(note) == {None}


@pytest.mark.parametrize(
    "note",
    [
        "Sheet size 70 x 100 cm",
        "Sheets 70 x 100 cm, max. 900 kg per pallet",
        "Max. pallet weight 900 kg, sheet size 70 x 100 cm",
        "Format 70 x 100 cm",
        "Format 70 x 100 cm, hauteur maxi de palette 1 m",
        "Formato 70 x 100 cm",
    ],
)
def test_a_bound_of_something_else_takes_no_size_away(note):
    assert [tuple(map(int, size)) for size in _sheets(note)] == [(700, 1000)]


@pytest.mark.parametrize(
    ("head", "own"), [("Max. sheet size (cm)", False), ("Format maxi (cm)", False), ("Sheet size (cm)", True)]
)
def test_a_column_of_what_can_be_cut_is_told_by_its_head(head, own):
    table = [["Fairhaven Board Co."], ["Grade", "g/m²", head, "USD/tonne"], ["SBS", 250, "70 x 100", 1200]]
    assert (_sheets(table=table) != {None}) is own


@pytest.mark.parametrize(
    "note",
    [
        "Cut sizes from 20 x 26 in to 52 x 70 in",
        "Sheeting from 20 x 26 in to 52 x 70 in",
        "Sheet size range 20 x 26 - 52 x 70 in",
        "Sheets 20 x 26 in up to 52 x 70 in",
        "Formate von 50 x 70 cm bis 120 x 160 cm",
        "Formate ab 50 x 70 cm bis 120 x 160 cm",
        "Formats de 50 x 70 cm jusqu'à 120 x 160 cm",
        "Formatos desde 50 x 70 cm hasta 120 x 160 cm",
        "Format från 50 x 70 cm till 120 x 160 cm",
    ],
)
def test_neither_end_of_what_can_be_cut_is_one(note):
    assert _sheets(note) == {None}


@pytest.mark.parametrize(
    "note",
    [
        "Max. 120 x 160 cm. Sheets sold: 70 x 100 cm",
        "Sheet size 70 x 100 cm, max. 120 x 160 cm",
        "Format 70 x 100 cm, maximal 120 x 160 cm",
    ],
)
def test_a_size_told_beside_a_bound_and_not_joined_to_it_is(note):
    assert _sheets(note) == {(700, 1000)}
