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


_HEADS = [
    ("Price excl. energy surcharge", "Energy surcharge", "Freight", "Price"),
    ("Preis ohne Energiezuschlag", "Energiezuschlag", "Fracht", "Preis"),
    ("Prix hors surcharge énergie", "Surcharge énergie", "Transport", "Prix"),
    ("Precio sin recargo energético", "Recargo energético", "Transporte", "Precio"),
    ("Pris utan energitillägg", "Energitillägg", "Frakt", "Pris"),
]


def _read(heads, *rows, notes=()):
    boards = (("GC2", 250, 405), ("GD2", 300, 400))
    body = ([*board, *figures] for board, figures in zip(boards, rows, strict=True))
    found = lines([["EUR/t"], ["Grade", "g/m²", "µm", *heads], *body, *([note] for note in notes)])
    return {
        (str(line.offer.price), str(line.state), tuple(str(charge.price) for charge in line.offer.charges))
        for line in found.values()
    }


@pytest.mark.parametrize(("bare", "energy", "freight", "paid"), _HEADS)
def test_no_charge_comes_on_top_of_a_price_that_has_it_in_it(bare, energy, freight, paid):
    whole = _read((bare, energy, freight, paid), (1200, 25, 42, 1267), (900, 25, 42, 967))
    assert whole == {("1267", "accepted", ()), ("967", "accepted", ())}
    rounded = _read((bare, energy, paid), (1200, "24.6", 1225), (900, "24.6", 925))
    assert rounded == {("1225", "accepted", ()), ("925", "accepted", ())}
    beside = _read((bare, paid, f"{freight} EUR/t"), (1200, 1225, 42), (900, 925, 42))
    assert beside == {("1225", "accepted", ("42",)), ("925", "accepted", ("42",))}


@pytest.mark.parametrize(("bare", "energy", "freight", "paid"), _HEADS)
def test_charges_that_do_not_make_up_the_difference_leave_it_to_be_asked(bare, energy, freight, paid):
    for between, figures in ((energy, 31), (freight, 20)):
        found = _read((bare, between, paid), (1200, figures, 1225), (900, figures, 925))
        assert {state for _, state, _ in found} == {"question"}


@pytest.mark.parametrize(
    ("bare", "paid", "amount", "of_all"),
    [
        ("Price excl. energy surcharge", "Price", "Energy surcharge 25 EUR/t", "Energy surcharge for all orders"),
        ("Preis ohne Energiezuschlag", "Preis", "Energiezuschlag 25 EUR/t", "Energiezuschlag auf alle Sorten"),
        ("Prix hors surcharge énergie", "Prix", "Surcharge énergie 25 EUR/t", "Surcharge énergie applicable à tous"),
        ("Precio sin recargo energético", "Precio", "Recargo energético 25 EUR/t", "Recargo energético para todos"),
        ("Pris utan energitillägg", "Pris", "Energitillägg 25 EUR/t", "Energitillägg tas ut på alla kvaliteter"),
    ],
)
def test_nor_does_what_a_note_tells_of_it(bare, paid, amount, of_all):
    for note in (amount, of_all):
        found = _read((bare, paid), (1200, 1225), (900, 925), notes=[note])
        assert found == {("1225", "accepted", ()), ("925", "accepted", ())}
    other = _read((bare, paid), (1200, 1225), (900, 925), notes=[amount.replace("25", "31")])
    assert {state for _, state, _ in other} == {"question"}


@pytest.mark.parametrize(
    ("bare", "paid", "note"),
    [
        ("Price excl. energy surcharge", "Price", "No energy surcharge at present"),
        ("Price excl. energy surcharge", "Price", "Currently no energy surcharge is charged"),
        ("Price excl. energy surcharge", "Price", "Contract customers do not pay the energy surcharge"),
        ("Price excl. energy surcharge", "Price", "Energy surcharge from January 2027"),
        ("Preis ohne Energiezuschlag", "Preis", "Derzeit kein Energiezuschlag"),
        ("Preis ohne Energiezuschlag", "Preis", "Energiezuschlag ab Januar 2027"),
        ("Prix hors surcharge énergie", "Prix", "Aucune surcharge énergie actuellement"),
        ("Prix hors surcharge énergie", "Prix", "Surcharge énergie à partir de janvier 2027"),
        ("Precio sin recargo energético", "Precio", "Actualmente no hay recargo energético"),
        ("Precio sin recargo energético", "Precio", "Recargo energético a partir de enero de 2027"),
        ("Pris utan energitillägg", "Pris", "För närvarande inget energitillägg"),
        ("Pris utan energitillägg", "Pris", "Energitillägg från januari 2027"),
    ],
)
def test_where_a_note_denies_the_surcharge_or_sets_it_later_it_is_asked(bare, paid, note):
    found = _read((bare, paid), (1200, 1225), (900, 925), notes=[note])
    assert {state for _, state, _ in found} == {"question"}


@pytest.mark.parametrize(
    ("bare", "paid"),
    [
        ("Roll price excl. energy surcharge", "Sheet price"),
        ("Price excl. energy surcharge (rolls)", "Price (sheets)"),
        ("Price excl. energy surcharge", "Price 5-20 t"),
        ("Price excl. energy surcharge EUR/t", "Price USD/t"),
        ("Rollenpreis ohne Energiezuschlag", "Bogenpreis"),
        ("Prix bobines hors surcharge énergie", "Prix feuilles"),
        ("Precio bobinas sin recargo energético", "Precio hojas"),
        ("Rullpris utan energitillägg", "Arkpris"),
    ],
)
def test_prices_of_different_things_are_not_compared(bare, paid):
    found = _read((bare, paid), (1200, 1260), (900, 960))
    assert found == {("1200", "question", ()), ("900", "question", ())} or len(found) == 4
