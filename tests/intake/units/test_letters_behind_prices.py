"""A letter behind a price and a key that gives it a unit: '1,226 s' and 's = US$ per short ton'."""

import pytest

from tests.intake.sheets import lines

_CELLS = (62.4, "47.20 f", "1,226 s", "36.20")


def _read(unit, *notes, cells=_CELLS, heads=("Board", "Caliper (pt)", "Weight (lb/MSF)", "Price"), **more):
    boards = [["SBS C1S", 14, 59], ["SBS C1S", 18, 77], ["SBS C1S", 20, 85], ["URB", 30, 105]]
    rows = [[*board, price] for board, price in zip(boards, cells, strict=True)]
    return lines([["Dunmarrow Paper Sales Inc."], [unit], heads, *rows, [], *([note] for note in notes)], **more)


def _told(found):
    return [(str(line.state), line.offer.currency, line.offer.basis) for line in found.values()]


@pytest.mark.parametrize(
    "notes",
    [
        ["f = US$ per 1,000 sq ft", "s = US$ per short ton"],
        ["f = US$ per 1,000 sq ft; s = US$ per short ton"],
        [
            "Prices are US dollars per cwt, except where a letter follows:",
            "f: US$ per 1,000 sq ft",
            "s: US$ per short ton",
        ],
    ],
)
def test_each_letter_has_its_unit_and_the_others_that_of_the_list(notes):
    assert _told(_read("USD per cwt, FOB mill", *notes)) == [
        ("accepted", "USD", "cwt"),
        ("accepted", "USD", "msf"),
        ("accepted", "USD", "short_ton"),
        ("accepted", "USD", "cwt"),
    ]


@pytest.mark.parametrize(
    ("unit", "note", "heads"),
    [
        ("Preise in EUR je 1000 kg", "q = je 1.000 m²", ("Sorte", "Dicke (pt)", "Gewicht (lb/MSF)", "Preis")),
        ("Prix en EUR par 1000 kg", "q = par 1 000 m²", ("Qualité", "Épaisseur (pt)", "Poids (lb/MSF)", "Prix")),
        ("Precios en EUR por 1000 kg", "q = por 1.000 m²", ("Calidad", "Calibre (pt)", "Gramaje (lb/MSF)", "Precio")),
        ("Priser i EUR per 1000 kg", "q = per 1000 m²", ("Kvalitet", "Tjocklek (pt)", "Ytvikt (lb/MSF)", "Pris")),
    ],
)
def test_in_other_languages(unit, note, heads):
    told = _told(_read(unit, note, cells=(1240, "404,5 q", "446 q", 810), heads=heads))
    assert [basis for _, _, basis in told] == ["tonne", "1000m2", "1000m2", "tonne"]


def test_a_letter_shown_by_a_number_format():
    found = _read("USD per cwt", "f = US$ per 1,000 sq ft", cells=(62.4, 47.2, 61, 36.2), formats={(4, 3): '0.00" f"'})
    assert [basis for _, _, basis in _told(found)] == ["cwt", "msf", "cwt", "cwt"]


def test_what_is_said_of_all_beside_the_key_is_kept():
    found = _read("Prices per cwt", "All prices in CAD; f = US$ per 1,000 sq ft; s = US$ per short ton")
    assert [currency for _, currency, _ in _told(found)] == ["CAD", "USD", "USD", "CAD"]


def test_a_letter_that_no_key_explains_is_asked():
    assert [state for state, _, _ in _told(_read("USD per cwt", "f = US$ per 1,000 sq ft"))] == [
        "accepted", "accepted", "question", "accepted",
    ]  # fmt: skip


def test_what_a_letter_says_of_delivery_times_is_not_said_of_the_other_lines():
    found = _read("USD per cwt", "a = lead time 6 weeks", cells=("62.40 a", 61.4, 61, 36.2))
    assert [line.offer.lead_days for line in found.values()][1:] == [None, None, None]
