"""Words and gaps around the prices that once changed them without a word."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.trade.offer import GrammageFrom, State

METRIC = [["Sorte", "µm", "EUR/t"], ["GC1", 405, 1250], ["GD2", 400, 850]]


@pytest.mark.parametrize(
    "note",
    [
        "Au-delà de 450 g/m² : nous consulter", "(1) disponible également en 255 g/m²", "Also available in 300 g/m²",
        "Sample sheets 250 g/m² free", "Stiffness measured at 300 g/m²", "Lieferbar auch in 280 g/m²",
        "Nuevo gramaje 320 g/m² a partir de enero", "Även tillgänglig i 270 g/m²", "Ab 300 g/m² auf Anfrage",
    ],
)  # fmt: skip
def test_a_note_about_another_weight_weighs_no_board(note):
    for line in lines([*METRIC, [], [note]]).values():
        assert line.state is State.ACCEPTED
        assert line.offer.grammage_from is GrammageFrom.ESTIMATED


@pytest.mark.parametrize(
    "note",
    ["Flächengewicht: 280 g/m²", "All boards 280 g/m²", "Grammage 280 g/m² pour tous les articles", "Ytvikt 280 g/m²"],
)
def test_a_note_about_the_board_alone_weighs_it(note):
    assert {line.offer.grammage_gsm for line in lines([*METRIC, [], [note]]).values()} == {Decimal(280)}


def test_a_blank_column_leaves_each_row_its_own_board():
    rows = [
        ["VENDOR", "ITEM_NO", "ITEM_DESC", None, "CALIPER_IN", "UNIT_PRICE", "CURRENCY", "PRICE_UOM"],
        ["Tallowmere Board Corp", "TB12s", "SBS C1S ROLL", None, 0.012, 1205, "USD", "ST"],
        ["Tallowmere Board Corp", "TB21m", "CUK ROLL", None, 0.021, 1044, "USD", "ST"],
        ["Tallowmere Board Corp", "TB20l", "CRB C1S ROLL", None, 0.02, 905, "USD", "ST"],
    ]
    assert [line.offer.grade for line in lines(rows).values()] == ["SBS", "CUK", "CRB"]


def test_a_title_over_the_right_hand_table_is_not_the_left_ones():
    heads = ["Calidad", "g/m²", "USD/TM"]
    rows = [
        ["Cartonera del Litoral"], [], [None, None, None, None, "Exportación (FOB Rosario)"],
        [*heads, None, *heads], ["GD2", 280, 930, None, "GD2", 280, 855], ["GC2", 250, 1210, None, "GC2", 250, 1135],
    ]  # fmt: skip
    assert {cell: line.offer.delivered for cell, line in lines(rows).items()} == {
        "C5": None, "C6": None, "G5": False, "G6": False,
    }  # fmt: skip


def test_titles_over_tables_with_no_column_between_are_each_its_own():
    heads = ["Grade", "g/m²", "£/t"]
    rows = [
        ["Current list", None, None, "Superseded list"], [*heads, *heads],
        ["GC1", 250, 1049, "GC1", 250, 1079], ["GC2", 300, 1012, "GC2", 300, 1042],
    ]  # fmt: skip
    assert list(lines(rows)) == ["C3", "C4"]


def test_a_title_repeated_over_each_column_makes_no_prices_of_calipers():
    title = "Tarif 2026 - €/t franco"
    rows = [
        ["Cartons Réole", None, None, "Page 1/2"], [title], ["Qualité", "g/m²", "µm", "Prix"],
        ["GC1", 250, 400, 1230], ["GC1", 275, 450, 1225], ["1", "Cartons Réole", None, "Page 2/2"],
    ]  # fmt: skip
    assert {line.offer.caliper_um for line in read(rows).lines if line.state is State.ACCEPTED} == {400, 450}


def test_a_price_under_a_blank_head_is_no_caliper():
    rows = [
        ["Producto", None, None, "Precio", None], ["Calidad", "Gramaje", "Calibre", None, "Sur"],
        [None, "g/m²", "µm", "€/t", "€/t"], ["GC2", 240, 390, 1239, 1258], ["GD2", 400, 530, 836, 855],
    ]  # fmt: skip
    assert {line.offer.caliper_um for line in lines(rows).values()} == {390, 530}


def test_a_running_number_does_not_make_two_offers_of_a_repeated_row():
    rows = [["No.", "Grade", "pt", "USD/ST"], [1, "SBS", 14, 1240], [2, "SBS", 18, 1215], [3, "SBS", 14, 1240]]
    assert list(lines(rows)) == ["D2", "D3"]


def test_an_adder_is_no_price_even_where_the_figures_are_text():
    rows = [
        ["Grade", "Caliper (pt)", "Base", "Adder C2S", "Price, $/ST"],
        ["SBS C1S", "16", "1180", "0", "1180"],
        ["SBS C2S", "18", "1170", "45", "1215"],
        ["CUK", "18", "990", "0", "990"],
    ]  # fmt: skip
    assert list(lines(rows)) == ["E2", "E3", "E4"]


def test_what_no_board_ever_cost_is_asked():
    (line,) = lines([["Grade", "pt", "lb/MSF", "Price"], ["SBS", 16, 68, 45], ["Prices in $/ST"]]).values()
    assert (line.state, codes(line)) == (State.QUESTION, {"outside-usual-range"})


def test_capitals_say_the_same():
    vendor = "QUILLMERE BOARD KARTON GMBH"
    rows = [
        [vendor], ["PREISE EUR/T AB WERK"], ["CALL FOR LEAD TIME"], ["SORTE", "G/M²", "ΜM", "PREIS"],
        ["GC1", 250, 405, 1250],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert (line.offer.vendor, line.offer.caliper_um, line.offer.delivered) == (vendor, 405, False)
