"""A key that stands as a table, with an empty row between two entries, or headed by no more than 'Code'."""

import pytest

from tests.intake.sheets import read

KEYS = {
    "en": (["Grade", "g/m²", "Price EUR", "Unit code"], ["Code", "Meaning"], "per tonne", "per kg"),
    "de": (["Sorte", "g/m²", "Preis EUR", "Code Einheit"], ["Code", "Bedeutung"], "je Tonne", "je kg"),
    "fr": (["Qualité", "g/m²", "Prix EUR", "Code unité"], ["Code", "Signification"], "par tonne", "par kg"),
    "es": (["Calidad", "g/m²", "Precio EUR", "Código unidad"], ["Código", "Significado"], "por tonelada", "por kg"),
    "sv": (["Kvalitet", "g/m²", "Pris EUR", "Kod enhet"], ["Kod", "Betydelse"], "per 1000 kg", "per kg"),
}


@pytest.mark.parametrize("gap", [[], [[]]])
@pytest.mark.parametrize("language", KEYS)
def test_each_row_has_its_own_unit(language, gap):
    head, key, by_tonne, by_kg = KEYS[language]
    rows = [head, ["GC1", 250, 1200, 1], ["GD2", 300, 0.9, 2], [], key, [1, by_tonne], *gap, [2, by_kg]]
    found = read(rows).lines
    assert [(str(line.state), str(line.offer.basis)) for line in found] == [("accepted", "tonne"), ("accepted", "kg")]


def test_of_two_columns_of_codes_neither_is_meant_for_certain():
    head, key, by_tonne, by_kg = KEYS["en"]
    rows = [["Item code", *head], ["A1", "GC1", 250, 1200, 1], ["A2", "GD2", 300, 0.9, 2], [], key]
    found = read([*rows, [1, by_tonne], [2, by_kg]]).lines
    assert [str(line.state) for line in found] == ["question"] * 2
