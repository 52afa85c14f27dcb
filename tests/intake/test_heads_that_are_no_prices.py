"""Heads with a word for prices that head none: numbers of papers, last days, histories; and what stands beside them."""

import pytest

from tests.intake.sheets import codes, lines, prices

HEAD = ["Grade", "Caliper pt", "lb/MSF", "PRICE", "CCY", "PER"]
ROWS = [["SBS C1S", 18, 78, 1221, "USD", "STN"], ["CRB", 20, 79, 964, "USD", "STN"], ["URB", 28, 99, 723, "USD", "STN"]]


@pytest.mark.parametrize(
    "head", ["QUOTE_ID", "Bid ID", "Price key", "Angebots-ID", "Réf. devis", "ID oferta", "Offert-ID"]
)
def test_numbers_of_quotes_are_no_prices(head):
    rows = [[7700 + place, *row] for place, row in enumerate(ROWS)]
    assert prices(lines([[head, *HEAD], *rows])) == {
        f"E{place}": ("accepted", str(row[3]), "short_ton") for place, row in enumerate(ROWS, start=2)
    }


def test_a_quote_by_itself_is_a_price():
    rows = [[row[0], row[1], row[2], row[3]] for row in ROWS]
    assert set(lines([["Grade", "Caliper pt", "lb/MSF", "Quote USD/ST"], *rows])) == {"D2", "D3", "D4"}


def test_a_code_of_freight_says_whether_it_is_paid():
    said = ["MILL", "DLVD", "DAP"]
    found = lines([[*HEAD, "FOB_CODE"], *([*row, code] for row, code in zip(ROWS, said, strict=True))])
    assert [line.offer.delivered for line in found.values()] == [False, True, True]


@pytest.mark.parametrize(
    "head", ["Quote Expires", "Angebotsende", "Expiration de l'offre", "Oferta vence", "Offert går ut"]
)
def test_the_last_day_of_a_quote_is_no_price(head):
    found = lines([[*HEAD, head], *([*row, "10/31/2026"] for row in ROWS)])
    assert set(found) == {"D2", "D3", "D4"}
    assert {str(line.offer.valid_until) for line in found.values()} == {"2026-10-31"}


@pytest.mark.parametrize(
    ("past", "offer"),
    [
        ("{} (history)", "Offer 2027"),
        ("{} (Historie)", "Angebot 2027"),
        ("{} (historique)", "Offre 2027"),
        ("{} (histórico)", "Oferta 2027"),
        ("{} (historik)", "Offert 2027"),
    ],
)
def test_what_was_paid_in_years_before_is_history(past, offer):
    head = ["Grade", "g/m²", "µm", past.format(2025), past.format(2026), offer]
    rows = [["GC1", 230, 370, 1120, 1150, 1175], ["GC1", 280, 460, 1110, 1140, 1165], ["GT2", 350, 450, 760, 775, 798]]
    found = lines([["EUR/1000 kg"], head, *rows])
    assert prices(found) == {f"F{place}": ("accepted", str(row[5]), "tonne") for place, row in enumerate(rows, start=3)}


@pytest.mark.parametrize(
    "remark",
    ["from our warehouse stock", "aus unserem Lager", "de notre stock", "de nuestras existencias", "från vårt lager"],
)
def test_a_line_from_stock_does_not_wait_for_the_others(remark):
    found = lines([["Lead time 3 weeks unless noted."], [*HEAD, "Notes"], [*ROWS[0], remark], *ROWS[1:]])
    assert [line.offer.lead_days for line in found.values()] == [(0, 0), (21, 21), (21, 21)]


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


def test_a_deviation_of_a_few_grams_is_asked_about_and_a_rounded_measure_is_none():
    found = _answered("Offered: 235 g/m², 380 µm instead", "none", "offered: 18 pt")
    assert [str(line.state) for line in found.values()] == ["question", "accepted", "accepted"]
    assert codes(found["E6"]) == {"number-ambiguous"}


@pytest.mark.parametrize("label", ["Bieter:", "Soumissionnaire :", "Oferente:", "Anbudsgivare:", "Tenderer:"])
def test_who_answers_a_request_is_the_vendor(label):
    found = lines([[label, "Traunstett Karton GmbH"], [], HEAD, *ROWS])
    assert {line.offer.vendor for line in found.values()} == {"Traunstett Karton GmbH"}


@pytest.mark.parametrize("head", ["Gewicht kg", "Weight (kg)", "Poids kg", "Peso kg", "Vikt kg"])
def test_kilograms_beside_a_basis_weight_are_of_the_lot(head):
    rows = [["GC2", 230, 360, "3.820", 985], ["GD2", 280, 360, "6.415", 690], ["GD2", 350, 455, "1.790", 705]]
    found = lines([["Preise €/t"], ["Bezeichnung", "g/qm", "my", head, "Preis"], *rows])
    assert [float(line.offer.grammage_gsm) for line in found.values()] == [230, 280, 350]
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_pounds_beside_grams_may_be_the_basis_weight_once_more():
    rows = [["SBS", 254, 52, 18, 1221], ["SBS", 381, 78, 24, 1230]]
    found = lines([["USD per short ton"], ["Grade", "g/m²", "Basis weight lb/MSF", "pt", "Price"], *rows])
    assert [round(float(line.offer.grammage_gsm)) for line in found.values()] == [254, 381]
