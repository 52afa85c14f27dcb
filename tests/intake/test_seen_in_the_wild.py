"""Shapes of price sheets that once caught the reader out, as small grids with the lines that they must yield.

All vendors, boards and prices are invented.
"""

from datetime import datetime
from decimal import Decimal
from typing import Any

import pytest

from tracker.intake.grid import Cell, Grid, MergedRange, Workbook
from tracker.intake.read import read_workbook
from tracker.trade.footing import footing
from tracker.trade.offer import Answers, Line, NoteCode, Reading, State
from tracker.trade.quantities import MassUnit, kilograms

Rows = list[list[Any]]


def read(rows: Rows, *, merged: tuple[MergedRange, ...] = (), hidden: frozenset[int] = frozenset()) -> Reading:
    cells = {}
    for row, values in enumerate(rows):
        for column, given in enumerate(values):
            if given is not None:
                value = Decimal(str(given)) if isinstance(given, int | float) else given
                cells[row, column] = Cell(row, column, value, str(given), "General")
    grid = Grid("Sheet1", cells, merged, frozenset(), hidden)
    return read_workbook(Workbook("list.xlsx", "0" * 64, "xlsx", (grid,)), Answers())


def by_cell(reading: Reading) -> dict[str, Line]:
    return {line.offer.source.cell: line for line in reading.lines}


def accepted(reading: Reading) -> dict[str, tuple[str | None, str, str | None, str | None]]:
    """Cell -> grade, price, currency, basis of every accepted line."""
    return {
        cell: (
            line.offer.grade,
            f"{line.offer.price:f}",
            line.offer.currency,
            str(line.offer.basis.value) if line.offer.basis else None,
        )
        for cell, line in by_cell(reading).items()
        if line.state is State.ACCEPTED
    }


def codes(line: Line) -> set[NoteCode]:
    return {note.code for note in line.notes}


def pounds(number: int) -> Decimal:
    mass = kilograms(Decimal(number), MassUnit.LB)
    return Decimal(mass.numerator) / Decimal(mass.denominator)


def test_truckloads_counted_in_the_heads():
    reading = read(
        [
            ["Sable Creek Mills Inc. – 2026 cwt prices"],
            ["FOB Sable Creek, US$ per cwt"],
            [],
            ["Board", "Caliper (pt)", "Basis wt (lb/MSF)", "1 T/L", "2-4 T/L", "5+ T/L"],
            ["SBS C1S", 18, 76, 59.5, 58.75, 58],
            ["CUK C1S", 18, 74, 54, 53.25, 52.5],
            [],
            ["T/L = truckload = 40,000 lb"],
        ]
    )
    assert set(accepted(reading)) == {"D5", "E5", "F5", "D6", "E6", "F6"}
    lines = by_cell(reading)
    sizes = [(lines[cell].offer.from_kg, lines[cell].offer.below_kg) for cell in ("D5", "E5", "F5")]
    assert sizes == [
        (pounds(40000), pounds(80000)),
        (pounds(80000), pounds(200000)),
        (pounds(200000), None),
    ]


def test_order_sizes_down_in_the_heads_pounds():
    reading = read(
        [
            ["Millrace Fold Board Inc."],
            ["US$ per short ton FOB"],
            [],
            ["Order (lb)", "SBS C1S", None, "CUK C1S", None],
            [None, "16 pt", "18 pt", "18 pt", "21 pt"],
            ["under 10,000", 1200, 1190, 1100, 1090],
            ["10,000 to 39,999", 1170, 1160, 1070, 1060],
            ["40,000 and over", 1150, 1140, 1050, 1040],
        ],
        merged=(MergedRange(3, 0, 4, 0), MergedRange(3, 1, 3, 2), MergedRange(3, 3, 3, 4)),
    )
    lines = by_cell(reading)
    assert len(accepted(reading)) == 12
    sizes = [(lines[cell].offer.from_kg, lines[cell].offer.below_kg) for cell in ("E6", "E7", "E8")]
    assert sizes == [(None, pounds(10000)), (pounds(10000), pounds(40000)), (pounds(40000), None)]


