"""Times that a sentence counts from the order, and what else is counted from one."""

import pytest

from tests.intake.lead_times.notes import lead_below
from tests.intake.sheets import codes, lines
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.lead import LeadTime
from tracker.intake.values.times.lead_from_order import is_from_order

HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


def lead_beside(text):
    (line,) = lines([HEAD, GC1, [], [text]]).values()
    return line.offer.lead_days


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Our board leaves the mill 12 working days after we receive your order.", (17, 17)),
        ("Good packing. We deliver two weeks after the order.", (14, 14)),
        ("Ready for collection 8 days after your order, loading by us.", (8, 8)),
        ("Ware wird 3 bis 4 Wochen nach Auftragseingang bereitgestellt.", (21, 28)),
        ("Die Ware verlässt unser Werk 10 Tage nach Eingang Ihrer Bestellung.", (10, 10)),
        ("Marchandise remise au transporteur six jours après réception de la commande.", (6, 6)),
        ("Les cartons quittent notre usine 4 semaines après votre commande.", (28, 28)),
        ("La mercancía sale de nuestra fábrica quince días después de recibir su pedido.", (15, 15)),
        ("Godset lämnar bruket tre veckor efter order.", (21, 21)),
        ("Die Ware verlässt unser Werk 10 Tage nach Bestätigung Ihres Auftrags.", (10, 10)),
        ("Varorna lämnar bruket 5 dagar efter mottagande av er order.", (5, 5)),
        ("Varorna är klara för avhämtning 5 dagar efter beställning.", (5, 5)),
        ("Shipments six to eight weeks after order", (42, 56)),
        ("Shipped 3 weeks from order", (21, 21)),
        ("Versand 3 Wochen nach Auftragseingang", (21, 21)),
        ("Expéditions 3 semaines après commande", (21, 21)),
        ("Envíos 3 semanas después del pedido", (21, 21)),
        ("Leveranser 3 veckor efter order", (21, 21)),
    ],
)
def test_the_goods_leave_so_long_after_the_order(text, days):
    assert lead_beside(text) == days


@pytest.mark.parametrize(
    "text",
    [
        "A deposit is due 10 days after your order.", "Proofs are ready 5 days after order.",
        "Goods may be returned 10 days after order.", "Orders may be cancelled up to 5 days after your order.",
        "If we hold it, we deliver 3 days after order.", "We deliver 3 days after order except in August.",
        "Orders over 20 t leave our mill 5 weeks after your order.", "In 2025 we delivered 5 weeks after the order.",
        "We shipped 5 weeks after the order.", "We delivered 5 weeks after the order.",
        "We deliver and invoice 5 days after order.",
        "Die Auftragsbestätigung wird 2 Tage nach Bestellung versandt.",
        "Muster werden 3 Tage nach Bestellung versandt.", "Anzahlung 14 Tage nach Auftragsbestätigung.",
        "Les mandrins sont enlevés 5 jours après la commande.", "La fianza se devuelve 20 días después del pedido.",
        "Ordern kan ändras 5 dagar efter order.", "We deliver 1 or 2 weeks after order, sheets 4 weeks after order.",
    ],
)  # fmt: skip
def test_nothing_else_counted_from_an_order_is_a_lead_time(text):
    assert lead_beside(text) is None


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Sheets from stock, £ per tonne. Delivered on our vans; 2 days after order.", [(2, 2)]),
        ("Sheets from stock, £ per tonne. Delivered on our vans.", [(0, 0)]),
        ("Prices in £ per tonne. Delivered on our vans; 20 days.", []),
    ],
)
def test_a_time_counted_from_the_order_stands_by_itself(text, days):
    assert [said.days for said in statements(text) if isinstance(said, LeadTime)] == days


