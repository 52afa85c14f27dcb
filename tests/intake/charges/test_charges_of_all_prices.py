"""'To all prices an energy surcharge is added': a charge of every line, in whichever words."""

from decimal import Decimal

import pytest

from tests.intake.readings import accepted, by_cell, read_rows
from tests.intake.sheets import lines
from tracker.intake.values.freight.charges import find_charges
from tracker.trade.footing import footing

HEAD = ["Sorte", "g/m²", "µm", "Preis EUR/t frei Haus"]


@pytest.mark.parametrize(
    "note",
    [
        "Auf alle Preise kommt ein Energiezuschlag von 38,00 EUR/t.",
        "Zu allen Preisen kommt ein Energiezuschlag von 38 EUR/t hinzu.",
        "Auf die genannten Preise berechnen wir einen Energiezuschlag in Höhe von 38,00 €/t.",
        "Ein Energiezuschlag von 38 EUR/t wird auf alle Preise aufgeschlagen.",
        "Für alle Sorten fällt ein Energiezuschlag von 38 EUR/t an.",
        "Auf alle Preise kommt eine Fracht von 38 EUR/t.",
        "To all prices an energy surcharge of 38 EUR/t is added.",
        "On top of these prices comes an energy surcharge of 38 EUR/t.",
        "All prices are subject to an energy surcharge of 38 EUR/t.",
        "An energy surcharge of 38 EUR/t applies to every price above.",
        "À tous les prix s'ajoute un supplément énergie de 38 EUR/t.",
        "Tous les prix sont majorés d'une surcharge énergie de 38 EUR/t.",
        "Aux prix ci-dessus vient s'ajouter une surcharge énergie de 38 €/t.",
        "A todos los precios se añade un recargo energético de 38 EUR/t.",
        "A todos los precios hay que sumar un recargo energético de 38 EUR/t.",
        "Todos los precios llevan un recargo energético de 38 EUR/t.",
        "På alla priser tillkommer ett energitillägg på 38 EUR/t.",
        "Till alla priser kommer ett energitillägg på 38 EUR/t.",
        "På samtliga priser läggs ett energitillägg på 38 EUR/t.",
    ],
)
def test_a_charge_on_all_prices_is_every_lines(note):
    found = lines([HEAD, ["GD2", 250, 330, 812], ["GC2", 250, 405, 1186], [], [note]])
    charges = [[(each.price, each.currency, str(each.basis)) for each in line.offer.charges] for line in found.values()]
    assert charges == [[(Decimal(38), "EUR", "tonne")]] * 2
    assert footing(found["D2"].offer).delivered_per_tonne == 850


@pytest.mark.parametrize(
    "note",
    [
        "Auf alle Preise außer GD2 kommt ein Energiezuschlag von 38 EUR/t.",
        "Auf alle Preise kommt ab 1. Juli 2027 ein Energiezuschlag von 38 EUR/t.",
        "Auf alle Preise unter 5 t kommt ein Mindermengenzuschlag von 38 EUR/t.",
        "To all prices an energy surcharge of 30 to 40 EUR/t is added.",
        "Auf alle Preise kommt kein Energiezuschlag.",
    ],
)
def test_a_charge_of_some_or_of_later_prices_comes_to_no_certain_amount(note):
    assert not any(charge.amounts for charge in find_charges(note))


def test_a_surcharge_on_all_prices_is_part_of_the_delivered_cost():
    reading = read_rows(
        [
            ["Elmscombe Mill Ltd"],
            ["Delivered prices, £ per tonne. An energy surcharge of £35 per tonne is added to all prices."],
            [],
            ["Grade", "gsm", "micron", "£/t"],
            ["GD2", 280, 370, 760],
        ]
    )
    assert accepted(reading) == {"D5": ("CRB", "760", "GBP", "tonne")}
    assert footing(by_cell(reading)["D5"].offer).delivered_per_tonne == 795


def test_a_surcharge_in_the_same_sentence_as_the_unit():
    reading = read_rows(
        [
            ["Kaltenfels Kartonfabrik GmbH"],
            ["Preise in EUR/t frei Haus, zuzüglich 3,5 % Energiezuschlag"],
            [],
            ["Sorte", "g/m²", "µm", "Preis"],
            ["GC1", 250, 400, 1240],
        ]
    )
    assert accepted(reading) == {"D5": ("FBB", "1240", "EUR", "tonne")}
    assert [charge.price for charge in by_cell(reading)["D5"].offer.charges] == [Decimal("3.5")]


def test_a_surcharge_without_a_unit_too_large_for_a_percentage():
    reading = read_rows(
        [
            ["Nordbruk Board AB"],
            ["Prices EXW mill, EUR per tonne"],
            [],
            ["Grade", "g/m²", "µm", "Base price", "Energy surcharge", "Freight to buyer"],
            ["GC1", 240, 385, 1180, 25, 62],
        ]
    )
    assert footing(by_cell(reading)["D5"].offer).delivered_per_tonne == 1180 + 25 + 62


@pytest.mark.parametrize(
    "text",
    ["Energy surcharge of EUR 16 per tonne will be added to all orders",
     "Energiezuschlag von 16 EUR/t wird auf alle Aufträge erhoben",
     "Un supplément énergie de 16 €/t sera appliqué à toutes les commandes",
     "Recargo de energía de 16 €/t se aplicará a todos los pedidos", "Energitillägg 16 EUR/ton läggs på alla order"],
)  # fmt: skip
def test_charges_on_all_orders(text):
    assert [[amount.value for amount in charge.amounts] for charge in find_charges(text)] == [[16]]


def test_charges_on_the_orders_of_one_month_are_not_certain():
    (charge,) = find_charges("Energy surcharge of EUR 16 per tonne will be added to all March orders")
    assert charge.amounts == ()


@pytest.mark.parametrize(
    "said",
    [
        "Zuzüglich Querschneiden 48 EUR/t auf alle Positionen dieses Blatts.",
        "Sheeting charge of 48 EUR/t on all items of this sheet.",
        "Supplément coupe 48 EUR/t sur toutes les sortes de cette feuille.",
        "Recargo de corte 48 EUR/t en todas las calidades de esta hoja.",
    ],
)
def test_a_charge_on_all_of_a_sheet_is_on_each_of_its_prices(said):
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 270, 440, 1238], ["GD2", 400, 535, 872], [], [said]]
    for line in lines(rows).values():
        assert [(charge.price, charge.currency, charge.basis.value) for charge in line.offer.charges] == [
            (48, "EUR", "tonne")
        ]
