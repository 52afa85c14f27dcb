"""Layouts marked by hand: the sheet they were marked in, the vendor's next one, and those they must not be used for."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.intake.grid import Cell, Grid, Workbook
from tracker.intake.read import read_workbook
from tracker.intake.values.heads.roles import Role
from tracker.trade.basis import Basis
from tracker.trade.layout import (
    LAYOUT_SAID,
    MARKED_ROLES,
    NOT_USED,
    Layout,
    MarkedColumn,
    layout_from_plain,
    layout_to_plain,
)
from tracker.trade.offer import Answers, NoteCode, Reading, State

HEADS = ("Qxz", "Zuv", "Pli", "Kof", "Wux")
ROWS = (
    ("Vexholm Papir", "", "", "", ""),
    HEADS,
    ("Fenlight", "SBS", 18, 330, 1240),
    ("Fenlight", "SBS", 20, 360, 1230),
    ("Dusk", "URB", 20, 400, 630),
    ("Zzz notes", "", "", "", ""),
)
LAYOUT = Layout(
    "P",
    "first",
    (
        MarkedColumn(0, "product"),
        MarkedColumn(1, "grade"),
        MarkedColumn(2, "caliper", "pt"),
        MarkedColumn(3, "weight", "g/m2"),
        MarkedColumn(4, "price", "tonne"),
    ),
    first_row=2,
    header_row=1,
    last_row=4,
    heads=tuple(enumerate(HEADS)),
    end_words="Zzz notes",
    currency="EUR",
    marked_on=date(2026, 11, 25),
)


def read(rows, *layouts: Layout, sha256: str = "first") -> Reading:
    cells = {
        (row, column): Cell(row, column, value if isinstance(value, str) else Decimal(value), str(value), "General")
        for row, values in enumerate(rows)
        for column, value in enumerate(values)
        if value != ""
    }
    return read_workbook(Workbook("f.xlsx", sha256, "xlsx", (Grid("P", cells),)), Answers(layouts=layouts))


def test_what_nothing_understands_is_read_as_it_was_marked() -> None:
    assert not any(line.state is State.ACCEPTED for line in read(ROWS).lines)
    lines = read(ROWS, LAYOUT).lines
    assert [(line.offer.grade, line.offer.price, line.offer.currency, line.offer.basis) for line in lines] == [
        ("SBS", Decimal(1240), "EUR", Basis.TONNE),
        ("SBS", Decimal(1230), "EUR", Basis.TONNE),
        ("URB", Decimal(630), "EUR", Basis.TONNE),
    ]
    assert {line.state for line in lines} == {State.ACCEPTED}
    assert lines[0].offer.caliper_um == Decimal("457.2")
    said = {piece.field: piece for piece in lines[0].evidence}
    assert (said["currency"].said_by, said["currency"].words) == (LAYOUT_SAID, "EUR per tonne")
    assert said["layout"].words == "marked on 2026-11-25"


def test_the_next_sheet_fits_though_it_begins_lower_and_is_longer() -> None:
    rows = (("", ""), *ROWS[:4], ("New", "FBB", 16, 250, 1100), *ROWS[4:])
    lines = read(rows, LAYOUT, sha256="second").lines
    assert [line.offer.source.cell for line in lines] == ["E4", "E5", "E6", "E7"]


@pytest.mark.parametrize(
    "rows",
    [
        pytest.param((ROWS[0], ("Qxz", "Zuv", "Pli", "Wux", "Kof"), *ROWS[2:]), id="two columns changed places"),
        pytest.param((ROWS[0], (*HEADS, "Tak"), *ROWS[2:]), id="a column more"),
        pytest.param((ROWS[0], HEADS[:4], *ROWS[2:]), id="a head less"),
        pytest.param(ROWS[:5], id="no end to be found"),
        pytest.param(ROWS[2:], id="no header row"),
    ],
)
def test_a_sheet_that_does_not_fit_for_certain_speaks_for_itself(rows) -> None:
    assert read(rows, LAYOUT, sha256="second") == read(rows, sha256="second")


def test_a_layout_without_a_header_row_serves_its_own_file_only() -> None:
    alone = replace(LAYOUT, header_row=None, heads=())
    assert not alone.serves_others
    assert len(read(ROWS, alone).lines) == 3
    assert read(ROWS, alone, sha256="second") == read(ROWS, sha256="second")


def test_the_sheets_own_words_come_before_what_was_marked() -> None:
    dollars = (("Vexholm Papir. All prices in USD per short ton.", "", "", "", ""), *ROWS[1:])
    reading = read(dollars, LAYOUT)
    assert {line.state for line in reading.lines} == {State.QUESTION}
    assert any("different currencies" in question.text for question in reading.questions)


def test_a_grade_marked_for_the_whole_table_is_said_to_be_marked() -> None:
    columns = tuple(column for column in LAYOUT.columns if column.role not in ("grade", "product"))
    lines = read(ROWS, replace(LAYOUT, columns=columns, grade="CRB")).lines
    assert {line.offer.grade for line in lines} == {"CRB"}
    assert next(piece for piece in lines[0].evidence if piece.field == "grade").said_by == LAYOUT_SAID


def test_the_reader_knows_every_role_and_unit_that_can_be_marked() -> None:
    for marked in MARKED_ROLES:
        assert marked.role == NOT_USED or Role(marked.role)
        for unit, words in marked.units:
            column = MarkedColumn(4, marked.role, unit)
            assert column.words.endswith(words)
            assert read(ROWS, replace(LAYOUT, columns=(column,))) is not None


@given(
    st.lists(st.tuples(st.integers(0, 16_383), st.text(max_size=20)), max_size=6),
    st.one_of(st.none(), st.integers(0, 10**6)),
    st.one_of(st.none(), st.dates()),
)
def test_a_layout_comes_back_as_it_was_kept(heads, row, day) -> None:
    made = replace(LAYOUT, heads=tuple(heads), header_row=row, last_row=row, marked_on=day)
    assert layout_from_plain(layout_to_plain(made)) == made


def test_rows_with_prices_that_the_marks_leave_out_are_told() -> None:
    before = [("Older", "SBS", 16, 300, 1000)]
    after = [("Dawn", "CUK", 18, 310, 1111), ("Noon", "CUK", 20, 330, 1105), ("Page", "", "", "", "")]
    rows = (ROWS[0], *before, *ROWS[1:5], *after)
    own = replace(LAYOUT, header_row=2, first_row=3, last_row=5)
    passed = [(part.rows, part.why) for part in read(rows, own).passed_over]
    assert passed == [("2", "outside the rows marked"), ("7-8", "outside the rows marked")]
    # Words and a figure that stands alone are no offers that anybody would miss.
    assert read((*ROWS, ("", "", "", "", 1)), LAYOUT).passed_over == ()


_PER_MSF = replace(
    LAYOUT, columns=(*LAYOUT.columns[:3], MarkedColumn(3, NOT_USED), MarkedColumn(4, "price", "msf")), currency="USD"
)
_TITLED = [
    pytest.param("All prices per short ton", id="en"),
    pytest.param("Alle Preise je Tonne", id="de"),
    pytest.param("Tous les prix à la tonne", id="fr"),
    pytest.param("Todos los precios por tonelada", id="es"),
    pytest.param("Alla priser per ton", id="sv"),
]


@pytest.mark.parametrize("title", _TITLED)
def test_a_unit_marked_in_this_sheet_holds_over_its_title_with_a_note(title: str) -> None:
    rows = ((title, "", "", "", ""), *ROWS[1:])
    reading = read(rows, _PER_MSF)
    assert {line.offer.basis for line in reading.lines} == {Basis.MSF}
    assert not any("unit" in question.text for question in reading.questions)
    notes = [note.text for note in reading.lines[0].notes]
    assert "“USD per 1,000 ft²” holds, as you marked it, though row 1 names another unit." in " ".join(notes)


@pytest.mark.parametrize("title", _TITLED)
def test_a_unit_marked_in_an_earlier_sheet_is_asked_about_where_this_one_says_another(title: str) -> None:
    reading = read(((title, "", "", "", ""), *ROWS[1:]), _PER_MSF, sha256="second")
    assert {line.state for line in reading.lines} == {State.QUESTION}
    (question,) = [each for each in reading.questions if "different units" in each.text]
    assert "as you marked an earlier sheet" in question.text


def test_a_unit_in_the_price_cell_itself_is_not_overruled_by_a_mark() -> None:
    rows = (*ROWS[:2], ("Fenlight", "SBS", 18, 330, "USD 1240 per tonne"), *ROWS[3:])
    first, *others = read(rows, _PER_MSF).lines
    assert (first.offer.basis, first.state) != (Basis.MSF, State.ACCEPTED)
    assert {line.offer.basis for line in others} == {Basis.MSF}


def test_a_unit_that_was_marked_is_said_without_a_note_where_nothing_names_another() -> None:
    assert not any(note.code is NoteCode.BASIS_UNKNOWN for line in read(ROWS, _PER_MSF).lines for note in line.notes)


def test_a_unit_in_the_columns_own_head_gives_way_to_the_mark_with_a_note() -> None:
    rows = (ROWS[0], (*HEADS[:4], "Wux per tonne"), *ROWS[2:])
    reading = read(rows, replace(_PER_MSF, heads=tuple(enumerate(rows[1]))))
    assert {line.offer.basis for line in reading.lines} == {Basis.MSF}
    assert "row 2 names another unit" in " ".join(note.text for note in reading.lines[0].notes)