@pytest.mark.parametrize(
    "note", ["Rollenware wird 14 Tage nach Auftragseingang bereitgestellt.", "Rollenware liefern wir in 14 Tagen."]
)
def test_what_is_said_of_rolls_holds_for_no_table_of_sheets(note):
    head, row = ["Sorte", "g/m²", "µm", "EUR/t"], ["GD2", 280, 360, 812]
    found = lines([["Karton, ab Werk"], ["I. Rollenware"], head, row, [], ["II. Formatware"], head, row, [], [note]])
    assert [line.offer.lead_days for line in found.values()] == [(14, 14), None]


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("All lots are FOB our Hull warehouse and can be picked up right away.", (0, 0)),
        ("Die Ware kann sofort abgeholt werden.", (0, 0)),
        ("Varorna kan hämtas omgående.", (0, 0)),
        ("Samples can be shipped right away.", None),
        ("Claims are settled by us and can be shipped right away.", None),
        ("Board is ready at once if the mill has run.", None),
        ("Orders are confirmed immediately.", None),
        ("Some lots can be picked up right away.", None),
    ],
)
def test_goods_that_leave_at_once(text, days):
    assert lead_beside(text) == days


@pytest.mark.parametrize(
    "text",
    [
        "Goods are shipped immediately, sheets 12 days.", "Stock items are shipped at once, mill items in 5 weeks.",
        "Stock items are shipped at once.", "Stock items leave our mill 3 days after order.",
        "Rolls leave our mill 12 days after order, sheets 15 days after order.",
        "Ware wird umgehend verschickt, Formate in 3 Wochen", "Lagerware wird sofort versandt.",
        "Marchandise disponible de suite, formats 3 semaines", "Los pedidos se envían en el acto, hojas en 12 días",
        "Lagervaror skickas genast, övriga inom 5 veckor.", "Stock items leave us 3 days after order. Makings 5 weeks.",
    ],
)  # fmt: skip
def test_goods_that_leave_so_beside_others_or_from_stock_are_told(text):
    (line,) = lines([HEAD, GC1, [], [text]]).values()
    assert (line.offer.lead_days, "lead-time-unread" in codes(line)) == (None, True)


def test_where_the_list_is_of_stock_its_time_is_that_of_all():
    note = ["Stock items leave our mill 3 days after order."]
    (line,) = lines([["Stock list, prices ex store"], HEAD, GC1, [], note]).values()
    assert line.offer.lead_days == (3, 3)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Unsere Ware wird ab sofort frei Haus geliefert.", None),
        ("Alle Artikel sind ab sofort abholbereit.", (0, 0)),
        ("Wir liefern ab sofort frei Haus.", None),
        ("Lieferung sofort", (0, 0)),
        ("Lots disponibles de suite en stock", (0, 0)),
        ("Alla varor levereras direkt från bruket.", None),
        ("Varorna levereras direkt.", (0, 0)),
        ("Leverans direkt från bruket", None),
        ("Goods are shipped immediately, payment 30 days.", (0, 0)),
    ],
)
def test_from_now_on_and_from_where_are_not_at_once(text, days):
    assert lead_beside(text) == days


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("10 días tras la confirmación de su pedido", True),
        ("10 días a partir de la orden de compra", True),
        ("10 jours après réception de votre commande", True),
        ("10 jours à compter de la commande", True),
        ("30 % à la commande", False),
        ("10 días de la fecha de factura", False),
        ("10 jours fin de mois", False),
    ],
)
def test_words_for_after_and_for_the_order_are_joined(text, days):
    assert is_from_order(text) is days


@pytest.mark.parametrize(
    "note",
    [
        "Allow 3 weeks from your written order.", "Rechnen Sie mit 3 Wochen nach Auftragseingang.",
        "Comptez 3 semaines après réception de la commande.", "Calculen 3 semanas desde la recepción del pedido.",
        "Räkna med 3 veckor från order.",
    ],
)  # fmt: skip
def test_a_time_that_buyers_are_told_to_allow_is_the_lead_time(note):
    assert lead_below(note) == (21, 21)


@pytest.mark.parametrize(
    "note",
    [
        "Allow 3 weeks from your order for samples.", "Allow 10 days from your order for the credit check.",
        "Please allow 30 days after order for payment.", "Rechnen Sie mit 3 Wochen nach Auftragseingang für Muster.",
    ],
)  # fmt: skip
def test_a_time_to_allow_for_something_else_is_none(note):
    assert lead_below(note) is None
