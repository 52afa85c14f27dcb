"""'Except item 3, all prices are delivered' is said of all others, and nothing of the lines excepted."""

import pytest

from tests.intake.sheets import lines

ROWS = [[1, "SBS", 300, 1200], [2, "CUK", 350, 900], [3, "CRB", 300, 700]]


def _offers(*notes, item="Item"):
    rows = [[item, "Grade", "g/m²", "Price EUR/t"], *ROWS, *([note] for note in notes)]
    return [line.offer for line in lines(rows).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Except item 3, all prices are delivered.", "With the exception of item 3, all prices are delivered.",
        "Apart from item 3, prices are delivered.", "Except item 3: all prices delivered",
        "Item 3 excepted, all prices are delivered.", "Except CRB: all prices delivered",
        "Außer Pos. 3 alle Preise frei Haus", "Mit Ausnahme von Pos. 3 alle Preise frei Haus",
        "Bis auf Pos. 3 alles frei Haus", "Pos. 3 ausgenommen, alle Preise frei Haus",
        "Sauf pos. 3, tous les prix s'entendent franco", "À l'exception de la pos. 3, prix franco",
        "Salvo la pos. 3, precios franco destino", "Utom pos 3 är alla priser fritt levererade",
    ],
)  # fmt: skip
def test_terms_of_all_others_are_not_those_of_the_line_excepted(note):
    assert [offer.delivered for offer in _offers(note)] == [True, True, None]


def test_so_are_times_minimums_and_charges():
    found = _offers("Except items 2 and 3, lead time is 3 weeks")
    assert [offer.lead_days for offer in found] == [(21, 21), None, None]
    assert [offer.minimum_kg for offer in _offers("Except item 3, minimum order 5 tonnes")] == [5000, 5000, None]
    found = _offers("Except for item 3, an energy surcharge of 3 % applies")
    assert [len(offer.charges) for offer in found] == [1, 1, 0]


@pytest.mark.parametrize("note", ["Except item 3: 5 weeks", "Except CRB: 5 weeks"])
def test_an_exception_that_goes_on_from_the_row_above_is_said_of_what_it_excepts(note):
    assert [offer.lead_days for offer in _offers("Lead time 3 weeks", note)] == [(21, 21), (21, 21), (35, 35)]


@pytest.mark.parametrize(
    "note",
    [
        "Except item 3 (delivered), prices are FOB mill",
        "Except item 3, which is delivered, all prices are FOB mill",
        "Except item 3, prices are delivered; item 3 is FOB mill",
    ],
)
def test_where_more_is_said_of_the_line_excepted_it_is_not_told_apart(note):
    assert [offer.delivered for offer in _offers(note)] == [None, None, None]


def test_a_line_that_has_an_exception_of_its_own_is_not_excepted():
    found = _offers("Item 3, except in summer, ships in 4 weeks")
    assert [offer.lead_days for offer in found] == [None, None, (28, 28)]
