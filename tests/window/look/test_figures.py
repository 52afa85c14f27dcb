from datetime import date
from math import nan

import pytest
from PySide6.QtCore import QLocale

from tracker.window.look import figures
from tracker.window.look.figures import Units


@pytest.fixture(autouse=True)
def _english():
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedStates))
    yield
    QLocale.setDefault(before)


def test_calipers_in_either_unit() -> None:
    assert figures.caliper(457.2, Units.US) == "18 pt"
    assert figures.caliper(457.2, Units.METRIC) == "457 µm"
    assert figures.caliper(469.9, Units.US) == "18.5 pt"
    assert figures.caliper(None, Units.US) == "–"


def test_basis_weight_in_either_unit_and_marked_where_it_is_an_estimate() -> None:
    # 78 lb/1,000 ft² is 380.829 g/m² (0.45359237 kg a pound, 0.3048 m a foot).
    assert figures.weight(380.829, Units.US) == "78.0"
    assert figures.weight(380.829, Units.METRIC, estimated=True) == "381*"
    assert figures.weight(nan, Units.US, estimated=True) == "–"


@pytest.mark.parametrize(
    ("low", "high", "said"),
    [(28, 28, "4 wk"), (35, 42, "5–6 wk"), (0, 0, "stock"), (10, 10, "10 days"), (nan, nan, "–"), (nan, 21, "3 wk")],
)
def test_lead_times(low: float, high: float, said: str) -> None:
    assert figures.lead_time(low, high) == said


def test_orders_are_spoken_of_in_the_users_ton() -> None:
    assert figures.mass(20_000, Units.METRIC) == "20 t"
    assert figures.mass(20 * 907.18474, Units.US) == "20 ST"
    assert figures.mass(453.59237, Units.US) == "1,000 lb"
    assert figures.mass(500, Units.METRIC) == "500 kg"


def test_days_are_never_written_as_numbers_alone() -> None:
    assert figures.date_text(date(2026, 4, 3)) == "3 Apr 2026"
    assert figures.day(-1) == "–"


def test_what_was_typed_comes_back_in_the_same_unit() -> None:
    for units in Units:
        assert figures.caliper_value(figures.caliper_um_of(18, units), units) == pytest.approx(18)


@pytest.mark.parametrize(
    ("ratio", "sign", "words"),
    [
        (1.62, "+62 %", "62 % above"),
        (0.05, "−95 %", "95 % below"),
        (1.004, "0 %", "level with"),
        (nan, "–", "–"),
    ],
)
def test_one_way_of_saying_how_far_off(ratio: float, sign: str, words: str) -> None:
    assert (figures.signed_percent(ratio), figures.beside(ratio)) == (sign, words)


@pytest.mark.parametrize(
    ("low", "high", "minimum", "said"),
    [
        (nan, nan, nan, "any"),
        (nan, nan, 9071.8474, "min. 10 ST"),
        (4535.9237, nan, nan, "from 5 ST"),
        (nan, 4535.9237, nan, "below 5 ST"),
        (4535.9237, 18143.6948, nan, "5–20 ST"),
        (226.796185, 4535.9237, nan, "500 lb–5 ST"),
    ],
)
def test_an_order_size_keeps_the_unit_of_each_bound(low: float, high: float, minimum: float, said: str) -> None:
    assert figures.order_size(low, high, minimum, Units.US) == said
