"""Titles and terms of several tables in one sheet: what holds for one of them, and what for all."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Reels, price ex works, lead time 6 weeks", "Sheets 70 x 100 cm"),
        ("GC1 folding boxboard, ex works, 6 weeks", "GD2 white-lined chipboard"),
    ],
)
def test_the_terms_in_one_tables_title_do_not_hold_below_a_title_for_another(first, second):
    rows = [
        ["Marlwick Board Ltd"],
        [],
        [first],
        HEAD,
        ["GC1", 250, 400, 1240],
        [],
        [second],
        HEAD,
        ["GD2", 300, 395, 880],
    ]
    one, other = lines(rows).values()
    assert (one.offer.delivered, other.offer.delivered) == (False, None)
    assert other.offer.lead_days is None


def test_terms_laid_out_in_two_columns_are_heard():
    rows = [
        ["EUR/t", "EXW"],
        ["Lead time: 3 weeks", "Minimum 2 t"],
        [],
        ["Grade", "350 µm", "400 µm"],
        ["GD2", 880, 905],
    ]
    found = lines(rows)
    assert [(line.offer.basis, line.offer.delivered, line.offer.lead_days) for line in found.values()] == [
        ("tonne", False, (21, 21))
    ] * 2
    labelled = lines(
        [[*HEAD[:3], "Price EUR/t"], ["GD2", 300, 395, 880], [], [], ["Minimum order", "2 t"], ["Lead time", "3 weeks"]]
    )
    assert [(line.offer.minimum_kg, line.offer.lead_days) for line in labelled.values()] == [(2000, (21, 21))]


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


SHEET = [["Sallow Board"], []]
EXPORT = [["Board", "Caliper µm", "g/m²", "US$/MT"], ["CUK C1S", 400, 320, 1198]]
LOTS = [["Board", "Caliper", "Weight", "US$/ton"], ["CUK C1S", "18 pt", "76 lb/MSF", 905]]


def second(first_title, second_title, lists=(EXPORT, LOTS)):
    above, below = lists
    *_, line = lines([*SHEET, [first_title], *above, [], [second_title], *below]).values()
    return line.offer


def test_a_ton_in_a_title_of_its_own_is_no_ton_of_another_title():
    title = "Metric list, US$ per metric ton, FCA mill"
    assert second(title, "Other boards, US$ per ton").basis is None
    assert second(title, "Other boards").basis == "tonne"


@pytest.mark.parametrize(
    ("first", "other", "delivered"),
    [
        ("Export, US$ per metric ton, delivered", "Job lots", None), ("A. Delivered to works", "B. As they lie", None),
        ("Inland, frei Haus", "Restposten", None), ("Exportación, DAP", "Saldos", None),
        ("Prices delivered", "Job lots", True), ("A. Delivered to works", "A. Delivered to works, second page", True),
    ],
)  # fmt: skip
def test_terms_of_one_part_are_not_those_of_another(first, other, delivered):
    assert second(first, other).delivered is delivered


def test_what_one_part_is_priced_in_says_nothing_of_another():
    plain = [["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 18, 76, 1180]]
    offer = second("Export, US$ per metric ton", "Domestic", (EXPORT, plain))
    assert (offer.currency, offer.basis) == (None, None)
    offer = second("All prices US$ per short ton", "Further grades", (EXPORT, plain))
    assert (offer.currency, offer.basis) == ("USD", "short_ton")


def test_numbered_titles_are_no_rows_of_the_table_above():
    first = [["Grade", "g/m2", "microns", "Order", None], ["", "", "", "up to 499 kg", "from 500 kg"]]
    rows = [
        ["1. Rolls: prices in CHF per kg, ex works"], [], *first,
        ["GC1", 245, 390, 1.89, 1.62], ["GD2", 300, 385, 1.31, 1.08],
        [], ["2. Laminated board, prices in CHF per m², delivered"], ["Grade", "g/m2", "mm", "CHF/m²"],
        ["URB", 900, 1.4, 0.815],
    ]  # fmt: skip
    found = lines(rows)
    *_, last = found.values()
    assert (len(found), str(last.state), str(last.offer.basis), last.offer.delivered) == (5, "accepted", "m2", True)
