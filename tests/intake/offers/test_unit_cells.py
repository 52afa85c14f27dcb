"""Prices per a count of units in columns of their own, as merchandise systems print them."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Artikel", "Bezeichnung", "g/m²", "µm", "Preis", "Währung", "Preiseinheit", "ME"]


def line(price, *units):
    return lines([HEAD, ["4711", "GC2 Faltschachtelkarton", 260, 445, price, *units]])["E2"]


@pytest.mark.parametrize("count", ["1000", "1.000", "1 000", 1000])
def test_a_count_and_its_unit_beside_the_currency_are_one_basis(count):
    quoted = line("1.240,50", "EUR", count, "KG")
    assert (quoted.state, quoted.offer.basis) == ("accepted", "tonne")


@pytest.mark.parametrize("count", ["1", 1, "1,00"])
def test_one_unit_is_the_unit(count):
    quoted = line("1.240,50", "EUR", count, "TO")
    assert (quoted.state, quoted.offer.basis) == ("accepted", "tonne")


def test_a_hundred_kilograms_are_asked_about_with_the_currency_beside_them():
    quoted = line("124,00", "EUR", "100", "KG")
    assert quoted.state == "question"
    assert codes(quoted) == {"basis-unknown"}


def test_a_count_that_is_two_numbers_is_asked_about():
    quoted = line("124", "EUR", "1,000", "KG")
    assert quoted.state == "question"
    assert "basis-unknown" in codes(quoted)


@pytest.mark.parametrize(
    "key",
    [
        [["A", "US dollars per short ton"], ["C", "US dollars per cwt"]],
        [["A = USD/ST; C = USD/cwt"]],
        [["A: US dollars per short ton, C: US dollars per cwt"]],
    ],
)
def test_a_legend_says_what_the_codes_of_a_unit_column_mean(key):
    rows = [["Code", "Pt", "lb/MSF", "Price", "Per"], ["SBS C1S", 16, 69, 1176, "A"], ["CUK", 18, 74, 51.4, "C"]]
    found = lines([*rows, [], *key])
    assert [(line.state, line.offer.currency, line.offer.basis) for line in found.values()] == [
        ("accepted", "USD", "short_ton"), ("accepted", "USD", "cwt"),
    ]  # fmt: skip
    clashing = lines([*rows, [], *key, [], ["Remarks"], ["A", "US dollars per tonne"]])
    assert clashing["D2"].state == "question"


@pytest.mark.parametrize(
    ("price", "per"),
    [
        ("Price CZK/kg", "Per Qty"), ("Price EUR/kg", "per"), ("Price EUR/kg", "Price unit"),
        ("Preis EUR/kg", "PE"), ("Preis EUR/kg", "je"), ("Prix EUR/kg", "par"), ("Prix EUR/kg", "Unité de prix"),
        ("Precio EUR/kg", "por"), ("Precio EUR/kg", "Cantidad base"), ("Pris EUR/kg", "per"),
        ("Pris EUR/kg", "Prisenhet"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("count", [100, "100"])
def test_a_count_beside_a_unit_in_the_head_multiplies_it(price, per, count):
    rows = [["Grade", "g/m²", price, per], ["GC1", 250, 118, count], ["GC1", 280, 1.19, type(count)(1)]]
    found = lines(rows)
    assert (found["C2"].state, found["C3"].state, found["C3"].offer.basis) == ("question", "accepted", "kg")
    assert codes(found["C2"]) == {"basis-unknown"}


def test_quantities_beside_a_price_multiply_nothing():
    found = lines([["Grade", "g/m²", "EUR/kg", "Qty"], ["GC1", 250, 1.18, 100], ["GC1", 280, 1.19, 1000]])
    assert [(line.state, line.offer.basis) for line in found.values()] == [("accepted", "kg")] * 2


@pytest.mark.parametrize(
    ("unit", "size"),
    [
        ("EUR/1000 ark 720x1020 mm", (720, 1020)),
        ("EUR per 1000 sheets (700 x 1000 mm)", (700, 1000)),
        ("EUR je 1.000 Bogen 720 x 1020 mm", (720, 1020)),
        ("EUR/tonne", None),
    ],
)
def test_a_unit_of_sheets_may_say_how_large_they_are(unit, size):
    rows = [
        ["Grade", "g/m²", "µm", "Unit", "Price"],
        ["GC1", 280, 455, unit, 341.5],
        ["GC2", 250, 410, "EUR/tonne", 815],
    ]
    sized, other = lines(rows).values()
    assert (str(sized.state), sized.offer.currency, sized.offer.sheet_mm) == ("accepted", "EUR", size)
    assert (other.offer.basis, other.offer.sheet_mm) == ("tonne", None)
