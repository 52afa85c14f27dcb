"""A time in which one is told, or a confirmation comes, or goods are on the road or wait, is no lead time."""

import pytest

from tests.intake.lead_times.notes import BOARD, UNREAD, lead_below
from tests.intake.sheets import lines


@pytest.mark.parametrize(
    "text",
    [
        "Delivery to be confirmed within 2 days.", "Lead time to be confirmed in 2 days.", "Delivery quoted in 2 days.",
        "Lead time will be given within 2 days of order.", "Delivery time given 3 days after order.",
        "Delivery date given 2 days after receipt of order.", "Delivery time to be advised by us within 2 days.",
        "Delivery dates are confirmed within 3 days.", "Delivery schedule will follow in 3 days.",
        "Lieferzeit wird in 2 Tagen genannt.", "Liefertermin wird 2 Tage nach Auftragseingang bestätigt.",
        "Liefertermine bestätigen wir in 3 Tagen.", "Die Lieferzeit wird Ihnen binnen 2 Tagen mitgeteilt.",
        "Date de livraison donnée sous 2 jours.", "Délai confirmé sous 3 jours.", "Délai à confirmer sous 2 jours.",
        "El plazo se confirma en 3 días.", "Plazo de entrega confirmado dentro de 2 días.",
        "Leveranstid bekräftas inom 3 dagar.", "Leveranstiden meddelas inom 2 dagar.",
        "Lead time will be given 3 weeks after order.", "Delivery date confirmed 3 weeks after receipt of order.",
        "Delivery quoted within 3 weeks from order.", "Die Lieferzeit wird 3 Wochen nach Auftragseingang mitgeteilt.",
        "Liefertermin 3 Wochen nach Auftragseingang bestätigt.", "Date de livraison donnée 3 semaines après commande.",
        "El plazo se indica 3 semanas después del pedido.", "Fecha de entrega indicada 3 semanas después del pedido.",
        "Leveranstid bekräftas 3 veckor efter order.",
    ],
)  # fmt: skip
def test_when_one_is_told_is_no_lead_time(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Lead time quoted at 5 weeks.", "Delivery given as 5 weeks.", "Confirmed lead time 5 weeks.",
        "Delivery 5 weeks after the order is confirmed.", "Confirmed orders ship within 5 weeks.",
        "Lead time to be confirmed, currently 5 weeks.", "Lead time quoted: 5 weeks.", "Delivery follows in 5 weeks.",
        "Bestätigte Lieferzeit 5 Wochen.", "Lead time quoted 5 weeks after receipt of order.",
        "Lead time fixed 5 weeks after order.", "Delivery time given 5 weeks after order.",
        "Delivery quoted 5 weeks from order.", "Lieferzeit 5 Wochen ab Auftragsbestätigung genannt.",
        "Délai indiqué 5 semaines après commande.", "Plazo indicado 5 semanas después del pedido.",
        "Leveranstid angiven 5 veckor efter order.",
        "Lieferzeit 5 Wochen nach Auftragsbestätigung.",
        "Délai confirmé : 5 semaines.", "Livraison 5 semaines après confirmation de la commande.",
        "Plazo confirmado: 5 semanas.", "Entrega 5 semanas después de la confirmación del pedido.",
        "Bekräftad leveranstid 5 veckor.", "Leverans 5 veckor efter orderbekräftelse.",
    ],
)  # fmt: skip
def test_a_time_that_is_told_and_one_after_the_confirmation(text):
    assert lead_below(text) == (35, 35)


@pytest.mark.parametrize(
    "text",
    [
        "Shipment held 3 days.", "Deliveries held 5 days at your works.", "Deliveries are committed through 6 weeks.",
        "Delivery by air in 5 days, at extra cost.", "Call-off deliveries 2 days.", "Lieferung auf Abruf 2 Tage.",
        "Lieferung auf Abruf innerhalb von 5 Wochen.", "Livraison sur appel 2 jours.",
        "Leverans på avrop inom 5 veckor.",
        "Shipment from our mill to your dock takes 2 days.", "Delivery from mill to warehouse 2 days.",
        "Die Lieferung vom Werk zu Ihnen dauert 2 Tage.", "La livraison de notre usine à votre usine prend 2 jours.",
        "La entrega desde nuestra fábrica hasta su almacén tarda 2 días.",
        "Leverans från vårt bruk till er tar 2 dagar.",
    ],
)  # fmt: skip
def test_how_long_goods_wait_or_travel_is_no_lead_time(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Shipment from our mill takes 5 weeks.", "Delivery to your dock in 5 weeks.", "Lead time held at 5 weeks.",
        "Die Lieferung zu Ihnen dauert 5 Wochen.", "Livraison à votre usine sous 5 semaines.",
        "Entrega en su almacén: 5 semanas.", "Leverans till er fabrik inom 5 veckor.",
    ],
)  # fmt: skip
def test_one_end_of_the_road_leaves_the_lead_time(text):
    assert lead_below(text) == (35, 35)


@pytest.mark.parametrize(
    "text",
    [
        "Order confirmation in 2 days, delivered to your dock.", "Auftragsbestätigung in 2 Tagen, Lieferung frei Haus.",
        "Confirmation sous 2 jours, livraison franco.", "Confirmación del pedido en 2 días, entrega franco destino.",
        "Orderbekräftelse inom 2 dagar, fritt levererat.",
    ],
)  # fmt: skip
def test_freight_behind_the_time_of_a_confirmation_is_that_of_the_prices(text):
    offer = lines([*BOARD, [text]])["D2"].offer
    assert (offer.lead_days, offer.delivered) == (None, True)


@pytest.mark.parametrize(
    "text", ["Order acknowledgement within 2 days, delivery to follow.", "Confirmation sous 2 jours."]
)
def test_a_confirmation_alone_gives_nothing(text):
    assert lead_below(text) is None


def test_when_days_are_told_leaves_the_lead_time_beside_it():
    assert lead_below("Lead time 3 weeks. Delivery dates are confirmed within 3 days.") == (21, 21)
