"""What real people's sheets hold: report lines, forms in one row, scales under a form, rows of dots, short signs."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.intake.files.delimited import read_delimited
from tracker.intake.values.caliper import caliper_unit
from tracker.intake.values.legends import legend
from tracker.intake.values.loads import load_definitions

METRIC = ["Sorte", "g/m²", "Dicke µm", "Preis", "ME"]


def _accepted(found) -> set[str]:
    return {cell for cell, line in found.items() if str(line.state) == "accepted"}


def test_a_line_that_asks_for_several_things_is_read_one_by_one():
    form = ["Lieferant", "Kartonwerk Südhang AG", None, "Währung", "EUR", "Lieferbedingung", "DAP"]
    found = lines([form, METRIC, ["GD2", 300, 385, "905,00", "t"], ["GC2", 275, 470, "1.236,50", "t"]])
    offer = found["D3"].offer
    assert _accepted(found) == {"D3", "D4"}
    assert (offer.vendor, offer.currency, offer.delivered) == ("Kartonwerk Südhang AG", "EUR", True)


def test_a_scale_of_prices_below_a_form_is_of_the_forms_board():
    form = [["Sorte", "Faltschachtelkarton GC2"], ["Flächengewicht", "260 g/m²"], ["Dicke", "440 µm"]]
    scale = [["Abnahmemenge", "Preis EUR je Tonne"], ["5 bis 10 t", 1185], ["ab 10 t", 1138]]
    found = lines([*form, [], *scale])
    assert [(line.offer.grade, line.offer.caliper_um, line.offer.from_kg) for line in found.values()] == [
        ("FBB", 440, 5000),
        ("FBB", 440, 10000),
    ]


def test_rows_of_dots_lead_to_a_price_and_are_no_minus():
    found = lines(
        [
            ["DELIVERED PRICES"],
            ["SBS C1S 12 pt 51 lb/MSF ............ $1,262/ST"],
            ["CCNB 18 pt 70 lb/MSF ..... $930/ST"],
        ]
    )
    assert found["A2"].offer.price == 1262


def test_a_size_in_a_title_with_other_terms_is_the_sheets():
    title = ["Sheets 720 x 1020 mm, price per sheet ex VAT, despatch 5 working days"]
    found = lines([title, ["Board", "GSM", "Micron", "Each"], ["SBB C2S", 250, 290, "27.4p"]])
    assert found["D3"].offer.sheet_mm == (720, 1020)
    assert found["D3"].offer.price == Decimal("0.274")


def test_a_size_behind_a_word_for_the_form_is_read():
    head = ["Bezeichnung", "g/m²", "Format/Breite", "Preis EUR/t"]
    found = lines([head, ["GD2", 400, "Format 72 x 102 cm", 882.5], ["GD2", 350, "Rolle 84 cm", 871.5]])
    assert [line.offer.sheet_mm for line in found.values()] == [(720, 1020), None]


def test_a_grade_written_once_holds_for_descriptions_of_the_coating_alone():
    head = ["Grade", "Description", "pt", "USD/short ton"]
    rows = [["SBS", "C1S, smooth", 14, 1232], [None, "C2S", 18, 1268], [None, "Fenlight White", 18, 1290]]
    found = lines([head, *rows, ["CRB", "C1S", 18, 921]])
    assert [line.offer.grade for line in found.values()] == ["SBS", "SBS", None, "CRB"]
    assert "grade-unknown" in codes(found["D4"])


def test_the_unit_in_the_corner_over_the_boards_is_the_prices():
    found = lines(
        [["US$/short ton", "Basis weight, lb/MSF", None], ["Grade", 52, 60], ["SBS", 1245, 1230], ["CRB", 870, 860]]
    )
    assert {(line.offer.currency, str(line.offer.basis)) for line in found.values()} == {("USD", "short_ton")}


def test_each_block_has_the_vendor_that_its_label_names():
    head = ["Prix EUR/tonne", "Sorte", "Grammage g/m²"]
    first = [["Fournisseur :", "Cartonnerie Hautvoisin"], head, [1156, "GC1", 250], [801, "GD2", 350]]
    second = [["Fournisseur :", "Papiers Ravelane"], head, [1149, "GC1", 250], [812, "GD2", 350]]
    found = lines([*first, [], *second])
    assert [line.offer.vendor for line in found.values()] == ["Cartonnerie Hautvoisin"] * 2 + ["Papiers Ravelane"] * 2


def test_a_note_between_a_list_and_an_index_is_the_lists():
    head = ["Kvalitet", "Pris*", "Ytvikt"]
    rows = [["GD2", 2590, "300 g/m²"], ["GT1", 2610, "280 g/m²"], ["*) SEK per 1 000 m², fritt kund."]]
    found = lines([head, *rows, [], ["Massaindex", 1184]])
    assert (found["B2"].offer.currency, str(found["B2"].offer.basis)) == ("SEK", "1000m2")


def test_the_widest_line_of_words_is_a_files_header():
    report = "RPT PRC01,LAKEHEAD BOARD DISTRIBUTION,RUN 20261106,CURR USD,UOM CWT,,\r\n"
    rows = (
        "ITEM,GRD,CAL_PT,BW,PRICE,EXPDT,DAYS\r\n1,SBS,12,51,69.50,2027-03-31,21\r\n2,CUK,18,70,62.40,2027-03-31,21\r\n"
    )
    assert read_delimited((report + rows).encode()).cells[2, 4].text == "69.50"


@pytest.mark.parametrize("text", ["1 palet = 800 kg en todas las calidades", "1 Palette = 800 kg bei allen Sorten"])
def test_what_a_pallet_of_any_grade_weighs_is_a_definition(text):
    assert [definition.each.words for definition in load_definitions(text)] == ["800 kg"]


def test_about_what_a_pallet_weighs_defines_nothing():
    assert load_definitions("1 pallet = max. 800 kg for all grades") == ()


def test_the_label_of_a_legend_is_no_part_of_its_first_name():
    found = legend("Förkortningar: VK = folding boxboard (FBB); RK = white-lined chipboard (WLC)")
    assert [(entry.name, entry.grade.grade) for entry in found] == [("VK", "FBB"), ("RK", "CRB")]


@pytest.mark.parametrize(("text", "unit"), [("µ", "um"), ("(μ)", "um"), ("u", None)])
def test_the_sign_of_a_micron_stands_alone(text, unit):
    assert (None if caliper_unit(text) is None else caliper_unit(text).value) == unit


def test_what_is_said_of_superseded_prices_is_said_of_their_column():
    letter = ["Dear Sirs, the superseded prices are shown for reference only."]
    head = ["Grade", "g/m²", "Superseded £/tonne", "New £/tonne from 1.2.27", "Change %"]
    found = lines([letter, [], head, ["GD2", 280, 812, 842, 3.7], ["GD2", 320, 806, 836, 3.7]])
    assert _accepted(found) == {"D4", "D5"}


def test_order_sizes_in_the_names_of_fields_are_read():
    head = ["GRD", "CAL_PT", "BW_LB_MSF", "PRC_0_4999LB", "PRC_5000_19999LB", "PRC_20000LB_UP"]
    found = lines([["USD per CWT"], head, ["SBS", 12, 51, 69.5, 63.75, 60.9], ["CUK", 18, 70, 62.4, 57.1, 54.35]])
    assert [round(found[cell].offer.from_kg or 0) for cell in ("D3", "E3", "F3")] == [0, 2268, 9072]


def test_lines_to_sign_on_name_nobody():
    found = lines(
        [["EUR/t"], ["Grade", "g/m²", "Price"], ["GC1", 250, 1210], [], ["Seller: ________   Buyer: ________"]]
    )
    assert found["C3"].offer.vendor is None


def test_a_note_calls_off_the_superseded_column_and_not_the_new_one():
    note = ["US dollars per short ton. The 2026 prices below are superseded and shown for reference only."]
    head = ["Grade", "pt", "2026 price (superseded)", "Change", "NEW price 1/4/2027"]
    found = lines([note, [], head, ["CUK", 16, 1045, 50, 1095], ["CUK", 18, 1035, 50, 1085]])
    assert _accepted(found) == {"E4", "E5"}


def test_a_list_beside_the_one_that_superseded_it_is_not_offered():
    head = ["Grade", "pt", "List 13 (superseded)", "List 14"]
    found = lines([["US dollars per short ton"], head, ["SBS C1S", 14, 1140, 1165], ["URB", 22, 662, 680]])
    assert _accepted(found) == {"D3", "D4"}


def test_what_late_payers_pay_is_no_charge():
    found = lines(
        [
            ["USD por tonelada métrica, DAP"],
            ["Calidad", "g/m²", "Precio"],
            ["SBS", 250, 1420],
            ["Recargo por mora 1,5 % mensual"],
        ]
    )
    assert found["C3"].offer.charges == ()


def test_the_sheet_size_of_a_note_is_not_that_of_rolls():
    head = ["Board", "Form", "pt", "Price", "Per"]
    rows = [["SBS", "rolls", 14, 1215, "short ton"], ["SBS", "sheets", 18, 344.1, "1,000 sheets"]]
    found = lines([["U.S. dollars"], head, *rows, [], ["Sheet size: 28 x 40 inches."]])
    assert [line.offer.sheet_mm is None for line in found.values()] == [True, False]


def test_a_star_between_a_firm_and_its_street_parts_them():
    letterhead = ["Fallow Creek Board & Paper   *   Dayton Road, Fallow Creek, Indiana   *   call the desk: 555-0129"]
    found = lines([letterhead, [], ["Grade", "pt", "USD/short ton"], ["SBS C1S", 14, 1140], ["URB", 22, 662]])
    assert {line.offer.vendor for line in found.values()} == {"Fallow Creek Board & Paper"}


@pytest.mark.parametrize(
    ("letter", "current", "new"),
    [
        ("From 1 October 2026 the prices in the right column apply.", "Current price", "New price 01/10"),
        ("Ab 1. Oktober 2026 gelten die Preise der rechten Spalte.", "Preis aktuell", "Preis neu ab 01.10."),
        ("À partir du 1 octobre 2026, nous appliquerons les prix de droite.", "Prix actuel", "Nouveau prix 01/10"),
        ("A partir del 1 de octubre de 2026 aplicaremos los precios nuevos.", "Precio actual", "Precio nuevo 01/10"),
        ("Från den 1 oktober 2026 gäller de nya priserna.", "Nuvarande pris", "Nytt pris 1/10"),
    ],
)
def test_a_letter_of_new_prices_offers_the_new_ones_and_asks_without_it(letter, current, new):
    rows = [["Qualité", "g/m²", "µm", current, new], ["GC2", 260, 430, 1290, 1325], ["GD2", 320, 410, 845, 880]]
    found = read([[letter], ["EUR/t"], [], *rows]).lines
    assert [(line.offer.source.cell, str(line.state)) for line in found] == [("E5", "accepted"), ("E6", "accepted")]
    assert {str(line.state) for line in read([["EUR/t"], [], *rows]).lines} == {"question"}


def test_a_greeting_estimates_no_price_and_a_department_is_no_firm():
    rows = [["Calidad", "g/m²", "µm", "€/t"], ["GC2", 260, 430, 1290]]
    reading = read([["Papelera Valtuerto, S.L."], ["Estimado cliente:"], [], *rows, [], ["Dpto. Comercial"]])
    assert (reading.vendor, {note.code.value for note in reading.lines[0].notes}) == ("Papelera Valtuerto, S.L.", set())
    assert read([["Precio estimado:"], [], *rows]).lines[0].notes
