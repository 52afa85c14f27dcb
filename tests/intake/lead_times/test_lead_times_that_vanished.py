"""A lead time that may change is one; what is counted in hours, from a payment or with an addition gets a note."""

import pytest

from tests.intake.lead_times.notes import UNREAD, lead_below


@pytest.mark.parametrize(
    "text",
    [
        "Lead time: 3 weeks (subject to change without notice)", "Lead time 3 weeks, subject to change without notice.",
        "Lieferzeit 3 Wochen (Änderungen vorbehalten)", "Délai 3 semaines (sous réserve de modification)",
        "Plazo 3 semanas (sujeto a cambios sin previo aviso)", "Leveranstid 3 veckor (med reservation för ändringar)",
        "Prices subject to change without notice, lead time 3 weeks.", "Delivery 3 weeks, payment 30 days net.",
    ],
)  # fmt: skip
def test_it_may_change(text):
    assert lead_below(text) == (21, 21)


@pytest.mark.parametrize(
    "text",
    [
        "Delivery 10 days after receipt of payment.", "We ship within 24 hours.",
        "Lead time 3 weeks, add 1 week for sheets.", "Lieferung 10 Tage nach Zahlungseingang.",
        "Versand innerhalb von 24 Stunden.", "Lieferzeit 3 Wochen, zuzüglich 1 Woche für Bogen.",
        "Livraison 10 jours après paiement.", "Livraison sous 48 h.", "Livraison 24/48 h.",
        "Délai 3 semaines, ajouter 1 semaine pour les feuilles.", "Entrega 10 días después del pago.",
        "Envío en 24 horas.", "Plazo 3 semanas, añadir 1 semana para hojas.", "Leverans 10 dagar efter betalning.",
        "Leverans inom 24 timmar.", "Leveranstid 3 veckor, lägg till 1 vecka för ark.",
    ],
)  # fmt: skip
def test_it_is_told_and_not_counted(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    "text",
    [
        "Deliveries 8-16 h.", "Delivery 24 hours a day.", "Payment 30 days after delivery.",
        "Call 24 hours before delivery.", "Claims within 24 hours of delivery.", "Livraison 24 h/24.",
        "Lieferung 24 Stunden am Tag.", "Leverans 24 timmar om dygnet.",
    ],
)  # fmt: skip
def test_other_hours_and_days(text):
    assert lead_below(text) is None
