"""What the user sets to judge by: levels carried by an index, ratios of one's own, the sensitivity."""

from datetime import date
from decimal import Decimal
from pathlib import Path

import numpy as np
import pytest

from tests.desk.filing import file
from tests.desk.test_quotes import PLAIN, comparison, explained, level, market
from tests.store.making import line
from tracker.desk.comparison import Per
from tracker.desk.edits import undo
from tracker.desk.levels import levels, set_level
from tracker.desk.offers_json import offer_objects
from tracker.desk.opening import Desk
from tracker.desk.price_index import carry_forward, read_index
from tracker.desk.ratios import ratios, set_ratio
from tracker.desk.sensitivity import Sensitivity, sensitivity, set_sensitivity
from tracker.desk.trouble import Trouble
from tracker.trade.grades import estimate_grammage
from tracker.trade.level import LevelFigure
from tracker.trade.offer import GrammageFrom

DAY = date(2026, 11, 25)
INDEX = ((date(2026, 9, 1), Decimal(100)), (date(2026, 10, 1), Decimal(104)), (date(2026, 12, 1), Decimal(200)))


def band_of(desk: Desk, code: str, **chosen: object) -> tuple[float, float, str]:
    made = comparison(desk, **chosen)
    assert made.judged is not None
    at = made.snapshot.grades.index(code)
    bands = made.judged.bands
    return float(bands.low[at]), float(bands.high[at]), bands.sources[at]


def sbs_level(desk: Desk, amount: int = 1300, on: date = date(2026, 9, 15)) -> None:
    set_level(desk, "SBS", LevelFigure(Decimal(amount), "USD"), on, "spring talks")


def test_an_index_carries_the_level_to_the_day_and_says_so(desk: Desk) -> None:
    market(desk, 1300)
    sbs_level(desk)
    carry_forward(desk, "sbs", INDEX, "a price index")
    low, high, source = band_of(desk, "SBS")
    assert (low, high) == (pytest.approx(1300 * 1.04 * 0.85), pytest.approx(1300 * 1.04 * 1.15))
    assert source == (
        "level of SBS USD 1,300 per tonne of 15 Sep 2026 (spring talks), carried forward to 1 Oct 2026 by "
        "a price index (+4.0 %), ratio 0.85–1.15 (assumed)"
    )


def test_before_its_next_value_an_index_changes_nothing(desk: Desk) -> None:
    market(desk, 1300)
    sbs_level(desk)
    carry_forward(desk, "SBS", INDEX, "a price index")
    assert band_of(desk, "SBS", as_of=date(2026, 11, 2))[0] == pytest.approx(1300 * 1.04 * 0.85)


def test_a_newer_level_stands_before_an_older_one_that_is_carried(desk: Desk) -> None:
    market(desk, 1300)
    sbs_level(desk)
    carry_forward(desk, "SBS", INDEX, "a price index")
    sbs_level(desk, 1000, date(2026, 11, 1))
    assert band_of(desk, "SBS")[0] == pytest.approx(850)


def test_carrying_is_undone(desk: Desk) -> None:
    sbs_level(desk)
    edit = carry_forward(desk, "SBS", INDEX, "a price index")
    assert levels(desk)[0].index == INDEX
    undo(desk, edit)
    assert levels(desk)[0].index == ()


def test_an_index_needs_a_level_and_must_reach_back_to_it(desk: Desk) -> None:
    with pytest.raises(Trouble, match="No level of SBS"):
        carry_forward(desk, "SBS", INDEX, "x")
    sbs_level(desk, on=date(2026, 8, 1))
    with pytest.raises(Trouble, match="starts on 2026-09-01, after the level's day 2026-08-01"):
        carry_forward(desk, "SBS", INDEX, "x")


def test_an_index_is_read_from_dates_or_months(tmp_path: Path) -> None:
    path = tmp_path / "index.csv"
    path.write_text("month,value\n2026-10,104.0\n2026-09-01,100\n\n", encoding="utf-8")
    assert read_index(path) == ((date(2026, 9, 1), Decimal(100)), (date(2026, 10, 1), Decimal("104.0")))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("date,value\n01/10/2026,100\n", "row 2: “01/10/2026” is no date"),
        ("2026-10-01,100\n2026-11-01,\n", "row 2: “” is no value above 0"),
        ("2026-10-01,100\n2026-11-01,-4\n", "no value above 0"),
        ("2026-10-01,100\n2026-10-01,101\n", "two values for 2026-10-01"),
        ("2026-10-01,100\n", "takes two"),
        ("2026-10-01,1\0,\n2026-11-01,NaN\n", "value"),
    ],
)
def test_what_is_no_index_is_refused_with_its_row(tmp_path: Path, text: str, words: str) -> None:
    path = tmp_path / "index.csv"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(Trouble, match=words):
        read_index(path)


