import numpy as np
import pytest

from tests.market.making import LIKE, bands_of, offers_of
from tracker.market.bands import Level, Ratio, carry_forward, expected_bands, place, vendor_weights

RATIOS = {"SBS": Ratio(0.85, 1.15, "assumed"), "FBB": Ratio(0.65, 1.0, "common practice")}


def _bands(offers, *levels, day=100):
    return expected_bands(offers, levels, RATIOS, "SBS", day)


def test_the_reference_level_and_the_ratio_make_a_band():
    bands = _bands(offers_of([]), Level("SBS", 1000.0, 50, "talks of spring"))
    assert bands.low.tolist() == [850.0, 650.0]
    assert bands.high.tolist() == pytest.approx([1150.0, 1000.0])
    assert bands.sources[1] == "level of SBS talks of spring, ratio 0.65–1.00 (common practice)"


def test_a_grades_own_level_replaces_its_ratio():
    own = Level("FBB", 800.0, 60, "an index")
    bands = _bands(offers_of([]), Level("SBS", 1000.0, 50, "x"), own)
    assert (bands.low[1], bands.high[1]) == (pytest.approx(680.0), pytest.approx(920.0))
    assert bands.sources[1] == "level of FBB an index, ± 15 %"


def test_a_spread_that_is_said_is_used():
    bands = _bands(offers_of([]), Level("FBB", 800.0, 60, "an index", spread=0.05))
    assert (bands.low[1], bands.high[1]) == (pytest.approx(760.0), pytest.approx(840.0))
    assert np.isnan(bands.low[0])


def test_the_latest_level_of_the_day_or_before_stands():
    levels = [Level("SBS", 900.0, 10, "old"), Level("SBS", 1000.0, 90, "new"), Level("SBS", 2000.0, 101, "to come")]
    assert _bands(offers_of([]), *levels).low[0] == 850.0


def test_three_offers_of_the_reference_grade_make_a_level_and_say_so():
    bands = _bands(offers_of([1000.0, 1100.0, 1200.0]))
    assert bands.low[0] == pytest.approx(0.85 * 1100)
    assert bands.sources[0].startswith("no level is set, so the median of 3 current offers of SBS, ratio 0.85")


@pytest.mark.parametrize("shown", [[True, True, False]])
def test_two_offers_make_none(shown):
    bands = _bands(offers_of([1000.0, 1100.0, 1200.0], shown=shown))
    assert np.isnan(bands.low).all()
    assert bands.sources == ("", "")


def test_one_vendors_many_offers_do_not_make_the_level():
    many = offers_of([2000.0] * 5 + [1000.0, 1010.0, 1020.0, 1030.0], vendor=[0] * 5 + [1, 2, 3, 4])
    bands = _bands(many)
    assert bands.high[0] / 1.15 < 1100
    assert "9 current offers of SBS, a vendor's many weighing less each (four as two), ratio" in bands.sources[0]


def test_place():
    offers = offers_of([800.0, 850.0, 1000.0, 1151.0, np.nan, 900.0], grade=[0, 0, 0, 0, 0, 1])
    places = place(offers.per_tonne, offers.grade, bands_of(850.0, 1150.0))
    assert places.tolist() == [-1, 0, 0, 1, -9, -9]


def test_an_unknown_grade_has_no_band():
    assert place(np.array([900.0]), np.array([-1], np.int32), bands_of(1, 2)).tolist() == [-9]


def test_a_vendor_counts_for_the_root_of_its_offers():
    weights = vendor_weights(np.array([4, 4, 4, 4, 7, -1, -1], np.int32))
    assert weights.tolist() == [0.5, 0.5, 0.5, 0.5, 1.0, 1.0, 1.0]


def test_a_level_is_carried_forward_by_an_index():
    """Worked: a producer price index at 147.8 in June 2016 and 147.6 in September: 44.85 becomes 44.789."""
    index = [(1, 147.8), (92, 147.6)]
    carried = carry_forward(Level("SBS", 44.85, 5, "contract"), index, "a price index", 100)
    assert carried.per_tonne == pytest.approx(44.789, abs=5e-4)
    assert carried.from_day == 100
    assert carried.source == "contract, carried forward to 2 Apr 1 by a price index (-0.1 %)"


def test_an_index_that_starts_too_late_is_refused():
    with pytest.raises(ValueError, match="no value for the day of the level"):
        carry_forward(Level("SBS", 1000.0, 5, "contract"), [(6, 100.0)], "a price index", 100)


def test_clean_offers_serve_without_any_level():
    assert np.isfinite(_bands(offers_of(LIKE)).low).all()
