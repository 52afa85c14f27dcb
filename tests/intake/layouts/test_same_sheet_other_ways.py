"""The same sheet laid out in other ways reads the same."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.intake.layouts.whole_lists import SHEETS, european, facts, table_rows

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


def test_the_order_sizes_in_the_heads_are_read():
    bounds = {told[9:11] for told in facts(european()).values()}
    assert bounds == {(None, 5000), (5000, None)}
