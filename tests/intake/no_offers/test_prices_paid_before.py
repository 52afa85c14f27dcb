"""What a buyer paid before, and the list of a month, are no offers; what is paid with the freight is."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Board", "gsm", "micron"]
BOARDS = [["GC1", 235, 380, 1210], ["GD2", 310, 420, 845]]


def states(*heads, title=""):
    rows = [[*row, *(row[-1] - 15 * place for place in range(1, len(heads)))] for row in BOARDS]
    found = lines([*([[title]] if title else []), [*HEAD, *heads], *rows])
    return {cell[0]: str(line.state) for cell, line in found.items()}


@pytest.mark.parametrize(
    "head",
    ["Paid 2025 EUR/t", "You paid EUR/t", "Bezahlt 2025 EUR/t", "Vous avez payé EUR/t", "Pagado 2025 EUR/t",
     "Ni betalade EUR/t"],
)  # fmt: skip
def test_prices_paid_before_are_no_offers_by_themselves(head):
    assert states(head) == {}


@pytest.mark.parametrize("head", ["Price 2026 EUR/t", "EUR/t, freight paid", "You pay EUR/t"])
def test_prices_to_be_paid_are(head):
    assert states(head) == {"D": "accepted"}


@pytest.mark.parametrize("head", ["You paid 2025", "April list", "Bezahlt 2025", "Liste April"])
def test_beside_the_net_price_they_need_no_question(head):
    assert states(head, "Your net EUR/t") == {"E": "accepted"}


@pytest.mark.parametrize(
    "title",
    ["What our plants paid last year, EUR/t", "Gezahlte Preise, Vorjahr, EUR/t", "Prix payés l'année précédente, EUR/t",
     "Precios pagados, año anterior, EUR/t", "Betalda priser föregående år, EUR/t"],
)  # fmt: skip
def test_a_title_of_prices_paid_is_asked_about(title):
    assert states("Price", title=title) == {"D": "question"}


@pytest.mark.parametrize("title", ["EUR/t, freight paid as last year", "Delivered, carriage paid, EUR/t"])
def test_a_title_of_freight_paid_is_not(title):
    assert states("Price", title=title) == {"D": "accepted"}
