"""Dates, and until when prices hold."""

from datetime import date, timedelta

import pytest
from babel.dates import get_month_names
from hypothesis import given
from hypothesis import strategies as st

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.dates import DateOrder, date_order, date_readings, find_dates, ordered
from tracker.intake.values.times.validity import Validity, validity
from tracker.intake.values.times.validity_cell import validity_text

WEEKS = [" weeks", " wks", " Wochen", " semaines", " sem.", " semanas", " veckor", " wk"]


def test_clauses_part_sentences_but_not_dates_and_short_forms():
    assert clauses("Camion de 24 t. Prix en EUR") == ["Camion de 24 t", "Prix en EUR"]
    assert clauses("Valid until 31. Dezember 2026. Payment net 30. Min. order 5 t, ca. 4 wks – FOB mill") == [
        "Valid until 31. Dezember 2026",
        "Payment net 30",
        "Min. order 5 t, ca. 4 wks",
        "FOB mill",
    ]


days_of_a_list = st.dates(date(2000, 1, 1), date(2099, 12, 31))
# Month names from the Unicode locale data that Babel carries: an outside source for the word lists.
ENGLISH, GERMAN, FRENCH, SPANISH, SWEDISH = (
    get_month_names("wide", locale=tag) for tag in ("en", "de", "fr", "es", "sv")
)
WORDED = [
    lambda d: f"{d.day} {ENGLISH[d.month]} {d.year}",
    lambda d: f"{ENGLISH[d.month]} {d.day}, {d.year}",
    lambda d: f"{d.day}-{ENGLISH[d.month][:3]}-{d.year}",
    lambda d: f"{d.day} {ENGLISH[d.month][:3]} {d.year % 100:02d}",
    lambda d: f"{d.day}. {GERMAN[d.month]} {d.year}",
    lambda d: f"{d.day} {FRENCH[d.month]} {d.year}",
    lambda d: f"{d.day} de {SPANISH[d.month]} de {d.year}",
    lambda d: f"{d.day} {SWEDISH[d.month]} {d.year}",
    lambda d: d.isoformat(),
    lambda d: d.strftime("%Y/%m/%d"),
    lambda d: d.strftime("%d.%m.%Y"),
    lambda d: f"{d.day}.{d.month}.{d.year}",
]


@given(days_of_a_list, st.sampled_from(WORDED))
def test_every_unambiguous_date_reads_back(day, write):
    assert date_readings(write(day)) == (day,)
    assert [found.readings for found in find_dates(f"Valid until {write(day)} for all grades")] == [(day,)]


@given(days_of_a_list, st.sampled_from(["%d/%m/%Y", "%m/%d/%Y", "%d-%m-%Y", "%m-%d-%Y"]))
def test_a_date_in_figures_has_each_order_that_is_a_day(day, shape):
    text = day.strftime(shape)
    readings = date_readings(text)
    assert day in readings
    assert len(readings) == (1 if day.day > 12 or day.day == day.month else 2)
    found = find_dates(text)[0]
    order = DateOrder.DAY_FIRST if shape[1] == "d" else DateOrder.MONTH_FIRST
    assert ordered(found, order) == (day,)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "31.02.2026",
        "13/13/2026",
        "1,234",
        "1.234.567",
        "12.5",
        "Price list no. 26-05",
        "GC1 2026",
        "Q4 2026",
        "June 2026",
        "18 pt",
        "4-6 wks",
        "31 oktober / November 2026",
        "1/2",
        "1899-12-30",
    ],
)
def test_what_is_no_date(text):
    assert date_readings(text) == ()


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("end of June 2026", date(2026, 6, 30)),
        ("Ende Juni 2026", date(2026, 6, 30)),
        ("31 oktober / October 2026", date(2026, 10, 31)),
        ("fin février 2028", date(2028, 2, 29)),
        ("end of Q4 2026", date(2026, 12, 31)),
        ("2026-05-04 00:00:00", date(2026, 5, 4)),
    ],
)
def test_the_last_day_of_a_month_or_quarter(text, day):
    assert date_readings(text) == (day,)


