"""Which columns of charges come on top of a price, and which of them it is not certain that it bears."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN

HEAD = ["Grade", "g/m²", "µm"]
BOARD = ["GC1", 250, 400]


def cost(rows, cell="D3"):
    """The delivered cost per tonne, None where it is not known."""
    known = footing(lines(rows)[cell].offer).delivered_per_tonne
    return None if known is None else float(known)


def charged(rows, cell="D3"):
    return [float(charge.price) for charge in lines(rows)[cell].offer.charges if charge.currency != OPEN]


@pytest.mark.parametrize(
    "heads",
    [
        ("Freight Chicago", "Freight Dallas"),
        ("Freight rail", "Freight truck"),
        ("Fracht Nord", "Fracht Süd"),
        ("Fret Lyon", "Fret Lille"),
        ("Flete norte", "Flete sur"),
        ("Frakt norr", "Frakt söder"),
        ("Energie alt", "Energie neu"),
    ],
)
def test_of_charges_that_exclude_each_other_it_is_not_known_which_is_charged(heads):
    rows = [["EUR/t FCA mill"], [*HEAD, "Price", *heads], [*BOARD, 1180, 48, 62]]
    assert cost(rows) is None
    assert charged(rows) == []


@pytest.mark.parametrize(
    "heads",
    [
        ("Inland freight", "Ocean freight"),
        ("Vorlauf Fracht", "Seefracht"),
        ("Fret", "Surcharge énergie"),
        ("Flete marítimo", "Flete terrestre"),
        ("Frakt", "Energitillägg"),
    ],
)
def test_two_legs_and_two_kinds_are_both_charged(heads):
    assert charged([["EUR/t FCA mill"], [*HEAD, "Price", *heads], [*BOARD, 1180, 48, 62]]) == [48, 62]


@pytest.mark.parametrize(
    ("rolls", "freight", "sheets", "other"),
    [
        ("Rolls FOB", "Freight rolls", "Sheets FOB", "Freight sheets"),
        ("Rollenpreis ab Werk", "Fracht Rollen", "Bogenpreis ab Werk", "Fracht Bogen"),
        ("Bobines départ usine", "Fret bobines", "Feuilles départ usine", "Fret feuilles"),
        ("Bobinas ex fábrica", "Flete bobinas", "Hojas ex fábrica", "Flete hojas"),
        ("Rullar fritt fabrik", "Frakt rullar", "Ark fritt fabrik", "Frakt ark"),
    ],
)
def test_each_form_bears_its_own_freight(rolls, freight, sheets, other):
    rows = [["EUR/t"], [*HEAD, rolls, freight, sheets, other], [*BOARD, 1190, 45, 1250, 58]]
    assert charged(rows) == [45]
    assert charged(rows, "F3") == [58]


@pytest.mark.parametrize(
    ("rolls", "sheets", "cutting"),
    [
        ("Rolls", "Sheets", "Sheeting charge"),
        ("Rolle", "Bogen", "Formatzuschlag"),
        ("Bobines", "Feuilles", "Supplément format"),
        ("Bobinas", "Hojas", "Corte en hojas"),
        ("Rullar", "Ark", "Arktillägg"),
    ],
)
def test_rolls_bear_no_sheeting_and_sheets_none_that_is_in_their_price(rolls, sheets, cutting):
    head = [*HEAD, rolls, sheets, cutting]
    assert charged([["EUR/t delivered"], head, [*BOARD, 1190, 1250, 60]]) == []
    assert cost([["EUR/t delivered"], head, [*BOARD, 1190, 1250, 60]], "E3") == 1250
    assert cost([["EUR/t delivered"], head, [*BOARD, 1190, 1250, 45]], "E3") is None
    assert cost([["EUR/t delivered"], [*HEAD, "Price", cutting], [*BOARD, 1190, 60]]) == 1250


def test_a_charge_of_sheets_beside_the_price_of_rolls_alone_is_told():
    line = lines([["EUR/t delivered"], [*HEAD, "Roll price", "Sheet extra"], [*BOARD, 1190, 80]])["D3"]
    assert not line.offer.charges
    assert any("Sheet extra: 80" in note.text for note in line.notes)
    assert cost([["EUR/t delivered"], [*HEAD, "Price", "Sheeting (sheets only)"], [*BOARD, 1190, 80]]) is None


@pytest.mark.parametrize(
    ("head", "within"),
    [
        ("incl. energy surcharge", True),
        ("Energy (in price)", True),
        ("inkl. Energiezuschlag", True),
        ("Energie (im Preis)", True),
        ("dont énergie", True),
        ("Énergie (compris)", True),
        ("incluye energía", True),
        ("varav energi", True),
        ("Energy surcharge", False),
        ("Energiezuschlag inkl. CO2-Abgabe", False),
        ("Énergie", False),
        ("Energía", False),
        ("Energitillägg", False),
    ],
)
def test_what_its_head_calls_a_part_of_the_price_is_not_charged_again(head, within):
    assert cost([["EUR/t frei Haus"], [*HEAD, "Preis", head], [*BOARD, 1180, 35]]) == (1180 if within else 1215)


def test_a_price_with_the_energy_is_no_part_of_one_without():
    assert cost([["EUR/t frei Haus"], [*HEAD, "Preis", "inkl. Energie EUR/t"], [*BOARD, 1180, 1215]]) is None


@pytest.mark.parametrize("head", ["Freight share", "Frachtanteil", "Part transport", "Parte flete", "Fraktandel"])
def test_a_share_of_freight_may_be_in_a_delivered_price(head):
    assert cost([["EUR/t"], [*HEAD, "Price delivered", head], [*BOARD, 1180, 48]]) is None
    assert cost([["EUR/t"], [*HEAD, "Price ex works", head], [*BOARD, 1180, 48]]) == 1228


@pytest.mark.parametrize("label", ["of which freight", "davon Fracht", "dont transport", "varav frakt"])
def test_a_row_of_what_the_price_contains_is_no_charge(label):
    rows = [["EUR/t frei Haus"], [*HEAD, "Preis"], [*BOARD, 1180], [label, None, None, 48]]
    assert cost([*rows, ["GD2", 350, 480, 760], [label, None, None, 44]]) == 1180
    assert cost([["EUR/t ab Werk"], [*HEAD, "Preis"], [*BOARD, 1180], ["Fracht", None, None, 48]]) == 1228


@pytest.mark.parametrize(
    ("mill", "delivered", "note"),
    [
        ("FOB mill", "Delivered", "Freight: 50 EUR/t"),
        ("ab Werk", "frei Haus", "Fracht 50 EUR/t"),
        ("Départ usine", "Franco", "Transport 50 EUR/t"),
        ("Ex works", "Franco destino", "Flete 50 EUR/t"),
        ("Fritt fabrik", "Fritt levererat", "Frakt 50 EUR/t"),
    ],
)
def test_a_note_of_freight_is_not_added_to_the_delivered_one_of_two_prices(mill, delivered, note):
    rows = [["EUR/t"], [*HEAD, mill, delivered], [*BOARD, 1180, 1235], [note]]
    assert (cost(rows), cost(rows, "E3")) == (1230, 1235)


@pytest.mark.parametrize("head", ["Upcharge < 5 t", "Mindermengenzuschlag < 3 t", "Supplément petite commande"])
def test_what_small_orders_bear_is_told_and_not_charged(head):
    line = lines([["EUR/t frei Haus"], [*HEAD, "Preis", head], [*BOARD, 1180, 60]])["D3"]
    assert not line.offer.charges
    assert any(head in note.text for note in line.notes)


def test_freight_on_a_condition_leaves_the_delivered_cost_open():
    assert cost([["EUR/t ab Werk"], [*HEAD, "Price", "Freight (if < 20 t)"], [*BOARD, 1180, 60]]) is None
    assert cost([["EUR/t ab Werk"], [*HEAD, "Price", "Freight"], [*BOARD, 1180, 60]]) == 1240


@pytest.mark.parametrize(
    ("heads", "price", "charges"),
    [
        (["Grade", "Caliper (µm)"], "Price EUR/t", [40]), (["Qualité", "Épaisseur (µm)"], "Prix EUR/t", [40]),
        (["Calidad", "Espesor (µm)"], "Precio EUR/t", [40]), (["Sorte", "Stärke (µm)"], "Preis EUR/t", []),
    ],
)  # fmt: skip
def test_a_charge_is_a_making_in_german_alone(heads, price, charges):
    assert charged([[*heads, price, "Charge"], ["GC1", 450, 1120, 40], ["GD2", 400, 820, 35]], "C2") == charges


def test_freight_at_a_flat_rate_brings_the_board_to_the_dock():
    heads = [["Sorte", "g/m²", "µm", "Grundpreis", "Energiezuschl.", "Frachtpausch."], [None] * 3 + ["EUR/t"] * 3]
    (line,) = lines([*heads, ["GC1", 250, 405, 1290, 38, 44]]).values()
    assert {(charge.price, charge.freight) for charge in line.offer.charges} == {(38, False), (44, True)}
