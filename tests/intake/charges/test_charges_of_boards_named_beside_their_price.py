"""Charges that a sentence puts on some boards alone, and charges that a letter says are gone."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "gsm", "µm", "EUR/t"], ["GC1", 250, 400, 1250], ["GD2", 300, 390, 850], ["GT2", 320, 440, 869], []]


def amounts(note):
    return [[f"{one.price:f}" for one in line.offer.charges] for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    ["Une contribution bois de 24 euros par tonne s'ajoute aux prix des GC, et d'eux seuls.",
     "Una tasa de madera de 24 euros por tonelada se añade al precio de los GC.",
     "En träavgift på 24 EUR per ton läggs på priserna för GC.",
     "An energy surcharge of 24 euros per tonne is added for the GC grades.",
     "Auf die GC-Positionen kommt ein Energiezuschlag von 24 Euro je Tonne, der im Mai noch bei 30 Euro lag."],
)  # fmt: skip
def test_what_is_added_to_the_prices_of_some_boards_is_on_these_alone(note):
    assert amounts(note) == [["24"], [], []]


@pytest.mark.parametrize(
    "note",
    ["På GD2 och GT2 tillkommer däremot ett energitillägg på 19 EUR per ton; GC-sorterna berörs inte.",
     "Auf GD2 und GT2 kommt ein Energiezuschlag von 19 Euro je Tonne; die GC-Sorten sind davon ausgenommen.",
     "Sobre los GD2 y GT2 se añade un recargo energético de 19 euros por tonelada; los GC quedan exentos."],
)  # fmt: skip
def test_boards_that_are_not_affected_bear_none(note):
    assert amounts(note) == [[], ["19"], ["19"]]


def test_who_else_is_not_affected_is_not_every_board():
    assert amounts("Energiezuschlag 19 EUR/t; Lagerware ausgenommen.") == [["19"]] * 3


def test_of_boards_not_understood_no_line_bears_the_amount():
    told = amounts("A contribution of 24 euros per tonne is added to the prices of GC, other than reels of GD2.")
    assert told in ([[], [], []], [["0"], ["0"], ["0"]])


@pytest.mark.parametrize(
    "note",
    ["Energitillägget på 4 procent är avskaffat sedan den 1 september.",
     "The energy surcharge of 4 % is no longer levied.",
     "Der Energiezuschlag von 4 % ist seit September abgeschafft.", "La surtaxe énergie de 4 % est abolie depuis mai.",
     "El recargo energético del 4 % ya no se cobra."],
)  # fmt: skip
def test_a_charge_that_is_gone_is_charged_no_more(note):
    assert amounts(note) == [[], [], []]


@pytest.mark.parametrize(
    "note",
    ["Energitillägg 4 procent. Det tidigare energitillägget är avskaffat.",
     "Energy surcharge 4 %. The former energy surcharge was scrapped.",
     "Energiezuschlag 4 %. Der alte Energiezuschlag ist abgeschafft."],
)  # fmt: skip
def test_the_end_of_an_earlier_one_leaves_the_charge(note):
    assert amounts(note) == [["4"]] * 3


@pytest.mark.parametrize(
    "note",
    ["Only GD2 bears a surcharge of 18 euros per tonne.", "Nur GD2 trägt einen Zuschlag von 18 Euro je Tonne.",
     "Solo el GD2 soporta un recargo de 18 euros por tonelada, motivado por el papel viejo."],
)  # fmt: skip
def test_a_board_that_bears_a_charge(note):
    assert amounts(note) == [[], ["18"], []]


@pytest.mark.parametrize(
    "note",
    ["A surcharge of 22 EUR/t is added to the prices of GC1.", "A surcharge of 22 EUR/t is added to GC1 prices.",
     "A wood levy of 22 euros per tonne is added to the prices of the GC grades.",
     "Eine Holzabgabe von 22 Euro je Tonne kommt auf die Preise der GC-Sorten.",
     "Ein Zuschlag von 22 EUR/t kommt auf den Preis von GC1.",
     "Une surcharge de 22 EUR/t s'ajoute aux prix du GC1.", "Un recargo de 22 EUR/t se añade al precio del GC1.",
     "Ett tillägg på 22 EUR/ton läggs på priset för GC1.", "An energy surcharge of 22 EUR/t is added to GC1."],
)  # fmt: skip
def test_a_named_charge_on_the_prices_of_some_boards_is_theirs(note):
    found = lines([["Board", "gsm", "micron", "EUR/t"], *THREE, [], [note]]).values()
    assert [[str(charge.price) for charge in line.offer.charges] for line in found] == [[], ["22"], []]
    assert {str(line.state) for line in found} == {"accepted"}


def test_all_but_one_board_bear_a_charge():
    note = "An energy surcharge of 22 EUR/t is added to all grades but GC1."
    found = lines([["Board", "gsm", "micron", "EUR/t"], *THREE, [], [note]]).values()
    assert [[str(charge.price) for charge in line.offer.charges] for line in found] == [["22"], [], ["22"]]


THREE = [["SBS", 240, 340, 1298], ["GC1", 280, 450, 1180], ["GD2", 300, 420, 845]]
