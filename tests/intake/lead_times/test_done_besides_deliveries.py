"""What sentences about deliveries count that is done besides: claims, bookings, samples, stops, holidays; and the lead
times that stand beside them."""

import pytest

from tests.intake.lead_times.notes import UNREAD, lead_below


@pytest.mark.parametrize(
    "text",
    [
        "Damage seen at delivery must be reported within 4 days.", "Delivery damage: tell us within 4 days.",
        "Fehlmengen einer Lieferung sind binnen 4 Tagen anzuzeigen.",
        "Lieferung bitte prüfen, Mängel binnen 6 Tagen melden.",
        "Les manquants à la livraison doivent être signalés sous 4 jours.",
        "Daños en la entrega: comunicar en 4 días.", "Skador på leverans ska anmälas inom 6 dagar.",
    ],
)  # fmt: skip
def test_until_when_damage_is_reported(text):
    assert lead_below(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "Morning deliveries are booked 3 working days ahead.",
        "Livraisons sur rendez-vous à réserver 3 jours à l'avance.", "Entregas con cita se reservan tres días antes.",
        "Orders for delivery the same day must reach us by nine.",
    ],
)  # fmt: skip
def test_when_a_delivery_is_booked(text):
    assert lead_below(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "Beyond 45 days overdue, deliveries are suspended.", "Ab 45 Tagen Verzug stoppen wir die Lieferung.",
        "Au-delà de 45 jours de retard, plus de livraison.", "Con más de 45 días de atraso se suspenden las entregas.",
        "Vid mer än 45 dagars dröjsmål stoppas leveranser.", "No deliveries for three weeks in summer.",
        "Während der Betriebsferien 3 Wochen keine Lieferung.", "Pas de livraison pendant 2 semaines en août.",
        "Sin entregas durante 3 semanas en agosto.", "Inga leveranser under 3 veckor i juli.",
        "Cores are taken back with the next delivery within 45 days.", "Replacement delivery within 12 days.",
        "La entrega puede retrasarse 2 semanas.", "Delivery notes are kept for 12 days.",
    ],
)  # fmt: skip
def test_why_deliveries_stop_or_what_comes_with_them(text):
    assert lead_below(text) is None


@pytest.mark.parametrize(
    "text", ["Objections to a shipment are heard for 12 days.", "Die Lieferung muss 2 Tage im Saal stehen."]
)
def test_a_time_among_unknown_words_about_a_delivery_is_told(text):
    assert lead_below(text) == UNREAD


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Delivery 4 weeks after confirmed order.", (28, 28)),
        ("Delivery within 5 days of your order.", (5, 5)),
        ("Claims within 6 days, delivery 3 weeks.", (21, 21)),
        ("Confirmed lead time 4 weeks.", (28, 28)),
        ("Lead time 4 weeks; no deliveries for two weeks in August.", (28, 28)),
        ("Lieferzeit 4 Wochen. Inventur: 2 Tage kein Versand.", (28, 28)),
        ("Livraison sous 3 semaines, réserves à la réception.", (21, 21)),
        ("Entrega en 3 semanas, cita previa.", (21, 21)),
        ("Leverans inom 3 veckor, bokas av oss.", (21, 21)),
        ("Leveransen tar tre veckor.", (21, 21)),
        ("Allow six weeks for delivery", (42, 42)),
        ("Shipment follows in two to three weeks", (14, 21)),
    ],
)
def test_a_lead_time_beside_stands(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Handmuster kostenlos, Versand binnen 4 Tagen.", UNREAD),
        ("Muster sind kostenlos, sie gehen noch am selben Tag ab Lager.", None),
        ("Prover gratis, leverans inom 4 dagar.", UNREAD),
        ("Muster gratis, ab Lager lieferbar.", UNREAD),
        ("Muster gratis, Versand per Post.", None),
        ("Muster kostenlos, Lieferzeit 4 Wochen.", (28, 28)),
        ("Muster kostenlos, Lieferung 4 Wochen nach Bestellung.", (28, 28)),
        ("Samples free, lead time 4 weeks", (28, 28)),
        ("Échantillons gratuits, délai 4 semaines.", (28, 28)),
        ("Muestras gratis, plazo de entrega 4 semanas.", (28, 28)),
        ("Prover gratis, leveranstid 4 veckor.", (28, 28)),
    ],
)
def test_a_sentence_that_begins_with_samples_is_about_them(text, lead):
    assert lead_below(text) == lead
