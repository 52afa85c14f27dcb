"""Terms of delivery in vendors' words: in titles, over two prices, in the row, and what is none."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.readings import accepted, by_cell, offer_below, read_rows
from tests.intake.sheets import lines
from tracker.intake.values.freight.delivery import find_delivery


def test_terms_over_figures_head_prices_of_their_own():
    head = ["Product", "GSM", "Micron", "EXW mill", "FCA port", "CIF Laredo", "DDP Toluca"]
    reading = read_rows([["USD per metric tonne"], [], head, ["GC2 FBB", 250, 420, 905, 940, 1010, 1085]])
    delivered = {cell: line.offer.delivered for cell, line in by_cell(reading).items()}
    assert len(accepted(reading)) == 4
    assert delivered == {"D4": False, "E4": False, "F4": None, "G4": True}
    assert {line.offer.vendor for line in reading.lines} == {None}


@pytest.mark.parametrize("head", ["Kondition", "Konditionen", "Terms"])
def test_terms_of_delivery_below_a_loose_word_are_read(head):
    rows = [["Sorte", "g/m²", "EUR/t", head], ["GC2", 250, 1098, "ab Werk"], ["GC2", 300, 1098, "frei Haus"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True]


HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]
OLD = [["GD2", 300, 390, 803], ["GC2", 270, 435, 1104]]


@pytest.mark.parametrize(
    ("terms", "delivered"),
    [
        ("Prix franco départ usine (FAB usine)", False),
        ("Prix franco départ", False),
        ("Prix franco usine client", True),
        ("Franco usine du client", True),
        ("FAB destination", True),
    ],
)
def test_franco_from_the_mill_and_franco_to_the_buyer(terms, delivered):
    found = lines([[terms], HEAD, *OLD])
    assert {line.offer.delivered for line in found.values()} == {delivered}


def test_terms_over_a_whole_table_name_none_of_its_columns():
    left, right = ["Board", "Cal. (pt)", "lb/MSF", "US$/ST"], ["Quality", "µm", "g/m²", "US$/MT"]
    terms = ["FOB warehouse, lead time 10 days", *[None] * 4, "Delivered duty paid, lead time 8 weeks"]
    rows = [["SBS C1S", 16, 67, 1215, None, "GC1", 410, 255, 1088], ["URB", 24, 86, 712, None, "GD2", 400, 300, 836]]
    found = lines([terms, [*left, None, *right], *rows])
    assert {cell: line.offer.price for cell, line in found.items()} == {"D3": 1215, "D4": 712, "I3": 1088, "I4": 836}


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize(
    ("title", "basis", "delivered"),
    [
        ("Prix en $ CA les cent livres", "cwt", None),
        ("Prix en $ CA les 100 livres, F.A.B. usine", "cwt", False),
        ("Prix livrés, $ CA la tonne métrique", "tonne", True),
        ("Prix en $ CA par millier de pieds carrés, livré", "msf", True),
        ("Precio en USD por quintal de 100 libras, LAB Hermosillo", "cwt", False),
        ("USD por millar de pies cuadrados, L.A.B. su bodega", "msf", True),
    ],
)
def test_pounds_feet_and_delivery_in_a_title(title, basis, delivered):
    price = 1155.5 if basis == "tonne" else 55.5
    found = offer([[title], [], ["Grade", "Cal. pt", "lb/MSF", "Prix"], ["SBS C1S", 18, 76, price]], "D4")
    assert (found.price, found.basis, found.delivered) == (Decimal(str(price)), basis, delivered)


@pytest.mark.parametrize(
    "text", ["Volumes livrés en 2025 : 3 480 t", "Volume delivered in 2025: 3,480 t", "Levererad volym 2025: 3 480 t"]
)
def test_what_was_bought_is_no_term_of_delivery(text):
    assert find_delivery(text) is None
    assert find_delivery("Prix livrés").delivered
    assert find_delivery("Prices delivered").delivered


def test_departure_beside_a_unit_is_a_term_and_beside_a_day_a_date():
    assert find_delivery("€/t départ").delivered is False
    assert find_delivery("Départ lundi") is None
    assert find_delivery("€/t départ lundi") is None


EURO_HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


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
    rows = [[*EURO_HEAD[:3], head, terms], [*GC1, delivered], ["GC2", *GC1[1:], collected]]
    assert [line.offer.delivered for line in lines(rows).values()] == [True, False]


def test_heads_that_tell_two_prices_apart_come_before_a_cell_about_both():
    rows = [[*EURO_HEAD[:3], "FOB mill EUR/t", "Delivered EUR/t", "Terms"], [*GC1, 1150, "FOB mill"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True]


def test_depart_alone_heads_prices_or_terms_without_freight():
    two = lines([["EUR/t"], [*EURO_HEAD[:3], "Départ", "Franco"], [*GC1, 1150]])
    assert [line.offer.delivered for line in two.values()] == [False, True]
    rows = [[*EURO_HEAD, "Départ/franco"], [*GC1, "départ"], ["GC2", *GC1[1:], "franco"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [False, True]


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
    (line,) = lines([["Prices delivered"], [], [terms], EURO_HEAD, GC1]).values()
    assert line.offer.delivered is delivered


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Tarifa en EUR, entrega en casa del cliente incluida", True), ("Livraison chez vous comprise", True),
        ("Tarifa en EUR, entrega según acuerdo", None),
    ],
)  # fmt: skip
def test_words_for_delivery_to_the_buyer(text, delivered):
    assert offer_below(text).delivered is delivered


def test_terms_in_line_with_the_vendor_are_the_list_s_and_over_a_price_that_price_s():
    heads = ["Code", "Board", "gsm", "µm", "€ per tonne"]
    letterhead = ["Brindle Board Materials", None, "ex works Cork", "valid until 30 June 2026"]
    (line,) = lines([letterhead, heads, ["X1", *GC1[:1], 300, 450, 1180]]).values()
    assert (line.offer.delivered, line.offer.valid_until) == (False, date(2026, 6, 30))
    grouped = [["Board materials", None, None, "ex works", "delivered"], ["Board", "gsm", "µm", "€/tonne", "€/tonne"]]
    found = lines([*grouped, ["GC1", 300, 450, 1180, 1220]]).values()
    assert [line.offer.delivered for line in found] == [False, True]


@pytest.mark.parametrize(
    ("said", "delivered"),
    [
        ("Samtliga anbud fritt vår fabrik", True),
        ("All bids FOB our plant", True),
        ("All bids ex our plant", False),
        ("Alla priser fritt vår fabrik", False),
        ("Our offers are FOB our mill", False),
    ],
)
def test_our_works_are_the_buyers_in_what_he_writes_of_bids(said, delivered):
    found = find_delivery(said)
    assert found is not None
    assert found.delivered is delivered


@pytest.mark.parametrize("said", ["Our bids are FOB our mill", "Bids are FOB our mill"])
def test_a_vendor_speaks_of_bids_too(said):
    found = find_delivery(said)
    assert found is not None
    assert found.delivered is False


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("fritt fabrik Björnarp (levererat)", True), ("franco fábrica Vigo (entregado)", True),
        ("puesto en fábrica Vigo (entregado)", True), ("fritt fabrik", False), ("fritt fabrik (exkl. frakt)", False),
        ("ex works (delivered)", None), ("EXW (levererat)", None), ("fritt vårt lager (levererat)", None),
    ],
)  # fmt: skip
def test_whose_works_it_is_free_at_says_what_stands_in_brackets(text, delivered):
    said = find_delivery(text)
    assert said is not None
    assert said.delivered is delivered


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("1 285,00 € la tonne, franco Dijon", "824,00 € la tonne, départ usine"),
        ("1.285,00 € je Tonne, frei Haus Kassel", "824,00 € je Tonne, ab Werk"),
        ("1.285,00 € je Tonne frei Kassel", "824,00 € je Tonne ab Werk"),
        ("€1,285.00 per tonne, delivered Salt Lake City", "€824.00 per tonne, ex works"),
        ("1 285,00 EUR per ton (1000 kg), fritt Göteborg", "824,00 EUR per ton (1000 kg), fritt fabrik"),
        ("1.285,00 EUR por tonelada, entregado Madrid", "824,00 EUR por tonelada, en fábrica"),
    ],
)
def test_the_place_behind_a_line_s_own_terms_changes_nothing_of_them(first, second):
    rows = [["Madame, Monsieur,"], [f"- GC1 250 g/m², 410 µm : {first}"], [f"- GD2 350 g/m², 455 µm : {second}"]]
    assert [line.offer.delivered for line in lines(rows).values()] == [True, False]


PACKED = [
    "Bögen werden unverpackt auf Einwegpalette geliefert.", "Sheets are delivered on one-way pallets.",
    "Rolls are delivered eye to the sky", "Le carton est livré sur palettes", "Cartón entregado en palés",
    "Kartongen levereras på pall",
]  # fmt: skip


@pytest.mark.parametrize("note", PACKED)
def test_how_goods_are_packed_says_nothing_of_freight(note):
    rows = [["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [], [note]]
    assert lines(rows)["D2"].offer.delivered is None
    assert lines([["EUR per tonne, ex works"], *rows])["D3"].offer.delivered is False


@pytest.mark.parametrize(
    "note",
    ["Sheets on pallets, delivered", "Goods are delivered to your dock on pallets", "Prices delivered on pallets"],
)
def test_but_prices_may_be_delivered_on_pallets(note):
    rows = [["Board", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1098], [], [note]]
    assert lines(rows)["D2"].offer.delivered is True


@pytest.mark.parametrize(
    ("one", "other", "states"),
    [
        ("1285 €/t DAP", "1255 €/t FCA", ["accepted"] * 2),
        ("1285 €/t delivered Leeds", "1255 €/t ex works", ["accepted"] * 2),
        ("1285 €/t DAP", "1255 €/t DAP", ["question"] * 2),
        ("1285 €/t delivered Leeds", "1255 €/t delivered York", ["question"] * 2),
    ],
)
def test_a_delivered_price_below_one_that_is_not_is_no_other_price_for_the_same(one, other, states):
    rows = [["Board", "g/m²", "µm", "Price"], ["GC1", 250, 410, one], ["GC1", 250, 410, other]]
    assert [str(line.state) for line in lines(rows).values()] == states


@pytest.mark.parametrize("price", ["$1,230/ST delivered Superseded", "1230 €/t frei Waggon"])
def test_a_word_behind_a_term_that_is_no_place_is_asked_about(price):
    (line,) = lines([["Grade", "g/m²", "µm", "Price"], ["GC1", 250, 400, price]]).values()
    assert line.state == "question"


@pytest.mark.parametrize(
    ("text", "delivered"),
    [
        ("Allt finns i lager och levereras fritt", True), ("Lieferung ist kostenfrei.", True),
        ("Livraison gratuite.", True), ("Entrega gratuita.", True), ("Delivery is free.", True),
        ("Allt levereras fritt fabrik", False), ("Levereras fritt från 5 ton", None),
        ("Lieferung kostenfrei ab 5 t", None), ("Delivery is free from 10 t", None),
        ("Lieferung ist nicht kostenlos", None),
    ],
)  # fmt: skip
def test_free_delivery_at_the_end_of_a_sentence_is_in_the_prices(text, delivered):
    (line,) = lines([[text], [], ["Board", "g/m²", "µm", "EUR/tonne"], ["GC1", 240, 390, 1288]]).values()
    assert (str(line.state), line.offer.delivered) == ("accepted", delivered)


@pytest.mark.parametrize(
    ("row", "delivered"),
    [
        (("Freight", None, None, None, "included"), [None, True]),
        (("Freight", None, None, "extra", "included"), [False, True]),
        (("Freight", None, None, "included", "included"), [True, True]),
        (("Freight", None, None, "included"), [True, None]),
        (("Freight", "included"), [True, True]),
    ],
)
def test_a_row_of_freight_is_said_of_the_price_that_it_stands_below(row, delivered):
    head = ["Board", "Caliper (pt)", "lb/MSF", "Price A USD/ST", "Price B USD/ST"]
    found = lines([head, ["SBS", 16, 68, 1215, 1290], row])
    assert [line.offer.delivered for line in found.values()] == delivered


def test_served_says_delivered_where_it_stands_alone():
    assert find_delivery("€/kg, servido").delivered is True
    assert find_delivery("Servido").delivered is True
    assert find_delivery("servido de almacén") is None
    assert find_delivery("Pedido servido en 48 horas") is None


@pytest.mark.parametrize(
    "note",
    ["Delivered at place.", "Delivered duty unpaid.", "Delivered at named place Dayton.", "Freight paid by seller.",
     "Geliefert benannter Ort (DAP).", "Geliefert unverzollt.", "Fracht vom Verkäufer bezahlt.",
     "Rendu au lieu de destination.", "Rendu droits non acquittés.", "Port payé par le vendeur.",
     "Entregado en lugar convenido.", "Entregado con derechos pagados.", "Flete pagado por el vendedor.",
     "Levererat på angiven plats.", "Levererat oförtullat.", "Frakt betald av säljaren.", "Franco camión destino."],
)  # fmt: skip
def test_incoterms_in_words_are_delivered(note):
    assert _told(note) == {True}


@pytest.mark.parametrize(
    "note", ["Franco camión fábrica.", "Franco sobre camión.", "Franco camion usine.", "Fritt bil bruk."]
)
def test_free_on_a_truck_at_the_works_is_not(note):
    assert _told(note) == {False}


@pytest.mark.parametrize("note", ["Delivered at place on Saturdays.", "Delivered duty paid up to $40/ST."])
def test_what_bounds_an_incoterm_leaves_it_open(note):
    assert _told(note) == {None}


def _told(note):
    rows = [["Price list"], ["Grade", "µm", "g/m²", "EUR per tonne"], ["GC1", 400, 250, 1250], ["GD2", 390, 300, 850]]
    return {line.offer.delivered for line in lines([*rows, [], [note]]).values()}


@pytest.mark.parametrize(
    ("said", "delivered"),
    [
        ("Freight prepaid by seller and added to invoice.", False),
        ("Freight paid by the seller, then invoiced to the buyer.", False),
        ("Fracht von uns bezahlt, wird weiterberechnet.", False),
        ("Port payé, refacturé au réel.", False),
        ("Freight prepaid by seller.", True),
        ("Freight included, energy surcharge billed separately.", True),
        ("Freight prepaid. Pallets charged separately.", True),
    ],
)
def test_freight_that_the_seller_pays_and_bills_is_in_no_price(said, delivered):
    rows = [["Grade", "pt", "USD/ST"], ["SBS", 18, 1200], [], [said]]
    assert {line.offer.delivered for line in lines(rows).values()} == {delivered}
