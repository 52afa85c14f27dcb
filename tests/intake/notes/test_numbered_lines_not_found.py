"""What a note says of lines by numbers that no line has: any may be meant, and what is said of all is not certain."""

import pytest

from tests.intake.sheets import lines

ROWS = [["GC1", 250, 1200], ["GD2", 300, 900], ["SBS", 280, 1300]]
HEAD = ["Grade", "g/m²", "Price EUR/t"]


def _plain(note, rows=ROWS, head=HEAD):
    return [line.offer for line in lines([head, *rows, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks, items 2 and 3: 5 weeks", "Lieferzeit 3 Wochen, Pos. 2 und 3: 5 Wochen",
        "Délai 3 semaines, postes 2 et 3 : 5 semaines", "Leveranstid 3 veckor, pos 2 och 3: 5 veckor",
    ],
)  # fmt: skip
def test_a_lead_time_of_all_is_open_where_no_line_is_numbered(note):
    assert [offer.lead_days for offer in _plain(note)] == [None] * 3


def test_so_are_smallest_orders_and_delivery():
    assert [offer.minimum_kg for offer in _plain("Minimum 5 t, items 2 and 3: 10 t")] == [None] * 3
    assert [offer.delivered for offer in _plain("Prices FOB mill, item 3 delivered")] == [None] * 3


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks. Our order line 2: ask for a quote.",
        "Lead time 3 weeks. Article 9 of our terms: prices FOB mill",
    ],
)
def test_a_number_that_counts_no_lines_leaves_it(note):
    assert [offer.lead_days for offer in _plain(note)] == [(21, 21)] * 3


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Poste", "Délai 3 semaines, postes 2 et 3 : 5 semaines"),
        ("Renglón", "Plazo de entrega 3 semanas, renglones 2 y 3: 5 semanas"),
        ("Zeile", "Lieferzeit 3 Wochen, Zeilen 2 und 3: 5 Wochen"),
        ("Items", "Lead time 3 weeks, items 2 and 3: 5 weeks"),
    ],
)  # fmt: skip
def test_lines_are_found_under_what_a_list_calls_them(head, note):
    rows = [[number, *row] for number, row in enumerate(ROWS, start=1)]
    found = _plain(note, rows, [head, *HEAD])
    assert [offer.lead_days for offer in found] == [(21, 21), (35, 35), (35, 35)]


LATER = [[number, *row] for number, row in enumerate(ROWS, start=11)]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks, items 2 and 3: 5 weeks", "Lieferzeit 3 Wochen, Pos. 2 und 3: 5 Wochen",
        "Délai 3 semaines, postes 2 et 3 : 5 semaines", "Leveranstid 3 veckor, pos 2 och 3: 5 veckor",
        "Plazo de entrega 3 semanas, renglones 2 y 3: 5 semanas",
    ],
)  # fmt: skip
def test_lines_numbered_higher_may_be_meant_by_their_place(note):
    found = list(lines([["No.", *HEAD], *LATER, [note]]).values())
    assert [line.offer.lead_days for line in found] == [(21, 21), None, None]
    assert ["lead-time-unread" in [note.code.value for note in line.notes] for line in found] == [False, True, True]


def test_the_freight_and_the_smallest_order_of_such_lines_are_open_as_well():
    found = _plain("Prices delivered; items 2 and 3 ex works", LATER, ["No.", *HEAD])
    assert [offer.delivered for offer in found] == [True, None, None]
    found = _plain("Minimum 5 t. Items 2 and 3: minimum 10 t", LATER, ["No.", *HEAD])
    assert [offer.minimum_kg for offer in found] == [5000, None, None]


def test_lines_that_a_list_is_too_short_for_are_none_of_it():
    found = _plain("Lead time 3 weeks, items 8 and 9: 5 weeks", LATER, ["No.", *HEAD])
    assert [offer.lead_days for offer in found] == [(21, 21)] * 3


def test_lines_of_a_table_before_are_none_of_one_that_counts_on():
    first = [[number, *row] for number, row in enumerate(ROWS, start=1)]
    then = [[number, grade, weight + 20, price] for number, (grade, weight, price) in enumerate(ROWS, start=4)]
    rows = [["No.", *HEAD], *first, [], ["No.", *HEAD], *then, [], ["Lead time 3 weeks, items 2 and 3: 5 weeks"]]
    found = [line.offer.lead_days for line in lines(rows).values()]
    assert found[3:] == [(21, 21)] * 3
    assert (21, 21) not in found[1:3]
