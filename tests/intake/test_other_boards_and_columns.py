"""Notes about one code of a grade, and columns beside prices that are not what their words alone would make them."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import lines

METRIC = ["Grade", "µm", "g/m²", "EUR/tonne"]
CODES = [["GC1", 450, 300, 1100], ["GT2", 420, 350, 860], ["GD2", 400, 300, 790]]


def below(note):
    return [line.offer for line in lines([METRIC, *CODES, [], [note]]).values()]


@pytest.mark.parametrize(
    "note", ["Lead time for GT2: 6 weeks.", "Plazo para GT2: 6 semanas.", "GT2: Lieferzeit 6 Wochen"]
)
def test_a_note_about_one_code_says_nothing_of_another_of_its_grade(note):
    assert [offer.lead_days for offer in below(note)] == [None, (42, 42), None]


def test_a_note_about_the_grade_holds_for_all_its_codes():
    assert [offer.lead_days for offer in below("Lead time for CRB: 6 weeks.")] == [None, (42, 42), (42, 42)]


@pytest.mark.parametrize(
    "note",
    [
        "Priset på GD2 gäller t.o.m. 2026-09-15, övriga tills vidare.",
        "Prices of GD2 valid until 15 September 2026, all others until further notice.",
    ],
)
def test_a_last_day_of_one_board_is_not_that_of_the_others(note):
    assert [offer.valid_until for offer in below(note)] == [None, None, date(2026, 9, 15)]


def test_a_last_day_of_all_is_that_of_each():
    assert {offer.valid_until for offer in below("Prices valid until 15 September 2026.")} == {date(2026, 9, 15)}


@pytest.mark.parametrize(
    ("head", "vendors"),
    [("Low bid", {"Alderby Board Co.", "Tarn Mills"}), ("Remark", {"Alderby Board Co.", "Tarn Mills"})],
)
def test_whom_the_buyer_would_take_is_not_who_quotes(head, vendors):
    rows = [["Delivered, USD per short ton"], []]
    rows += [
        ["Grade", "pt", "lb/MSF", "Alderby Board Co.", "Tarn Mills", head],
        [None, None, None, "Price", "Price", "Bidder"],
    ]
    rows += [["SBS C1S", 16, 67, 1242, 1251, "Alderby"], ["CRB C1S", 18, 71, 918, 911, "Tarn"]]
    found = lines(rows)
    assert {line.offer.vendor for line in found.values()} == vendors
    assert found["E5"].offer.vendor == "Tarn Mills"


def test_what_a_price_is_made_of_is_not_charged_beside_it():
    head = ["Grade", "pt", "lb/MSF", "Fiber USD/ST", "Energy USD/ST", "Margin USD/ST", "Selling price USD/ST"]
    (line,) = lines([head, ["SBS C1S", 16, 67, 498, 142, 179, 1171]]).values()
    assert (line.offer.price, line.offer.charges) == (1171, ())


def test_without_a_margin_energy_is_charged():
    (line,) = lines(
        [["Grade", "pt", "lb/MSF", "Energy USD/ST", "Price USD/ST"], ["SBS C1S", 16, 67, 42, 1171]]
    ).values()
    assert [charge.price for charge in line.offer.charges] == [42]


def test_a_number_sign_beside_calipers_weighs_the_board():
    rows = [["Board", "Pts", "#", "US$ per cwt"], ["SBS C1S", 16, 67, 62.25], ["SBS C1S", 20, 83, 61.5]]
    weights = [round(line.offer.grammage_gsm, 1) for line in lines(rows).values()]
    assert weights == [Decimal("327.1"), Decimal("405.2")]


def test_a_number_sign_over_large_figures_is_an_order():
    rows = [["Board", "Pts", "#", "US$ per cwt"], ["SBS C1S", 16, 10000, 62.25], ["SBS C1S", 16, 40000, 61.5]]
    assert {str(line.offer.grammage_from) for line in lines(rows).values()} == {"estimated"}


def test_a_day_in_the_head_of_the_new_price_is_no_price():
    rows = [
        ["Sorte", "Flächengew.", "Dicke", "bisher", "NEU ab 1.4.", "Erhöhung"],
        [None, "g/m²", "µm", "€/t", "€/t", "€/t"],
    ]
    (line,) = lines([*rows, ["GD2", 250, 330, 742, 782, 40]]).values()
    assert line.offer.price == 782


def test_a_cooperative_has_its_whole_name():
    (line,) = lines([["Larkholt Recycled Board Co-op"], METRIC, CODES[0]]).values()
    assert line.offer.vendor == "Larkholt Recycled Board Co-op"


def test_a_note_about_a_kind_of_board_is_not_said_of_all():
    assert {offer.lead_days for offer in below("Lead time for recycled board: 6 weeks.")} == {None}


ROLLS = [["SBS C1S", 18, 75, 63.1], ["CUK", 18, 74, 54.75]]


def test_pallet_lots_behind_order_sizes_are_one_more_and_asked_for_their_weight():
    head = ["Grade", "pt", "lb/MSF", "TL (42,000 lb and up)", "LTL (10,000 to 41,999 lb)", "Pallet lots"]
    rows = [[*ROLLS[0], 65.4, 71], [*ROLLS[1], 56.9, 62.5]]
    found = lines([["Delivered, US dollars per cwt"], [], head, *rows])
    assert [str(found[cell].state) for cell in ("D4", "E4", "F4")] == ["accepted", "accepted", "question"]


def test_pallets_of_a_list_are_no_prices():
    found = lines([["Grade", "pt", "lb/MSF", "US$ per cwt", "Pallets"], [*ROLLS[0], 24], [*ROLLS[1], 20]])
    assert {cell[0] for cell in found} == {"D"}


def test_terms_over_a_whole_table_name_none_of_its_columns():
    left, right = ["Board", "Cal. (pt)", "lb/MSF", "US$/ST"], ["Quality", "µm", "g/m²", "US$/MT"]
    terms = ["FOB warehouse, lead time 10 days", *[None] * 4, "Delivered duty paid, lead time 8 weeks"]
    rows = [["SBS C1S", 16, 67, 1215, None, "GC1", 410, 255, 1088], ["URB", 24, 86, 712, None, "GD2", 400, 300, 836]]
    found = lines([terms, [*left, None, *right], *rows])
    assert {cell: line.offer.price for cell, line in found.items()} == {"D3": 1215, "D4": 712, "I3": 1088, "I4": 836}


@pytest.mark.parametrize(
    ("title", "basis"),
    [
        ("Delivered, US dollars per cwt, weights per MSF", "cwt"),
        ("Lieferung frei Haus, Preise in USD je cwt, Flächengewichte in lb/MSF", "cwt"),
        ("US dollars, weights per MSF", None),
        ("US dollars, prices per MSF", "msf"),
    ],
)
def test_what_weights_are_on_is_no_unit_of_prices(title, basis):
    (line,) = lines([[title], ["Grade", "pt", "lb", "Price"], ["SBS C1S", 18, 76, 41]]).values()
    assert line.offer.basis == basis
