"""Every sum of the ladder, typed into a calculator as it is shown, gives what is shown as its result."""

import re
from datetime import date
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from tracker.desk.comparison import ChosenFooting, Per
from tracker.desk.ladder import Rested, ladder
from tracker.desk.rates import Rate
from tracker.desk.sums import Part, addition_text, amount_text, product, product_text
from tracker.trade.basis import Basis, per_msf, per_tonne
from tracker.trade.footing import footing
from tracker.trade.offer import OPEN, Charge, GrammageFrom, Offer, Source

DAY = date(2026, 11, 25)
BOARD = {"grammage_gsm": Decimal("380.829356"), "sheet_mm": (Decimal(700), Decimal(1000))}
_NUMBER = re.compile(r"[\d,]*\.?\d+")


def offer(price: str, basis: Basis, currency: str = "USD", **changes: object) -> Offer:
    known = {**BOARD, "grammage_from": GrammageFrom.QUOTED, **changes}
    return Offer(Source("Prices", "D5", price), price=Decimal(price), basis=basis, currency=currency, **known)


def last(made: Offer, per: Per, metric: bool | None = None, **chosen: object) -> str:
    return ladder(made, ChosenFooting(DAY, per=per, **chosen), Rested(metric=metric))[-1].text


@pytest.mark.parametrize(
    ("made", "per", "metric", "text"),
    [
        (offer("81.34", Basis.CWT), Per.MSF, None, "$81.34 × 78 lb/MSF ÷ 100 lb = 63.45"),
        (offer("1240", Basis.SHORT_TON, grammage_gsm=Decimal("361.3")), Per.MSF, None,
         "$1,240 × 74 lb/MSF ÷ 2,000 lb = 45.88"),
        (offer("900", Basis.TONNE, "EUR", grammage_gsm=Decimal(350)), Per.MSF, None,
         "€900 × 350 g/m² × 0.0929 ÷ 1,000 kg = 29.26"),
        (offer("57.5", Basis.CWT), Per.MSF, None, "$57.50 × 78 lb/MSF ÷ 100 lb = 44.85"),
        (offer("0.62", Basis.LB), Per.MSF, None, "$0.62 × 78 lb/MSF = 48.36"),
        (offer("81.34", Basis.CWT), Per.TONNE, None, "$81.34 × 2,204.62 lb ÷ 100 lb = 1,793.24"),
        (offer("63.45", Basis.MSF), Per.TONNE, None, "$63.45 × 2,204.623 lb ÷ 78 lb/MSF = 1,793.38"),
        (offer("683", Basis.THOUSAND_M2, "EUR", grammage_gsm=Decimal(350)), Per.TONNE, None,
         "€683 × 1,000 ÷ 350 g/m² = 1,951.43"),
        (offer("683", Basis.THOUSAND_M2, "EUR"), Per.MSF, None, "€683 × 92.9 m² ÷ 1,000 m² = 63.45"),
        (offer("420", Basis.THOUSAND_SHEETS), Per.MSF, True, "$420 × 92.9 m² ÷ 700 m² = 55.74"),
        (offer("420", Basis.THOUSAND_SHEETS), Per.MSF, False, "$420 × 1,000 ft² ÷ 7,535 ft² = 55.74"),
        (offer("63.45", Basis.MSF), Per.MSF, None, "$63.45, as quoted"),
        (offer("1240", Basis.SHORT_TON), Per.TONNE, True, "$1,240 × 1,000 kg ÷ 907.185 kg = 1,366.87"),
    ],
)  # fmt: skip
def test_sums_read_as_a_buyer_writes_them(made: Offer, per: Per, metric: bool | None, text: str) -> None:
    currency = made.currency or "USD"
    assert last(made, per, metric, currency=currency) == text


def on_a_calculator(text: str) -> tuple[Fraction, Fraction, Fraction]:
    """What the shown terms give, the result shown, and half a step of its last digit."""
    sum_, _, result = text.partition(" = ")
    numbers = [Fraction(found.replace(",", "")) for found in _NUMBER.findall(re.sub(r"(?<=[a-z])\d", "", sum_))]
    reached = numbers[0]
    for sign, number in zip(re.findall(r"[×÷+]", sum_), numbers[1:], strict=True):
        reached = reached * number if sign == "×" else reached / number if sign == "÷" else reached + number
    shown = _NUMBER.match(result)
    assert shown is not None
    places = len(shown[0].partition(".")[2])
    return reached, Fraction(shown[0].replace(",", "")), Fraction(1, 2 * 10**places)


PRICES = st.decimals("0.0004", "250000", places=4).map(lambda price: price.normalize())
GRAMMAGES = st.decimals("120", "900", places=3)
SIDES = st.integers(300, 1600).map(Decimal)


@given(
    PRICES, st.sampled_from(Basis), GRAMMAGES, SIDES, SIDES, st.sampled_from(Per), st.sampled_from([True, False, None])
)
def test_what_is_shown_can_be_checked_on_a_calculator(price, basis, grammage, width, length, per, metric) -> None:
    made = offer(f"{price:f}", basis, grammage_gsm=grammage, sheet_mm=(width, length))
    text = last(made, per, metric)
    convert = per_tonne if per is Per.TONNE else per_msf
    exact = convert(price, basis, made.measure)
    assert exact is not None
    if " = " not in text:
        assert exact == Fraction(price)
        return
    # g/m² and ft² end in a digit of their own, which is no number of the sum.
    reached, shown, half = on_a_calculator(text.replace("m²", "m").replace("ft²", "ft"))
    # What arithmetic leaves behind the tenth digit is settled before rounding, and may move a figure across a half.
    nearly = half * Fraction(100_001, 100_000)
    assert abs(reached - shown) <= nearly
    assert abs(exact - shown) <= nearly


