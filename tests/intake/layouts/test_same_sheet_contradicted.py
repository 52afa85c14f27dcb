"""The same sheet with something taken away, garbled or contradicted asks."""

import re

import pytest

from tests.intake.layouts.whole_lists import SHEETS, facts, table_rows
from tests.intake.sheets import grid

# What must turn every accepted line into a question.


def _replaced(sheet, words, new=""):
    rows = [[re.sub(words, new, value) if isinstance(value, str) else value for value in row] for row in sheet.rows]
    return sheet.with_rows(rows)


def without_currency(sheet):
    return _replaced(sheet, r"USD|EUR|SEK|£")


def without_basis(sheet):
    return _replaced(sheet, r"/short ton|/ton|/t\b|per 1000 sheets")


def without_grades(sheet):
    return _replaced(sheet, r"SBS C1S|CCNB|GC[12]|GD2|SBB C2S|folding boxboard|Vikkartong|Gråkartong", "Fenlight")


def without_measures(sheet):
    first = [1, 2] if sheet.rows[sheet.header][1] != "g/m²" else [1, 2, 3]
    return sheet.with_rows([[v for at, v in enumerate(row) if at not in first or not row[1:]] for row in sheet.rows])


def another_currency_below(sheet):
    return sheet.with_rows([*sheet.rows, [], ["All prices in CHF."]])


def another_currency_in_the_format(sheet):
    cells = {(row, column): "[$CHF] #,##0.00" for row in table_rows(sheet) for column in sheet.prices}
    return sheet.with_rows(sheet.rows, formats=cells)


def another_currency_in_a_column(sheet):
    below = [[*row, "Currency" if at == 0 else "CHF"] for at, row in enumerate(sheet.rows[sheet.header :])]
    return sheet.with_rows(sheet.rows[: sheet.header] + below)


def another_unit_below(sheet):
    return sheet.with_rows([*sheet.rows, [], ["All prices per cwt."]])


def another_unit_in_a_unit_row(sheet):
    units = [None] * len(sheet.rows[sheet.header])
    for column in sheet.prices:
        units[column] = "per cwt"
    return sheet.with_rows([*sheet.rows[: sheet.header + 1], units, *sheet.rows[sheet.header + 1 :]])


def another_unit_in_a_column(sheet):
    below = [[*row, "Unit" if at == 0 else "cwt"] for at, row in enumerate(sheet.rows[sheet.header :])]
    return sheet.with_rows(sheet.rows[: sheet.header] + below)


def other_prices_for_the_same_boards(sheet):
    again = [list(row) for row in sheet.rows[sheet.header :]]
    for row in again[1:]:
        for column in sheet.prices:
            row[column] = round(row[column] * 0.95, 2)
    return sheet.with_rows([*sheet.rows, [], [], *again])


ASKED = (
    without_currency, without_basis, without_grades, without_measures, another_currency_below,
    another_currency_in_the_format, another_currency_in_a_column, another_unit_below, another_unit_in_a_unit_row,
    another_unit_in_a_column, other_prices_for_the_same_boards,
)  # fmt: skip


@pytest.mark.parametrize("make", SHEETS)
@pytest.mark.parametrize("change", ASKED)
def test_what_is_missing_or_contradicted_is_asked(make, change):
    states = {told[0] for told in facts(change(make())).values()}
    assert "accepted" not in states


@pytest.mark.parametrize("text", ["12OO", "1195?", "1190-1210", "1190/1150", "from 1195", "ab 1195", "1195 - 10 %"])
@pytest.mark.parametrize("make", SHEETS)
def test_one_garbled_price_is_asked_and_the_others_stand(make, text):
    sheet = make()
    column = sheet.prices[0]
    rows = [list(row) for row in sheet.rows]
    lost = rows[-1][column]
    rows[-1][column] = text
    before = {price: told for price, told in facts(sheet).items() if price != grid([[lost]]).cell(0, 0).value}
    accepted = {price: told for price, told in facts(sheet.with_rows(rows)).items() if told[0] == "accepted"}
    assert accepted == before