def test_the_order_that_a_file_proves():
    assert date_order(["03/04/2026", "Valid until 12/31/2026."]) is DateOrder.MONTH_FIRST
    assert date_order(["03/04/2026", "31/12/2026"]) is DateOrder.DAY_FIRST
    assert date_order(["03/04/2026", "2026-05-04"]) is None
    assert date_order(["31/12/2026", "12/31/2026"]) is None


UNTIL = [
    "valid until {}",
    "Prices valid through {}.",
    "Offer expires {}",
    "gültig bis {}",
    "Gültig bis zum {}",
    "valable jusqu'au {}",
    "Válido hasta el {}",
    "gäller t.o.m. {}",
    "giltig till {}",
    "EUR per tonne delivered, until {}",
    "Prices until {}",
    "Valid for orders received by {}",
    "EUR, DAP, valid until {}. Minimum order 2 t.",
    "USD per short ton, delivered. In effect until {}",
    "Quotation 5512 to Elm Cartons / open for acceptance until {}",
    "An dieses Angebot halten wir uns bis {} gebunden",
    "EUR je Tonne, ab Werk, fix bis {}",
    "Our best for December, DAP Ghent, EUR per tonne, until {}:",
    "Prix fixes jusqu'au {}",
    "Precios fijos hasta el {}",
    "Priserna är fasta till {}",
]


@given(days_of_a_list, st.sampled_from(UNTIL))
def test_valid_until_includes_its_day(day, sentence):
    found = validity(sentence.format(day.strftime("%d.%m.%Y")))
    assert found is not None
    assert found.last_day() == day


@given(days_of_a_list, st.integers(1, 120))
def test_days_count_from_their_date_or_the_lists(day, days):
    stated = validity(f"Prices valid {days} days from {day.isoformat()}")
    assert stated is not None
    assert stated.last_day() == day + timedelta(days=days)
    relative = validity(f"valid {days} days from date of list")
    assert relative is not None
    assert relative.last_day() is None
    assert relative.last_day(list_date=day) == day + timedelta(days=days)


@pytest.mark.parametrize("text", ["validité 31/12/2026", "Franco, validité 31/12/2026", "Lista, vigencia 31-12-2026"])
def test_a_noun_of_validity_labels_its_last_day_without_a_colon(text):
    assert validity(text).last_day(DateOrder.DAY_FIRST) == date(2026, 12, 31)


def test_an_adjective_before_a_date_may_mean_its_first_day():
    assert validity("valable 31/12/2026").unread


def test_a_date_in_figures_waits_for_the_files_order():
    found = validity("Offer valid until 03/04/2026")
    assert found is not None
    assert found.ambiguous
    assert found.last_day() is None
    assert found.last_day(DateOrder.DAY_FIRST) == date(2026, 4, 3)
    assert found.last_day(DateOrder.MONTH_FIRST) == date(2026, 3, 4)


def test_the_order_of_day_and_month_tells_no_year_first_or_last():
    found = validity("Prices valid until 26-10-31")
    assert found.last_day(DateOrder.DAY_FIRST) is None
    assert found.possible_days == (date(2026, 10, 31), date(2031, 10, 26))
    assert found.last_day(DateOrder.DAY_FIRST, date(2026, 7, 15)) == date(2026, 10, 31)
    assert validity("Gültig bis 15-10-26").last_day(DateOrder.DAY_FIRST, date(2026, 7, 15)) == date(2026, 10, 15)


@pytest.mark.parametrize(
    "text",
    [
        "Prices effective 1 July 2026, next review 31 December 2026",
        "Preise gültig ab 1.7.2026, nächste Überprüfung 31.12.2026",
        "Prix valables au 1er juillet 2026, prochaine révision le 31 décembre 2026",
        "Precios vigentes desde el 1 de julio de 2026, próxima revisión 31 de diciembre de 2026",
        "Priserna gäller från 1 juli 2026, nästa översyn 31 december 2026",
    ],
)
def test_the_day_of_the_next_review_is_no_last_day(text):
    assert validity(text).unread


