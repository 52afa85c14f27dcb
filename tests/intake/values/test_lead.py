"""Lead times."""

from math import ceil

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.intake.values.times.lead import LeadUnit, lead_text, lead_unit
from tracker.intake.values.times.lead_by_itself import lead_by_itself
from tracker.intake.values.times.lead_sentences import find_lead
from tracker.intake.values.times.lead_unread import lead_unread
from tracker.intake.values.times.validity import validity

WEEKS = [" weeks", " wks", " Wochen", " semaines", " sem.", " semanas", " veckor", " wk"]
DAYS = [" days", " Tage", " jours", " días", " dagar", " calendar days"]
WORKING = [
    " business days",
    " working days",
    " Arbeitstage",
    " Werktage",
    " jours ouvrés",
    " días hábiles",
    " arbetsdagar",
]
counts = st.integers(1, 60)


@given(counts, counts, st.sampled_from(["-", "–", " - ", " to "]), st.sampled_from(WEEKS + DAYS + WORKING))
def test_every_lead_time_reads_back(one, other, between, unit):
    low, high = sorted((one, other))

    def days(count):
        return count * 7 if unit in WEEKS else ceil(count * 7 / 5) if unit in WORKING else count

    found = lead_text(f"{low}{between}{high}{unit}")
    assert found is not None
    assert found.days == (days(low), days(high))
    alone = lead_text(f"{low}{unit}")
    assert alone is not None
    assert alone.days == (days(low), days(low))


@pytest.mark.parametrize(
    "text",
    [
        "stock",
        "ex stock",
        "from stock",
        "ab Lager",
        "sur stock",
        "en stock",
        "i lager",
        "från lager",
        "Ex-Stock",
        "lagernd",
        "sofort",
        "omgående",
        "entrega inmediata",
        "immediate",
    ],
)
def test_from_stock_is_no_wait(text):
    found = lead_text(text)
    assert found is not None
    assert found.days == (0, 0)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("6 weeks ARO", (42, 42)),
        ("approx. 5 weeks", (35, 35)),
        ("ca. 5 Wochen", (35, 35)),
        ("4 weeks after receipt of order", (28, 28)),
        ("10 business days", (14, 14)),
        ("5-7 working days", (7, 10)),
        ("1.5 weeks", (11, 11)),
        ("4 Wochen nach Auftragseingang", (28, 28)),
        ("quince días", (15, 15)),
        ("une à deux semaines", (7, 14)),
        ("3 ó 4 semanas", (21, 28)),
    ],
)
def test_words_around_a_lead_time(text, days):
    found = lead_text(text)
    assert found is not None
    assert found.days == days


@pytest.mark.parametrize(
    "text",
    [
        "",
        "TBA",
        "1 month",
        "2 Monate",
        "6-4 wks",
        "2-3",
        "within 4 weeks",
        "deux livraisons sous 3 semaines",
        "innerhalb 3 Wochen",
        "stock / 4 weeks",
        "call",
        "18 pt",
        "2026-05-04",
        "soon",
        "4 weeks or 10 days",
    ],
)
def test_what_stays_unread(text):
    assert lead_text(text) is None


def test_a_bare_number_takes_its_headers_unit():
    assert lead_text("3", LeadUnit.WEEK).days == (21, 21)
    assert lead_text("3-4", LeadUnit.WEEK).days == (21, 28)
    assert lead_text("10 days", LeadUnit.WEEK).days == (10, 10)
    assert [
        lead_unit(text) for text in ("Lead time (weeks)", "LT, wks", "Lieferzeit (Tage)", "Delivery", "Lead, months")
    ] == [
        LeadUnit.WEEK,
        LeadUnit.WEEK,
        LeadUnit.DAY,
        None,
        None,
    ]


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Minimum order 10,000 lb per item. Lead time 3-4 weeks.", (21, 28)),
        ("Lead time 5 weeks after receipt of order", (35, 35)),
        ("Sheeted stock, prices in GBP. Dispatch 5-7 working days.", (7, 10)),
        ("Lieferzeit: 4 Wochen, Zahlung 30 Tage netto", (28, 28)),
        ("Délai de livraison : 3 semaines", (21, 21)),
        ("Plazo de entrega 10 días hábiles.", (14, 14)),
        ("Leveranstid 5 veckor.", (35, 35)),
        ("Plazo de entrega entre 3 y 4 semanas", (21, 28)),
        ("Nos délais sont de 3 ou 4 semaines, selon la laize", (21, 28)),
        ("Delivery ex stock", (0, 0)),
        ("Currently quoting 6-8 weeks", (42, 56)),
        ("Lead time 4 weeks; lead time 4 weeks", (28, 28)),
    ],
)
def test_lead_times_in_sentences(text, days):
    found = find_lead(text)
    assert found is not None
    assert found.days == days


@pytest.mark.parametrize(
    "text",
    [
        "Payment 30 days net",
        "Prices valid 30 days from 2026-05-04",
        "24 pt on request, allow 45 days.",
        "Lead time: SBS 4 weeks, CUK 6 weeks",
        "Sheeted stock",
        "Lead time on request",
    ],
)
def test_sentences_that_state_no_one_lead_time(text):
    assert find_lead(text) is None


def test_a_lead_time_by_itself_among_the_terms():
    assert lead_by_itself("Proforma 9913, delivered your dock, 6 weeks ARO").days == (42, 42)
    assert lead_by_itself("Price list, GC1, ex stock, EUR per tonne").days == (0, 0)
    for text in (
        "Mill closed, 2 weeks",
        "FOB mill, 30 days",
        "EUR/t delivered, firm, 4 weeks",
        "GC1, stock, EUR per tonne",
        "FOB mill, 3 weeks, 5 weeks",
    ):
        assert lead_by_itself(text) is None


