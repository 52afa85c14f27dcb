"""A box of terms beside a table is said of all its boards; a column of terms or remarks is said row by row."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Sorte", "g/m²", "Preis EUR/t"]
_BOARDS = [["GC1", 250, 1200], ["GC2", 280, 1100], ["GD2", 300, 900], ["GD2", 350, 880], ["GT1", 300, 950]]
_TERMS = ["Lieferung frei Haus", "Gültig bis 15. Oktober 2026", "Mindestmenge 5 t"]


def _beside(box, *, gap=1, start=0, rows=(_HEAD, *_BOARDS)):
    """The offers of a table with words to its right, from the row `start` on, `gap` empty columns away."""
    filled = [list(row) for row in rows]
    filled += [[] for _ in range(start + len(box) - len(filled))]
    for place, words in enumerate(box, start):
        row = filled[place]
        row += [None] * (len(_HEAD) + gap - len(row))
        row += words if isinstance(words, list) else [words]
    return [line.offer for line in lines(filled).values()]


def _told(offers):
    return {(offer.delivered, offer.valid_until, offer.minimum_kg) for offer in offers}


_ALL = {(True, date(2026, 10, 15), 5000)}


@pytest.mark.parametrize("gap", [0, 1, 2])
@pytest.mark.parametrize(
    "box",
    [
        ["Our terms", "Delivered", "Valid until 15 October 2026", "Minimum order 5 t"],
        ["Unsere Konditionen", *_TERMS],
        ["NOS CONDITIONS", "Prix franco", "Offre valable jusqu'au 15 octobre 2026", "Commande minimum 5 t"],
        ["Condiciones", "Portes pagados", "Oferta válida hasta el 15 de octubre de 2026", "Pedido mínimo 5 t"],
        ["Bra att veta", "Fritt levererat", "Gäller till 15 oktober 2026", "Minsta order 5 t"],
    ],
)
def test_each_line_of_a_box_is_said_of_all_boards(box, gap):
    assert _told(_beside(box, gap=gap)) == _ALL


@pytest.mark.parametrize(
    "box",
    [_TERMS, ["** Bitte beachten **", *_TERMS], [["Terms"], ["Delivery", "frei Haus"], *([one] for one in _TERMS[1:])]],
)
def test_it_needs_no_head_and_may_have_labels(box):
    assert _told(_beside(box)) == _ALL


def test_it_may_be_longer_than_the_table_and_say_one_thing_twice():
    longer = [
        "Konditionen",
        *_TERMS,
        "Zahlung 30 Tage netto",
        "Fracht inklusive",
        "Lieferzeit 3 Wochen",
        "Preise netto",
    ]
    offers = _beside(longer)
    assert _told(offers) == _ALL
    assert {offer.lead_days for offer in offers} == {(21, 21)}


def test_an_exception_in_it_is_one():
    delivered = [offer.delivered for offer in _beside(["Konditionen", "frei Haus, außer GD2", _TERMS[1]])]
    assert delivered == [True, True, None, None, True]


def test_beside_the_first_of_several_tables_it_is_said_of_all():
    stacked = [_HEAD, *_BOARDS, [], _HEAD, ["SBS", 300, 1400], ["SBS", 330, 1380]]
    assert _told(_beside(["Konditionen", *_TERMS], rows=stacked)) == _ALL


def test_beside_a_lower_one_it_is_said_of_that_one():
    stacked = [_HEAD, *_BOARDS[:2], [], _HEAD, ["SBS", 300, 1400], ["SBS", 330, 1380], ["SBS", 350, 1360]]
    offers = _beside(["Konditionen", *_TERMS], start=4, rows=stacked)
    assert _told(offers[:2]) == {(None, None, None)}
    assert _told(offers[2:]) == _ALL


@pytest.mark.parametrize("gap", [0, 1])
@pytest.mark.parametrize(
    ("head", "words"),
    [
        ("Terms", ["delivered", "FOB mill", "delivered", "FOB mill", "delivered"]),
        ("Bedingungen", ["frei Haus", "ab Werk", "frei Haus", "ab Werk", "frei Haus"]),
        ("Conditions", ["franco", "départ usine", "franco", "départ usine", "franco"]),
        ("Condiciones", ["portes pagados", "en fábrica", "portes pagados", "en fábrica", "portes pagados"]),
        ("Villkor", ["fritt levererat", "fritt fabrik", "fritt levererat", "fritt fabrik", "fritt levererat"]),
    ],
)
def test_a_term_a_row_is_each_row_s(head, words, gap):
    delivered = [offer.delivered for offer in _beside([head, *words], gap=gap)]
    assert delivered == [True, False, True, False, True]


@pytest.mark.parametrize("gap", [0, 1])
def test_so_are_remarks_on_each_board(gap):
    offers = _beside(["Bemerkung", "Lieferzeit 4 Wochen", "frei Haus", "Mindestmenge 5 t"], gap=gap)
    assert [offer.lead_days for offer in offers] == [(28, 28), *[None] * 4]
    assert [offer.delivered for offer in offers] == [None, True, *[None] * 3]
    assert [offer.minimum_kg for offer in offers] == [None, None, 5000, None, None]


def test_so_are_remarks_without_a_head_right_beside_the_prices():
    offers = _beside(["Lieferzeit 4 Wochen", "frei Haus", "Mindestmenge 5 t"], gap=0, start=1)
    assert [offer.delivered for offer in offers] == [None, True, *[None] * 3]


def test_so_are_two_terms_beside_two_boards():
    offers = _beside(["Konditionen", "frei Haus", "Lieferzeit 6 Wochen"], gap=0, rows=(_HEAD, *_BOARDS[:2]))
    assert [(offer.delivered, offer.lead_days) for offer in offers] == [(True, None), (None, (42, 42))]


@pytest.mark.parametrize("head", ["Bestand", "Stock", "Lager"])
def test_a_column_of_stock_is_no_box(head):
    offers = _beside([head, "ab Lager", "auf Anfrage", "ab Lager", "4 Wochen", "6 Wochen"], gap=0)
    assert len(offers) == len(_BOARDS)
    assert _told(offers) == {(None, None, None)}


def test_a_second_table_is_no_box():
    offers = _beside([_HEAD, ["SBS", 300, 1400], ["SBS", 330, 1380]])
    assert [offer.grade for offer in offers] == ["FBB", "FBB", "CRB", "CRB", "CRB", "SBS", "SBS"]
    cities = _beside([["City", "Terms"], ["Linz", "frei Haus"], ["Graz", "ab Werk"]])
    assert {offer.delivered for offer in cities} == {None}


@pytest.mark.parametrize(
    "box",
    [
        ["Terms", "Freight 40 EUR/t", "Minimum order 5 t", "Plus energy surcharge 45 EUR/t"],
        ["Konditionen", "Fracht 40 EUR/t", "Mindestmenge 5 t", "zzgl. Energiezuschlag 45 EUR/t"],
        ["Nos conditions", "Transport 40 EUR/t", "Commande minimum 5 t", "Supplément énergie 45 EUR/t"],
        ["Condiciones", "Transporte 40 EUR/t", "Pedido mínimo 5 t", "Recargo energético 45 EUR/t"],
        ["Villkor", "Frakt 40 EUR/t", "Minsta order 5 t", "Energitillägg 45 EUR/t"],
    ],
)
def test_two_charges_are_two_terms(box):
    for offer in _beside(box):
        assert sorted(charge.price for charge in offer.charges) == [40, 45]
        assert offer.minimum_kg == 5000


@pytest.mark.parametrize(
    "box",
    [
        ["Terms", "Lead time rolls 3 weeks", "Lead time sheets 4 weeks"],
        ["Konditionen", "Lieferzeit Rollen 3 Wochen", "Lieferzeit Bogen 4 Wochen"],
    ],
)
def test_what_is_told_of_rolls_and_of_sheets_is_no_remark_on_two_boards(box):
    assert [offer.lead_days for offer in _beside(box)] == [None] * len(_BOARDS)
    filled = [[*_HEAD, None, box[0]], *([*board, None] for board in _BOARDS)]
    for place, words in enumerate(box[1:], 1):
        filled[place].append(words)
    assert all("lead-time-unread" in codes(line) for line in lines(filled).values())


@pytest.mark.parametrize(
    ("head", "words"),
    [
        ("Terms", ["FOB mill", "Minimum order 5 t", "Lead time 3 weeks"]),
        ("Konditionen", ["ab Werk", "Mindestmenge 5 t", "Lieferzeit 3 Wochen"]),
        ("Conditions", ["départ usine", "Minimum de commande 5 t", "Délai 3 semaines"]),
        ("Condiciones", ["ex works", "Pedido mínimo 5 t", "Plazo 3 semanas"]),
        ("Villkor", ["fritt fabrik", "Minsta order 5 t", "Leveranstid 3 veckor"]),
    ],
)
def test_one_term_beside_each_board_without_a_gap_is_its_own(head, words):
    offers = _beside([head, *words], gap=0, rows=(_HEAD, *_BOARDS[:3]))
    assert [offer.delivered for offer in offers] == [False, None, None]
    assert [offer.lead_days for offer in offers] == [None, None, (21, 21)]
    assert [offer.minimum_kg for offer in offers][::2] == [None, None]


def test_so_are_terms_beside_some_boards_here_and_there():
    offers = _beside(["Terms", "FOB mill", None, "Lead time 3 weeks", "Minimum order 5 t"], gap=0)
    assert [offer.delivered for offer in offers] == [False, *[None] * 4]


@pytest.mark.parametrize(
    ("head", "words"),
    [
        ("Please note", ["Minimum order 5 t", "Lead time 6 weeks"]),
        ("À noter", ["Minimum de commande 5 t", "Délai 6 semaines"]),
    ],
)
def test_two_remarks_under_please_note_are_those_of_two_boards(head, words):
    offers = _beside([head, *words], rows=(_HEAD, *_BOARDS[:3]))
    assert [offer.lead_days for offer in offers] == [None, (42, 42), None]
    assert [offer.minimum_kg for offer in offers][1:] == [None, None]


_LABELLED = {
    "en": [["Freight", "42 EUR/t"], ["Lead time", "4 weeks"], ["Minimum order", "5 t"]],
    "de": [["Fracht", "42 EUR/t"], ["Lieferzeit", "4 Wochen"], ["Mindestmenge", "5 t"]],
    "fr": [["Transport", "42 EUR/t"], ["Délai", "4 semaines"], ["Minimum de commande", "5 t"]],
    "es": [["Transporte", "42 EUR/t"], ["Plazo", "4 semanas"], ["Pedido mínimo", "5 t"]],
    "sv": [["Frakt", "42 EUR/t"], ["Leveranstid", "4 veckor"], ["Minsta order", "5 t"]],
}


def _charged(offers):
    return {(tuple(charge.price for charge in offer.charges), offer.lead_days, offer.minimum_kg) for offer in offers}


@pytest.mark.parametrize("start", [0, 1, 2])
@pytest.mark.parametrize("box", _LABELLED.values(), ids=_LABELLED)
def test_labels_and_values_are_said_of_all(box, start):
    assert _charged(_beside(box, start=start)) == {((42,), (28, 28), 5000)}
    assert _charged(_beside(box, start=start, rows=(_HEAD, *_BOARDS[:3]))) == {((42,), (28, 28), 5000)}
    assert _charged(_beside(box[:2], start=start)) == {((42,), (28, 28), None)}


@pytest.mark.parametrize("box", _LABELLED.values(), ids=_LABELLED)
def test_one_of_them_in_line_with_the_heads_is_too(box):
    assert _charged(_beside(box[:1])) == {((42,), None, None)}
    beside = _beside(box[:1], start=1)
    # In a board's row it may be that board's.
    assert [[charge.price for charge in one.charges if charge.price] for one in beside] == [[42], *[[]] * 4]
    assert all(one.charges for one in beside)


def test_two_columns_with_heads_are_the_boards():
    offers = _beside(
        [["Freight", "Lead time"], ["42 EUR/t", "4 weeks"], ["40 EUR/t", "3 weeks"], ["38 EUR/t", "1 week"]]
    )
    assert [offer.lead_days for offer in offers] == [(28, 28), (21, 21), (7, 7), None, None]
