"""Shapes that American and Spanish-speaking vendors send, as small grids. All names and prices are invented."""

from datetime import date, datetime

import pytest

from tests.intake.sheets import lines
from tests.intake.test_seen_in_the_wild import accepted, by_cell, codes, pounds, read
from tracker.trade.offer import NoteCode

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_a_truckload_beside_the_unit_is_an_order_size_that_nothing_weighs():
    reading = read([[*HEAD, "LTL $/cwt", "Full truckload $/cwt"], [*BOARD, 62.5, 58.4]])
    assert accepted(reading) == {}
    assert all(NoteCode.BRACKET_UNREAD in codes(line) for line in reading.lines)


def test_days_without_a_date_of_the_list_end_on_no_known_day():
    reading = read([["Prices firm for 30 days"], [], [*HEAD, "USD/ST"], [*BOARD, 1165]])
    line = by_cell(reading)["D4"]
    assert line.offer.valid_until is None
    assert NoteCode.VALIDITY_UNREAD in codes(line)


def test_days_count_from_a_date_that_stands_by_itself_in_the_letterhead():
    letter = [["Tamsin Creek Paperboard"], [datetime(2026, 9, 14)], ["Firm for 30 days from the date above."], []]
    reading = read([*letter, [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert by_cell(reading)["D6"].offer.valid_until == date(2026, 10, 14)


def test_a_smallest_order_in_readingis_no_basis_weight():
    reading = read(
        [["Min order 40,000 pounds/item"], ["USD per ST"], [], ["Grade", '.012"', '.014"'], ["SBS", 1370, 1365]]
    )
    assert {line.offer.grammage_from for line in reading.lines} == {"estimated"}


def test_a_date_of_effect_and_a_lead_time_beside_it_are_no_validity():
    reading = read([["Effective 02/23/2026", "Delivery 3 wks. ARO"], [], [*HEAD, "USD/ST"], [*BOARD, 1405]])
    line = by_cell(reading)["D4"]
    assert (line.offer.valid_until, line.offer.lead_days) == (None, (21, 21))


def test_terms_over_figures_head_prices_of_their_own():
    head = ["Product", "GSM", "Micron", "EXW mill", "FCA port", "CIF Laredo", "DDP Toluca"]
    reading = read([["USD per metric tonne"], [], head, ["GC2 FBB", 250, 420, 905, 940, 1010, 1085]])
    delivered = {cell: line.offer.delivered for cell, line in by_cell(reading).items()}
    assert len(accepted(reading)) == 4
    assert delivered == {"D4": False, "E4": False, "F4": None, "G4": True}
    assert {line.offer.vendor for line in reading.lines} == {None}


def test_places_under_zones_head_delivered_prices():
    head = [[None, None, None, "Zone 1", "Zone 2"], [*HEAD, "Northeast", "Southeast"]]
    reading = read([["Delivered price by zone, US$ per short ton"], [], *head, [*BOARD, 1205, 1190]])
    assert accepted(reading) == {
        "D5": ("SBS", "1205", "USD", "short_ton"),
        "E5": ("SBS", "1190", "USD", "short_ton"),
    }


@pytest.mark.parametrize(
    ("head", "delivered", "charges"),
    [
        ("Delivered $/ST", 1180, {"D2": [18, 42], "G2": []}),
        ("Delivered $/ST", 1162, {"D2": [18, 42], "G2": [18]}),
        ("Total delivered", 1180, {"D2": [18, 42]}),
    ],
)
def test_a_delivered_price_beside_base_and_freight_is_an_offer_that_bears_the_freight_once(head, delivered, charges):
    reading = read([[*HEAD, "Base $/ST", "Energy $/ST", "Freight $/ST", head], [*BOARD, 1120, 18, 42, delivered]])
    assert list(accepted(reading)) == list(charges)
    assert {cell: sorted(one.price for one in line.offer.charges) for cell, line in by_cell(reading).items()} == charges


def test_an_item_column_that_names_the_board_is_the_product():
    reading = read([["US$"], ["Item", "Unit", "Price"], ["18pt SBS C1S 75#/MSF rolls", "CWT", 58.4]])
    assert accepted(reading) == {"C3": ("SBS", "58.4", "USD", "cwt")}


def test_counts_order_weights_and_line_amounts_are_no_prices():
    head = ["Rolls", *HEAD, "Weight lb", "$/cwt", "Amount"]
    reading = read([head, [12, *BOARD, 21600, 58.5, 12636], [30, None, None, None, None, "Total", 12636]])
    assert [line.offer.source.cell for line in reading.lines] == ["F2"]
    assert accepted(reading) == {"F2": ("SBS", "58.5", "USD", "cwt")}


def test_a_form_in_a_title_or_head_is_not_what_a_price_is_per():
    titled = read([["Rolls, USD"], [*HEAD, "USD/ST"], [*BOARD, 1162]])
    assert accepted(titled) == {"D3": ("SBS", "1162", "USD", "short_ton")}
    across = read([["Prices per tonne, GBP"], [], ["Quality", "gsm", "Reels", "Sheets"], ["GC1", 240, 985, 1040]])
    assert set(accepted(across).values()) == {("FBB", "985", "GBP", "tonne"), ("FBB", "1040", "GBP", "tonne")}


def test_a_unit_says_what_is_measured_whatever_its_group_is_called():
    head = [["Product", "Substance", None, "Price, reels"], ["Grade", "g/m²", "µm", "€/t"]]
    reading = read([*head, ["GC1", 250, 410, 1065]])
    assert accepted(reading) == {"D3": ("FBB", "1065", "EUR", "tonne")}
    offer = by_cell(reading)["D3"].offer
    assert (offer.grammage_gsm, offer.caliper_um) == (250, 410)


def test_gramaje_is_in_grams_and_bobina_is_a_form():
    head = ["Artículo", "Gramaje", "Espesor (µm)", "Formato", "Más de 5 tm"]
    reading = read([["Precios en €/tm, franco fábrica"], [], head, ["Cartoncillo GC1", 250, 400, "bobina", 1098.5]])
    assert accepted(reading) == {"E4": ("FBB", "1098.5", "EUR", "tonne")}


def test_prepaid_and_collect_below_freight_are_terms():
    reading = read([[*HEAD, "USD/cwt", "Freight"], [*BOARD, 62, "Collect"], ["CRB", 20, 79, 48.5, "Prepaid"]])
    assert [line.offer.delivered for line in reading.lines] == [False, True]


def test_one_truckload_of_a_stated_weight_is_no_range_from_one_pound():
    head = ["GRADE", "CALIPER", "WEIGHT", "QTY", "PRICE"]
    reading = read([head, ["SBS C1S", "18 PT", "75# PER MSF", "1 TRUCKLOAD (42,000 LB)", "$ 58.75 CWT"]])
    line = by_cell(reading)["E2"]
    assert accepted(reading) == {"E2": ("SBS", "58.75", "USD", "cwt")}
    assert (line.offer.from_kg, line.offer.below_kg) == (pounds(42_000), None)


@pytest.mark.parametrize(
    ("rows", "vendor"),
    [
        ([["Kestrel Ridge Board"], ["Prices in USD"]], "Kestrel Ridge Board"),
        ([["Harrow Vale Board", None, None, "Page 1 of 2"]], "Harrow Vale Board"),
        ([["Folding Carton Board"], ["Prices in USD"]], None),
        ([["Nordlake Fibre"], ["14 Mill Lane, Farholt"], ["Tel. +44 20 7946 0958"]], "Nordlake Fibre"),
        ([["Nordlake Fibre"], ["14 Mill Lane, Farholt"]], None),
        ([["Folding Carton Board"], ["Tel. +44 20 7946 0958"]], None),
        ([["Kestrel Ridge Board"], ["Ostrel Mills Inc."]], "Ostrel Mills Inc."),
    ],
)
def test_a_name_without_a_legal_form_at_the_head_of_a_sheet(rows, vendor):
    reading = read([*rows, [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert {line.offer.vendor for line in reading.lines} == {vendor}


def test_a_lead_time_and_a_smallest_order_among_the_remarks():
    rows = [
        [*BOARD, 1165, "4 to 5 weeks; min 10,000 lb"],
        ["CRB", 20, 79, 880.5, "In stock, min 2 t"],
        ["CUK", 18, 74, 990, "30 days"],
    ]
    found = by_cell(read([[*HEAD, "USD/ST", "Remarks"], *rows]))
    assert [line.offer.lead_days for line in found.values()] == [(28, 35), (0, 0), None]
    assert found["D2"].offer.minimum_kg == pounds(10_000)


def test_a_price_per_100_lb():
    reading = read([["US dollars"], [*HEAD, "Price per 100 lb"], [*BOARD, 61.4]])
    assert accepted(reading) == {"D3": ("SBS", "61.4", "USD", "cwt")}


def test_inches_in_halves_and_quarters():
    reading = read([["USD"], [*HEAD, "Size", "$/M"], ["CRB", 18, 72, "28-1/2 x 40 3/4", 268.9]])
    (line,) = reading.lines
    assert [float(side) for side in line.offer.sheet_mm] == [723.9, 1035.05]


@pytest.mark.parametrize("head", ["Weight", "Gewicht", "Poids", "Peso", "Vikt"])
def test_lots_of_thousands_of_pounds_are_no_basis_weights(head):
    rows = [["Job lots, US cents per lb"], ["Lot", "Board", head, "Asking"]]
    rows += [["L-1", "SBS 18pt 76#/MSF", "14,220 lb", "54.5 c/lb"], ["L-2", "CUK 21pt 87#/MSF", "22,640 lb", "47 c/lb"]]
    found = [line for line in lines(rows).values() if line.state == "accepted"]
    assert [round(line.offer.grammage_gsm) for line in found] == [371, 425]
    rows = [["US$ per cwt"], ["Lot", "Board", head, "Asking"], ["L-1", "SBS 18pt", "76 lb/MSF", "54.50"]]
    assert round(lines(rows)["D3"].offer.grammage_gsm) == 371
