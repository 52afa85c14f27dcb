"""Stamps, numbers, days and prices in words that head no column."""

import pytest

from tests.intake.sheets import lines, read
from tracker.intake.files.delimited import read_delimited


def test_a_stamp_above_the_heads_is_no_head():
    rows = [
        ["RPT_ID", "PRICES_V4", "RUN", "2026-11-12 06:14", "CO", "010", "NAME", "Larchmoor"],
        ["ITEM_NO", "ITEM_DESC", "CAL_PT", "BW_LBMSF", "WHSE", "QTY_OH_LB", "LAST_PRC", "PRC_CUR", "CURR", "PRC_UOM"],
        ["2001", "BOARD SBS C1S RL", "14", "59", "03", "0", "60.87", "62.75", "USD", "CWT"],
        ["2002", "BOARD SBS C1S RL", "18", "74", "03", "7000", "59.56", "61.40", "USD", "CWT"],
    ]
    found = lines(rows)
    assert {cell: (str(line.state), line.offer.basis) for cell, line in found.items()} == {
        "H3": ("accepted", "cwt"),
        "H4": ("accepted", "cwt"),
    }


_HEAD = ["Board", "Caliper (in.)", "BW (lb/MSF)", "Price"]
_ROWS = [_HEAD, ["SBS C1S", 0.016, 67, 61.35], ["CCNB", 0.018, 70, 45.2]]


def test_the_number_of_a_quotation_heads_no_column():
    rows = [
        ["QUOTATION", None, None, "Quote #", "Q-26-2209"],
        ["Brackwater Board Sales LLC", None, None, "Date", "2026-07-15"],
        ["77 Ferry Landing", None, None, "Expires", "2026-08-14"], ["Quote to:", "Dunmore Folding Box Corp."], [],
        [*_HEAD[:3], "Price USD/cwt"], *_ROWS[1:],
    ]  # fmt: skip
    found = read(rows).lines
    assert [str(line.offer.valid_until) for line in found] == ["2026-08-14"] * 2
    assert {line.offer.vendor for line in found} == {"Brackwater Board Sales LLC"}


HEAD = ["Grade", "Caliper pt", "lb/MSF", "PRICE", "CCY", "PER"]
ROWS = [["SBS C1S", 18, 78, 1221, "USD", "STN"], ["CRB", 20, 79, 964, "USD", "STN"], ["URB", 28, 99, 723, "USD", "STN"]]


@pytest.mark.parametrize(
    "head", ["Quote Expires", "Angebotsende", "Expiration de l'offre", "Oferta vence", "Offert går ut"]
)
def test_the_last_day_of_a_quote_is_no_price(head):
    found = lines([[*HEAD, head], *([*row, "10/31/2026"] for row in ROWS)])
    assert set(found) == {"D2", "D3", "D4"}
    assert {str(line.offer.valid_until) for line in found.values()} == {"2026-10-31"}


def test_the_widest_line_of_words_is_a_files_header():
    report = "RPT PRC01,LAKEHEAD BOARD DISTRIBUTION,RUN 20261106,CURR USD,UOM CWT,,\r\n"
    rows = (
        "ITEM,GRD,CAL_PT,BW,PRICE,EXPDT,DAYS\r\n1,SBS,12,51,69.50,2027-03-31,21\r\n2,CUK,18,70,62.40,2027-03-31,21\r\n"
    )
    assert read_delimited((report + rows).encode()).cells[2, 4].text == "69.50"


def test_a_price_to_be_asked_for_heads_no_table():
    rows = [
        ["Descripción", "Espesor", "Gramaje", "Precio neto"], ["GC1", "355 µm", "215 g/m²", "1.160,00 EUR / 1000 kg"],
        ["GC1", "475 µm", "300 g/m²", "a cons."], ["GC1", "540 µm", "350 g/m²", "386,04 EUR por mil m²"],
    ]  # fmt: skip
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"D2": "accepted", "D4": "accepted"}


def test_a_day_in_the_head_of_the_new_price_is_no_price():
    rows = [
        ["Sorte", "Flächengew.", "Dicke", "bisher", "NEU ab 1.4.", "Erhöhung"],
        [None, "g/m²", "µm", "€/t", "€/t", "€/t"],
    ]
    (line,) = lines([*rows, ["GD2", 250, 330, 742, 782, 40]]).values()
    assert line.offer.price == 782


def test_an_empty_purpose_is_told_and_not_asked():
    reading = read([["Terms of sale"], ["Payment 1% 10 days, net 30."]])
    assert reading.lines == ()
    assert [passed.why for passed in reading.passed_over] == ["no prices"]


