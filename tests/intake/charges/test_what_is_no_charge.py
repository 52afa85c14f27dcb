"""What stands beside the prices, costs money, and is charged to no line."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEAD, GC1 = ["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1180]


def only(rows, cell):
    found = lines(rows)
    assert list(found) == [cell]
    return found[cell]


@pytest.mark.parametrize(
    "note",
    [
        "Restocking charge 15%. Credit card surcharge 3%.", "Kreditkartengebühr 3 %", "Frais de carte 3 %",
        "Recargo por tarjeta 3 %", "Kortavgift 3 %",
    ],
)  # fmt: skip
def test_what_paying_by_card_costs_is_on_no_line(note):
    assert only([HEAD, GC1, [note]], "D2").offer.charges == ()
    with_energy = only([HEAD, GC1, ["Energy surcharge 15 EUR/t."], [note]], "D2")
    assert [str(charge.price) for charge in with_energy.offer.charges] == ["15"]


def test_a_sales_tax_is_no_charge():
    rows = [["Prices delivered, HST 13 % extra"], ["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 75, 1100]]
    assert [line.offer.charges for line in lines(rows).values()] == [()]


@pytest.mark.parametrize("hidden", [False, True])
def test_what_a_hidden_sheet_reckons_with_is_charged_to_nobody(hidden):
    boards = grid([["EUR/t"], ["Sorte", "g/m²", "µm", "Preis"], ["GC1", 250, 405, 1204]], "Preise")
    costs = grid([["Energie EUR/t", 118]], "Kalkulation", hidden=hidden)
    (line,) = read_workbook(book(boards, costs), Answers({})).lines
    assert len(line.offer.charges) == (0 if hidden else 1)


def test_what_late_payers_pay_is_no_charge():
    found = lines(
        [
            ["USD por tonelada métrica, DAP"],
            ["Calidad", "g/m²", "Precio"],
            ["SBS", 250, 1420],
            ["Recargo por mora 1,5 % mensual"],
        ]
    )
    assert found["C3"].offer.charges == ()


def test_a_price_in_another_currency_is_no_charge_however_small():
    rows = [["Material", "pts", "g/m²", "$ por tonelada métrica", "USD por tonelada métrica"]]
    found = lines([["Apodaca, Nuevo León, México"], *rows, ["SBS C1S", 14, 290, 24150, 1310]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D3": "question", "E3": "accepted"}


@pytest.mark.parametrize("words", ["Freight 16 pt $/ST", "Fracht 250 g/m² €/t", "Transport 250 g/m² €/t"])
def test_what_a_value_is_charged_for_is_no_price(words):
    found = lines([["Grade", "Caliper (pt)", "Price $/ST", words], ["SBS C1S", 16, 1145, 45], ["CRB", 16, 905, 41]])
    assert sorted(found) == ["C2", "C3"]
