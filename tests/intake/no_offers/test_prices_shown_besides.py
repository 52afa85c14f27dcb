"""'For information: prices until September 30' over rows below others: whether they are to be paid is asked."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Caliper (pt)", "Price USD/short ton"]
BOARDS = [["SBS", 18, 1200], ["CUK", 20, 900]]
OTHERS = [["SBS", 18, 1150], ["CUK", 20, 880]]
BESIDES = [
    "For information: prices until September 30, 2026", "For comparison only: list A", "For information only",
    "For information: prices of the previous quarter", "For reference: prices valid to September 30, 2026",
    "Zur Information: Preise bis 30. September 2026", "Nur zum Vergleich: Liste A",
    "Pour information : prix jusqu'au 30 septembre 2026", "Pour comparaison seulement : liste A",
    "Para información: precios hasta el 30 de septiembre de 2026", "Solo a título comparativo: lista A",
    "För information: priser till och med 30 september 2026", "Endast för jämförelse: lista A",
]  # fmt: skip


def states(*rows):
    return [line.state for line in lines([["Price list October 2026"], HEAD, *BOARDS, *rows]).values()]


@pytest.mark.parametrize("line", BESIDES)
def test_prices_below_such_a_line_are_asked(line):
    assert states([], [line], *OTHERS) == ["accepted", "accepted", "question", "question"]


@pytest.mark.parametrize("line", BESIDES)
def test_so_are_those_of_a_table_below_it(line):
    assert states([], [line], HEAD, *OTHERS) == ["accepted", "accepted", "question", "question"]


@pytest.mark.parametrize(
    "line",
    [
        "For your information: all prices FOB mill", "For information: lead time 4 weeks",
        "For your information: our new prices", "Zur Information: neue Preise", "Ref. A12", "CUK and SBS in sheets",
    ],
)  # fmt: skip
def test_prices_below_another_are_offered(line):
    assert states([], [line], *OTHERS) == ["accepted"] * 4


@pytest.mark.parametrize("line", ["For information only", "Zur Information: Preise bis 30. September 2026"])
def test_over_the_only_prices_of_a_file_it_asks_nothing(line):
    assert [found.state for found in lines([[line], HEAD, *BOARDS]).values()] == ["accepted", "accepted"]
