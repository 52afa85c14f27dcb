"""Last days that a list counts from its own date, or names by orders and by the end of a month."""

from datetime import date

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.intake.values.times.validity import validity
from tracker.trade.offer import Answers

HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


def until(*texts):
    (line,) = lines([["Price book of 4 May 2026"], HEAD, GC1, [], *([text] for text in texts)]).values()
    return line.offer.valid_until


@pytest.mark.parametrize(
    "text",
    [
        "Good for orders received no later than 31 July 2026.",
        "Prices are for orders placed on or before 31 July 2026, and no others.",
        "These prices hold for orders entered with us by July 31, 2026.",
        "Die Preise gelten für Bestellungen, eingehend spätestens am 31.7.2026.",
        "Nos prix s'entendent pour toute commande remise avant le 31 juillet 2026 inclus.",
        "Estos precios se aplican a los pedidos recibidos a más tardar el 31 de julio de 2026.",
        "Priserna gäller för order som inkommer senast 2026-07-31.",
        "Preise Juli 2026, gültig bis Monatsende",
        "Prices July 2026, good to month end, DAP",
        "Tarif juillet 2026, valable jusqu'à la fin du mois",
    ],
)
def test_the_last_day_of_orders_or_of_the_month_named(text):
    assert until(text) == date(2026, 7, 31)


@pytest.mark.parametrize(
    "text",
    [
        "These prices expire 40 days after the date of this price book.",
        "Our offer lapses 40 days from its date.", "Das Angebot erlischt 40 Tage nach Ausstellung.",
        "Les prix expirent 40 jours après la date du présent tarif.", "La oferta caduca a los 40 días de su fecha.",
        "Priserna upphör att gälla 40 dagar efter listans datum.",
    ],
)  # fmt: skip
def test_so_many_days_after_the_date_of_the_list(text):
    assert until(text) == date(2026, 6, 13)


@pytest.mark.parametrize(
    "text",
    [
        "Claims lapse 40 days after delivery.", "Your order lapses 40 days after our confirmation.",
        "Prices expire 40 days after the next index is published.", "Prices expire 40 days after your order.",
        "Orders received no later than 31 July 2026 ship in August.", "Certificates end 40 days after this list.",
        "Gutschriften verfallen 40 Tage nach Ausstellung.", "Payment at the end of the month, July 2026 prices.",
        "Prices valid until the end of the month.", "Board is good for 3 months in store.",
    ],
)  # fmt: skip
def test_what_else_ends_says_nothing_of_the_list(text):
    assert until(text) is None


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Offre du 15 juillet 2026, valable trois mois.", date(2026, 10, 15)),
        ("Angebot vom 31.8.2026, gültig 1 Monat", date(2026, 9, 30)),
        ("Offert 2026-06-03, giltig 2 månader", date(2026, 8, 3)),
    ],
)
def test_months_from_the_day_of_an_offer(text, day):
    assert validity(text).last_day() == day


@pytest.mark.parametrize(
    "text",
    ["Prices valid 3 months from 1 July 2026", "Prices firm 6 months", "Offer of 3 June 2026, good 1 month or 20 days"],
)
def test_months_from_another_day_are_not_certain(text):
    assert validity(text).last_day(list_date=date(2026, 5, 4)) is None


def test_weeks_of_rolls_behind_the_last_day_of_an_offer_end_nothing():
    rows = [["Sheets"], HEAD, GC1, [], ["Offer valid until 31 July 2026. Sheets from stock, rolls about 3 weeks."]]
    (line,) = lines([["Offer, 4 May 2026"], *rows]).values()
    assert (line.offer.valid_until, line.offer.lead_days) == (date(2026, 7, 31), (0, 0))


def test_the_day_of_a_superseded_list_on_another_sheet_is_not_this_lists():
    now = grid([["Price book of 4 May 2026"], ["Prices expire 40 days after the date of this list."], HEAD, GC1], "Now")
    old = grid([["SUPERSEDED - price book of 3 November 2025"], HEAD, ["GC1", 450, 300, 1000]], "2025")
    offers = [line.offer for line in read_workbook(book(now, old), Answers()).lines if line.offer.source.sheet == "Now"]
    assert [offer.valid_until for offer in offers] == [date(2026, 6, 13)]


