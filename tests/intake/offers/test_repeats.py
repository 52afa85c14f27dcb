"""A line that stands twice is a repeat only where all that is said of it agrees, on its sheet as well as in its row."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

TABLE = [["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1207], ["GD2", 350, 470, 749]]


def sheets(one, other):
    grids = (
        grid([["Oxmoor Board Ltd"], [said], [], *TABLE], sheet=name)
        for name, said in (("Dunmore", one), ("Ashby", other))
    )
    return [(line.offer.source.sheet, line.offer) for line in read_workbook(book(*grids), Answers()).lines]


FREIGHTS = [
    ("Add freight to Dunmore at {} EUR per tonne on every item below.", 46, 62),
    ("EUR per tonne, ex works. Add freight to Dunmore at {} EUR per tonne on every item below.", 46, 62),
    ("Fracht {} €/t auf alle Positionen unten.", 46, 62),
    ("Fret {} €/t sur tous les articles ci-dessous.", 46, 62),
    ("Flete {} €/t en cada artículo de abajo.", 46, 62),
    ("Frakt {} €/t på alla artiklar nedan.", 46, 62),
]


@pytest.mark.parametrize(("said", "one", "other"), FREIGHTS)
def test_two_sheets_with_another_freight_each(said, one, other):
    found = sheets(said.format(one), said.format(other))
    assert [(sheet, [charge.price for charge in offer.charges]) for sheet, offer in found] == [
        ("Dunmore", [one]), ("Dunmore", [one]), ("Ashby", [other]), ("Ashby", [other]),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("Lead time as per schedule A", "Lead time as per schedule B"),
        ("Lieferzeit nach Plan A", "Lieferzeit nach Plan B"),
        ("Délai de livraison selon planning A", "Délai de livraison selon planning B"),
        ("Plazo de entrega según programa A", "Plazo de entrega según programa B"),
        ("Leveranstid enligt plan A", "Leveranstid enligt plan B"),
        ("Ex works, freight to be agreed", "Ex works, freight $46 or so, depending on fuel"),
        ("Valid until end of season", "Valid until the next list"),
        ("Lead time 3 weeks", "Lead time 4 weeks"),
        ("Minimum order 5 t", "Minimum order 10 t"),
    ],
)
def test_two_sheets_with_terms_that_differ_read_or_not(one, other):
    assert [sheet for sheet, _ in sheets(one, other)] == ["Dunmore", "Dunmore", "Ashby", "Ashby"]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("Delivered, lead time 3 weeks", "Lead time 21 days, delivered"),
        ("Lead time as per schedule A", "Lead time as per schedule A"),
        ("Prices for Dunmore", "Prices for Ashby"),
        ("Page 1 of 2", "Page 2 of 2"),
    ],
)
def test_what_agrees_in_all_is_not_offered_twice(one, other):
    assert [sheet for sheet, _ in sheets(one, other)] == ["Dunmore", "Dunmore"]


def test_two_tables_and_two_groups_with_another_freight_each():
    one, other = "Freight 46 EUR/t on every item below", "Freight 62 EUR/t on every item below"
    found = lines([["Oxmoor Board Ltd"], [], [one], *TABLE, [], [other], *TABLE])
    assert [line.offer.charges[0].price for line in found.values()] == [46, 46, 62, 62]
    head, *boards = TABLE
    found = lines([["Oxmoor Board Ltd"], head, ["Dunmore, lead time to plan A"], *boards,
                   ["Ashby, lead time to plan B"], *boards])  # fmt: skip
    assert len(found) == 4


@pytest.mark.parametrize(
    "said", ["Freight 46 EUR/t on orders below 10 t", "Freight 46 EUR/t on all prices below 1,200 EUR"]
)
def test_below_a_limit_is_no_place(said):
    assert {offer.charges for _, offer in sheets(said, said)} == {()}


def test_what_is_told_of_the_items_below_is_not_said_of_those_above():
    said = "Freight 46 EUR/t on every item below"
    found = lines([["Oxmoor Board Ltd"], *TABLE, [], [said], [], TABLE[0], ["GC2", 230, 380, 1100]])
    assert [len(line.offer.charges) for line in found.values()] == [0, 0, 1]
