"""What stands below each of two tables beside each other is said of the one that it stands below."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "g/m²", "EUR/t", None, "Grade", "g/m²", "EUR/t"]
_ROW = ["GC1", 250, 1200, None, "GD2", 300, 900]
_LONGER = ["GC1", 300, 1180]


def _told(*below):
    found = [line.offer for line in lines([_HEAD, _ROW, *below]).values()]
    return [(offer.grade, offer.delivered, offer.minimum_kg) for offer in found]


def _beside(left, right):
    return [left, None, None, None, right]


@pytest.mark.parametrize(
    ("left", "right"),
    [
        ("Above prices FOB mill", "Above prices delivered"), ("FOB mill", "Delivered"), ("ab Werk", "frei Haus"),
        ("départ usine", "franco"), ("ex works", "franco destino"), ("fritt fabrik", "fritt levererat"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("gap", [True, False])
def test_each_text_is_said_of_its_own_table(left, right, gap):
    below = [[], _beside(left, right)] if gap else [_beside(left, right)]
    assert _told(*below) == [("FBB", False, None), ("CRB", True, None)]


def test_so_are_several_lines():
    told = _told(_beside("FOB mill", "Delivered"), _beside("Minimum 5 t", "Minimum 10 t"))
    assert told == [("FBB", False, 5000), ("CRB", True, 10_000)]


@pytest.mark.parametrize("below", [
    [_LONGER, _beside("FOB mill", "Delivered")],
    [[*_LONGER, None, "Delivered"], ["FOB mill"]],
])  # fmt: skip
def test_tables_may_be_of_different_lengths(below):
    assert set(_told(*below)) == {("FBB", False, None), ("CRB", True, None)}


@pytest.mark.parametrize("right", ["Net 30 days", "Minimum 5 t", None])
def test_a_foot_of_different_things_is_said_of_all(right):
    assert {delivered for _, delivered, _ in _told(_beside("FOB mill", right))} == {False}


def test_different_charges_in_it_are_charged_on_all():
    below = _beside("Freight 40 EUR/t", "Energy surcharge 12 EUR/t")
    found = [line.offer for line in lines([_HEAD, _ROW, below]).values()]
    assert [sorted(charge.price for charge in offer.charges) for offer in found] == [[12, 40]] * 2
