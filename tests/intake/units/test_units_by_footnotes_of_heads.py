"""A footnote of one column's head says what its prices are per: 'Bogen 70 x 100 cm ¹)' and '¹) € je 1.000 Bogen'."""

import pytest

from tests.intake.sheets import lines

_ROWS = [
    ["GC1", 250, 405, 1275, 248.3, 1400],
    ["GC1", 325, 540, 1244, 316.5, 1050],
    ["GC2", 270, 445, 1212, 255.2, 1300],
]


def _read(unit, heads, note):
    rows = [row[: len(heads)] for row in _ROWS]
    found = lines([["Obermoosen Feinkarton GmbH"], [unit], [], heads, *rows, [], [note]])
    return {cell: (str(line.state), line.offer.basis) for cell, line in found.items() if cell.endswith("5")}


@pytest.mark.parametrize(
    ("unit", "heads", "note"),
    [
        ("Preise in €/t, frei Haus", ["Sorte", "g/m²", "µm", "Rollen", "Bogen 70 x 100 cm{}"], "{} € je 1.000 Bogen"),
        ("Preise in €/t", ["Sorte", "g/m²", "µm", "Rollen", "Bogen 70 x 100 cm{}"], "{} Preis je 1000 Bogen"),
        ("Prices in € per tonne", ["Grade", "g/m²", "µm", "Rolls", "Sheets 70 x 100 cm{}"], "{} € per 1,000 sheets"),
        ("Prix en €/t", ["Qualité", "g/m²", "µm", "Bobines", "Feuilles 70 x 100 cm{}"], "{} € les 1 000 feuilles"),
        ("Precios en €/t", ["Calidad", "g/m²", "µm", "Bobinas", "Hojas 70 x 100 cm{}"], "{} € por 1.000 hojas"),
        ("Priser i EUR per 1000 kg", ["Kvalitet", "g/m²", "µm", "Rulle", "Ark 70 x 100 cm{}"], "{} EUR per 1000 ark"),
    ],
)
@pytest.mark.parametrize("sign", [" ¹)", " *", " 1)", " ²"])
def test_sheets_beside_rolls(unit, heads, note, sign):
    found = _read(unit, [head.format(sign) for head in heads], note.format(sign.strip()))
    assert found == {"D5": ("accepted", "tonne"), "E5": ("accepted", "1000sheets")}


def test_how_many_sheets_a_pallet_holds_is_no_price():
    heads = ["Sorte", "g/m²", "µm", "Rollen", "Bogen 70 x 100 cm ¹)", "Bogen je Palette"]
    found = _read("Preise in €/t, frei Haus", heads, "¹) € je 1.000 Bogen")
    assert found == {"D5": ("accepted", "tonne"), "E5": ("accepted", "1000sheets")}


@pytest.mark.parametrize("note", ["¹) Mindestmenge 1 t", "¹) auf Anfrage"])
def test_a_footnote_without_a_unit_explains_no_figures(note):
    found = _read("Preise in €/t", ["Sorte", "g/m²", "µm", "Rollen", "Bogen 70 x 100 cm ¹)"], note)
    assert found["D5"] == ("question", "tonne")