_SWEDISH_HEAD = ["Kvalitet", "Gramvikt", "Tjocklek", "Pris", "Valuta", "Per", "Kvantitet"]
_SWEDISH_ROWS = [["GC1", "250 g/m²", "400 µm", 1215, "EUR", "ton"], ["GD2", "320 g/m²", "390 µm", 0.845, "EUR", "kg"]]


@pytest.mark.parametrize(
    "said", ["offereras separat", "on request", "auf Anfrage", "prix à venir", "see mail of Friday"]
)
def test_a_board_whose_price_is_words_heads_nothing(said):
    found = lines(
        [_SWEDISH_HEAD, _SWEDISH_ROWS[0], ["GC2", "300 g/m²", "495 µm", said, "SEK", "ton"], _SWEDISH_ROWS[1]]
    )
    assert {"D2", "D4"} <= set(found)
    assert str(found["D4"].state) == "accepted"


def test_a_whole_board_beside_a_range_of_prices_heads_nothing():
    rows = [
        ["Article proposé", "Prix remis", "Mise à disposition"],
        ["GC1 300 g/m² 490 µm bobines", "1 362 €/t", "3 semaines"],
        ["GC2 270 g/m² 445 µm", "de 1 240 à 1 275 €/t", "3 semaines"],
        ["URB 600 g/m² 920 µm", "698 € la tonne", "stock"],
    ]
    found = lines(rows)
    assert {cell: str(line.state) for cell, line in found.items()} == {
        "B2": "accepted", "B3": "question", "B4": "accepted",
    }  # fmt: skip
    assert [line.offer.lead_days for line in found.values()] == [(21, 21), (21, 21), (0, 0)]


def test_item_numbers_stay_what_they_are():
    found = read([["Our ref", "Board", "Price EUR/t"], [10240, "GC1 250 g/m²", 1240], [10241, "GC2 250 g/m²", 1180]])
    assert [line.offer.price for line in found.lines] == [1240, 1180]


def test_a_price_with_words_that_nobody_knows_behind_it_heads_nothing():
    rows = [
        ["What", "Thickness", "Weight", "They want"],
        ["SBS C1S", "18 point", "76 lb per MSF", "1,174.50 USD per short ton"],
        ["CUK", "21 point", "87 lb per MSF", "54.25 cents per pound, so they say"],
        ["URB", "28 point", "98 lb per MSF", "USD 812 per metric ton"],
    ]
    assert [str(line.state) for line in lines(rows).values()] == ["accepted", "question", "accepted"]


@pytest.mark.parametrize(
    ("told", "said"),
    [
        ("25 USD/ton surcharge included", "yes"), ("5 USD/ton off over 20 t", "yes"), ("5 EUR je t Nachlass", "ja"),
        ("5 EUR la t de ristourne", "oui"), ("5 EUR por t de rappel", "sí"), ("5 EUR per t i bonus", "ja"),
    ],
)  # fmt: skip
def test_an_amount_with_words_behind_it_heads_what_is_told_of_it_among_heads_of_boards(told, said):
    rows = [["Grade", "Caliper (pt)", told, "Price USD/ST"], ["SBS", 18, said, 1150], ["CUK", 18, said, 980]]
    found = [(str(line.state), line.offer.price, str(line.offer.basis)) for line in lines(rows).values()]
    assert found == [("accepted", 1150, "short_ton"), ("accepted", 980, "short_ton")]


def test_figures_under_such_a_head_are_no_second_price_unasked():
    found = lines([["Grade", "Caliper (pt)", "25 USD/ton surcharge included", "Price USD/ST"], ["SBS", 18, 1175, 1150]])
    assert {cell for cell, line in found.items() if str(line.state) == "accepted"} == {"D2"}


@pytest.mark.parametrize(
    "told",
    ["Prices £ per tonne, ex works", "Preise £ je t, ab Werk", "Prix £/t départ usine", "Precios £/t en fábrica",
     "Priser £/t fritt fabrik"],
)  # fmt: skip
def test_what_all_prices_are_in_heads_no_measure_of_the_boards(told):
    heads = ["Grade", "GSM", "Caliper mm", "Reel width mm", "Price £/tonne"]
    found = lines([["Moorfield Sheet & Roll", told], heads, ["SBB C2S", 250, "0.310", 920, 1318]])
    assert list(found) == ["E3"]
    assert (found["E3"].offer.caliper_um, found["E3"].offer.delivered) == (310, False)


def test_it_heads_prices_that_stand_right_below_it():
    rows = [["", "Prices £ per tonne"], ["Grade", "Rolls", "Sheets"], ["SBS 250 g/m²", 1318, 1402]]
    assert [str(line.offer.price) for line in lines(rows).values()] == ["1318", "1402"]
