"""Keys of words: 'yellow = made to order, 5 weeks' is of the rows that have the word, and known of none where no row
has it."""

from datetime import date

import pytest

from tests.intake.sheets import book, codes, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

BOARDS = [["GC2", 235, 380, 1216], ["GC2", 270, 440, 1198], ["GD2", 300, 400, 852]]
STOCK, MADE = ((0, 0), None), ((35, 35), 5000)


def table(head, words):
    rows = ([*board, word] for board, word in zip(BOARDS, words, strict=True))
    return [["Karton Wiesbrunn GmbH"], ["EUR per tonne"], [], ["Grade", "g/m²", "µm", "EUR/t", head], *rows]


def terms(head, words, *notes):
    return told(
        lines([*table(head, words), [], *([note] if isinstance(note, str) else note for note in notes)]).values()
    )


def told(found):
    assert {str(line.state) for line in found} == {"accepted"}
    return [(line.offer.lead_days, line.offer.minimum_kg) for line in found]


KEYS = [
    ("Farbe", "grün", "gelb", "grün = ab Lager", "gelb = Anfertigung, Lieferzeit 5 Wochen, Mindestmenge 5 t"),
    ("Status", "Standard", "Anfertigung", "Standard: ab Lager", "Anfertigung: Lieferzeit 5 Wochen, Mindestmenge 5 t"),
    ("Colour", "green", "yellow", "green = ex stock", "yellow = made to order, 5 weeks, minimum 5 t"),
    ("Class", "current", "special", "current - ex stock", "special - lead time 5 weeks, minimum order 5 t"),
    ("Couleur", "vert", "jaune", "vert = sur stock", "jaune = sur fabrication, délai 5 semaines, minimum 5 t"),
    ("Color", "verde", "amarillo", "verde = de existencias", "amarillo = plazo 5 semanas, pedido mínimo 5 t"),
    ("Färg", "grön", "gul", "grön = i lager", "gul = leveranstid 5 veckor, minsta order 5 t"),
]  # fmt: skip


@pytest.mark.parametrize(("head", "one", "other", "of_one", "of_other"), KEYS)
def test_each_row_has_the_terms_of_its_own_word(head, one, other, of_one, of_other):
    assert terms(head, (one, other, one), of_one, of_other) == [STOCK, MADE, STOCK]
    assert terms(head, (one, None, other), of_one, of_other) == [STOCK, (None, None), MADE]


@pytest.mark.parametrize(("head", "one", "other", "of_one", "of_other"), KEYS)
def test_in_one_text_on_another_sheet_and_in_two_cells(head, one, other, of_one, of_other):
    assert terms(head, (one, other, one), f"{of_one}; {of_other}") == [STOCK, MADE, STOCK]
    legend = grid([["Legend"], [of_one], [of_other]], sheet="Legend")
    found = read_workbook(book(grid(table(head, (one, other, one)), sheet="Prices"), legend), Answers()).lines
    assert told(found) == [STOCK, MADE, STOCK]
    beside = [(text[: len(word)], text[len(word) :].strip(" =:-")) for word, text in ((one, of_one), (other, of_other))]
    assert terms(head, (one, other, one), *map(list, beside)) == [STOCK, MADE, STOCK]


@pytest.mark.parametrize(("head", "one", "other", "of_one", "of_other"), [key for key in KEYS if "=" in key[3]])
def test_of_words_that_no_row_has_nothing_is_known(head, one, other, of_one, of_other):
    found = lines([*table("Remarks", (None, None, None)), [], [of_one], [of_other]])
    assert told(found.values()) == [(None, None)] * 3
    assert all({"lead-time-unread", "bracket-unread"} <= codes(line) for line in found.values())
    # Not even where a time is told of all.
    rows = [["Lieferzeit 3 Wochen"], *table("Remarks", (None, None, None)), [], [of_other]]
    assert {line.offer.lead_days for line in lines(rows).values()} == {None}


def test_letters_that_no_row_has():
    found = lines([*table("Remarks", (None, None, None)), [], ["A = ex stock"], ["B = lead time 5 weeks"]])
    assert {line.offer.lead_days for line in found.values()} == {None}


def test_a_word_that_nothing_explains_has_no_other_word_s_terms():
    found = terms("Farbe", ("grün", "rot", "gelb"), "grün = ab Lager", "gelb = Lieferzeit 5 Wochen")
    assert [lead for lead, _ in found] == [(0, 0), None, (35, 35)]


def test_a_sentence_behind_the_key_that_is_of_all():
    found = lines([*table("Colour", ("green", "red", "green")), [],
                   ["green = ex stock, red = lead time 5 weeks. All prices delivered."]])  # fmt: skip
    assert [(line.offer.lead_days, line.offer.delivered) for line in found.values()] == [
        ((0, 0), True), ((35, 35), True), ((0, 0), True),
    ]  # fmt: skip


