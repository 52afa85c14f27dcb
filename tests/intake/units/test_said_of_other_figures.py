"""What a legend says of some rows' money, an index of its own figures, and a letter of the rises it lists."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

LEGENDS = [
    ["Basis: a = per short ton, b = per cwt, d = cents per lb, e = per ream"],
    ["a: per short ton", "b: per cwt", "d: cents/lb"], ["Basis key: a - short ton, b - cwt, d - ¢/lb"],
]  # fmt: skip


@pytest.mark.parametrize("legend", LEGENDS)
def test_cents_of_one_code_are_no_cents_of_the_others(legend):
    head = ["Board", "Caliper pt", "lb/MSF", "Price", "Basis"]
    rows = [["CRB C1S", 18, 72, 868, "a"], ["CRB C1S", 24, 96, 44.6, "b"], ["URB", 30, 104, 34.9, "d"]]
    found = lines([["Ex works, US dollars"], [], head, *rows, [], *[[part] for part in legend]])
    assert [(f"{line.offer.price:f}", line.offer.basis) for line in found.values()] == [
        ("868", "short_ton"), ("44.6", "cwt"), ("0.349", "lb"),
    ]  # fmt: skip
    assert {line.state for line in found.values()} == {"accepted"}


def test_cents_said_of_all_are_cents():
    rows = [["CRB C1S", 18, 72, 41.5], ["URB", 30, 104, 34.9]]
    found = lines([["Ex works, cents per lb"], ["Board", "Caliper pt", "lb/MSF", "Price"], *rows])
    assert [f"{line.offer.price:f}" for line in found.values()] == ["0.415", "0.349"]


INDEXES = [
    "Old corrugated index, US$/ST", "Pulp price, US$/ST", "Altpapierindex, EUR/t", "Indice pâte, €/t",
    "Índice de celulosa, USD/t", "Massaindex, USD/ton",
]  # fmt: skip


@pytest.mark.parametrize("title", INDEXES)
def test_what_an_index_is_in_says_nothing_of_the_prices(title):
    head, rows = ["Board", "Pt", "lb/MSF", "US$/cwt"], [["SBS C1S", 16, 67, 58.2], ["CUK", 18, 76, 52.9]]
    prices = grid([["Harwick Board Mill Inc."], [], head, *rows], "Prices")
    index = grid([[title], ["Month", "Index"], ["April", 74], ["May", 78]], "Index")
    found = read_workbook(book(prices, index), Answers()).lines
    assert [(line.state, line.offer.basis) for line in found] == [("accepted", "cwt")] * 2


def test_prices_by_an_index_are_in_its_unit():
    rows = [["Sorte", "µm", "g/m²", "Price"], ["GC1", 390, 240, 1138]]
    found = lines([["Prices by the index of May, USD per tonne"], [], *rows])
    assert (found["D4"].state, found["D4"].offer.basis) == ("accepted", "tonne")


RISES = [
    ("Prices go up $60 per tonne on FBB and $50 per tonne on CRB.", "Old price", "Increase", "New price"),
    ("Die Preise steigen um 60 €/t bei GC1 und 50 €/t bei GD2.", "Alter Preis", "Erhöhung", "Neuer Preis"),
    ("Les prix augmentent de 60 €/t pour GC1 et de 50 €/t pour GD2.", "Ancien prix", "Hausse", "Nouveau prix"),
    ("Los precios suben 60 €/t en GC1 y 50 €/t en GD2.", "Precio anterior", "Subida", "Precio nuevo"),
    ("Priserna höjs med 60 EUR/ton för GC1 och 50 EUR/ton för GD2.", "Gammalt pris", "Höjning", "Nytt pris"),
]


def risen(letter, heads, by):
    rows = [["GC1", 390, 240, 1130, by[0], 1130 + by[0]], ["GD2", 465, 350, 865, by[1], 865 + by[1]]]
    units = [None, None, None, "EUR/t", "EUR/t", "EUR/t"]
    return lines([["Harwick Karton AG"], [letter], [], ["Sorte", "µm", "g/m²", *heads], units, *rows])


@pytest.mark.parametrize(("letter", "old", "rise", "new"), RISES)
def test_each_of_several_rises_is_in_the_new_prices(letter, old, rise, new):
    found = risen(letter.replace("$", "€"), (old, rise, new), (60, 50))
    assert [(cell, line.state) for cell, line in found.items()] == [("F6", "accepted"), ("F7", "accepted")]


@pytest.mark.parametrize(("letter", "old", "rise", "new"), RISES)
def test_rises_that_the_new_prices_do_not_show_are_asked_about(letter, old, rise, new):
    found = risen(letter.replace("$", "€"), (old, rise, new), (35, 25))
    assert {line.state for line in found.values()} == {"question"}
