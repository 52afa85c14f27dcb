"""The same sheet laid out in other ways reads the same; the same sheet with something taken away or contradicted asks.

Prices are unique in each sheet here, so that an offer is known by its price wherever its cell has gone.
"""

import re
from dataclasses import dataclass, field

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers


@dataclass
class Sheet:
    """Rows of values, the header's row, and what a sheet says beside its cells."""

    rows: list
    header: int
    prices: tuple
    name: str = "Prices"
    formats: dict = field(default_factory=dict)
    hidden_rows: frozenset = frozenset()
    hidden_columns: frozenset = frozenset()

    def lines(self):
        made = grid(
            self.rows,
            self.name,
            self.formats,
            hidden_rows=self.hidden_rows,
            hidden_columns=self.hidden_columns,
        )
        return read_workbook(book(made), Answers()).lines

    def with_rows(self, rows, **changes):
        same = {"formats": self.formats, "hidden_rows": self.hidden_rows, "hidden_columns": self.hidden_columns}
        return Sheet(rows, changes.pop("header", self.header), self.prices, **{"name": self.name, **same, **changes})


def american():
    rows = [
        ["Harlow Bend Board, Inc."],
        ["FOB mill. Lead time 4 weeks. Valid until 2026-09-30."],
        [],
        ["Grade", "Caliper (pt)", "Basis weight (lb/MSF)", "Price (USD/short ton)"],
        ["SBS C1S", 16, 69, 1175],
        ["SBS C1S", 18, 78, 1165],
        ["CCNB", 18, 69, 905],
        ["CCNB", 20, 78, 895],
    ]
    return Sheet(rows, 3, (3,))


def european():
    rows = [
        ["Lindmoor Karton GmbH"],
        ["Preise frei Haus, Mindestmenge 2 t"],
        [],
        ["Sorte", "Dicke µm", "g/m²", "EUR/t < 5 t", "EUR/t ab 5 t", "Lieferzeit"],
        ["GC2", 380, 235, 1260, 1205, "3-4 Wochen"],
        ["GC2", 440, 275, 1250, 1195, "4 Wochen"],
        ["GD2", 400, 300, 900, 845, "4 Wochen"],
    ]
    return Sheet(rows, 3, (3, 4))


def sheeted():
    rows = [
        ["Overstrand Board Ltd"],
        [],
        ["Board", "g/m²", "Caliper (µm)", "Size (mm)", "£ per 1000 sheets"],
        ["GC1 folding boxboard", 250, 405, "700 x 1000", 185.06],
        ["GC1 folding boxboard", 300, 485, "720 x 1020", 249.84],
        ["SBB C2S", 280, 345, "720 x 1020", 287.78],
    ]
    return Sheet(rows, 2, (4,))


def swedish():
    rows = [
        ["Älvrike Kartong AB"],
        ["Priserna gäller till 2026-10-16"],
        [],
        ["Kvalitet", "Tjocklek (µm)", "Ytvikt (g/m²)", "Pris SEK/ton"],
        ["Vikkartong GC2", 350, 215, 13535],
        ["Vikkartong GC2", 400, 250, 13240],
        ["Gråkartong", 595, 400, 8415],
    ]
    return Sheet(rows, 3, (3,))


SHEETS = (american, european, sheeted, swedish)


def facts(sheet):
    """What is read, by price."""
    read = {}
    for line in sheet.lines():
        o = line.offer
        read[o.price] = (
            line.state, o.vendor, o.grade, o.coated_sides, o.caliper_um, o.grammage_gsm, o.currency, o.basis,
            o.sheet_mm, o.from_kg, o.below_kg, o.minimum_kg, o.lead_days, o.valid_until, o.delivered, o.charges,
        )  # fmt: skip
    return read


def table_rows(sheet):
    return range(sheet.header, len(sheet.rows))


# What must not change the reading. Each takes a sheet and a whole number that says where.


def moved(sheet, n):
    return sheet.with_rows([[] for _ in range(n % 5)] + [[None] * (n % 4) + row for row in sheet.rows])


