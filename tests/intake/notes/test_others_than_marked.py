"""Lines set against those that a footnote marks, in a line of their own: 'All others 4 weeks' below '* from stock'."""

import pytest

from tests.intake.sheets import lines

_EN = [["Fairhaven Board Co."], ["Grade", "Caliper (pt)", "Price USD/short ton"]]
_DE = [["Moosbrunner Karton GmbH"], ["Sorte", "Gewicht g/m²", "Preis EUR/t"]]
_PT = [["SBS*", 18, 1200], ["CUK", 20, 900], ["CRB**", 22, 800]]
_GSM = [["GC1*", 250, 1200], ["GD2", 300, 900], ["GZ", 280, 1300]]


def _read(field, *notes, head=_EN, rows=_PT):
    found = lines([*head, *rows, [], *([note] for note in notes)])
    return [getattr(line.offer, field) for line in found.values()]


@pytest.mark.parametrize(
    ("marked", "others"),
    [
        ("* from stock", "All others 4 weeks"),
        ("* from stock", "Other grades: 4 weeks"),
        ("* from stock", "Lead time of all others 4 weeks"),
        ("* ab Lager", "Alle anderen 4 Wochen"),
        ("* ab Lager", "Übrige Sorten: 4 Wochen"),
        ("* en stock", "Autres qualités 4 semaines"),
        ("* en stock", "Resto 4 semanas"),
        ("* en stock", "Las demás calidades 4 semanas"),
        ("* lagervara", "Övriga 4 veckor"),
    ],
)
def test_the_others_are_those_without_the_mark(marked, others):
    for notes in ((marked, others), (others, marked), (marked, "", others)):
        assert _read("lead_days", *notes, head=_DE, rows=_GSM) == [(0, 0), (28, 28), (28, 28)]


def test_they_are_others_than_those_of_the_same_matter():
    notes = "* from stock", "** minimum 5 short tons", "Others 4 weeks"
    assert _read("lead_days", *notes) == [(0, 0), (28, 28), (28, 28)]
    least = _read("minimum_kg", *notes)
    assert least[:2] == [None, None]
    assert round(least[2]) == 4536


def test_they_are_others_than_all_that_are_marked_for_it():
    assert _read("lead_days", "* from stock", "** 2 weeks", "Others 4 weeks") == [(0, 0), (28, 28), (14, 14)]


@pytest.mark.parametrize(
    ("marked", "others", "delivered"),
    [
        ("* delivered", "Others FOB mill", True),
        ("* frei Haus", "Übrige ab Werk", True),
        ("* départ usine", "Autres : franco", False),
    ],
)
def test_delivery_is_told_so_as_well(marked, others, delivered):
    found = _read("delivered", marked, others, head=_DE, rows=_GSM)
    assert found == [delivered, not delivered, not delivered]


@pytest.mark.parametrize("marked", ["* minimum 5 short tons", "* FSC certified", "† from stock"])
def test_of_marks_for_another_matter_it_is_not_told_who_the_others_are(marked):
    assert _read("lead_days", marked, "Others 4 weeks") == [None, None, None]


def test_a_board_named_for_the_matter_keeps_its_own():
    found = _read("lead_days", "* from stock", "CUK: 6 weeks", "Others 4 weeks")
    assert found == [(0, 0), (42, 42), (28, 28)]


def test_grades_that_the_list_has_not_are_no_lines():
    assert _read("lead_days", "* from stock", "Other grades on request") == [(0, 0), None, None]
