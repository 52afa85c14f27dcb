"""A buyer's form or request that a vendor filled in: deviations by line, the day until which bids are taken."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Pos.", "Grade", "g/m²", "µm", "EUR/tonne"]
ROWS = [[1, "GC1", 240, 385, 1322], [2, "GC2", 300, 510, 1228], [3, "GD2", 350, 465, 838]]


@pytest.mark.parametrize(
    ("head", "lead", "minimum"),
    [
        ("Dérogation du fournisseur", "délai 8 semaines", "min. 10 t"),
        ("Vendor exceptions", "lead time 8 weeks", "min. 10 tonnes"),
        ("Abweichung des Lieferanten", "Lieferzeit 8 Wochen", "Mindestmenge 10 t"),
        ("Desviación del proveedor", "plazo 8 semanas", "mín. 10 t"),
        ("Leverantörens avvikelse", "leveranstid 8 veckor", "minst 10 ton"),
        ("Supplier", "lead time 8 weeks", "min. 10 tonnes"),
    ],
)
def test_what_a_vendor_remarks_on_a_line_is_no_vendors_name(head, lead, minimum):
    rows = [[*HEAD, head], ROWS[0], [*ROWS[1], lead], [*ROWS[2], minimum]]
    found = [line.offer for line in lines([["Vendor:", "Saltmarrow Mills Ltd"], [], *rows]).values()]
    assert {offer.vendor for offer in found} == {"Saltmarrow Mills Ltd"}
    if head != "Supplier":
        assert [offer.lead_days for offer in found] == [None, (56, 56), None]
        assert [offer.minimum_kg for offer in found] == [None, None, 10000]


def test_a_name_under_vendor_is_one():
    rows = [[*HEAD, "Supplier"], [*ROWS[0], "Stock Mills"], [*ROWS[1], "Harlow Bend"]]
    assert [line.offer.vendor for line in lines(rows).values()] == ["Stock Mills", "Harlow Bend"]


@pytest.mark.parametrize(
    ("texts", "until"),
    [
        (["Date limite : 18/09/2026", "Offre valable jusqu'au 31/10/2026"], "2026-10-31"),
        (["Date limite de validité : 31/10/2026"], "2026-10-31"),
        (["Proposal expires 45 days from 2026-07-06"], "2026-08-20"),
        (["Proposal expires 2026-07-06"], "2026-07-06"),
        (["L'offre expire 45 jours après le 6 juillet 2026"], "2026-08-20"),
    ],
)
def test_until_when_such_an_offer_holds(texts, until):
    found = lines([*([text] for text in texts), [], HEAD, *ROWS])
    assert {str(line.offer.valid_until) for line in found.values()} == {until}


@pytest.mark.parametrize(
    ("remark", "state"),
    [
        ("We do not make 380 µm; offered is 420 µm at 290 g/m²", "question"),
        ("290 g/m² instead of 270 g/m²", "question"),
        ("wir liefern 290 g/m² statt 270 g/m²", "question"),
        ("nous livrons du 290 g / 420 µm, pas de 270 g", "question"),
        ("ofrecemos 290 g/m² en lugar de 270 g/m²", "question"),
        ("vi levererar 290 g/m² i stället", "question"),
        ("offered in GD2", "question"),
        ("we supply 270 g/m²", "accepted"),
        ("offered as 15 pt", "accepted"),
        ("wir liefern 270 g/m², nicht 290 g/m²", "accepted"),
        ("290 g/m² also available", "accepted"),
        ("290 g/m² not offered", "accepted"),
        ("offered in reels of 780 mm, minimum 3 t", "accepted"),
    ],
)
def test_another_board_offered_in_a_remark_is_asked_about(remark, state):
    found = lines([[*HEAD, "Remarks"], [1, "GC1", 270, 380, 1100, remark], [2, "GC1", 230, 320, 1120, None]])
    assert [str(line.state) for line in found.values()] == [state, "accepted"]


QUOTED_HEAD = ["Grade", "Caliper pt", "lb/MSF", "PRICE", "CCY", "PER"]
QUOTED_ROWS = [
    ["SBS C1S", 18, 78, 1221, "USD", "STN"],
    ["CRB", 20, 79, 964, "USD", "STN"],
    ["URB", 28, 99, 723, "USD", "STN"],
]


REQUEST = ["Lot", "Board", "Requested g/m²", "Requested µm", "Price £/t", "Deviation from specification"]


def _answered(*remarks, title="REQUEST FOR QUOTATION"):
    rows = [["A", "GC1", 240, 390, 1188], ["B", "GC2", 270, 435, 1160], ["C", "GD2", 350, 457, 826]]
    said = [[*row, remark] for row, remark in zip(rows, remarks, strict=True)]
    terms = "Prices in GBP per tonne, delivered Telbury, firm until 30 September 2026."
    firm = ["Supplier name:", "Ferrowick Board Sales Ltd", None, "Completed by:", "R. Ingle"]
    return lines([[title, None, None, None, None, "Ref", "R-87"], [terms], firm, [], REQUEST, *said])


def test_a_deviation_of_a_few_grams_is_asked_about_and_a_rounded_measure_is_none():
    found = _answered("Offered: 235 g/m², 380 µm instead", "none", "offered: 18 pt")
    assert [str(line.state) for line in found.values()] == ["question", "accepted", "accepted"]
    assert codes(found["E6"]) == {"number-ambiguous"}


@pytest.mark.parametrize("label", ["Bieter:", "Soumissionnaire :", "Oferente:", "Anbudsgivare:", "Tenderer:"])
def test_who_answers_a_request_is_the_vendor(label):
    found = lines([[label, "Traunstett Karton GmbH"], [], QUOTED_HEAD, *QUOTED_ROWS])
    assert {line.offer.vendor for line in found.values()} == {"Traunstett Karton GmbH"}


@pytest.mark.parametrize(
    ("title", "asks", "label"),
    [
        ("REQUEST FOR QUOTATION", "Issued by:", "Bidder (company):"),
        ("REQUEST FOR QUOTATION", "Enquiry from:", "Bidder:"),
        ("Preisanfrage", "Anfrage von:", "Lieferant:"),
        ("Demande de prix", "Demandeur :", "Fournisseur :"),
        ("Solicitud de cotización", "Solicitante:", "Proveedor:"),
        ("Offertförfrågan", "Utfärdad av:", "Leverantör:"),
    ],
)
def test_who_asks_for_offers_does_not_quote(title, asks, label):
    table = [["Line", "Grade", "Caliper (in.)", "lb/1000 ft²", "Bid price US$/cwt"], [1, "SBS C1S", 0.014, 60, 59.85]]
    rows = [[title], [asks, "Pellworth Carton Co."], [label, "Tamsett Board Sales Inc."], [], *table]
    (line,) = lines(rows).values()
    assert line.offer.vendor == "Tamsett Board Sales Inc."
