"""Terms that a note gives one table by its letter: the other doesn't have them, and what can't be read is open."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines


def _both(*notes):
    """The first line of each of two tables."""
    head = ["Board", "g/m²", "µm", "SEK/1000 kg"]
    first = [["Table A"], head, ["GC1", 250, 405, 14350], []]
    second = [["Table B"], head, ["GC2", 270, 445, 12100], [], *([note] for note in notes)]
    return tuple(lines([["Ostwerk Karton AB"], *first, *second]).values())


@pytest.mark.parametrize(
    "note",
    [
        "Prices in SEK. Table B includes freight.", "Freight is included in table B.",
        "Minimum order 5 t. Table B: delivered.", "Preise in SEK. Tabelle B frei Haus.",
        "Prix en SEK. Tableau B : franco.", "Precios en SEK. Tabla B: portes pagados.",
        "Priser i SEK. Tabell B: fritt levererat.",
    ],
)  # fmt: skip
def test_freight_of_one_table_is_not_that_of_the_other(note):
    assert [line.offer.delivered for line in _both(note)] == [None, True]


def test_what_is_said_of_all_holds_but_for_the_table_that_has_its_own():
    assert [line.offer.delivered for line in _both("Freight included, table B ex works.")] == [True, False]
    assert [line.offer.delivered for line in _both("Prices include freight except in table B.")] == [True, None]
    of_one = _both("Minimum order 5 t. Table B ships in 3 weeks.")
    assert [(line.offer.minimum_kg, line.offer.lead_days) for line in of_one] == [(5000, None), (5000, (21, 21))]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 4 weeks, table B 6 weeks.", "Lieferzeit 4 Wochen, Tabelle B 6 Wochen",
        "Délai de livraison 4 semaines, tableau B 6 semaines", "Plazo de entrega 4 semanas, tabla B 6 semanas",
        "Leveranstid 4 veckor, tabell B 6 veckor.", "Lead time for table A 4 weeks, table B 6 weeks",
    ],
)  # fmt: skip
def test_a_table_s_own_time_goes_on_with_the_words_for_the_other(note):
    assert [line.offer.lead_days for line in _both(note)] == [(28, 28), (42, 42)]


@pytest.mark.parametrize("note", ["Lead time 4 weeks, table B 6", "Lead time 4 weeks, table B 6 weeks for rolls"])
def test_a_time_of_a_table_that_is_not_read_leaves_that_table_s_open(note):
    first, second = _both(note)
    assert (first.offer.lead_days, second.offer.lead_days) == ((28, 28), None)
    assert "lead-time-unread" in codes(second)


def test_so_do_a_smallest_order_and_a_last_day():
    first, second = _both("Minimum order 5 t, for table B 10 t.")
    assert (first.offer.minimum_kg, second.offer.minimum_kg) == (5000, None)
    assert "bracket-unread" in codes(second)
    first, second = _both("Prices valid until December 31, 2026. Table B until March 31, 2027.")
    assert (first.offer.valid_until, second.offer.valid_until) == (date(2026, 12, 31), None)
    assert "validity-unread" in codes(second)


@pytest.mark.parametrize(
    "note",
    [
        "Table B is valid until December 31, 2026.", "The second table is valid until December 31, 2026.",
        "Tabelle B gilt bis 31.12.2026.", "Le tableau B est valable jusqu'au 31/12/2026.",
        "La tabla B es válida hasta el 31/12/2026.", "Tabell B gäller till 31.12.2026.",
    ],
)  # fmt: skip
def test_until_when_a_table_holds(note):
    first, second = _both(note)
    assert (first.offer.valid_until, second.offer.valid_until) == (None, date(2026, 12, 31))


def test_until_when_a_certificate_in_a_table_holds_is_nobodys():
    assert {line.offer.valid_until for line in _both("The certificate in table B is valid until 2026-12-31.")} == {None}


@pytest.mark.parametrize(
    "note",
    [
        "See table B for delivered prices.", "Siehe Tabelle B für Preise frei Haus.",
        "Not table A but table B is delivered.", "Nicht Tabelle A, aber Tabelle B frei Haus.",
    ],
)  # fmt: skip
def test_what_points_to_a_table_or_denies_it_of_one_delivers_not_both(note):
    assert _both(note)[0].offer.delivered is None
