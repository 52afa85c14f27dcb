"""Smallest orders of several boards, of all but one, in pieces, in two units and beside a term of delivery."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Caliper (µm)", "Weight (g/m²)", "Price EUR/tonne"]
BOARDS = [["GZ", 450, 350, 1180], ["GC2", 500, 330, 1090], ["GD2", 500, 400, 780]]


def leasts(*texts):
    """The smallest order of each board over the texts in whole kg, 'unread' where a note says so of it."""
    found = lines([HEAD, *BOARDS, [], *([text] for text in texts)])
    told = (found[f"D{row}"] for row in (2, 3, 4))
    return ["unread" if "bracket-unread" in codes(line) else _whole(line.offer.minimum_kg) for line in told]


def _whole(kg):
    return None if kg is None else int(Decimal(kg))


@pytest.mark.parametrize(
    "text",
    [
        "Minimum order: GZ 5 t, GC2 5 t, GD2 10 t.", "Minimum order: GZ 5 t; GC2 5 t; GD2 10 t.",
        "Minimum order 5 t for GZ, 5 t for GC2 and 10 t for GD2.", "Mindestmengen: GZ 5 t, GC2 5000 kg, GD2 10 t.",
        "Minimum GZ 5 t, GC2 5 t, GD2 10 t.", "Pedido mínimo: GZ 5 t, GC2 5 t, GD2 10 t.",
        "Minsta order: GZ 5 t, GC2 5 t, GD2 10 t.", "Minimum order 5 t (10 t for GD2).", "Minimum order 5 t, GD2 10 t.",
        "Minimum order 5 t, 10 t for GD2.", "Minimum order 5 t, for GD2 10 t.", "Minimum order 5 t except GD2 10 t.",
        "Minimum order 10 t for GD2, 5 t for the other grades.", "Mindestabnahme 5 t, bei GD2 10 t.",
        "Mindestmenge 10 t für GD2, 5 t für die übrigen Sorten.", "Minimum 5 t, 10 t pour le GD2.",
        "Pedido mínimo 5 t, 10 t para GD2.", "Minsta order 5 t, 10 t för GD2.",
    ],
)  # fmt: skip
def test_each_board_has_its_own(text):
    assert leasts(text) == [5000, 5000, 10000]


@pytest.mark.parametrize(
    "text",
    [
        "Minimum 5 skids of 1,000 kg.", "Minimum 5 skids (1,000 kg each).", "MOQ 5 t EXW", "MOQ 5 t FOB mill",
        "Minimum order 5,000 kg / 11,000 lb.", "Minimum order 5 t in multiples of 1 t.",
        "Minimum manufacturing quantity 5 t.", "Mindestmenge 5 t ab Werk.", "Mindestmenge 5.000 kg / 11.000 lb",
        "Mindestmenge nur noch 5 t.", "Mindestmenge 5 t in Schritten von 1 t.", "MOQ 5 t départ usine",
        "Commande minimum 5 t par multiples de 1 t.", "MOQ 5 t en fábrica", "Pedido mínimo 5 t en múltiplos de 1 t.",
        "MOQ 5 t fritt bruk", "Minsta order 5 t i multiplar om 1 t.",
    ],
)  # fmt: skip
def test_one_for_all_beside_pieces_units_terms_and_steps(text):
    assert leasts(text) == [5000] * 3


@pytest.mark.parametrize(
    "text",
    [
        "Minimum order 5 t / 20,000 lb.", "Minimum order half a truckload, a truckload is 40,000 lb.",
        "Minimum order 5 t on rolls, 2 t on sheets.", "Minimum order 5 t, sheets 2 t.",
        "Minimum order is 5 t per size; 2 t for stocked sizes.",
        "Minimum order 5 t, 10 t from 1 January 2027.", "Mindestmenge 5 t (Lagerware 500 kg).",
        "Mindestmenge 5 t, ab 1. Januar 2027 10 t.", "Mindestmenge 5 t frei Haus.",
    ],
)  # fmt: skip
def test_what_some_orders_have_leaves_it_unread(text):
    assert leasts(text) == ["unread"] * 3


@pytest.mark.parametrize(
    "text", ["Minimum order 5 t, truckload 20 t.", "Minimum order 5 t, truckload 24 t from stock."]
)
def test_a_load_beside_it_is_another_matter(text):
    assert leasts(text) == [5000] * 3


def test_a_charge_for_skids_is_no_smallest_order():
    assert leasts("Minimum skid charge 5,000 lb.") == [None] * 3


@pytest.mark.parametrize(
    "said",
    ["{}: minimum order {} t", "{}: Mindestmenge {} t", "{} : minimum de commande {} t", "{}: pedido mínimo {} t",
     "{}: minsta order {} t"],
)  # fmt: skip
def test_notes_on_every_board_of_a_table_leave_the_boards_what_they_are(said):
    rows = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900], ["GT2", 280, 950], []]
    notes = [[said.format(grade, tonnes)] for grade, tonnes in (("GC1", 5), ("GD2", 10), ("GT2", 20))]
    found = [line.offer for line in lines([*rows, *notes]).values()]
    assert [(offer.grade, offer.minimum_kg) for offer in found] == [("FBB", 5000), ("CRB", 10000), ("CRB", 20000)]
