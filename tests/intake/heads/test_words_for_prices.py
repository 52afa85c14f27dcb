"""Words that head prices, and words for a price that head none."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, prices


def test_an_export_calls_prices_conditions_and_order_sizes_scales():
    head = ["MATNR", "MATL_DESC", "GRAMM_GM2", "CAL_UM", "SCALE_FROM", "SCALE_UM", "COND_VAL", "CURR", "PER", "UOM"]
    rows = [
        ["7001", "FBB GC1 240 G", 240, 380, 0, "KG", "1142.50", "EUR", 1000, "KG"],
        ["7001", "FBB GC1 240 G", 240, 380, 5000, "KG", "1098.00", "EUR", 1000, "KG"],
    ]
    small, large = lines([head, *rows]).values()
    assert [line.offer.price for line in (small, large)] == [Decimal("1142.50"), Decimal("1098.00")]
    assert (small.offer.below_kg, large.offer.from_kg) == (5000, 5000)


BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_days_over_two_prices_head_them():
    rows = [[None, None, None, "until 31 Dec 2026", "from 1 Jan 2027"], [*HEAD, "$/ST", "$/ST"], [*BOARD, 1150, 1190]]
    assert {line.offer.source.cell for line in lines(rows).values()} == {"D3", "E3"}


@pytest.mark.parametrize("head", ["Net", "Net USD/ST", "Netto USD/ST"])
def test_net_over_figures_is_a_price(head):
    rows = [["SBS C1S", 18, 78, 1221], ["CCNB", 20, 79, 964]]
    assert set(lines([["USD per short ton"], ["Grade", "pt", "lb/MSF", head], *rows])) == {"D3", "D4"}


def test_a_price_per_pallet_stays_one():
    head = ["Carton", "mm", "g/m²", "µm", "CHF par palette"]
    found = lines([head, ["GC1", "700 x 1000", 250, 405, 252.4], ["GD2", "700 x 1000", 400, 525, 291]])
    assert prices(found) == {"E2": ("question", "252.4", None), "E3": ("question", "291", None)}


def test_an_amount_with_a_price_unit_and_a_unit_of_measure_is_the_price():
    rows = [
        ["Verk.Org", "Materialkurztext", "Flächengew.", "Dicke", "Betrag", "Währg", "Preiseinh.", "ME"],
        [None, None, "g/m²", "µm"],
        [1000, "GC2 Faltschachtelkarton", 230, 375, 1245, "EUR", 1, "TO"],
        [1000, "GD2 Duplexkarton", 350, 465, 788, "EUR", 1000, "KG"],
        [1000, "GD2 Duplexkarton", 300, 400, 79.5, "EUR", 100, "KG"],
    ]
    found = lines(rows)
    assert prices(found) == {
        "E3": ("accepted", "1245", "tonne"),
        "E4": ("accepted", "788", "tonne"),
        "E5": ("question", "79.5", None),
    }
    assert "basis-unknown" in codes(found["E5"])


@pytest.mark.parametrize(
    ("head", "basis"),
    [("Tonpris", "tonne"), ("Tonnenpreis (EUR)", "tonne"), ("Kilopreis", "kg"), ("kvadratmeterpris", "m2")],
)
def test_one_word_that_says_price_and_unit(head, basis):
    found = lines(
        [["EUR"], ["Sort", "g/m²", "µm", head], ["GC2", 250, 405, {"tonne": 1250, "kg": 1.25, "m2": 0.31}[basis]]]
    )
    assert [(str(line.state), line.offer.basis) for line in found.values()] == [("accepted", basis)]


QUOTED_HEAD = ["Grade", "Caliper pt", "lb/MSF", "PRICE", "CCY", "PER"]
ROWS = [["SBS C1S", 18, 78, 1221, "USD", "STN"], ["CRB", 20, 79, 964, "USD", "STN"], ["URB", 28, 99, 723, "USD", "STN"]]


@pytest.mark.parametrize(
    "head", ["QUOTE_ID", "Bid ID", "Price key", "Angebots-ID", "Réf. devis", "ID oferta", "Offert-ID"]
)
def test_numbers_of_quotes_are_no_prices(head):
    rows = [[7700 + place, *row] for place, row in enumerate(ROWS)]
    assert prices(lines([[head, *QUOTED_HEAD], *rows])) == {
        f"E{place}": ("accepted", str(row[3]), "short_ton") for place, row in enumerate(ROWS, start=2)
    }


def test_a_quote_by_itself_is_a_price():
    rows = [[row[0], row[1], row[2], row[3]] for row in ROWS]
    assert set(lines([["Grade", "Caliper pt", "lb/MSF", "Quote USD/ST"], *rows])) == {"D2", "D3", "D4"}


REQUEST = ["Lot", "Board", "Requested g/m²", "Requested µm", "Price £/t", "Deviation from specification"]


def _answered(*remarks, title="REQUEST FOR QUOTATION"):
    rows = [["A", "GC1", 240, 390, 1188], ["B", "GC2", 270, 435, 1160], ["C", "GD2", 350, 457, 826]]
    said = [[*row, remark] for row, remark in zip(rows, remarks, strict=True)]
    terms = "Prices in GBP per tonne, delivered Telbury, firm until 30 September 2026."
    firm = ["Supplier name:", "Ferrowick Board Sales Ltd", None, "Completed by:", "R. Ingle"]
    return lines([[title, None, None, None, None, "Ref", "R-87"], [terms], firm, [], REQUEST, *said])


@pytest.mark.parametrize("title", ["REQUEST FOR QUOTATION", "Preisanfrage", "Demande de prix", "Offertförfrågan"])
def test_a_request_for_quotation_heads_no_prices(title):
    found = _answered("none", "none", "none", title=title)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert {line.offer.vendor for line in found.values()} == {"Ferrowick Board Sales Ltd"}
    assert {(str(line.offer.valid_until), line.offer.delivered) for line in found.values()} == {("2026-09-30", True)}


def test_capitals_say_the_same():
    vendor = "QUILLMERE BOARD KARTON GMBH"
    rows = [
        [vendor], ["PREISE EUR/T AB WERK"], ["CALL FOR LEAD TIME"], ["SORTE", "G/M²", "ΜM", "PREIS"],
        ["GC1", 250, 405, 1250],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert (line.offer.vendor, line.offer.caliper_um, line.offer.delivered) == (vendor, 405, False)


def test_a_value_by_the_kilo_is_a_price_where_no_other_column_is():
    heads = ["Referencia", "Gramaje (g/m²)", "Valor kg"]
    said = "Precios en pesos colombianos (COP) por kilo"
    (line,) = lines([[said], heads, ["GC1", 230, 5210.5]]).values()
    assert (str(line.state), line.offer.basis.value, line.offer.currency) == ("accepted", "kg", "COP")
    both = lines([[said], ["Referencia", "Gramaje (g/m²)", "Precio", "Valor kg"], ["GC1", 230, 5210.5, 88000]])
    assert list(both) == ["C3"]


def test_amounts_that_carry_their_own_unit_are_prices():
    rows = [["Concepto", "Importe"], ["GC1 250 g/m² 400 µm", "1.259,50 €/t"], ["GD2 350 g/m² 470 µm", "0,858 €/kg"]]
    assert [(cell, line.offer.basis) for cell, line in lines(rows).items()] == [("B2", "tonne"), ("B3", "kg")]
    assert not lines([["Concepto", "Importe"], ["GC1 250 g/m² 400 µm", "1.259,50 €"]])


def test_a_head_that_names_money_heads_prices_and_its_weeks_are_theirs():
    heads = ["Fabrication (mini 5 t, 6 semaines) €/t", "Stock (immédiat) €/t", "Sur commande\n4 semaines\n€/t"]
    rows = [["Qualité", "g/m²", "µm", *heads], ["GC1", 250, 415, 1255, 1340, 1290], ["GD2", 350, 465, 832, 917, 866]]
    found = list(lines(rows).values())[:3]
    assert [str(line.state) for line in found] == ["question", "accepted", "accepted"]
    assert [(line.offer.lead_days, line.offer.minimum_kg) for line in found] == [
        ((42, 42), None),
        (None, None),
        ((28, 28), None),
    ]


@pytest.mark.parametrize(("head", "price"), [("Netto kg", 1.24), ("kg netto", 1.24)])
def test_a_net_price_per_kg_alone_is_offered(head, price):
    found = lines([["Preise in EUR"], ["Sorte", "g/m2", head], ["GC1", 300, price], ["GC2", 280, 1.2]])
    assert [(float(line.offer.price), line.offer.basis) for line in found.values()] == [(price, "kg"), (1.2, "kg")]


@pytest.mark.parametrize(
    "head",
    ["2027 indication", "Indication 2027 (EUR/t)", "Richtpreis 2027", "2027 Preisindikation", "Prix indicatif 2027",
     "Precio orientativo 2027", "Riktpris 2027"],
)  # fmt: skip
def test_a_year_and_a_word_for_indications_head_prices_that_nobody_is_held_to(head):
    found = lines([["EUR/t"], ["Grade", "g/m²", "µm", head], ["GC2", 240, 385, 1180], ["GD2", 350, 470, 790]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"D3": "accepted", "D4": "accepted"}
    assert all("number-ambiguous" in codes(line) for line in found.values())


def test_a_year_and_another_word_head_none_for_certain():
    found = lines([["Plan"], ["Grade", "g/m²", "µm", "2027 tonnage"], ["GC2", 240, 385, 1180], ["GD2", 350, 470, 790]])
    assert not any(str(line.state) == "accepted" for line in found.values())
