"""Offers written as forms and cards: labels with their values beside them, whether in one column or two."""

from datetime import datetime

import pytest

from tests.intake.readings import by_cell, read_rows
from tests.intake.sheets import lines, prices, read
from tracker.trade.basis import Basis
from tracker.trade.offer import State


@pytest.mark.parametrize("gap", [0, 1, 2])
def test_an_offer_written_as_a_form_may_leave_columns_blank_before_its_values(gap):
    form = [
        ("Quote no.", "Q-20814"), ("Product", "SBS C1S"), ("Caliper", "16 pt"), ("Basis weight", "67 lb/MSF"),
        ("Price", "$1,248.00"), ("Unit", "per short ton"), ("Lead time", "3 weeks"),
    ]  # fmt: skip
    (line,) = lines([[None, label, *[None] * gap, value] for label, value in form]).values()
    assert (line.state, line.offer.basis, line.offer.lead_days) == (State.ACCEPTED, "short_ton", (21, 21))


def form(*price, board="SBS C1S", caliper="18 pt", weight="75 lb/MSF", lead="3 weeks"):
    return [["Board", board], ["Caliper", caliper], ["Basis weight", weight], ["Price", *price], ["Lead time", lead]]


def test_remarks_in_the_column_of_a_forms_unit_are_no_boards():
    rows = form(58.4, "USD per cwt")
    rows[0].append("coated one side")
    rows[4].append("ARO")
    assert prices(lines(rows)) == {"B4": ("accepted", "58.4", "cwt")}


def test_boards_beside_each_other_may_be_priced_in_units_of_their_own():
    rows = [["Board", "SBS C1S", None, "CUK"], ["Caliper", "18 pt", None, "20 pt"], ["Weight lb/MSF", 75, None, 82]]
    apart = lines([*rows, ["Price", 1168, "USD/ST", 58.4, "USD/cwt"]])
    assert prices(apart) == {"B4": ("accepted", "1168", "short_ton"), "D4": ("accepted", "58.4", "cwt")}
    same = lines([*rows, ["Price", 1168, "USD/ST", 1160, "USD/ST"]])
    assert prices(same) == {"B4": ("accepted", "1168", "short_ton"), "D4": ("accepted", "1160", "short_ton")}


def test_a_label_that_is_no_known_word_does_not_end_a_form():
    rows = form(58.4, "USD per cwt")
    rows[3:3] = [["Roll width", '37.25"'], ["Annual lbs", "820,000"], ["Core", '3"']]
    assert prices(lines(rows)) == {"B7": ("accepted", "58.4", "cwt")}


def test_cards_side_by_side_keep_their_own_units_and_one_may_withhold_its_price():
    left, right = form(1168, "USD/ST"), form(58.4, "USD/cwt", board="CUK", caliper="20 pt", weight="82 lb/MSF")
    width = max(map(len, left)) + 1
    rows = [[*one, *[None] * (width - len(one)), *other] for one, other in zip(left, right, strict=True)]
    found = lines(rows)
    assert prices(found) == {"B4": ("accepted", "1168", "short_ton"), "F4": ("accepted", "58.4", "cwt")}
    rows[3][5:] = ["no bid"]
    assert list(lines(rows)) == ["B4"]
    rows[3][1:3] = ["n/q"]
    assert lines(rows) == {}


def blocks(*, caliper="Caliper"):
    one = [["Grade", "SBS C1S", None, caliper, "14 pt"], ["Basis weight", "60 lb/MSF", None, "Quantity", "20,000 lb"]]
    two = [["Grade", "CRB", None, caliper, "20 pt"], ["Basis weight", "78 lb/MSF", None, "Quantity", "30,000 lb"]]
    rows = [
        ["Good until", "December 11, 2026"],
        [],
        ["ITEM 1"],
        *one,
        ["Price", 1175, "US$/ST", "Lead time", "7 weeks"],
    ]
    return [*rows, [], ["ITEM 2"], *two, ["Price", 880, "US$/ST", "Lead time", "3 weeks"]]


def test_a_form_may_have_two_labels_in_a_row():
    found = [line.offer for line in lines(blocks()).values()]
    assert [(str(offer.price), offer.basis, offer.lead_days) for offer in found] == [
        ("1175", "short_ton", (49, 49)),
        ("880", "short_ton", (21, 21)),
    ]
    assert [round(offer.caliper_um) for offer in found] == [356, 508]
    assert {str(offer.valid_until) for offer in found} == {"2026-12-11"}


