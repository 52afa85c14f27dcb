"""What sentences about deliveries, orders and samples count, which may be a lead time or anything else."""

import pytest

from tests.intake.lead_times.notes import UNREAD, lead_below


@pytest.mark.parametrize(
    "text",
    [
        "Orders 5 weeks before shipment can't be altered.", "Orders 12 days before dispatch are final.",
        "Orders within 5 weeks of shipment are firm.", "Order 5 weeks before delivery to earn $8/ST.",
        "Allow 3 days before delivery.", "Please book 4 days before delivery.",
        "Please allow 5 weeks before delivery for tooling.",
        "Bestellungen 5 Wochen vor Lieferung sind fix.", "Auftrag 3 Tage vor Versand bestätigt",
        "Commande 5 semaines avant livraison non modifiable", "Prévoir 3 jours avant livraison",
        "Pedidos 5 semanas antes de la entrega ya no se cambian", "Order 5 veckor före leverans är bindande",
    ],
)  # fmt: skip
def test_until_when_an_order_may_be_changed_is_no_lead_time(text):
    assert lead_below(text) is None


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Please order 5 weeks before delivery to your plant.", (35, 35)),
        ("Book 5 weeks before shipment.", (35, 35)),
        ("Please order 5 weeks before the required delivery date.", (35, 35)),
        ("Orders 5 weeks before required delivery date.", (35, 35)),
        ("Prévoir 5 semaines avant livraison", (35, 35)),
        ("Pedidos 5 semanas antes de la entrega.", (35, 35)),
    ],
)
def test_when_to_order_is_one(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    "text",
    [
        "Our trucks deliver four days a week.", "We ship three to four days per week.",
        "Wir liefern drei Tage die Woche.", "Nous livrons trois jours par semaine.",
        "Servimos tres días a la semana.", "Vi levererar tre dagar i veckan.",
    ],
)  # fmt: skip
def test_how_often_is_no_lead_time_in_words_either(text):
    assert lead_below(text) is None


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("We ship four days a week, lead time 5 weeks.", (35, 35)),
        ("Lead time 4 days - weekly tours on Monday", (4, 4)),
    ],
)
def test_beside_it_and_before_a_dash_a_lead_time_stands(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("We ship any item in 12 days.", (12, 12)),
        ("We deliver in Ohio and Texas, 5 weeks.", (35, 35)),
        ("We can deliver in most cases in 5 weeks.", (35, 35)),
        ("Wir liefern in der Regel innerhalb von 5 Wochen.", (35, 35)),
        ("We usually ship any item to you in 12 days.", (12, 12)),
        ("Vi levererar i de flesta fall inom 12 dagar.", (12, 12)),
        ("Nous livrons vos commandes sous 12 jours.", (12, 12)),
        ("Servimos sus pedidos en 12 días.", (12, 12)),
        ("Vi levererar er order inom 12 dagar.", (12, 12)),
        ("Wir liefern volle LKW in 12 Tagen.", UNREAD),
        ("We ship some items in 12 days.", UNREAD),
        ("We ship most items in 12 days.", UNREAD),
        ("Wir liefern ganze Ladungen in 12 Tagen.", UNREAD),
        ("Vi levererar de flesta artiklar inom 12 dagar.", UNREAD),
        ("We ship spare cores in 12 days.", UNREAD),
        ("Wir liefern Ersatz innerhalb von 12 Tagen.", UNREAD),
        ("We ship on skids that come back within 12 days.", UNREAD),
        ("We can ship on pallets, 12 days.", UNREAD),
        ("Vi levererar på pallar som ska åter inom 12 dagar", UNREAD),
        ("We ship orders paid within 12 days", UNREAD),
        ("Wir liefern auf Rollen innerhalb 12 Tagen zurück", UNREAD),
    ],
)
def test_a_word_leads_a_verb_to_its_time_over_words_that_change_nothing(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Sample and production lead time 5 weeks.", (35, 35)),
        ("Lead time (from approved sample): 5 weeks", (35, 35)),
        ("Lead time 5 weeks after trials are accepted.", (35, 35)),
        ("Nach Freigabe der Muster Lieferzeit 5 Wochen.", (35, 35)),
        ("Délai après essai concluant : 5 semaines", (35, 35)),
        ("Plazo tras aprobación de muestra: 5 semanas", (35, 35)),
        ("Efter godkänt prov levererar vi inom 5 veckor.", (35, 35)),
        ("Wir liefern Muster in 3 Tagen, Aufträge in 5 Wochen.", UNREAD),
        ("Sample boards are sent from stock, EUR per tonne", None),
        ("From stock, EUR per tonne", (0, 0)),
        ("Sample lead time 3 days", None),
        ("Muster liefern wir in 3 Tagen.", None),
        ("Approved samples are shipped in 3 days.", None),
        ("Sample sheets for approval are shipped in 3 days.", None),
        ("Samples of released items are shipped in 3 days.", None),
        ("Samples are shipped in 3 days and orders confirmed.", None),
        ("Wir liefern Muster zur Genehmigung in 3 Tagen.", None),
        ("Nous livrons les échantillons pour validation sous 3 jours.", None),
        ("Entregamos muestras para su aprobación en 3 días.", None),
        ("Godkända prov levereras inom 3 dagar.", None),
        ("Once your samples are approved, lead time 5 weeks.", (35, 35)),
        ("Ab Freigabe Ihrer Muster liefern wir in 5 Wochen.", (35, 35)),
        ("Muster und Aufträge liefern wir in 5 Wochen.", (35, 35)),
    ],
)
def test_the_time_from_samples_that_please_is_that_of_orders(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Lead time 5 weeks on returnable skids.", (35, 35)),
        ("Delivery 5 weeks cash in advance", (35, 35)),
        ("Lieferzeit: 5 Wochen Teillieferung möglich", (35, 35)),
        ("Livraison 5 semaines avec livraisons partielles", (35, 35)),
        ("Entrega 5 semanas con entregas parciales", (35, 35)),
        ("Leveranstid 5 veckor med delleveranser", (35, 35)),
        ("Delivery 5 weeks after sailing", None),
        ("Lead time 5 weeks after order in several shipments", (35, 35)),
        ("Delivery returns within 5 weeks", None),
        ("Claims on delivery: 5 weeks", None),
        ("Reklamationen bei Lieferung: 5 Wochen", None),
        ("Net prices delivery 5 weeks", (35, 35)),
    ],
)
def test_how_board_comes_stands_behind_its_time_and_another_term_before(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Orders can be cancelled with 3 weeks notice.", None),
        ("Price changes with 3 weeks notice on orders.", None),
        ("Preisänderung mit 3 Wochen Voranmeldung auf Aufträge", None),
        ("Cambio de precios con 3 semanas de preaviso en pedidos.", None),
        ("Pedidos con 3 semanas de antelación", UNREAD),
        ("Lieferung mit 3 Wochen Voranmeldung", UNREAD),
    ],
)
def test_notice_of_a_change_is_none_of_a_delivery(text, lead):
    assert lead_below(text) == lead


@pytest.mark.parametrize("stop", [",", ";"])
def test_what_is_counted_for_payment_of_each_form_is_no_lead_time(stop):
    assert lead_below(f"Payment: rolls 12 days after order{stop} sheets 25 days after order") is None
    assert lead_below(f"Lead time: rolls 12 days after order{stop} sheets 25 days after order") == UNREAD
