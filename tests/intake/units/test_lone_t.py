"""'t' is the symbol of the tonne: among pounds and inches it is asked about, where 'T' and 'ton' are short tons."""

import pytest

from tests.intake.sheets import codes, lines, read
from tracker.trade.offer import OPEN, State

HEAD = ["Board", "Caliper (pt)", "lb/MSF"]
SBS = ["SBS C1S", 18, 75]


@pytest.mark.parametrize(
    ("head", "above", "basis"),
    [
        ("Price USD/t", "", None), ("$/t", "", None), ("USD per t", "", None), ("Price", "Prices in USD/t", None),
        ("Price USD/T", "", "short_ton"), ("$/ton", "", "short_ton"), ("Price USD/t", "ton = 2,000 lb", "short_ton"),
        ("Price USD/t", "Prices per metric ton", "tonne"),
    ],
)  # fmt: skip
def test_the_ton_of_prices_in_a_file_of_pounds_and_inches(head, above, basis):
    (line,) = lines([[above], [*HEAD, head], [*SBS, 1100]]).values()
    assert line.offer.basis == basis
    assert codes(line) == (set() if basis else {"basis-unknown"})


@pytest.mark.parametrize(
    ("title", "weight", "basis"),
    [("COP por tonelada", "g/m2", "tonne"), ("COP por tonelada", "lb/MSF", None), ("COP por ton", "g/m2", None)],
)
def test_a_tonelada_among_grams_and_points_is_a_tonne(title, weight, basis):
    heavy = 338 if weight == "g/m2" else 69
    (line,) = lines([[title], ["Producto", "Calibre pts", weight, "Precio"], ["SBS C1S", 18, heavy, 5840000]]).values()
    assert line.offer.basis == basis


def test_one_answer_settles_the_symbol():
    rows = [[*HEAD, "Price USD/t"], [*SBS, 1100], ["CRB", 18, 70, 900]]
    (question,) = read(rows).questions
    assert [choice.value for choice in question.choices] == ["short", "metric"]
    assert {line.offer.basis for line in read(rows, {"ton": "metric"}).lines} == {"tonne"}


def test_an_order_size_in_t_is_asked_and_a_smallest_order_in_t_is_told():
    sized = lines([[*HEAD, "USD/ST < 5 t", "USD/ST > 5 t"], [*SBS, 1100, 1050]]).values()
    assert [codes(line) for line in sized] == [{"bracket-unread"}] * 2
    below = [[*HEAD, "From (t)", "USD/ST"], [*SBS, 5, 1100], [*SBS, 20, 1050]]
    assert [codes(line) for line in lines(below).values()] == [{"bracket-unread"}] * 2
    assert {line.offer.from_kg for line in lines([[*HEAD, "From (T)", "USD/ST"], *below[1:]]).values()} != {None}
    (line,) = lines([["Minimum order 5 t"], [*HEAD, "USD/ST"], [*SBS, 1100]]).values()
    assert (line.state, line.offer.minimum_kg, codes(line)) == (State.ACCEPTED, None, {"bracket-unread"})


def test_a_charge_per_t_beside_a_price_per_short_ton_stays_open():
    (line,) = lines([[*HEAD, "USD/ST", "Freight USD/t"], [*SBS, 1100, 50]]).values()
    assert [charge.currency for charge in line.offer.charges] == [OPEN]
