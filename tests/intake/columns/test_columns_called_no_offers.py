"""Price columns that a note calls by their heads, and says to be shown only."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (["SBS", 305, 249, 1268, 1295, 1282], ["SBS", 406, 332, 1250, 1276, 1265], ["GD2", 457, 342, 930, 944, 951])


def _priced(note, *heads):
    """The columns that a price is accepted in, and those that it is asked about in."""
    title = ["Alder Ridge Board Inc. - EUR/t"]
    found = lines([title, [], ["Grade", "µm", "g/m²", *heads], *_BOARDS, [], [note]])
    assert not found or len(found) % len(_BOARDS) == 0
    accepted = {cell[0] for cell, line in found.items() if line.state == "accepted"}
    return "".join(sorted(accepted)), "".join(sorted({cell[0] for cell in found} - accepted))


_FIRMS = ("Our price", "Harlow Mills", "Sedge & Dunn")


@pytest.mark.parametrize(
    "note",
    [
        "The Harlow Mills and Sedge & Dunn columns are what we hear in the market. They are there for orientation.",
        "The columns Harlow Mills and Sedge & Dunn are as follows. They are for orientation only.",
        "Harlow Mills and Sedge & Dunn are shown for comparison only.",
        "Die Spalten Harlow Mills und Sedge & Dunn dienen nur zum Vergleich.",
        "Die Spalten Harlow Mills und Sedge & Dunn sind Marktinformation, kein Angebot.",
        "Les colonnes Harlow Mills et Sedge & Dunn sont données à titre de comparaison.",
        "Las columnas Harlow Mills y Sedge & Dunn figuran a título orientativo.",
        "Kolumnerna Harlow Mills och Sedge & Dunn visas endast för jämförelse.",
    ],
)
def test_columns_of_other_firms_that_are_shown_only_offer_nothing(note):
    assert _priced(note, *_FIRMS) == ("D", "")


@pytest.mark.parametrize(
    "note",
    [
        "The columns Harlow Mills and Sedge & Dunn hold for orders placed with those mills. Market prices have risen.",
        "The Harlow Mills and Sedge & Dunn columns are not for comparison only.",
        "Lead times in the Harlow Mills and Sedge & Dunn columns are for orientation.",
        "Rolls from Harlow Mills and Sedge & Dunn are not offered.",
        "The columns of calipers are for orientation.",
    ],
)
def test_columns_of_firms_of_which_something_else_is_said_stay(note):
    assert "".join(sorted("".join(_priced(note, *_FIRMS)))) == "DEF"


_MONTHS = ("Jan 2026", "Apr 2026", "Jul 2026")


@pytest.mark.parametrize(
    "note",
    [
        "We now sell at the July 2026 level. The January and April columns only show how prices have moved.",
        "The January and April columns can no longer be ordered at.",
        "Die Spalten Januar und April zeigen nur, wie sich die Preise entwickelt haben.",
        "Les colonnes janvier et avril ne montrent que l'évolution des prix.",
        "Las columnas de enero y abril solo muestran cómo han evolucionado los precios.",
        "Kolumnerna januari och april visar bara hur priserna har ändrats.",
    ],
)
def test_months_that_only_show_how_prices_moved_are_over(note):
    assert _priced(note, *_MONTHS) == ("F", "")


@pytest.mark.parametrize("note", ["The January column only shows the start.", "Orders of January can't be changed."])
def test_of_months_that_are_not_told_apart_it_is_asked(note):
    accepted, asked = _priced(note, *_MONTHS)
    assert not accepted
    assert "F" in asked


def test_a_note_on_all_columns_leaves_them():
    accepted, asked = _priced("All columns are for orientation only.", "Zone 1", "Zone 2", "Zone 3")
    assert accepted + asked == "DEF"
