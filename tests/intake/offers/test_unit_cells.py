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