@pytest.mark.parametrize("key", ["red = lead time 5 weeks", "new = ex stock", "RU = lead time 5 weeks"])
def test_short_words_beside_longer_ones(key):
    word = key.partition(" ")[0]
    (lead, _), *others = terms("Colour", (word, "yellow", None), key)
    assert lead is not None
    assert others == [(None, None)] * 2


@pytest.mark.parametrize(
    "others",
    ["Other lines: lead time 3 weeks", "Übrige Positionen: Lieferzeit 3 Wochen", "Övriga rader: leveranstid 3 veckor",
     "Autres lignes : délai 3 semaines", "Demás partidas: plazo de entrega 3 semanas"],
)  # fmt: skip
def test_the_others_beside_a_word(others):
    found = terms("Mark", ("special", None, None), "special = lead time 5 weeks", others)
    assert [lead for lead, _ in found] == [(35, 35), (21, 21), (21, 21)]


def test_what_stands_below_a_key_and_tells_its_own_topic_is_of_all():
    rows = table("Colour", ("green", "red", "green"))
    found = lines([*rows, [], ["green: ex stock"], ["red: lead time 5 weeks"], ["Delivery: free delivered"]])
    assert {line.offer.delivered for line in found.values()} == {True}
    found = lines([*rows, [], ["Tn = tonne of 1,000 kg. Validity: until 31 December 2026"]])
    assert {str(line.offer.valid_until) for line in found.values()} == {"2026-12-31"}


def test_rows_without_a_word_have_what_is_told_of_all():
    rows = [["Lieferzeit 3 Wochen"], *table("Farbe", ("grün", None, "gelb"))]
    found = lines([*rows, [], ["grün = ab Lager"], ["gelb = Lieferzeit 5 Wochen"]])
    assert [line.offer.lead_days for line in found.values()] == [(0, 0), (21, 21), (35, 35)]


@pytest.mark.parametrize(
    ("keys", "field", "values"),
    [
        (("grün = frei Haus", "gelb = ab Werk"), "delivered", [True, False]),
        (("green = delivered", "yellow = ex works"), "delivered", [True, False]),
        (
            ("grün = gültig bis 31.12.2026", "gelb = gültig bis 31.03.2027"),
            "valid_until",
            [date(2026, 12, 31), date(2027, 3, 31)],
        ),
    ],
)
def test_other_terms(keys, field, values):
    words = [key.partition(" =")[0] for key in keys]
    found = lines([*table("Farbe", (*words, words[0])), [], *([key] for key in keys)])
    assert [getattr(line.offer, field) for line in found.values()][:2] == values


def test_a_charge_and_money_of_each_word():
    rows = [*table("Farbe", ("grün", "gelb", "grün")), [], ["grün = ohne Zuschlag"], ["gelb = Zuschlag 20 €/t"]]
    assert [len(line.offer.charges) for line in lines(rows).values()] == [0, 1, 0]
    head = ["Grade", "g/m²", "µm", "Price", "List"]
    rows = [head, *([*board, word] for board, word in zip(BOARDS, ("rot", "blau", "rot"), strict=True))]
    head[-1] = "Kennung"
    found = lines([*rows, [], ["rot = EUR je Tonne"], ["blau = USD je Tonne"]])
    assert [line.offer.currency for line in found.values()] == ["EUR", "USD", "EUR"]


@pytest.mark.parametrize(
    "notes",
    [
        ("green = available", "red = discontinued"),
        ("green = no surcharge", "red = plus 20 EUR/t"),
        ("green = net", "red = less 3 %"),
    ],
)
def test_what_is_withdrawn_or_costs_more_is_asked_about_in_its_rows_alone(notes):
    found = lines([*table("Colour", ("green", "red", "green")), [], *([note] for note in notes)])
    assert [str(line.state) for line in found.values()] == ["accepted", "question", "accepted"]


@pytest.mark.parametrize("sign", [" =", ":"])
def test_words_in_a_column_of_lead_times(sign):
    notes = (f"Standard{sign} 3 Wochen", f"Express{sign} 1 Woche")
    found = terms("Lieferzeit", ("Standard", "Express", "Standard"), *notes)
    assert [lead for lead, _ in found] == [(21, 21), (7, 7), (21, 21)]


def test_each_of_two_tables_has_its_own_words():
    second = table("Klasse", ("eins", "zwei", "eins"))[3:]
    notes = [["eins = ab Lager"], ["zwei = Lieferzeit 5 Wochen"]]
    found = lines([*table("Farbe", ("grün", "gelb", "grün")), [], *second, [], *notes])
    assert [line.offer.lead_days for line in found.values()] == [None] * 3 + [(0, 0), (35, 35), (0, 0)]


@pytest.mark.parametrize(
    "notes",
    [
        ("Lieferzeit = 5 Wochen", "Mindestmenge = 5 t"),
        ("LT = 5 weeks", "MOQ: 5 t"),
        ("Lead time: 5 weeks", "Minimum order - 5 t"),
        (["Délai", "5 semaines"], ["Commande minimum", "5 t"]),
    ],
)
def test_what_a_note_is_of_is_no_key(notes):
    assert terms("Remarks", (None, "x", None), *notes) == [MADE] * 3
