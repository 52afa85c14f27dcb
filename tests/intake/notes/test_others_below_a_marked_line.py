"""'Otherwise 4 weeks' below '* from stock' is of the lines without the star; of 'All others FOB mill' it is open."""

import pytest

from tests.intake.sheets import lines


def _offers(*notes):
    rows = [["Grade", "g/m²", "Price EUR/t"], ["GC1*", 250, 1200], ["GD2", 300, 900], ["GZ", 280, 1300], []]
    return [line.offer for line in lines([*rows, *([note] for note in notes)]).values()]


@pytest.mark.parametrize(
    "notes",
    [
        ("* from stock", "Otherwise 4 weeks"),
        ("* ab Lager", "Ansonsten 4 Wochen"),
        ("* ab Lager, ansonsten 4 Wochen",),
        ("* du stock", "Sinon 4 semaines"),
        ("* de stock", "Si no, 4 semanas"),
        ("* från lager", "Annars 4 veckor"),
    ],
)
def test_what_holds_otherwise_is_of_the_lines_without_the_mark(notes):
    assert [offer.lead_days for offer in _offers(*notes)] == [(0, 0), (28, 28), (28, 28)]


@pytest.mark.parametrize(
    "notes",
    [
        ("* from stock", "All others FOB mill"),
        ("* ab Lager", "Alle anderen ab Werk"),
        ("* du stock", "Toutes les autres départ usine"),
        ("* de stock", "Todas las demás ex fábrica"),
        ("* från lager", "Alla övriga fritt fabrik"),
    ],
)
def test_of_another_matter_it_is_not_told_who_the_others_are(notes):
    assert [offer.delivered for offer in _offers(*notes)] == [None, None, None]


def test_a_charge_of_the_others_is_not_the_marked_lines():
    offers = _offers("* no energy surcharge", "All others: energy surcharge 25 EUR/t")
    assert [[str(one.price) for one in offer.charges] for offer in offers] == [[], ["25"], ["25"]]


def test_otherwise_within_a_sentence_names_no_others():
    offers = _offers("* from stock", "Lead time 4 weeks unless otherwise agreed")
    assert offers[0].lead_days == (0, 0)
    assert all(offer.lead_days in ((28, 28), None) for offer in offers[1:])