def test_a_surcharge_on_all_prices_is_part_of_the_delivered_cost():
    reading = read(
        [
            ["Elmscombe Mill Ltd"],
            ["Delivered prices, £ per tonne. An energy surcharge of £35 per tonne is added to all prices."],
            [],
            ["Grade", "gsm", "micron", "£/t"],
            ["GD2", 280, 370, 760],
        ]
    )
    assert accepted(reading) == {"D5": ("CRB", "760", "GBP", "tonne")}
    assert footing(by_cell(reading)["D5"].offer).delivered_per_tonne == 795


def test_a_surcharge_in_the_same_sentence_as_the_unit():
    reading = read(
        [
            ["Kaltenfels Kartonfabrik GmbH"],
            ["Preise in EUR/t frei Haus, zuzüglich 3,5 % Energiezuschlag"],
            [],
            ["Sorte", "g/m²", "µm", "Preis"],
            ["GC1", 250, 400, 1240],
        ]
    )
    assert accepted(reading) == {"D5": ("FBB", "1240", "EUR", "tonne")}
    assert [charge.price for charge in by_cell(reading)["D5"].offer.charges] == [Decimal("3.5")]


def test_a_surcharge_without_a_unit_too_large_for_a_percentage():
    reading = read(
        [
            ["Nordbruk Board AB"],
            ["Prices EXW mill, EUR per tonne"],
            [],
            ["Grade", "g/m²", "µm", "Base price", "Energy surcharge", "Freight to buyer"],
            ["GC1", 240, 385, 1180, 25, 62],
        ]
    )
    assert footing(by_cell(reading)["D5"].offer).delivered_per_tonne == 1180 + 25 + 62


def test_an_announced_increase_offers_the_new_price():
    reading = read(
        [
            ["Marrowby Board plc"],
            ["Price adjustment – deliveries from 1 July 2026"],
            ["All prices GBP per tonne delivered"],
            [],
            ["Product", "gsm", "micron", "Current price", "Increase", "New price"],
            ["GC1 Larchwhite", 235, 380, 1020, 60, 1080],
            ["GC2 Larchcream", 270, 440, 985, 55, 1040],
        ]
    )
    assert accepted(reading) == {"F6": ("FBB", "1080", "GBP", "tonne"), "F7": ("FBB", "1040", "GBP", "tonne")}


def test_the_old_price_in_a_hidden_column():
    reading = read(
        [
            ["Lindal Paperboard Ltd – price list 2026, EUR/t DDP, valid to 31 Dec 2026"],
            [],
            ["Grade", "GSM", "Microns", "Old price 2025", "New price 2026"],
            ["GC1", 250, 400, 1180, 1225],
            ["GD2", 300, 400, 800, 845],
        ],
        hidden=frozenset({3}),
    )
    assert accepted(reading) == {"E4": ("FBB", "1225", "EUR", "tonne"), "E5": ("CRB", "845", "EUR", "tonne")}


def test_two_years_side_by_side_under_merged_heads():
    reading = read(
        [
            ["Ramsholt Board Ltd"],
            [],
            ["Grade", "gsm", "µm", "2026", None, "2025", None],
            [None, None, None, "£/t", "Lead time", "£/t", "Lead time"],
            ["GC1", 250, 400, 1240, "4 weeks", 1200, "5 weeks"],
            ["GD2", 300, 400, 845, "4 weeks", 805, "5 weeks"],
        ],
        merged=(MergedRange(2, 3, 2, 4), MergedRange(2, 5, 2, 6)),
    )
    assert accepted(reading) == {"D5": ("FBB", "1240", "GBP", "tonne"), "D6": ("CRB", "845", "GBP", "tonne")}
    assert by_cell(reading)["D5"].offer.caliper_um == 400


