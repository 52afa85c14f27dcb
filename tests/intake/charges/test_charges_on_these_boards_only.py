"""A surcharge said to be on some boards and on these only, with a part of its own for that."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]
_BOARDS = [["GC1", 235, 385, 1255], ["GZ", 280, 345, 1420], ["GD2", 300, 380, 835], ["GT2", 350, 470, 930]]


def _charges(note):
    found = lines([_HEAD, *_BOARDS, [], [note]]).values()
    return [[(str(charge.price), charge.currency) for charge in line.offer.charges] for line in found]


@pytest.mark.parametrize(
    "note",
    [
        "On GD2 and GT2, and on these only, we charge an energy surcharge of 4 %.",
        "On the GD2 and the GT2, and only on these, we apply an energy surcharge of 4 %.",
        "Auf GD2 und GT2, und nur auf diese, berechnen wir 4 % Energiezuschlag.",
        "Auf den GD2 und den GT2, und auf keine anderen, rechnen wir 4 % Energiezuschlag.",
        "Sur le GD2 et le GT2, et sur eux seuls, nous comptons 4 % de surcharge énergie.",
        "Sur le GD2 et le GT2 nous facturons 4 % de surcharge énergie.",
        "En GD2 y GT2, y solo en ellos, cobramos un 4 % de recargo energético.",
        "En el GD2 y el GT2 aplicamos un 4 % de recargo energético.",
        "På GD2 och GT2, och endast på dessa, tar vi ut 4 % energitillägg.",
        "På GD2 och GT2, och bara på dem, räknar vi 4 % energitillägg.",
    ],
)
def test_the_boards_named_bear_it_alone(note):
    assert _charges(note) == [[], [], [("4", None)], [("4", None)]]


@pytest.mark.parametrize(
    "note",
    [
        "On GD2 and GT2, as agreed in May, we reckon with an energy surcharge of 4 %.",
        "On the GD2 and the GT2, and on no others, we apply an energy surcharge of 4 %.",
        "På GD2 och GT2, och på inga andra, räknar vi 4 % energitillägg.",
        "On GD2 and GT2, bought in these days, the mill wants a 4 % energy surcharge.",
        "Auf GD2 und GT2, wie besprochen, schreiben wir 4 % Energiezuschlag.",
        "Sur le GD2 et le GT2, comme convenu, nous tablons sur 4 % de surcharge énergie.",
        "Sur le GD2 et le GT2, comme convenu, nous retenons 4 % de surcharge énergie.",
        "En GD2 y GT2, como se habló, retenemos un 4 % de recargo energético.",
        "På GD2 och GT2, som avtalat, begär vi 4 % energitillägg.",
    ],
)
def test_no_other_board_is_charged_where_more_is_said_than_is_read(note):
    charged = _charges(note)
    assert all(price == "0" and currency == OPEN for one in charged[:2] for price, currency in one)
    assert all(charged[2:])


@pytest.mark.parametrize(
    "note",
    [
        "We charge an energy surcharge of 4 %.",
        "On all grades, GD2 too, we charge an energy surcharge of 4 %.",
        "Wir berechnen 4 % Energiezuschlag.",
        "Auf alle Sorten berechnen wir 4 % Energiezuschlag.",
        "Nous comptons 4 % de surcharge énergie.",
        "Sur toutes les sortes, nous comptons 4 % de surcharge énergie.",
        "Cobramos un 4 % de recargo energético.",
        "En todas las calidades cobramos un 4 % de recargo energético.",
        "Vi tar ut 4 % energitillägg.",
        "På alla kvaliteter tar vi ut 4 % energitillägg.",
    ],
)
def test_what_is_on_all_boards_is_charged_on_none_alone(note):
    charged = _charges(note)
    assert charged[0] == charged[1] == charged[2] == charged[3]
    assert charged[0] != []
