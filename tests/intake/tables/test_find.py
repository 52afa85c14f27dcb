"""Where tables stand on a sheet, and what stands around them."""

import pytest

from tests.intake.sheets import grid, merged
from tracker.intake.tables.find import find_tables
from tracker.intake.tables.view import turned, view_of

HEAD = ["Board", "Caliper (pt)", "lb/MSF", "USD/ST"]
ROW = ["SBS C1S", 18, 75, 1165]


def tables(rows, **more):
    return find_tables(view_of(grid(rows, **more)))


def addresses(table):
    return [row.index + 1 for row in table.rows]


def test_a_table_starts_anywhere_and_words_above_hold_for_the_sheet():
    found = tables([["Ferrowick Mills LLC"], ["FOB mill"], [], [None, *HEAD], [None, *ROW], [None, *ROW]])
    (table,) = found.tables
    assert addresses(table) == [5, 6]
    assert [column.text for column in table.columns] == HEAD
    assert [said.text for said in found.texts] == ["Ferrowick Mills LLC", "FOB mill"]


def test_a_label_and_the_value_beside_it_are_one_statement():
    found = tables([["Vendor:", "Saltmarrow Paperboard Inc."], ["Minimum order", "5", "t"], [], HEAD, ROW])
    assert [said.text for said in found.texts] == ["Vendor: Saltmarrow Paperboard Inc.", "Minimum order: 5 t"]


def test_header_rows_join_groups_above_and_brackets_below():
    rows = [
        ["Grade", "g/m²", "Price EUR/t", None, "Delivery"],
        [None, None, "< 5 t", "5–20 t", None],
        ["GC2", 235, 1260, 1205, "4 weeks"],
    ]
    blocks = merged((0, 0, 1, 0), (0, 1, 1, 1), (0, 2, 0, 3), (0, 4, 1, 4))
    (table,) = tables(rows, merged=blocks).tables
    assert [column.text for column in table.columns] == [
        "Grade",
        "g/m²",
        "Price EUR/t\n< 5 t",
        "Price EUR/t\n5–20 t",
        "Delivery",
    ]
    assert addresses(table) == [3]


def test_an_unmerged_group_heading_runs_right_over_blanks():
    rows = [["Grade", "g/m²", "Price EUR/t", None], [None, None, "< 5 t", "5–20 t"], ["GC2", 235, 1260, 1205]]
    (table,) = tables(rows).tables
    assert [column.text for column in table.columns][2:] == ["Price EUR/t\n< 5 t", "Price EUR/t\n5–20 t"]


def test_bare_numbers_across_are_heads_only_under_words_for_what_they_are():
    across = tables([["Grade", "Caliper (pt)", None, None], [None, 14, 16, 18], ["SBS", 1300, 1290, 1280]]).tables[0]
    assert [column.text for column in across.columns][1:] == [
        "Caliper (pt)\n14",
        "Caliper (pt)\n16",
        "Caliper (pt)\n18",
    ]
    plain = tables([HEAD, ["Greyboard", 18, 63, 725], ["Greyboard", 20, 70, 720]]).tables[0]
    assert addresses(plain) == [2, 3]


def _above(row):
    """The sub-headings above a row, the nearest first."""
    headings = row.headings
    while headings is not None:
        yield from headings.own
        headings = headings.before


def test_sub_headings_belong_to_the_rows_after_them_and_notes_to_the_sheet():
    rows = [HEAD, ["SBS"], [None, 18, 75, 1165], ["CRB"], [None, 18, 70, 900], [], ["Terms: net 30"]]
    found = tables(rows)
    (table,) = found.tables
    assert [[said.text for said in _above(row)] for row in table.rows] == [["SBS"], ["CRB", "SBS"]]
    assert [said.text for said in found.texts] == ["Terms: net 30"]


def test_stacked_tables_each_have_their_own_title():
    first, second = tables([["SBS"], HEAD, ROW, [], ["Small lots"], HEAD, ROW]).tables
    assert [said.text for said in first.titles] == ["SBS"]
    assert [said.text for said in second.titles] == ["Small lots"]


def test_tables_beside_each_other_are_parted_at_the_empty_column():
    rows = [[*HEAD, None, *HEAD], [*ROW, None, *ROW]]
    left, right = tables(rows).tables
    assert [column.index for column in left.columns] == [0, 1, 2, 3]
    assert [column.index for column in right.columns] == [5, 6, 7, 8]


def test_a_letterhead_beside_a_table_is_no_column_of_it():
    found = tables([[*HEAD, None, None, "Harrowdene Paperboard plc"], [*ROW, None, None, "Prices per short ton"], ROW])
    (table,) = found.tables
    assert len(table.columns) == 4
    assert [said.text for said in found.texts] == ["Harrowdene Paperboard plc", "Prices per short ton"]