def test_labels_and_values_in_two_cells():
    reading = read(
        [
            ["Vendor", "Bracken Hollow Board Inc."],
            ["Expires", datetime(2026, 8, 31)],
            ["Terms", "FOB origin"],
            [],
            ["Board", "Caliper", "Wt, #/MSF", "USD/MSF"],
            ["SBS C1S", "14 pt", 60, 36.15],
        ]
    )
    offer = by_cell(reading)["D6"].offer
    assert reading.vendor == "Bracken Hollow Board Inc."
    assert (offer.delivered, str(offer.valid_until)) == (False, "2026-08-31")


@pytest.mark.parametrize(
    ("rows", "expected"),
    [
        (
            [
                ["Selbrook International Board"],
                ["CIF/DAP buyer's works, per 1000 kg"],
                [],
                ["Product", "Grammage g/m²", "Caliper µm", "EUR", "GBP"],
                ["GC1", 235, 375, 1240, 1068],
            ],
            {"D5": ("FBB", "1240", "EUR", "tonne"), "E5": ("FBB", "1068", "GBP", "tonne")},
        ),
        (
            [
                ["Cartonnerie de la Veyle SARL"],
                ["Tarif cartons plats – prix en € h.t. la tonne, franco"],
                [],
                ["Qualité / g/m²", "230 g/m²", "250 g/m²"],
                ["GC1 couché 1 face", 1325.5, 1310],
            ],
            {"B5": ("FBB", "1325.5", "EUR", "tonne"), "C5": ("FBB", "1310", "EUR", "tonne")},
        ),
        (
            [
                ["Wickett Board Sales LLC"],
                ["Item", "Item description", "Your price"],
                ["1001", "16pt SBS C1S 69#/MSF 38.5in roll 6in core", "$60.25/cwt"],
                ["1003", "CCNB .024 94 lbs/msf sheets 28x40", "$430.50/M"],
            ],
            {"C3": ("SBS", "60.25", "USD", "cwt"), "C4": ("CRB", "430.50", "USD", "1000sheets")},
        ),
        (
            [
                ["From: sales desk, Hobbin & Crake Paperboard LLC"],
                ["thanks for the inquiry. We can offer:"],
                ["SBS C1S 18 pt 76 lb/MSF, $1,185.00/ST fob mill"],
                ["CRB C1S 20 pt 79 lb/MSF, $33.90/MSF delivered"],
                ["Call me at ext. 2204 with questions."],
            ],
            {"A3": ("SBS", "1185.00", "USD", "short_ton"), "A4": ("CRB", "33.90", "USD", "msf")},
        ),
    ],
)
def test_units_in_sentences(rows, expected):
    assert accepted(read(rows)) == expected


def test_thousandths_of_an_inch_in_a_description():
    reading = read(
        [
            ["Wickett Board Sales LLC"],
            ["Item", "Item description", "Your price"],
            ["1003", "CCNB .024 94 lbs/msf sheets 28x40", "$430.50/M"],
        ]
    )
    assert by_cell(reading)["C3"].offer.caliper_um == Decimal("609.6")


def test_other_measures_are_no_basis_weight():
    reading = read(
        [
            ["Ellory Sheeting Inc."],
            ["Sheets, US$ per M sheets"],
            [],
            ["Grade", "Caliper", "lb/MSF", "Bulk cm³/g", "Size", "M wt (lb)", "Price/M"],
            ["SBS C1S", "14 pt", 60, 1.3, "25 x 38", 395.8, 262.4],
            ["SBS C1S", "18 pt", 76, 1.3, "28 x 40", 591.1, 388.1],
        ]
    )
    assert set(accepted(reading)) == {"G5", "G6"}
    grammage = by_cell(reading)["G6"].offer.grammage_gsm
    assert grammage is not None
    assert round(grammage) == 371


