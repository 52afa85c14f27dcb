"""Firms as systems name them: 'Sales organisation', 'Mandant', and 'Company name' beside a column of vendors."""

import pytest

from tests.intake.sheets import lines, read

_TABLE = [[], ["Board", "Caliper (pt)", "lb/MSF", "USD/short ton"], ["SBS C1S", 18, 75, 1180]]


@pytest.mark.parametrize(
    ("label", "said", "vendor"),
    [
        ("SALES ORGANISATION:", "Ferrowick Paperboard LLC", "Ferrowick Paperboard LLC"),
        ("Sales org.:", "1200 Ferrowick Board Inc.", "Ferrowick Board Inc."),
        ("Verkaufsorganisation", "Ruhlsbach Karton AG", "Ruhlsbach Karton AG"),
        ("Organisation commerciale :", "10 Cartonnerie Lind SA", "Cartonnerie Lind SA"),
        ("Organización de ventas", "Cartones Ferrón S.A.", "Cartones Ferrón S.A."),
        ("Säljorganisation", "Ferrviks Kartong AB", "Ferrviks Kartong AB"),
        ("Sales organisation", "1200", None),
        ("Sales organisation", "North", None),
    ],
)
def test_whose_sales_organisation_it_is(label, said, vendor):
    assert read([[label, said], *_TABLE]).vendor == vendor


@pytest.mark.parametrize(
    ("label", "maker", "buyer"),
    [
        ("Company code", "1200 Ferrowick Board Mills Inc.", "1200 Birch Cartons Inc."),
        ("Company code", "Ferrowick Paper Mills Corp.", "Birch Box Works Company"),
        ("Mandant", "Papierfabrik Ruhlsbach AG", "Faltschachteln Birkenau GmbH"),
        ("Société:", "Papeteries Lorvain SA", None),
        ("Sociedad:", "Papelera Ferrón S.A.", "Estuches Altoria S.A."),
        ("Bolag:", "Ferrviks Pappersbruk AB", "Granforsa Förpackning AB"),
    ],
)
def test_whose_system_it_is_quotes_only_where_it_makes_board(label, maker, buyer):
    assert read([[label, maker], *_TABLE]).vendor == maker.removeprefix("1200 ")
    if buyer is not None:
        assert read([[label, buyer], *_TABLE]).vendor is None
        assert read([[label, buyer], ["Vendor:", maker], *_TABLE]).vendor == maker.removeprefix("1200 ")


def test_a_maker_whose_system_it_is_and_another_firm_are_two():
    assert read([["Mandant", "Papierfabrik Ruhlsbach AG"], ["Ferrowick Board Mills Inc."], *_TABLE]).vendor is None


_NAMES = [
    ("Company name", "Vendor"),
    ("Firmenname", "Lieferant"),
    ("Nom société", "Fournisseur"),
    ("SOCIEDAD_NOMBRE", "PROVEEDOR"),
    ("Företagsnamn", "Leverantör"),
]


@pytest.mark.parametrize(("company", "vendor"), _NAMES)
@pytest.mark.parametrize("first", [0, 1])
def test_a_column_of_vendors_tells_who_quotes_whatever_company_stands_beside_it(company, vendor, first):
    heads, firms = (company, vendor), ("Birch Cartons Inc.", "Ferrowick Mills Inc.")
    order = (first, 1 - first)
    head = [*(heads[at] for at in order), "Grade", "Caliper (pt)", "lb/MSF", "USD/short ton"]
    (line,) = lines([head, [*(firms[at] for at in order), "SBS", 18, 75, 1180]]).values()
    assert line.offer.vendor == "Ferrowick Mills Inc."


@pytest.mark.parametrize("company", [company for company, _ in _NAMES])
def test_a_company_alone_in_its_rows_quotes(company):
    head = [company, "No.", "Grade", "g/m²", "µm", "EUR/t"]
    (line,) = lines([head, ["Papelera Ferrón S.A.", 900100, "GC1", 235, 360, 1245]]).values()
    assert line.offer.vendor == "Papelera Ferrón S.A."


@pytest.mark.parametrize(
    "rows",
    [
        [["Company code: 1000 Brightfold Mills Inc."]],
        [["Company code: 1000 Brightfold Board Mills Inc."], ["Purchasing organisation: 1000"]],
        [["Company code: 1000 Brightfold Board Mills Inc."], ["Purchase info record"]],
        [["Mandant: 100 Hallbach Papierfabrik GmbH"], ["Einkaufsorganisation: 100"]],
        [["Bolag: 100 Hallbruk AB"]],
    ],
)
def test_a_mill_of_any_kind_and_the_owner_of_a_buyers_system_are_no_vendor(rows):
    assert {line.offer.vendor for line in read([*rows, [], *_TABLE]).lines} == {None}


@pytest.mark.parametrize(
    ("said", "vendor"),
    [
        ("Company code: 1000 Brightfold Board Mills Inc.", "Brightfold Board Mills Inc."),
        ("Sales organisation: 1000 Brightfold Mills Inc.", "Brightfold Mills Inc."),
        ("Mandant: 100 Hallbach Papierfabrik GmbH", "Hallbach Papierfabrik GmbH"),
        ("Bolag: 100 Hallby Kartongbruk AB", "Hallby Kartongbruk AB"),
    ],
)
def test_a_maker_of_board_quotes(said, vendor):
    assert {line.offer.vendor for line in read([[said], [], *_TABLE]).lines} == {vendor}
