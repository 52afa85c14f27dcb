"""What vendors call a lead time, and times of something else."""

import pytest

from tests.intake.readings import offer_below
from tests.intake.sheets import codes, lines
from tracker.intake.values.times.lead import lead_text
from tracker.intake.values.times.lead_by_itself import lead_by_itself


@pytest.mark.parametrize(
    ("text", "days"),
    [("Two weeks, no surcharge of any kind, no minimum.", (14, 14)), ("Zwei Wochen, kein Zuschlag", (14, 14)),
     ("Shipments into the United States, two to three weeks", (14, 21)),
     ("Lieferungen in die Schweiz, zwei bis drei Wochen", (14, 21)), ("Envíos a México, dos a tres semanas", (14, 21)),
     ("Two weeks, prices on request", None), ("Payment for shipments, 8 weeks", None), ("30 days, no discount", None)],
)  # fmt: skip
def test_a_time_stands_among_denied_terms_and_behind_shipments(text, days):
    said = lead_by_itself(text)
    assert (said.days if said is not None else None) == days


@pytest.mark.parametrize("said", ["Lev.tid: 3 veckor", "Liefertermin: 3 Wochen", "Levtid 3 v"])
def test_other_words_for_lead_time(said):
    rows = [["EUR/t"], [said], ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 405, 1320]]
    offer = lines(rows)["D4"].offer
    assert tuple(offer.lead_days) == (21, 21)


def test_when_goods_are_ready_stands_beside_the_words_for_it():
    rows = [
        ["", "Item A", "Item B"],
        ["Board", "SBS, C1S", "CUK"],
        ["Caliper", "18 pt", "21 pt"],
        ["Basis weight, lb per MSF", 77, 88],
        ["PRICE, US$ per cwt", 58.40, 52.75],
        ["Ready to ship", "4 weeks", "stock"],
    ]
    assert [line.offer.lead_days for line in lines(rows).values()] == [(28, 28), (0, 0)]


HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


def lead_beside(*texts):
    (line,) = lines([*([text] for text in texts), HEAD, GC1]).values()
    return line.offer.lead_days, codes(line)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Quote good through January 29, 2027. 4 weeks ARO.", (28, 28)),
        ("Valid until December 31, 2026; ex works; 3-4 weeks", (21, 28)),
        ("Offer valid until 31 January 2027, DAP Malmö, 4 weeks", (28, 28)),
        ("Per tonne. Two weeks from order.", (14, 14)), ("Valid to 31 March 2027; production 5 to 7 weeks", (35, 49)),
        ("Carriage paid UK mainland. Allow 1 working day.", (2, 2)), ("All items 4 weeks. Prices FOB mill.", (28, 28)),
        ("Werk Kassel – FCA, 6 Wochen, Tonne zu 1000 kg", (42, 42)), ("Ab Werk in 10 Arbeitstagen", (14, 14)),
        ("Départ, 3 semaines", (21, 21)), ("Prix rendus, départ sous 5 à 7 jours ouvrés", (7, 10)),
        ("Precios EXW fábrica, 3 semanas", (21, 21)), ("FCA Kartåsen, 6 veckor", (42, 42)),
    ],
)  # fmt: skip
def test_a_time_alone_among_terms_is_the_lead_time(text, days):
    assert lead_beside(text)[0] == days


@pytest.mark.parametrize(
    "text",
    [
        "Prices in USD, 30 days net", "Delivered, 30 days", "Offer valid 4 weeks, DAP Malmö", "Claims within 2 weeks",
        "Storage free for 4 weeks", "Prices hold. 4 weeks notice of changes.", "Zahlung 30 Tage, frei Haus",
        "Paiement 30 jours, franco", "Pago a 30 días, DAP", "Betalning 30 dagar, DAP", "4 weeks",
    ],
)  # fmt: skip
def test_other_times_are_none(text):
    assert lead_beside(text)[0] is None


