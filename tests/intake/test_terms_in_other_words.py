"""Last days, smallest orders, lead times and delivery in words that vendors use beside the usual ones."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


def offer_below(*texts):
    (line,) = lines([*([text] for text in texts), HEAD, GC1]).values()
    return line.offer


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Quarter 3; these prices lapse on 30 September 2026", date(2026, 9, 30)),
        ("Carriage paid. Offer closes 31/10/2026.", date(2026, 10, 31)),
        ("Prices FOB mill. Ends September 30, 2026. 5-7 weeks.", date(2026, 9, 30)),
        ("Preise frei Haus. Endet am 30.09.2026.", date(2026, 9, 30)),
        ("Delivered prices, EUR per tonne, to end of April 2027", date(2027, 4, 30)),
        ("Fritt kund, priser gäller till och med 31/12 2026, lev. 3 veckor", date(2026, 12, 31)),
        ("Priserna gäller t.o.m. 25/6 2026", date(2026, 6, 25)),
        ("Prix (offre du 12 octobre 2026, valable 30 jours)", date(2026, 11, 11)),
        ("Valid 9/30/2026 - 60 day term", None),
        ("Price list, EUR per tonne, to 1 April 2027", None), ("Our year ends June 30, 2026", None),
        ("Sheets 1/2 2000 per pallet, valid until stocks run out", None),
    ],
)  # fmt: skip
def test_words_before_a_last_day(text, day):
    assert offer_below(text).valid_until == day


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Delivered. Two tonnes is the least we ship.", 2000), ("We supply from 1.000 kg upwards", 1000),
        ("We do not enter orders under 5 tonnes", 5000), ("Preise frei Haus, kleinste Bestellmenge 1,5 t", 1500),
        ("Pas de frais. Plus petite commande 3 t", 3000), ("No aceptamos pedidos de menos de 2 t", 2000),
        ("Free delivery from 5 tonnes", None), ("Two tonnes is what a pallet truck carries", None),
    ],
)  # fmt: skip
def test_words_for_the_smallest_order(text, kg):
    assert offer_below(text).minimum_kg == (None if kg is None else Decimal(kg))


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("Delivered. Allow two weeks from release.", (14, 14)), ("Delivered, euros. Allow 30 days.", (30, 30)),
        ("All weights g/m². Lead 5 to 6 weeks", (35, 42)), ("Delivered prices in euros; 10 to 14 days", (10, 14)),
        ("Départ usine (EXW) - délai 10 à 15 jours - valable jusqu'au 15/09/2026", (10, 15)),
        ("Fritt kund, SEK per ton, lev. 3-4 veckor", (21, 28)),
        ("Prix franco. Prévoir 15 jours.", (15, 15)), ("Preise frei Haus. Bitte 3 Wochen einplanen.", (21, 21)),
        ("Delivered. Allow 14 days for claims.", None),
        ("Delivered prices in euros; 10 days", None), ("Delivered prices in euros; 30 to 60 days", None),
    ],
)  # fmt: skip
def test_words_for_how_long_it_takes(text, days):
    assert offer_below(text).lead_days == days


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Tarifa en EUR, entrega en casa del cliente incluida", True), ("Livraison chez vous comprise", True),
        ("Tarifa en EUR, entrega según acuerdo", None),
    ],
)  # fmt: skip
def test_words_for_delivery_to_the_buyer(text, delivered):
    assert offer_below(text).delivered is delivered


def test_good_to_heads_a_column_of_last_days():
    rows = [[*HEAD, "Good to"], [*GC1, "05/28/2026"], ["GC2", 400, 250, 1050, "06/05/2026"]]
    assert [line.offer.valid_until for line in lines(rows).values()] == [date(2026, 5, 28), date(2026, 6, 5)]


def test_terms_in_line_with_the_vendor_are_the_list_s_and_over_a_price_that_price_s():
    heads = ["Code", "Board", "gsm", "µm", "€ per tonne"]
    letterhead = ["Brindle Board Materials", None, "ex works Cork", "valid until 30 June 2026"]
    (line,) = lines([letterhead, heads, ["X1", *GC1[:1], 300, 450, 1180]]).values()
    assert (line.offer.delivered, line.offer.valid_until) == (False, date(2026, 6, 30))
    grouped = [["Board materials", None, None, "ex works", "delivered"], ["Board", "gsm", "µm", "€/tonne", "€/tonne"]]
    found = lines([*grouped, ["GC1", 300, 450, 1180, 1220]]).values()
    assert [line.offer.delivered for line in found] == [False, True]