@pytest.mark.parametrize(
    "text",
    [
        "Prices valid until further notice",
        "valid 2 months",
        "Valid: 10/2026",
        "Prices valid for Q4 2026",
        "Gültig: Oktober 2026",
        "Valable octobre 2026",
        "Valid from 1 January 2026 to 31 March",
        "gültig bis auf Widerruf",
        "valid 30 days from receipt of order",
    ],
)
def test_validity_that_gives_no_day_is_unread(text):
    found = validity(text)
    assert found is not None
    assert found.unread
    assert found.last_day(list_date=date(2026, 5, 4)) is None


@pytest.mark.parametrize(
    "text",
    [
        "Valid until:",
        "Prices effective 1 May 2026",
        "Payment 30 days net",
        "SBS C1S",
        "Lead time 4 weeks",
        "Date: 2026-05-04",
        "Mill closed, until 31 August 2026",
        "Shipments in EUR until 31 August 2026 were slow",
        "Tarif au 1er mai 2026, €/t franco",
        "Tarif du 1er mai 2026, €/t franco",
        "Tarif 12, livraisons du 1er mai au 30 juin 2026",
        "Tarifa al 1 de mayo de 2026, €/t",
        "En vigueur : 2026-11-02",
        "Prices effective October 2026",
        "Gültig ab Oktober 2026",
        "Es gelten unsere Bedingungen, Fassung 01/2024.",
    ],
)
def test_texts_that_say_nothing_of_validity(text):
    assert validity(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "Valid Jul 1 - Sep 30, 2026",
        "Valid: 1 July – 30 September 2026", "Prices valid 1 July - 30 September 2026", "Valid 01/07/2026 – 30/09/2026",
        "Gültig 1.7. – 30.9.2026", "Firm through Sept. 30, 2026",
        "Tarif du 1er juillet au 30 septembre 2026", "Precios del 01/07/2026 al 30/09/2026",
        "Preisliste vom 1.7. bis 30.9.2026",
        "Effective July 1, 2026 thru September 30, 2026", "Gäller 2026-07-01 2026-09-30",
        "Tarifa tercer trimestre (del 1 de julio al 30 de septiembre de 2026)",
    ],
)  # fmt: skip
def test_a_span_of_time_ends_on_its_last_day(text):
    (clause,) = clauses(text)
    found = validity(clause)
    assert found is not None
    assert found.last_day(DateOrder.DAY_FIRST, None) == date(2026, 9, 30)


def test_the_first_day_of_the_next_month_is_no_year():
    assert find_dates("valid 1 July - 30 September") == ()
    assert [each.readings for each in find_dates("01-Jul-26")] == [(date(2026, 7, 1),)]


def test_from_one_day_to_another():
    found = validity("Prices valid from 1 May 2026 to 30 June 2026")
    assert found is not None
    assert found.last_day() == date(2026, 6, 30)


@pytest.mark.parametrize(
    "text",
    [
        "Effective 26/04/2026, payment: 1 % 10 days, net 30",
        "Effective 26/04/2026 payment net 30 days",
        "Effective 26/04/2026, shipment: 6 weeks",
        "Gültig ab 01.03.2026, Zahlung 30 Tage netto",
        "Prix applicables au 01/03/2026, paiement 30 jours",
        "vom 2026-04-22. Lieferzeit: 6 Wo. Mindestauftrag 10 t. Es gelten unsere Verkaufsbedingungen.",
    ],
)
def test_days_of_payment_or_delivery_behind_a_beginning_are_no_validity(text):
    assert validity(text) is None


def test_days_of_payment_behind_those_of_validity_leave_it_be():
    assert validity("Valid for 30 days, payment 60 days net").days == 30


