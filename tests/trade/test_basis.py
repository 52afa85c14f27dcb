from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.quantities_for_tests import measures, price_on, prices
from tracker.trade.basis import (
    BY_AREA,
    BY_SHEET,
    BY_WEIGHT,
    Basis,
    BoardMeasure,
    area_of,
    mass_of,
    per_msf,
    per_tonne,
    sheet_area,
)

NOTHING_KNOWN = BoardMeasure()


def test_every_basis_is_of_one_kind():
    assert set(Basis) == BY_WEIGHT | BY_AREA | BY_SHEET
    assert len(BY_WEIGHT) + len(BY_AREA) + len(BY_SHEET) == len(Basis)


@given(prices, st.sampled_from(Basis), measures)
def test_a_price_comes_back_from_per_tonne_exactly(price, basis, board):
    assert price_on(per_tonne(price, basis, board), basis, board) == Fraction(price)


@given(prices, st.sampled_from(Basis), st.sampled_from(Basis), measures)
def test_one_price_on_two_bases_is_one_price(price, start, end, board):
    moved = price_on(per_tonne(price, start, board), end, board)
    assert per_tonne(moved, end, board) == per_tonne(price, start, board)
    assert per_msf(moved, end, board) == per_msf(price, start, board)


@given(prices, st.sampled_from(Basis), measures)
def test_per_msf_over_per_tonne_is_the_weight_of_an_msf(price, basis, board):
    tonnes_in_an_msf = mass_of(Basis.MSF, board) / 1000
    assert per_msf(price, basis, board) == per_tonne(price, basis, board) * tonnes_in_an_msf


@given(st.sampled_from(Basis), measures)
def test_mass_over_area_is_the_grammage(basis, board):
    assert mass_of(basis, board) * 1000 / area_of(basis, board) == Fraction(board.grammage_gsm)


@given(prices, st.sampled_from(sorted(BY_WEIGHT)))
def test_without_a_grammage_a_price_by_weight_has_no_area(price, basis):
    assert per_msf(price, basis, NOTHING_KNOWN) is None
    assert per_tonne(price, basis, NOTHING_KNOWN) is not None


@given(prices, st.sampled_from(sorted(BY_AREA)))
def test_without_a_grammage_a_price_by_area_has_no_weight(price, basis):
    assert per_tonne(price, basis, NOTHING_KNOWN) is None
    assert per_msf(price, basis, NOTHING_KNOWN) is not None


@given(prices, st.sampled_from(sorted(BY_SHEET)))
def test_a_price_by_the_sheet_needs_the_sheet(price, basis):
    assert per_msf(price, basis, BoardMeasure(Fraction(300))) is None
    assert per_tonne(price, basis, BoardMeasure(Fraction(300))) is None


@pytest.mark.parametrize("basis", [Basis.MSF, Basis.SHEET])
def test_a_grammage_of_nothing_counts_as_unknown(basis):
    assert per_tonne(50, basis, BoardMeasure(0, (700, 1000))) is None


def test_a_sheet_can_be_given_either_way_round():
    assert sheet_area((700, 1000)) == sheet_area((1000, 700)) == Fraction(7, 10)