def test_a_table_on_its_side_is_turned_and_keeps_its_addresses():
    rows = [["Board", "SBS", "CRB"], ["Caliper (pt)", 18, 20], ["lb/MSF", 75, 78], ["Price USD/ST", 1165, 900]]
    (table,) = tables(rows).tables
    assert table.view.turned
    cells = [table.view.rows[row.index][3] for row in table.rows]
    assert [(cell.row, cell.column) for cell in cells] == [(3, 1), (3, 2)]


def test_cards_under_each_other_are_a_table_each():
    card = [["Grade:", "SBS C1S"], ["Caliper:", "18 pt"], ["Weight:", "75 lb/MSF"], ["Price:", "$1,165/ST"]]
    assert len(tables([*card, [], *card]).tables) == 2


def test_rows_that_explain_themselves_need_no_header():
    (table,) = tables(
        [["Quillmere Board Company"], [], ["SBS C1S 18pt 75#/MSF", "$1,145/ST"], ["CUK 21pt", "$52.40/cwt"]]
    ).tables
    assert addresses(table) == [3, 4]


@pytest.mark.parametrize("above", [[], [["Price schedule 29-4", None, "Basis weight tolerance +/- 5 %."]]])
def test_a_line_of_a_letter_may_be_an_offer(above):
    found = tables(
        [*above, ["Dear buyer, we offer:"], ["- SBS C1S, 18 pt / 75 lb/MSF, $1,145/ST"], ["Yours sincerely"]]
    )
    (table,) = found.tables
    row = len(above) + 1
    assert [cell.text for cell in table.view.rows[row].values()] == ["SBS C1S, 18 pt / 75 lb/MSF", "$1,145/ST"]
    assert [(cell.row, cell.column) for cell in table.view.rows[row].values()] == [(row, 0), (row, 0)]


def test_a_price_may_stand_within_the_line_that_offers():
    (table,) = tables([["SBS C1S .016 68# $1,190/ton 40 in rolls"], ["CRB C1S .018 71# $870/ton 40 in rolls"]]).tables
    assert [cell.text for cell in table.view.rows[0].values()] == ["SBS C1S .016 68# 40 in rolls", "$1,190/ton"]


def test_figures_beside_boards_are_prices_below_the_sentence_that_says_so():
    rows = [["We offer in US$/cwt, FOB mill:"], ["SBS C1S 14pt 60#/MSF", 58.2], ["CUK 18pt 74#/MSF", "52,15"]]
    (table,) = tables(rows).tables
    assert [table.view.rows[row.index][1].text for row in table.rows] == ["58.2", "52,15"]
    assert not tables([["We offer, FOB mill:"], *rows[1:]]).tables


def test_words_that_only_looked_like_a_header_go_back_to_being_words():
    found = tables([["Price", "per short ton"], ["Delivery", "FOB mill"], [], HEAD, ROW])
    assert len(found.tables) == 1
    assert any("FOB mill" in said.text for said in found.texts)


def test_the_questions_and_answers_of_a_form_head_no_table():
    form = [["Currency", "EUR"], ["Price basis", "per 1000 kg"], ["Delivery terms", "free delivered"]]
    form = [["Valid until", "2026-11-15"], *form]
    for gap in ([], [[]]):
        found = tables([*form, ["Lead time", "4 weeks"], *gap, HEAD, ROW])
        assert [table.columns[0].text for table in found.tables] == ["Board"]
        said = [words.text for words in (*found.texts, *found.tables[0].titles)]
        assert {"Currency: EUR", "Price basis: per 1000 kg"} <= set(said)


def test_turning_twice_gives_the_same_rows():
    view = view_of(grid([HEAD, ROW, [None, 20]]))
    assert turned(turned(view)).rows == dict(view.rows)


def test_spaces_that_say_nothing_are_made_plain():
    view = view_of(grid([["SBS\u00a0C1S ", "two  spaces", "kept\nline"]]))
    assert [cell.text for cell in view.rows[0].values()] == ["SBS C1S", "two spaces", "kept\nline"]


@pytest.mark.parametrize(
    "line", ["SBS C1S 18 pt, 75 lb/MSF: $1,165/ST", 'SBS C1S 18 pt, 75 lb/MSF $1,165/ST 40" rolls']
)
def test_a_line_that_names_board_and_price_is_an_offer_however_much_stands_before_it(line):
    for before in ("", "We thank you for your enquiry. " * 100):
        assert [addresses(table) for table in tables([["Our offer:"], [before + line]]).tables] == [[2]]
