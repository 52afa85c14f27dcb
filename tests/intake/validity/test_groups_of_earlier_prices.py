"""Groups of columns under 'Superseded' and 'In force': the prices of times that are over, and the one to pay."""

import pytest

from tests.intake.sheets import lines, merged
from tracker.trade.offer import State


def accepted(old, new, periods, *, spread=True, rest=("Change",)):
    """The prices that are taken of the first board, 'asked' where any is asked about."""
    rows = [
        ["EUR/t"], [None, None, old, None, None, new, *rest], ["Board", "g/m²", *periods, "%"],
        ["GC1", 240, 1110, 1122, 1135, 1149, 0.012], ["GD2", 400, 741, 753, 764, 777, 0.011],
        ["GD2", 450, 731, 742, 755, 768, 0.012],
    ]  # fmt: skip
    found = lines(rows, **({"merged": merged((1, 2, 1, 4))} if spread else {}))
    if any(line.state is not State.ACCEPTED for line in found.values()):
        return "asked"
    return [line.offer.price for cell, line in found.items() if cell.endswith("4")]


EN = ("Oct 2025", "Jan 2026", "Apr 2026", "Jul 2026")


@pytest.mark.parametrize("spread", [True, False])
@pytest.mark.parametrize(
    ("old", "new", "periods"),
    [
        ("Superseded – for information", "In force from 1 July 2026", EN),
        ("Previous", "Current", EN),
        ("History", "Now", EN),
        ("abgelöst – nur zur Information", "Gültig ab 1. Juli 2026", ("Okt 2025", "Jan 2026", "Apr 2026", "Jul 2026")),
        ("Anciens tarifs", "En vigueur au 1er juillet 2026", ("oct. 2025", "janv. 2026", "avr. 2026", "juil. 2026")),
        ("Derogado", "Vigente desde 1 julio 2026", ("oct 2025", "ene 2026", "abr 2026", "jul 2026")),
        ("Utgångna", "Gäller från 1 juli 2026", ("okt 2025", "jan 2026", "apr 2026", "jul 2026")),
    ],
)
def test_the_price_in_force_is_taken(old, new, periods, spread):
    assert accepted(old, new, periods, spread=spread) == [1149]


@pytest.mark.parametrize(("old", "new"), [("Prices", "Prices"), ("East", "West")])
def test_which_of_several_times_holds_is_asked_where_no_head_says_so(old, new):
    """Also where the times of one place stand beside those of another."""
    assert accepted(old, new, EN, rest=()) == "asked"


def test_one_price_a_place_is_an_offer_each():
    rows = [["EUR/t"], ["Board", "g/m²", "East July", "West July"], ["GC1", 240, 1110, 1122], ["GD2", 400, 741, 753]]
    assert {line.state for line in lines(rows).values()} == {State.ACCEPTED}


@pytest.mark.parametrize(
    ("heads", "expected"),
    [
        (("Q1/26 (old)", "Q2/26 (old)", "New"), [1135]),
        (("T1/26 (ancien)", "T2/26 (ancien)", "Nouveau"), [1135]),
        (("Q1/26", "Q2/26", "Q3/26"), "asked"),
    ],
)
def test_times_marked_as_old_are_no_offers_beside_the_new_price(heads, expected):
    rows = [["EUR/t"], ["Board", "g/m²", "µm", *heads], ["GC1", 240, 390, 1110, 1122, 1135]]
    rows += [["GD2", 400, 520, 741, 753, 764], ["GD2", 450, 590, 731, 742, 755]]
    found = lines(rows)
    asked = any(line.state is not State.ACCEPTED for line in found.values())
    assert ("asked" if asked else [line.offer.price for cell, line in found.items() if cell.endswith("3")]) == expected
