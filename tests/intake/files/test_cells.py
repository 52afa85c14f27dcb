import pickle
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tracker.intake.files import cells as cells_module
from tracker.intake.files.cell_values import clean, decimal_of, shown, visible
from tracker.intake.files.cells import GENERAL, RowBuilder, SheetCells, Style, TooManyCells
from tracker.intake.files.number_formats import Shows, built_in, shows
from tracker.intake.files.places import column_number, merged_range, place, spread
from tracker.intake.grid import Grid, address

places = st.tuples(st.integers(0, 40), st.integers(0, 30))


def built(contents: dict[tuple[int, int], str | float | bool]) -> SheetCells:
    builder = RowBuilder()
    for (row, column), value in contents.items():
        builder.add(row, [(column, GENERAL, value)])
    return SheetCells(builder.rows)


@given(st.dictionaries(places, st.booleans() | st.floats(-1e9, 1e9) | st.text("abc", min_size=1, max_size=3)))
def test_compact_cells_behave_like_a_dict(contents):
    cells = built(contents)
    assert sorted(contents) == list(cells) == list(cells.keys())
    assert len(cells) == len(contents)
    assert {key: cell.text for key, cell in cells.items()} == {
        key: visible(value) if isinstance(value, str | bool) else visible(decimal_of(value))
        for key, value in contents.items()
    }
    assert [cell.row for cell in cells.values()] == [row for row, _ in cells]
    for key in contents:
        assert key in cells
        assert cells[key] == cells.get(key)
    grid, plain = Grid("a", cells), Grid("a", dict(cells))
    assert (grid.height, grid.width) == (plain.height, plain.width)
    assert dict(pickle.loads(pickle.dumps(cells))) == dict(cells)


@pytest.mark.parametrize("absent", [(0, 1), (5, 0), "A1", (0, 0, 0)])
def test_absent_places(absent):
    cells = built({(0, 0): "a", (0, 2): "b"})
    assert absent not in cells
    assert cells.get((0, 1)) is None
    with pytest.raises(KeyError):
        cells[5, 0]


def test_true_and_one_are_told_apart():
    assert shown(1.0, Shows.NUMBER, False) == (Decimal(1), "1")
    assert shown(True, Shows.NUMBER, False) == (True, "TRUE")


def test_too_many_cells_are_refused(monkeypatch):
    monkeypatch.setattr(cells_module, "MOST_CELLS", 3)
    builder = RowBuilder()
    builder.add(0, [(0, GENERAL, 1.0), (1, GENERAL, 2.0)])
    with pytest.raises(TooManyCells):
        builder.add(1, [(0, GENERAL, 1.0), (1, GENERAL, 2.0)])


@given(st.decimals(-(10**9), 10**9, places=4))
def test_a_price_survives_the_binary_float_it_is_stored_in(price):
    assert decimal_of(float(price)) == price


@pytest.mark.parametrize(
    ("code", "kind"),
    [
        ("General", Shows.NUMBER),
        ("Standard", Shows.NUMBER),
        ("0.00", Shows.NUMBER),
        ("#,##0.00 [$kr-41D]", Shows.NUMBER),
        ("[$-409]#,##0", Shows.NUMBER),
        ('0.0" days"', Shows.NUMBER),
        ("0\\ \\d\\a\\y\\s", Shows.NUMBER),
        ('_("$"* #,##0.00_);_("$"* (#,##0.00)', Shows.NUMBER),
        ("[Red]0;[Blue]-0", Shows.NUMBER),
        ("@", Shows.NUMBER),
        ("0%", Shows.NUMBER),
        ("0.00E+00", Shows.NUMBER),
        ("# ?/?", Shows.NUMBER),
        ("dd.mm.yyyy", Shows.DATE),
        ("[$-407]mmmm yyyy", Shows.DATE),
        ("yyyy\\-mm\\-dd;@", Shows.DATE),
        ('d" de "mmmm', Shows.DATE),
        ("m/d/yy h:mm", Shows.DATE_AND_TIME),
        ("h:mm AM/PM", Shows.TIME),
        ("mm:ss.0", Shows.TIME),
        ("[h]:mm:ss", Shows.DURATION),
        ("[mm]:ss", Shows.DURATION),
    ],
)
def test_what_a_format_shows(code, kind):
    assert shows(code) is kind
    assert Style(code).shows is kind


def test_built_in_formats():
    assert built_in(14) == "mm-dd-yy"
    assert shows(built_in(30)) is Shows.DATE
    assert built_in(163) == "General"


@given(st.integers(0, 1_048_575), st.integers(0, 16_383))
def test_addresses_go_both_ways(row, column):
    assert place(address(row, column)) == (row, column)


def test_places_off_the_sheet_are_none():
    assert column_number("XFD") == 16_383
    for wrong in ("XFE1", "A0", "A1048577", "1A", "", "A1:B2", "AAAA1"):
        assert place(wrong) is None
    assert merged_range("B2") is None
    assert merged_range("B2:") is None


@given(st.lists(st.tuples(st.integers(0, 30), st.integers(0, 30))), st.integers(0, 25))
def test_runs_are_spread_as_one_by_one(runs, count):
    assert spread(runs, count) == {n for first, last in runs for n in range(first, last + 1) if n < count}


@given(st.text())
def test_clean_text_can_be_stored_and_shown(text):
    cleaned = clean(text)
    assert not any(ord(character) < 32 and character not in "\t\n" for character in cleaned)
    assert clean(cleaned) == cleaned
    cleaned.encode("utf-8")
