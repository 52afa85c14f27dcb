"""Below or behind words that add what follows to the prices, every name with an amount is a charge."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.additions_below import leads_to_additions
from tracker.trade.offer import OPEN

_HEAD = ["Board", "g/m²", "µm", "EUR/t"]
_BOARDS = [["GC1", 250, 405, 1278], ["GD2", 350, 465, 868]]
_LINES = {
    "en": ("Added to every item above:", "Edge guards"),
    "de": ("*) Hinzu kommen auf alle Sorten:", "Kantenschutz"),
    "fr": ("S'ajoutent à tous les prix :", "Protège-angles"),
    "es": ("A todos los precios se añaden:", "Cantoneras"),
    "sv": ("På alla priser tillkommer:", "Kantskydd"),
}


def charges(*rows):
    found = lines([["EUR/t, ex works"], _HEAD, *_BOARDS, *rows])
    assert list(found) == ["D3", "D4"]
    return [[(one.label, f"{one.price:f}", one.currency) for one in line.offer.charges] for line in found.values()]


@pytest.mark.parametrize(("line", "name"), _LINES.values(), ids=_LINES)
@pytest.mark.parametrize("cells", [1, 2, 4])
def test_an_entry_under_any_name_is_charged(line, name, cells):
    for amount, price, currency in (("4,80 €/t", "4.80", "EUR"), ("2 %", "2", None)):
        entry = [f"{name} {amount}"] if cells == 1 else [name, *[None] * (cells - 2), amount]
        assert charges([], [line], entry) == [[(name, price, currency)]] * 2
        assert charges([line], entry) == [[(name, price, currency)]] * 2


@pytest.mark.parametrize(("line", "name"), _LINES.values(), ids=_LINES)
def test_so_is_one_behind_the_line_in_its_cell(line, name):
    behind = charges([], [f"{line} {name} 4,80 €/t, Palett 3 €/t"])
    assert [[one[1] for one in each] for each in behind] == [["4.80", "3"]] * 2


@pytest.mark.parametrize(("line", "name"), _LINES.values(), ids=_LINES)
def test_a_figure_below_the_prices_is_in_their_unit(line, name):
    assert charges([line], [name, None, None, 48]) == [[(name, "48", "EUR")]] * 2


@pytest.mark.parametrize("amount", ["12 or 14 €/t", "4.80 €", "4.80 €/t from 5 t", "4.80 €/t, sheets", "4.80 €/pallet"])
def test_what_can_t_be_read_there_is_open(amount):
    found = charges([], ["Added to all prices:"], [f"Edge guards {amount}"])
    assert [[one[2] for one in each] for each in found] == [[OPEN]] * 2


@pytest.mark.parametrize("entry", ["VAT 20 %", "Cash discount 2 %", "Lead time 3 weeks", "Kind regards, J. Tarn"])
def test_tax_discounts_and_terms_are_no_charges(entry):
    assert charges([], ["Added to all prices:"], [entry]) == [[], []]


def test_what_is_ordered_apart_is_told_and_not_charged():
    rows = [["EUR/t"], _HEAD, *_BOARDS, [], ["Added to all prices:"], ["Pallet wrap 3 €/t if ordered"]]
    for line in lines(rows).values():
        assert line.offer.charges == ()
        assert "number-ambiguous" in codes(line)


def test_a_board_below_such_a_line_is_a_board():
    rows = [["EUR/t"], _HEAD, *_BOARDS, ["Added to all prices:"], ["Tarn fee", None, None, 48], ["GC2", 250, 410, 1198]]
    assert list(lines(rows)) == ["D3", "D4", "D7"]


def test_a_gap_ends_the_entries():
    found = charges([], ["Added to all prices:"], ["Edge guards 4.80 €/t"], [], ["Sample book 25 €/t"])
    assert [[one[0] for one in each] for each in found] == [["Edge guards"]] * 2


@pytest.mark.parametrize(
    "line",
    [
        "Plus, on all items:", "Not included in the prices:", "Hinzu kommen:", "Nicht in den Preisen enthalten:",
        "En sus de tous les prix :", "Non compris dans nos prix :", "Se añaden a todos los precios:",
        "No incluido en los precios:", "Dessutom tillkommer:", "Ingår ej i priserna:",
    ],
)  # fmt: skip
def test_lines_that_lead_to_additions(line):
    assert leads_to_additions(line)


@pytest.mark.parametrize(
    "line",
    [
        "Extras:", "Optional extras", "Freight, add to all prices:", "Surcharges", "Plus VAT:", "All prices",
        "Added for orders below 5 t:", "Zusätzliche Leistungen:", "Hinzu kommt unser Lager in Nordheim:",
    ],
)  # fmt: skip
def test_lines_that_lead_to_something_else(line):
    assert not leads_to_additions(line)
