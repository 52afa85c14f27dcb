"""What stands in a hidden row or column is read, with a note where it was used."""

import pytest

from tests.intake.sheets import lines

_ROWS = [
    ["FOB mill, $ per short ton"],
    ["Grade", "Caliper (pt)", "Basis weight (lb/MSF)", "Price", "Our ref."],
    ["SBS C1S", 16, 68, 1182, "x"],
    ["CUK C1S", 18, 74, 1017, "y"],
]


def hidden(rows, **more):
    notes = [[note.text for note in line.notes if note.code.value == "hidden"] for line in lines(rows, **more).values()]
    assert len(notes) == 2
    return notes


@pytest.mark.parametrize(("column", "letter"), list(enumerate("ABC")))
def test_a_value_of_a_hidden_column_is_told(column, letter):
    for notes in hidden(_ROWS, hidden_columns=frozenset({column})):
        assert len(notes) == 1
        assert f"Column {letter} " in notes[0]


def test_so_is_what_a_hidden_title_says_of_all():
    assert [len(notes) for notes in hidden(_ROWS, hidden_rows=frozenset({0}))] == [1, 1]


def test_a_hidden_row_of_a_table_on_its_side_is_told_beside_each_board():
    rows = [
        ["FOB mill"],
        ["Grade", "SBS", "CUK"],
        ["Caliper (pt)", 16, 18],
        ["lb/MSF", 68, 74],
        ["Price $/ST", 1182, 1017],
    ]
    assert all("Row 4 " in note for (note,) in hidden(rows, hidden_rows=frozenset({3})))


def test_a_hidden_price_is_told_once():
    assert [len(notes) for notes in hidden(_ROWS, hidden_columns=frozenset({2, 3}))] == [1, 1]
    assert [len(notes) for notes in hidden(_ROWS, hidden_rows=frozenset({2}))] == [1, 0]


def test_what_was_not_used_is_not_told():
    assert hidden(_ROWS, hidden_columns=frozenset({4})) == [[], []]
    assert hidden(_ROWS) == [[], []]
