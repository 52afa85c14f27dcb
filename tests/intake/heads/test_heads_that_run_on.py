"""Heads that run on over two or three rows, where only the joined text says the unit."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.basis import Basis

UPPER = ["Board", "Inches", "lb per 3,000", "US dollars"]
LOWER = [None, "thick", "sq. ft.", "a ton"]
BOARDS = [["SBS, coated one side", 0.018, 225, 1168], ["Plain chipboard", 0.028, 305, 690]]


def test_units_are_read_from_the_joined_heads():
    found = lines([UPPER, LOWER, [None, None, None, "at mill"], *BOARDS])
    assert [(str(line.state), line.offer.currency, line.offer.basis) for line in found.values()] == [
        ("accepted", "USD", Basis.SHORT_TON),
        ("accepted", "USD", Basis.SHORT_TON),
    ]
    assert {float(line.offer.caliper_um) for line in found.values()} == {457.2, 711.2}
    assert {round(line.offer.grammage_gsm) for line in found.values()} == {366, 496}
    assert not {code for line in found.values() for code in codes(line)}


def priced(*heads):
    rows = [["GC1", 250, 405, 1254], ["GD2", 350, 450, 816]]
    names = ["Board", "g/m²", "µm"]
    return lines([[*names, heads[0]], *([None, "g/m²", "µm", head] for head in heads[1:]), *rows])


@pytest.mark.parametrize(
    ("heads", "currency", "basis"),
    [
        (("US dollars", "a tonne"), "USD", Basis.TONNE),
        (("Canadian", "dollars", "per tonne"), "CAD", Basis.TONNE),
        (("dollars", "canadiens", "la tonne"), "CAD", Basis.TONNE),
        (("dólares canadienses", "por tonelada métrica"), "CAD", Basis.TONNE),
        (("Euro je", "Tonne"), "EUR", Basis.TONNE),
        (("Euro je 1000", "m²"), "EUR", Basis.THOUSAND_M2),
        (("svenska kronor", "per ton (1000 kg)"), "SEK", Basis.TONNE),
        (("US$ per 1,000", "sq. ft."), "USD", Basis.MSF),
        (("US$ per 100", "lb"), "USD", Basis.CWT),
        (("US$ per short", "ton"), "USD", Basis.SHORT_TON),
    ],
)
def test_money_and_what_it_is_per_may_stand_on_two_rows(heads, currency, basis):
    assert {(line.offer.currency, line.offer.basis) for line in priced(*heads).values()} == {(currency, basis)}


def test_the_letter_of_a_plant_above_a_unit_makes_no_money_of_canada():
    assert {line.offer.currency for line in priced("Plant CA", "$/ST").values()} == {"USD"}


def test_an_order_size_below_money_is_not_what_it_is_per():
    rows = [["Board", "g/m²", "EUR", "EUR"], [None, None, "5 t", "10 t"], ["GC1", 250, 1254, 1230]]
    assert {line.offer.basis for line in lines(rows).values()} == {None}


def test_rolls_below_money_are_a_form():
    assert {line.offer.basis for line in priced("EUR", "Rolls").values()} == {None}


def test_thousandths_run_on_to_of_an_inch():
    rows = [["Board", "Thousandths", "$/ST"], [None, "of an inch", None], ["SBS", 18, 1168], ["CRB", 22, 810]]
    assert [round(line.offer.caliper_um) for line in lines(rows).values()] == [457, 559]


def test_heads_may_run_on_over_three_rows():
    upper = ["Board", "pounds", "Points", "US dollars"]
    rows = [upper, [None, "per thousand", None, "per short"], [None, "square feet", None, "ton"]]
    found = lines([*rows, ["SBS", 75, 18, 1168], ["CRB", 71, 20, 820]])
    assert {(str(line.state), line.offer.basis, len(line.notes)) for line in found.values()} == {
        ("accepted", Basis.SHORT_TON, 0)
    }
    assert [round(line.offer.grammage_gsm) for line in found.values()] == [366, 347]


def test_boards_below_heads_do_not_run_on_from_them():
    found = lines([["Board", "pounds", "US dollars"], ["SBS", "75 lb/MSF", "1168 per short ton"], ["CRB", "71", "820"]])
    assert set(found) == {"C2", "C3"}


@pytest.mark.parametrize("heading", ["For folding", "Basis weight: 250 g/m²"])
def test_a_heading_below_the_heads_is_none(heading):
    rows = [["Board", "µm", "EUR/tonne"], [heading], ["GC1 250 g/m²", 405, 1254], ["GD2 250 g/m²", 350, 816]]
    found = lines(rows)
    assert [line.offer.grade for line in found.values()] == ["FBB", "CRB"]
    assert {(str(line.state), line.offer.grammage_gsm) for line in found.values()} == {("accepted", 250)}
