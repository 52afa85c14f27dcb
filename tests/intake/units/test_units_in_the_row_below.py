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


@pytest.mark.parametrize(
    ("head", "said"),
    [
        ("Price USD", ("per short ton delivered", "per short ton FOB mill")),
        ("Preis EUR", ("je t frei Haus", "je t ab Werk")),
        ("Prix EUR", ("la tonne franco", "la tonne départ usine")),
        ("Precio EUR", ("por tonelada franco destino", "por tonelada ex works")),
        ("Pris SEK", ("per kg fritt levererat", "per kg fritt fabrik")),
    ],
)  # fmt: skip
def test_a_unit_and_delivery_in_one_line_are_both_of_the_price_above(head, said):
    found = _below(head, ("GC1", 250, 12 if "kg" in said[0] else 1200, said[0]), ("GD2", 300, 9, said[1]))
    assert [line.offer.delivered for line in found] == [True, False]
    assert all(line.offer.basis for line in found)


@pytest.mark.parametrize(
    ("head", "words"),
    [("USD/ST", "min. {} t"), ("EUR/t", "mind. {} t"), ("EUR/t", "minimum {} t"), ("EUR/t", "mínimo {} t"),
     ("SEK/kg", "minst {} t")],
)  # fmt: skip
def test_so_are_smallest_orders(head, words):
    found = _below(head, ("GC1", 250, 1200, words.format(5)), ("GD2", 300, 900, words.format(10)))
    assert [line.offer.minimum_kg for line in found] == [5000, 10_000]


def test_so_are_currencies():
    found = _below("Price per ST", ("SBS", 250, 1200, "USD"), ("CUK", 300, 1300, "CAD"))
    assert [(str(line.state), line.offer.currency) for line in found] == [("accepted", "USD"), ("accepted", "CAD")]


@pytest.mark.parametrize("said", [("per ST", "min. {} t"), ("min. {} t", "per ST")])
def test_several_lines_below_a_price_are_all_its_own(said):
    rows = [["Grade", "g/m²", "USD"]]
    for board, least in (("SBS", 5), ("CUK", 10)):
        rows += [[board, 300, 1200], *([None, None, text.format(least)] for text in said)]
    assert [(str(line.offer.basis), line.offer.minimum_kg) for line in lines(rows).values()] == [
        ("short_ton", 5000), ("short_ton", 10_000),
    ]  # fmt: skip


def test_smallest_orders_above_the_first_price_head_those_below():
    rows = [["Grade", "g/m²", "USD/t"], [None, None, "min. 5 t"], ["SBS", 250, 1200], [None, None, "min. 10 t"],
            ["CUK", 300, 900]]  # fmt: skip
    assert [line.offer.minimum_kg for line in lines(rows).values()] == [5000, 10_000]


def test_smallest_orders_below_each_of_several_prices_are_never_those_of_another_board():
    rows = [["USD/t", "16 pt", "18 pt"], ["SBS", 1200, 1300], [None, "min. 5 t", "min. 2 t"], ["CUK", 980, 1000],
            [None, "min. 10 t", "min. 4 t"]]  # fmt: skip
    found = lines(rows)
    assert len(found) == 4
    assert all(line.offer.minimum_kg is None and str(line.state) == "question" for line in found.values())


def test_a_bare_price_with_its_smallest_order_in_brackets_is_a_price():
    found = lines([["Grade", "g/m²", "USD/t"], ["SBS", 250, "1200 (min. 5 t)"], ["CUK", 300, "980 (min. 10 t)"]])
    assert [(str(line.state), line.offer.minimum_kg) for line in found.values()] == [
        ("accepted", 5000), ("accepted", 10_000),
    ]  # fmt: skip


def test_so_are_sizes_of_orders_below_each_price():
    found = _below("USD/t", ("SBS", 250, 1200, "under 5 t"), ("SBS", 250, 1150, "5 t and up"))
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found] == [(None, 5000), (5000, None)]
