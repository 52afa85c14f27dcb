"""A charge of some boards, of small orders or of freight below a weight is put on no other price, and only once."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.notes.statements import statements
from tracker.trade.offer import OPEN

HEAD = ["Board", "gsm", "micron", "EUR/t"]
BOARDS = [["SBS", 240, 340, 1298], ["GC1", 280, 450, 1180], ["GD2", 300, 420, 845]]


@pytest.mark.parametrize(
    "note",
    ["Energy surcharge of 2.5 % of the price: SBS only.", "Energiezuschlag 2,5 %: nur SBS",
     "Surcharge énergie 2,5 % : SBS uniquement", "Recargo energético 2,5 %: solo SBS",
     "Energitillägg 2,5 %: endast SBS", "Energy surcharge 2.5 % (SBS only)"],
)  # fmt: skip
def test_a_surcharge_of_one_board_alone_is_charged_for_no_other(note):
    found = lines([HEAD, *BOARDS, [], [note]]).values()
    assert [[charge.price for charge in line.offer.charges] for line in found] == [[Decimal("2.5")], [], []]


def test_a_surcharge_of_all_boards_is_charged_for_all():
    found = lines([HEAD, *BOARDS, [], ["Energy surcharge 2.5 %: all boards"]]).values()
    assert [len(line.offer.charges) for line in found] == [1, 1, 1]


DELIVERED_HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


def test_a_charge_for_some_orders_only_is_no_charge_of_all():
    (line,) = lines([DELIVERED_HEAD, SBS, ["Small order surcharge under 5 tons", None, None, 60]]).values()
    assert line.offer.charges == ()


@pytest.mark.parametrize("note", ["Mindermengenzuschlag 60 USD/t", "Anbruchzuschlag: 10 %", "Småordertillägg 600 SEK"])
def test_what_small_orders_cost_more_is_told_and_charged_to_none(note):
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1290], [], [note]]
    (line,) = lines(rows).values()
    assert (line.offer.charges, line.offer.currency, str(line.state)) == ((), "EUR", "accepted")
    assert [note.code.value for note in line.notes] == ["bracket-unread"]


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


_FREIGHT_HEAD = ["Board", "g/m²", "µm", "under 6 t EUR/t", "from 6 t EUR/t"]


def freight_charges(said):
    found = lines([[said], _FREIGHT_HEAD, ["GC2", 280, 450, 1190, 1140]])
    return [[str(charge.price) for charge in found[cell].offer.charges] for cell in ("D3", "E3")]


@pytest.mark.parametrize(
    "said",
    [
        "Delivered from 6 t. Under 6 t plus freight 52 EUR/t",
        "Free delivery from 6 t; orders under 6 t: freight 52 EUR/t",
        "Frei Haus ab 6 t; Aufträge unter 6 t: Fracht 52 EUR/t",
        "Franco à partir de 6 t ; commandes de moins de 6 t : transport 52 EUR/t",
        "Orders under 6 t: freight 52 EUR/t",
        "Freight 52 EUR per 1000 kg on orders under 6 t",
    ],
)
def test_freight_of_small_orders_is_charged_once(said):
    assert freight_charges(said) == [["52"], []]


def test_what_else_small_orders_bear_is_charged_too():
    said = "Free delivery from 6 t; orders under 6 t: freight 52 EUR/t; orders under 6 t: energy surcharge 15 EUR/t"
    assert sorted(freight_charges(said)[0]) == ["15", "52"]


@pytest.mark.parametrize(
    "text",
    [
        "Minimum 3 t ; en dessous, majoration de 50 €/t.", "Mindestmenge 3 t; darunter, Zuschlag 50 €/t.",
        "For orders under 5 tons, surcharge $50/ton.", "Pedido mínimo 3 t; por debajo, recargo de 50 €/t.",
        "Minsta order 3 ton; därunter, tillägg 500 kr/ton.",
    ],
)  # fmt: skip
def test_a_surcharge_behind_small_orders_is_theirs_alone(text):
    assert not [said for said in statements(text) if isinstance(said, ChargeWords)]


def test_an_energy_surcharge_behind_small_orders_is_everybodys():
    said = statements("Small orders on request, energy surcharge 3%")
    assert len([one for one in said if isinstance(one, ChargeWords)]) == 1


@pytest.mark.parametrize(
    "note",
    [
        "Cutting charge 12 EUR per 1,000 sheets", "Querschneiden 12 EUR je 1.000 Bogen",
        "Massicotage 12 EUR par 1 000 feuilles",
        "Recargo por corte 12 EUR por 1.000 hojas", "Arktillägg 12 EUR per 1000 ark",
    ],
)  # fmt: skip
def test_what_cutting_sheets_costs_is_not_charged_for_rolls(note):
    head = ["Grade", "g/m²", "µm", "Form", "Size mm", "Price", "Unit"]
    rows = [
        ["GC1", 250, 400, "rolls", None, 1180, "EUR/t"],
        ["GC1", 250, 400, "sheets", "700 x 1000", 215, "EUR/1000 sheets"],
    ]
    rolls, sheets = lines([head, *rows, [], [note]]).values()
    assert rolls.offer.charges == ()
    assert [charge.price for charge in sheets.offer.charges] == [12]


SIZES = ["Board", "g/m²", "µm", "below 3 t", "3 t to 10 t", "10 t and over"]


def charged_by_size(note):
    """What the boards are charged at each of three order sizes, and whether small orders are told there."""
    rows = [["EUR per tonne, delivered"], [note], [], SIZES, ["GC1", 300, 450, 1220, 1180, 1120]]
    return [
        (["?" if one.currency == OPEN else one.price for one in line.offer.charges], "bracket-unread" in codes(line))
        for line in lines(rows).values()
    ]


@pytest.mark.parametrize(
    "note",
    [
        "Orders below 3 tonnes attract a small-order supplement of €35 per tonne on top of the price shown.",
        "Für Aufträge unter 3 t wird ein Zuschlag von 35 €/t auf die genannten Preise erhoben.",
        "Les commandes de moins de trois tonnes supportent une majoration de 35 € par tonne, en plus du prix indiqué",
        "Pedidos de menos de 3 t: recargo de 35 €/t sobre los precios indicados.",
        "Order under 3 t: tillägg 35 €/t utöver angivna priser.",
    ],
)  # fmt: skip
def test_a_supplement_on_top_of_the_prices_is_charged_on_those_of_small_orders(note):
    assert charged_by_size(note) == [([35], False), ([], False), ([], False)]


@pytest.mark.parametrize(
    ("note", "small"),
    [
        ("Orders below 3 tonnes attract a supplement of €35 per tonne.", ["?"]),
        ("Orders below 3 tonnes: supplement of €35 per order on top of the price shown.", ["?"]),
        ("Orders below 3 tonnes: no supplement of €35 per tonne on top of the price shown.", []),
    ],
)
def test_a_supplement_that_the_prices_may_bear_already_is_told_and_leaves_open_what_small_orders_cost(note, small):
    assert charged_by_size(note) == [(small, True), ([], True), ([], True)]


@pytest.mark.parametrize(
    "note",
    [
        "Orders of less than 3 tonnes bear a small-order supplement of €35 per tonne on top of the rate shown.",
        "Auf Mengen unter 3 t kommt ein Zuschlag von 35 €/t; in den Tabellenpreisen ist er nicht enthalten.",
        "Les commandes de moins de 3 t supportent un supplément de 35 € par tonne, non compris dans le tableau.",
        "En los pedidos de menos de 3 t se cobra además un recargo de 35 €/t, no comprendido en la tabla.",
        "På order under 3 ton tas ett tillägg på 35 EUR per ton ut; det ingår inte i tabellens priser.",
    ],
)
def test_a_supplement_that_the_prices_have_not_in_them_is_charged_on_those_of_small_orders(note):
    assert charged_by_size(note) == [([35], False), ([], False), ([], False)]


def test_a_note_about_small_orders_is_no_note_about_the_column_that_their_head_names():
    rows = [["Qualité", "g/m²", "µm", "moins de 5 t EUR/t", "5 t et plus EUR/t"], ["GC1", 240, 390, 1301, 1264], []]
    rows += [["Les commandes de moins de 5 t supportent un supplément de 40 € par tonne, en sus du prix du bordereau."]]
    assert [[one.price for one in line.offer.charges] for line in lines(rows).values()] == [[40], []]


def test_a_supplement_for_a_part_of_a_size_is_told_there():
    note = "Orders below 5 tonnes: supplement of €35 per tonne on top of the price shown."
    assert charged_by_size(note) == [([35], False), ([], True), ([], False)]


@pytest.mark.parametrize(
    "note",
    ["Energy surcharge: 3% of the board price, GC2 only.", "Maut: 9,80 EUR/t, nur GC2.",
     "Participation énergie 28 €/t, uniquement GC2.", "Recargo energético: 3 %, solo GC2",
     "Energitillägg 3 %, endast GC2", "Energy surcharge 3 %, GC2 only until June 2027",
     "Energy surcharge (GC2 only): 3 %"],
)  # fmt: skip
def test_boards_named_alone_behind_a_comma_bear_the_charge(note):
    assert [len(charges) for charges in by_board(note)] == [0, 1, 0]


@pytest.mark.parametrize("note", ["Energy surcharge 3 %, not only GC2", "Energy surcharge: 3 %, on all boards"])
def test_a_charge_not_of_some_boards_alone_is_of_all(note):
    assert [len(charges) for charges in by_board(note)] == [1, 1, 1]
