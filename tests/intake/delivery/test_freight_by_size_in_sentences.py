"""What orders of a size pay for carriage in whole sentences beside prices by size; what small orders or samples pay."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.freight_of_prices import freight_of_prices

SIZES = [
    ["Sorte", "g/m²", "µm", "unter 5 t", "5 t und mehr"],
    ["GC2", 300, 490, 1290, 1215],
    ["GD2", 350, 470, 930, 865],
]


def delivered(*notes):
    rows = [["Preise in EUR je Tonne"], *SIZES, [None], *[[note] for note in notes]]
    return [line.offer.delivered for line in lines(rows).values()][:2]


@pytest.mark.parametrize(
    ("note", "told"),
    [
        ("Orders of five tonnes and over travel at our expense. Smaller lots are sold ex mill.", [False, True]),
        ("Ab fünf Tonnen liefern wir frei Haus. Darunter ab Werk.", [False, True]),
        ("Från fem ton bjuder vi på frakten. Mindre order säljs fritt bruket.", [False, True]),
        ("Le franco est acquis dès cinq tonnes ; en dessous, départ usine.", [False, True]),
        ("We pay the haulage on 5 tonnes and upwards; below that it is charged at cost.", [None, True]),
    ],
)
def test_prices_by_size_are_delivered_as_a_sentence_says(note, told):
    assert delivered(note) == told


def test_a_supplement_of_small_orders_does_not_undo_what_is_said_of_carriage():
    note = "Ab 5 t liefern wir frei Haus.\nBestellungen unter 5 t tragen einen Mindermengenzuschlag von 30 € je Tonne."
    assert delivered(note) == [None, True]


@pytest.mark.parametrize(
    "note",
    [
        "Smaller lots are sold ex mill and bear carriage of £85 a tonne.",
        "Kein Auftrag unter 5 t wird frei Haus geliefert.",
        "No order below 5 t is delivered free.",
        "Sample sheets are shipped from stock, freight paid, up to 25 of an item.",
    ],
)
def test_what_is_said_of_small_orders_and_samples_is_not_said_of_all(note):
    said = freight_of_prices(note)
    assert said is None or said.delivered is None


@pytest.mark.parametrize(
    ("note", "told"),
    [("Samples and orders are delivered free.", True), ("Prices ex mill, small orders delivered.", None)],
)
def test_what_is_said_of_orders_too_is(note, told):
    assert freight_of_prices(note).delivered is told


def test_prices_per_ton_of_so_many_kilograms_name_no_size_of_order():
    note = "Sämtliche Preise in EUR je to (1.000 kg) frei Werk des Käufers"
    assert {line.offer.delivered for line in lines([[note], *SIZES]).values()} == {True}