@pytest.mark.parametrize("text", ["Delivery: Hamburg", "Prices for delivery in Q1 2027", "Delivery terms: DAP"])
def test_other_words_of_delivery_name_none(text):
    assert "lead-time-unread" not in lead_beside(text)[1]


@pytest.mark.parametrize("unit", ["arbetsdagar", "working days", "Arbeitstage"])
def test_the_unit_below_delivery_counts_its_figures(unit):
    head = [["Sort", "Tjocklek", "Ytvikt", "Pris", "Leverans"], ["", "µm", "g/m²", "EUR/ton", unit]]
    (line,) = lines([*head, [*GC1, 10]]).values()
    assert line.offer.lead_days == (14, 14)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("SBS C1S 16 pt, 67 lb/MSF, 44 in rolls - $1,228.00 per short ton, 4 weeks", (28, 28)),
        ("GC1 230 g/m², 372 µm, Rolle 640 mm: 1.195,00 EUR je Tonne, Lieferzeit 5 Wochen", (35, 35)),
        ("CCNB 20 pt, 77 lb/MSF, 36 in rolls - $46.10 per cwt, from stock", (0, 0)),
    ],
)
def test_a_line_of_text_may_name_its_own(text, days):
    (line,) = lines([["All numbers delivered."], [text]]).values()
    assert line.offer.lead_days == days


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Plazo de entrga 4/5 semanas", (28, 35)),
        ("EXW, plazo 3 / 4 semanas", (21, 28)),
        ("Lieferung in 4/6 Wochen", (28, 42)),
        ("Delivery between 4 & 5 weeks", None),
        ("Lead time rolls/sheets 3 weeks", (21, 21)),
        ("Lead time 24/7 days", None),
    ],
)
def test_a_stroke_between_two_figures_makes_a_range_and_never_the_second_half_alone(text, days):
    assert lead_beside(text)[0] == days


@pytest.mark.parametrize(
    "text", ["3–4 viikkoa / weeks", "3-4 viikkoa (weeks)", "3 - 4 týdny / Wochen", "3-4 weken/semaines"]
)
def test_a_unit_of_time_may_stand_behind_the_same_in_a_language_of_no_list(text):
    said = lead_text(text)
    assert (said.low, said.high) == (21, 28)


@pytest.mark.parametrize(
    "text",
    [
        "3–4 viikkoa",
        "3-4 viikkoa / pallets",
        "3-4 months / weeks",
        "3 weeks / days",
        "2 trucks / week",
        "40 tonnes / week",
    ],
)
def test_but_not_beside_no_unit_or_another_one(text):
    assert lead_text(text) is None


def test_how_often_a_mill_runs_is_no_lead_time():
    assert [lead_text(text) for text in ("1 run / week", "2 dispatches / week", "3 trips (week)")] == [None] * 3
    assert lead_text("3-4 viikkoa / weeks").days == (21, 28)


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


def offer(note):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [note]]).values()
    return line.offer


@pytest.mark.parametrize(
    ("note", "days"),
    [
        ("Make & ship 4 to 5 weeks", (28, 35)), ("Transit and make: 3 weeks", (21, 21)),
        ("Ship three weeks from order.", (21, 21)), ("Fertigungszeit 4–5 Wochen", (28, 35)),
        ("We ship 2 reels a pallet", None),
    ],
)  # fmt: skip
def test_lead_times(note, days):
    assert offer(note).lead_days == days


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Delivered. Allow two weeks from release.", (14, 14)), ("Delivered, euros. Allow 30 days.", (30, 30)),
        ("All weights g/m². Lead 5 to 6 weeks", (35, 42)), ("Delivered prices in euros; 10 to 14 days", (10, 14)),
        ("Départ usine (EXW) - délai 10 à 15 jours - valable jusqu'au 15/09/2026", (10, 15)),
        ("Fritt kund, EUR per ton, lev. 3-4 veckor", (21, 28)),
        ("Prix franco. Prévoir 15 jours.", (15, 15)), ("Preise frei Haus. Bitte 3 Wochen einplanen.", (21, 21)),
        ("Delivered. Allow 14 days for claims.", None),
        ("Delivered prices in euros; 10 days", None), ("Delivered prices in euros; 30 to 60 days", None),
    ],
)  # fmt: skip
def test_words_for_how_long_it_takes(text, days):
    assert offer_below(text).lead_days == days


