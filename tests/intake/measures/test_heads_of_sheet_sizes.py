"""'Format ab Lager' heads the sizes that are sold; only a bound of the size itself, 'Max. sheet size', does not."""

import pytest

from tests.intake.sheets import lines


def _size(head):
    rows = [["Grade", "g/m²", head, "Price EUR/t"], ["GC1", 250, "70x100 cm", 1200], ["GD2", 300, "70x100 cm", 900]]
    return {line.offer.sheet_mm for line in lines(rows).values()}


@pytest.mark.parametrize(
    "head",
    [
        "Format ab Lager", "Format (ab 1 t)", "Sheet size from stock", "Sheet size (minimum 5 t)",
        "Format (minimum 5 t)", "Formato (mínimo 5 t)", "Arkformat (från 5 t)",
    ],
)  # fmt: skip
def test_a_word_for_an_order_or_a_stock_bounds_no_size(head):
    assert _size(head) == {(700, 1000)}


@pytest.mark.parametrize(
    "head",
    [
        "Max. sheet size",
        "Sheet size (maximum)",
        "Format max.",
        "Format maximal",
        "Formato máximo",
        "Maximalt arkformat",
    ],
)
def test_a_largest_size_is_no_size_of_what_is_sold(head):
    assert _size(head) == {None}


def test_nor_does_a_bound_of_the_next_figure():
    rows = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900], []]
    found = lines([*rows, ["Sheets 70 x 100 cm max. 1,500 per pallet"]])
    assert {line.offer.sheet_mm for line in found.values()} == {(700, 1000)}
