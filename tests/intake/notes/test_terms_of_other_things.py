"""Last days, lead times and smallest orders of something else than the lines of a list are none of theirs."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


def below(*texts):
    (line,) = lines([HEAD, GC1, *([text] for text in texts)]).values()
    return line


@pytest.mark.parametrize(
    ("head", "text", "day"),
    [
        ("Valid", "from 20 November 2026", None), ("Gültig", "ab 01.12.2026", None),
        ("Validité", "à partir du 15 décembre 2026", None), ("Validez", "desde el 15/12/2026", None),
        ("Giltig", "från 2026-12-01", None),
        ("Valid", "30 days from 20 November 2026", date(2026, 12, 20)), ("Gültig",
        "14 Tage ab 20.11.2026", date(2026, 12, 4)),
        ("Validité", "30 jours à compter du 20/11/2026", date(2026, 12, 20)),
        ("Validez", "30 días desde el 20/11/2026", date(2026, 12, 20)), ("Giltig",
        "två veckor från 2026-11-20", date(2026, 12, 4)),
        ("Valid", "20 December 2026", date(2026, 12, 20)), ("Gültig", "bis 20.12.2026", date(2026, 12, 20)),
        ("Validité", "du 20/11/2026 au 20/12/2026", date(2026, 12, 20)), ("Validez",
        "hasta el 20/12/2026", date(2026, 12, 20)),
        ("Giltig", "t.o.m. 2026-12-20", date(2026, 12, 20)),
    ],
)  # fmt: skip
def test_a_first_day_is_no_last_one(head, text, day):
    (in_column,) = lines([[*HEAD, head], [*GC1, text]]).values()
    (in_form,) = lines([["Grade", "GC1 300 g/m² 450 µm"], ["Price", "1100 EUR/tonne"], [head, text]]).values()
    for line in (in_column, in_form):
        assert line.offer.valid_until == day
        assert ("validity-unread" in codes(line)) == (day is None)


@pytest.mark.parametrize(
    "text",
    [
        "FSC certificate valid until 30 June 2028", "Freight rates valid until 31 December 2026",
        "Rebate program valid through 31 December 2026", "FSC-Zertifikat gültig bis 30.06.2028",
        "Gültigkeit des Zertifikats: 30.06.2028", "Frachtsätze gültig bis 31.12.2026",
        "Energiezuschlag gültig bis 31.12.2026", "Validité du certificat FSC : 30/06/2028",
        "Tarifs de transport valables jusqu'au 31/12/2026", "Certificado FSC válido hasta el 30/06/2028",
        "Recargo energético válido hasta el 31/12/2026", "FSC-certifikatet gäller t.o.m. 2028-06-30",
        "Fraktpriserna gäller t.o.m. 2026-12-31",
    ],
)  # fmt: skip
def test_a_last_day_of_something_else(text):
    assert below(text).offer.valid_until is None
    assert below("Valid until 30 September 2027", text).offer.valid_until == date(2027, 9, 30)


@pytest.mark.parametrize(
    "text",
    [
        "FSC certified. Valid until 31 December 2026", "Prices and freight valid until 31 December 2026",
        "Freight prepaid, valid until 31 December 2026", "Preise inkl. Energiezuschlag gültig bis 31.12.2026",
        "Prix franco, transport compris, valables jusqu'au 31/12/2026",
        "Precios con portes incluidos válidos hasta el 31/12/2026", "Priser inkl. frakt gäller t.o.m. 2026-12-31",
    ],
)  # fmt: skip
def test_a_last_day_of_prices_beside_other_things(text):
    assert below(text).offer.valid_until == date(2026, 12, 31)


@pytest.mark.parametrize(
    "text",
    [
        "Fuel surcharge 12 EUR/t, valid until 31 December 2026", "FSC certificate no. 1234, valid until 30 June 2028",
        "FSC-Zertifikat Nr. 1234, gültig bis 30.06.2028", "Certificat FSC n° 1234, valable jusqu'au 30/06/2028",
    ],
)  # fmt: skip
def test_a_last_day_that_may_be_of_something_else_alone(text):
    line = below(text)
    assert line.offer.valid_until is None
    assert "validity-unread" in codes(line)


def test_a_column_of_the_last_days_of_certificates():
    for head in ("Certificate valid until", "Zertifikat gültig bis", "Certifikat giltigt till"):
        (line,) = lines([[*HEAD, head], [*GC1, "30 June 2028"]]).values()
        assert line.offer.valid_until is None


@pytest.mark.parametrize(
    "text",
    [
        "Minimum order 20 t for custom widths", "Mindestmenge für Sonderformate 5 t",
        "Mindestmenge 5 t für Frei-Haus-Lieferung",
        "Sonderanfertigungen: Mindestmenge 10 t, Lieferzeit 6 Wochen", "Minimum de commande pour formats spéciaux 5 t",
        "Pedido mínimo para formatos especiales 5 t", "Minsta order för specialformat 5 t",
        "Minimum order for free delivery 5 t", "Minimum pour livraison franco 5 t",
        "Pedido mínimo para portes pagados 5 t",
        "Minsta order för fraktfri leverans 5 t", "Mindestmenge ab Januar 5 t", "Minimum order 5 t from 1 March 2027",
    ],
)  # fmt: skip
def test_smallest_orders_of_other_orders(text):
    offer = below(text).offer
    assert (offer.minimum_kg, offer.lead_days, offer.delivered) == (None, None, None)
    assert below("Minimum order 2 t", text).offer.minimum_kg == 2000


@pytest.mark.parametrize(
    "text",
    [
        "Lead time for custom sizes 5 weeks", "Expedite charge 50 EUR/t for lead times under 2 weeks",
        "Orders under 2 weeks lead time: +50 EUR/t", "Lieferzeit für Sonderformate 5 Wochen",
        "Eilzuschlag 50 EUR/t bei Lieferung binnen 5 Tagen", "Délai pour formats spéciaux 5 semaines",
        "Supplément urgence 50 EUR/t pour livraison sous 5 jours",
        "Plazo de entrega para formatos especiales 5 semanas",
        "Leveranstid för specialformat 5 veckor", "Expresstillägg 50 EUR/t vid leverans inom 5 dagar",
    ],
)  # fmt: skip
def test_lead_times_of_other_orders(text):
    assert below(text).offer.lead_days is None
    assert below("Lead time 3 weeks", text).offer.lead_days == (21, 21)


@pytest.mark.parametrize(
    ("text", "kg", "days"),
    [
        ("Minimum order 2 t; custom sizes 5 t", 2000, None),
        ("Mindestmenge 2 t, Sonderformate 5 t, Lieferzeit 3 Wochen", 2000, 21),
        ("Délai 3 semaines (formats spéciaux 5 semaines), minimum 2 t", 2000, 21),
        ("Pedido mínimo 2 t, plazo 3 semanas", 2000, 21),
        ("Minimum order 2 t. Standard lead time is 4 weeks, rush orders 2 weeks", 2000, 28),
        ("Minsta order 2 t, fritt levererat", 2000, None), ("Mindestmenge 2 t frei Haus", None, None),
    ],
)  # fmt: skip
def test_terms_beside_those_of_other_orders(text, kg, days):
    offer = below(text).offer
    assert (offer.minimum_kg, offer.lead_days) == (kg, days and (days, days))


def test_columns_of_other_orders():
    (line,) = lines([[*HEAD, "Min. special sizes (t)", "Rush lead time"], [*GC1, 20, "1 week"]]).values()
    assert (line.offer.minimum_kg, line.offer.lead_days) == (None, None)
    (line,) = lines([[*HEAD, "Min. order (t)", "Lead time"], [*GC1, 20, "1 week"]]).values()
    assert (line.offer.minimum_kg, line.offer.lead_days) == (20000, (7, 7))
