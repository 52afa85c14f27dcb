"""Freight that one note tells of some boards and otherwise of the rest."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "µm", "EUR/t"], ["SBS", 260, 325, 1390], ["GC1", 250, 410, 1262], ["GD2", 280, 380, 821]]


def delivered(note):
    return [line.offer.delivered for line in lines([*ROWS, [], [note]]).values()]


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("SBS and GC1 delivered, GD2 not.", [True, True, False]),
        ("SBS and GC1 delivered, not GD2.", [True, True, False]),
        ("SBS und GC1 frei Haus, GD2 nicht", [True, True, False]),
        ("Franco SBS et GC1, pas GD2", [True, True, False]),
        ("SBS och GC1 fritt levererat, GD2 inte", [True, True, False]),
        ("SBS y GC1 con portes pagados, GD2 no", [True, True, None]),
        ("SBS delivered, GC1 and GD2 ex works.", [True, False, False]),
        ("SBS delivered, the others ex works.", [True, False, False]),
        ("Ex works for SBS, delivered for the others", [False, True, True]),
        ("Ab Werk für SBS, frei Haus für die anderen", [False, True, True]),
        ("Départ usine pour SBS, franco pour les autres", [False, True, True]),
        ("Prices FOB mill. SBS delivered.", [True, False, False]),
        ("Preise ab Werk. SBS frei Haus.", [True, False, False]),
        ("Prix départ usine. SBS franco.", [True, False, False]),
        ("Precios en fábrica. SBS con portes pagados.", [True, False, False]),
        ("Priser fritt fabrik. SBS fritt levererat.", [True, False, False]),
    ],
)
def test_each_board_has_its_own_term(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Buyer pays freight, on GD2 the seller does.", [False, False, None]),
        ("Fracht trägt der Käufer, bei GD2 der Verkäufer.", [False, False, None]),
        ("SBS delivered, the other boards at your freight.", [True, None, None]),
        ("SBS and GC1 delivered, GD2 on request.", [True, True, None]),
        ("SBS and GC1 delivered.", [True, True, None]),
        ("Prices FOB mill. SBS delivered within Ohio.", [None, None, None]),
    ],
)
def test_what_is_not_read_for_certain_is_left_open_for_the_boards_that_may_be_meant(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    "note", ["Prices delivered. SBS in stock.", "Prices delivered. SBS samples ex works.", "All boards delivered."]
)
def test_what_is_said_of_a_board_on_another_subject_leaves_its_freight(note):
    assert delivered(note) == [True, True, True]


@pytest.mark.parametrize(
    "note",
    [
        "Prices FOB mill. SBS can be delivered.",
        "Prices FOB mill. SBS may be delivered.",
        "Prices FOB mill. SBS was delivered.",
        "Prices FOB mill. SBS has to be delivered.",
        "Preise ab Werk. SBS kann frei Haus geliefert werden.",
        "Preise ab Werk. SBS war frei Haus.",
        "Preise ab Werk. SBS frei Haus möglich.",
        "Prix départ usine. SBS peut être livré franco.",
        "Prix départ usine. SBS était franco.",
        "Precios en fábrica. SBS puede ser con portes pagados.",
        "Priser fritt fabrik. SBS kan vara fritt levererat.",
    ],
)
def test_what_may_be_or_was_so_is_no_boards_term(note):
    assert delivered(note) in ([None, False, False], [False, False, False])


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("SBS delivered, GC1 not always.", [True, None, None]),
        ("SBS frei Haus, GC1 nicht immer.", [True, None, None]),
        ("SBS franco, GC1 pas toujours.", [True, None, None]),
        ("SBS con portes pagados, GC1 no siempre.", [True, None, None]),
        ("SBS fritt levererat, GC1 inte alltid.", [True, None, None]),
        ("SBS delivered. The rest as before.", [True, None, None]),
        ("SBS delivered. Rest unchanged.", [True, None, None]),
        ("SBS delivered, GC1 FOB mill, the rest as before.", [True, False, None]),
        ("SBS delivered in rolls, GC1 in sheets.", [None, None, None]),
        ("SBS frei Haus Deutschland, GC1 frei Grenze.", [True, None, None]),
        ("SBS delivered Ohio, GC1 FOB mill.", [True, False, None]),
    ],
)
def test_what_is_said_of_some_boards_holds_for_no_others(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("SBS delivered, GD2 the same.", [True, None, True]),
        ("SBS delivered, GD2 as well.", [True, None, True]),
        ("SBS frei Haus, GD2 ebenso.", [True, None, True]),
        ("SBS franco, GD2 également.", [True, None, True]),
        ("SBS fritt levererat, GD2 likaså.", [True, None, True]),
        ("SBS delivered, GC1 yes, GD2 no.", [True, True, False]),
        ("SBS delivered, GC1 not, GD2 the same.", [True, False, None]),
    ],
)
def test_a_board_of_which_the_same_is_said(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("SBS freight allowed, others collect.", [True, False, False]),
        ("Freight prepaid; SBS collect.", [False, True, True]),
        ("Freight collect, SBS prepaid.", [True, False, False]),
        ("Prices FOB mill. SBS prepaid.", [None, False, False]),
    ],
)
def test_how_freight_is_paid_without_its_word(note, told):
    assert delivered(note) == told


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Prices in SEK per tonne, delivered. GC1 not always.", None),
        ("Prices in SEK per tonne delivered. GC1 can be FOB mill.", None),
        ("Prices in SEK per tonne, delivered. GC1 FOB mill.", False),
        ("Preise in SEK je Tonne frei Haus, GC1 nicht immer.", None),
        ("Priserna är i SEK per ton om 1 000 kg, fritt levererat. GC1 säljer vi däremot fritt vårt bruk.", False),
    ],
)
def test_no_board_is_excepted_from_the_unit_beside_the_terms(note, told):
    rows = [["Grade", "g/m²", "Price"], *([grade, weight, price] for grade, weight, _, price in ROWS[1:])]
    offers = [line.offer for line in lines([*rows, [], [note]]).values()]
    assert [(offer.currency, offer.basis, offer.delivered) for offer in offers] == [
        ("SEK", "tonne", True), ("SEK", "tonne", told), ("SEK", "tonne", True)
    ]  # fmt: skip
