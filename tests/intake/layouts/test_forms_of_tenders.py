"""A tender's forms one below another: who tenders and until when above them, in what form each board is supplied."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.firms.company import may_call_a_vendor

LANGUAGES = [
    (
        ("Tenderer", "Tender open for acceptance until"),
        ("Board offered", "Grammage", "Caliper", "Supplied as", "Rate"),
        ("reels", "sheets 720 x 1020 mm"),
        ("EUR per tonne", "EUR per 1000 sheets"),
    ),
    (
        ("Bieter", "Angebot bindend bis"),
        ("Sorte", "Flächengewicht", "Dicke", "Geliefert als", "Preis"),
        ("Rollen", "Bogen 720 x 1020 mm"),
        ("EUR je Tonne", "EUR je 1000 Bogen"),
    ),
    (
        ("Soumissionnaire", "Offre valable jusqu'au"),
        ("Qualité", "Grammage", "Épaisseur", "Fourni en", "Prix"),
        ("bobines", "feuilles 720 x 1020 mm"),
        ("EUR par tonne", "EUR par 1000 feuilles"),
    ),
    (
        ("Licitador", "Oferta válida hasta"),
        ("Calidad", "Gramaje", "Espesor", "Suministrado en", "Precio"),
        ("bobinas", "hojas 720 x 1020 mm"),
        ("EUR por tonelada", "EUR por 1000 hojas"),
    ),
    (
        ("Anbudsgivare", "Anbudet gäller till"),
        ("Kvalitet", "Ytvikt", "Tjocklek", "Levereras som", "Pris"),
        ("rullar", "ark 720 x 1020 mm"),
        ("EUR per ton", "EUR per 1000 ark"),
    ),
]


@pytest.mark.parametrize(("above", "labels", "forms", "units"), LANGUAGES)
def test_what_stands_above_holds_for_every_form_below(above, labels, forms, units):
    rows = [[above[0], "Quellmoor Kartonwerk AB"], [above[1], "2027-01-29"]]
    for lot, form, unit, price in zip("AB", forms, units, (1149, 261.75), strict=True):
        values = (("Folding boxboard GC1", None), (250, "g/m²"), (400, "µm"), (form, None), (price, unit))
        rows += [[], [f"LOT {lot}"], *([label, *value] for label, value in zip(labels, values, strict=True))]
    offers = [line.offer for line in lines(rows).values()]
    assert [(str(offer.basis), offer.sheet_mm) for offer in offers] == [("tonne", None), ("1000sheets", (720, 1020))]
    assert {offer.vendor for offer in offers} == {"Quellmoor Kartonwerk AB"}
    assert {str(offer.valid_until) for offer in offers} == {"2027-01-29"}


@pytest.mark.parametrize("form", ["reels", "Rollen", "bobines", "hojas", "ark"])
def test_a_form_is_no_firm(form):
    assert not may_call_a_vendor(form)


@pytest.mark.parametrize("label", ["Tender opened on", "Site visit", "Our list of", "Certificate valid until"])
def test_a_day_beside_other_words_ends_no_offer(label):
    head, row = ["Grade", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1149]
    (line,) = lines([["Quellmoor Kartonwerk AB"], [label, "2027-01-29"], [], head, row]).values()
    assert line.offer.valid_until is None
