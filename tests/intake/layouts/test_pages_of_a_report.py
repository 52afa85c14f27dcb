"""'RPT0047 | Customer price report | Page 2 of 2' over the repeated header of a report: it heads the page alone."""

import pytest

from tests.intake.sheets import read

REPORTS = {
    "en": (
        "Customer price report",
        "Page {} of 2",
        ["Item no", "Description", "Caliper µm", "g/m²", "Unit price EUR/t"],
    ),
    "de": ("Kundenpreisliste", "Seite {} von 2", ["Nr.", "Bezeichnung", "Dicke µm", "g/m²", "Preis EUR/t"]),
    "fr": ("Tarif clients", "Page {} sur 2", ["Code", "Désignation", "Épaisseur µm", "g/m²", "Prix EUR/t"]),
    "es": ("Tarifa de clientes", "Página {} de 2", ["Código", "Descripción", "Espesor µm", "g/m²", "Precio EUR/t"]),
    "sv": ("Kundprislista", "Sida {} av 2", ["Nr", "Benämning", "Tjocklek µm", "g/m²", "Pris EUR/t"]),
}
FIRST = [["100312", "GC1", 375, 235, 1312], ["100318", "GC1", 440, 275, 1298]]
SECOND = [["300318", "GD2", 390, 300, 884], ["300322", "GD2", 520, 400, 872]]


@pytest.mark.parametrize("gap", [True, False])
@pytest.mark.parametrize("again", [True, False])
@pytest.mark.parametrize("language", REPORTS)
def test_every_page_is_read(language, again, gap):
    name, page, head = REPORTS[language]
    top, second = (["RPT0047", None, name, None, page.format(at)] for at in (1, 2))
    rows = [top, [], head, *FIRST, *([[]] if gap else []), second, *([head] if again else []), *SECOND]
    found = read(rows).lines
    assert [str(line.offer.price) for line in found] == ["1312", "1298", "884", "872"]
    assert {str(line.state) for line in found} == {"accepted"}


def test_groups_over_prices_still_head_them():
    groups = ["RPT0047", None, None, None, "Rolls", "Sheets"]
    head = ["Item no", "Description", "Caliper µm", "g/m²", "EUR/t", "EUR/t"]
    found = read([groups, head, [*FIRST[0], 1400], [*FIRST[1], 1390]]).lines
    assert [str(line.offer.price) for line in found] == ["1312", "1400", "1298", "1390"]


@pytest.mark.parametrize("size", ["Hoja 72 x 102", "Blatt 72/102", "Ark 72 x 102"])
def test_sheets_of_a_size_are_no_pages(size):
    rows = [["Calidad", "g/m²", "µm", "Bobina EUR/t", f"{size} EUR/t"], ["GC1", 235, 375, 1312, 1400]]
    assert [str(line.offer.price) for line in read(rows).lines] == ["1312", "1400"]


COVERS = {
    "en": ("PRICE REPORT PR-220", "USD per short ton, delivered", "Page {} of 2"),
    "de": ("PREISBERICHT PB-220", "Preise in USD je short ton, frei Haus", "Seite {} von 2"),
    "fr": ("RAPPORT DE PRIX RP-220", "USD par tonne courte, franco", "Page {} sur 2"),
    "es": ("INFORME DE PRECIOS IP-220", "USD por tonelada corta, entregado", "Página {} de 2"),
    "sv": ("PRISRAPPORT PR-220", "USD per short ton, fritt levererat", "Sida {} av 2"),
}


@pytest.mark.parametrize("language", COVERS)
@pytest.mark.parametrize("number", ["", "220", "PR-220", "P/220"])
def test_the_unit_beside_a_reports_name_is_that_of_its_prices(language, number):
    name, unit, page = COVERS[language]
    name = f"{name.rpartition(' ')[0]} {number}".strip()
    head = ["No.", "Board", "Caliper (pt)", "lb/MSF", REPORTS[language][2][4].split(" EUR")[0], None]
    boards = [["10-014", "SBS C1S", 14, 59, 1216], ["10-018", "SBS C1S", 18, 76, 1194]]
    boards += [["30-018", "CRB C1S", 18, 70, 893], ["30-024", "CRB C1S", 24, 93, 871]]
    rows = []
    for at in (1, 2):
        rows += [["HARROWGATE LAKE", None, None, None, None, page.format(at)], [name, None, unit], []]
        rows += [head, *boards[2 * at - 2 : 2 * at], []]
    found = read(rows).lines
    assert len(found) == 4
    assert {str(line.state) for line in found} == {"accepted"}
    assert {(line.offer.currency, line.offer.basis, line.offer.delivered) for line in found} == {
        ("USD", "short_ton", True)
    }


@pytest.mark.parametrize("label", ["Freight FR-220", "Stretch wrap SW-220", "Energiezuschlag EZ-220"])
def test_the_unit_beside_the_code_of_a_charge_is_not_that_of_the_list(label):
    rows = [[label, None, "USD per short ton"], [], ["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 14, 59, 1216]]
    assert {str(line.state) for line in read(rows).lines} != {"accepted"}


@pytest.mark.parametrize("label", ["Customer prices CP-220", "Kundenpreise KP-220", "Prix clients PC-220"])
def test_so_is_one_beside_the_code_of_prices(label):
    rows = [[label, None, "USD per short ton"], [], ["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 14, 59, 1216]]
    assert {str(line.state) for line in read(rows).lines} == {"accepted"}
