"""Vendors named in a column, over their rows or at their block, and their numbers and remarks."""

import pytest

from tests.intake.sheets import lines

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize(
    ("number", "name", "vendor"),
    [
        ("0000103377", "Kalmwater Board NV", "Kalmwater Board NV"),
        ("CA5501", "Papeteries Delmont", "Papeteries Delmont"),
        ("0000103377", None, None),
    ],
)
def test_a_vendors_number_is_not_his_name(number, name, vendor):
    rows = [
        ["Vendor", "Vendor name", *HEAD, "USD/ST"],
        [number, name, *BOARD, 1190],
        [number, name, "CRB", 18, 70, 850],
    ]
    assert {line.offer.vendor for line in lines(rows).values()} == {vendor}


@pytest.mark.parametrize(
    "head", ["Vendor remark", "Mill note", "Bemerkung Lieferant", "Remarques fournisseur", "Notas del proveedor"]
)
def test_a_vendors_remark_names_no_vendor(head):
    rows = [[*HEAD, "USD/ST", head], [*BOARD, 1190, "FOB mill"], ["CRB", 18, 70, 850, "delivered, min 22,000 lb"]]
    found = list(lines(rows).values())
    assert [line.offer.vendor for line in found] == [None, None]
    assert [line.offer.delivered for line in found] == [False, True]


def test_a_name_right_of_a_vendors_number_is_the_vendors():
    rows = [["Lieferant", "Name", "Kurztext", "Nettopreis", "Währg", "pro", "Einheit"]]
    rows += [["0000301877", "Traunegg Papier GmbH", "GC2 230 g/m² 370 µm", 1318, "EUR", 1, "t"]]
    rows += [["0000301877", "Traunegg Papier GmbH", "GC2 260 g/m² 425 µm", 1304.5, "EUR", 1000, "kg"]]
    assert {line.offer.vendor for line in lines(rows).values()} == {"Traunegg Papier GmbH"}
    board = [["Supplier", "Name", "pt", "lb/MSF", "USD/ST"], ["Larch Board Ltd", "SBS C1S", 18, 75, 1190]]
    assert [line.offer.product for line in lines(board).values()] == ["SBS C1S"]


@pytest.mark.parametrize("label", ["Proveedor", "Supplier", "Lieferant", "Fournisseur", "Leverantör"])
def test_each_vendor_s_rows_stand_below_his_name(label):
    rows = [["Board", "g/m²", "µm", "EUR/t"], [f"{label}: Cartonera Valdeluz (EXW)"], ["GC2", 250, 410, 1156],
            [f"{label}: Norteboard Lda."], ["GC2", 250, 410, 1167]]  # fmt: skip
    assert [line.offer.vendor for line in lines(rows).values()] == ["Cartonera Valdeluz", "Norteboard Lda."]


def test_a_board_over_rows_is_no_vendor():
    rows = [["Board", "g/m²", "µm", "EUR/t"], ["Folding boxboard"], ["GC2", 250, 410, 1156]]
    assert [line.offer.vendor for line in lines(rows).values()] == [None]


def test_a_vendor_written_once_quotes_every_board_until_the_next_vendor():
    rows = [["EUR/t"], ["Lieferant", "Sorte", "g/m²", "µm", "Preis"]]
    rows += [["A-Karton GmbH", "GC1", 250, 405, 1290], [None, "GD2", 350, 465, 880]]
    rows += [["B-Board AG", "GC1", 250, 405, 1270], [None, "GD2", 350, 465, 870]]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [line.offer.vendor for line in found.values()] == ["A-Karton GmbH"] * 2 + ["B-Board AG"] * 2


def test_each_block_has_the_vendor_that_its_label_names():
    head = ["Prix EUR/tonne", "Sorte", "Grammage g/m²"]
    first = [["Fournisseur :", "Cartonnerie Hautvoisin"], head, [1156, "GC1", 250], [801, "GD2", 350]]
    second = [["Fournisseur :", "Papiers Ravelane"], head, [1149, "GC1", 250], [812, "GD2", 350]]
    found = lines([*first, [], *second])
    assert [line.offer.vendor for line in found.values()] == ["Cartonnerie Hautvoisin"] * 2 + ["Papiers Ravelane"] * 2


@pytest.mark.parametrize("name", ["Northmoor Board & Packaging", "Total Packaging Co.", "Freight Street Papers"])
def test_a_firm_named_by_a_word_for_a_charge_quotes_its_boards(name):
    rows = [["Supplier", "Item description", "Bid price", "Currency", "UOM"]]
    rows += [["Ferrowick Paperboard Inc.", "CCNB 20 pt, 78 lb/MSF", 45.6, "USD", "CWT"]]
    rows += [[name, "CCNB 20 pt, 78 lb/MSF", 37.05, "USD", "MSF"], [name, "CUK 21 pt, 88 lb/MSF", 0.571, "USD", "LB"]]
    found = lines(rows)
    assert [line.offer.vendor for line in found.values()] == ["Ferrowick Paperboard Inc.", name, name]
    assert not any(line.offer.charges for line in found.values())


def test_a_charge_below_the_names_of_vendors_is_one():
    rows = [["Supplier", "Item description", "USD/ST"], ["Ferrowick Paperboard Inc.", "CCNB 20 pt, 78 lb/MSF", 845]]
    rows += [["Ferrowick Paperboard Inc.", "CUK 21 pt, 88 lb/MSF", 1080], ["Energy surcharge", None, 28]]
    assert list(lines(rows)) == ["C2", "C3"]