def test_a_file_that_is_not_there_is_a_trouble(tmp_path: Path) -> None:
    with pytest.raises(Trouble, match="can't be read"):
        read_index(tmp_path / "none.csv")


def test_a_ratio_of_one_s_own_stands_from_its_day(desk: Desk) -> None:
    file(desk, line(price=Decimal(900), **{**PLAIN, "grade": "FBB"}))
    sbs_level(desk, 1000)
    set_ratio(desk, "fbb", Decimal("0.70"), Decimal("0.80"), date(2026, 10, 1), "our last tender")
    low, high, source = band_of(desk, "FBB")
    assert (low, high) == (pytest.approx(700), pytest.approx(800))
    assert source.endswith("ratio 0.70–0.80 (our last tender, 1 Oct 2026)")
    assert band_of(desk, "FBB", as_of=date(2026, 9, 20))[1] == pytest.approx(1000)


def test_a_ratio_is_listed_and_undone(desk: Desk) -> None:
    edit = set_ratio(desk, "FBB", Decimal("0.70"), Decimal("0.80"), DAY, "us")
    assert [(each.grade, each.low) for each in ratios(desk)] == [("FBB", Decimal("0.70"))]
    undo(desk, edit)
    assert ratios(desk) == ()


@pytest.mark.parametrize(
    ("grade", "low", "high", "source", "words"),
    [
        ("XYZ", "0.7", "0.8", "us", "not a grade"),
        ("FBB", "0.9", "0.8", "us", "lower end first"),
        ("FBB", "65", "80", "us", "such as 0.65 to 0.80"),
        ("FBB", "0.7", "0.8", " ", "where the ratio comes from"),
    ],
)
def test_what_can_be_no_ratio_is_refused(desk: Desk, grade: str, low: str, high: str, source: str, words: str) -> None:
    with pytest.raises(Trouble, match=words):
        set_ratio(desk, grade, Decimal(low), Decimal(high), DAY, source)


def test_the_sensitivity_is_kept_and_changes_what_is_called_out_of_line(desk: Desk) -> None:
    level(desk)
    market(desk, 1270, 1285, 1300, 1310, 1322, 1290, 1305, 1300, 1290, 1310, 1300, 1460)
    assert sensitivity(desk) is Sensitivity.CAREFUL
    called = {}
    for chosen in Sensitivity:
        set_sensitivity(desk, chosen)
        called[chosen] = int(comparison(desk).out_of_line.sum())
    assert sensitivity(desk) is Sensitivity.CURIOUS
    assert called[Sensitivity.SURE] == 0
    assert called[Sensitivity.CURIOUS] == 1
    assert int(comparison(desk, sensitivity=Sensitivity.SURE).out_of_line.sum()) == 0


def test_an_undone_sensitivity_is_the_one_before(desk: Desk) -> None:
    undo(desk, set_sensitivity(desk, Sensitivity.SURE))
    assert sensitivity(desk) is Sensitivity.CAREFUL


def test_a_figure_from_an_estimated_weight_has_a_range_everywhere(desk: Desk) -> None:
    usual = estimate_grammage("SBS", Decimal("457.2"))
    told = explained(
        desk,
        line(grammage_gsm=usual.grammage_gsm, grammage_from=GrammageFrom.ESTIMATED, charges=()),
        per=Per.MSF,
    )
    made = comparison(desk, per=Per.MSF)
    low, high = made.range_of(0) or (np.nan, np.nan)
    assert low == pytest.approx(float(usual.low / usual.grammage_gsm) * made.price[0])
    assert high == pytest.approx(float(usual.high / usual.grammage_gsm) * made.price[0])
    assert f"({low:,.2f} to {high:,.2f}, as the weight may be)" in told.steps[-1].text
    assert any(f"USD {low:,.2f} to {high:,.2f} per 1,000 ft²" in reason for reason in told.reasons)
    (offer,) = offer_objects(made, [0])
    assert offer["per_msf_range"] == pytest.approx([low, high])
    assert offer["per_tonne_range"] is None
    assert comparison(desk).range_of(0) is None
