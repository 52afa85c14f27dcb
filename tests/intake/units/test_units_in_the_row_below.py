"""What a price is per, or whether it is delivered, in a row of its own right below it, where a heading would stand."""

import pytest

from tests.intake.sheets import lines


def _below(head, *priced):
    rows = [["Grade", "g/m²", head]]
    for board, weight, price, said in priced:
        rows += [[board, weight, price], [None, None, said]] if said else [[board, weight, price]]
    return list(lines(rows).values())


@pytest.mark.parametrize(
    ("head", "units", "bases"),
    [
        ("Price USD", ("per cwt", "per ST"), ["cwt", "short_ton"]), ("Preis EUR", ("je kg", "je t"), ["kg", "tonne"]),
        ("Prix EUR", ("par kg", "par tonne"), ["kg", "tonne"]),
        ("Precio EUR", ("por kg", "por tonelada"), ["kg", "tonne"]),
        ("Pris SEK", ("per kg", "SEK/t"), ["kg", "tonne"]),
    ],
)  # fmt: skip
def test_the_unit_below_is_that_of_the_price_above(head, units, bases):
    small = "60" if "cwt" in units[0] else "1.20"
    found = _below(head, ("GC1", 250, small, units[0]), ("GD2", 300, 900, units[1]))
    assert [(str(line.state), str(line.offer.basis)) for line in found] == [("accepted", base) for base in bases]


@pytest.mark.parametrize(
    ("head", "terms"),
    [
        ("USD/ST", ("delivered", "FOB mill")), ("EUR/t", ("frei Haus", "ab Werk")), ("€/t", ("franco", "départ usine")),
        ("€/t", ("entregado", "ex fábrica")), ("SEK/t", ("fritt levererat", "fritt fabrik")),
    ],
)  # fmt: skip
def test_so_are_terms_of_delivery(head, terms):
    found = _below(head, ("GC1", 250, 1200, terms[0]), ("GD2", 300, 900, terms[1]))
    assert [(str(line.state), line.offer.delivered) for line in found] == [("accepted", True), ("accepted", False)]


def test_what_stands_above_the_first_price_heads_those_below():
    rows = [["Grade", "g/m²", "Price USD"], [None, None, "per cwt"], ["SBS", 250, 60], [None, None, "per ST"],
            ["CUK", 300, 900]]  # fmt: skip
    assert [str(line.offer.basis) for line in lines(rows).values()] == ["cwt", "short_ton"]


def test_one_row_below_all_prices_is_of_all():
    found = _below("Price USD", ("SBS", 250, 1200, None), ("CUK", 300, 900, "per ST"))
    assert [str(line.offer.basis) for line in found] == ["short_ton"] * 2


def test_a_row_below_several_prices_is_of_no_other_for_certain():
    found = _below("Price USD", ("SBS", 250, 1200, None), ("SBS", 300, 1190, "per ST"), ("CUK", 300, 60, "per cwt"))
    assert [(str(line.state), line.offer.basis and str(line.offer.basis)) for line in found] == [
        ("question", None), ("accepted", "short_ton"), ("accepted", "cwt"),
    ]  # fmt: skip
