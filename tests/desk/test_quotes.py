"""Offers on one footing: which count on a day, in which currency, and what is said of each."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import numpy as np
import pytest

from tests.desk.filing import file
from tests.store.making import FULL, VENDOR, line
from tracker.commands.quote_list import print_list
from tracker.desk import levels, rates
from tracker.desk.comparison import ChosenFooting, Comparison, Per
from tracker.desk.explanation import Explanation, explain, oldest_rate
from tracker.desk.freight import where_freight_stands
from tracker.desk.offers_json import offer_objects
from tracker.desk.opening import Desk
from tracker.desk.quotes import compare, load_snapshot
from tracker.desk.today import today
from tracker.desk.trouble import Trouble
from tracker.trade.basis import Basis
from tracker.trade.exact import GSM_PER_LB_MSF
from tracker.trade.footing import footing
from tracker.trade.level import LevelFigure
from tracker.trade.offer import Charge, GrammageFrom, Line
from tracker.window.quotes.offer_columns import price_figure

DAY = date(2026, 11, 25)
PLAIN = {"charges": (), "from_kg": None, "below_kg": None, "minimum_kg": None}


def comparison(desk: Desk, **chosen: object) -> Comparison:
    return compare(desk, load_snapshot(desk), ChosenFooting(**{"as_of": DAY, **chosen}))


def market(desk: Desk, *prices: int, vendor: str = "Vendor") -> None:
    """One SBS offer a vendor, priced per tonne."""
    for number, price in enumerate(prices):
        offer = line(vendor=f"{vendor} {number}", price=Decimal(price), basis=Basis.TONNE, **PLAIN)
        file(desk, offer, content=f"{vendor}{number}".encode(), vendor=f"{vendor} {number}")


def level(desk: Desk, per_tonne: int = 1300, grade: str = "SBS", **more: object) -> None:
    levels.set_level(desk, grade, LevelFigure(Decimal(per_tonne), "USD"), date(2026, 10, 1), "our own estimate", **more)


def test_an_empty_database_compares_to_nothing(desk: Desk) -> None:
    made = comparison(desk)
    assert len(made.price) == 0
    assert today(desk, made).out_of_line == ()


@pytest.mark.parametrize(
    ("day", "counts"),
    [(date(2026, 11, 2), False), (date(2026, 11, 3), True), (date(2026, 12, 31), True), (date(2027, 1, 1), False)],
)
def test_an_offer_counts_from_its_arrival_to_its_last_day(desk: Desk, day: date, counts: bool) -> None:
    file(desk, line())
    assert comparison(desk, as_of=day).current.tolist() == [counts]
    assert comparison(desk, as_of=day).shown.tolist() == [counts]
    assert comparison(desk, as_of=day, current_only=False).shown.tolist() == [True]


def test_a_superseded_offer_counts_until_the_newer_one_came(desk: Desk) -> None:
    file(desk, line(received=date(2026, 8, 18)), content=b"summer")
    file(desk, line(received=date(2026, 11, 3)), content=b"autumn")
    assert comparison(desk, as_of=date(2026, 11, 2)).current.tolist() == [True, False]
    assert comparison(desk, as_of=date(2026, 11, 3)).current.tolist() == [False, True]


@pytest.mark.parametrize(("order", "fits"), [(4535.9, False), (4535.9237, True), (18143.6, True), (18143.6948, False)])
def test_the_bracket_of_the_order_size_counts(desk: Desk, order: float, fits: bool) -> None:
    file(desk, line())
    assert comparison(desk, order_kg=order).shown.tolist() == [fits]


def test_one_currency_through_the_rate_of_the_day(desk: Desk) -> None:
    file(desk, line())
    rates.set_rate(desk, "USD", Decimal("0.8"), DAY)
    made = comparison(desk, currency="EUR")
    assert made.per_tonne[0] == pytest.approx(float(footing(FULL).per_tonne) * 0.8, rel=1e-12)
    assert made.per_msf[0] == pytest.approx(float(footing(FULL).per_msf) * 0.8, rel=1e-12)


def test_a_currency_without_a_rate_has_no_figure_and_no_verdict(desk: Desk) -> None:
    file(desk, line(currency="XTS"))
    made = comparison(desk)
    assert np.isnan(made.price[0])
    assert not made.out_of_line[0]
    (offer,) = offer_objects(made, [0])
    assert (offer["per_tonne"], offer["rate"]) == (None, None)
    assert "no rate of XTS" in explain(desk, made, 0).steps[-1].text


def test_delivered_takes_the_charges_in_where_delivered_cost_is_known(desk: Desk) -> None:
    file(desk, line("D5"), line("D6", charges=()))
    made = comparison(desk, delivered=True)
    assert made.price[0] == pytest.approx(float(footing(FULL).delivered_per_tonne), rel=1e-12)
    assert made.price[1] == pytest.approx(float(footing(FULL).per_tonne), rel=1e-12)
    assert made.is_delivered.tolist() == [True, False]


def test_one_figure_reads_the_same_wherever_it_is_told(desk: Desk, capsys: pytest.CaptureFixture[str]) -> None:
    """71.40 per cwt at 52.5 lb/MSF is 37.485: half up, though the weight is kept in g/m² to nine places."""
    level(desk, 1573)
    weight = round(Decimal("52.5") * GSM_PER_LB_MSF.numerator / GSM_PER_LB_MSF.denominator, 9)
    file(desk, line(price=Decimal("71.40"), basis=Basis.CWT, grammage_gsm=weight, **PLAIN))
    made = comparison(desk, per=Per.MSF)
    (told,) = offer_objects(made, [0])
    assert told["per_msf"] == 37.485
    steps = explain(desk, made, 0).steps
    assert steps[-1].text.endswith("= 37.49")
    assert "USD 37.49 lies inside" in told["verdict"]["reasons"][0]
    print_list(made, [0], [told])
    assert "37.49" in capsys.readouterr().out
    assert price_figure(made, float(made.price[0])) == "37.49"


def test_no_freight_is_never_said_of_a_sheet_that_says_nothing_of_it(desk: Desk) -> None:
    told = {"delivered": None, "charges": ()}
    freight = Charge("Freight", Decimal(60), "USD", Basis.SHORT_TON, freight=True)
    file(
        desk,
        line("D5", **told),
        line("D6", **told | {"delivered": False}),
        line("D7", **told | {"delivered": True}),
        line("D8", **told | {"charges": (freight,)}),
    )
    for delivered, wanted in ((False, [-1, 0, 1, 0]), (True, [-1, 0, 1, 1])):
        made = comparison(desk, delivered=delivered)
        assert where_freight_stands(made.snapshot, made.is_delivered).tolist() == wanted
        assert made.judged is not None
        assert made.judged.offers.delivered.tolist() == wanted


def test_per_msf_goes_through_each_board_s_own_weight(desk: Desk) -> None:
    level(desk)
    file(desk, line())
    tonne, msf = comparison(desk), comparison(desk, per=Per.MSF)
    assert msf.price[0] == pytest.approx(float(footing(FULL).per_msf), rel=1e-12)
    for column in ("band_low", "band_high", "expected"):
        assert getattr(msf, column)[0] / getattr(tonne, column)[0] == pytest.approx(msf.price[0] / tonne.price[0])
    assert msf.place.tolist() == tonne.place.tolist()


def test_the_band_follows_the_level_and_its_spread(desk: Desk) -> None:
    level(desk, 1000, spread=Decimal(20))
    market(desk, 790, 810, 1190, 1210)
    made = comparison(desk)
    assert made.place.tolist() == [-1, 0, 0, 1]
    assert made.band_low == pytest.approx([800.0] * 4)
    assert made.band_high == pytest.approx([1200.0] * 4)


def test_a_level_counts_from_its_day_on(desk: Desk) -> None:
    level(desk)
    market(desk, 1300)
    assert comparison(desk, as_of=date(2026, 11, 10)).place.tolist() == [0]
    early = comparison(desk, as_of=date(2026, 9, 30), current_only=False)
    assert early.place.tolist() == [-9]


def test_the_price_out_of_line_is_found_and_no_other(desk: Desk) -> None:
    level(desk)
    market(desk, 1270, 1285, 1300, 1310, 1322, 1290, 1305, 1950)
    made = comparison(desk)
    assert made.out_of_line.tolist() == [False] * 7 + [True]
    assert today(desk, made).out_of_line == (7,)


def test_a_price_per_hundredweight_typed_as_per_short_ton_is_named(desk: Desk) -> None:
    level(desk)
    market(desk, 1270, 1285, 1300, 1310, 1322, 1290)
    typed = line(price=Decimal("59.2"), basis=Basis.SHORT_TON, **PLAIN)
    file(desk, typed, content=b"slip")
    made = comparison(desk)
    assert np.flatnonzero(made.slip).tolist() == [6]
    (offer,) = offer_objects(made, [6])
    slip = offer["verdict"]["slip"]
    assert (slip["quoted_basis"], slip["likely_basis"]) == ("short_ton", "cwt")
    assert slip["factor"] == pytest.approx(20)
    assert slip["per_tonne_if_so"] == pytest.approx(59.2 * 22.046226218, rel=1e-9)
    assert "hundredweight" in offer["verdict"]["reasons"][0]


def test_an_offer_as_json_has_all_that_the_contract_names(desk: Desk) -> None:
    level(desk)
    file(desk, line())
    (offer,) = offer_objects(comparison(desk, currency="EUR"), [0])
    assert set(offer) >= {
        "id", "vendor", "product", "grade", "coated_sides", "caliper_um", "grammage_gsm", "grammage_from", "price",
        "currency", "basis", "from_kg", "below_kg", "per_tonne", "per_msf", "delivered_per_tonne",
        "delivered_per_msf", "rate", "lead_days", "valid_until", "current", "source", "verdict",
    }  # fmt: skip
    assert set(offer["verdict"]) == {"band", "place", "peers", "out_of_line", "slip", "reasons"}
    assert (offer["vendor"], offer["price"], offer["currency"], offer["basis"]) == (VENDOR, 1240.5, "USD", "short_ton")
    assert (offer["caliper_um"], offer["lead_days"], offer["valid_until"]) == (457.2, [28, 42], "2026-12-31")
    assert (offer["source"]["file"], offer["source"]["cell"]) == ("list.xlsx", "D5")
    assert offer["rate"]["date"] <= DAY.isoformat()
    assert offer["verdict"]["peers"] is None
    assert offer["verdict"]["band"]["low"] < offer["verdict"]["band"]["high"]


def test_figures_in_json_are_those_of_the_price_alone_whatever_is_compared(desk: Desk) -> None:
    file(desk, line())
    (plain,), (delivered,) = (offer_objects(comparison(desk, delivered=choice), [0]) for choice in (False, True))
    for key in ("per_tonne", "per_msf", "delivered_per_tonne", "delivered_per_msf"):
        assert plain[key] == delivered[key]
    assert plain["delivered_per_tonne"] == pytest.approx(float(footing(FULL).delivered_per_tonne))


def explained(desk: Desk, offer: Line | None = None, **chosen: object) -> Explanation:
    file(desk, offer or line())
    return explain(desk, comparison(desk, **chosen), 0)


def test_the_ladder_leads_from_the_cell_to_the_figure(desk: Desk) -> None:
    told = explained(desk)
    assert (told.steps[0].text, told.steps[0].cell) == ("1,240.50", "D5")
    assert "USD 1,240.50 per short ton" in told.steps[1].text
    assert told.steps[-1].last
    assert told.steps[-1].text == "$1,240.50 × 2,204.62 lb ÷ 2,000 lb = 1,367.42"
    assert sum(step.last for step in told.steps) == 1
    assert told.notes == line().notes
    assert told.evidence == line().evidence


def test_the_ladder_of_a_delivered_price_per_msf_in_another_currency(desk: Desk) -> None:
    rates.set_rate(desk, "USD", Decimal("0.8"), DAY)
    told = explained(desk, per=Per.MSF, delivered=True, currency="EUR")
    labels = [step.label for step in told.steps]
    assert labels == [
        "as written",
        "read as",
        "per 1,000 ft² in USD",
        "Freight",
        "Energy",
        "delivered, per 1,000 ft²",
        "exchange rate",
        "per 1,000 ft² in EUR",
    ]
    wanted = float(footing(FULL).delivered_per_msf) * 0.8
    assert told.steps[-2].text == "USD 1 = EUR 0.8, your own rate, 25 Nov 2026"
    assert told.steps[-1].text.endswith(f"= {wanted:,.2f}")


def test_a_figure_that_rests_on_an_estimate_says_so(desk: Desk) -> None:
    told = explained(desk, line(grammage_from=GrammageFrom.ESTIMATED, charges=()), per=Per.MSF)
    assert told.steps[-1].estimate
    assert "estimated" in told.steps[-1].text


def test_a_figure_that_can_not_be_known_says_what_is_missing(desk: Desk) -> None:
    told = explained(desk, line(grammage_gsm=None, grammage_from=None, charges=()), per=Per.MSF)
    assert "the basis weight is not quoted" in told.steps[-1].text


def test_an_order_below_the_minimum_is_said(desk: Desk) -> None:
    told = explained(desk, line(from_kg=None, minimum_kg=Decimal(5000)), order_kg=1000.0)
    assert any("below this vendor's minimum of 5,000 kg" in reason for reason in told.reasons)


@pytest.mark.parametrize(("latest", "current"), [(date(2026, 11, 24), False), (date(2026, 11, 25), True)])
def test_an_offer_that_lapsed_by_every_reading_of_its_last_day_is_not_current(
    desk: Desk, latest: date, current: bool
) -> None:
    file(desk, line(valid_until=None, valid_at_latest=latest))
    compared = comparison(desk)
    assert list(compared.current) == [current]
    assert "can be read two ways; the later is" in explain(desk, compared, 0).reasons[0]


def test_a_lapsed_offer_says_that_it_is_not_judged(desk: Desk) -> None:
    told = explained(desk, as_of=date(2027, 2, 1), current_only=False)
    assert told.reasons == ("This offer lapsed on 31 Dec 2026, so it is not judged.",)


def test_what_lapses_within_two_weeks_is_named_soonest_first(desk: Desk) -> None:
    days = (date(2026, 12, 9), date(2026, 12, 10), date(2026, 11, 25), date(2026, 11, 24))
    file(desk, *(line(f"D{at}", product=str(at), valid_until=day) for at, day in enumerate(days)))
    assert today(desk, comparison(desk)).lapsing == (2, 0)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"grade": "XYZ"}, "not a grade"),
        ({"figure": LevelFigure(Decimal(0), "USD")}, "above 0"),
        ({"figure": LevelFigure(Decimal(1300), "UDS")}, "“UDS” is no currency"),
        ({"spread": Decimal(100)}, "between 0 and 100"),
        ({"source": " "}, "where the level comes from"),
    ],
)
def test_what_can_be_no_level_is_refused(desk: Desk, changes: dict, words: str) -> None:
    good = {"grade": "SBS", "figure": LevelFigure(Decimal(1300), "USD"), "on": DAY, "source": "us"}
    with pytest.raises(Trouble, match=words):
        levels.set_level(desk, **{**good, **changes})
    assert levels.levels(desk) == ()


def test_a_level_is_listed_and_removed(desk: Desk) -> None:
    level(desk, 1300, spread=Decimal("12.5"))
    (kept,) = levels.levels(desk)
    assert levels.level_object(kept)["spread"] == "12.5"
    levels.remove_level(desk, kept.id)
    assert levels.levels(desk) == ()
    with pytest.raises(Trouble, match="gone already"):
        levels.remove_level(desk, kept.id)


def test_an_unnamed_vendor_s_offer_is_compared_like_any(desk: Desk) -> None:
    level(desk)
    file(desk, replace(line()), vendor=None)
    (offer,) = offer_objects(comparison(desk), [0])
    assert offer["vendor"] is None
    assert offer["verdict"]["place"] is not None


def test_the_oldest_rate_in_the_prices_shown(desk: Desk) -> None:
    market(desk, 1000, 1010, 1020)
    assert oldest_rate(comparison(desk)) is None
    rates.set_rate(desk, "USD", Decimal("0.8"), date(2026, 11, 20))
    assert oldest_rate(comparison(desk, currency="EUR")) == date(2026, 11, 20)
