"""Pallets, presses and samples have sizes too: no sheet that is sold measures what they do."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "Caliper (pt)", "Price USD/short ton"]


def _sizes(*rows, code=None):
    """The sheet sizes of two boards, in mm; `code`: the head of a column with A and B."""
    head = _HEAD if code is None else [*_HEAD[:2], code, _HEAD[2]]
    boards = [["SBS", 18, 1200], ["CUK", 20, 900]]
    if code is not None:
        boards = [[*board[:2], sign, board[2]] for board, sign in zip(boards, "AB", strict=True)]
    found = lines([head, *boards, [], *rows]).values()
    return [None if (size := line.offer.sheet_mm) is None else tuple(map(round, size)) for line in found]


@pytest.mark.parametrize(
    "note",
    [
        "Pallets 28 x 40 in", "Packed on pallets 40 x 48 in", "Sample sheets 28 x 40 in free of charge",
        "Press size 28 x 40 in", "Maximum press size: 28 x 40 in", "Paletten 80 x 120 cm", "Holzkisten 80 x 120 cm",
        "Musterbogen 50 x 70 cm gratis", "Druckformat 72 x 102 cm", "Palettes 80 x 120 cm",
        "Format presse 72 x 102 cm", "Palés 80 x 120 cm", "Hojas de muestra 50 x 70 cm gratis", "Pallar 80 x 120 cm",
        "Provark 50 x 70 cm gratis", "Tryckformat 72 x 102 cm",
    ],
)  # fmt: skip
def test_what_a_thing_measures_is_no_sheet_s_size(note):
    assert _sizes([note]) == [None, None]


@pytest.mark.parametrize(
    "note",
    [
        "Sheets 28 x 40 in", "Sheet size 28 x 40 in, on pallets", "Sheets 28 x 40 in on skids",
        "Pallets of 1,000 sheets 28 x 40 in", "Packed on pallets, sheets 28 x 40 in",
    ],
)  # fmt: skip
def test_sheets_on_pallets_have_their_own(note):
    assert _sizes([note]) == [(711, 1016)] * 2


@pytest.mark.parametrize(
    ("head", "sizes"),
    [
        ("Pallet", ("28 x 40 in", "25 x 38 in")), ("Pack", ("28 x 40 in", "25 x 38 in")),
        ("Palette", ("80 x 120 cm", "100 x 120 cm")), ("Kiste", ("80 x 120 cm", "100 x 120 cm")),
        ("Palé", ("80 x 120 cm", "100 x 120 cm")), ("Pall", ("80 x 120 cm", "100 x 120 cm")),
    ],
)  # fmt: skip
def test_codes_of_pallets_stand_for_no_sheets(head, sizes):
    assert _sizes([f"{head} A = {sizes[0]}, {head} B = {sizes[1]}"], code=head) == [None, None]


def test_a_table_of_codes_of_pallets_tells_of_none():
    table = [["Pallet code", "Dimensions"], ["A", "28 x 40 in"], ["B", "25 x 38 in"]]
    assert _sizes(*table, code="Pallet code") == [None, None]
    assert _sizes(["Code", "Dimensions"], *table[1:], code="Code") == [(711, 1016), (635, 965)]


def test_samples_with_letters_stand_for_no_sheets():
    assert _sizes(["Muster A = 21 x 30 cm, Muster B = 30 x 42 cm"], code="Code") == [None, None]


@pytest.mark.parametrize("head", ["Size", "Sheet", "Format"])
def test_codes_of_sizes_do(head):
    assert _sizes([f"{head} A = 28 x 40 in, {head} B = 25 x 38 in"], code=head) == [(711, 1016), (635, 965)]
