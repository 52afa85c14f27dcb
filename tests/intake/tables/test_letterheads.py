"""Who quotes, beside the terms, right above a header: a letterhead, and no group of columns."""

from datetime import date

import pytest

from tests.intake.sheets import lines

HEADS = {
    "en": ["Grade", "g/m²", "Caliper µm", "Price EUR/t"],
    "de": ["Sorte", "Gewicht g/m²", "Dicke µm", "Preis EUR/t"],
    "fr": ["Qualité", "Grammage g/m²", "Épaisseur µm", "Prix EUR/t"],
    "es": ["Calidad", "Gramaje (g/m2)", "Espesor (micras)", "Precio (€/t)"],
    "sv": ["Kvalitet", "Ytvikt g/m²", "Tjocklek µm", "Pris EUR/t"],
}
BOARDS = [["GC1", 230, 370, 1327], ["GC2", 250, 415, 1279], ["GD2", 350, 460, 842]]


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", ["Thornquist Paper & Board LLC price list", None, None, "delivered, valid until 31 December 2026"]),
        ("de", ["Preisliste 7/2026", "frei Haus, gültig bis 31.12.2026"]),
        ("fr", ["Formats Lambrelle SA", None, "franco, valable jusqu'au 31/12/2026"]),
        ("es", ["Tarifa 2026/3", "Portes incluidos. Precios válidos hasta el 31/12/2026"]),
        ("sv", ["Rullkartong Tivelösa AB", None, "fraktfritt, giltigt till 31.12.2026"]),
    ],
)
def test_a_firm_or_a_numbered_list_beside_its_terms_heads_no_columns(language, line):
    found = lines([line, HEADS[language], *BOARDS])
    assert set(found) == {"D3", "D4", "D5"}
    assert {str(each.state) for each in found.values()} == {"accepted"}
    assert found["D3"].offer.caliper_um == 370
    assert found["D3"].offer.valid_until == date(2026, 12, 31)
    assert found["D3"].offer.delivered is True


BARE_HEADS = {
    "en": ["Grade", "g/m²", "Caliper µm", "Price"],
    "de": ["Sorte", "Gewicht g/m²", "Dicke µm", "Preis"],
    "fr": ["Qualité", "Grammage g/m²", "Épaisseur µm", "Prix"],
    "es": ["Calidad", "Gramaje (g/m2)", "Espesor (micras)", "Precio"],
    "sv": ["Benämning", "Ytvikt g/m²", "Tjocklek (mikrometer)", "Pris per ton"],
}


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", ["Prices in EUR/t excl. VAT", "delivered"]),
        ("de", ["Preise in EUR/t zzgl. MwSt.", "frei Haus"]),
        ("fr", ["Prix en EUR/t HT", "franco"]),
        ("es", ["Precios en EUR/t sin IVA", "entregado"]),
        ("sv", ["Priser i EUR/ton exkl. moms", "fritt kund"]),
    ],
)
@pytest.mark.parametrize("gap", [0, 2])
@pytest.mark.parametrize(
    "firm", [[], [["Kartonwerk Quendelberg GmbH"]], [["Supplier:", "Kartonwerk Quendelberg GmbH"]]]
)
def test_nor_does_what_all_prices_are_in_beside_their_terms(language, line, gap, firm):
    line = [line[0], *[None] * gap, line[1]]
    found = lines([*firm, line, BARE_HEADS[language], *BOARDS])
    assert [str(each.state) for each in found.values()] == ["accepted"] * 3
    for each in found.values():
        assert (each.offer.currency, str(each.offer.basis), each.offer.delivered) == ("EUR", "tonne", True)


def test_units_and_terms_over_the_prices_of_each_head_them():
    heads = ["Grade", "g/m²", "Caliper µm", "Rolls", "Sheets"]
    rows = [[*board, board[-1] + 80] for board in BOARDS]
    found = lines([["Prices in EUR/t", None, None, "ex works", "delivered"], heads, *rows])
    assert [each.offer.delivered for each in found.values()] == [False, True] * 3


def test_groups_of_columns_stay_groups():
    groups = [None, None, "Rolls EUR/t", None, "Sheets EUR/t", None]
    heads = ["Grade", "g/m²", "< 5 t", "> 5 t", "< 5 t", "> 5 t"]
    found = lines([groups, heads, ["GC1", 230, 1327, 1290, 1380, 1350], ["GC2", 250, 1279, 1240, 1330, 1300]])
    assert len(found) == 8
    assert {str(each.offer.basis) for each in found.values()} == {"tonne"}


def test_firms_beside_each_other_head_the_prices_of_each():
    firms = ["Alder Board Ltd", None, None, "Birk Karton GmbH", None, None]
    heads = ["Grade", "g/m²", "EUR/t"] * 2
    found = lines([firms, heads, ["GC1", 230, 1327, "GC1", 230, 1310], ["GC2", 250, 1279, "GC2", 250, 1266]])
    assert (found["C3"].offer.vendor, found["F3"].offer.vendor) == ("Alder Board Ltd", "Birk Karton GmbH")


@pytest.mark.parametrize(
    "heads",
    [
        ["NATURE DU CARTON", "Gram., g/m²", "Prix de vente EUR/1000 kg"],
        ["TIPO DE CARTÓN", "Gramaje, gsm", "Precio Euro/t"],
        ["Sortenbezeichnung / Paperboard", "Weight [g/m²]", "Preis netto [CHF/t]"],
    ],
)
def test_a_plain_head_that_is_written_like_a_firm_heads_its_column(heads):
    found = lines([heads, ["GD2", 300, 945], ["GC1", 250, 1210]])
    assert [(str(line.state), line.offer.grade) for line in found.values()] == [
        ("accepted", "CRB"),
        ("accepted", "FBB"),
    ]


def test_a_list_s_number_is_no_amount_of_the_money_beside_it():
    rows = [
        ["Älvmyra Kartong AB", "Prislista 4", "SEK per 1000 kg, fritt kund"], [],
        ["Produkt", "Gramvikt g/m²", "Tjocklek µm", "Nettopris"], ["Falskartong GC1", 225, 365, 13250],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.currency, str(line.offer.basis)) == ("accepted", "SEK", "tonne")
    assert line.offer.vendor == "Älvmyra Kartong AB"