TONNES = ["Grade", "µm", "g/m²", "EUR/tonne"]


@pytest.mark.parametrize(
    ("title", "weeks"),
    [
        ("EUR per tonne – make-up 4/5 weeks", (28, 35)),
        ("EUR per tonne – 3 weeks from order entry", (21, 21)),
        ("EUR per tonne – make-up charges extra", None),
    ],
)
def test_lead_times_in_a_makers_words(title, weeks):
    (line,) = lines([[title], TONNES, GC1]).values()
    assert line.offer.lead_days == weeks


@pytest.mark.parametrize(
    ("text", "days"),
    [("Shown both ways. ARO 28 days.", (28, 28)), ("28 days after receipt of order", (28, 28)),
     ("28 Tage nach Auftragseingang", (28, 28)), ("28 jours après réception de commande", (28, 28)),
     ("28 días desde la recepción del pedido", (28, 28)), ("28 dagar efter order", (28, 28)),
     ("Both ways. 28 days.", None), ("28 days after invoice", None), ("Pay 28 days after receipt of order", None)],
)  # fmt: skip
def test_days_from_an_order_are_none_to_pay_in(text, days):
    said = lead_by_itself(text)
    assert (said.days if said is not None else None) == days


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("We deliver within 3 weeks.", (21, 21)), ("Wir liefern in 4 Wochen.", (28, 28)),
        ("Geliefert wird binnen 3 Wochen", (21, 21)), ("Nous expédions sous 3 semaines", (21, 21)),
        ("Surtimos en 4 semanas. Tipo de cambio de ayer: 18.4275", (28, 28)), ("Entregamos en 15 días", (15, 15)),
        ("Vi levererar inom 4 veckor", (28, 28)), ("Stock disponible de suite", (0, 0)),
        ("Stock available immediately", (0, 0)), ("Wir liefern ab 3 Paletten", None), ("Surtimos en rollos", None),
        ("Vi levererar 3 kvaliteter", None),
    ],
)  # fmt: skip
def test_what_the_vendor_does_within_a_time_is_a_lead_time(said, days):
    rows = [[said], [], ["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 240, 405, 1320]]
    assert lines(rows)["D4"].offer.lead_days == days


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("Ships 2 weeks after approval, delivered Zone 1 at no charge.", (14, 14)), ("Ships in 10 AT", (14, 14)),
        ("Lieferzeit 15 AT", (21, 21)), ("Ships 2 weeks after approval, dock 2 at your cost", (14, 14)),
    ],
)  # fmt: skip
def test_working_days_are_no_english_at(said, days):
    rows = [[said], [], ["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 240, 405, 1320]]
    assert lines(rows)["D4"].offer.lead_days == days


def test_a_french_inventory_is_stock():
    rows = [["Carton", "g/m²", "µm", "EUR/tonne", "Délai"], ["GC1", 240, 405, 1320, "en inventaire"]]
    assert lines(rows)["D2"].offer.lead_days == (0, 0)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("2 to 3 weeks on all of it. Carriage is ours.", (14, 21)), ("3 Wochen für alles. Preise je t.", (21, 21)),
        ("Ex mill. Made in 10 days.", (10, 10)), ("Fabriqué en 3 semaines.", (21, 21)),
        ("Fabricado en 12 días.", (12, 12)), ("Tillverkas inom 4 veckor.", (28, 28)),
        ("2 to 3 weeks on some of it. Carriage is ours.", None), ("Made in two grades.", None),
        ("Made in Germany.", None), ("Fabriqué en France.", None),
    ],
)  # fmt: skip
def test_how_long_all_of_it_takes_and_what_it_is_made_in(text, days):
    (line,) = lines([[text], [], ["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 240, 405, 1320]]).values()
    assert (str(line.state), line.offer.lead_days) == ("accepted", days)


def test_when_a_buyer_may_expect_board_is_a_time_unless_it_is_a_day():
    head = ["Board", "g/m²", "µm", "EUR/tonne", "ETA buyer"]
    weeks, day = lines([head, ["GC1", 240, 380, 1290, "5 weeks"], ["GC2", 275, 450, 1210, "12 July"]]).values()
    assert (weeks.offer.lead_days, day.offer.lead_days) == ((35, 35), None)
    assert str(day.state) == "accepted"


BOARD = [["Grade", "Caliper (µm)", "Weight (g/m²)", "Price EUR/tonne"], ["GC1", 440, 280, 1187], []]


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Wir liefern auf Einwegpaletten, Abholung binnen 20 Tagen", None),
        ("Wir liefern gegen Vorkasse, 14 Tage", None), ("Wir liefern an 2 Tagen pro Woche", None),
        ("Wir liefern Muster in 3 Tagen", None),
        ("Direkt ab Werk.", None), ("Direkt ab Werk, frei Haus.", None), ("Direkt ab Lager lieferbar", (0, 0)),
        ("We deliver in your area 2 days a week.", None), ("We ship 4 days a week.", None),
        ("Board made in Finland, 30 days", None), ("Trials: made in 2 weeks", None),
        ("Nous livrons à 30 jours", None), ("Nous livrons 2 jours par semaine", None),
        ("Servimos sobre palets, devolución en 20 días", None), ("Servimos a 30 días", None),
        ("Entregamos a crédito, 30 días", None), ("Vi levererar 3 dagar i veckan", None),
        ("Levereras på pall som returneras inom 20 dagar", None), ("Vi levererar prover inom 3 dagar", None),
        ("Wir liefern in 5 Wochen", (35, 35)), ("Wir liefern frei Haus innerhalb 12 Tagen", (12, 12)),
        ("Wir liefern derzeit in ca. 5 Wochen", (35, 35)), ("Entregamos en su fábrica en 5 semanas", (35, 35)),
        ("Wir liefern frei Haus, 5 Wochen", (35, 35)), ("We deliver in 12 days.", (12, 12)),
        ("We can ship in 5 weeks", (35, 35)), ("Board made in 5 weeks", (35, 35)),
        ("Nous livrons sous 5 semaines", (35, 35)), ("Servimos en 5 semanas", (35, 35)),
        ("Levereras inom 5 veckor", (35, 35)), ("Lead time 5 weeks, samples 3 days", (35, 35)),
        ("Lead time 5 weeks, trucks leave 2 days a week", (35, 35)),
    ],
)  # fmt: skip
def test_a_verb_of_sending_speaks_of_the_time_right_behind_it(text, lead):
    assert lines([*BOARD, [text]])["D2"].offer.lead_days == lead


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Please order 5 weeks before delivery.", (35, 35)),
        ("Orders must be placed 5 weeks prior to shipment.", (35, 35)),
        ("Allow 5 weeks before shipment.", (35, 35)), ("Order at least 20 days ahead of shipment", (20, 20)),
        ("Bestelleingang 5 Wochen vor Lieferung", (35, 35)), ("Bestellung bitte 5 Wochen vor Liefertermin", (35, 35)),
        ("Commander 5 semaines avant livraison", (35, 35)), ("Hacer el pedido 5 semanas antes de la entrega", (35, 35)),
        ("Beställning 5 veckor före leverans", (35, 35)), ("Lieferung in 5 Wochen nach Anmeldung", (35, 35)),
        ("Livraison sous 5 semaines sur avis", (35, 35)),
        ("Order changes up to 2 weeks before shipment", None),
        ("Orders cannot be changed 10 days before shipment", None),
        ("Lieferung mit Avis 24 Stunden vorher, 5 Wochen", (35, 35)),
        ("Call 2 days before delivery", None), ("Avis 2 Tage vor Lieferung", None),
        ("Allow 3 days for the rolls to rest after delivery", None), ("Stornierung 10 Tage vor Lieferung", None),
        ("Préavis 48 heures avant livraison", None), ("Avisar 2 días antes de la entrega", None),
        ("Avisering 2 dagar före leverans", None),
    ],
)  # fmt: skip
def test_when_to_order_is_the_lead_time_and_when_to_call_is_none(text, lead):
    assert lines([*BOARD, [text]])["D2"].offer.lead_days == lead


