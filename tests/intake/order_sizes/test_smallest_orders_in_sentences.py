"""Smallest orders in whole sentences, and weights in them that are of something else."""

import pytest

from tests.intake.sheets import lines


def least(note):
    found = lines([["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180], [note]])["D3"].offer.minimum_kg
    return None if found is None else round(float(found))


@pytest.mark.parametrize(
    ("note", "kg"),
    [
        ("We ask for two tonnes at the least of each item.", 2000),
        ("We run six weeks out and start a run at 20,000 lb.", 9072),
        ("The least we can supply is one tonne of any one line.", 1000),
        ("We supply not less than 1 tonne per delivery.", 1000),
        ("We can run any item from two tonnes upwards.", 2000),
        ("Je Sorte und Gewicht fertigen wir ab drei Tonnen.", 3000),
        ("Weniger als 500 kg pro Sorte gehen leider nicht.", 500),
        ("Nous fabriquons à partir de deux tonnes par sorte.", 2000),
        ("Il faut commander au moins 20 000 livres.", 9072),
        ("Poids minimum par commande 5 t, en bobines.", 5000),
        ("Minsta order 3 ton, rullvikt 500 kg.", 3000),
    ],
)
def test_smallest_orders(note, kg):
    assert least(note) == kg


@pytest.mark.parametrize(
    "note",
    [
        "Les bobines pèsent au minimum 400 kg.",
        "Peso mínimo de bobina 500 kg.",
        "Rullvikt minst 450 kg.",
        "Truckens lyftkraft minst 2 ton.",
        "Last year's minimum was 10 t.",
        "Before 2025 our minimum was 3 t.",
        "The minimum order was reduced from 10 t to 5 t.",
        "For export the minimum is 20 t.",
        "Orders for the islands are quoted separately and carry a minimum of 3 t.",
        "Prices for tissue are delivered, minimum 5 t.",
        "Sonderformate fertigen wir ab 3 t.",
        "Pour un camion complet il faut commander au moins 20 t.",
    ],
)
def test_weights_of_something_else(note):
    assert least(note) is None


@pytest.mark.parametrize(
    "note",
    [
        "Each order should come to at least 5 tonnes.",
        "Orders should amount to at least 5 tonnes.",
        "Please note that we can only accept orders from 5 tonnes.",
        "Orders are accepted from a quantity of 5 tonnes.",
        "Jeder Auftrag sollte mindestens 5 t umfassen.",
        "Bitte beachten Sie, dass wir Aufträge erst ab einer Menge von 5 t annehmen können.",
        "Aufträge nehmen wir ab 5 t an.",
        "Chaque commande devrait porter sur au moins 5 t.",
        "Nous ne pouvons accepter des commandes qu'à partir de 5 t.",
        "Cada pedido debería ascender a al menos 5 t.",
        "Se aceptan pedidos desde 5 t.",
        "Varje order bör omfatta minst 5 ton.",
        "Vi tar emot order från 5 000 kg och levererar inom 15 arbetsdagar.",
    ],
)
def test_what_orders_come_to_and_from_where_they_are_taken(note):
    assert least(note) == 5000


@pytest.mark.parametrize(
    "note",
    [
        "Each invoice should come to at least 5 tonnes.",
        "Orders should come to at least 10 t, to be delivered free.",
        "Les commandes doivent atteindre au moins 10 t, pour être livrées franco.",
        "Los pedidos deben alcanzar al menos 10 t, para ser servidos a portes pagados.",
        "Order ska uppgå till minst 10 ton, för att levereras fritt.",
        "Truck loads should come to at least 20 t.",
        "We take orders up to 5 tonnes.",
        "We accept orders from 5 t carriage paid.",
        "We accept trial orders from 1 t.",
        "We accept orders below 2 t at a surcharge of 5 %.",
        "We accept claims from 1 t.",
        "We do not take orders from 2 t.",
        "Aufträge ab 5 t liefern wir frei Haus.",
        "Aufträge ab 5 t nehmen am Bonus teil.",
        "Wir nehmen Paletten ab 1 t zurück.",
        "Commandes à partir de 5 t : franco.",
        "Vi tar emot order från 5 ton fritt levererat.",
    ],
)
def test_orders_taken_on_terms_or_up_to_a_weight_tell_none(note):
    assert least(note) is None
