"""Prices in a sheet that nobody offers: competitors', the market's, targets, those of gone boards, drafts, examples."""

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.values.changes.others_prices import Offering, heading_offers, row_offers

HEAD, GC1, GC2 = ["Board", "g/m²", "µm", "EUR/t"], ["Dunpress GC1", 250, 400, 1180], ["Larkfold GC1", 300, 480, 1150]


def states(rows):
    return {cell: str(line.state) for cell, line in lines(rows).items()}


@pytest.mark.parametrize(
    "heading",
    [
        "Competitor prices", "Target prices 2027 (EUR/t):", "Market prices", "Not available in 2027:",
        "Sold in October", "Discontinued", "Marktpreise", "Ausgelaufen:", "Nicht mehr lieferbar",
        "Preise der Konkurrenz",
        "Prix du marché", "Prix cibles", "Ne sont plus disponibles", "Vendus en octobre :",
        "Precios de la competencia", "Descatalogados", "Precios objetivo", "Vendido en octubre",
        "Konkurrentens priser", "Utgångna", "Målpriser", "Sålda i oktober",
    ],
)  # fmt: skip
def test_below_a_heading_that_says_so_nothing_is_offered(heading):
    reading = read([HEAD, GC1, [heading], GC2])
    assert [line.offer.source.cell for line in reading.lines] == ["D2"]
    assert [passed.rows for passed in reading.passed_over] == ["4"]


@pytest.mark.parametrize(
    "heading",
    [
        "Competition", "Wettbewerb", "Concurrence", "Competencia", "Konkurrenter",
        "Discontinued grades while stocks last",
    ],
)  # fmt: skip
def test_below_a_heading_that_may_say_so_it_is_asked(heading):
    assert states([HEAD, GC1, [heading], GC2]) == {"D2": "accepted", "D4": "question"}


@pytest.mark.parametrize(
    "heading",
    [
        "Market Street Board Co.", "Target Carton Board", "Sold in full pallets only", "Not available in rolls",
        "Not available from stock", "Zielgruppe Pharma", "Marktheidenfeld, ab Werk", "Verkauft nur in Bogen",
        "Marché-les-Dames, départ usine", "Mercado nacional", "Marknadsgatan 4", "Our new prices",
    ],
)  # fmt: skip
def test_other_headings_leave_offers_below_them(heading):
    assert states([HEAD, GC1, [heading], GC2]) == {"D2": "accepted", "D4": "accepted"}


@pytest.mark.parametrize(
    ("own", "other"),
    [
        ("Our offer", "Competitors"), ("Unser Angebot", "Wettbewerb"), ("Notre offre", "Concurrence"),
        ("Nuestra oferta", "Competencia"), ("Vår offert", "Konkurrenter"),
    ],
)  # fmt: skip
def test_a_table_beside_the_offer_may_be_a_competitor_s(own, other):
    beside = [[own, None, None, None, None, other], [*HEAD, None, *HEAD], [*GC1, None, *GC1[:3], 1130]]
    assert states(beside) == {"D3": "accepted", "I3": "question"}
    stocks = [["Rolls", None, None, None, None, "Sheets"], *beside[1:]]
    assert "question" not in states(stocks).values()


@pytest.mark.parametrize(
    "label",
    [
        "Industry average GC1", "Last year GC1", "GC1 (target price)", "Zielpreis GC1", "Vorjahr GC1", "Marktpreis GC1",
        "GC1 - Konkurrenzpreis", "Prix marché GC1", "GC1 prix cible", "Precio de mercado GC1", "Año pasado GC1",
        "Marknadspris GC1", "Förra året GC1",
    ],
)  # fmt: skip
def test_a_row_that_calls_itself_so_offers_nothing(label):
    assert row_offers(label) is Offering.NOT
    reading = read([HEAD, GC1, [label, 250, 400, 1100]])
    assert [line.offer.source.cell for line in reading.lines] == ["D2"]
    assert [passed.rows for passed in reading.passed_over] == ["3"]


@pytest.mark.parametrize(
    "label",
    ["Competitor GC1", "Our target GC1", "Market 300 g/m² GC1", "Objectif GC1", "Mercado GC1", "GC1 Ziel", "Mål GC1"],
)
def test_of_a_row_that_may_be_so_it_is_asked(label):
    assert states([HEAD, GC1, [label, 250, 400, 1100]]) == {"D2": "accepted", "D3": "question"}


@pytest.mark.parametrize(
    "label",
    [
        "Marketline GC1",
        "Market Street GC1",
        "Target White GC1",
        "Zielona GC1",
        "Mercado Blanco GC1",
        "GC1 for the EU market",
    ],
)
def test_other_names_are_boards(label):
    assert states([HEAD, GC1, [label, 250, 400, 1100]]) == {"D2": "accepted", "D3": "accepted"}


