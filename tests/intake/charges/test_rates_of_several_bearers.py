"""Charges of one name that not all bear: who bears each is asked before their rates are held against each other."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_WIDTHS = [
    ["Preise frei Haus in EUR je Tonne"],
    ["Sorte", "g/m²", "Rollenbreite mm", "Preis"],
    ["GC2", 250, 500, 1200],
    ["GC2", 250, 800, 1180],
    ["GD2", 300, 1500, 865],
]
_FORMS = [
    ["Prices are delivered."],
    ["Grade", "Caliper (pt)", "Rolls USD/ST", "Sheets USD/ST"],
    ["SBS", 18, 1200, 1260],
    ["CUK", 20, 900, 960],
]


def _charges(table, *notes):
    found = lines([*table, [], *([note] for note in notes)])
    return [
        tuple(str(one.price) if one.currency != OPEN else "open" for one in line.offer.charges)
        for line in found.values()
    ]


@pytest.mark.parametrize(
    "notes",
    [
        ("Rolls under 600 mm: surcharge EUR 40/t", "Surcharge EUR 25/t"),
        ("Rollen unter 600 mm: Zuschlag 40 EUR/t", "Zuschlag 25 EUR/t"),
        ("Laizes inférieures à 600 mm : supplément 40 EUR/t", "Supplément 25 EUR/t"),
        ("Bobinas de ancho inferior a 600 mm: suplemento 40 EUR/t", "Suplemento 25 EUR/t"),
        ("Rullar under 600 mm: tillägg 40 EUR/t", "Tillägg 25 EUR/t"),
    ],
)
def test_what_all_bear_is_not_lost_beside_what_narrow_rolls_bear(notes):
    for told in (notes, reversed(notes)):
        assert _charges(_WIDTHS, *told) == [("open",), ("25",), ("25",)]


def test_a_rate_of_narrow_rolls_says_nothing_of_a_surcharge_of_all_that_has_none():
    told = ("Rolls under 600 mm: surcharge EUR 40/t", "A surcharge applies to all orders; ask for the current rate")
    assert _charges(_WIDTHS, *told) == [("open",)] * 3


@pytest.mark.parametrize(
    "notes",
    [
        ("Rolls under 600 mm: surcharge EUR 40/t", "Rolls over 900 mm: surcharge EUR 15/t"),
        ("Rollen unter 600 mm: Zuschlag 40 EUR/t", "Rollen über 900 mm: Zuschlag 15 EUR/t"),
        ("Laizes inférieures à 600 mm : supplément 40 EUR/t", "Laizes supérieures à 900 mm : supplément 15 EUR/t"),
        ("Bobinas de menos de 600 mm: suplemento 40 EUR/t", "Bobinas de más de 900 mm: suplemento 15 EUR/t"),
        ("Rullar under 600 mm: tillägg 40 EUR/t", "Rullar över 900 mm: tillägg 15 EUR/t"),
    ],
)
def test_each_roll_bears_the_rate_of_its_width(notes):
    assert _charges(_WIDTHS, *notes) == [("40",), (), ("15",)]


def test_so_is_freight_by_width():
    told = ("Freight EUR 42/t for rolls under 600 mm", "Freight EUR 30/t for rolls over 600 mm")
    assert _charges(_WIDTHS, *told) == [("42",), ("30",), ("30",)]


@pytest.mark.parametrize(
    "notes",
    [
        ("Energy surcharge $25/ST on rolls", "Energy surcharge $40/ST on sheets"),
        ("Rolls carry a surcharge of $25/ST", "Sheets carry a surcharge of $40/ST"),
        ("Energy surcharge $25/ST on rolls; $40/ST on sheets",),
        ("Energiezuschlag 25 USD/ST auf Rollen; 40 USD/ST auf Bogen",),
        ("Energiezuschlag 25 USD/ST auf Rollen", "Energiezuschlag 40 USD/ST auf Bogen"),
        ("Surcharge énergie 25 USD/ST sur les bobines", "Surcharge énergie 40 USD/ST sur les feuilles"),
        ("Recargo energético 25 USD/ST en bobinas", "Recargo energético 40 USD/ST en hojas"),
        ("Energitillägg 25 USD/ST på rullar", "Energitillägg 40 USD/ST på ark"),
    ],
)
def test_each_form_bears_its_own_rate(notes):
    assert _charges(_FORMS, *notes) == [("25",), ("40",)] * 2


def test_beside_a_rate_of_all_that_of_one_form_leaves_open_what_it_bears():
    told = ("Energy surcharge on rolls $25/ST", "Energy surcharge $40/ST")
    assert _charges(_FORMS, *told) == [("open",), ("40",)] * 2


def test_what_small_sheets_and_narrow_rolls_bear_is_open_for_both():
    told = ("Sheets smaller than 20 x 26 in: $40/ST extra", "Rolls under 18 in: $30/ST extra")
    assert _charges(_FORMS, *told) == [("open",), ("open",)] * 2


def test_the_same_rate_said_of_all_and_of_one_form_is_that_rate():
    assert _charges(_FORMS, "Energy surcharge $25/ST", "Energy surcharge $25/ST on rolls") == [("25",), ("25",)] * 2


@pytest.mark.parametrize(
    ("narrow", "of_all"),
    [
        ("For narrow rolls we charge a surcharge of EUR 40/t", "Surcharge EUR 25/t"),
        ("Für Schmalrollen berechnen wir einen Zuschlag von 40 EUR/t", "Zuschlag 25 EUR/t"),
        ("Supplément pour bobines étroites 40 EUR/t", "Supplément 25 EUR/t"),
        ("Suplemento para bobinas estrechas 40 EUR/t", "Suplemento 25 EUR/t"),
        ("Tillägg för smala rullar 40 EUR/t", "Tillägg 25 EUR/t"),
    ],
)
def test_narrow_rolls_whose_width_is_not_told_may_be_any(narrow, of_all):
    assert _charges(_WIDTHS, narrow, of_all) == [("open",)] * 3


@pytest.mark.parametrize("note", ["Sheets: surcharge $40/ST", "Bogen: Zuschlag 40 USD/ST"])
def test_a_form_ahead_of_a_colon_bears_what_is_behind_it(note):
    assert _charges(_FORMS, note) == [(), ("40",)] * 2


def test_what_narrow_rolls_and_sheets_bear_is_not_told_of_rolls_alone():
    assert _charges(_FORMS, "Rolls under 24 in and sheets: surcharge $40/ST") == [("open",), ("open",)] * 2
