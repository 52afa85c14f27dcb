"""Yearly rebates, worked examples, surcharges of one board, freight in cents and times among denied terms."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.intake.values.lead_by_itself import lead_by_itself

HEAD = ["Board", "gsm", "micron", "EUR/t"]
BOARDS = [["SBS", 240, 340, 1298], ["GC1", 280, 450, 1180], ["GD2", 300, 420, 845]]


def with_columns(*heads):
    rows = [[*row, *(8 * (n + 1) * (100 if place + 1 < len(heads) else 1) for place in range(len(heads)))]
            for n, row in enumerate(BOARDS)]  # fmt: skip
    return {str(line.state) for line in lines([[*HEAD, *heads], *rows]).values()}


@pytest.mark.parametrize(
    "heads",
    [("Rebate steps (t/yr)", "Rebate EUR/t"), ("Bonusstaffel (t/Jahr)", "Bonus EUR/t"), ("Jahresbonus EUR/t",),
     ("Barème de ristourne (t/an)", "Ristourne EUR/t"), ("Rappel anual (t/año)", "Rappel EUR/t"),
     ("Årsbonus (t/år)", "Bonus EUR/t")],
)  # fmt: skip
def test_a_rebate_on_a_year_leaves_the_price(heads):
    assert with_columns(*heads) == {"accepted"}


@pytest.mark.parametrize("heads", [("Rebate EUR/t",), ("t/yr", "Discount %")])
def test_any_other_discount_is_asked_about(heads):
    assert with_columns(*heads) == {"question"}


def test_a_worked_example_says_no_units_of_the_prices_above():
    note = "Worked example (how a price per MSF is found; not a quotation)"
    assert {str(line.state) for line in lines([HEAD, *BOARDS, [], [note]]).values()} == {"accepted"}
    priced_otherwise = lines([HEAD, *BOARDS, [], ["Prices per MSF"]]).values()
    assert {str(line.state) for line in priced_otherwise} == {"question"}


@pytest.mark.parametrize(
    "note",
    ["Energy surcharge of 2.5 % of the price: SBS only.", "Energiezuschlag 2,5 %: nur SBS",
     "Surcharge énergie 2,5 % : SBS uniquement", "Recargo energético 2,5 %: solo SBS",
     "Energitillägg 2,5 %: endast SBS", "Energy surcharge 2.5 % (SBS only)"],
)  # fmt: skip
def test_a_surcharge_of_one_board_alone_is_charged_for_no_other(note):
    found = lines([HEAD, *BOARDS, [], [note]]).values()
    assert [[charge.price for charge in line.offer.charges] for line in found] == [[Decimal("2.5")], [], []]


def test_a_surcharge_of_all_boards_is_charged_for_all():
    found = lines([HEAD, *BOARDS, [], ["Energy surcharge 2.5 %: all boards"]]).values()
    assert [len(line.offer.charges) for line in found] == [1, 1, 1]


def in_cents(unit, freight):
    rows = [["SBS C1S", 14, 60, 58.25, freight], ["CUK C1S", 21, 88, 51.75, freight]]
    return lines([["Board", "Points", "lb/MSF", "Price", "Freight"], *rows, [], [f"Prices in {unit}, FOB mill"]])


def test_freight_without_a_unit_counts_cents_as_the_price_does():
    (charge,) = in_cents("US cents per pound", 1.75)["D2"].offer.charges
    assert (charge.price, charge.currency) == (Decimal("0.0175"), "USD")
    (charge,) = in_cents("US dollars per cwt", 1.75)["D2"].offer.charges
    assert (charge.price, charge.currency) == (Decimal("1.75"), "USD")


def test_freight_too_large_for_cents_stays_open():
    (charge,) = in_cents("US cents per pound", 42)["D2"].offer.charges
    assert charge.price == 0


@pytest.mark.parametrize(
    ("text", "days"),
    [("Two weeks, no surcharge of any kind, no minimum.", (14, 14)), ("Zwei Wochen, kein Zuschlag", (14, 14)),
     ("Shipments into the United States, two to three weeks", (14, 21)),
     ("Lieferungen in die Schweiz, zwei bis drei Wochen", (14, 21)), ("Envíos a México, dos a tres semanas", (14, 21)),
     ("Two weeks, prices on request", None), ("Payment for shipments, 8 weeks", None), ("30 days, no discount", None)],
)  # fmt: skip
def test_a_time_stands_among_denied_terms_and_behind_shipments(text, days):
    said = lead_by_itself(text)
    assert (said.days if said is not None else None) == days