@pytest.mark.parametrize(
    "text",
    [
        "Entrega con 5 semanas de antelación", "Pedido con 5 semanas de antelación",
        "Livraison 5 semaines avec préavis de 48 heures",
    ],
)  # fmt: skip
def test_weeks_of_notice_are_told(text):
    line = lines([*BOARD, [text]])["D2"]
    assert line.offer.lead_days is None
    assert "lead-time-unread" in codes(line)


@pytest.mark.parametrize(
    ("text", "lead"),
    [
        ("Two weeks to ship", (14, 14)), ("(4) Two weeks to ship. Last year we shipped 18,400 tons.", (14, 14)),
        ("Production 4 to 5 weeks out", (28, 35)), ("Ex works, Lfz. 4-5 Wo.", (28, 35)),
        ("Good thru 31 March 2027 - 3 wks", (21, 21)), ("DAP - gültig bis 31.03.2027 - 4 Wochen", (28, 28)),
        ("validité : 31/03/2027 - fabrication 4 semaines", (28, 28)),
        ("válido hasta 31/03/2027 - fabricación 4 semanas", (28, 28)), ("gäller t.o.m. 2027-03-31, 3 veckor", (21, 21)),
        ("DAP, 10 - 12 weeks", (70, 84)), ("valid to 31.03.27 - 4 - 6 weeks", (28, 42)),
    ],
)  # fmt: skip
def test_times_beside_last_days_and_words_for_leaving(text, lead):
    assert lines([*BOARD, [text]])["D2"].offer.lead_days == lead