def test_what_stands_beside_a_form_and_describes_no_board_is_none_of_it():
    rows = form(1168, "USD/ST", None, "Terms", "net 30")
    rows[0] += [None, None, "Customer no.", "55108"]
    assert prices(lines(rows)) == {"B4": ("accepted", "1168", "short_ton")}


HEAD = ["Grade", "pt", "lb/MSF", "Unit price USD", "U/M"]
ROWS = [["SBS C1S", 18, 78, 61.25, "CWT"], ["CCNB", 20, 79, 46.85, "CWT"]]


@pytest.mark.parametrize("terms", ["1% 20, net 30", "Net 30 days", "30 Tage netto", "30 jours net", "30 días neto"])
@pytest.mark.parametrize("label", ["Bill to:", "Rechnungsanschrift:", "Facturer à :", "Facturar a:", "Fakturaadress:"])
def test_a_printed_form_keeps_its_vendor_and_its_terms(label, terms):
    form = [
        ["Wexmoor Packaging Supply, Inc.", None, None, "QUOTATION"],
        ["PO Box 7718, Wexmoor, OH 43999", None, None, "Quote #", "Q-204"],
        [label, None, "Ship to:", "Good through", "04/17/2026"],
        ["Ombrel Cartons LLC", None, "Ombrel Cartons LLC", "Terms", terms],
        ["Attn: Purchasing", None, "Dock 4", "Ship via", "Delivered, freight included"],
        [],
    ]
    found = lines([*form, HEAD, *ROWS])
    assert {line.offer.vendor for line in found.values()} == {"Wexmoor Packaging Supply, Inc."}
    assert {(line.offer.delivered, str(line.state)) for line in found.values()} == {(True, "accepted")}


def test_two_firms_of_which_none_is_addressed_stay_open():
    rows = [["Wexmoor Packaging Supply, Inc."], ["Our partner mill:"], ["Ombrel Board Mills LLC"], [], HEAD, *ROWS]
    assert read(rows).vendor is None


@pytest.mark.parametrize("gap", [[], [None]])
def test_a_form_beside_the_table_is_no_part_of_it(gap):
    rows = [
        ["Sorte", "g/m²", "µm", "EUR/t", *gap, "Anbieter:", "Fährmühl Karton GmbH"],
        ["GC1", 250, 405, 1202, *gap, "Gültig bis:", "31.03.2027"],
        ["GD2", 350, 465, 845, *gap, "Mindestmenge:", "3 t"],
    ]
    offers = [line.offer for line in lines(rows).values()]
    assert {offer.vendor for offer in offers} == {"Fährmühl Karton GmbH"}
    assert {(str(offer.valid_until), offer.minimum_kg) for offer in offers} == {("2027-03-31", 3000)}


def test_a_scale_of_prices_below_a_form_is_of_the_forms_board():
    form = [["Sorte", "Faltschachtelkarton GC2"], ["Flächengewicht", "260 g/m²"], ["Dicke", "440 µm"]]
    scale = [["Abnahmemenge", "Preis EUR je Tonne"], ["5 bis 10 t", 1185], ["ab 10 t", 1138]]
    found = lines([*form, [], *scale])
    assert [(line.offer.grade, line.offer.caliper_um, line.offer.from_kg) for line in found.values()] == [
        ("FBB", 440, 5000),
        ("FBB", 440, 10000),
    ]


GC1 = ["GC1", 250, 410]


def basis_said(text):
    (line,) = lines([[text], ["Grade", "g/m²", "µm", "Price"], [*GC1, 1250]]).values()
    return line.offer.currency, line.offer.basis


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Monnaie : euro, unité : tonne", ("EUR", Basis.TONNE)), ("Währung: EUR, Einheit: Tonne", ("EUR", Basis.TONNE)),
        ("Currency: EUR, unit: tonne", ("EUR", Basis.TONNE)), ("Currency: EUR, contact: sales", ("EUR", None)),
    ],
)  # fmt: skip
def test_labels_side_by_side_say_each_its_own(text, said):
    assert basis_said(text) == said


def test_labels_and_values_in_two_cells():
    reading = read_rows(
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
