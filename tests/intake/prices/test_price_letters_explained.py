"""Prices told apart by a letter that a key explains: 'Price A', and 'A = EUR per tonne, EXW'."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

HEAD = ["Board", "g/m²", "µm"]
BOARDS = [["GC2", 240, 390, 1100, 1150], ["GD2", 310, 410, 800, 850]]


def listed(heads, *notes, title="Price list"):
    return lines([[title], [], [*HEAD, *heads], *BOARDS, [], *([note] for note in notes)])


def freights(found):
    return {cell: (line.offer.basis, line.offer.delivered) for cell, line in found.items() if cell.endswith("4")}


@pytest.mark.parametrize(
    ("heads", "notes"),
    [
        (("Precio A", "Precio B"), ("A = EUR por tonelada métrica, EXW", "B = EUR por tonelada métrica, DAP")),
        (("Preis A", "Preis B"), ("A = EUR je Tonne ab Werk", "B = EUR je Tonne frei Haus")),
        (("Prix A", "Prix B"), ("A : EUR la tonne départ usine ; B : EUR la tonne franco",)),
        (("Pris A", "Pris B"), ("A = EUR per 1000 kg fritt fabrik, B = EUR per 1000 kg levererat",)),
        (("Price A", "Price B"), ("Price A: EUR/t ex works", "Price B: EUR/t delivered")),
        (("Price (1)", "Price (2)"), ("(1) EUR/t ex works", "(2) EUR/t delivered")),
        (("EUR/t (1)", "EUR/t (2)"), ("(1) ex works", "(2) delivered")),
    ],
)
def test_a_key_says_in_what_and_at_whose_freight_each_price_is(heads, notes):
    found = listed(heads, *notes)
    assert {line.state for line in found.values()} == {State.ACCEPTED}
    assert freights(found) == {"D4": ("tonne", False), "E4": ("tonne", True)}


def test_a_key_beside_the_table_is_read_as_well():
    rows = [[*HEAD, "Price A", "Price B", None, "Key"], *BOARDS]
    rows[1] = [*rows[1], None, "A = EUR/t, EXW"]
    rows[2] = [*rows[2], None, "B = EUR/t, DAP"]
    assert {line.state for line in lines(rows).values()} == {State.ACCEPTED}


@pytest.mark.parametrize(
    ("heads", "notes"),
    [
        (("Price A", "Price B"), ("A = EXW",)),
        (("Price A", "Price B"), ("A = key accounts", "B = all other customers")),
        (("Price (1)", "Price (2)"), ("(1) freight included", "(2) brightness 84 %")),
    ],
)
def test_letters_that_are_not_all_explained_are_asked_about(heads, notes):
    found = listed(heads, *notes, title="Prices in EUR/t")
    assert {line.state for line in found.values()} == {State.QUESTION}


US = ("Price A USD/ST", "Price B USD/ST")
DE = ("Preis A EUR/t", "Preis B EUR/t")


@pytest.mark.parametrize(
    ("heads", "note"),
    [
        (DE, "Preis A gilt nicht unter 5 t, Preis B nicht unter 10 t."),
        (DE, "Preis A gilt nicht ab Werk, Preis B gilt nicht frei Haus."),
        (US, "Price A applies to all but delivered orders, Price B applies to delivered orders."),
        (US, "Price A applies to skids under 2,000 lb, Price B to skids over 2,000 lb."),
        (US, "Price A is for rolls under 2,000 lb, Price B is for rolls of 2,000 lb and over."),
        (DE, "Preis A gilt nur für Rollen bis 600 kg, Preis B für Rollen über 600 kg."),
        (DE, "Preis A gilt für Paletten unter 600 kg, Preis B für Paletten ab 600 kg."),
        (US, "Price A holds for annual volumes under 500 ST, Price B for 500 ST and more."),
    ],
)
def test_what_a_price_is_not_for_or_what_a_piece_weighs_explains_none(heads, note):
    assert {line.state for line in listed(heads, note).values()} == {State.QUESTION}


@pytest.mark.parametrize(
    ("heads", "note", "kilograms"),
    [
        (DE, "Preis A gilt für Aufträge unter 10 t, Preis B für Aufträge ab 10 t.", 10000),
        (US, "Price A applies to orders under 10 ST, price B to orders of 10 ST and over.", 9072),
        (US, "Price A applies to orders under 8,000 lb, Price B to orders of 8,000 lb and over.", 3629),
        (("Prix A EUR/t", "Prix B EUR/t"),
         "Le prix A vaut pour les commandes de moins de 10 t, le prix B pour les commandes de 10 t et plus.", 10000),
        (("Precio A EUR/t", "Precio B EUR/t"),
         "El precio A se aplica a pedidos de menos de 10 t, el precio B a pedidos de 10 t o más.", 10000),
        (("Pris A EUR/t", "Pris B EUR/t"),
         "Pris A gäller för order under 10000 kg, pris B för order från 10000 kg.", 10000),
    ],
)  # fmt: skip
def test_a_sentence_says_for_what_orders_each_price_is(heads, note, kilograms):
    found = {cell: line.offer for cell, line in listed(heads, note).items() if cell.endswith("4")}
    bounds = [(one.from_kg and round(one.from_kg), one.below_kg and round(one.below_kg)) for one in found.values()]
    assert bounds == [(None, kilograms), (kilograms, None)]


def test_a_sentence_says_at_whose_freight_each_price_is():
    found = listed(DE, "Preis A gilt ab Werk, Preis B gilt frei Haus.")
    assert freights(found) == {"D4": ("tonne", False), "E4": ("tonne", True)}


@pytest.mark.parametrize(
    "heads",
    [
        ("Price A $/ST", "Price B $/ST"), ("Price A $/tonne", "Price B $/tonne"), ("Class A $/ST", "Class B $/ST"),
        ("A $/ST", "B $/ST"), ("Zone A $/tonne", "Zone B $/tonne"),
    ],
)  # fmt: skip
def test_a_letter_beside_another_names_no_dollar(heads):
    found = listed(heads).values()
    assert {line.offer.currency for line in found} == {"USD"}
    # Which of them is to pay, nothing says, but for places.
    assert {line.state for line in found} == {State.ACCEPTED if heads[0].startswith("Zone") else State.QUESTION}


def test_a_key_explains_letters_right_before_the_dollar():
    heads = ("Price A $/ST", "Price B $/ST")
    found = listed(heads, "Price A: orders under 8,000 lb", "Price B: orders of 8,000 lb and over")
    assert {(line.state, line.offer.currency) for line in found.values()} == {(State.ACCEPTED, "USD")}
    assert [round(found["D4"].offer.below_kg), round(found["E4"].offer.from_kg)] == [3629, 3629]


def test_australias_dollar_in_a_head_alone():
    rows = [[*HEAD, "Price in A $ per tonne"], *(row[:4] for row in BOARDS)]
    assert {line.offer.currency for line in lines(rows).values()} == {"AUD"}


@pytest.mark.parametrize("home", ["Price US $/ST", "Price U.S. $/ST", "Price USD/ST"])
def test_canadas_dollar_beside_that_of_the_states(home):
    found = {cell: line.offer.currency for cell, line in listed((home, "Price C $/ST")).items()}
    assert {found["D4"], found["E4"]} == {"USD", "CAD"}
    assert found["E4"] == "CAD"


@pytest.mark.parametrize("head", ["Price C $/ST", "Price, list C $/ST", "Price C $/cwt", "Preis C $/ST", "Prix C $/ST"])
def test_a_class_c_alone_is_not_canadas(head):
    rows = [["Halden Board, Inc."], ["Class C customers"], ["Grade", "Caliper (pt)", "Basis wt (lb/3000 sq ft)", head]]
    price = 59 if "cwt" in head else 1180
    found = lines([*rows, ["SBS", 18, 220, price]]).values()
    assert [(line.offer.currency, line.state) for line in found] == [("USD", State.ACCEPTED)]
    # Where the file speaks of Canada, which dollar it is stays open.
    found = lines([*rows, ["SBS", 18, 220, price], [], ["Halden Board, 12 Mill Road, Toronto, Ontario"]]).values()
    assert [(line.offer.currency, line.state) for line in found] == [(None, State.QUESTION)]
