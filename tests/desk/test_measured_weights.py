"""Prices at the weight that samples measured, the difference in money, and verdicts beside prices."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from tests.desk.filing import file
from tests.store.making import FULL, VENDOR, line
from tracker.desk import readings, samples, verdicts
from tracker.desk.comparison import ChosenFooting, Comparison, Per
from tracker.desk.explanation import explain
from tracker.desk.measured_weights import measured_weights
from tracker.desk.offers_json import offer_objects
from tracker.desk.opening import Desk
from tracker.desk.quotes import compare, load_snapshot
from tracker.desk.sample_life import EventKind
from tracker.desk.sample_requests import name_board
from tracker.desk.weight_differences import WeightDifference, weight_differences
from tracker.trade.basis import Basis
from tracker.trade.footing import footing

DAY = date(2026, 11, 25)
CLAIMED = Decimal(380)
HEAVIER = ["395", "396", "397", "396", "396"]


def weighed(desk: Desk, values: list[str], **more: object) -> None:
    """One board of 380 g/m² by its vendor's word, and a sample of it with these weights."""
    file(desk, line(**{"grammage_gsm": CLAIMED, "charges": (), **more}), line("D6", product="Other Board"))
    number = samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=date(2026, 11, 4)).number
    name_board(desk, number, FULL.product)
    samples.record(desk, number, EventKind.ARRIVED, date(2026, 11, 9))
    readings.add(desk, number, "grammage", values)


def compared(desk: Desk, measured: bool, **more: object) -> Comparison:
    chosen = ChosenFooting(**{"as_of": DAY, "measured_weight": measured, **more})
    return compare(desk, load_snapshot(desk), chosen)


def difference(desk: Desk, year_msf: float = 30_000) -> WeightDifference:
    (found,) = weight_differences(desk, load_snapshot(desk), ChosenFooting(DAY), year_msf)
    return found


def test_a_heavier_board_bought_by_weight_costs_more_an_area(desk: Desk) -> None:
    weighed(desk, HEAVIER)
    claimed, measured = compared(desk, False), compared(desk, True)
    assert measured.per_msf[0] / claimed.per_msf[0] == pytest.approx(396 / 380)
    assert measured.per_tonne[0] == claimed.per_tonne[0]
    assert measured.per_msf[1] == claimed.per_msf[1]
    assert measured.snapshot.measured.tolist() == [True, False]
    exact = footing(replace(FULL, grammage_gsm=Decimal(396), charges=()))
    assert measured.per_msf[0] == pytest.approx(float(exact.per_msf), rel=1e-12)


def test_bought_by_area_the_tonne_changes_and_the_area_does_not(desk: Desk) -> None:
    weighed(desk, HEAVIER, basis=Basis.MSF, price=Decimal(85))
    claimed, measured = compared(desk, False), compared(desk, True)
    assert measured.per_msf[0] == claimed.per_msf[0]
    assert measured.per_tonne[0] / claimed.per_tonne[0] == pytest.approx(380 / 396)
    found = difference(desk)
    assert found.a_year == 0
    assert "bought by area" in found.sentence


def test_charges_are_brought_to_the_measured_weight_too(desk: Desk) -> None:
    weighed(desk, HEAVIER, charges=FULL.charges)
    measured = compared(desk, True, delivered=True)
    exact = footing(replace(FULL, grammage_gsm=Decimal(396)))
    assert measured.per_msf[0] == pytest.approx(float(exact.delivered_per_msf), rel=1e-12)


def test_the_difference_in_money_over_a_year(desk: Desk) -> None:
    """1,240.50 a short ton at 380 g/m²: 1,000 ft² weigh 35.303 kg, so each per cent of weight costs 0.48."""
    weighed(desk, HEAVIER)
    found = difference(desk)
    per_msf = 1240.5 / 907.18474 * 0.380 * 92.90304
    assert found.claimed_per_msf == pytest.approx(per_msf)
    assert found.a_year == pytest.approx(per_msf * (396 / 380 - 1) * 30_000)
    assert "396.0 g/m² (5 readings) where 380 is claimed, 4.2 % more" in found.sentence
    assert f"USD {found.a_year:,.0f} more over a year's 30,000 MSF" in found.sentence


