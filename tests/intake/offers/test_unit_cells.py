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
