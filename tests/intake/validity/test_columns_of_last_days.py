"""Columns that say in words until when the price beside them holds, under a head that might name a price."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["GC2", 250, 400, 1200], ["GD2", 300, 390, 900]]


def listed(head, *cells):
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Price", head]]
    return lines(rows + [[*board, cell] for board, cell in zip(BOARDS, cells, strict=True)])


@pytest.mark.parametrize(
    ("head", "first", "second"),
    [
        ("Price good", "through March 31, 2027", "for 31 days from 1 December 2026"),
        ("Held", "until 31 March 2027", "until 1 January 2027"),
        ("Preis fest", "bis 31.03.2027", "31 Tage ab 1. Dezember 2026"),
        ("Prix ferme", "jusqu'au 31/03/2027", "31 jours à compter du 1er décembre 2026"),
        ("Precio firme", "hasta el 31/03/2027", "31 días a partir del 1 de diciembre de 2026"),
        ("Pris gäller", "t.o.m. 2027-03-31", "31 dagar från 1 december 2026"),
    ],
)
def test_words_that_end_on_a_day_are_no_prices(head, first, second):
    found = listed(head, first, second)
    assert {cell: line.offer.valid_until for cell, line in found.items()} == {
        "D3": date(2027, 3, 31),
        "D4": date(2027, 1, 1),
    }


def test_prices_with_a_last_day_beside_them_stay_prices():
    assert {"E3", "E4"} <= set(listed("Price firm", "1,210 until 31 March 2027", "910 until 31 March 2027"))


def test_figures_below_such_a_head_are_prices_beside_those_of_the_list():
    assert [codes(line) for line in listed("Price firm", 1300, 1000).values()] == [{"prices-disagree"}] * 2


@pytest.mark.parametrize(
    "head",
    ["Firm through", "Prices firm to", "Price firm thru", "Fest bis", "Preise fest bis", "Prix ferme jusqu'au",
     "Firme hasta", "Precio firme hasta", "Fast t.o.m.", "Fast pris t.o.m."],
)  # fmt: skip
def test_words_that_lead_to_a_last_day_head_last_days(head):
    found = listed(head, date(2027, 3, 31), date(2027, 1, 1))
    assert {cell: line.offer.valid_until for cell, line in found.items()} == {
        "D3": date(2027, 3, 31),
        "D4": date(2027, 1, 1),
    }


def test_with_a_day_such_words_head_prices():
    rows = [["EUR/t"], ["Grade", "g/m²", "µm", "Firm through 31 March 2027", "Firm through 30 June 2027"]]
    found = lines([*rows, [*BOARDS[0], 1240], [*BOARDS[1], 930]])
    assert [found[cell].offer.valid_until for cell in ("D3", "E3")] == [date(2027, 3, 31), date(2027, 6, 30)]
