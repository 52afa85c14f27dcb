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
