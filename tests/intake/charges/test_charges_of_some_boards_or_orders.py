"""A charge of some boards alone, or of small orders alone, is put on no other price."""

import pytest

from tests.intake.sheets import codes, lines

_HEAD = ["Grade", "g/m²", "µm"]
_ROWS = [["GC1", 250, 400, 1220, 1190], ["GC2", 300, 490, 1180, 1150], ["GD2", 350, 470, 810, 780]]
_SIZES = ["1 - 5 t", "from 5 t"]


def charges(line):
    return [str(charge.price) for charge in line.offer.charges]


def by_board(said):
    return [charges(line) for line in lines([["EUR/t, ex works"], [*_HEAD, "Price"], *_some(4), [said]]).values()]


def by_size(said):
    return list(lines([["EUR/t, ex works"], [*_HEAD, *_SIZES], *_ROWS[:1], [said]]).values())


def _some(width):
    return [row[:width] for row in _ROWS]


@pytest.mark.parametrize(
    "said",
    [
        "Freight: 48 EUR/t, to be added on GC1 and GC2 only. GD2 is collected at the mill.",
        "Fracht: 48 EUR/t, nur für GC1 und GC2. GD2 holt der Kunde ab.",
        "Transport : 48 €/t, seulement pour GC1 et GC2. Le GD2 est enlevé à l'usine.",
        "Portes: 48 €/t, a añadir solamente a GC1 y GC2. El GD2 se recoge en fábrica.",
        "Frakt: 48 EUR/ton, endast för GC1 och GC2. GD2 hämtas på bruket.",
        "Freight: 48 EUR/t, on GC1 and GC2 only",
    ],
)
def test_freight_of_some_boards_is_theirs_alone(said):
    assert by_board(said) == [["48"], ["48"], []]


@pytest.mark.parametrize("said", ["Freight: 48 EUR/t", "Fracht: 48 EUR/t auf alle Sorten", "Portes: 48 €/t"])
def test_freight_of_all_boards_stays_so(said):
    assert by_board(said) == [["48"]] * 3


_SMALL = [
    "Freight 48 EUR/t, on orders under 5 t only", "Freight 48 EUR/t on orders under 5 t",
    "Fracht 48 EUR/t, nur bei Aufträgen unter 5.000 kg; darüber holt der Kunde ab.",
    "Transport 48 €/t, pour les commandes de moins de 5 t", "Portes 48 €/t, solo para pedidos inferiores a 5 t",
    "Frakt 48 EUR/ton, bara vid order under 5 ton", "Orders under 5 t: freight 48 EUR/t",
]  # fmt: skip


@pytest.mark.parametrize("said", _SMALL)
def test_freight_of_small_orders_is_in_the_prices_for_such_alone(said):
    small, large = by_size(said)
    assert (charges(small), charges(large)) == (["48"], [])
    assert "bracket-unread" not in codes(small) | codes(large)


@pytest.mark.parametrize("said", _SMALL)
def test_a_price_for_orders_of_any_size_tells_of_it_and_does_not_bear_it(said):
    (line,) = lines([["EUR/t, ex works"], [*_HEAD, "Price"], *_some(4)[:1], [said]]).values()
    assert charges(line) == []
    assert "bracket-unread" in codes(line)


def test_a_price_for_orders_on_both_sides_of_the_weight_does_not_bear_it():
    small, large = by_size("Freight 48 EUR/t, on orders under 10 t only")
    assert (charges(small), charges(large)) == (["48"], [])
    assert "bracket-unread" in codes(large)


@pytest.mark.parametrize("said", ["Freight 48 EUR/t", "Freight 48 EUR/t. Orders under 5 t on request."])
def test_freight_without_a_size_is_in_every_price(said):
    assert [charges(line) for line in by_size(said)] == [["48"], ["48"]]
