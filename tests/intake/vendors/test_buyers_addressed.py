"""Who writes, and who is written to: a firm behind 'To' or beside its purchasing buys, and quotes nothing."""

import pytest

from tests.intake.sheets import read

_TABLE = [[], ["Board", "g/m²", "µm", "EUR/tonne"], ["GC1", 300, 490, 1250]]
_BUYERS = [
    ["Ostheim Faltschachteln KG", "z. H. Einkauf"],
    ["Ostheim Faltschachteln KG", "Ringstraße 5", "1010 Wien", "z. Hd. Frau Lindner"],
    ["Ostheim Faltschachteln KG, zu Händen Herrn Kolb"],
    ["An", "Ostheim Faltschachteln KG"],
    ["An Ostheim Faltschachteln KG"],
    ["Callowell Packaging LLC", "Attn: Purchasing"],
    ["Attention: Ms Doe", "Callowell Packaging LLC"],
    ["To", "Callowell Packaging LLC"],
    ["Emballages Verdaine SARL", "À l’attention du service achats"],
    ["À : Emballages Verdaine SARL"],
    ["Envases Altoria S.A.", "A la atención de D. Pedro Ruiz"],
    ["Para Envases Altoria S.A."],
    ["Granforsa Förpackning AB", "Att: Inköp"],
    ["Till Granforsa Förpackning AB"],
    ["Granforsa Förpackning AB", "Inköpsavdelningen"],
]


@pytest.mark.parametrize(
    "vendor", ["Tennbrook Karton AG", "Tennbrook & Soller", "Tennbrook Karton Handelsgesellschaft m.b.H."]
)
@pytest.mark.parametrize("buyer", _BUYERS)
def test_the_firm_that_is_written_to_does_not_quote(vendor, buyer):
    assert read([[vendor], ["Hafenstraße 22, 4020 Linz"], [], *([line] for line in buyer), *_TABLE]).vendor == vendor


@pytest.mark.parametrize(
    "rows",
    [
        ["Tennbrook Karton AG", "Attn: Purchasing"],
        ["Tennbrook Karton AG", "z. H. Einkauf"],
        ["Price list", "", "Tennbrook Karton AG", "Att: Sales desk"],
        ["Price list", "", "Tennbrook Karton AG", "Attention: prices rise on 1 January, please see our letter of May"],
        ["Request for quotation 114", "", "Tennbrook Karton AG", "Attn: Ms Doe"],
        ["Supplier: Tennbrook Karton AG", "Attn: Ms Doe"],
        ["Preisliste", "Firma", "Tennbrook Karton AG"],
        ["Schedule 2", "to the Agreement between Tennbrook Karton AG (the Seller) and Callowell Foods (the Buyer)"],
    ],
)
def test_who_writes_first_sells_or_is_asked_for_offers_quotes_all_the_same(rows):
    assert read([*([text] for text in rows), *_TABLE]).vendor == "Tennbrook Karton AG"


@pytest.mark.parametrize(
    "title",
    [
        "For Ferrowick Board", "For Ferrowick Board Inc.", "To Ferrowick Mills", "Prepared for Ferrowick Board",
        "Attn Ferrowick Board Inc.", "Für Kartonhaus Ferrowick", "An Kartonhaus Ferrowick GmbH",
        "Pour Cartonnerie Ferrowick SA", "À Cartonnerie Ferrowick", "Para Papelera Ferrowick, S.A.",
        "För Ferrviks Kartong AB", "Till Ferrviks Kartong", "Kunde Handelshaus Ferrowick",
    ],
)  # fmt: skip
def test_who_a_list_begins_with_as_its_reader_is_no_vendor(title):
    assert read([[title], *_TABLE]).vendor is None


@pytest.mark.parametrize("name", ["A Plus Paper Inc.", "Ferrowick Board", "Forrest Board Mills", "Anders Kartong AB"])
def test_names_that_only_begin_like_such_words_are(name):
    assert read([[name], *_TABLE]).vendor in (name, name.rstrip("."))


@pytest.mark.parametrize("buyer", ["Ferrowick Cartons", "Ferrowick Cartons Inc."])
@pytest.mark.parametrize(
    "paper",
    ["Request for quotation 26-14", "Inquiry no. 7", "RFQ 118", "Anfrage 7", "Preisanfrage vom 3. März",
     "Demande de prix", "Consultation n° 12", "Solicitud de cotización", "Consulta de precios",
     "Prisförfrågan", "Förfrågan 7"],
)  # fmt: skip
def test_a_firm_over_its_request_for_offers_does_not_quote(buyer, paper):
    assert read([[buyer], [paper], *_TABLE]).vendor is None
    assert read([[f"{buyer} - {paper}"], *_TABLE]).vendor is None
    assert read([[buyer], [paper], ["Tennbrook Karton AG"], *_TABLE]).vendor == "Tennbrook Karton AG"
    assert read([[f"Supplier: {buyer}"], [paper], *_TABLE]).vendor == buyer


@pytest.mark.parametrize(
    "rows",
    [
        ["Your request for quotation 26-14"], ["Reply to RFQ 118"], ["Ihre Anfrage 7"], ["Votre demande de prix"],
        ["Su solicitud de cotización"], ["Er förfrågan"], ["Quotation 118", "RFQ 26-14"],
        ["Angebot 7", "Anfrage: 3. März"], ["Offert 4", "Förfrågan 7"], ["Price list", "Inquiries: 555-0119"],
    ],
)  # fmt: skip
def test_a_firm_that_answers_a_request_quotes(rows):
    assert read([["Ferrowick Cartons Inc."], *([row] for row in rows), *_TABLE]).vendor == "Ferrowick Cartons Inc."


@pytest.mark.parametrize(
    "text", ["Ferrowick Cartons, purchasing", "Ferrowick Cartons, Einkauf", "Cartons Ferrowick, service achats",
             "Cartones Ferrowick, compras", "Ferrviks Kartong, inköp"],
)  # fmt: skip
def test_the_purchasing_of_a_firm_at_the_head_of_a_sheet_does_not_quote(text):
    assert read([[text], *_TABLE]).vendor is None
