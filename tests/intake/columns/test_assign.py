"""What each column holds, by its words, its cells and its formats together."""

from decimal import Decimal

import pytest

from tests.intake.sheets import grid
from tracker.intake.columns.assign import columns_of
from tracker.intake.columns.column import Kind
from tracker.intake.tables.find import find_tables
from tracker.intake.tables.view import view_of
from tracker.intake.values.heads.roles import Role


def columns(rows, **more):
    return columns_of(find_tables(view_of(grid(rows, **more))).tables[0])


def offers(found):
    return [price.column.text for price in found.prices if price.kind is Kind.OFFER]


@pytest.mark.parametrize(
    ("head", "cell", "role"),
    [
        ("Delivery", "3-4 weeks", Role.LEAD_TIME),
        ("Delivery", "FOB mill", Role.DELIVERY_TERMS),
        ("Basis", 75, Role.WEIGHT),
        ("Basis", "ST", Role.BASIS),
        ("um", 380, Role.CALIPER),
        ("UM", "kg", Role.BASIS),
        ("#/MSF", 75, Role.WEIGHT),
        ("Qty on hand", "12 rolls", Role.STOCK),
        ("Artikel", "K-2251", Role.ITEM),
        ("Min. kvantitet", "2 ton", Role.MINIMUM),
        ("Ped. mín.", "1.500 kg", Role.MINIMUM),
    ],
)
def test_a_word_of_two_meanings_is_settled_by_the_cells(head, cell, role):
    found = columns([["Material", head, "Price USD/ST"], ["SBS C1S", cell, 1165], ["CRB", cell, 900]])
    assert [column.index for column in found.of(role)] == [1]


def test_bare_weights_under_a_strange_word_begin_no_order_size():
    found = columns([["Material", "Losgruppe", "Price USD/ST"], ["SBS C1S", "2 t", 1165], ["CRB", "5 t", 900]])
    assert not found.of(Role.BRACKET, Role.FROM_QUANTITY, Role.MINIMUM)


def test_values_across_head_prices_with_what_they_say_of_the_board():
    found = columns([["Grade", "12 pt", "18 pt"], ["SBS", 1320, 1284], ["CRB", "-", 869]])
    assert [price.caliper.um for price in found.prices] == [Decimal("304.8"), Decimal("457.2")]


def test_two_axes_across_each_take_their_own_words_from_the_corner():
    rows = [
        ["Thickness (µm)", 390, 415],
        ["Substance (g/m²)", 280, 300],
        ["from 3 t", 1164, 1144],
        ["from 10 t", 1131, 1111],
    ]
    found = columns(rows)
    assert [price.caliper.um for price in found.prices] == [390, 415]
    assert [price.weights[0].gsm for price in found.prices] == [280, 300]
    assert [column.index for column in found.of(Role.BRACKET)] == [0]


def test_a_basis_weight_across_is_no_order_size():
    found = columns([["Product", "60 #/MSF", "70 #/MSF"], ["SBS", 1320, 1284]])
    assert [price.bracket for price in found.prices] == [None, None]
    assert all(price.weights for price in found.prices)


@pytest.mark.parametrize(
    ("heads", "offered"),
    [
        (["List price USD/ST", "Net price USD/ST"], ["Net price USD/ST"]),
        (["Price 2025 USD/ST", "Price 2026 USD/ST"], ["Price 2026 USD/ST"]),
        (["Old price USD/ST", "New price USD/ST"], ["New price USD/ST"]),
        (["Nettopreis EUR/t", "Preis inkl. 19 % MwSt. EUR/t"], ["Nettopreis EUR/t"]),
        (["$/ST", "$/MSF"], ["$/ST", "$/MSF"]),
    ],
)
def test_of_prices_beside_each_other_only_those_to_pay_are_offers(heads, offered):
    found = columns([["Board", "Caliper (pt)", *heads], ["SBS", 18, 1165, 1100], ["CRB", 18, 900, 880]])
    assert offers(found) == offered


def test_the_last_of_two_prices_with_the_increase_between_is_offered():
    found = columns([["Board", "pt", "Current price", "Increase", "New price"], ["SBS", 18, 1100, 50, 1150]])
    assert offers(found) == ["New price"]


def test_a_discount_without_a_net_price_is_a_doubt():
    found = columns([["Board", "pt", "Price USD/ST", "Discount %"], ["SBS", 18, 1165, 5]])
    assert "discount" in found.doubt


def test_prices_told_apart_by_a_letter_alone_are_a_doubt():
    assert columns([["Board", "pt", "Price A", "Price B"], ["SBS", 18, 1165, 1150]]).doubt


def test_months_across_are_a_history():
    rows = [["Grade", "January", "February", "March"], ["SBS", 1000, 1010, 1020], ["CRB", 800, 810, 820]]
    assert columns(rows).prices == ()
    measured = columns([["Grade", "pt", "Q2", "Q3"], ["SBS", 16, 1000, 1010], ["CRB", 18, 800, 810]])
    assert offers(measured) == ["Q2", "Q3"]
    assert measured.doubt


def test_words_of_a_number_format_count_as_the_head():
    rows = [["Product", 380, 440], ["GC1", 1320, 1284]]
    found = columns(rows, formats={(0, 1): '0 "µm"', (0, 2): '0 "µm"'})
    assert [price.caliper.um for price in found.prices] == [380, 440]
