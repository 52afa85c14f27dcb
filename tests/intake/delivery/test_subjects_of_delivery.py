"""That prices are delivered is told of prices, of the boards of the list or of nothing by name, and to its end."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.freight.freight_of_prices import freight_of_prices
from tracker.intake.values.notes.subjects import Subject, subject_of

ROWS = [["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 240, 385, 1165]]


def delivered(*notes):
    return lines([*ROWS, [], *([note] for note in notes)])["D2"].offer.delivered


@pytest.mark.parametrize(
    "text",
    [
        "Our insurance covers freight damage.", "The fuel surcharge covers freight to the harbour.",
        "Storage fees include delivery.", "The sheeting service includes freight both ways.",
        "Kleinmengenzuschläge schließen die Anlieferung ein.", "Die Maut schließt die Fracht ein.",
        "Le stockage comprend la livraison.", "Les frais de dossier comprennent le port.",
        "El almacenaje incluye el transporte.", "Lagringen inkluderar frakt.",
        "Free delivery of the catalogue.", "We offer free delivery of our brochure.",
        "Order confirmations are delivered by e-mail.", "Pallets delivered free of charge",
        "Europaletten werden frei Haus geliefert.", "Les clichés sont livrés franco.", "Kataloger levereras fritt.",
        "Reels collected for inspection", "Inbound freight paid by buyer for rejected lots.",
        "Orders may be picked up at our warehouse.", "Orders picked up at our warehouse save $18/ST.",
        "Goods may be collected from our warehouse.", "Ware kann auch bei uns abgeholt werden.",
        "Bei uns abgeholt 18 EUR/t weniger.", "Kan även hämtas hos oss.", "We can also quote delivered.",
        "Anlieferung von Mustern inklusive.", "Freight delivered Toledo 52", "The 2025 volumes were delivered in full.",
        "Steel cores are credited when they come back freight prepaid.", "Our driver will call you.",
    ],
)  # fmt: skip
def test_with_another_subject_nothing_is_said_of_prices(text):
    assert freight_of_prices(text) is None


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("FOB mill. Our fuel surcharge covers freight.", False), ("Ab Werk. Kataloge frei Haus.", False),
        ("Prices FOB mill. Minimum charges cover delivery by courier.", False),
        ("Prix départ usine. Les échantillons sont livrés franco.", False),
        ("Prices delivered. Orders picked up at our warehouse: deduct $18/ST.", True),
        ("Prices delivered. Redelivery freight paid by the customer.", True),
        ("Priser fritt kund, kan hämtas på vårt lager.", True), ("Preise frei Haus. Paletten werden abgeholt.", True),
        ("Delivered, title passes on delivery.", True), ("USD/ST delivered, mixed truckloads allowed.", True),
        # What else the list holds may well be told by such a part.
        ("Delivered, LTL freight extra.", None), ("FOB mill. Items 3 and 5 alone are delivered prices.", None),
        ("Mengen ab vier Tonnen stellen wir frei Haus zu; alles darunter gilt ab Werk.", None),
    ],
)  # fmt: skip
def test_and_a_term_stated_beside_it_stays(text, told):
    assert freight_of_prices(text).delivered is told


@pytest.mark.parametrize(
    "text",
    [
        "Prices cover freight up to $35/ST.", "Prices include carriage to the mainland UK only.",
        "Free delivery on Saturdays.", "Prices are delivered Monday to Friday.", "Delivered, freight $38/ST to Alaska",
        "Freight delivered UK extra", "Prices include delivery if you order early.",
        "Franco dans toute la France dès 3 t.", "Preise frei Haus ab 5 t", "Full loads are delivered.",
    ],
)  # fmt: skip
def test_what_goes_on_behind_the_term_may_bound_it(text):
    said = freight_of_prices(text)
    assert (said.delivered, said.conditional) == (None, True)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Delivered", True), ("frei Haus", True), ("franco", True), ("DAP Lyon", True), ("carriage paid", True),
        ("FOB mill", False), ("ab Werk", False), ("FOB Anvil Falls", False), ("DAP magazyn klienta", True),
        ("Prices cover delivery to your dock.", True), ("All tons are delivered.", True),
        ("Loads are delivered.", True), ("Costs are shown per short ton delivered.", True),
        ("All goods are sold delivered.", True),
        ("We deliver free house.", True), ("Delivered price by receiving city, freight included", True),
        ("Harlan Board Corp. Delivered price sheet no. 7", True), ("Sendungen werden geliefert.", True),
        ("On page two you find our prices ex works", False), ("Bids FOB mill unless marked", False),
        ("Preise ab Werk zuzüglich Energiezuschlag und Fracht", False), ("Freight is paid by you.", False),
        ("Board is sold loaded on your truck.", False), ("Ware auf Ihren LKW verladen.", False),
        ("Marchandise chargée sur votre camion.", False), ("Varan lastad på er bil.", False),
        ("Recogido en fábrica (EXW)", False), ("Freight prepaid and add", False),
    ],
)  # fmt: skip
def test_prices_boards_and_titles_are_what_it_is_said_of(text, told):
    assert freight_of_prices(text).delivered is told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Delivery is included.", True), ("Delivery is not included.", False), ("Anlieferung inklusive.", True),
        ("Die Fracht ist in den Preisen enthalten.", True), ("Die Fracht ist nicht enthalten.", False),
        ("Le transport est compris.", True), ("Les prix ne comprennent pas le transport.", False),
        ("El transporte está incluido en el precio.", True), ("El transporte no está incluido.", False),
        ("I priserna ingår frakt.", True), ("Frakten är inte inkluderad.", False),
        ("Prices include packing and freight.", True), ("Prices exclude VAT and freight.", False),
    ],
)  # fmt: skip
def test_freight_is_borne_in_any_order_of_words(text, told):
    assert freight_of_prices(text).delivered is told


def test_notes_below_a_list():
    assert delivered("Prices are delivered.", "Our calendars are delivered in December.") is True
    assert delivered("Our calendars are delivered in December.") is None
    assert delivered("Prices ex works.", "Tools are delivered free.") is False


HEAD = ["Grade", "pt", "lb/MSF", "Rolls USD/ST", "Sheets USD/ST"]


@pytest.mark.parametrize(
    ("row", "told"),
    [
        (("Freight", None, None, "-", "included"), [None, True]),
        (("Freight", None, None, "excl.", "incl."), [False, True]),
        (("Freight included", None, None, "no", "yes"), [False, True]),
        (("Freight", None, None, "at cost", "prepaid"), [None, True]),
        (("Freight", None, None, "included", "included"), [True, True]),
    ],
)  # fmt: skip
def test_a_row_of_freight_tells_each_price_its_own(row, told):
    found = lines([HEAD, ["SBS", 18, 77, 1216, 1290], row])
    assert [line.offer.delivered for line in found.values()] == told


@pytest.mark.parametrize("label", ["Freight delivered Toledo", "Freight delivered Toledo $/ST", "Freight to Toledo"])
def test_freight_to_a_place_with_its_amount_is_charged_and_in_no_price(label):
    (line,) = lines([[*HEAD[:3], "Price USD/ST"], ["SBS", 18, 77, 1216], [label, None, None, 52]]).values()
    assert [charge.price for charge in line.offer.charges] == [52]
    assert line.offer.delivered is None


@pytest.mark.parametrize(
    ("ahead", "subject"),
    [
        ("all our prices are", Subject.PRICES), ("US$ per short ton", Subject.PRICES), ("SBS and CUK", Subject.BOARDS),
        ("the board", Subject.BOARDS), ("", Subject.NONE), ("our insurance", Subject.OTHER),
        ("prices may be", Subject.OTHER),
    ],
)  # fmt: skip
def test_the_subject_ahead_of_a_term(ahead, subject):
    assert subject_of(ahead, "articles", "and_words", "copula", "all_of_them", "per") is subject