def test_delivered_in_another_currency_each_rung_adds_up() -> None:
    charges = (
        Charge("Freight", Decimal(60), "USD", Basis.SHORT_TON, freight=True),
        Charge("Energy", Decimal("3.5"), None, None),
    )
    made = offer("1240.50", Basis.SHORT_TON, charges=charges)
    rate = Rate(1 / Decimal("1.0834"), DAY, "the bank")
    steps = ladder(made, ChosenFooting(DAY, "EUR", Per.MSF, delivered=True), Rested(rate))
    assert [step.text for step in steps[2:]] == [
        "$1,240.50 × 78 lb/MSF ÷ 2,000 lb = 48.38",
        "$60 × 78 lb/MSF ÷ 2,000 lb = 2.34",
        "48.38 × 3.5 % = 1.69",
        "48.38 + 2.34 + 1.69 = 52.41",
        "EUR 1 = USD 1.0834, the bank, 25 Nov 2026",
        "52.41 ÷ 1.0834 = 48.38",
    ]
    wanted = footing(made).delivered_per_msf
    assert wanted is not None
    assert abs(wanted * Fraction(rate.factor) - Fraction("48.38")) < Fraction("0.005")


def test_an_estimated_weight_is_marked_and_its_range_said() -> None:
    made = offer("1240", Basis.SHORT_TON, grammage_from=GrammageFrom.ESTIMATED)
    step = ladder(made, ChosenFooting(DAY, per=Per.MSF), Rested(low=45.1, high=51.9))[-1]
    assert step.text == ("$1,240 × 78 lb/MSF estimated ÷ 2,000 lb = 48.36 (45.10 to 51.90, as the weight may be)")
    assert step.estimate


@given(st.lists(st.fractions(min_value=Fraction(1, 100), max_value=9999), min_size=2, max_size=5))
@example(
    [
        Fraction(717, 33900), Fraction(24283, 533425), Fraction(55698458, 74805800),
        Fraction(37853570061507, 93716238040), Fraction(37853570061507, 93716238040),
    ]
)  # fmt: skip
def test_shown_terms_add_up_to_the_shown_total(terms: list[Fraction]) -> None:
    reached, shown, half = on_a_calculator(addition_text(terms))
    assert abs(reached - shown) <= half


def test_a_long_amount_is_not_rounded_twice() -> None:
    assert amount_text(Fraction("551155655.462194")) == "551,155,655"
    assert amount_text(Fraction("37.48499999998")) == "37.49"


def test_amounts_have_as_many_digits_as_are_worth_reading() -> None:
    texts = [amount_text(Fraction(value)) for value in ("0.0183149", "45.879", "1366.867", "123456.7", "0")]
    assert texts == ["0.01831", "45.88", "1,366.87", "123,457", "0.00"]


def test_a_sum_is_exact_underneath() -> None:
    parts = [Part(Fraction(1, 3)), Part(Fraction(3), given="3")]
    assert product(parts) == 1
    assert product_text(parts).endswith("= 1.00")


ENERGY = Charge("energy surcharge", Decimal(4), None, None)
TOLL = Charge("toll", Decimal("4.80"), "USD", Basis.SHORT_TON)


@pytest.mark.parametrize(
    ("charges", "delivered", "chosen", "told"),
    [
        ((ENERGY,), None, True, ["4 %, not in this figure: the delivered cost is not known"]),
        ((ENERGY,), False, True, ["4 %, not in this figure: the delivered cost is not known"]),
        ((ENERGY,), True, False, ["4 %, not in this figure: prices are compared as quoted"]),
        ((TOLL,), False, True, ["$4.80 per short ton, not in this figure: the delivered cost is not known"]),
        (
            (Charge("levy", Decimal(0), OPEN, None),), True, True,
            ["how much is not certain, not in this figure: the delivered cost is not known"],
        ),
        ((), False, True, []),
    ],
)  # fmt: skip
def test_a_charge_that_is_due_and_not_in_the_figure_is_told(
    charges: tuple[Charge, ...], delivered: bool | None, chosen: bool, told: list[str]
) -> None:
    made = offer("890", Basis.SHORT_TON, charges=charges, delivered=delivered)
    steps = ladder(made, ChosenFooting(DAY, per=Per.MSF, delivered=chosen), Rested())
    assert [step.text for step in steps if step.label in {charge.label for charge in charges}] == told
    assert steps[-1].text == "$890 × 78 lb/MSF ÷ 2,000 lb = 34.71"


def test_a_charge_in_the_figure_is_summed_and_not_told_to_be_left_out() -> None:
    made = offer("890", Basis.SHORT_TON, charges=(ENERGY,), delivered=True)
    steps = ladder(made, ChosenFooting(DAY, per=Per.MSF, delivered=True), Rested())
    assert not any("not in this figure" in step.text for step in steps)
    assert steps[-1].text == "34.71 + 1.39 = 36.10"