@pytest.mark.parametrize(
    "title",
    [
        "Please quote the following, target prices:", "DRAFT - not an offer", "Example only, prices fictitious",
        "Our bid to customer", "Bitte anbieten, Zielpreise:", "Entwurf", "Fiktive Preise",
        "Veuillez coter, prix cibles", "Brouillon", "Prix fictifs", "Favor de cotizar, precios objetivo", "Borrador",
        "Vänligen offerera, målpriser",
        "Utkast", "Target prices", "Entwurf Preisliste 2027",
    ],
)  # fmt: skip
def test_what_may_be_no_paper_of_offers_is_asked_about(title):
    assert heading_offers(title) is not Offering.SURELY
    assert states([[title], HEAD, GC1]) == {"D3": "question"}


@pytest.mark.parametrize(
    "title",
    [
        "Offer to customer Fold & Box Ltd.", "Please quote our number 4711 when ordering",
        "Price list for the German market", "Draft beer cartons", "Angebot an den Kunden", "Offre de prix", "Oferta",
        "Offert", "This price list is not an offer",
    ],
)  # fmt: skip
def test_other_papers_offer(title):
    assert states([[title], HEAD, GC1]) == {"D3": "accepted"}


@pytest.mark.parametrize(
    ("bought", "asked"),
    [
        ("We bought SBS C1S 18 pt at $1,150/ST last year.", "Please quote CRB C1S 20 pt at 874 USD/ST or better."),
        ("Wir zahlten SBS C1S 18 pt 1150 USD/ST.", "Wir suchen CRB C1S 20 pt zu 874 USD/ST."),
        ("Nous avons payé SBS C1S 18 pt 1150 USD/ST.", "Veuillez coter CRB C1S 20 pt à 874 USD/ST."),
        ("Hemos pagado SBS C1S 18 pt 1150 USD/ST.", "Favor de cotizar CRB C1S 20 pt a 874 USD/ST."),
        ("Vi betalade SBS C1S 18 pt 1150 USD/ST.", "Vänligen offerera CRB C1S 20 pt 874 USD/ST."),
    ],
)
def test_what_a_buyer_writes_of_his_own_prices_is_never_accepted(bought, asked):
    assert "accepted" not in states([[bought], [asked]]).values()
    assert "accepted" in states([["SBS C1S 18 pt at $1,150/ST."], ["CRB C1S 20 pt at 874 USD/ST."]]).values()


@pytest.mark.parametrize("remark", ["Target price", "Zielpreis", "Prix cible", "Precio objetivo", "Målpris"])
def test_a_remark_beside_a_row_may_say_so(remark):
    rows = [[*HEAD, "Remarks"], [*GC1, "FSC Mix"], [*GC2, remark]]
    assert states(rows) == {"D2": "accepted", "D3": "question"}


def test_a_first_column_may_tell_whose_price_it_is():
    rows = [["Whose", *HEAD], ["Our offer", *GC1], ["Competitor", *GC2]]
    assert states(rows) == {"E2": "accepted", "E3": "question"}


@pytest.mark.parametrize(
    "title",
    [
        "Photos for illustration only", "Market prices of pulp are adjusted monthly",
        "Sheets are not on offer at present",
        "Marktpreise für Altpapier werden monatlich angepasst", "Prix du marché de la pâte révisés chaque mois",
        "Los precios de mercado de la celulosa se revisan", "Marknadspriserna på massa ses över varje månad",
    ],
)  # fmt: skip
def test_what_is_said_of_other_things_above_a_list_is_no_doubt(title):
    assert states([[title], HEAD, GC1]) == {"D3": "accepted"}


@pytest.mark.parametrize(
    ("own", "market"),
    [("Halden offer", "Market"), ("Angebot Halden", "Markt"), ("Offre Halden", "Marché"),
     ("Oferta Halden", "Competencia"), ("Offert Halden", "Marknad")],
)  # fmt: skip
def test_the_markets_price_beside_the_firms_own_is_never_taken(own, market):
    rows = [["SBS", 450, 350, 1150, 1180], ["CUK", 500, 330, 1090, 1100]]
    found = lines([["Halden Board, Inc."], ["USD per short ton"], ["Grade", "µm", "g/m²", own, market], *rows])
    assert {cell for cell, line in found.items() if str(line.state) == "accepted"} == {"D4", "D5"}


def test_prices_for_two_markets_are_offered():
    rows = [["SBS", 450, 350, 1150, 1180], ["CUK", 500, 330, 1090, 1100]]
    heads = ["Grade", "µm", "g/m²", "Home market", "Export market"]
    found = lines([["Halden Board, Inc."], ["USD per short ton"], heads, *rows])
    assert {str(line.state) for line in found.values()} == {"accepted"}
