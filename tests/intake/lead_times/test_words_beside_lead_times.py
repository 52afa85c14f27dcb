"""Words that say no more than how, whence and how surely goods come leave a lead time read; any other word leaves a
person to read it."""

import pytest

from tests.intake.lead_times.notes import UNREAD, lead_below


@pytest.mark.parametrize(
    "text",
    [
        "Delivery by rail in 5 weeks.", "Delivery possible in 5 weeks.",
        "Delivery takes place within 5 weeks of order.",
        "Deliveries are being quoted at 5 weeks.", "Delivery is an estimate: 5 weeks.",
        "Delivery of call-offs in 5 weeks.",
        "Lead time at this time five weeks, ex mill.",
        "Estimated ship time 5 weeks.",
        "Lead time 5 weeks due to the rebuild of our winder.", "Lead time 5 weeks unless otherwise stated.",
        "Delivery anywhere in the US in 5 weeks.", "Lead time 5 weeks and not less than 3 t of an item.",
        "Auslieferung erfolgt in der Regel binnen 5 Wochen.", "Lieferung i.d.R. in 5 Wochen.",
        "Lieferung kann in 5 Wochen erfolgen.",
        "Lieferung 5 Wochen nach Abruf.", "Lieferung per Bahn in 5 Wochen.",
        "Die Lieferzeit liegt momentan bei 5 Wochen.",
        "Bitte rechnen Sie mit einer Lieferzeit von 5 Wochen.", "Lieferzeit 5 Wochen wegen hoher Auslastung.",
        "Livraison assurée sous 5 semaines.", "La livraison est effectuée sous 5 semaines.",
        "Livraison par nos camions sous 5 semaines.",
        "Nos délais sont actuellement de 5 semaines environ.", "Délai : 5 semaines à réception du bon de commande",
        "Entrega prevista en 5 semanas.", "La entrega se hace en 5 semanas.", "Entrega con camión propio en 5 semanas.",
        "El plazo es de 5 semanas y el pedido mínimo, de 3 toneladas.", "Plazo de entrga 5 semanas.",
        "Leverans beräknas till 5 veckor.", "Leverans kan ske inom 5 veckor.", "Leverans med lastbil inom 5 veckor.",
        "Leveranstiden brukar vara 5 veckor.",
    ],
)  # fmt: skip
def test_what_goes_without_saying(text):
    assert lead_below(text) == (35, 35)


@pytest.mark.parametrize(
    "text",
    [
        "All orders to ship within 40 days.", "Availability guaranteed for 40 days.",
        "Delivery confirmation within 3 days.",
        "Delivery confirmation, 3 days.", "Lead time for dies 5 weeks.",
        "Delivery +/- 4 days.", "Delivery not before 5 weeks.", "Deliveries take 5 weeks and may be late.",
        "Delivery window 5 to 6 weeks.", "If it is in our shed, lead time 4 days.",
        "Lead time 5 weeks, late orders 7 weeks.",
        "Prices for delivery within 40 days.", "Standing orders: delivery within 15 weeks.",
        "Lieferzeit verlängert sich um 2 Wochen.", "Lieferung nicht vor 5 Wochen.",
        "Lieferzeit garantiert für 40 Tage.",
        "Papiers de livraison sous 4 jours.", "Livraison du lundi au vendredi sous 9 jours.",
        "Entrega de planos en 4 días.", "Leveranstiden förlängs med 2 veckor.", "Leverans av verktyg inom 5 veckor.",
    ],
)  # fmt: skip
def test_what_more_is_told_leaves_it_unread(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Prices valid for shipment within 40 days.", "Prices firm for delivery within 40 days.",
        "Precios válidos para entregas en 7 semanas.", "Priserna gäller för leverans inom 7 veckor.",
        "Preise gültig für Lieferung innerhalb von 7 Wochen.",
    ],
)  # fmt: skip
def test_what_prices_hold_for_is_none(text):
    assert lead_below(text) is None


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Delivery papers within 3 days. Lead time 5 weeks.", (35, 35)),
        ("Delivery papers within 3 days. Delivery 5 weeks.", UNREAD),
        ("Reels have a lead time of five weeks; grey board is in stock and ships at once.", UNREAD),
        ("Net prices delivered lead time 5 weeks.", (35, 35)),
        ("Over 500 gsm on request (lead time 5 weeks).", UNREAD),
        ("Note 2: Lead time 5 weeks.", (35, 35)),
        ("Both suppliers: lead time 5 weeks.", (35, 35)),
    ],
)
def test_a_time_that_is_not_read_leaves_only_one_that_is_called_a_lead_time(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("We need 5 weeks from your order.", (35, 35)),
        ("We need the reel sizes 6 days after your order.", None),
        ("Wir benötigen 5 Wochen nach Bestellung.", (35, 35)),
        ("Wir benötigen die Maße 6 Tage nach Bestellung.", None),
        ("Il nous faut environ 5 semaines après commande.", (35, 35)),
        ("Il nous faut les laizes 6 jours après commande.", None),
        ("Everything is on our floor.", (0, 0)),
        ("Todo está en estantería y se entrega en el acto.", (0, 0)),
        ("Everything is on our floor plan.", None),
    ],
)
def test_what_is_needed_and_where_all_is_are_told_at_once(text, lead):
    assert lead_below(text) == lead
