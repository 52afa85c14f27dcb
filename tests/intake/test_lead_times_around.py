"""Lead times that no word leads to, boards sold from stock, and times that can't be counted."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.lead import LeadTime
from tracker.intake.values.statements import statements

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


@pytest.mark.parametrize(
    "text",
    [
        "Small lots from stock, pence per sheet", "Warehouse stock, prices in EUR", "FOB our warehouse. Stock rolls.",
        "All items ex stock - week 47", "FOB our floor. Ready to ship (stock). First come first served.",
        "Abholpreise ab Lager (EXW) in Euro", "Lagerware, frei Haus",
        "Cartons disponibles sur stock, franco de port", "Material en existencias, EXW fábrica",
        "Lagerförda ark, från lager (EXW)",
    ],
)  # fmt: skip
def test_a_list_of_boards_from_stock(text):
    assert lead_beside(text)[0] == (0, 0)


@pytest.mark.parametrize(
    "text",
    [
        "Folding carton stock, EUR/t", "Stock sheets, € per tonne, delivered", "Preise ab Lager Kassel (EXW)",
        "24 pt from stock, delivered", "We hold 3,000 t in stock in Hamburg, EUR/t", "Not in stock, FOB mill",
        "Some sizes from stock, EUR/t", "GC1 ab Lager, EUR/t", "Vissa format från lager, EUR/ton",
    ],
)  # fmt: skip
def test_other_stocks_are_no_lead_time(text):
    assert lead_beside(text)[0] is None


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 4 weeks, sheets 6 weeks", "Lead time 4 weeks; 2 weeks from stock", "Lead time 3 months",
        "Standard lead time is 4 weeks, for some 2 weeks", "Lead times will be longer than 4 weeks in August",
        "Lieferzeit Rollen 4 Wochen, Bogen 6 Wochen", "Lieferzeit auf Anfrage", "Lead time: call",
        "Délai bobines 3 semaines, formats 5 semaines", "Plazo bobinas 3 semanas, hojas 5 semanas",
        "Entrega: según disponibilidad", "Leveranstid rulle 3 veckor, ark 5 veckor",
        "Leveranstid enligt överenskommelse",
    ],
)  # fmt: skip
def test_a_lead_time_that_can_not_be_counted_is_told(text):
    assert lead_beside(text) == (None, {"lead-time-unread"})


@pytest.mark.parametrize("text", ["Delivery: Hamburg", "Prices for delivery in Q1 2027", "Delivery terms: DAP"])
def test_other_words_of_delivery_name_none(text):
    assert "lead-time-unread" not in lead_beside(text)[1]


@pytest.mark.parametrize(
    "text",
    [
        "Lead time: GC1 4 weeks, all others 6 weeks", "Lieferzeit: GC1 4 Wochen, übrige 6 Wochen",
        "Délai : GC1 4 semaines, autres 6 semaines", "Plazo: GC1 4 semanas, resto 6 semanas",
        "Leveranstid: GC1 4 veckor, övriga 6 veckor",
    ],
)  # fmt: skip
def test_what_is_said_of_all_others_holds_for_the_grades_not_named(text):
    assert [said.grades for said in statements(text) if isinstance(said, LeadTime)] == [("FBB",), ()]
    named, other = lines([[text], HEAD, GC1, ["GD2", *GC1[1:]]]).values()
    assert (named.offer.lead_days, other.offer.lead_days) == ((28, 28), (42, 42))


@pytest.mark.parametrize(
    ("head", "cells"),
    [
        ("Stock status", ("In stock", "Ships in 10 days")), ("Stock", ("Stock", "10 days")),
        ("Bestand", ("ab Lager", "10 Tage")), ("Stock", ("sur stock", "10 jours")),
    ],
)  # fmt: skip
def test_a_column_of_stock_may_say_how_soon(head, cells):
    now, later = lines([[*HEAD, head], [*GC1, cells[0]], ["GC2", *GC1[1:], cells[1]]]).values()
    assert (now.offer.lead_days, later.offer.lead_days) == ((0, 0), (10, 10))


def test_a_column_of_tons_in_stock_says_nothing_of_time():
    (line,) = lines([[*HEAD, "Stock t"], [*GC1, 14]]).values()
    assert line.offer.lead_days is None


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


def test_a_line_of_text_may_name_its_smallest_order():
    rows = [["All FOB mill, minimum order 10,000 lb."], ["SBS C1S 16 pt, 67 lb/MSF - $1,228.00 per short ton"]]
    rows += [["CCNB 18 pt, 71 lb/MSF - $42.15 per cwt, 40,000 lb min"]]
    found = [line.offer.minimum_kg for line in lines(rows).values()]
    assert [round(least) for least in found] == [4536, 18144]


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
