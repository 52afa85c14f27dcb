"""The band over time, the choices that nothing beats, prices at equal caliper."""

from datetime import date
from decimal import Decimal

import numpy as np
import pytest

from tests.desk.filing import file
from tests.desk.test_quotes import DAY, PLAIN, comparison, explained, level, market
from tests.store.making import line
from tracker.desk.band_history import band_history
from tracker.desk.choices import best_choices
from tracker.desk.comparison import Per
from tracker.desk.levels import set_level
from tracker.desk.offers_json import offer_objects
from tracker.desk.opening import Desk
from tracker.desk.price_index import carry_forward
from tracker.desk.ratios import set_ratio
from tracker.trade.basis import Basis
from tracker.trade.level import LevelFigure


def test_the_band_moves_on_the_days_on_which_something_was_set(desk: Desk) -> None:
    market(desk, 1300)
    set_level(desk, "SBS", LevelFigure(Decimal(1000), "USD"), date(2026, 5, 1), "spring")
    set_level(desk, "SBS", LevelFigure(Decimal(1200), "USD"), date(2026, 9, 1), "autumn")
    carry_forward(desk, "SBS", ((date(2026, 9, 1), Decimal(100)), (date(2026, 10, 1), Decimal(110))), "an index")
    band = band_history(comparison(desk), "SBS")
    days = [date.fromordinal(int(day)) for day in band.days]
    assert days == [date(2026, 5, 1), date(2026, 9, 1), date(2026, 10, 1), date(2026, 11, 3), DAY]
    assert band.low == pytest.approx(np.array([850, 1020, 1122, 1122, 1122]))
    assert [date.fromordinal(day) for day in band.set_on] == [date(2026, 5, 1), date(2026, 9, 1)]


def test_a_grade_s_band_follows_its_own_ratio_from_its_day(desk: Desk) -> None:
    file(desk, line(price=Decimal(900), **{**PLAIN, "grade": "FBB"}))
    level(desk, 1000)
    set_ratio(desk, "FBB", Decimal("0.7"), Decimal("0.8"), date(2026, 11, 10), "us")
    band = band_history(comparison(desk), "FBB")
    assert band.high == pytest.approx(np.array([1000, 1000, 800, 800]))


def test_without_a_level_there_is_no_band_to_draw(desk: Desk) -> None:
    market(desk, 1300, 1310, 1320)
    assert not np.isfinite(band_history(comparison(desk), "SBS").low).any()
    assert not len(band_history(comparison(desk), "XYZ").days)


def test_what_is_out_of_line_or_lapsed_is_no_best_choice(desk: Desk) -> None:
    level(desk)
    market(desk, 1270, 1285, 1300, 1310, 1322, 1290, 1305, 700)
    made = comparison(desk, current_only=False)
    assert made.out_of_line[7]
    best = best_choices(made, np.arange(8, dtype=np.int32))
    assert np.flatnonzero(best).tolist() == [0]


def test_at_equal_caliper_two_boards_of_one_density_and_price_per_tonne_cost_the_same(desk: Desk) -> None:
    for points, grammage in ((14, "296"), (20, "422.857142857")):
        board = {"caliper_um": Decimal("25.4") * points, "grammage_gsm": Decimal(grammage), "product": f"b{points}"}
        file(desk, line(price=Decimal(1300), basis=Basis.TONNE, **{**PLAIN, **board}), content=str(points).encode())
    made = comparison(desk, per=Per.MSF, equal_caliper_um=457.2)
    assert made.price[0] == pytest.approx(made.price[1])
    assert made.price[0] == pytest.approx(made.per_msf[0] * 18 / 14)
    (first, _) = offer_objects(made, [0, 1])
    assert first["per_msf_at_equal_caliper"] == pytest.approx(made.price[0])


def test_the_ladder_ends_at_the_equal_caliper(desk: Desk) -> None:
    told = explained(desk, line(charges=()), per=Per.MSF, equal_caliper_um=508.0)
    assert told.steps[-1].label == "per 1,000 ft² at 20 pt"
    assert "× 20 pt ÷ 18 pt = " in told.steps[-1].text
    assert float(told.steps[-1].text.rpartition(" = ")[2]) == pytest.approx(
        comparison(desk, per=Per.MSF, equal_caliper_um=508.0).price[0], abs=0.005
    )
