"""Last days, dispatch from stock, mills named after their board, heads of offers, and charges on all orders."""

from datetime import date

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.values.charges import find_charges
from tracker.intake.values.company import company_name
from tracker.intake.values.validity import validity

HEADS = ["Board", "g/m²", "Price EUR/t"]
BOARD = ["GC1", 250, 1240]


def lead(title, note):
    (line,) = lines([[title], HEADS, BOARD, [note]]).values()
    return line.offer.lead_days


@pytest.mark.parametrize(
    ("title", "note", "days"),
    [
        ("Stock sheets from stock, net prices EUR/t", "Dispatch within 4 days. Net 30.", (4, 4)),
        ("Preise für Lagerware EUR/t, ab Lager", "Versand in 4 Tagen.", (4, 4)),
        ("Formats en stock, prix nets EUR/t", "Expédition sous 4 jours.", (4, 4)),
        ("Precios EUR/t, cartulina en stock", "Despacho en 4 días.", (4, 4)),
        ("Lagerförda ark, priser EUR/t", "Leverans inom 4 dagar.", (4, 4)),
        ("Stock sheets from stock, net prices EUR/t", "Special makings 4 weeks.", (0, 0)),
        ("Formats en stock, prix nets EUR/t", "Délai de fabrication 4 semaines.", (0, 0)),
    ],
)
def test_what_is_in_stock_takes_its_days_to_go_out(title, note, days):
    assert lead(title, note) == days


@pytest.mark.parametrize(
    ("head", "price"),
    [("Offer DAP your works", "€1,240.00/t"), ("Angebot frei Haus Kassel", "1.240,00 €/t"),
     ("Offre franco votre usine", "1 240,00 €/t"), ("Oferta puesta en su planta", "1.240,00 €/t"),
     ("Offert fritt er fabrik", "1 240,00 €/t"), ("Your number", "€1,240.00/t")],
)  # fmt: skip
def test_offers_delivered_somewhere_are_prices(head, price):
    other = price.replace("240", "180")
    found = read([["Ref.", "Board", head], ["A1", "GC1 250 g/m²", price], ["A2", "GC2 250 g/m²", other]])
    assert [(line.offer.price, line.offer.basis) for line in found.lines] == [(1240, "tonne"), (1180, "tonne")]


def test_item_numbers_stay_what_they_are():
    found = read([["Our ref", "Board", "Price EUR/t"], [10240, "GC1 250 g/m²", 1240], [10241, "GC2 250 g/m²", 1180]])
    assert [line.offer.price for line in found.lines] == [1240, 1180]


@pytest.mark.parametrize(
    "text",
    ["Prices to 31 January 2027", "Recycled board prices to 31 January 2027", "Prix carton jusqu'au 31 janvier 2027",
     "Preise bis 31.01.2027", "Precios cartulina hasta el 31 de enero de 2027", "Priser t.o.m. 2027-01-31"],
)  # fmt: skip
def test_prices_to_the_end_of_a_month(text):
    said = validity(text)
    assert said is not None
    assert said.last_day() == date(2027, 1, 31)


@pytest.mark.parametrize("text", ["Prix au 31 janvier 2027", "Old prices to 31 January 2027"])
def test_other_days_of_prices_end_nothing_for_certain(text):
    said = validity(text)
    assert said is None or said.last_day() is None


@pytest.mark.parametrize(
    "name",
    ["HOLLIN RUN CHIPBOARD MILL", "Hollin Run Greyboard Mills", "Cartonnerie du Carton Gris Lavelane",
     "Papelera de Cartón Gris Olmera", "Ellervik Gråkartong Bruk", "Ellerau Graupappen Werke"],
)  # fmt: skip
def test_mills_named_after_their_board(name):
    assert company_name(name) == name


@pytest.mark.parametrize(
    "text", ["White Lined Chipboard Mill", "GREYBOARD MILL", "Fabrique de Carton Gris", "FOB CRB Mill"]
)
def test_boards_of_a_mill_name_no_firm(text):
    assert company_name(text) is None


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
