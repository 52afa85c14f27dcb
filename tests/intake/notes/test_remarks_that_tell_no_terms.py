"""'Discontinued', 'less 2 %' or a size of sheets beside one board, over an empty column, is said of that board."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (("GC1", 250, 1200), ("GD2", 300, 900), ("GZ", 280, 1300))


def _read(*beside):
    rows = ([*board, None, said] for board, said in zip(_BOARDS, beside, strict=True))
    return [*lines([["Grade", "Weight g/m²", "Price EUR/t"], *rows]).values()]


@pytest.mark.parametrize(
    "remark", ["Discontinued", "Sold out", "ausverkauft", "eingestellt", "épuisé", "agotado", "slutsåld"]
)
def test_a_board_that_is_offered_no_more_is_asked_about(remark):
    assert [str(line.state) for line in _read(remark, None, None)] == ["question", "accepted", "accepted"]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("less 2%", "less 3%"),
        ("-2%", "-3%"),
        ("abzgl. 2 %", "abzgl. 3 %"),
        ("moins 2 %", "moins 3 %"),
        ("menos 2 %", "menos 3 %"),
        ("avgår 2 %", "avgår 3 %"),
    ],
)
def test_so_are_the_boards_whose_price_is_reduced_and_no_others(first, second):
    assert [str(line.state) for line in _read(first, None, second)] == ["question", "accepted", "question"]


def test_a_size_of_sheets_is_that_boards():
    sizes = [line.offer.sheet_mm for line in _read("70 x 100 cm", None, None)]
    assert sizes == [(700, 1000), None, None]


def test_what_is_told_of_all_prices_is_no_remark_of_one():
    states = {str(line.state) for line in _read("All prices less 2%", None, None)}
    assert states == {"question"}