def test_validity_cells():
    assert validity_text("31.12.2026").last_day() == date(2026, 12, 31)
    assert validity_text("30 days").last_day(list_date=date(2026, 5, 4)) == date(2026, 6, 3)
    assert validity_text("TBA").unread
    assert validity_text("") is None


@pytest.mark.parametrize("text", ["gültig: 1.10.–31.12.2026", "ab 01.10.2026-31.12.2026", "01.10.-31.12.2026"])
def test_a_hyphen_between_two_days_joins_none(text):
    assert find_dates(text)[-1].readings == (date(2026, 12, 31),)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("This quotation stays open for acceptance for 45 days from its date.", 45),
        ("Offer valid for a fortnight", 14),
        ("Offre valable deux quinzaines", 30),
        ("Offer valid 30 days", 30),
        ("Valid 30 days from acceptance", None),
        ("Ab Erhalt 30 Tage gültig", None),
        ("Lieferzeit 6 Wochen gültig 30 Tage", 30),
    ],
)
def test_days_counted_from_the_list_s_date_or_from_another_event(text, days):
    found = validity(text)
    assert found is not None
    assert (found.days, found.unread) == (days, days is None)


def test_a_firm_lead_time_holds_no_price():
    assert validity("Lead time 4 weeks firm") is None


@pytest.mark.parametrize(
    "text", ["Prices run through October 31, 2026.", "Trade prices from 1 June 2026, holding until October 31, 2026"]
)
def test_prices_that_run_through_or_hold_until_a_day(text):
    assert validity(text).until.readings == (date(2026, 10, 31),)


def test_the_end_of_a_month_in_swedish_is_no_list_that_has_run_out():
    (said,) = [one for one in statements("Giltighet: till utgången av juni 2026") if isinstance(one, Validity)]
    assert said.until.readings == (date(2026, 6, 30),)


@pytest.mark.parametrize(
    ("said", "order"),
    [
        ("Oferta válida hasta el 10/07/2026 (dd/mm/aaaa)", DateOrder.DAY_FIRST),
        ("Valable jusqu'au 10/07/2026 (jj/mm/aaaa)", DateOrder.DAY_FIRST),
        ("Gültig bis 10/07/2026 (TT/MM/JJJJ)", DateOrder.DAY_FIRST),
        ("Giltig till 10/07/2026 (dd/mm/åååå)", DateOrder.DAY_FIRST),
        ("Valid until (mm/dd/yyyy)", DateOrder.MONTH_FIRST),
        ("Valid until 10/07/2026 (dd/mm/yyyy), 07/31/2026", None),
        ("Valid until 10/07/2026", None),
        ("All dates dd/mm/yyyy", DateOrder.DAY_FIRST),
        ("Date format: mm/dd/yyyy", DateOrder.MONTH_FIRST),
        ("(TT.MM.JJJJ)", DateOrder.DAY_FIRST),
        ("Please enter your delivery date as dd/mm/yyyy", None),
        ("Required date (dd/mm/yyyy): ______", None),
        ("Wunschtermin bitte als TT.MM.JJJJ angeben", None),
        ("Date souhaitée (jj/mm/aaaa)", None),
        ("Indique la fecha de entrega (dd/mm/aaaa)", None),
        ("Ange önskat datum (dd/mm/åååå)", None),
        ("Dates in this list are given as dd/mm/yyyy.", DateOrder.DAY_FIRST),
        ("Please note: dates are mm/dd/yyyy", DateOrder.MONTH_FIRST),
        ("Bitte beachten: Datumsangaben TT/MM/JJJJ", DateOrder.DAY_FIRST),
        ("Las fechas de esta tarifa son dd/mm/aaaa", DateOrder.DAY_FIRST),
        ("Date needed dd/mm/yyyy", None),
        ("State the dates you need as dd/mm/yyyy", None),
        ("Please enter your delivery date as dd/mm/yyyy, e.g. 05/06/2026", None),
    ],
)
def test_a_list_may_say_how_its_days_are_written(said, order):
    assert date_order([said]) is order