def blank_column(sheet, n):
    at = 1 + n % (len(sheet.rows[sheet.header]) - 1)
    return sheet.with_rows([[*row[:at], None, *row[at:]] for row in sheet.rows])


def blank_row_in_table(sheet, n):
    at = sheet.header + 1 + n % (len(sheet.rows) - sheet.header - 1)
    return sheet.with_rows([*sheet.rows[:at], [], *sheet.rows[at:]])


def columns_in_another_order(sheet, n):
    places = list(range(len(sheet.rows[sheet.header])))
    turn = n % len(places)
    order = places[turn:] + places[:turn] if n % 2 else places[::-1]
    below = [[row[place] for place in order] for row in sheet.rows[sheet.header :]]
    return sheet.with_rows(sheet.rows[: sheet.header] + below)


def header_right_below_the_title(sheet, _):
    return sheet.with_rows([row for row in sheet.rows if row])


def padded_and_unbreakable(sheet, _):
    def pad(value):
        return f" {value} ".replace(" ", "\u00a0") if isinstance(value, str) else value

    return sheet.with_rows([[pad(value) for value in row] for row in sheet.rows])


def hidden_parts(sheet, n):
    rows = frozenset(row for row in table_rows(sheet) if row > sheet.header and row % 2 == n % 2)
    return sheet.with_rows(sheet.rows, hidden_rows=rows, hidden_columns=frozenset(sheet.prices[: n % 2]))


def grades_written_once(sheet, _):
    rows, above = sheet.rows[: sheet.header + 1], None
    for row in sheet.rows[sheet.header + 1 :]:
        rows = [*rows, [None if row[0] == above else row[0], *row[1:]]]
        above = row[0]
    return sheet.with_rows(rows)


DECOYS = (
    ("Item no.", 40211, 7),
    ("Stock (pallets)", 12, 3),
    ("Index", 1104, 5),
    ("Phone ext.", 218, 1),
    ("Change %", 2.5, 1),
    ("Last year's price", 777, 11),
    ("Your target price", 700, 9),
    ("List price", 1999, 13),
    ("Brightness %", 84, 1),
)


