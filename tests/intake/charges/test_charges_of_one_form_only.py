"""Charges that a note gives one form of board only: by 'only' before it or behind it, or by the charge's own name."""

import pytest

from tests.intake.sheets import read

_HEADS = {
    "en": ["Grade", "Form", "Basis weight g/m²", "Price EUR/t"],
    "de": ["Sorte", "Form", "Gewicht g/m²", "Preis EUR/t"],
    "fr": ["Qualité", "Forme", "Grammage g/m²", "Prix EUR/t"],
    "es": ["Calidad", "Formato", "Gramaje g/m²", "Precio EUR/t"],
    "sv": ["Kvalitet", "Form", "Ytvikt g/m²", "Pris EUR/t"],
}
_FORMS = {
    "en": ("rolls", "sheets"),
    "de": ("Rollen", "Bogen"),
    "fr": ("bobines", "feuilles"),
    "es": ("bobinas", "hojas"),
    "sv": ("rullar", "ark"),
}


def charged(language, note):
    """What rolls and sheets are charged each; 0 where that is open, '' where they bear nothing."""
    rolls, sheets = _FORMS[language]
    rows = [_HEADS[language], ["GC1", rolls, 250, 1200], ["GD2", sheets, 300, 900], [note]]
    return tuple("".join(str(one.price) for one in line.offer.charges) for line in read(rows).lines)


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge 18 EUR/t only on rolls"),
        ("en", "Energy surcharge 18 EUR/t, rolls only"),
        ("en", "Energy surcharge 18 EUR/t, only rolls"),
        ("en", "Energy surcharge of only 18 EUR/t on rolls"),
        ("en", "Roll surcharge 18 EUR/t"),
        ("de", "Energiezuschlag 18 EUR/t nur auf Rollen"),
        ("de", "Energiezuschlag 18 EUR/t nur für Rollen"),
        ("de", "Energiezuschlag 18 EUR/t lediglich in Rollen"),
        ("de", "Rollenzuschlag 18 EUR/t"),
        ("fr", "Supplément énergie 18 EUR/t seulement pour les bobines"),
        ("fr", "Supplément énergie 18 EUR/t uniquement sur les bobines"),
        ("es", "Recargo energético 18 EUR/t solo en bobinas"),
        ("es", "Recargo energético 18 EUR/t únicamente en bobinas"),
        ("sv", "Energitillägg 18 EUR/t endast på rullar"),
        ("sv", "Energitillägg 18 EUR/t enbart för rullar"),
        ("sv", "Rulltillägg 18 EUR/t"),
    ],
)
def test_rolls_alone_bear_it(language, note):
    assert charged(language, note) == ("18", "")


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Sheet surcharge 38 EUR/t"),
        ("de", "Bogenzuschlag 38 EUR/t"),
        ("fr", "Supplément feuilles 38 EUR/t"),
        ("es", "Recargo hojas 38 EUR/t"),
        ("sv", "Arktillägg 38 EUR/t"),
    ],
)
def test_sheets_alone_bear_what_is_called_by_them(language, note):
    assert charged(language, note) == ("", "38")


@pytest.mark.parametrize("note", ["Energy surcharge is only 18 EUR/t", "Energy surcharge 18 EUR/t, rolls and sheets"])
def test_both_bear_what_no_form_is_named_for(note):
    assert charged("en", note) == ("18", "18")


@pytest.mark.parametrize("note", ["Energy surcharge 18 EUR/t, rolls", "Energy surcharge 18 EUR/t (rolls only)"])
def test_what_may_be_of_one_form_is_open(note):
    assert charged("en", note) == ("0", "0")


def test_some_rolls_leave_it_open_for_rolls():
    assert charged("en", "Narrow roll surcharge 18 EUR/t") == ("0", "")
