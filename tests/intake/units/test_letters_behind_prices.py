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


_PLAIN = ("Grade", "Caliper (pt)", "USD/ST")


@pytest.mark.parametrize(
    ("heads", "cells", "note", "least"),
    [
        (("Sorte", "g/m²", "Mindestmenge", "Preis EUR"), ("5 t", "1.150,00 t"), "t = je Tonne", 5000),
        (("Qualité", "g/m²", "Commande minimum", "Prix EUR"), ("5 t", "1 150,00 t"), "t = par tonne", 5000),
        (("Calidad", "g/m²", "Pedido mínimo", "Precio EUR"), ("5 t", "1.150,00 t"), "t = por tonelada métrica", 5000),
        (("Kvalitet", "g/m²", "Minsta order", "Pris EUR"), ("5 t", "1 150,00 t"), "t = per ton metriskt", 5000),
    ],
)
def test_the_letter_behind_a_quantity_is_a_unit_of_its_own(heads, cells, note, least):
    found = lines([heads, ("GC1", 300, *cells), ("GD2", 350, cells[0], cells[1]), (note,)])
    assert list(found) == ["D2", "D3"]
    assert {line.offer.minimum_kg for line in found.values()} == {least}


@pytest.mark.parametrize(
    ("note", "delivered", "least"),
    [
        ("b = FOB mill", False, None), ("b = ab Werk", False, None), ("b = départ usine", False, None),
        ("b = ex fábrica", False, None), ("b = fritt fabrik", False, None), ("b = minimum 20,000 lb", None, 9072),
        ("(b) FOB mill", False, None),
    ],
)  # fmt: skip
def test_a_letter_that_stands_for_terms_is_a_sign(note, delivered, least):
    for written, more in (("1200 b", {}), (1200, {"formats": {(1, 2): '0 "b"'}})):
        one, other = lines([_PLAIN, ("SBS", 18, written), ("CUK", 20, 900), (note,)], **more).values()
        assert (str(one.state), one.offer.price, one.offer.basis) == ("accepted", 1200, "short_ton")
        assert one.offer.delivered is delivered
        assert (one.offer.minimum_kg and round(one.offer.minimum_kg)) == least
        assert (other.offer.delivered, other.offer.minimum_kg) == (None, None)


@pytest.mark.parametrize("note", ["d = delivered, f = FOB mill", "(d) delivered (f) FOB mill"])
def test_two_letters_of_one_note_are_two_signs(note):
    found = lines([_PLAIN, ("SBS", 18, "1200 d"), ("CUK", 20, "900 f"), (note,)])
    assert [line.offer.delivered for line in found.values()] == [True, False]


@pytest.mark.parametrize("said", ["until June 30, 2026", "sold out", "last year's price"])
@pytest.mark.parametrize("letter", ["x", "t"])
def test_what_is_not_understood_of_a_letter_is_asked_even_where_the_letter_is_a_unit(said, letter):
    one, other = lines([_PLAIN, ("SBS", 18, f"1200 {letter}"), ("CUK", 20, 900), (f"{letter} = {said}",)]).values()
    assert (str(one.state), str(other.state)) == ("question", "accepted")


def test_terms_behind_the_last_unit_may_be_said_of_all():
    note = "a = per short ton, b = per cwt, delivered"
    found = lines([("Grade", "Caliper (pt)", "Price USD"), ("SBS", 18, "1200 a"), ("CUK", 20, "60 b"), (note,)])
    assert [(line.offer.basis, line.offer.delivered) for line in found.values()] == [("short_ton", None), ("cwt", None)]


def test_terms_behind_each_unit_are_its_own():
    note = "a = per short ton, FOB mill; b = per cwt, delivered"
    found = lines([("Grade", "Caliper (pt)", "Price USD"), ("SBS", 18, "1200 a"), ("CUK", 20, "60 b"), (note,)])
    assert [line.offer.delivered for line in found.values()] == [False, True]


def test_letters_behind_calipers_are_units_of_theirs():
    heads = ("Grade", "Caliper", "Price USD")
    found = lines([heads, ("SBS", "18 p", "60 m"), ("CUK", "20 p", "38 m"), ("p = points, m = per MSF",)])
    assert {(str(line.state), line.offer.basis) for line in found.values()} == {("accepted", "msf")}
    assert [round(line.offer.caliper_um) for line in found.values()] == [457, 508]


def test_letters_behind_prices_under_measures():
    rows = [("Prices USD",), ("Grade", "16 pt", "18 pt"), ("SBS", "1200 a", "60 b"), ("CUK", "1000 a", "50 b")]
    found = lines([*rows, ("a = per short ton, b = per cwt",)])
    assert [line.offer.basis for line in found.values()] == ["short_ton", "cwt"] * 2


def test_a_letter_behind_one_of_a_row_s_prices_says_nothing_of_the_others():
    rows = [("Grade", "16 pt", "18 pt"), ("SBS", "1200 b", 1250), ("CUK", "1000 b", "950 b")]
    found = lines([["USD/short ton"], *rows, ["b = FOB mill"]])
    assert [found[at].offer.delivered for at in ("B3", "C3", "B4", "C4")] == [False, None, False, False]


def test_a_sign_behind_a_board_is_left_where_it_is():
    rows = [("Sorte", "g/m²", "EUR/t"), ("GD2 (a)", 300, 900), ("GC2", 300, 1100)]
    found = lines([*rows, ("(a) EXW",)])
    assert [line.offer.grade for line in found.values()] == ["CRB", "FBB"]
    assert [line.offer.delivered for line in found.values()] == [False, None]