@pytest.mark.parametrize(
    "text",
    [
        "Prices July 2026, valid until the end of the month after.",
        "July 2026: prices good to month end of shipment.",
        "Preise Juli 2026, gültig bis Monatsende des Folgemonats.",
        "Offer good to month end, delivery in July 2026.",
        "Tarif juillet 2026, valable jusqu'à la fin du mois suivant.",
        "Prices good to month end for July 2026 orders.",
        "Precios julio 2026, válidos hasta fin de mes siguiente.",
        "Lieferung Juli 2026, Preise gültig bis Monatsende.",
        "Priser juli 2026, giltiga till månadens slut efter leverans.",
    ],
)
def test_the_end_of_another_month_or_the_month_of_something_else_is_told(text):
    said = validity(text)
    assert (said.unread, said.last_day(list_date=date(2026, 5, 4))) == (True, None)


@pytest.mark.parametrize(
    "text",
    [
        "Replaces our offer of 5 January 2026, valid 2 months.",
        "Supersedes price list of 5 January 2026, valid 40 days",
        "Referring to our offer of 5 January 2026, valid 2 months.",
        "Price list as of 5 July 2026, valid 2 months",
        "Ersetzt unsere Preisliste vom 05.01.2026, gültig 2 Monate.",
        "Preisliste ab 05.07.2026, gültig 2 Monate",
        "Annule et remplace notre tarif du 5 janvier 2026, valable 2 mois.",
        "Tarif dès le 5 juillet 2026, valable 2 mois",
        "Sustituye nuestra tarifa del 5 de enero de 2026, válida 2 meses",
        "Ersätter prislista 5 januari 2026, giltig 2 månader",
    ],
)
def test_nothing_is_counted_from_another_list_or_from_when_prices_begin(text):
    said = validity(text)
    assert (said.unread, said.last_day(list_date=date(2026, 5, 4))) == (True, None)


@pytest.mark.parametrize(
    "text",
    [
        "Our offer no. 417 of 5 July 2026 is valid two months",
        "Angebot Nr. 417/26 vom 05.07.2026, gültig 2 Monate",
        "Offre n° 417 du 5 juillet 2026, valable 2 mois",
        "Oferta de fecha 5 de julio de 2026, válida 2 meses",
        "Offer of 5 July 2026, valid 2 months, replaces our offer of May",
    ],
)
def test_a_number_may_stand_between_a_list_and_its_day(text):
    assert validity(text).last_day() == date(2026, 9, 5)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Prices are for orders paid within 20 days.", None),
        ("Prices apply to orders paid within 20 days.", None),
        ("Les prix s'entendent pour toute commande payable à 20 jours.", None),
        ("Los precios se aplican a pedidos servidos en 20 días.", None),
        ("Die Preise gelten für Aufträge mit 20 Tagen Zahlungsziel.", None),
        ("Prices are valid for orders placed within 20 days.", date(2026, 5, 24)),
        ("Preise gelten für Bestellungen innerhalb von 20 Tagen", date(2026, 5, 24)),
    ],
)
def test_the_days_of_orders_are_not_those_of_prices(text, day):
    assert until(text) == day


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Lieferzeit 1 bis 2 Wochen, Bindefrist 30.06.2026", date(2026, 6, 30)),
        ("Lieferzeit 1 bis 2 Wochen", None),
    ],
)
def test_the_last_day_beside_weeks_that_run_to_others(text, day):
    assert until(text) == day


@pytest.mark.parametrize(
    "text",
    [
        "This offer is valid for 45 days from the date above, and the minimum per order is 1,000 kg.",
        "This offer is valid for 45 days, minimum order 1,000 kg.",
        "Das Angebot gilt 45 Tage ab obigem Datum, und die Mindestmenge je Auftrag beträgt 1 t.",
        "Offre valable 45 jours à compter de la date ci-dessus, et le minimum par commande est de 1 t.",
        "Oferta válida 45 días desde la fecha indicada, y el mínimo por pedido es de 1 t.",
        "Offerten gäller i 45 dagar från ovanstående datum, och minsta order är 1 ton.",
    ],
)
def test_the_smallest_order_beside_changes_nothing(text):
    assert until(text) == date(2026, 6, 18)


@pytest.mark.parametrize(
    "text",
    ["Valid for 45 days, minimum 5 t, from receipt of order.", "Valid for 45 days from receipt of an order of 5 t."],
)
def test_days_from_an_order_are_not_counted_from_the_list(text):
    assert until(text) is None
