"""A delivery that a note denies is none, and one that it gives to some orders alone is left open."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.freight_of_prices import freight_of_prices


@pytest.mark.parametrize(
    ("title", "note", "delivered"),
    [
        ("EUR/t delivered", "Delivered prices for 20 t only; 5 t FOB mill", None),
        ("EUR/t frei Haus", "Frei Haus ab 5 t", None),
        ("EUR/t franco", "Franco à partir de 5 t", None),
        ("EUR/t franco destino", "Portes incluidos a partir de 5 t; por debajo, 45 EUR/t", None),
        ("EUR/t fritt levererat", "Fritt levererat från 5 ton", None),
        ("EUR/t delivered", "Delivered prices, lead time 3 weeks from order", True),
        ("EUR/t frei Haus", "Mindestmenge 5 t", True),
        ("EUR/t franco", "Prix franco usine du client", True),
        ("EUR/t franco destino", "Pedido mínimo 5 t", True),
        ("EUR/t fritt levererat", "Minsta order 5 ton", True),
        ("EUR/t FOB mill", "Delivered from 5 t", False),
    ],
)
def test_delivery_on_a_condition_is_open_and_told(title, note, delivered):
    line = lines([[title], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180], [note]])["D3"]
    assert line.offer.delivered is delivered
    assert any("not every price includes freight" in one.text for one in line.notes) is (delivered is None)


ROWS = [["EUR/t"], ["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, 1180]]


@pytest.mark.parametrize(
    ("note", "delivered"),
    [
        ("Prices do not include delivery.", False),
        ("Prices don't include freight.", False),
        ("Freight included: no", False),
        ("Keine Lieferung frei Haus", False),
        ("Die Preise verstehen sich nicht frei Haus", False),
        ("Les prix ne sont pas franco", False),
        ("Los precios no son franco destino", False),
        ("Leverans ingår ej", False),
        ("Frakten ingår inte i priset", False),
        ("Prices include delivery.", True),
        ("Delivered, no surcharge", True),
        ("No fuel surcharge, delivered prices", True),
        ("Keine Zuschläge, Lieferung frei Haus", True),
        ("Sans surcharge, franco", True),
        ("Sin recargos, franco destino", True),
        ("Leverans ingår, ej energitillägg", True),
        ("Leverans ingår ej energitillägg", True),
    ],
)
def test_a_denied_delivery_is_none(note, delivered):
    assert lines([*ROWS, [note]])["D3"].offer.delivered is delivered


@pytest.mark.parametrize(
    "note",
    [
        "Free delivery from one hundred twenty tonnes", "Frei Haus ab zweihundertfünfzig Tonnen",
        "Delivered free for orders over five hundred fifty tons",
    ],
)  # fmt: skip
def test_an_order_size_that_is_not_read_is_a_condition_all_the_same(note):
    (line,) = lines([["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 250, 400, 1180], [], [note]]).values()
    assert line.offer.delivered is None


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Freight prepaid on orders of a hundred tons or more", None),
        ("Freight prepaid on large orders", None),
        ("Frei Haus bei Aufträgen ab hundert Tonnen", None),
        ("Franco pour commandes de cent tonnes", None),
        ("Franco à partir de cent tonnes", None),
        ("Frei Haus ab hundert Tonnen", None),
        ("Prix franco", True),
        ("Entregado en pedidos de cien toneladas", None),
        ("Fritt levererat vid order om hundra ton", None),
        ("Freight prepaid on all orders", True),
        ("Franco pour toute commande", True),
        ("Delivered prices for orders placed by 1 March 2026", True),
        ("Delivered, 4 weeks from order", True),
        ("Freight prepaid on all large orders", None),
        ("Freight prepaid on bulk orders placed by 30 June 2026", None),
        ("Freight allowed on orders of $30,000 or more", None),
        ("Freight allowed on orders over USD 18,000", None),
        ("Carriage free on orders of £300 and above", True),
        ("Prices delivered for call-off orders", None),
        ("Freight included for this order", True),
        ("Prices include freight for orders shipped to your plant", True),
        ("Frei Haus für Ihre Bestellung", True),
        ("Frei Haus für den Auftrag Nr. 5208", True),
        ("Frei Haus für große Aufträge", None),
        ("Prix rendus pour votre commande", True),
        ("Franco pour toute commande de plus de 12 tonnes", None),
        ("Franco pour chaque commande d'au moins 15 t", None),
        ("Precios franco destino para su pedido", True),
        ("Precios franco destino para todos los pedidos grandes", None),
        ("Fritt levererat på er order", True),
        ("Fritt levererat på stora order", None),
        ("Freight prepaid on every order above twelve tons", None),
        ("Freight prepaid on every order", True),
        ("Frachtfrei für alle Aufträge ab zwölf Tonnen", None),
        ("Frachtfrei für alle Aufträge", True),
        ("Frei Haus bei jedem Auftrag über fünf Tonnen", None),
        ("Franco pour toute commande supérieure à dix tonnes", None),
        ("Portes pagados en todos los pedidos de más de diez toneladas", None),
        ("Portes pagados en todos los pedidos", True),
        ("Fritt levererat för alla order över tio ton", None),
        ("Fritt levererat för alla order", True),
    ],
)
def test_freight_that_is_paid_on_some_orders(text, delivered):
    found = freight_of_prices(text)
    assert found is not None
    assert found.delivered is delivered


@pytest.mark.parametrize(
    ("note", "delivered"),
    [
        ("For orders of 8 tonnes or more, delivery is free.", None), ("Full truckloads, we deliver free.", None),
        ("Within 80 miles of our works, delivery is free.", None), ("Delivery free of charge, from 6 tonnes.", None),
        ("Zone A: delivery free. Zone B: 20 EUR/t.", None), ("Sample delivery is free.", None),
        ("Ab 8 t, Lieferung frei.", None), ("Bei Abnahme voller LKW, Lieferung frei.", None),
        ("Ab einem Bestellwert von 3.000 EUR Lieferung frei.", None), ("Innerhalb Hessens Lieferung frei.", None),
        ("Kostenlose Lieferung, sofern volle LKW", None), ("Lieferung frei, Inseln ausgenommen", None),
        ("Lieferung frei, ab 6 t", None), ("Pour toute commande de plus de 6 t, livraison gratuite.", None),
        ("Dès 6 t, livraison gratuite", None), ("Desde 6 t, entrega gratis.", None),
        ("En la península, entrega gratuita.", None), ("Entrega gratuita, a partir de 8 t.", None),
        ("Vid helt lass levereras fritt.", None), ("Inom Skåne levereras fritt.", None),
        ("Delivery free, net 30 days", True), ("Prices in EUR/t, delivery free.", True),
        ("All goods are delivered. Delivery is free.", True), ("Lieferung frei, Zahlung 30 Tage netto", True),
        ("Wir liefern frei.", True), ("La livraison est gratuite.", True), ("La entrega es gratuita.", True),
        ("Alla priser med gratis leverans.", True), ("Lieferung frei; Lieferzeit 3 Wochen", True),
    ],
)  # fmt: skip
def test_free_delivery_of_some_orders_or_places_is_not_in_all_prices(note, delivered):
    assert lines([*ROWS, [note]])["D3"].offer.delivered is delivered


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("For orders of 8 tons or more, free delivery", None), ("Full truckloads, free delivery", None),
        ("Ab 8 t, frei Haus", None), ("Innerhalb Hessens frei Haus", None), ("Frei Haus, ab 6 t", None),
        ("Dès 6 t, franco", None), ("Desde 6 t, portes pagados", None), ("Från 6 ton, fritt levererat", None),
        ("Frei Haus, Inseln ausgenommen", None), ("Vid helt lass fri leverans", None),
        ("EUR/t, ab 6 t, frei Haus", True), ("Prices in USD/ST from 6 tons, delivered", True),
        ("Frei Haus, Mindestmenge 6 t", True), ("Lead time 3 weeks, delivered", True),
        ("Prices are firm for orders entered by November 6, 2026 and include freight", True),
    ],
)  # fmt: skip
def test_a_part_of_its_own_that_bounds_freight(text, delivered):
    found = freight_of_prices(text)
    assert found is not None
    assert found.delivered is delivered


@pytest.mark.parametrize(
    "text",
    [
        "Frei Haus, ab 10 t 2 % Rabatt.", "Preise frei Haus, ab 5 t Lieferzeit 2 Wochen.",
        "Preise frei Haus, ab 20 t pro Jahr Bonus 1 %.", "Franco, à partir de 10 t remise 2 %.",
        "Delivered, truckloads ship in 2 weeks.", "Delivered, lead time for truckloads 2 weeks.",
        "Frei Haus, Samstage ausgenommen.", "Frei Haus, Lieferzeit 3 Wochen, Betriebsferien ausgenommen.",
        "Prices delivered, orders over 5 ST earn 2 % discount", "Delivered within Germany",
        "Innerhalb Deutschlands frei Haus.", "CAD per tonne, delivered within Ontario and Quebec",
        "Delivered, Saturdays and holidays excepted.", "Preise EUR/t frei Haus, Feiertage ausgenommen.",
        "Within Mexico delivered, fuel surcharge $40/ST.", "Preise EUR/t frei Haus, innerhalb Deutschlands.",
        "Frei Haus gegen Vorkasse.", "Delivered, over 20 ST per year 1 % bonus.",
    ],
)  # fmt: skip
def test_a_term_of_its_own_bounds_no_freight(text):
    assert freight_of_prices(text).delivered is True


@pytest.mark.parametrize(
    "text",
    [
        "Frei Haus, ab 10 t.", "Franco, à partir de 10 t", "Delivered, full truckloads only.",
        "Frei Haus, Inseln ausgenommen.", "Innerhalb Bayerns frei Haus.", "Prices delivered, orders over 5 ST.",
        "Prices are USD per short ton delivered, for orders over 10 ST.",
        "Prices USD per short ton delivered, full truckloads.", "Prices USD per short ton delivered, within Ohio.",
        "Preise EUR/t frei Haus, Inseln ausgenommen.", "Preise EUR/t frei Haus, ab 5 t.",
        "Delivered, truckloads of yearly contracts.", "Delivered, holidays and Alaska excepted.",
        "Within Mexico delivered, freight $40/ST elsewhere.", "Frei Haus gegen Nachnahmegebühr.",
    ],
)  # fmt: skip
def test_an_order_size_a_region_or_an_exception_beside_freight_bounds_it(text):
    assert freight_of_prices(text).delivered is None


@pytest.mark.parametrize(
    "text",
    [
        "Muster frei Haus.", "Samples are delivered free.", "Goods delivered damaged should be refused.",
        "Échantillons franco", "Muestras entregadas en destino", "Trailers loaded at our dock are sealed.",
        "Goods are inspected and loaded at our dock.",
    ],
)  # fmt: skip
def test_how_samples_and_damaged_goods_come_and_board_is_loaded_is_said_of_no_price(text):
    assert freight_of_prices(text) is None


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Preise frei Haus, Muster kostenlos", True), ("Samples and orders are delivered free", True),
        ("Free on your truck: loaded on your truck at our dock", False), ("Verladen auf Ihren LKW", False),
        ("Chargé sur votre camion", False), ("Cargado en su camión", False), ("Lastat på er bil", False),
        ("Prices are loaded at our dock.", False), ("Precios sobre su camión", False),
        ("Prices delivered; loaded at our dock by 3 pm.", True),
        ("Prix franco, hayon sur votre camion non compris.", True), ("Prix franco sur votre camion", None),
        ("Precios franco destino; descarga sobre su camión no incluida.", True),
        ("Ware wird frei auf LKW verladen und geliefert.", True), ("Delivered, loaded on your truck", None),
        ("With prices FOB mill we allow 2 % discount for cash.", False),
    ],
)  # fmt: skip
def test_whose_freight_it_is(text, delivered):
    assert freight_of_prices(text).delivered is delivered