def decoy_column(sheet, n):
    head, first, step = DECOYS[n % len(DECOYS)]
    at = (n // len(DECOYS)) % (len(sheet.rows[sheet.header]) + 1)
    rows = list(sheet.rows[: sheet.header])
    for place, row in enumerate(sheet.rows[sheet.header :]):
        rows.append([*row[:at], head if place == 0 else first + step * place, *row[at:]])
    return sheet.with_rows(rows)


FOOTERS = (
    "Transport by Haulmere Logistics Ltd.",
    "Also sold by our partner Tolverne Paperboard Inc.",
    "Tel. 01632 960 123 ext. 218. Page 1 of 2",
    "In 2025 we made 48,000 tons of board.",
    "Previous list was valid until 31 March 2026.",
    "Turnover 2025: USD 48 million",
)


def footer(sheet, n):
    return sheet.with_rows([*sheet.rows, [], [FOOTERS[n % len(FOOTERS)]]])


def total_row(sheet, n):
    word = ("Total", "Average", "Durchschnitt", "Moyenne", "Summa")[n % 5]
    last = [None] * len(sheet.rows[sheet.header])
    for column in sheet.prices:
        last[column] = sum(row[column] for row in sheet.rows[sheet.header + 1 :])
    return sheet.with_rows([*sheet.rows, [word, *last[1:]]])


def old_list(sheet, n):
    """The table again at lower prices, marked as old, below or above the one that holds."""
    old = [list(row) for row in sheet.rows[sheet.header :]]
    for row in old[1:]:
        for column in sheet.prices:
            row[column] = round(row[column] * 0.95, 2)
    mark = ("Superseded price list", "Alte Preisliste", "Anciens prix", "Old prices")[n % 4]
    if n % 2:
        return sheet.with_rows([*sheet.rows, [], [mark], *old])
    top, table = sheet.rows[: sheet.header], sheet.rows[sheet.header :]
    return sheet.with_rows([*top, [mark], *old, [], ["New prices"], *table])


SAME = (
    moved, blank_column, blank_row_in_table, columns_in_another_order, header_right_below_the_title,
    padded_and_unbreakable, hidden_parts, grades_written_once, decoy_column, footer, total_row, old_list,
)  # fmt: skip


@settings(max_examples=120, deadline=None)
@given(st.sampled_from(SHEETS), st.sampled_from(SAME), st.integers(0, 200))
def test_another_layout_reads_the_same(make, change, n):
    assert facts(change(make(), n)) == facts(make())


@settings(max_examples=40, deadline=None)
@given(
    st.sampled_from(SHEETS), st.sampled_from(SAME), st.sampled_from((moved, blank_column, footer)), st.integers(0, 9)
)
def test_so_do_two_changes_together(make, change, after, n):
    changed = change(make(), n)
    # The second change knows the header's row only where the first one left it.
    if after is blank_column and changed.rows[changed.header] != make().rows[changed.header]:
        after = footer
    assert facts(after(changed, n)) == facts(make())


@pytest.mark.parametrize("make", SHEETS)
def test_the_sheets_themselves_are_read_whole(make):
    sheet = make()
    read = facts(sheet)
    assert len(read) == len(sheet.prices) * (len(sheet.rows) - sheet.header - 1)
    assert {told[0] for told in read.values()} == {"accepted"}


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


def test_the_order_sizes_in_the_heads_are_read():
    bounds = {told[9:11] for told in facts(european()).values()}
    assert bounds == {(None, 5000), (5000, None)}


def test_an_empty_row_within_a_header_parts_nothing_of_it():
    heads = [["Sort", "g/m²", "µm", "Price / tonne"], [], [None, None, None, "£", "€"]]
    found = lines([*heads, ["GC1", 230, 370, 1240, 1438], ["GD3", 350, 430, 798, 926]])
    assert [(line.offer.grammage_gsm, line.offer.grammage_from) for line in found.values()] == [
        (230, "quoted"), (230, "quoted"), (350, "quoted"), (350, "quoted"),
    ]  # fmt: skip


def test_a_header_without_figures_above_another_whole_one_is_left_apart():
    rows = [["Grade", "µm", "g/m²", "EUR/tonne"], [], ["Board", "gsm", "mic", "EUR/tonne"], ["GC1", 230, 370, 1240]]
    assert [line.offer.grammage_gsm for line in lines(rows).values()] == [230]


def test_a_shorter_list_behind_an_empty_column_is_read_beside_a_longer_one():
    heads = ["Grade", None, "pt", "lb/MSF", "$/ST", None, "Grade", "pt", "lb/MSF", "$/ST"]
    rows = [
        ["ROLLS", None, None, None, None, None, "SHEETS"], heads,
        ["SBS C1S", None, 14, 60, 1290, None, "SBS C1S", 14, 60, 1390],
        ["SBS C1S", None, 16, 64, 1280, None, "SBS C1S", 18, 66, 1380],
        ["CRB C1S", None, 18, 71, 946], ["CRB C1S", None, 24, 95, 934], ["URB", None, 26, 92, 722],
    ]  # fmt: skip
    assert {"E3", "E4", "E5", "E6", "E7", "J3", "J4"} == set(lines(rows))


@pytest.mark.parametrize("heads", [("Jan 26", "Feb 26", "Mar 26"), ("Jan\n26", "Feb\n26", "Mar\n26")])
def test_what_prices_were_month_by_month_is_no_offer_on_one_line_or_two(heads):
    rows = [
        ["GBP per tonne"], ["Quality", "Substance, g/m²"], [None, 230, 250, 280], ["GC1", 1295, 1285, 1270],
        ["GD2", 875, 865, 850], [], ["What GD2 has cost, £ per tonne, monthly average"], [None, *heads],
        ["GD2", 822, 826, 833],
    ]  # fmt: skip
    assert {"B4", "C4", "D4", "B5", "C5", "D5"} == {cell for cell, line in lines(rows).items()}
