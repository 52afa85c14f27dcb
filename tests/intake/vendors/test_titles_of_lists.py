"""The firm whose list it is, in the list's own title."""

import pytest

from tests.intake.sheets import lines

TABLE = [["Grade", "pt", "lb/MSF", "USD per short ton"], ["SBS C1S", 16, 67, 1215]]


def vendor(title):
    (line,) = lines([[title], [], *TABLE]).values()
    return line.offer.vendor


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Quote of Tamsworth Board Brokers", "Tamsworth Board Brokers"),
        ("Offer from Ashlock Board & Paper", "Ashlock Board & Paper"),
        ("Price guide, Tillamark Packaging Board", "Tillamark Packaging Board"),
        ("Preisliste der Kartonfabrik Sonthal", "Kartonfabrik Sonthal"),
        ("Bogenware der Zuschnitt Ahlendorf GmbH, Preise in USD", "Zuschnitt Ahlendorf GmbH"),
        ("Offre de la Cartonnerie Mirebrousse", "Cartonnerie Mirebrousse"),
        ("Lista de precios de Cartonera Nieto", "Cartonera Nieto"),
        ("Prislista från Granvassa Kartong", "Granvassa Kartong"),
    ],
)
def test_the_firm_behind_what_the_list_is_called(title, name):
    assert vendor(title) == name


@pytest.mark.parametrize(
    "title",
    [
        "Quote for Tamsworth Board Brokers", "Offer to Ashlock Board & Paper", "Angebot für Kartonfabrik Sonthal",
        "Price list of coated board", "Offre de carton plat", "Lista de precios de cartón",
    ],
)  # fmt: skip
def test_a_buyer_or_a_board_is_no_vendor(title):
    assert vendor(title) is None


@pytest.mark.parametrize("title", ["Prices from Dayton Mill", "Prices from Our Mill", "Offer from All Mills"])
def test_where_prices_are_from_is_no_vendor(title):
    assert vendor(title) is None


def test_a_company_in_the_customers_block_does_not_quote():
    rows = [["Tarnwick Board Inc."], ["Customer information"], ["Company:", "Hadley Cartons Ltd"], []]
    (line,) = lines([*rows, *TABLE]).values()
    assert line.offer.vendor == "Tarnwick Board Inc."


@pytest.mark.parametrize(
    ("title", "name"),
    [("Sheet & Roll Pricing - 2027", None), ("Merrow Sheet & Roll", "Merrow Sheet & Roll")],
)
def test_a_word_for_prices_names_no_firm(title, name):
    assert vendor(title) == name


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Export prices Hessemoor Board BV", "Hessemoor Board BV"), ("Preisliste Nordkarton GmbH", "Nordkarton GmbH"),
        ("Tarif Cartonnerie Lannoy SA", "Cartonnerie Lannoy SA"), ("Prislista Fjordkartong AB", "Fjordkartong AB"),
        ("Lista de precios Cartones Belmonte SA", "Cartones Belmonte SA"), ("Prices for Hessemoor Board BV", None),
        ("Prices Birch Foods Ltd", None), ("Prices ex mill Board BV", None),
    ],
)  # fmt: skip
def test_a_firm_of_the_trade_right_behind_the_name_of_its_list_quotes(title, name):
    assert vendor(title) == name


@pytest.mark.parametrize(
    "title",
    [
        "Preisliste Kunde Muster Karton GmbH", "Customer prices Birch Carton Co.",
        "Price list – Customer Birch Carton Co.",
        "Kundenpreise Birch Karton GmbH", "Tarif client Cartonnerie Birch SA", "Precios cliente Cartones Birch SA",
        "Kundpriser Birch Kartong AB", "Kunde Muster Karton GmbH",
        "anfrage birch carton", "förfrågan birch kartong", "inquiry birch carton", "customer birch carton",
        "Preisanfrage Birch Karton",
    ],
)  # fmt: skip
def test_a_firm_called_a_customer_or_behind_an_inquiry_quotes_nothing(title):
    assert vendor(title) is None


@pytest.mark.parametrize("title", ["birch carton board", "Client Packaging Ltd.", "Price list Birch Carton Co."])
def test_the_same_names_without_these_words_are_of_firms_that_quote(title):
    assert vendor(title) == title.removeprefix("Price list ")


AHEAD_OF_ITS_LIST = [
    ("Hazelgrave Mills price sheet, FOB mill", "Hazelgrave Mills"), ("Hazelgrave Mills price list", "Hazelgrave Mills"),
    ("Kartonwerk Quendel Preisliste, ab Werk", "Kartonwerk Quendel"), ("Quendel Karton Preisblatt", "Quendel Karton"),
    ("Cartonnerie Duvrac tarif, départ usine", "Cartonnerie Duvrac"),
    ("Cartonera Soto lista de precios, ex fábrica", "Cartonera Soto"),
    ("Kartongbruket Lind prislista, fritt fabrik", "Kartongbruket Lind"),
]  # fmt: skip


@pytest.mark.parametrize(("title", "firm"), AHEAD_OF_ITS_LIST)
def test_a_firm_ahead_of_its_list_quotes(title, firm):
    found = lines(
        [[title], [], ["Grade", "pt", "lb/MSF", "$/ST"], ["SBS C1S", 14, 60, 1220], ["CUK C1S", 18, 74, 1010]]
    )
    assert {line.offer.vendor for line in found.values()} == {firm}


@pytest.mark.parametrize(
    "title",
    [
        "Board mills price sheet, FOB mill", "Customer price sheet, FOB mill", "Coated Board price list",
        "SBS price list", "Kestrel White price list", "Spring price list", "Faltschachtelkarton Preisliste",
        "Carton couché tarif", "Cartón estucado tarifa", "Falskartong prislista",
    ],
)  # fmt: skip
def test_goods_and_buyers_ahead_of_a_list_are_no_firms(title):
    found = lines(
        [[title], [], ["Grade", "pt", "lb/MSF", "$/ST"], ["SBS C1S", 14, 60, 1220], ["CUK C1S", 18, 74, 1010]]
    )
    assert {line.offer.vendor for line in found.values()} == {None}
