"""A price without the surcharge beside the one with it: a buyer pays the latter, whichever comes first."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (("GC2", 250, 405, 1251, 42, 1209), ("GC2", 295, 495, 1236, 42, 1194), ("GD2", 300, 400, 918, 35, 883))


def _offers(heads, order, *notes):
    title, specs = ["EUR/t, DAP"], ["Grade", "g/m²", "µm"]
    rows = ([*board[:3], *(board[place] for place in order)] for board in _BOARDS)
    found = lines([title, [*specs, *heads], *rows, *([note] for note in notes)])
    return {cell: (str(line.offer.price), line.offer.charges) for cell, line in found.items()}


_PAID = {"1251", "1236", "918"}


@pytest.mark.parametrize(
    ("paid", "surcharge", "bare"),
    [
        ("Final price", "Energy surcharge (included)", "Price without surcharge"),
        ("Price incl. surcharge", "Surcharge", "Price excl. surcharge"),
        ("Preis inkl. Energiezuschlag", "Energiezuschlag", "Preis ohne Energiezuschlag"),
        ("Preis", "Energiezuschlag (enthalten)", "Preis exkl. Zuschlag"),
        ("Prix final", "Supplément énergie (inclus)", "Prix hors supplément"),
        ("Precio final", "Recargo energético (incluido)", "Precio sin recargo"),
        ("Slutpris", "Energitillägg (ingår)", "Pris utan tillägg"),
    ],
)
@pytest.mark.parametrize("order", [(3, 4, 5), (4, 3, 5), (5, 4, 3), (5, 3, 4)])
def test_the_price_with_the_surcharge_is_paid(paid, surcharge, bare, order):
    heads = {3: paid, 4: surcharge, 5: bare}
    found = _offers([heads[place] for place in order], order)
    assert set(found.values()) == {(price, ()) for price in _PAID}


@pytest.mark.parametrize("order", [(3, 5), (5, 3)])
@pytest.mark.parametrize(
    ("paid", "bare"),
    [
        ("Price incl. energy surcharge", "Price excl. energy surcharge"),
        ("Preis mit Energiezuschlag", "Preis ohne Energiezuschlag"),
        ("Prix avec surcharge énergie", "Prix sans surcharge énergie"),
        ("Precio con recargo energético", "Precio sin recargo energético"),
        ("Pris med energitillägg", "Pris utan energitillägg"),
    ],
)
def test_so_it_is_where_the_surcharge_has_no_column(paid, bare, order):
    heads = {3: paid, 5: bare}
    found = _offers([heads[place] for place in order], order)
    assert {price for price, _ in found.values()} == _PAID


@pytest.mark.parametrize(
    "note",
    [
        "The energy surcharge is suspended until further notice.",
        "Der Energiezuschlag ist bis auf Weiteres ausgesetzt.",
        "La surcharge énergie est suspendue jusqu'à nouvel ordre.",
        "El recargo energético queda suspendido hasta nuevo aviso.",
        "Energitillägget tas inte ut tills vidare.",
    ],
)
def test_a_surcharge_that_is_suspended_is_not_paid(note):
    found = _offers(("Price", "Energy surcharge", "Price without energy surcharge"), (3, 4, 5), note)
    assert {price for price, _ in found.values()}.isdisjoint(_PAID)


@pytest.mark.parametrize("bare", ["Price without sheeting", "Price without small-lot surcharge"])
def test_what_a_buyer_may_do_without_leaves_two_offers(bare):
    assert len(_offers(("Price", bare), (3, 5))) == 6


def test_a_surcharge_of_small_orders_settles_nothing():
    heads = ("Price", "Price without surcharge")
    assert len(_offers(heads, (3, 5), "Surcharge for orders below 5 t.")) == 6


@pytest.mark.parametrize("order", [(3, 5), (5, 3)])
@pytest.mark.parametrize(
    ("paid", "bare"),
    [
        ("Price", "Price without surcharge"), ("Price incl. surcharge", "Price excl. surcharge"),
        ("Preis", "Preis ohne Zuschlag"), ("Prix", "Prix hors supplément"), ("Precio", "Precio sin recargo"),
        ("Pris", "Pris utan tillägg"),
    ],
)  # fmt: skip
def test_of_a_surcharge_that_nothing_names_it_is_asked_which_price_is_paid(paid, bare, order):
    heads = {3: paid, 5: bare}
    rows = [["EUR/t, DAP"], ["Grade", "g/m²", "µm", *(heads[place] for place in order)]]
    found = lines([*rows, *([*board[:3], *(board[place] for place in order)] for board in _BOARDS)])
    assert {str(line.state) for line in found.values()} == {"question"}