def test_a_claim_within_the_scatter_is_said_to_be_doubtful(desk: Desk) -> None:
    weighed(desk, ["370", "390", "380", "375", "392"])
    assert "may still be right" in difference(desk).sentence


def test_too_few_readings_change_no_price(desk: Desk) -> None:
    weighed(desk, HEAVIER[:4])
    assert measured_weights(desk) == ()
    assert not compared(desk, True).snapshot.measured.any()


def test_samples_of_one_board_are_taken_together(desk: Desk) -> None:
    weighed(desk, HEAVIER[:4])
    number = samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=date(2026, 11, 4)).number
    name_board(desk, number, FULL.product)
    samples.record(desk, number, EventKind.ARRIVED, date(2026, 11, 9))
    readings.add(desk, number, "grammage", ["400", "402"])
    (found,) = measured_weights(desk)
    assert (found.spread.n, found.samples, found.claimed) == (6, (1, 2), CLAIMED)


def test_figures_at_a_measured_weight_say_so(desk: Desk) -> None:
    weighed(desk, HEAVIER)
    made = compared(desk, True)
    offer, other = offer_objects(made, (0, 1))
    assert (offer["grammage_from"], offer["grammage_gsm"]) == ("measured", 396)
    assert other["grammage_from"] == "quoted"
    assert any("396.0 g/m² that samples of this board measured" in why for why in offer["verdict"]["reasons"])
    per_msf = compared(desk, True, per=Per.MSF)
    ladder = explain(desk, per_msf, 0).steps
    assert "measured" in ladder[-1].text
    assert ladder[-1].text.endswith(f"= {per_msf.per_msf[0]:,.2f}")


def test_a_verdict_stands_beside_the_board_s_price(desk: Desk) -> None:
    weighed(desk, HEAVIER)
    verdicts.decide(desk, 1, True, "tea cartons")
    verdicts.decide(desk, 1, False, "cracks on folding")
    made = compared(desk, False)
    offer, other = offer_objects(made, (0, 1))
    assert offer["board_verdict"] == "rejected: cracks on folding (Ada, 25 Nov 2026)"
    assert other["board_verdict"] is None
    decided = explain(desk, made, 0).board_verdicts
    assert [each.approved for each in decided] == [False, True]


def test_a_verdict_holds_for_the_caliper_that_was_tried(desk: Desk) -> None:
    file(desk, line(), line("D6", caliper_um=Decimal(610)))
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=date(2026, 11, 4))
    samples.record(desk, 1, EventKind.ARRIVED, date(2026, 11, 9))
    verdicts.decide(desk, 1, True, "tea cartons")
    assert sorted(compared(desk, False).board_verdicts) == [0]
    verdicts.reject(desk, VENDOR.upper(), "fenlight white", "smells")
    assert sorted(compared(desk, False).board_verdicts) == [0, 1]


def test_a_verdict_counts_from_its_day(desk: Desk) -> None:
    file(desk, line())
    verdicts.approve(desk, VENDOR, FULL.product, "tea cartons")
    assert compared(desk, False, as_of=date(2026, 11, 24)).board_verdicts == {}


def test_a_board_without_a_name_is_judged_by_grade_and_caliper(desk: Desk) -> None:
    file(desk, line(product=""), line("D6", product="", grade="FBB"), line("D7", product="", caliper_um=Decimal(610)))
    samples.log(desk, VENDOR, "SBS", Decimal("457.2"), on=date(2026, 11, 4))
    samples.record(desk, 1, EventKind.ARRIVED, date(2026, 11, 9))
    verdicts.decide(desk, 1, True, "tea cartons")
    assert sorted(compared(desk, False).board_verdicts) == [0]
