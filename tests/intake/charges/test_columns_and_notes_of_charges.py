"""Charges in columns and notes with their own units, and columns of what a price has in it already."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.basis import Basis
from tracker.trade.offer import State

BOARD = ["SBS C1S", 18, 75]
HEAD = ["Board", "pt", "lb/MSF"]


def test_money_too_little_for_board_is_charged_beside_its_price():
    rows = [[*HEAD, "Board $/cwt", "Zorb fee $/cwt"], [*BOARD, 62, 0.85], ["CRB", 18, 70, 45, 0.85]]
    found = lines(rows)
    assert list(found) == ["D2", "D3"]
    assert [str(line.offer.charges[0].price) for line in found.values()] == ["0.85", "0.85"]
    both = [[*HEAD, "Eastburn $/cwt", "Westburn $/cwt"], [*BOARD, 62, 58], ["CRB", 18, 70, 45, 44]]
    assert len(lines(both)) == 4


def test_what_a_price_is_made_of_is_not_charged_beside_it():
    head = ["Grade", "pt", "lb/MSF", "Fiber USD/ST", "Energy USD/ST", "Margin USD/ST", "Selling price USD/ST"]
    (line,) = lines([head, ["SBS C1S", 16, 67, 498, 142, 179, 1171]]).values()
    assert (line.offer.price, line.offer.charges) == (1171, ())


def test_without_a_margin_energy_is_charged():
    (line,) = lines(
        [["Grade", "pt", "lb/MSF", "Energy USD/ST", "Price USD/ST"], ["SBS C1S", 16, 67, 42, 1171]]
    ).values()
    assert [charge.price for charge in line.offer.charges] == [42]


DOLLAR_HEAD = ["Board", "Caliper (pt)", "lb/MSF", "Price USD/ST"]
SBS, CRB = ["SBS C1S", 18, 75, 1165], ["CRB C1S", 18, 70, 900]


def only(rows, answers=None, **more):
    (line,) = lines(rows, answers, **more).values()
    return line


def test_charges_stand_in_columns_and_notes_with_their_own_units():
    rows = [
        ["Freight $1.85/cwt extra."],
        [],
        ["Board", "pt", "lb/MSF", "US$/ST", "Energy surcharge %"],
        ["SBS", 16, 67, 1130, 3],
    ]
    charges = {charge.label.casefold(): charge for charge in only(rows).offer.charges}
    assert (charges["freight"].price, charges["freight"].basis, charges["freight"].freight) == (
        Decimal("1.85"),
        Basis.CWT,
        True,
    )
    assert (charges["energy surcharge"].price, charges["energy surcharge"].basis) == (3, None)


@pytest.mark.parametrize(
    "note", ["* includes 3 % energy surcharge", "Sheeting $4.50/cwt if ordered in sheets.", "Pallet deposit $15 each."]
)
def test_what_is_included_or_conditional_is_no_charge(note):
    line = only([DOLLAR_HEAD, SBS, [], [note]])
    assert line.state is State.ACCEPTED
    assert line.offer.charges == ()
