"""Firms' names over their prices behind what calls them vendors or bids; and what is no name behind such words."""

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.values.firms.company import company_name, labelled_company

TITLE = ["Comparison, EUR per tonne, delivered"]
BOARD = ["Grade", "g/m²", "µm"]


def vendors(*heads, group):
    """Cell -> vendor of one board's prices, in a group head over 'Price' or in the head of the price."""
    over = [[None, None, None, *heads], [*BOARD, *["Price"] * len(heads)]] if group else [[*BOARD, *heads]]
    found = lines([TITLE, [], *over, ["GC1", 240, 395, 1266, 1270], ["GC2", 280, 470, 1205, 1198]])
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return [line.offer.vendor for _, line in sorted(found.items())]


@pytest.mark.parametrize("group", [True, False])
@pytest.mark.parametrize(
    "label",
    ["Fournisseur : {}", "Supplier – {}", "Lieferant {}", "Proveedor n° 2: {}", "Leverantör A: {}", "Bid: {}",
     "Angebot {}", "Offre de {}", "Oferta: {}", "Offert från {}"],
)  # fmt: skip
def test_a_label_before_a_firms_name_is_no_part_of_it(label, group):
    names = ["Ormoy Papier SA", "Velmora Kartong AB"]
    assert vendors(*map(label.format, names), group=group) == [names[0], names[0], names[1], names[1]]


def test_a_name_that_nothing_shows_to_be_a_firms_is_one_beside_a_firms():
    assert vendors("Angebot Ormoy Lenz", "Angebot Velmora Kartong", group=False) == [
        "Ormoy Lenz", "Ormoy Lenz", "Velmora Kartong", "Velmora Kartong",
    ]  # fmt: skip


@pytest.mark.parametrize("heads", [("Quote delivered", "Quote FOB mill"), ("Angebot ab Werk", "Angebot frei Haus")])
def test_terms_behind_a_bid_are_no_name(heads):
    assert set(vendors(*heads, group=False)) == {None}


def test_a_name_that_begins_with_a_word_of_the_trade_is_left_whole():
    assert set(vendors("Mill Creek Board Co.", "Velmora Kartong AB", group=False)) == {
        "Mill Creek Board Co.",
        "Velmora Kartong AB",
    }


def test_the_firm_that_a_bid_is_made_to_is_not_taken_from_a_title():
    rows = [["Bid: Ormoy Foods Ltd"], [*BOARD, "EUR/t"], ["GC1", 240, 395, 1266]]
    assert read(rows).lines[0].offer.vendor is None


@pytest.mark.parametrize("label", ["VENDOR", "SUPPLIER", "VENDOR B", "SUPPLIER 2", "Supplier no. 2"])
def test_the_last_capital_of_a_label_is_no_letter_that_counts(label):
    assert labelled_company(f"{label}: 100412 Ostmere Board Mills") == "Ostmere Board Mills"


@pytest.mark.parametrize(
    ("pairs", "vendor"),
    [
        (["Buyer:", "Rowan Carton Co.", "Seller:", "Tamarack Paperboard Inc."], "Tamarack Paperboard Inc."),
        (["Seller:", "Tamarack Paperboard Inc.", "Buyer:", "Rowan Carton Co."], "Tamarack Paperboard Inc."),
        (["To:", "Rowan Carton Co.", "From:", "Tamarack Paperboard Inc."], "Tamarack Paperboard Inc."),
        (["Käufer:", "Ebereschen Druck GmbH", "Verkäufer:", "Lärchen Karton AG"], "Lärchen Karton AG"),
        (["Buyer:", "Rowan Carton Co."], None),
        (["Buyer:", "Rowan Carton Co.", "Seller:", None], None),
    ],
)
def test_who_sells_stands_beside_who_buys(pairs, vendor):
    head = ["Grade", "Caliper (pt)", "Basis weight (lb/3000 ft²)", "Price USD/short ton"]
    (line,) = lines([pairs, head, ["SBS", 16, 170, 1310]]).values()
    assert line.offer.vendor == vendor


@pytest.mark.parametrize(
    "note",
    ["rec'd by e-mail", "recd 3 June", "(via phone)", "per Mail erhalten", "reçu par courriel", "recibido por correo",
     "mottaget via mejl"],
)  # fmt: skip
def test_how_an_offer_reached_its_buyer_is_no_part_of_the_firms_name(note):
    assert labelled_company(f"Vendor: Ferrowick Carton Mills {note}") == "Ferrowick Carton Mills"
    assert company_name(f"Ferrowick Carton Mills {note}") == "Ferrowick Carton Mills"


@pytest.mark.parametrize("name", ["Phone Cove Board Mills", "Received Street Paperboard", "Mail Pouch Carton Mills"])
def test_a_firm_may_be_called_by_a_word_for_letters(name):
    assert labelled_company(f"Vendor: {name}") == name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Quote from: Ferrowick Ridge Mill Sales LLC", "Ferrowick Ridge Mill Sales LLC"),
        ("Preisangebot von: Ferrowick Karton", "Ferrowick Karton"),
        ("Devis de : Cartons Ferrowick", "Cartons Ferrowick"),
        ("Presupuesto de: Cartones Ferrowick", "Cartones Ferrowick"),
        ("Prisoffert från: Ferrowick Kartong", "Ferrowick Kartong"),
        ("Quote for: Ferrowick Ridge Mill Sales LLC", None),
    ],
)
def test_whose_quote_it_is(text, name):
    assert labelled_company(text) == name


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Vendeur : Cartons Ferrowick SARL. Transport non compris.", "Cartons Ferrowick SARL"),
        ("Supplier: Ferrowick Mills Ltd. Freight not included.", "Ferrowick Mills Ltd"),
        ("Lieferant: Kartonhaus Ferrow GmbH. Fracht nicht enthalten.", "Kartonhaus Ferrow GmbH"),
        ("Proveedor: Cartonera Ferrow. Portes no incluidos", "Cartonera Ferrow"),
        ("Leverantör: Ferrowick Kartong AB. Frakt ingår ej.", "Ferrowick Kartong AB"),
        ("Supplier: St. Ferrow Board", "St. Ferrow Board"),
        ("Supplier: St. Ferrow Board. Freight extra.", "St. Ferrow Board"),
    ],
)
def test_what_is_said_of_the_offer_behind_a_name_is_no_part_of_it(text, name):
    assert labelled_company(text) == name


@pytest.mark.parametrize(
    "label", ["Nom du candidat :", "Licitador:", "Name des Bewerbers:", "Bidder's legal name:", "Anbudsgivarens namn:"]
)
def test_who_fills_in_a_tender(label):
    assert labelled_company(f"{label} Établissements Ferrowick") == "Établissements Ferrowick"


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Verkaufsorganisation 1200 Ferrowick Karton AG", "Ferrowick Karton AG"),
        ("Company code 0100 Ferrowick Mills Inc", "Ferrowick Mills Inc"),
        ("Société 0100 Cartons Ferrowick SA", "Cartons Ferrowick SA"),
        ("Karton 2000 Handels GmbH", "Karton 2000 Handels GmbH"),
    ],
)
def test_the_number_of_a_part_of_a_firm_is_none_of_its_name(text, name):
    assert company_name(text) == name
