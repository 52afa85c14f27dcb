"""Offers written as forms, and blocks of a sheet that are each in units of their own."""

import pytest

from tests.intake.sheets import lines, prices
from tracker.trade.offer import State


@pytest.mark.parametrize("gap", [0, 1, 2])
def test_an_offer_written_as_a_form_may_leave_columns_blank_before_its_values(gap):
    form = [
        ("Quote no.", "Q-20814"), ("Product", "SBS C1S"), ("Caliper", "16 pt"), ("Basis weight", "67 lb/MSF"),
        ("Price", "$1,248.00"), ("Unit", "per short ton"), ("Lead time", "3 weeks"),
    ]  # fmt: skip
    (line,) = lines([[None, label, *[None] * gap, value] for label, value in form]).values()
    assert (line.state, line.offer.basis, line.offer.lead_days) == (State.ACCEPTED, "short_ton", (21, 21))


def test_a_lone_t_is_a_tonne_in_a_metric_table_beside_one_in_pounds():
    rows = [
        ["A. USD/MSF"], ["Grade", "Caliper in", "lb/MSF", "Price"], ["SBS C1S", 0.018, 75, 43.8], [],
        ["B. EUR/t"], ["Grade", "Caliper µm", "g/m²", "Price"], ["GC1", 480, 290, 1042],
    ]  # fmt: skip
    assert [line.offer.basis for line in lines(rows).values()] == ["msf", "tonne"]
    asked = lines([*rows[:4], ["B. EUR/ton"], *rows[5:]]).values()
    assert [line.state for line in asked] == [State.ACCEPTED, State.QUESTION]


def test_a_sales_tax_is_no_charge():
    rows = [["Prices delivered, HST 13 % extra"], ["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 75, 1100]]
    assert [line.offer.charges for line in lines(rows).values()] == [()]


def test_a_ditto_in_the_price_column_is_the_price_above_it():
    rows = [
        ["Grade", "pt", "lb/MSF", "USD/ST"],
        ["SBS C1S", 14, 59, 1190],
        ["SBS C1S", 18, 76, '"'],
        ["CRB", 20, 78, 870],
    ]
    assert {cell: line.offer.price for cell, line in lines(rows).items()} == {"D2": 1190, "D3": 1190, "D4": 870}


def test_a_table_of_months_is_no_offer():
    history = [["Recovered paper, USD/ST"], ["Month", "Board", "OCC"], ["Jan 2026", 1210, 95], ["Feb 2026", 1205, 92]]
    assert lines([["SBS C1S 18 pt list of Harlow Bend Board"], [], *history]) == {}
    named = [["USD/ST"], ["Month", "Board", "Price"], ["Jan 2026", "SBS 18 pt", 1210], ["Feb 2026", "CRB 20 pt", 905]]
    assert len(lines(named)) == 2


def form(*price, board="SBS C1S", caliper="18 pt", weight="75 lb/MSF", lead="3 weeks"):
    return [["Board", board], ["Caliper", caliper], ["Basis weight", weight], ["Price", *price], ["Lead time", lead]]


@pytest.mark.parametrize(
    ("price", "cell"),
    [
        ((58.4, "USD per cwt"), "B4"),
        ((58.4, "USD", "per cwt (100 lb)"), "B4"),
        ((58.4, None, "USD/cwt"), "B4"),
        (("USD", 58.4, "per cwt"), "C4"),
    ],
)
def test_what_a_forms_price_is_per_may_stand_beside_it(price, cell):
    (line,) = [found for at, found in lines(form(*price)).items() if at == cell]
    assert (line.state, line.offer.currency, line.offer.basis) == (State.ACCEPTED, "USD", "cwt")
    assert line.offer.lead_days == (21, 21)


@pytest.mark.parametrize(
    ("price", "currency", "basis"),
    [
        (["Preis", "298,40", "EUR je 1.000 Bogen"], "EUR", "1000sheets"),
        (["Prix", "1 214,00", "€ la tonne"], "EUR", "tonne"),
        (["Precio", 1214, "USD", "por tonelada métrica"], "USD", "tonne"),
        (["Pris", "12 350", "SEK per ton (1000 kg)"], "SEK", "tonne"),
    ],
)
@pytest.mark.parametrize("kind", ["xlsx", "csv"])
def test_units_beside_a_forms_price_in_other_languages(price, currency, basis, kind):
    rows = [["Material", "GC2"], ["g/m²", "250 g/m²"], ["µm", "410 µm"], ["Format", "700 x 1000 mm"], price]
    (line,) = lines([[str(value) for value in row] for row in rows] if kind == "csv" else rows).values()
    assert (line.state, line.offer.currency, line.offer.basis) == (State.ACCEPTED, currency, basis)


def test_remarks_in_the_column_of_a_forms_unit_are_no_boards():
    rows = form(58.4, "USD per cwt")
    rows[0].append("coated one side")
    rows[4].append("ARO")
    assert prices(lines(rows)) == {"B4": ("accepted", "58.4", "cwt")}


def test_a_unit_beside_a_forms_price_that_its_label_denies_is_asked():
    rows = form(58.4, "USD per cwt")
    rows[3][0] = "Price per short ton"
    assert [line.state for line in lines(rows).values()] == [State.QUESTION]
    rows[3][0] = "Price per ton"
    rows[3][2] = "USD per short ton"
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton"]


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
