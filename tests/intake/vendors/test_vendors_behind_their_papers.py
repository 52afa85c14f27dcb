"""Who quotes, behind what his paper is called and its number."""

import pytest

from tests.intake.sheets import read

BOARDS = [["Board", "g/m²", "EUR/t"], ["GC2", 280, 1100], ["GD2", 350, 800]]


@pytest.mark.parametrize(
    ("title", "vendor"),
    [
        ("Offert 26-77 från Tallmo Förpackningskartong, levererat", "Tallmo Förpackningskartong"),
        ("Angebot Nr. 4711 von Kartonhaus Lindmoor", "Kartonhaus Lindmoor"),
        ("Offre n° 88 de Cartonnerie Vauverdin", "Cartonnerie Vauverdin"),
        ("Oferta 12/26 de Papelera Altavega, DAP", "Papelera Altavega"),
        ("Quotation Q-1182 from Marlow Paper Mills, delivered", "Marlow Paper Mills"),
        ("Price list 4 from Marlow Paper Mills", "Marlow Paper Mills"),
        ("Découpes Sauvebœuf", "Découpes Sauvebœuf"),
    ],
)
def test_a_papers_title_names_who_wrote_it(title, vendor):
    assert read([[title], [], *BOARDS]).vendor == vendor


@pytest.mark.parametrize(
    "title",
    [
        "Quotation 26-113 for Marlow Paper Mills",
        "Offer 27 from the mill",
        "Angebot 12 von GC2 Karton",
        "Oferta de Cartón Gris Reciclado",
        "Découpes spéciales",
    ],
)
def test_buyers_boards_and_goods_are_no_vendors(title):
    assert read([[title], [], *BOARDS]).vendor is None


@pytest.mark.parametrize("paper", ["Quotation HS-2291", "Angebot 26/118", "Devis 33", "Cotización 418", "Offert 26-77"])
def test_a_firm_apart_from_the_number_of_its_paper_quotes(paper):
    head = [[paper, None, None, "Harrow Spit Kraft & Board Corp."], ["EXW our mill"], []]
    assert read([*head, *BOARDS]).vendor == "Harrow Spit Kraft & Board Corp."


@pytest.mark.parametrize(
    "row",
    [
        ["Quotation HS-2291", "Birch Carton Co."],
        ["Quotation HS-2291", None, None, "for Birch Carton Co."],
        ["Quotation HS-2291", None, None, "Grey board and chip"],
    ],
)
def test_who_stands_beside_the_number_of_a_paper_may_be_written_to(row):
    assert read([row, ["EXW our mill"], [], *BOARDS]).vendor is None
