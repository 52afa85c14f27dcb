"""Every grade's band is told, whether or not anybody offers the grade."""

import numpy as np
import pytest

from tests.desk.test_quotes import comparison, market
from tests.desk.test_yardsticks import sbs_level
from tracker.desk.grade_bands import grade_bands
from tracker.desk.opening import Desk
from tracker.trade.bands import ratio
from tracker.trade.grades import grades


def test_a_grade_that_nobody_offers_has_the_band_of_its_ratio(desk: Desk) -> None:
    market(desk, 1300)
    sbs_level(desk)
    bands = grade_bands(comparison(desk))
    assert list(bands) == list(grades())
    assert (bands["SBS"].offered, bands["URB"].offered) == (True, False)
    low, high = (float(end) for end in (ratio("URB").low, ratio("URB").high))
    assert (bands["URB"].low, bands["URB"].high) == (pytest.approx(1300 * low), pytest.approx(1300 * high))
    assert bands["URB"].source.startswith("level of SBS USD 1,300 per tonne of 15 Sep 2026 (spring talks), ratio")


def test_an_offered_grade_has_the_very_band_its_prices_are_judged_by(desk: Desk) -> None:
    market(desk, 1300)
    sbs_level(desk)
    made = comparison(desk)
    assert made.judged is not None
    for code in made.snapshot.grades:
        at = made.snapshot.grades.index(code)
        held = made.judged.bands
        band = grade_bands(made)[code]
        assert (band.low, band.high, band.source) == (held.low[at], held.high[at], held.sources[at])


def test_without_a_level_or_offers_of_sbs_no_band_is_made_up(desk: Desk) -> None:
    bands = grade_bands(comparison(desk))
    assert all(np.isnan(band.low) and not band.offered for band in bands.values())
