"""Notes that explain a column's keys or marks hold for the rows that have them."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1, GD2 = ["GC1", 450, 300, 1100], ["GD2", 480, 350, 760]


def two(head, marks, *notes):
    rows = ([*board, mark] for board, mark in zip((GC1, GD2), marks, strict=True))
    return [line.offer for line in lines([[*HEAD, head], *rows, *([note] for note in notes)]).values()]


@pytest.mark.parametrize(
    ("head", "text"),
    [
        ("D", "D = delivered"), ("H", "H = frei Haus"), ("F", "F : franco"), ("P", "P = portes incluidos"),
        ("L", "L = fritt levererat"),
    ],
)  # fmt: skip
def test_a_marked_column(head, text):
    assert [offer.delivered for offer in two(head, ("x", None), text)] == [True, None]
    assert [offer.delivered for offer in two(head, ("x", "x"), text)] == [True, True]
    assert [offer.delivered for offer in two(head, ("-", "x"), text)][1] is True


@pytest.mark.parametrize(
    ("text", "kg"),
    [("* Mindestmenge 5 t", 5000), ("* minimum order 5 t", 5000), ("* commande minimum 5 t", 5000),
    ("* pedido mínimo 5 t", 5000),
     ("* minsta order 5 t", 5000)],
)  # fmt: skip
def test_a_column_below_the_sign_of_a_note(text, kg):
    assert [offer.minimum_kg for offer in two("*", ("*", None), text)] == [kg, None]
    assert [offer.minimum_kg for offer in two("Lager", (None, None), text)] == [kg, kg]


def test_keys_in_a_column_of_remarks():
    gc1, gd2 = two("Note", ("a", "a, b"), "a = lead time 3 weeks", "b = minimum order 5 t")
    assert (gc1.lead_days, gc1.minimum_kg) == ((21, 21), None)
    assert (gd2.lead_days, gd2.minimum_kg) == ((21, 21), 5000)
    for keys in (("1", "2"), ("A", "B")):
        notes = (f"{keys[0]}: Lieferzeit 3 Wochen", f"{keys[1]}: Lieferzeit 5 Wochen")
        assert [offer.lead_days for offer in two("Hinweis", keys, *notes)] == [(21, 21), (35, 35)]


def test_a_charge_of_the_rows_with_its_key():
    gc1, gd2 = two("Note", ("a", "b"), "a = ex works", "b = plus freight 45 EUR/t")
    assert [charge.price for charge in (*gc1.charges, *gd2.charges)] == [45]
    assert not gc1.charges


def test_notes_that_look_keyed():
    for offer in two("Note", ("new", None), "MOQ: 5 t", "LT = 3 weeks"):
        assert (offer.minimum_kg, offer.lead_days) == (5000, (21, 21))
