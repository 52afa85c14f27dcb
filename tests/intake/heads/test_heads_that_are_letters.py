"""Heads that are letters, which a key explains in words; and unknown words over boards beside a price's."""

import pytest

from tests.intake.sheets import book, grid, lines, prices
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

BOARDS = [["GC1", 250, 405, 1254], ["GD2", 350, 450, 816]]
KEYS = [
    ("S F D P", "S = Sorte, F = Flächengewicht g/m², D = Dicke µm, P = Nettopreis in EUR je 1.000 kg ab Werk"),
    ("S F D P", "Legende: S = Sorte; F = g/m²; D = µm; P = EUR/t ab Werk"),
    ("S F D P", "S: Sorte; F: g/m²; D: µm; P: EUR/t ab Werk"),
    ("Q G É P", "Q = qualité, G = grammage (g/m²), É = épaisseur (µm), P = prix en EUR la tonne, départ usine"),
    ("C G E P", "C = calidad. G = gramaje g/m². E = espesor µm. P = precio en EUR por tonelada, en fábrica"),
    ("K Y T P", "K = kvalitet, Y = ytvikt g/m², T = tjocklek µm, P = pris i EUR per ton (1000 kg), fritt fabrik"),
    ("G W C P", "Key: G = grade, W = gsm, C = caliper in microns, P = EUR per tonne, ex works"),
]


@pytest.mark.parametrize(("letters", "key"), KEYS)
@pytest.mark.parametrize("above", [True, False])
def test_a_key_names_the_columns(letters, key, above):
    table = [letters.split(), *BOARDS]
    found = lines([[key], [], *table] if above else [*table, [], [key]])
    assert [(str(line.state), line.offer.grade, line.offer.basis) for line in found.values()] == [
        ("accepted", "FBB", "tonne"),
        ("accepted", "CRB", "tonne"),
    ]
    assert [line.offer.grammage_gsm for line in found.values()] == [250, 350]
    assert {line.offer.delivered for line in found.values()} == {False}


def test_a_key_on_a_sheet_of_its_own():
    key = [["G", "grade"], ["W", "basis weight, g/m²"], ["C", "caliper, µm"], ["P", "price, EUR per tonne"]]
    found = read_workbook(book(grid([["G", "W", "C", "P"], *BOARDS], "Prices"), grid(key, "Key")), Answers({})).lines
    assert [(str(line.state), line.offer.grammage_gsm) for line in found] == [("accepted", 250), ("accepted", 350)]


@pytest.mark.parametrize(
    "key",
    ["S = Sorte, F = Flächengewicht g/m², P = EUR/t", "F = g/m², D = Dicke µm", "S = Stockholm, P = Paris"],
)  # fmt: skip
def test_a_key_that_leaves_the_price_or_a_letter_open_names_no_columns(key):
    states = {str(line.state) for line in lines([[key], [], ["S", "F", "X", "P"], *BOARDS]).values()}
    assert "accepted" not in states


SIZED = [
    ("What", "How much you take", "EUR/t", "under 5 t", "5 t and over"),
    ("Was wir haben", "Wenn Sie nehmen", "EUR/t", "unter 5 t", "ab 5 t"),
    ("Quoi", "Combien", "EUR/t", "moins de 5 t", "à partir de 5 t"),
    ("Qué", "Cuánto", "EUR/t", "menos de 5 t", "desde 5 t"),
    ("Vad", "Hur mycket", "EUR/ton", "under 5 t", "från 5 t"),
]


@pytest.mark.parametrize(("what", "size", "price", "less", "more"), SIZED)
def test_unknown_words_beside_a_price_head_boards_and_order_sizes(what, size, price, less, more):
    rows = [
        ["EUR per 1000 kg"], [], [what, size, price],
        ["GC1 250 g/m² 410 µm", less, 1298], [None, more, 1246], ["GD2 300 g/m² 400 µm", less, 898], [None, more, 846],
    ]  # fmt: skip
    found = lines(rows)
    assert prices(found)["C5"] == ("accepted", "1246", "tonne")
    assert [(line.offer.grade, line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        ("FBB", None, 5000), ("FBB", 5000, None), ("CRB", None, 5000), ("CRB", 5000, None),
    ]  # fmt: skip


def test_words_over_no_boards_head_no_table():
    rows = [["Prices in EUR"], ["What", "When", "EUR/t"], ["Pulp index", "May", 1298], [None, "June", 1246]]
    assert not any(str(line.state) == "accepted" for line in lines(rows).values())
