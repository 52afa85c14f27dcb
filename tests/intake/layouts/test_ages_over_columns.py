"""Tables on their side over whose columns stands how old their prices are: each text is of its own columns."""

import pytest

from tests.intake.sheets import lines, read


def _prices(*ages, labels=("Board", "g/m²", "Price EUR/t"), figures=(1200, 1150), boards=("GC1", "GC1")):
    first, weights, price = labels
    rows = [[None, *ages], [first, *boards], [weights, *([300] * len(boards))], [price, *figures]]
    return [(line.offer.source.cell, str(line.state)) for line in lines(rows).values()]


@pytest.mark.parametrize(
    ("now", "then"),
    [("This year", "Last year"), ("Dieses Jahr", "Vorjahr"), ("Cette année", "Année précédente"),
     ("Este año", "Año anterior"), ("I år", "Föregående år"), ("Valid from 1 July 2026", "Superseded")],
)  # fmt: skip
def test_old_columns_hide_no_others(now, then):
    assert _prices(now, then) == [("B4", "accepted")]
    assert _prices(then, now) == [("C4", "accepted")]


def test_one_text_may_stand_over_several_columns():
    figures, boards = (1200, 900, 1150, 870), ("GC1", "GD2", "GC1", "GD2")
    found = _prices("This year", None, "Last year", None, figures=figures, boards=boards)
    assert found == [("B4", "accepted"), ("C4", "accepted")]


def test_an_empty_column_may_part_them():
    rows = [[None, "This year", None, "Last year"], ["Board", "GC1", None, "GC1"], ["g/m²", 300, None, 300],
            ["Price EUR/t", 1200, None, 1150]]  # fmt: skip
    assert list(lines(rows)) == ["B4"]


def test_a_mark_over_all_hides_all():
    reading = read([["Superseded"], ["Board", "GC1", "GD2"], ["g/m²", 300, 350], ["Price EUR/t", 1200, 900]])
    assert not reading.lines
    assert "old" in reading.passed_over[0].why
