"""Lines that say what prices do not include, with the names below or behind them, and charges of the prices above."""

import pytest

from tests.intake.sheets import lines

_HEAD = [["Fairhaven Board Co."], ["Grade", "g/m²", "USD/tonne"]]
_ROWS = [["SBS", 250, 1200], ["CUK", 300, 900]]
_LAST = ["CRB", 350, 800]


def _below(*notes):
    return [line.offer for line in lines([*_HEAD, *_ROWS, [], *([note] for note in notes)]).values()]


def _between(note):
    return [line.offer for line in lines([*_HEAD, *_ROWS, [note], _LAST]).values()]


@pytest.mark.parametrize(
    "notes",
    [
        ("Prices do not include:", "Freight", "Sales tax"),
        ("Prices do not include:", "Sales tax", "Freight"),
        ("Prices do not include:", "- Freight", "- Sales tax"),
        ("Prices do not include: freight, sales tax",),
        ("Not included:", "Freight"),
        ("Nicht enthalten:", "Fracht", "MwSt."),
        ("Die Preise enthalten nicht:", "Fracht"),
        ("Les prix ne comprennent pas :", "Transport", "TVA"),
        ("Non compris :", "Transport"),
        ("Los precios no incluyen:", "Transporte", "IVA"),
        ("Priserna inkluderar inte:", "Frakt"),
    ],
)
def test_freight_that_is_named_so_is_not_in_the_price(notes):
    assert {offer.delivered for offer in _below(*notes)} == {False}


@pytest.mark.parametrize("notes", [("Prices do not include:", "Sales tax"), ("Prices do not include: sales tax",)])
def test_tax_alone_says_nothing_of_freight(notes):
    assert {offer.delivered for offer in _below(*notes)} == {None}


def test_what_prices_include_is_not_taken_for_the_opposite():
    assert False not in {offer.delivered for offer in _below("Prices include:", "Freight")}


@pytest.mark.parametrize(
    "note",
    [
        "Not included in the above: freight",
        "Nicht in den obigen Preisen enthalten: Fracht",
        "Ingår inte i ovanstående priser: frakt",
    ],
)
def test_between_boards_it_is_said_of_those_above(note):
    assert [offer.delivered for offer in _between(note)] == [False, False, None]


@pytest.mark.parametrize(
    "note",
    [
        "Freight to the above: $40/tonne",
        "Energy surcharge on the above: $40/tonne",
    ],
)
def test_a_charge_on_the_prices_above_is_theirs(note):
    assert [[str(one.price) for one in offer.charges] for offer in _between(note)] == [["40"], ["40"], []]


def test_freight_of_other_prices_than_those_above_is_none_of_theirs():
    assert [offer.charges for offer in _between("Same freight as the above: on request")] == [(), (), ()]
