"""The smallest order of all boards by what is refused, and another one of some behind it."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["SBS", 280, 1400]]


def _least(note):
    return [line.offer.minimum_kg for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "We can't take less than 3 t an item, and on SBS not less than 10 t.",
        "Wir liefern nicht unter 3 t; bei SBS ist die Mindestmenge 10 t.",
        "Nous ne livrons pas moins de 3 t ; en SBS le minimum est de 10 t.",
        "No servimos menos de 3 t por pedido; en SBS el mínimo es de 10 t.",
        "Vi levererar inte under 3 t; för SBS är minsta order 10 t.",
    ],
)
def test_what_is_refused_of_all_and_the_smallest_order_of_some(note):
    assert _least(note) == [3000, 10000]


def test_what_may_be_so_is_not_taken():
    assert _least("We may not take less than 3 t an item, and on SBS not less than 10 t.")[0] is None
    assert _least("No servimos menos de 3 t salvo GC1; en SBS el mínimo es de 10 t.")[0] is None
