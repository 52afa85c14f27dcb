"""Order sizes, calipers, grades and terms spread across a table: no column of a spread is left out in silence."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import book, codes, grid, lines, merged
from tracker.intake.read import read_workbook
from tracker.trade.layout import Layout, MarkedColumn
from tracker.trade.offer import Answers

TITLE = ["All prices US dollars per cwt, f.o.b. mill"]
GROUP = ["", "", "", "Order size (lbs)", "", ""]


def _sheet(last: str):
    heads = ["Grade", "Caliper (pt)", "Basis wt lbs/MSF", "5,000 - 19,999", "20,000 - 39,999", last]
    rows = [["SBS C1S", 12, 52.5, 71.40, 68.90, 66.25], ["SBS C1S", 18, 71.5, 70.40, 67.90, 65.25]]
    return lines([TITLE, GROUP, heads, *rows], merged=merged((1, 3, 1, 5)))


@pytest.mark.parametrize("last", ["40,000 and over", "40,000 & over", "40,000 and up", "40,000+", "from 40,000"])
def test_an_open_order_size_without_a_unit_takes_that_of_its_heading(last):
    found = _sheet(last)
    assert [str(found[cell].state) for cell in ("D4", "E4", "F4", "F5")] == ["accepted"] * 4
    assert round(found["F4"].offer.from_kg) == 18144
    assert found["F4"].offer.below_kg is None
    assert found["E4"].offer.below_kg == pytest.approx(found["F4"].offer.from_kg)


@pytest.mark.parametrize("last", ["straight wagon", "by agreement", "best"])
def test_a_head_that_cannot_be_read_among_order_sizes_is_asked_about(last):
    found = _sheet(last)
    assert str(found["F4"].state) == "question"
    assert str(found["F5"].state) == "question"
    assert "bracket-unread" in codes(found["F4"]) or "number-ambiguous" in codes(found["F4"])
    assert str(found["E4"].state) == "accepted"


def test_a_row_of_lead_times_gives_each_column_its_own():
    found = lines(
        [
            ["Precios en euros por tonelada, ex fábrica"],
            ["Gramaje (g/m²)", "Reverso gris (GD2)", "Reverso kraft (GT)", "Reverso crema (GC2)"],
            ["Plazo de entrega", "15 días", "a convenir", "4 semanas"],
            [250, "962,50", "1.014,00", "1.268,00"],
            [300, "948,00", "1.002,50", "1.252,00"],
        ]
    )
    assert [cell for cell in found if str(found[cell].state) == "accepted"] == ["B4", "C4", "D4", "B5", "C5", "D5"]
    assert [found[cell].offer.lead_days for cell in ("B4", "C4", "D5")] == [(15, 15), None, (28, 28)]
    assert codes(found["C5"]) == {"lead-time-unread"}


def test_one_lead_time_for_all_columns_is_every_columns():
    found = lines(
        [
            ["Prices in EUR per tonne"],
            ["Grammage (g/m²)", "GD2", "GC2"],
            ["Lead time", "3 weeks", ""],
            [250, 962, 1268],
            [300, 948, 1252],
        ]
    )
    assert {cell: line.offer.lead_days for cell, line in found.items()} == dict.fromkeys(
        ("B4", "C4", "B5", "C5"), (21, 21)
    )


def _marked(*, grouped: bool):
    heads = ("Grade", "Caliper (pt)", "Basis wt lbs/MSF", "5,000 - 19,999", "20,000 and over")
    group = ("", "", "", "Order size (lbs)", "") if grouped else ("",)
    rows = [TITLE, group, heads, ("SBS C1S", 12, 52.5, 71.40, 68.90), ("SBS C1S", 18, 71.5, 70.40, 67.90)]
    roles = [("grade", ""), ("caliper", "pt"), ("weight", "lb/MSF"), ("price", "cwt"), ("price", "cwt")]
    columns = tuple(MarkedColumn(index, role, unit) for index, (role, unit) in enumerate(roles))
    layout = Layout("Sheet1", "0" * 64, columns, first_row=3, header_row=2, heads=tuple(enumerate(heads)))
    workbook = book(grid(rows, merged=merged((1, 3, 1, 4))))
    return read_workbook(workbook, Answers(layouts=(layout,))).lines


def test_price_columns_marked_by_hand_keep_the_order_sizes_of_their_heads():
    first, last = _marked(grouped=True)[:2]
    assert (str(first.state), str(last.state)) == ("accepted", "accepted")
    assert round(first.offer.from_kg) == 2268
    assert first.offer.below_kg == last.offer.from_kg
    assert last.offer.below_kg is None


def test_order_sizes_marked_by_hand_without_a_unit_are_asked_about():
    assert all("bracket-unread" in codes(line) for line in _marked(grouped=False))


def test_pounds_below_calipers_are_what_the_boards_weigh_and_no_orders():
    rows = [
        ["SBS C1S - $/ST"],
        ["Caliper", "12pt", "16pt"],
        ["BW", "51#", "68#"],
        ["TL", 1210, 1190],
        ["LTL", 1260, 1240],
    ]
    found = lines(rows)
    assert [round(line.offer.grammage_gsm) for line in found.values()] == [249, 332, 249, 332]
    assert {str(line.state) for line in found.values()} == {"question"}
    assert all("bracket-unread" in codes(line) for line in found.values())


def test_a_grade_above_its_coatings_is_one_name_with_each():
    rows = [
        ["Caliper", "SBS", None, "CRB"],
        ["(pt)", "C1S", "C2S", "C1S"],
        [14, 1195, 1255, 905],
        [16, 1185, 1245, 895],
    ]
    found = lines([["US$ per short ton"], *rows], merged=merged((1, 1, 1, 2)))
    told = {cell: (line.offer.grade, line.offer.coated_sides, str(line.state)) for cell, line in found.items()}
    assert told["B4"] == ("SBS", 1, "accepted")
    assert told["C5"] == ("SBS", 2, "accepted")
    assert told["D4"] == ("CRB", 1, "accepted")


def test_a_grade_is_said_by_the_cell_that_names_it_though_a_unit_stands_below():
    found = lines(
        [["Gramaje (g/m²)", "Reverso gris (GD2)", "Reverso crema (GC2)"], ["", "EUR/t", "EUR/t"], [250, 962, 1268]]
    )
    said = {piece.field: piece for piece in found["C3"].evidence}
    assert (said["grade"].said_by, said["grade"].words) == ("C1", "Reverso crema (GC2)")


@pytest.mark.parametrize("unit", ["USD/ST", "USD"])
def test_calipers_across_over_a_row_of_price_units(unit):
    found = lines(
        [
            ["Prices per short ton"],
            ["Board", "18 pt", "20 pt"],
            ["", unit, unit],
            ["SBS", 1240, 1230],
            ["CRB", 952, 940],
        ]
    )
    assert {cell: (str(line.state), line.offer.caliper_um) for cell, line in found.items()} == {
        "B4": ("accepted", Decimal("457.2")),
        "C4": ("accepted", Decimal("508")),
        "B5": ("accepted", Decimal("457.2")),
        "C5": ("accepted", Decimal("508")),
    }


@pytest.mark.parametrize(
    ("until", "since"),
    [
        ("Price until 30 September 2026", "Price from 1 October 2026"),
        ("Preis bis 30. September 2026", "Preis ab 1. Oktober 2026"),
        ("Prix jusqu'au 30 septembre 2026", "Prix à partir du 1 octobre 2026"),
    ],
)
def test_an_announced_increase_gives_the_old_price_its_last_day(until, since):
    found = lines([["EUR/t"], ["Board", "µm", "g/m²", until, since], ["GC2", 370, 215, 1165, 1225]])
    assert {cell: (str(line.state), line.offer.valid_until) for cell, line in found.items()} == {
        "D3": ("accepted", date(2026, 9, 30)),
        "E3": ("accepted", None),
    }


def test_prices_by_their_last_day_are_prices():
    heads = ["Board", "µm", "g/m²", "Price valid to 31 Dec 2026", "Price valid to 31 Mar 2027"]
    found = lines([["EUR/t"], heads, ["GC2", 370, 215, 1165, 1225]])
    last = {cell: (str(line.state), line.offer.valid_until) for cell, line in found.items()}
    assert last == {"D3": ("accepted", date(2026, 12, 31)), "E3": ("accepted", date(2027, 3, 31))}


@pytest.mark.parametrize("corner", ["Caliper (µm)", "Grade"])
def test_weights_in_a_line_of_their_own_go_with_the_prices_below_them(corner):
    calipers = [350, 400] if corner != "Grade" else ["350 µm", "400 µm"]
    heads = [corner, None, *calipers]
    gc = [["GC1", "g/m²", 215, 245], [None, "£/t", 1115, 1105]]
    gd = [["GD2", "g/m²", 265, 300], [None, "£/t", 745, 735]]
    found = lines([["£ per tonne"], heads, *gc, *gd])
    told = {cell: (line.offer.grade, line.offer.caliper_um, line.offer.grammage_gsm) for cell, line in found.items()}
    assert told == {
        "C4": ("FBB", 350, 215),
        "D4": ("FBB", 400, 245),
        "C6": ("CRB", 350, 265),
        "D6": ("CRB", 400, 300),
    }
    assert {str(line.state) for line in found.values()} == {"accepted"}


def test_bare_numbers_across_are_what_the_title_says_they_are():
    title = "EUR per tonne DAP – price by grammage (g/m²)"
    found = lines([[title], [], ["Grade", 200, 225, 250], ["GC1", 1320, 1300, 1285]])
    assert [line.offer.grammage_gsm for line in found.values()] == [200, 225, 250]


def test_units_of_measure_in_columns_of_their_own_go_with_the_figures_before_them():
    heads = ["Board", "Thick", "U/M", "Weight", "U/M", "Price", "Curr", "Per"]
    rows = [
        ["SBS C1S", 18, "pt", 77, "lb/MSF", 1185, "USD", "short ton"],
        ["GC1", 420, "µm", 260, "g/m²", 1235, "EUR", "tonne"],
    ]
    found = lines([heads, *rows]).values()
    assert [(str(line.state), float(line.offer.caliper_um), line.offer.basis.value) for line in found] == [
        ("accepted", 457.2, "short_ton"),
        ("accepted", 420, "tonne"),
    ]


def test_what_a_thousand_sheets_weigh_is_no_second_basis_weight():
    heads = ["Board", "Caliper", "Basis (lb/MSF)", "Size", "Ctn wt lb/M", "$/M"]
    (line,) = lines([heads, ["SBS C1S", "18 pt", 77, "28 x 40", 599, 378.2]]).values()
    assert (str(line.state), line.offer.basis.value) == ("accepted", "1000sheets")


def test_prices_by_lettered_zones_are_offers_of_their_own():
    heads = ["Grade", "gsm", "µm", "Zone A", "Zone B", "Zone C"]
    found = lines([["£ per tonne, delivered to zone"], heads, ["GC1", 250, 405, 1100, 1125, 1160]])
    assert [(cell, str(line.state)) for cell, line in found.items()] == [
        ("D3", "accepted"),
        ("E3", "accepted"),
        ("F3", "accepted"),
    ]


def test_the_same_order_sizes_under_two_coatings_are_offers_of_their_own():
    title = "Solid bleached sulfate, ¢/lb FOB mill"
    heads = [
        ["Caliper", "lb/MSF", "C1S", None, "C2S", None],
        [None, None, *["under 20,000 lb", "20,000 lb up"] * 2],
    ]
    found = lines(
        [[title], [], *heads, ["12 pt", 52, 61.5, 60, 64.5, 62.75]], merged=merged((2, 2, 2, 3), (2, 4, 2, 5))
    )
    assert [(line.offer.coated_sides, line.offer.below_kg is None, str(line.state)) for line in found.values()] == [
        (1, False, "accepted"),
        (1, True, "accepted"),
        (2, False, "accepted"),
        (2, True, "accepted"),
    ]


def test_a_sheet_size_across_is_in_the_units_of_the_file():
    heads = ["Board", "Caliper", "lb/MSF", "25 x 38", "30 x 42"]
    found = lines([["US$ per 1,000 sheets"], heads, ["SBS C1S", "14 pt", 60, 249.38, 330.75]])
    assert [str(line.offer.sheet_mm[0]) for line in found.values()] == ["635.0", "762.0"]


def test_net_prices_by_order_size_stand_beside_the_list_price():
    heads = ["Grade", "pt", "lb/MSF", "List", "Net under 10,000 lb", "Net 10,000 lb and up"]
    found = lines([["US$/ST delivered"], heads, ["SBS C1S", 14, 60, 1300, 1261, 1222], ["CRB", 20, 78, 960, 931, 902]])
    assert [(cell, str(line.state), line.offer.below_kg is None) for cell, line in found.items()] == [
        ("E3", "accepted", False),
        ("F3", "accepted", True),
        ("E4", "accepted", False),
        ("F4", "accepted", True),
    ]


@pytest.mark.parametrize(
    ("middle", "state"), [("Half load (5-19 t)", "accepted"), ("Quantity Blue (5-19 t)", "question")]
)
def test_no_column_among_order_sizes_is_left_out(middle, state):
    heads = ["Grade", "g/m²", "µm", "LTL (under 5 t)", middle, "Truckload (20 t and over)"]
    rows = [["GC1", 250, 405, 1260, 1225, 1190], ["GD2", 350, 455, 880, 850, 826]]
    found = lines([["EUR per tonne"], heads, *rows])
    assert str(found["E3"].state) == state


def test_a_board_with_its_unit_parts_the_rows_below_the_heads():
    heads = ["Caliper", "lb/MSF", "Lead", "Price"]
    rows = [["SBS C1S", None, None, "$/ST"], ["14 pt", 60, "3 wks", 1205]]
    rows += [["CRB C1S", None, None, "$/cwt"], ["18 pt", 70, "3 wks", 44.5]]
    found = lines([["FOB mill, US dollars"], [], heads, *rows])
    told = {cell: (line.offer.grade, line.offer.basis.value, str(line.state)) for cell, line in found.items()}
    assert told == {"D5": ("SBS", "short_ton", "accepted"), "D7": ("CRB", "cwt", "accepted")}


def test_a_board_may_head_its_own_calipers():
    block = [["SBS C1S", "lb/MSF", "$/ST"], ["14 pt", 60, 1240], ["18 pt", 77, 1220], []]
    found = lines([["Delivered"], [], *block, ["CUK", "lb/MSF", "$/ST"], ["18 pt", 75, 1085]])
    assert [(line.offer.grade, line.offer.coated_sides, str(line.state)) for line in found.values()] == [
        ("SBS", 1, "accepted"),
        ("SBS", 1, "accepted"),
        ("CUK", None, "accepted"),
    ]


def test_the_shortest_and_the_longest_lead_time_may_stand_in_two_columns():
    heads = [["Grade", "g/m²", "µm", "EUR/t", "Lead time, weeks", None], [None, None, None, None, "min", "max"]]
    found = lines([["EXW"], *heads, ["GC1", 240, 395, 1235, 3, 5]], merged=merged((1, 4, 1, 5)))
    assert [line.offer.lead_days for line in found.values()] == [(21, 35)]


def test_a_dash_is_no_end_of_an_order_size():
    heads = ["Grade", "g/m²", "µm", "From (t)", "To below (t)", "EUR/t"]
    found = lines([heads, ["GC1", 240, 395, 2, 10, 1280], ["GC1", 240, 395, 10, "–", 1255]])
    assert [(line.offer.from_kg, line.offer.below_kg, str(line.state)) for line in found.values()] == [
        (2000, 10000, "accepted"),
        (10000, None, "accepted"),
    ]


def test_two_prices_in_one_cell_head_no_column():
    rows = [["SBS C1S 14 pt 60 lb/MSF", "$1,205/ST ($36.15/MSF)"], ["CUK 18 pt 75 lb/MSF", "$1,050/ST ($39.38/MSF)"]]
    assert set(lines([["Board", "Price"], *rows])) == {"B2", "B3"}


@pytest.mark.parametrize(
    ("heads", "measure", "first"),
    [
        (("16 pt ($/ST)", "18 pt ($/ST)"), "caliper_um", 406.4),
        (("16 pt price USD/ST", "18 pt price USD/ST"), "caliper_um", 406.4),
        (("16 pt\nUSD/ST", "18 pt\nUSD/ST"), "caliper_um", 406.4),
        (("250 g/m² (EUR/t)", "300 g/m² (EUR/t)"), "grammage_gsm", 250),
        (("Preis 250 g/m² €/t", "Preis 300 g/m² €/t"), "grammage_gsm", 250),
        (("250 g/m², prix EUR/t", "300 g/m², prix EUR/t"), "grammage_gsm", 250),
        (("250 g/m² precio €/t", "300 g/m² precio €/t"), "grammage_gsm", 250),
        (("250 g/m² pris EUR/t", "300 g/m² pris EUR/t"), "grammage_gsm", 250),
    ],
)
def test_a_head_may_be_a_value_and_the_unit_of_the_prices_below_it(heads, measure, first):
    found = lines([["Grade", *heads], ["SBS C1S", 1145, 1150], ["CRB", 905, 910]])
    assert sorted(found) == ["B2", "B3", "C2", "C3"]
    assert all(str(line.state) == "accepted" for line in found.values())
    assert float(getattr(found["B3"].offer, measure)) == first


def test_a_span_in_such_a_head_is_asked_about_and_not_lost():
    found = lines([["Sorte", "230-250 g/m² EUR/t", "260-300 g/m² EUR/t"], ["GC1", 1145, 1150], ["GD2", 905, 910]])
    assert {"B2", "B3"} <= set(found)
    assert all("caliper-unknown" in codes(line) for line in found.values())


@pytest.mark.parametrize("words", ["Freight 16 pt $/ST", "Fracht 250 g/m² €/t", "Transport 250 g/m² €/t"])
def test_what_a_value_is_charged_for_is_no_price(words):
    found = lines([["Grade", "Caliper (pt)", "Price $/ST", words], ["SBS C1S", 16, 1145, 45], ["CRB", 16, 905, 41]])
    assert sorted(found) == ["C2", "C3"]
