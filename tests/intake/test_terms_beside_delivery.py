"""Lead times among words for delivery, surcharges in Swedish, and firms behind what their list is called."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


@pytest.mark.parametrize(
    ("head", "cells"),
    [
        ("Lieferung", ("frei Haus, 4 Wochen", "4 Wochen", "KW 34")),
        ("Delivery terms", ("DAP, 4 weeks", "4 weeks", "week 34")),
        ("Leverans", ("fritt levererat, 4 veckor", "4 veckor", "v. 34")),
    ],
)
def test_a_lead_time_beside_delivery_is_read_and_a_week_of_the_calendar_told(head, cells):
    grades = ("GC1", "GC2", "GC3")
    found = lines([[*HEAD, head], *([grade, *GC1[1:], cell] for grade, cell in zip(grades, cells, strict=True))])
    delivered, plain, told = found.values()
    assert (delivered.offer.lead_days, delivered.offer.delivered) == ((28, 28), True)
    assert (plain.offer.lead_days, plain.offer.delivered) == ((28, 28), None)
    assert (told.offer.lead_days, codes(told)) == (None, {"lead-time-unread"})


@pytest.mark.parametrize("note", ["Leverans v. 34", "Lieferung in KW 34", "Delivery: week 34-36", "Livraison sem. 34"])
def test_a_week_of_the_calendar_in_a_note_is_told(note):
    (line,) = lines([[note], HEAD, GC1]).values()
    assert (line.offer.lead_days, codes(line)) == (None, {"lead-time-unread"})


@pytest.mark.parametrize(
    ("terms", "lead", "days", "weeks"),
    [
        ("Terms", "Lead", "30 days", "3 weeks"), ("Konditionen", "Lieferzeit", "30 Tage", "3 Wochen"),
        ("Conditions", "Délai", "30 jours", "3 semaines"), ("Condiciones", "Plazo", "30 días", "3 semanas"),
        ("Villkor", "Leveranstid", "30 dagar", "3 veckor"), ("Zahlbed.", "Lieferzeit", "30 Tage", "3 Wochen"),
    ],
)  # fmt: skip
def test_days_under_terms_are_when_to_pay(terms, lead, days, weeks):
    (line,) = lines([[*HEAD, terms, lead], [*GC1, days, weeks]]).values()
    assert (line.offer.lead_days, codes(line)) == ((21, 21), set())
    (line,) = lines([[*HEAD, terms], [*GC1, days]]).values()
    assert (line.offer.lead_days, codes(line)) == (None, set())
    (line,) = lines([[*HEAD, terms], [*GC1, weeks]]).values()
    assert line.offer.lead_days == (21, 21)


@pytest.mark.parametrize("head", ["Delivery", "Lieferung", "Livraison", "Plazo de entrega", "Leveranstid"])
def test_days_under_delivery_are_how_long_it_takes(head):
    (line,) = lines([[*HEAD, head], [*GC1, "30 days"]]).values()
    assert line.offer.lead_days == (30, 30)


@pytest.mark.parametrize(
    ("head", "terms", "delivered", "collected"),
    [
        ("Price FOB mill EUR/t", "Delivery terms", "Delivered Dayton", "FOB mill"),
        ("Preis ab Werk EUR/t", "Lieferbedingung", "frei Haus Kassel", "ab Werk"),
        ("Prix départ usine EUR/t", "Incoterm", "DAP Lyon", "EXW"),
        ("Precio entregado EUR/t", "Incoterm", "DAP Bilbao", "EXW"),
        ("Pris fritt levererat EUR/t", "Leveransvillkor", "DAP Falun", "fritt fabrik"),
    ],
)
def test_the_rows_own_terms_come_before_the_heads(head, terms, delivered, collected):
    rows = [[*HEAD[:3], head, terms], [*GC1, delivered], ["GC2", *GC1[1:], collected]]
    assert [line.offer.delivered for line in lines(rows).values()] == [True, False]


def test_heads_that_tell_two_prices_apart_come_before_a_cell_about_both():
    rows = [[*HEAD[:3], "FOB mill EUR/t", "Delivered EUR/t", "Terms"], [*GC1, 1150, "FOB mill"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True]


@pytest.mark.parametrize(
    "note",
    [
        "Delivered to customer at cost", "Prices include delivery within 100 miles", "Delivered prices on request",
        "Freight prepaid and charged at cost", "Full freight allowed on truckloads",
        "Lieferung frei Haus im Umkreis von 50 km", "Geliefert gegen Berechnung", "Preise frei Haus auf Anfrage",
        "Livraison franco dans un rayon de 100 km", "Franco aux frais du client",
        "Portes pagados en un radio de 50 km", "Entregado por cuenta del cliente",
        "Fritt levererat inom 50 km", "Fritt levererat mot kostnad",
    ],
)  # fmt: skip
def test_freight_that_is_borne_on_a_condition_leaves_the_delivered_cost_open(note):
    (line,) = lines([[note], HEAD, GC1]).values()
    assert (line.offer.delivered, line.offer.price) == (None, 1100)


@pytest.mark.parametrize(
    "note",
    [
        "Delivered to customer at no cost", "Delivered to your dock in Dayton (45 miles from our mill)",
        "Delivered by our own truck", "Delivered prices, pallets at cost", "Frei Haus ohne Kosten für Sie",
        "Prix franco, autres formats sur demande", "Fritt levererat inom Sverige",
        "Precios entregados, recargo de gasóleo al coste",
    ],
)  # fmt: skip
def test_freight_that_is_borne_is_in_the_price(note):
    (line,) = lines([[note], HEAD, GC1]).values()
    assert line.offer.delivered is True


def test_depart_alone_heads_prices_or_terms_without_freight():
    two = lines([["EUR/t"], [*HEAD[:3], "Départ", "Franco"], [*GC1, 1150]])
    assert [line.offer.delivered for line in two.values()] == [False, True]
    rows = [[*HEAD, "Départ/franco"], [*GC1, "départ"], ["GC2", *GC1[1:], "franco"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True]


@pytest.mark.parametrize(
    ("note", "charge"),
    [
        ("Energitillägg om 3 %", (3, None, None)), ("Tillägg om 300 SEK/ton", (300, "SEK", "tonne")),
        ("Frakttillägg om SEK 250 per ton", (250, "SEK", "tonne")), ("Energitillägg om gaspriset stiger", None),
    ],
)  # fmt: skip
def test_om_before_an_amount_is_no_condition(note, charge):
    (line,) = lines([[note], ["Kvalitet", "µm", "g/m²", "Pris SEK/ton"], ["GC1", 450, 300, 11000]]).values()
    assert [(each.price, each.currency, each.basis) for each in line.offer.charges] == ([charge] if charge else [])


@pytest.mark.parametrize(
    ("titles", "vendor"),
    [
        (["Price list – Marlow Board Mills plc"], "Marlow Board Mills plc"),
        (["Price list 2027 - Marlow Board Mills"], "Marlow Board Mills"),
        (["Preisliste – Kartonhaus Lindmoor GmbH"], "Kartonhaus Lindmoor GmbH"),
        (["Quotation – Larkmoor Foods Inc."], None), (["Price list – Larkmoor Foods Inc."], None),
        (["Marlow Board Mills plc", "Price list – Harrow Board Mills Ltd"], "Marlow Board Mills plc"),
    ],
)  # fmt: skip
def test_the_firm_behind_the_name_of_its_list(titles, vendor):
    (line,) = lines([*([title] for title in titles), HEAD, GC1]).values()
    assert line.offer.vendor == vendor


@pytest.mark.parametrize(
    ("terms", "delivered"),
    [
        ("FCA mill, EUR/t, lead time 7 weeks", False),
        ("DAP Metz, délai 7 semaines", True),
        ("Ready in 3 weeks ex works", True),
        ("Lead time 3 weeks, ex works", True),
    ],
)
def test_a_term_before_the_lead_time_is_of_the_prices(terms, delivered):
    """What stands behind the weeks may say from where they count, where the list says that it is delivered."""
    (line,) = lines([["Prices delivered"], [], [terms], HEAD, GC1]).values()
    assert line.offer.delivered is delivered
