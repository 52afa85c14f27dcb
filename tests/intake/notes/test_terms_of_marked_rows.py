"""Terms of the rows that a letter marks, and of those that it does not: 'S = special width: lead time 6-8 weeks'."""

import pytest

from tests.intake.sheets import lines

_ROWS = [["GC1", 235, 380, 1428, "–"], ["GC1", 300, 495, 1399, "S"], ["GC2", 270, 445, 1356, "–"]]


def _read(*notes, head=("Grade", "g/m²", "µm", "EUR/tonne", "Mark"), rows=_ROWS):
    found = lines([["Norrskog Board Ltd"], [], list(head), *rows, [], *([note] for note in notes)])
    return [(line.offer.lead_days, line.offer.minimum_kg) for line in found.values()]


_APART = [((21, 21), None), ((42, 56), 5000), ((21, 21), None)]


@pytest.mark.parametrize(
    ("marked", "others"),
    [
        ("S = special width: lead time 6–8 weeks, minimum order 5,000 kg", "Other lines: lead time 3 weeks"),
        ("S = lead time 6–8 weeks, minimum order 5,000 kg", "All other items: lead time 3 weeks, no minimum order"),
        ("S = lead time 6–8 weeks, minimum order 5,000 kg", "Lead time 3 weeks"),
        ("S = Sonderbreite: Lieferzeit 6–8 Wochen, Mindestmenge 5.000 kg", "Übrige Zeilen: Lieferzeit 3 Wochen"),
        ("S = laize spéciale : délai 6 à 8 semaines, minimum de commande 5 000 kg", "Autres lignes : délai 3 semaines"),
        ("S = ancho especial: plazo 6-8 semanas, pedido mínimo 5.000 kg", "Otras líneas: plazo 3 semanas"),
        ("S = specialbredd: leveranstid 6–8 veckor, minsta order 5 000 kg", "Övriga rader: leveranstid 3 veckor"),
    ],
)
def test_each_row_has_its_own(marked, others):
    assert _read(marked, others) == _APART


def test_samples_beside_them_are_no_lines():
    notes = "S = lead time 6–8 weeks, minimum order 5,000 kg", "Other lines: lead time 3 weeks", "Trial sheets: 2 days."
    assert _read(*notes) == _APART


def test_rows_without_the_mark_take_nothing_of_it():
    assert _read("S = lead time 6–8 weeks, minimum order 5,000 kg")[0] == (None, None)


@pytest.mark.parametrize("note", ["S = if cut to sheets: lead time 6–8 weeks", "S = sheets: 6 weeks, rolls: 3 weeks"])
def test_what_hangs_on_more_than_the_mark_is_left_open(note):
    assert [lead for lead, _ in _read(note)] == [None, None, None]


def test_the_letters_of_qualities_stay_names_of_boards():
    rows = [["K", 235, 380, 1428], ["L", 300, 495, 1399]]
    found = lines(
        [["Norrskog Board Ltd"], [], ["Quality", "g/m²", "µm", "EUR/tonne"], *rows, [], ["K = GC1"], ["L = GC2"]]
    )
    assert [line.offer.grade for line in found.values()] == ["FBB", "FBB"]
