"""A percentage of another charge, and an amount with a minus, are no amounts that come on top of the price."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

BOARDS = [["Grade", "pt", "lb/MSF", "Price USD/ST"], ["SBS C1S", 16, 67, 1230]]


def charged(note):
    (line,) = lines([*BOARDS, [], [note]]).values()
    return [float(one.price) if one.currency != OPEN else None for one in line.offer.charges]


@pytest.mark.parametrize(
    "note",
    [
        "Fuel surcharge 18 % of freight", "Treibstoffzuschlag 18 % der Fracht",
        "Supplément carburant 18 % du transport", "Recargo de combustible 18 % del flete",
        "Drivmedelstillägg 18 % av frakten",
        "Energy surcharge: -10 USD/ST", "Energy surcharge -10 USD/ST",
    ],
)  # fmt: skip
def test_what_they_come_to_is_not_certain(note):
    assert charged(note) == [None]


@pytest.mark.parametrize(
    ("note", "amount"),
    [
        ("Energy surcharge 3 % of the price", 3), ("Energy surcharge 3 % plus freight", 3),
        ("3 % energy surcharge", 3), ("3 % de supplément énergie", 3), ("3 % de recargo energético", 3),
        ("Energy surcharge - 10 USD/ST", 10), ("Energy surcharge: 10 USD/ST", 10),
    ],
)  # fmt: skip
def test_a_share_of_the_price_and_an_amount_behind_a_dash_are(note, amount):
    assert charged(note) == [amount]