def test_a_week_of_the_calendar_is_no_lead_time():
    reading = read(
        [
            ["Coldharbour Carton Ltd"],
            ["£ per tonne"],
            [],
            ["Board", "gsm", "Microns", "Price", "Availability"],
            ["GC2", 270, 440, 1040, "3 to 4 wks"],
            ["GD2", 300, 400, 745, "week 24"],
        ]
    )
    line = by_cell(reading)["D6"]
    assert by_cell(reading)["D5"].offer.lead_days == (21, 28)
    assert (line.state, line.offer.lead_days) == (State.ACCEPTED, None)
    assert NoteCode.LEAD_TIME_UNREAD in codes(line)


def test_what_is_added_below_the_table_is_no_offer():
    reading = read(
        [
            ["Cobden Reach Mills Inc."],
            ["US$/short ton FOB mill"],
            [],
            ["Grade", "Caliper (pt)", "lb/MSF", "Price"],
            ["SBS C1S", 16, 69, 1190],
            ["CRB C1S", 20, 79, 885],
            ["PE coating one side, add", None, None, 120],
            ["Sheeting, add", None, None, 65],
        ]
    )
    assert set(accepted(reading)) == {"D5", "D6"}


@pytest.mark.parametrize(
    ("rows", "cell", "code"),
    [
        (
            [
                ["Portage Lake Board Inc."],
                ["55 Rue des Érables, Trois-Rivières, Québec G8T 2K4"],
                [],
                ["Grade", "Caliper pt", "lb/MSF", "Price $/ST"],
                ["SBS C1S", 16, 68, 1510],
            ],
            "D5",
            NoteCode.CURRENCY_UNKNOWN,
        ),
        (
            [
                ["Vernouil Cartons SARL"],
                [],
                ["Qualité", "g/m²", "µm", "Prix € / 100 m²"],
                ["GC1", 250, 400, 31.2],
            ],
            "D4",
            NoteCode.BASIS_UNKNOWN,
        ),
        (
            [
                ["Quenby Carton Board Co."],
                ["USD per short ton"],
                [],
                ["Grade", "Caliper", "Price"],
                ["SBS C1S", "16-20 pt", 1235],
            ],
            "C5",
            NoteCode.CALIPER_UNKNOWN,
        ),
        (
            [
                ["Rushbrook Cartonboard Ltd"],
                ["£/t delivered"],
                [],
                ["Grade", "gsm", "µm", "1-4 pallets", "5+ pallets"],
                ["GC1", 250, 400, 1240, 1210],
            ],
            "E5",
            NoteCode.BRACKET_UNREAD,
        ),
        (
            [
                ["Merganser Board Export Inc."],
                [],
                ["Board", "Caliper (pt)", "g/m²", "US$/ton"],
                ["SBS C1S", 16, 337, 1190],
            ],
            "D4",
            NoteCode.BASIS_UNKNOWN,
        ),
    ],
)
def test_what_must_be_asked(rows, cell, code):
    reading = read(rows)
    line = by_cell(reading)[cell]
    assert line.state is State.QUESTION
    assert code in codes(line)
    assert not accepted(reading)


def test_kilograms_in_a_head_are_no_partnership():
    reading = read(
        [
            ["ITEM_DESC", "GRADE", "GSM", "CALIPER_UM", "NET_PRICE", "CURRENCY", "UOM", "MOQ_KG", "STOCK_KG", "SCORE"],
            ["GC1 250G RL", "GC1", 250, 405, 1265, "EUR", "TO", 2000, 18450, "0"],
            ["GD2 300G RL", "GD2", 300, 400, 842.5, "EUR", "TO", 2000, 19450, "0"],
        ]
    )
    assert accepted(reading) == {"E2": ("FBB", "1265", "EUR", "tonne"), "E3": ("CRB", "842.5", "EUR", "tonne")}
    assert by_cell(reading)["E2"].offer.minimum_kg == 2000
    assert by_cell(reading)["E2"].offer.coated_sides != 0