@pytest.mark.parametrize("text", ["week 24", "wk. 24", "KW 24", "w/c 24", "vecka 33", "semana 33", "sem. 33"])
def test_a_week_of_the_calendar_is_no_wait(text):
    assert lead_text(text) is None
    assert lead_text("weeks: 4") is not None


@pytest.mark.parametrize(
    ("text", "stock"),
    [
        ("Lieferung ab Lager Köln", True),
        ("Lieferzeit: Lager", True),
        ("Leverans från lager", True),
        ("Lieferung frei Lager Kunde", False),
        ("Lieferung frei Ihr Lager Hamburg", False),
        ("Leverans till ert lager", False),
        ("Priserna avser leverans fritt vårt lager Örebro", False),
    ],
)
def test_a_store_that_board_goes_to_is_no_stock(text, stock):
    said = find_lead(text)
    assert (said is not None and said.days == (0, 0)) is stock


@pytest.mark.parametrize(
    "text",
    [
        "Order confirmation 2 days after order", "Auftragsbestätigung 2 Tage nach Bestellung",
        "Confirmation de commande 2 jours après commande", "Confirmación de pedido 2 días tras pedido",
        "Orderbekräftelse 2 dagar efter order",
    ],
)  # fmt: skip
def test_when_an_order_is_confirmed_is_no_lead_time(text):
    assert lead_by_itself(text) is None
    assert lead_by_itself("4 weeks from order confirmation") is not None


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Ready 20 working days after order", (28, 28)),
        ("a fortnight", (14, 14)),
        ("une quinzaine", (15, 15)),
        ("una quincena", (15, 15)),
        ("ready", (0, 0)),
        ("1 fortnight", (14, 14)),
        ("3 fortnights", (42, 42)),
        ("two fortnights", (28, 28)),
        ("1 quinzaine", (15, 15)),
        ("deux quinzaines", (30, 30)),
        ("2 quincenas", (30, 30)),
        ("in stock, ready 3 days", (3, 3)),
        ("available from stock", (0, 0)),
    ],
)
def test_times_in_words_and_when_board_is_ready(text, days):
    assert lead_text(text).days == days


def test_how_long_a_price_holds_is_no_second_lead_time():
    assert find_lead("All FOB mill, ships in 3 weeks, good 15 days from 09/21/2026").days == (21, 21)


@pytest.mark.parametrize(
    "text",
    ["Delivery: once a fortnight", "Delivery every fortnight", "Delivery every 2 weeks", "Deliveries each fortnight",
     "Lieferung alle 2 Wochen", "Livraison chaque quinzaine", "Livraison toutes les 3 semaines",
     "Entrega cada quincena", "Leverans varje vecka"],
)  # fmt: skip
def test_how_often_is_no_lead_time(text):
    assert find_lead(text) is None
    assert find_lead("Delivery within a fortnight").days == (14, 14)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Lead time 5 weeks firm", (35, 35)),
        ("Lead time firm 5 weeks", (35, 35)),
        ("Lieferzeit 5 Wochen fest", (35, 35)),
        ("Délai de livraison ferme : 5 semaines", (35, 35)),
        ("Lead time 5 weeks firm until 31 August 2026", None),
    ],
)
def test_a_firm_lead_time_is_one(text, days):
    found = find_lead(text)
    assert (found.days if found is not None else None) == days
    assert (validity(text) is None) == (days is not None)


def test_beside_firm_prices_a_lead_time_is_read_as_well():
    text = "Lead time 5 weeks, prices firm 30 days from 2 June 2026"
    assert find_lead(text).days == (35, 35)
    assert str(validity(text).last_day()) == "2026-07-02"


@pytest.mark.parametrize("text", ["48 hours", "48 Stunden", "48 heures", "48 horas", "48 timmar"])
def test_two_days_told_in_hours(text):
    assert lead_text(text).days == (2, 2)
    assert lead_text("24-48 hours") is None
    assert find_lead("Delivery 24 hours a day") is None


@pytest.mark.parametrize(
    "text",
    ["Shortages to be told within 48 hours of delivery", "Call 2 days before delivery",
     "Order changes up to 3 days before shipment", "Allow 2 days for the board to rest after delivery",
     "Beanstandungen binnen 48 Stunden nach Lieferung", "Avisierung 48 Stunden vor Lieferung",
     "Lieferung 2 Tage vorher avisieren", "Réserves sous 3 jours après la livraison",
     "Livraison sur rendez-vous, préavis 48 heures", "Aviso de entrega con 48 horas",
     "Faltas: 3 días desde la entrega", "Avisering 2 dagar före leverans", "Anmärkning inom 48 timmar efter leverans"],
)  # fmt: skip
def test_a_time_counted_from_delivery_or_told_ahead_of_it_is_no_lead_time(text):
    assert find_lead(text) is None
    assert lead_unread(text) is None


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Lead time 3 weeks, call 2 days before delivery", (21, 21)),
        ("Lieferzeit 4 Wochen, Avis 2 Tage vor Lieferung", (28, 28)),
        ("Lead time 4 weeks prior to shipment", (28, 28)),
        ("Delivery within 48 hours after call-off", (2, 2)),
        ("Livraison sous 48 heures après commande", (2, 2)),
        ("Entrega en 48 horas tras el pedido", (2, 2)),
        ("48 hours from order to delivery", (2, 2)),
    ],
)
def test_beside_it_the_lead_time_stands(text, days):
    assert find_lead(text).days == days
