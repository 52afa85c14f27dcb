"""Heads that are cut short or could mean two things, told by their unit and by what stands below them."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.header import header
from tracker.intake.values.multiples import multiplied_in_head
from tracker.intake.values.roles import Role
from tracker.trade.basis import Basis


@pytest.mark.parametrize("head", ["Main µm", "Main (µm)", "Bulk µm", "Bulk (micron)", "Volumen µm", "Mano (micras)"])
def test_bulk_in_a_length_is_the_caliper(head):
    rows = [["GC1 Board", "g/m²", head, "EUR/1000 kg"], ["GC1", 230, 360, 1124], ["GC2", 300, 505, 1046]]
    assert [line.offer.caliper_um for line in lines(rows).values()] == [360, 505]


@pytest.mark.parametrize("head", ["Main (cm³/g)", "Bulk cm³/g", "Volumen (cm³/g)", "Bulk", "Main"])
def test_bulk_by_itself_is_a_property(head):
    assert header(head).role is Role.PROPERTY


def test_a_volume_in_tons_is_no_caliper():
    assert header("Volym (t)").caliper_unit is None


@pytest.mark.parametrize("head", ["Per 000", "£ per 000", "Per '000", "£/000", "je 000"])
def test_noughts_behind_per_are_a_thousand_sheets(head):
    assert not multiplied_in_head(head)
    basis = header(head).basis
    assert basis is not None
    assert basis.bases == {Basis.THOUSAND_SHEETS}


@pytest.mark.parametrize("head", ["Price ('000)", "EUR 000", "EUR 000/t"])
def test_noughts_beside_money_multiply_it(head):
    assert multiplied_in_head(head)


def test_a_stock_list_by_the_thousand_is_read_on_every_page():
    heads = ["Bay", "Board", "GSM", "Mic", "Size mm", "Shts left", "Per 000"]
    rows = [
        ["All prices in GBP per thousand sheets"], [], heads,
        ["B1", "Folding boxboard GC1", 240, 375, "640 x 900", 18400, 161.5], ["Ashmoor Ltd – p. 2"], heads,
        ["C1", "Folding boxboard GC2", 300, 500, "720 x 1020", 31000, 249.9],
    ]  # fmt: skip
    found = lines(rows)
    assert {cell: (str(line.state), line.offer.basis) for cell, line in found.items()} == {
        "G4": ("accepted", Basis.THOUSAND_SHEETS), "G7": ("accepted", Basis.THOUSAND_SHEETS),
    }  # fmt: skip


AMERICAN = [["SBS", 0.018, 74, 1140, 42.18], ["CUK", 0.021, 86, 1040, 44.72]]


@pytest.mark.parametrize(
    "head", ["Equivalent, per M sq ft", "Equals per MSF", "i.e. per MSF", "per MSF", "Per MSF equiv."]
)
def test_an_area_behind_per_is_what_a_price_is_for(head):
    rows = [["Prices in USD"], ["Board", "Caliper in", "lb/MSF", "Per short ton", head], *AMERICAN]
    found = lines(rows)
    assert sorted(found) == ["D3", "D4"]
    assert {str(line.state) for line in found.values()} == {"accepted"}


@pytest.mark.parametrize("above", ["Basis weight", "Weight lb", "Lb"])
def test_an_area_below_a_weight_is_what_board_weighs_on(above):
    rows = [["Board", "Caliper", above, "Price"], [None, "in", "per MSF", "USD/ST"], *(row[:4] for row in AMERICAN)]
    for line in lines(rows).values():
        assert line.offer.grammage_gsm is not None
        assert "weight-basis-unknown" not in codes(line)


def export(width, length, sheets, *, sides=(720, 1020), rolls="RL"):
    heads = ["MAT_TXT", "CAL_UM", "GSM", width, length, "NET_PR", "CURR", "PER", "UOM"]
    return [
        heads,
        [f"GC2 {rolls}", 385, 235, None, None, 1048, "EUR", 1000, "KG"],
        ["GC1 x", 495, 295, *sides, 251.4, "EUR", 1000, sheets],
    ]


@pytest.mark.parametrize(
    ("width", "length", "sheets"),
    [
        ("W_MM", "L_MM", "SHT"), ("LAI_MM", "LNG_MM", "FEUILLE"), ("BR_MM", "LG_MM", "Bogen"),
        ("ANC_MM", "LGO_MM", "HOJA"), ("BR_MM", "LGD_MM", "ark"), ("WIDTH_MM", "LEN_MM", "SHT"),
    ],
)  # fmt: skip
def test_two_columns_as_long_as_sheets_are_their_sides(width, length, sheets):
    found = lines(export(width, length, sheets))
    assert {cell: str(line.state) for cell, line in found.items()} == {"F2": "accepted", "F3": "accepted"}
    assert [line.offer.sheet_mm for line in found.values()] == [None, (720, 1020)]


def test_sides_in_centimetres_are_measured_in_them():
    assert lines(export("W_CM", "L_CM", "SHT", sides=(72, 102)))["F3"].offer.sheet_mm == (720, 1020)


@pytest.mark.parametrize("heads", [("W_MM", "D_MM"), ("MIN_MM", "MAX_MM")])
def test_measures_of_rolls_are_no_sides(heads):
    rows = [["Board", "CAL_UM", "GSM", *heads, "EUR per 1000 sheets"], ["GC2", 385, 235, 800, 1200, 104.8]]
    assert [line.offer.sheet_mm for line in lines(rows).values()] == [None]


def sheets_by_orders(title, heads):
    rows = [["GC1", 300, 250, "720 x 1020", 500, 118.2, 107.4], ["GC1", 400, 260, "700 x 1000", 250, 297.5, 271.9]]
    return [[title], [], heads, *rows]


@pytest.mark.parametrize(
    ("title", "heads"),
    [
        ("Prices in EUR per 1000 sheets",
         ["Stock", "µm", "g/m²", "Size mm", "Per carton", "Up to 4,999 sheets", "5,000 sheets and up"]),
        ("Preise in EUR je 1000 Bogen",
         ["Sorte", "µm", "g/m²", "Format mm", "Je Paket", "bis 4.999 Bogen", "ab 5.000 Bogen"]),
        ("Prix en EUR les 1000 feuilles",
         ["Qualité", "µm", "g/m²", "Format mm", "Par paquet", "jusqu'à 4 999 feuilles", "dès 5 000 feuilles"]),
        ("Precios en EUR por 1000 hojas",
         ["Calidad", "µm", "g/m²", "Formato mm", "Por paquete", "hasta 4.999 hojas", "desde 5.000 hojas"]),
        ("Priser i EUR per 1000 ark",
         ["Kvalitet", "µm", "g/m²", "Format mm", "Per paket", "upp till 4 999 ark", "från 5 000 ark"]),
    ],
)  # fmt: skip
def test_how_many_sheets_a_package_holds_is_no_price(title, heads):
    found = lines(sheets_by_orders(title, heads))
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ["F4", "G4", "F5", "G5"], "accepted"
    )


def test_such_counts_are_told_in_an_export_too():
    """Where every figure is text."""
    heads = ["Stock", "µm", "g/m²", "Size mm", "Per carton", "Up to 4,999 shts", "5,000 shts and up"]
    rows = sheets_by_orders("EUR per M sheets", heads)
    found = lines([[str(value) for value in row] for row in rows])
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ["F4", "G4", "F5", "G5"], "accepted"
    )


@pytest.mark.parametrize("prices", [[59.1, 74.4], [100, 125]])
def test_a_price_by_the_package_is_asked_about(prices):
    heads = ["Stock", "µm", "g/m²", "Size mm", "Per carton"]
    rows = [["GC1", 300, 250, "720 x 1020", prices[0]], ["GC1", 400, 260, "700 x 1000", prices[1]]]
    found = lines([["Prices in EUR"], [], heads, *rows])
    assert {str(line.state) for line in found.values()} == {"question"}
    assert len(found) == 2


BOARDS = [["GC1", 375, 240, 1145], ["GD2", 415, 320, 868]]


@pytest.mark.parametrize(
    ("head", "heading", "labels"),
    [
        (["Product", "µm", "g/m²", "EUR/t"], "Adders, where they apply:",
         ["Trim under 500 mm", "Orders of 15 to 20 tons", "Wet-strength (GC1 only)"]),
        (["Sorte", "µm", "g/m²", "EUR/t"], "Aufpreise (je t):", ["Breite unter 500 mm", "Nassfest (nur GC1)"]),
        (["Qualité", "µm", "g/m²", "EUR/t"], "Plus-values", ["Laize inférieure à 500 mm", "Résistance humide (GC1)"]),
        (["Calidad", "µm", "g/m²", "EUR/t"], "Recargos, si procede:", ["Ancho inferior a 500 mm", "De 5 a 10 t"]),
        (["Kvalitet", "µm", "g/m²", "EUR/ton"], "Tillägg", ["Bredd under 500 mm", "Våtstark (endast GC1)"]),
    ],
)  # fmt: skip
def test_small_rows_under_a_heading_of_adders_offer_nothing(head, heading, labels):
    charges = [[label, None, None, 15 + place] for place, label in enumerate(labels)]
    assert sorted(lines([head, *BOARDS, [], [heading], *charges])) == ["D2", "D3"]


def test_boards_under_a_heading_like_one_of_adders_are_offers():
    rows = [["Product", "µm", "g/m²", "EUR/t"], *BOARDS, [], ["Extra grades:"], ["GC2", 450, 280, 1040]]
    assert sorted(lines(rows)) == ["D2", "D3", "D6"]
