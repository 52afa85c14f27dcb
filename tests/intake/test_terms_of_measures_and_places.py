"""Notes about boards of several measures, what freight to a place costs, and terms in the words of one trade each."""

from datetime import date
from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, read

POINTS = ["Grade", "Caliper pt", "lb/MSF", "USD per MSF"]
BOARDS = [["SBS C1S", 18, 76, 41], ["SBS C1S", 20, 84, 45], ["SBS C1S", 24, 98, 53], ["SBS C2S", 12, 54, 39]]
TONNES = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


def below(*notes):
    return [line.offer for line in lines([POINTS, *BOARDS, [], *([note] for note in notes)]).values()]


@pytest.mark.parametrize(
    ("note", "kilograms"),
    [
        ("18 pt and 24 pt: minimum 20,000 lb", [9072, None, 9072, None]),
        ("18 to 24 pt: minimum 20,000 lb", [9072, 9072, 9072, None]),
        ("Between 18 and 24 pt: minimum 20,000 lb", [9072, 9072, 9072, None]),
        # Which boards these are is not told apart, and no other has that minimum.
        ("20 pt C2S and lighter than 14 pt: minimum run 20,000 lb", [None, None, None, None]),
        ("All calipers: minimum 20,000 lb", [9072, 9072, 9072, 9072]),
    ],
)
def test_a_minimum_of_boards_of_several_measures(note, kilograms):
    assert [offer.minimum_kg and round(offer.minimum_kg) for offer in below(note)] == kilograms


@pytest.mark.parametrize(
    "head",
    ["Flete a destino", "Freight to destination", "Fracht zum Bestimmungsort", "Transport à destination"],
)
def test_a_column_of_what_freight_to_a_place_costs_holds_no_prices(head):
    rows = [["Grade", "µm", "g/m²", "Price ex works", head], ["", "µm", "g/m²", "EUR/tonne", "EUR/tonne"]]
    (line,) = lines([*rows, ["GC1", 450, 300, 1100, 54]]).values()
    assert line.offer.price == 1100
    assert [charge.price for charge in line.offer.charges] == [54]


@pytest.mark.parametrize("head", ["Delivered to destination", "Franco destination"])
def test_a_column_of_delivered_prices_does(head):
    rows = [["Grade", "µm", "g/m²", "Price ex works", head], ["", "µm", "g/m²", "EUR/tonne", "EUR/tonne"]]
    found = lines([*rows, ["GC1", 450, 300, 1100, 1154]]).values()
    assert [(line.offer.price, line.offer.delivered) for line in found] == [(1100, False), (1154, True)]


@pytest.mark.parametrize("head", ["Vorperiode", "Prior period", "Période précédente", "Período anterior"])
def test_what_the_period_before_cost_is_no_offer(head):
    (line,) = lines([[*TONNES, head], [*GC1, 1080]]).values()
    assert line.offer.price == 1100


def test_a_new_price_from_a_day_on_is_the_price_and_no_end_of_a_range():
    (line,) = lines(
        [[*TONNES[:3], "Old price (thru 9/30) EUR/tonne", "New price (from 10/1) EUR/tonne"], [*GC1[:3], 1080, 1100]]
    ).values()
    assert (str(line.state), line.offer.price) == ("accepted", 1100)


def test_the_ends_of_a_range_are_still_asked():
    found = lines([[*TONNES[:3], "Price from, EUR/tonne", "Price to, EUR/tonne"], [*GC1[:3], 1080, 1100]])
    assert {str(line.state) for line in found.values()} == {"question"}


def test_a_figure_in_thousandths_of_an_inch():
    (line,) = lines(
        [["Grade", "Caliper (thousandths of an inch)", "g/m²", "CAD per tonne"], ["GC1", 18, 300, 1600]]
    ).values()
    assert line.offer.caliper_um == Decimal("457.2")


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("Freight, prepaid and added: EUR 21 per tonne on every item above.", 21),
        ("(1) Participation transport : 21 € par tonne, en sus du prix net.", 21),
        ("2) Freight: EUR 21 per tonne extra", 21),
        ("Freight: prepaid and added", None),
    ],
)
def test_what_a_numbered_note_adds_for_freight(text, amount):
    (line,) = lines([TONNES, GC1, [], [text]]).values()
    assert [charge.price for charge in line.offer.charges] == ([amount] if amount else [])


@pytest.mark.parametrize(
    ("title", "weeks"),
    [
        ("EUR per tonne – make-up 4/5 weeks", (28, 35)),
        ("EUR per tonne – 3 weeks from order entry", (21, 21)),
        ("EUR per tonne – make-up charges extra", None),
    ],
)
def test_lead_times_in_a_makers_words(title, weeks):
    (line,) = lines([[title], TONNES, GC1]).values()
    assert line.offer.lead_days == weeks


def test_days_count_from_the_day_prices_were_quoted():
    (line,) = lines([["Quoted March 2, 2026; prices hold 45 days."], TONNES, GC1]).values()
    assert line.offer.valid_until == date(2026, 4, 16)


@pytest.mark.parametrize(
    ("title", "vendor"),
    [
        ("Oxbarrow & Thrane", "Oxbarrow & Thrane"),
        ("Lindquell Fibre Products", "Lindquell Fibre Products"),
        ("Terms & Conditions", None),
        ("Sheets & Reels", None),
        ("Rates & Surcharges", None),
    ],
)
def test_partners_at_the_head_of_a_sheet_are_its_vendor(title, vendor):
    assert read([[title], TONNES, GC1]).vendor == vendor


@pytest.mark.parametrize(
    ("head", "kilograms"),
    [("5 tons (10,000 lb) +", 4536), ("5 tons+ (10,000 lb)", 4536), ("5 tons (30,000 lb) +", None)],
)
def test_an_order_size_in_two_units(head, kilograms):
    rows = [["US$ per short ton"], ["Grade", "Caliper pt", "lb/MSF", "< 10,000 lb", head], ["CCNB", 18, 70, 948, 901]]
    line = lines(rows)["E3"]
    assert (line.offer.from_kg and round(line.offer.from_kg)) == kilograms
    assert ("bracket-unread" in codes(line)) is (kilograms is None)


def test_a_unit_under_each_and_a_caliper_before_a_comma():
    rows = [["What we are offering", "Each", "US$"], ["SBS, coated two sides, .016, 69 lbs/MSF", "ST", 1231]]
    line, _ = lines([*rows, ["Plain chipboard .026 in, 91 lbs/MSF", "LB", 0.361]]).values()
    assert (line.offer.price, line.offer.caliper_um, line.offer.basis) == (1231, Decimal("406.4"), "short_ton")