@pytest.mark.parametrize("text", ["Two weeks to ship. Four weeks to make", "3 weeks to ship, sheets 5 weeks"])
def test_several_times_of_leaving_are_none(text):
    assert lines([*BOARD, [text]])["D2"].offer.lead_days is None


@pytest.mark.parametrize("head", ["Wks out", "Weeks out"])
def test_weeks_out_are_a_column_of_lead_times(head):
    found = lines([["Grade", "µm", "g/m²", "EUR/tonne", head], ["GC1", 430, 290, 1201, 4], ["GD2", 430, 320, 871, 2]])
    assert [line.offer.lead_days for line in found.values()] == [(28, 28), (14, 14)]


@pytest.mark.parametrize(
    "head", ["Liefzt.", "Lfzt.", "Del. weeks", "Del.\nweeks", "Lev. tid", "dél. livr.", "pzo. entrega", "Weeks", "Wo."]
)
def test_heads_cut_short_stand_over_weeks(head):
    rows = [
        ["Board", "g/m²", "µm", "Price", head],
        [None, None, None, "EUR/t", "weeks"],
        ["GC1", 240, 405, 1320, "4-5"],
    ]
    (line,) = lines(rows).values()
    assert line.offer.lead_days == (28, 35)


@pytest.mark.parametrize("head", ["Wochen", "semaines", "semanas", "veckor", "weeks"])
def test_weeks_alone_over_figures_are_the_lead_time(head):
    (line,) = lines([["Board", "g/m²", "µm", "EUR/t", head], ["GC1", 240, 405, 1320, 3]]).values()
    assert line.offer.lead_days == (21, 21)
