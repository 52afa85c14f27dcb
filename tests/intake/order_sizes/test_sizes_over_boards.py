"""An order size in the head over a table's boards."""

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["GC1", 250, 405], ["GC2", 275, 450]]


def _below(corner, other="Sorte"):
    """What the prices below two corner heads are for: from, below and least of each."""
    rows = [["Kartonhaus Tannbrück, EUR"]]
    for head, unit, factor in ((other, "EUR/t", 1000), (corner, "EUR/kg", 1)):
        rows += [[head, "g/m²", "µm", unit]]
        rows += [[*board, price * factor] for board, price in zip(BOARDS, (1.125, 1.0625), strict=True)]
        rows += [[]]
    return lines(rows)


def _sizes(found):
    offers = [line.offer for line in found.values()]
    return [(offer.from_kg, offer.below_kg) for offer in offers]


@pytest.mark.parametrize(
    "corner",
    [
        "SMALL LOTS under 1 tonne",
        "Kleinmengen unter 1 t",
        "Petites quantités (moins de 1 t)",
        "Pequeñas cantidades menos de 1 t",
        "Småkvantiteter under 1 ton",
    ],
)
def test_it_holds_for_every_price_below(corner):
    found = _below(corner)
    assert _sizes(found) == [(None, None)] * 2 + [(None, 1000)] * 2
    assert {line.offer.grade for line in found.values()} == {"FBB"}


def test_each_ends_where_the_other_begins():
    assert (
        _sizes(_below("Full loads 20 t and over", "Part loads 3 t and over"))
        == [(3000, 20000)] * 2 + [(20000, None)] * 2
    )


@pytest.mark.parametrize("corner", ["REELS", "Boards over 60 lb", "Kartons ab 5 t frei Haus", "Sorte (Rollen)"])
def test_what_names_boards_or_freight_sizes_no_orders(corner):
    assert _sizes(_below(corner)) == [(None, None)] * 4


@pytest.mark.parametrize("corner", ["TRUCKLOADS", "Komplettladungen"])
def test_a_load_that_nothing_weighs_is_asked_about(corner):
    *before, one, other = _below(corner).values()
    assert "bracket-unread" in codes(one) & codes(other)
    assert not any("bracket-unread" in codes(line) for line in before)


@pytest.mark.parametrize("corner", ["Boards, min. order 5 t", "Sorten, Mindestmenge 5 t"])
def test_a_smallest_order_there_is_one(corner):
    assert [line.offer.minimum_kg for line in _below(corner).values()] == [None, None, 5000, 5000]
